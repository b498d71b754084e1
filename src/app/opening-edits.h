/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "app/surface-view.h"
#include "core/edit.h"

/* Holes and cut-outs made, sized, moved and taken away, each as one named step of a document. */

/* A new one of that shape: near the selected edge of the base, or in the middle of the flange that
 * the selection is about. Returns what to select then; where nothing can be added, the same. */
BfSelection bf_opening_add (BfDocument *document, BfSelection selection, BfOpeningShape shape);

/* Gives the selected one a size. stepped: by an arrow key; such steps in a row make one. */
void bf_opening_give (BfDocument *document,
                      BfSelection selection,
                      BfOpeningSize size,
                      double value,
                      gboolean stepped);

/* Moves it, or the selected point of it, so that its place is that. */
void
bf_opening_place (BfDocument *document, BfSelection selection, BfVec2 place_mm, gboolean stepped);

/* Moves it by a step of 1 mm or 1/16 in, that many times as far, along that of its two directions
 * that comes nearest to the one in the blank. */
void bf_opening_nudge (BfDocument *document, BfSelection selection, BfVec2 direction, double times);

/* Takes it away, or the selected point of it, which stays where only three are left. Returns what
 * to select then. */
BfSelection bf_opening_remove (BfDocument *document, BfSelection selection);

/* A new point after the selected one of an outline. Returns what to select then. */
BfSelection bf_opening_add_point (BfDocument *document, BfSelection selection);

/* What a size is called: "Diameter of the hole". Translated, static. */
const char *bf_opening_size_name (BfOpeningSize size);

/* The name of the step that moves one, or a point of one; translated, static. */
const char *bf_opening_move_name (BfSelection selection);
