/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Flanges that want the same metal of the blank and share it, as the part asks (BfParted): each
 * gives up what of it lies nearer to the other's bend line, and half a gap more. What only one of
 * them wants stays whole, but for the gap that is left beside the other. */

typedef struct
{
  int flaps[2];
  GPtrArray *cuts[2]; /* BfRing, in the blank: what the flat of each is cut by */
  gboolean made;      /* the cuts are clean: they reach no bend, part no metal, leave no splinter */
} BfParting;

void bf_parting_clear (BfParting *parting);

/* Fills layout->partings; everything is placed, and all sides are settled. A pair that shares
 * nothing, or can't be cut clean, is there but not made. */
void bf_partings_find (BfLayout *layout);

/* TRUE where the flap gives something up. */
gboolean bf_partings_cut_flap (const BfLayout *layout, int flap);

/* How much of a straight way in the blank lies before the first cut into that flap: 1 for all. */
double bf_partings_leave (const BfLayout *layout, int flap, BfVec2 from, BfVec2 to);

/* What the flap's flat leaves of a ring. ring: (transfer full). Returns: (transfer full). */
BfRing *bf_partings_cut (const BfLayout *layout, int flap, BfRing *ring) G_GNUC_WARN_UNUSED_RESULT;
