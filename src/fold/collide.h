/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Whether the formed metal passes through itself: faces as slabs cut into convex pieces, bends as
 * slices that bound their arcs from both sides within 1e-4 mm, each pair parted by an axis or
 * proved to overlap. What reliefs and openings take away does not count; what cannot be told apart
 * from touching is touching. A face and the bend that joins it to another share a boundary and are
 * not looked at; the two faces of a bend are. */

/* Deeper than this is a collision: metal may touch. */
#define BF_COLLISION_LEAST_MM 0.01

typedef struct
{
  guint a, b; /* faces, a < b; a bend counts to the flange that it bends up */
  double
      depth_mm; /* of the pieces that go deepest into each other: the shortest way to part them */
  BfVec2 place; /* a point of the blank near it */
} BfCollision;

/* Appends every pair of faces that pass through each other (BfCollision), by a and b. Needs the
 * fold's faces, bends, reliefs, openings and formed shape. */
void bf_collisions_find (const BfFold *fold, GArray *collisions);
