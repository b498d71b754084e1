/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pattern-notch.h"

#include "core/tolerance.h"

/* A line may end this far from the contour: within a relief as large as any. */
#define FURTHEST_MM 40.0

/* Of an edge there stays at least this beside a notch: two that touch would leave a point. */
#define LEAST_LAND_MM 0.25

/* Where a line crosses a contour into the metal. */
typedef struct
{
  BfRing *ring;
  guint edge;
  double share;       /* of the edge's length, from its beginning */
  double distance_mm; /* from the line's end */
  BfVec2 at;
} Crossing;

typedef struct
{
  BfVec2 end, along; /* along: unit, to the line's other end */
  double length_mm;
} Bend;

static void
offer (const Bend *bend, const Crossing *found, Crossing *best)
{
  double along_mm = bf_vec2_dot (bf_vec2_sub (found->at, bend->end), bend->along);

  /* Not beyond the middle: that is the other end's. */
  if (found->share < 0.0 || found->share > 1.0 || along_mm > bend->length_mm / 2.0 ||
      fabs (along_mm) >= best->distance_mm)
    return;
  *best = *found;
  best->distance_mm = fabs (along_mm);
}

static void
cross_line (const Bend *bend, Crossing found, Crossing *best)
{
  BfVec2 from = bf_ring_vertex (found.ring, found.edge)->p;
  BfVec2 step = bf_vec2_sub (bf_ring_vertex (found.ring, found.edge + 1)->p, from);
  double slope = bf_vec2_cross (step, bend->along);

  if (slope < BF_TOLERANCE_ZERO) /* the metal is on the left */
    return;
  found.share = bf_vec2_cross (bf_vec2_sub (bend->end, from), bend->along) / slope;
  found.at = bf_vec2_along (from, step, found.share);
  offer (bend, &found, best);
}

static void
cross_arc (const Bend *bend, const BfArc *arc, Crossing found, Crossing *best)
{
  BfVec2 to_centre = bf_vec2_sub (arc->centre, bend->end);
  double along_mm = bf_vec2_dot (to_centre, bend->along);
  double off_mm = bf_vec2_cross (bend->along, to_centre);
  double half = sqrt (MAX (0.0, arc->radius * arc->radius - off_mm * off_mm));

  if (fabs (off_mm) >= arc->radius)
    return;
  for (int sign = -1; sign <= 1; sign += 2)
    {
      double turned;
      /* Into the circle on its near side, out of it on the far one: into metal is wanted. */
      if ((sign < 0) != (arc->sweep > 0.0))
        continue;
      found.at = bf_vec2_along (bend->end, bend->along, along_mm + sign * half);
      turned = atan2 (found.at.y - arc->centre.y, found.at.x - arc->centre.x) - arc->from;
      turned = fmod (arc->sweep > 0.0 ? turned : -turned, 2.0 * G_PI);
      found.share = (turned < 0.0 ? turned + 2.0 * G_PI : turned) / fabs (arc->sweep);
      offer (bend, &found, best);
    }
}

static void
cross_ring (const Bend *bend, BfRing *ring, Crossing *best)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      Crossing found = { .ring = ring, .edge = i };
      BfArc arc;
      if (bf_ring_arc (ring, i, &arc))
        cross_arc (bend, &arc, found, best);
      else
        cross_line (bend, found, best);
    }
}

/* The point of an edge at a share of its length. */
static BfVec2
edge_point (const BfRing *ring, guint edge, double share)
{
  BfVec2 from = bf_ring_vertex (ring, edge)->p;
  BfArc arc;
  double turned;

  if (!bf_ring_arc (ring, edge, &arc))
    return bf_vec2_along (from, bf_vec2_sub (bf_ring_vertex (ring, edge + 1)->p, from), share);
  turned = arc.from + arc.sweep * share;
  return bf_vec2_add (arc.centre, bf_vec2 (arc.radius * cos (turned), arc.radius * sin (turned)));
}

static double
edge_length (const BfRing *ring, guint edge)
{
  BfArc arc;

  if (bf_ring_arc (ring, edge, &arc))
    return arc.radius * fabs (arc.sweep);
  return bf_vec2_distance (bf_ring_vertex (ring, edge)->p, bf_ring_vertex (ring, edge + 1)->p);
}

static gboolean
cut_notch (const Crossing *place, BfVec2 along)
{
  double length_mm = edge_length (place->ring, place->edge);
  double half = BF_NOTCH_HALF_MM / length_mm, land = LEAST_LAND_MM / length_mm;
  double before = place->share - half, after = place->share + half;
  BfVertex *vertex = &g_array_index (place->ring->vertices, BfVertex, place->edge);
  double quarter = atan (vertex->bulge); /* of the edge's sweep */
  BfVertex added[3];

  if (before < land || after > 1.0 - land)
    return FALSE;
  added[0] = (BfVertex){ edge_point (place->ring, place->edge, before), 0.0 };
  added[1] = (BfVertex){ bf_vec2_along (place->at, along, BF_NOTCH_DEPTH_MM), 0.0 };
  added[2] =
      (BfVertex){ edge_point (place->ring, place->edge, after), tan (quarter * (1.0 - after)) };
  vertex->bulge = tan (quarter * before);
  g_array_insert_vals (place->ring->vertices, place->edge + 1, added, G_N_ELEMENTS (added));
  return TRUE;
}

gboolean
bf_pattern_notch (GPtrArray *rings, BfVec2 end, BfVec2 other)
{
  BfVec2 step = bf_vec2_sub (other, end);
  Bend bend = { end, bf_vec2_unit (step), bf_vec2_length (step) };
  Crossing best = { .distance_mm = FURTHEST_MM };

  g_return_val_if_fail (rings != NULL, FALSE);

  for (guint i = 0; i < rings->len; i++)
    cross_ring (&bend, g_ptr_array_index (rings, i), &best);
  return best.ring != NULL && cut_notch (&best, bend.along);
}
