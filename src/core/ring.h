/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/vec.h"

/* Closed outlines of straight lines and true arcs. */

/* A corner of a ring and the line or arc that leaves it: bulge = tan(sweep / 4), positive where
 * the arc turns counter-clockwise, 0 for a straight line (the measure that DXF uses too). */
typedef struct
{
  BfVec2 p;
  double bulge;
} BfVertex;

/* A closed ring; the last vertex is joined to the first. Outer rings run counter-clockwise, holes
 * clockwise. A whole circle is a ring of two vertices. */
typedef struct
{
  GArray *vertices; /* BfVertex */
} BfRing;

/* An arc: angles in radians from +x; it runs counter-clockwise from `from` where sweep > 0. */
typedef struct
{
  BfVec2 centre;
  double radius, from, sweep;
} BfArc;

typedef struct
{
  BfVec2 min, max;
} BfBox;

BfRing *bf_ring_new (void) G_GNUC_WARN_UNUSED_RESULT;
BfRing *bf_ring_copy (const BfRing *ring) G_GNUC_WARN_UNUSED_RESULT;
void bf_ring_free (BfRing *ring);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfRing, bf_ring_free)

void bf_ring_add (BfRing *ring, BfVec2 p, double bulge);

static inline guint
bf_ring_size (const BfRing *ring)
{
  return ring->vertices->len;
}

/* Vertex i, counted round: any i is allowed. */
static inline const BfVertex *
bf_ring_vertex (const BfRing *ring, guint i)
{
  return &g_array_index (ring->vertices, BfVertex, i % ring->vertices->len);
}

/* The arc that leaves vertex i. FALSE, and arc untouched, where a straight line leaves it. */
gboolean bf_ring_arc (const BfRing *ring, guint i, BfArc *arc);

/* TRUE where both are arcs of one circle. */
gboolean bf_arcs_share_circle (const BfArc *a, const BfArc *b);

/* TRUE where the ring is one whole circle. centre, radius: (out) (optional). */
gboolean bf_ring_is_circle (const BfRing *ring, BfVec2 *centre, double *radius);

/* Signed area in mm², arcs exact: positive counter-clockwise. */
double bf_ring_area (const BfRing *ring);

/* Length round the ring in mm, arcs exact. */
double bf_ring_length (const BfRing *ring);

/* Grows box, arcs exact. An empty box is bf_box_empty(). */
void bf_ring_extend_box (const BfRing *ring, BfBox *box);

/* The ring as points on it, counter-clockwise or clockwise as it runs: every vertex, and on arcs
 * points so close that no chord strays further than sagitta_mm. Appends to points (BfVec2). */
void bf_ring_flatten (const BfRing *ring, double sagitta_mm, GArray *points);

/* TRUE where p is inside or on the ring, arcs exact. */
gboolean bf_ring_contains (const BfRing *ring, BfVec2 p);

void bf_ring_reverse (BfRing *ring);

/* Reverses a ring that runs clockwise. */
void bf_ring_make_counter_clockwise (BfRing *ring);

/* A box that holds nothing, and a box grown to hold p. */
BfBox bf_box_empty (void);
void bf_box_extend (BfBox *box, BfVec2 p);

/* Its middle, and whether p lies in it, the rim included. */
BfVec2 bf_box_middle (const BfBox *box);
gboolean bf_box_contains (const BfBox *box, BfVec2 p);

/* Signed area of a polygon of straight lines, positive counter-clockwise. */
double bf_polygon_area (const BfVec2 *points, guint n_points);
