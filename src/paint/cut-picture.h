/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/work.h"

/* The blank with its cuts, for the step at which they are made: one cut with what lies on either
 * side of it, the guide and the waste, or all of them. Fitted into a box of that size, in mm. */

typedef struct
{
  BfVec2 at[4]; /* on paper, in turn; from at[0] to at[1] along the cut */
} BfCutStrip;

/* The guide's bar, its edge from at[0] to at[1] as far from the cut as the person's offset is in
 * the blank's scale, on the blank's side; how deep the bar is drawn means nothing. FALSE, strip
 * untouched, where nothing is cut along a guide. */
gboolean bf_cut_picture_guide (const BfWork *work, guint cut, BfVec2 size_mm, BfCutStrip *strip);

/* What falls away, as far as it is drawn: it begins at the cut, from at[0] to at[1]. FALSE, strip
 * untouched, where there is no blank. */
gboolean bf_cut_picture_waste (const BfWork *work, guint cut, BfVec2 size_mm, BfCutStrip *strip);

/* cut: −1 for all of them, lit and nothing else. */
void bf_cut_picture_draw (const BfWork *work, int cut, BfVec2 size_mm, cairo_t *cr);
