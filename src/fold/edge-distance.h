/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* How far a straight line or an arc of a ring lies from another, exactly. */

typedef struct
{
  BfVec2 from, to;
  gboolean curved;
  double bulge; /* as the ring's; an arc only, like what follows */
  BfVec2 centre;
  double radius;
  BfBox box; /* of the whole arc */
} BfEdge;

/* What leaves vertex i of the ring. */
BfEdge bf_edge_of (const BfRing *ring, guint i);

/* The edge's point that is nearest to p. */
BfVec2 bf_edge_nearest (const BfEdge *edge, BfVec2 p);

/* The least distance between two edges, 0 where they meet. place: (out) the point of a there. */
double bf_edge_distance (const BfEdge *a, const BfEdge *b, BfVec2 *place);

/* How far two boxes are apart; 0 where they meet. No two edges in them are nearer. */
double bf_box_gap (const BfBox *a, const BfBox *b);
