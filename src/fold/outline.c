/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/outline.h"

#include "core/tolerance.h"
#include "fold/side.h"

/* An edge that flaps may hang on: an edge of the base, or a flap's tip. */
typedef struct
{
  BfVec2 origin, e, n; /* in the blank: a point is origin + u e + v n */
  double length_mm;
  const GPtrArray *flaps; /* by start; NULL for none */
} Edge;

typedef struct
{
  const BfLayout *layout;
  gboolean whole; /* out and round every flap, slits opened */
  BfRing *ring;
} Walk;

static void walk_flap (Walk *walk, const BfFlap *flap);

static BfVec2
edge_point (const Edge *edge, double u, double v)
{
  return bf_vec2_along (bf_vec2_along (edge->origin, edge->e, u), edge->n, v);
}

static Edge
base_edge (const BfLayout *layout, guint i)
{
  BfVec2 from = bf_part_point (layout->part, i), to = bf_part_point (layout->part, i + 1);
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (to, from));

  return (Edge){ from, e, bf_vec2 (e.y, -e.x), bf_vec2_distance (from, to),
                 layout->base_edges[i % bf_part_n_points (layout->part)] };
}

static Edge
tip_edge (const BfFlap *flap)
{
  return (Edge){ bf_flap_to_blank (flap, 0.0, flap->tip_w_mm), flap->flat_e, flap->flat_n,
                 flap->edge_length_mm, flap->on_tip };
}

static const BfFlap *
flap_at (const Edge *edge, guint i)
{
  return g_ptr_array_index (edge->flaps, i);
}

static guint
n_flaps (const Edge *edge)
{
  guint n = 0;

  while (edge->flaps != NULL && n < edge->flaps->len && flap_at (edge, n)->placed)
    n++;
  return n;
}

/* u on the edge of where the flap's zone starts or ends. */
static double
zone_u (const BfFlap *flap, BfSideName name)
{
  double shift = flap->parent >= 0 ? flap->edge_start.x : 0.0;
  return shift + bf_flap_zone_u (flap, name);
}

/* How far the metal stands in from the drawn edge at the edge's start or end. */
static double
end_offset (const Edge *edge, BfSideName name)
{
  guint n = n_flaps (edge);
  const BfFlap *flap;

  if (n == 0)
    return 0.0;
  flap = flap_at (edge, name == BF_SIDE_START ? 0 : n - 1);
  return flap->sides[name].bare_beside ? 0.0 : flap->sums.setback_mm;
}

static void
emit (Walk *walk, BfVec2 p)
{
  bf_ring_add (walk->ring, p, 0.0);
}

/* Where the metal of one edge, moved in by its offset, meets that of the next. */
static void
emit_corner (Walk *walk, const Edge *before, const Edge *after)
{
  double o1 = -end_offset (before, BF_SIDE_END), o2 = -end_offset (after, BF_SIDE_START);
  double det = bf_vec2_cross (before->n, after->n);

  if (fabs (det) < 1e-6)
    {
      emit (walk, bf_vec2_along (after->origin, before->n, o1));
      emit (walk, bf_vec2_along (after->origin, after->n, o2));
      return;
    }
  emit (walk, bf_vec2 (after->origin.x + (o1 * after->n.y - o2 * before->n.y) / det,
                       after->origin.y + (before->n.x * o2 - after->n.x * o1) / det));
}

/* A flange that stands flush with a corner whose bare edge leans away: the slit beside its bend
 * opens through that edge, short of the vertex. */
static gboolean
opens_through_neighbour (const Walk *walk, const BfFlap *flap, BfSideName name)
{
  return walk->whole && flap->parent < 0 && flap->sides[name].bare_beside &&
         flap->sides[name].zone_mm < BF_OUTLINE_SLIT_MM;
}

/* The step from the drawn edge in to the flap's tangent, or back out. */
static void
emit_step (Walk *walk, const Edge *edge, const BfFlap *flap, BfSideName name)
{
  double slit = walk->whole ? BF_OUTLINE_SLIT_MM : 0.0;
  double u = zone_u (flap, name) + (name == BF_SIDE_START ? -slit : slit);
  BfVec2 drawn = edge_point (edge, u, 0.0), tangent = edge_point (edge, u, -flap->sums.setback_mm);
  gboolean opened = opens_through_neighbour (walk, flap, name);

  if (name == BF_SIDE_START && !opened)
    emit (walk, drawn);
  emit (walk, tangent);
  if (name == BF_SIDE_END && !opened)
    emit (walk, drawn);
}

static void
walk_edge (Walk *walk, const Edge *edge)
{
  guint n = n_flaps (edge);

  for (guint i = 0; i < n; i++)
    {
      const BfFlap *flap = flap_at (edge, i);
      double tangent = -flap->sums.setback_mm;

      if (flap->sides[BF_SIDE_START].bare_beside)
        emit_step (walk, edge, flap, BF_SIDE_START);
      emit (walk, edge_point (edge, zone_u (flap, BF_SIDE_START), tangent));
      if (walk->whole)
        walk_flap (walk, flap);
      emit (walk, edge_point (edge, zone_u (flap, BF_SIDE_END), tangent));
      if (flap->sides[BF_SIDE_END].bare_beside)
        emit_step (walk, edge, flap, BF_SIDE_END);
    }
}

/* Along a side from the flap's tangent out to the tip (start), or back (end). */
static void
walk_side (Walk *walk, const BfFlap *flap, BfSideName name, double to_w)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_side_trace (&flap->sides[name], to_w, points);
  for (guint i = 0; i < points->len; i++)
    {
      guint k = name == BF_SIDE_START ? i : points->len - 1 - i;
      BfVec2 p = g_array_index (points, BfVec2, k);
      emit (walk, bf_flap_to_blank (flap, bf_flap_u (flap, name, p.x), p.y));
    }
}

static void
walk_flat (Walk *walk, const BfFlap *flap)
{
  Edge tip = tip_edge (flap);

  walk_side (walk, flap, BF_SIDE_START, flap->tip_w_mm - end_offset (&tip, BF_SIDE_START));
  walk_edge (walk, &tip);
  walk_side (walk, flap, BF_SIDE_END, flap->tip_w_mm - end_offset (&tip, BF_SIDE_END));
}

static void
walk_flap (Walk *walk, const BfFlap *flap)
{
  BfVec2 zone[4];

  bf_outline_zone (flap, zone);
  emit (walk, zone[3]);
  walk_flat (walk, flap);
  emit (walk, zone[2]);
}

static const BfFlap *
outermost (const Edge *edge, BfSideName name)
{
  guint n = n_flaps (edge);
  return n == 0 ? NULL : flap_at (edge, name == BF_SIDE_START ? 0 : n - 1);
}

static gboolean
end_is_opened (const Walk *walk, const Edge *edge, BfSideName name)
{
  const BfFlap *flap = outermost (edge, name);
  return flap != NULL && opens_through_neighbour (walk, flap, name);
}

static void
emit_opened_corner (Walk *walk, const Edge *neighbour, const Edge *edge, BfSideName name)
{
  double u = name == BF_SIDE_START ? -BF_OUTLINE_SLIT_MM : edge->length_mm + BF_OUTLINE_SLIT_MM;
  BfVec2 at = edge_point (edge, u, 0.0);
  double rise = bf_vec2_dot (edge->n, neighbour->n);

  /* Straight in from the drawn edge's line until the neighbour edge is met. */
  if (fabs (rise) > BF_TOLERANCE_SIZE_MM)
    at = bf_vec2_along (at, edge->n,
                        -bf_vec2_dot (bf_vec2_sub (at, neighbour->origin), neighbour->n) / rise);
  emit (walk, at);
}

static void
walk_base (Walk *walk)
{
  guint n = bf_part_n_points (walk->layout->part);

  for (guint i = 0; i < n; i++)
    {
      Edge before = base_edge (walk->layout, (i + n - 1) % n), after = base_edge (walk->layout, i);

      if (end_is_opened (walk, &before, BF_SIDE_END))
        emit_opened_corner (walk, &after, &before, BF_SIDE_END);
      else if (end_is_opened (walk, &after, BF_SIDE_START))
        emit_opened_corner (walk, &before, &after, BF_SIDE_START);
      else
        emit_corner (walk, &before, &after);
      walk_edge (walk, &after);
    }
}

BfRing *
bf_outline_face (const BfLayout *layout, int flap)
{
  g_autoptr (BfRing) ring = bf_ring_new ();
  Walk walk = { layout, FALSE, ring };

  if (flap < 0)
    walk_base (&walk);
  else if (layout->flaps[flap].placed)
    walk_flat (&walk, &layout->flaps[flap]);
  bf_outline_tidy (ring);
  return g_steal_pointer (&ring);
}

BfRing *
bf_outline_blank (const BfLayout *layout)
{
  g_autoptr (BfRing) ring = bf_ring_new ();
  Walk walk = { layout, TRUE, ring };

  walk_base (&walk);
  bf_outline_tidy (ring);
  return g_steal_pointer (&ring);
}

void
bf_outline_zone (const BfFlap *flap, BfVec2 zone[4])
{
  double start = bf_flap_zone_u (flap, BF_SIDE_START), end = bf_flap_zone_u (flap, BF_SIDE_END);
  double parent_w = -flap->sums.allowance_mm;

  zone[0] = bf_flap_to_blank (flap, start, parent_w);
  zone[1] = bf_flap_to_blank (flap, end, parent_w);
  zone[2] = bf_flap_to_blank (flap, end, 0.0);
  zone[3] = bf_flap_to_blank (flap, start, 0.0);
}

/* A point that its neighbours make superfluous: it doubles the one before, or the line runs on. */
static gboolean
is_superfluous (BfVec2 before, BfVec2 p, BfVec2 after)
{
  BfVec2 in = bf_vec2_sub (p, before), out = bf_vec2_sub (after, p);
  double in_length = bf_vec2_length (in), out_length = bf_vec2_length (out);

  if (in_length < BF_TOLERANCE_ZERO)
    return TRUE;
  return out_length > BF_TOLERANCE_ZERO &&
         fabs (bf_vec2_cross (in, out)) < BF_TOLERANCE_ZERO * MAX (in_length, out_length) &&
         bf_vec2_dot (in, out) > 0.0;
}

void
bf_outline_tidy (BfRing *ring)
{
  GArray *old = ring->vertices;
  guint n = old->len;
  GArray *kept = g_array_sized_new (FALSE, FALSE, sizeof (BfVertex), n);

  for (guint i = 0; i < n; i++)
    {
      const BfVertex *v = &g_array_index (old, BfVertex, i);
      const BfVertex *before = kept->len > 0 ? &g_array_index (kept, BfVertex, kept->len - 1)
                                             : &g_array_index (old, BfVertex, n - 1);
      const BfVertex *after = &g_array_index (old, BfVertex, (i + 1) % n);

      if (!is_superfluous (before->p, v->p, after->p))
        g_array_append_vals (kept, v, 1);
    }
  g_array_unref (old);
  ring->vertices = kept;
}
