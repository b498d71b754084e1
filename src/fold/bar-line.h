/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Where the bar goes: the line on which the front edge of the bar or of a brake's nose sits, and on
 * which side of it the metal is clamped. */
typedef struct
{
  BfVec2 line[2];         /* in the blank, as the bend line runs, from where metal begins to where
                           * it ends: short of the reliefs */
  BfVec2 clamped;         /* unit: from the line to what lies under the bar */
  guint face;             /* the face that lies there */
  gboolean on_other_side; /* the bar lies on the side that is not marked: turned down */
  double past_tangent_mm; /* how far the line lies past the clamped side's tangent */
  double from_bend_line_mm;
} BfBarLine;

/* A nose of radius R rounds the bend from the clamped side's tangent on, so that its front face
 * stands R past it; a sharp edge stands on the tangent (geometry). What the order of bending
 * holds is clamped: the side with more metal, or the other one where what is bent already stands in
 * the bar's way there. Needs the whole fold; bend is one of its own.
 * bar: (out). FALSE where nothing is clamped: at slots and scores, and where there is no bend. */
gboolean bf_bend_bar_line (const BfFold *fold, const BfBendResult *bend, BfBarLine *bar);
