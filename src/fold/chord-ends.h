/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/ring-distance.h"

/* Where the chords that stand for an arc begin and end, so that they cross, touch and pass other
 * rings just as the arc itself does. */

/* Chords stray no further than this from their arc. */
#define BF_CHORD_SAGITTA_MM 0.01

typedef struct
{
  double turned_rad; /* from the arc's beginning, positive whichever way it turns */
  BfVec2 p;
} BfChordEnd;

/* The ends of the chords of the arc that leaves vertex i of the ring, in their order, the arc's own
 * two ends first and last; at least two chords. beside: (nullable) the rings that the arc has to do
 * with (BfNearRing); the ring itself among them is passed over. Appends BfChordEnd to ends. */
void bf_chord_ends_find (const BfRing *ring, guint i, const GArray *beside, GArray *ends);
