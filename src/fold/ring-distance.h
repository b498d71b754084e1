/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/edge-finder.h"

/* A ring made ready for asking how far others lie from it. */
typedef struct
{
  const BfRing *ring;   /* not owned */
  GArray *edges;        /* BfEdge */
  BfEdgeFinder *finder; /* of the edges */
  BfBox box;
} BfNearRing;

/* near: (out), clear with bf_near_ring_clear(). The ring has to outlive it. */
void bf_near_ring_init (BfNearRing *near, const BfRing *ring);
void bf_near_ring_clear (BfNearRing *near);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfNearRing, bf_near_ring_clear)

/* The least distance between the lines of two rings, 0 where they cross, as far as it is less than
 * limit_mm; else limit_mm. place: (out) (optional) the nearest point of a; untouched at the limit.
 * A ring that lies inside the other is as far from it as their lines are. */
double
bf_near_ring_distance (const BfNearRing *a, const BfNearRing *b, double limit_mm, BfVec2 *place);

/* The least distance from a point to the ring's line. */
double bf_near_ring_distance_to (const BfNearRing *near, BfVec2 p);
