/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/work.h"

/* The place of each cut in its order, as numbers over a picture that bf_figure_blank() drew into a
 * box of that size. A number stands on the side of its waste. The cuts of an opening that is too
 * small for that share one label, "3–6", and where things crowd a label stands where there is room
 * and a line leads from it. Nothing for a machine, which has an order of its own. */

/* How far labels may reach beyond the blank. */
#define BF_CUT_LABELS_MM 4.3

typedef struct
{
  guint first, last; /* cuts, from 1; the same for one */
  BfBox box;         /* on paper */
  BfVec2 tip;        /* of the line: on the cut, or in the opening */
  gboolean leads;    /* there is a line */
} BfCutLabel;

/* All cuts have a label each or share one, in order. Returns: (transfer full) (element-type
 * BfCutLabel). */
GArray *bf_cut_labels (const BfWork *work, BfVec2 size_mm) G_GNUC_WARN_UNUSED_RESULT;

void bf_cut_labels_draw (const BfWork *work, BfVec2 size_mm, cairo_t *cr);
