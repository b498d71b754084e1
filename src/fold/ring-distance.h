/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Rings as points on them, for asking how far one lies from another. Arcs are followed to within
 * BF_FLAT_SAGITTA_MM. */
#define BF_FLAT_SAGITTA_MM 5e-5

typedef struct
{
  const BfRing *ring; /* not owned */
  GArray *points;     /* BfVec2 */
  BfBox box;
} BfFlatRing;

/* flat: (out), clear with bf_flat_ring_clear(). The ring has to outlive it. */
void bf_flat_ring_init (BfFlatRing *flat, const BfRing *ring);
void bf_flat_ring_clear (BfFlatRing *flat);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfFlatRing, bf_flat_ring_clear)

/* The least distance between the lines of two rings, 0 where they cross, as far as it is less than
 * limit_mm; else limit_mm. place: (out) (optional) the nearest point of a; untouched at the limit.
 * A ring that lies inside the other is as far from it as their lines are. */
double
bf_flat_ring_distance (const BfFlatRing *a, const BfFlatRing *b, double limit_mm, BfVec2 *place);

/* The least distance from a point to the ring's line. */
double bf_flat_ring_distance_to (const BfFlatRing *flat, BfVec2 p);
