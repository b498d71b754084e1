/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/ring-distance.h"

void
bf_near_ring_init (BfNearRing *near, const BfRing *ring)
{
  guint n = bf_ring_size (ring);

  near->ring = ring;
  near->edges = g_array_sized_new (FALSE, FALSE, sizeof (BfEdge), n);
  near->box = bf_box_empty ();
  for (guint i = 0; i < n; i++)
    {
      BfEdge edge = bf_edge_of (ring, i);

      bf_box_extend (&near->box, edge.box.min);
      bf_box_extend (&near->box, edge.box.max);
      g_array_append_val (near->edges, edge);
    }
  near->finder = bf_edge_finder_new (near->edges);
}

void
bf_near_ring_clear (BfNearRing *near)
{
  g_clear_pointer (&near->finder, bf_edge_finder_free);
  g_clear_pointer (&near->edges, g_array_unref);
}

static const BfEdge *
edge_at (const BfNearRing *near, guint i)
{
  return &g_array_index (near->edges, BfEdge, i);
}

/* Lowers least to the distance from an edge to the ring, where that is less. */
static void
find_nearer (const BfEdge *edge, const BfNearRing *ring, double *least, BfVec2 *place)
{
  for (guint i = 0; i < ring->edges->len; i++)
    {
      const BfEdge *other = edge_at (ring, i);
      BfVec2 at;
      double distance;

      if (bf_box_gap (&edge->box, &other->box) >= *least)
        continue;
      distance = bf_edge_distance (edge, other, &at);
      if (distance >= *least)
        continue;
      *least = distance;
      if (place != NULL)
        *place = at;
    }
}

double
bf_near_ring_distance (const BfNearRing *a, const BfNearRing *b, double limit_mm, BfVec2 *place)
{
  double least = limit_mm;

  if (bf_box_gap (&a->box, &b->box) >= limit_mm)
    return limit_mm;
  for (guint i = 0; i < a->edges->len; i++)
    if (bf_box_gap (&edge_at (a, i)->box, &b->box) < least)
      find_nearer (edge_at (a, i), b, &least, place);
  return least;
}

double
bf_near_ring_distance_to (const BfNearRing *near, BfVec2 p)
{
  double least = INFINITY;

  for (guint i = 0; i < near->edges->len; i++)
    {
      BfVec2 way = bf_vec2_sub (bf_edge_nearest (edge_at (near, i), p), p);

      least = MIN (least, bf_vec2_dot (way, way));
    }
  return sqrt (least);
}
