/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "paint/label-field.h"

/* Words that tell of points, each beside its own: where points crowd, words step back and a thin
 * line leads to the point. All measures are in millimetres of paper, y down. */

typedef struct _BfPointLabels BfPointLabels;

/* view: what is seen, words stay in it. cap_mm: the height of their capitals.
 * Returns: (transfer full). */
BfPointLabels *bf_point_labels_new (const BfBox *view, double cap_mm) G_GNUC_WARN_UNUSED_RESULT;
void bf_point_labels_free (BfPointLabels *labels);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfPointLabels, bf_point_labels_free)

/* A line that words must not cover. */
void bf_point_labels_avoid (BfPointLabels *labels, BfVec2 a, BfVec2 b);

/* Words for the point at. A point that has words keeps the first. */
void bf_point_labels_add (BfPointLabels *labels, BfVec2 at, const char *words);

/* Finds a place for each, in the order in which they came: call it once, when all is added. Words
 * that find none stand over lines, or at worst over other words, but within the view: better hard
 * to read than missing. Returns: how many those are. */
guint bf_point_labels_place (BfPointLabels *labels);

guint bf_point_labels_count (const BfPointLabels *labels);

/* The ground that words took. */
const BfPlate *bf_point_labels_plate (const BfPointLabels *labels, guint i);

/* Draws words and leading lines in cr's present colour. */
void bf_point_labels_draw (const BfPointLabels *labels, cairo_t *cr);
