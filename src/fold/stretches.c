/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/stretches.h"

#include "core/tolerance.h"
#include "fold/side.h"

guint
bf_stretch_n_flaps (const BfStretch *stretch)
{
  guint n = 0;

  while (stretch->flaps != NULL && n < stretch->flaps->len &&
         ((const BfFlap *)g_ptr_array_index (stretch->flaps, n))->placed)
    n++;
  return n;
}

const BfFlap *
bf_stretch_outermost (const BfStretch *stretch, BfSideName name)
{
  guint n = bf_stretch_n_flaps (stretch);
  return n == 0 ? NULL : g_ptr_array_index (stretch->flaps, name == BF_SIDE_START ? 0 : n - 1);
}

double
bf_stretch_zone_u (const BfFlap *flap, BfSideName name)
{
  double shift = flap->flange->edge == BF_EDGE_TIP ? flap->edge_start.x : 0.0;
  return shift + bf_flap_zone_u (flap, name);
}

double
bf_stretch_offset (const BfStretch *stretch, BfSideName name)
{
  const BfFlap *flap = bf_stretch_outermost (stretch, name);

  if (flap == NULL || (flap->sides[name].bare_beside && !flap->sides[name].at_root))
    return 0.0;
  return flap->sums.setback_mm;
}

gboolean
bf_stretch_corner (const BfStretch *before, const BfStretch *after, BfVec2 *corner)
{
  BfVec2 vertex = bf_stretch_point (after, after->from_u, 0.0);
  double in_1 = -bf_stretch_offset (before, BF_SIDE_END);
  double in_2 = -bf_stretch_offset (after, BF_SIDE_START);
  double det = bf_vec2_cross (before->n, after->n);

  if (fabs (det) < 1e-6)
    return FALSE;
  corner->x = vertex.x + (in_1 * after->n.y - in_2 * before->n.y) / det;
  corner->y = vertex.y + (before->n.x * in_2 - after->n.x * in_1) / det;
  return TRUE;
}

static void
turn_along (BfStretch *stretch, BfVec2 e)
{
  stretch->e = e;
  stretch->n = bf_vec2 (e.y, -e.x);
}

static BfStretch
between (BfVec2 from, BfVec2 to)
{
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (to, from));

  return (BfStretch){
    .origin = from, .e = e, .n = { e.y, -e.x }, .to_u = bf_vec2_distance (from, to), .corner = -1
  };
}

static void
add_base (const BfLayout *layout, GArray *stretches)
{
  for (guint i = 0; i < bf_part_n_points (layout->part); i++)
    {
      BfStretch stretch =
          between (bf_part_point (layout->part, i), bf_part_point (layout->part, i + 1));

      stretch.corner = (int)i;
      stretch.flaps = layout->base_edges[i];
      g_array_append_val (stretches, stretch);
    }
}

static BfStretch
tip_of (const BfFlap *flap)
{
  return (BfStretch){ .origin = bf_flap_to_blank (flap, 0.0, flap->tip_w_mm),
                      .e = flap->flat_e,
                      .n = flap->flat_n,
                      .corner = 0,
                      .flaps = flap->on_tip };
}

static BfVec2
side_point (const BfFlap *flap, BfSideName name, BfVec2 q_w)
{
  return bf_flap_to_blank (flap, bf_flap_u (flap, name, q_w.x), q_w.y);
}

/* A side from the flap's tangent to its tip, leg by leg; the last leg is drawn on to the tip, also
 * where the tip carries flaps and the metal ends before it. */
static void
trace_side (const BfFlap *flap, BfSideName name, const BfStretch *tip, GArray *points)
{
  double metal_w = flap->tip_w_mm - bf_stretch_offset (tip, name);
  BfVec2 *last, *before;

  bf_side_trace (&flap->sides[name], metal_w, points);
  last = &g_array_index (points, BfVec2, points->len - 1);
  before = &g_array_index (points, BfVec2, points->len - 2);
  if (fabs (last->y - before->y) > BF_TOLERANCE_ZERO)
    *last = bf_vec2_along (*before, bf_vec2_sub (*last, *before),
                           (flap->tip_w_mm - before->y) / (last->y - before->y));
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 *p = &g_array_index (points, BfVec2, i);
      *p = side_point (flap, name, *p);
    }
}

/* What hangs on a side hangs on one of its legs. */
static gboolean
leg_carries (const GPtrArray *flaps, BfVec2 leg_start)
{
  const BfFlap *first = flaps != NULL ? g_ptr_array_index (flaps, 0) : NULL;

  return first != NULL && first->placed &&
         bf_vec2_distance (first->flat_origin, leg_start) < BF_TOLERANCE_SIZE_MM;
}

/* The legs of a side as stretches, in the outline's order. */
static void
add_side (const BfFlap *flap, BfSideName name, const GArray *points, GArray *stretches)
{
  guint n_legs = points->len - 1;

  for (guint i = 0; i < n_legs; i++)
    {
      guint leg = name == BF_SIDE_START ? i : n_legs - 1 - i;
      BfVec2 a = g_array_index (points, BfVec2, leg), b = g_array_index (points, BfVec2, leg + 1);
      BfStretch stretch = name == BF_SIDE_START ? between (a, b) : between (b, a);

      if (stretch.to_u < BF_TOLERANCE_ZERO) /* no flat to speak of */
        turn_along (&stretch, bf_vec2_scale (flap->flat_n, name == BF_SIDE_START ? 1.0 : -1.0));
      if (name == BF_SIDE_END && i == 0)
        stretch.corner = 1;
      if (leg_carries (flap->on_side[name], stretch.origin))
        stretch.flaps = flap->on_side[name];
      g_array_append_val (stretches, stretch);
    }
}

static void
add_flap (const BfFlap *flap, GArray *stretches)
{
  g_autoptr (GArray) start = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  g_autoptr (GArray) end = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  BfStretch tip = tip_of (flap);

  trace_side (flap, BF_SIDE_START, &tip, start);
  trace_side (flap, BF_SIDE_END, &tip, end);
  tip.from_u =
      bf_vec2_dot (bf_vec2_sub (g_array_index (start, BfVec2, start->len - 1), tip.origin), tip.e);
  tip.to_u =
      bf_vec2_dot (bf_vec2_sub (g_array_index (end, BfVec2, end->len - 1), tip.origin), tip.e);
  add_side (flap, BF_SIDE_START, start, stretches);
  g_array_append_val (stretches, tip);
  add_side (flap, BF_SIDE_END, end, stretches);
}

GArray *
bf_stretches_new (const BfLayout *layout, int flap)
{
  GArray *stretches = g_array_new (FALSE, TRUE, sizeof (BfStretch));

  if (flap < 0)
    add_base (layout, stretches);
  else
    add_flap (&layout->flaps[flap], stretches);
  return stretches;
}

BfStretch
bf_stretch_root (const BfFlap *flap)
{
  return (BfStretch){ .origin = bf_flap_to_blank (flap, 0.0, 0.0),
                      .e = bf_vec2_scale (flap->flat_e, -1.0),
                      .n = bf_vec2_scale (flap->flat_n, -1.0),
                      .corner = -1 };
}
