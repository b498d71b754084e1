/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/layout.h"

#include "core/tolerance.h"
#include "fold/side.h"

BfVec2
bf_flap_to_blank (const BfFlap *flap, double u_mm, double w_mm)
{
  double v = w_mm - flap->sums.setback_mm + flap->sums.allowance_mm;
  return bf_vec2_along (bf_vec2_along (flap->flat_origin, flap->flat_e, u_mm), flap->flat_n, v);
}

const BfPose bf_base_pose = {
  { 0.0, 0.0, 0.0 }, { 1.0, 0.0, 0.0 }, { 0.0, 1.0, 0.0 }, { 0.0, 0.0, 1.0 }
};

void
bf_flap_pose (
    const BfLayout *layout, const BfFlap *flap, const BfPose *parent, BfTurned turned, BfPose *pose)
{
  const BfPose *on = parent != NULL ? parent : &bf_base_pose;
  BfVec2 foot = bf_vec2_along (flap->edge_start, flap->edge_n, -flap->sums.setback_mm);
  BfVec3 tangent = bf_pose_point (on, foot);
  BfVec3 n = bf_pose_vector (on, flap->edge_n);
  double sign = flap->flange->turn == BF_TURN_UP ? 1.0 : -1.0;
  double r = sign > 0.0 ? turned.radius_mm : turned.radius_mm + layout->thickness_mm;
  double sine = sin (turned.angle_rad), cosine = cos (turned.angle_rad);

  pose->e = bf_pose_vector (on, flap->edge_e);
  pose->d = bf_vec3_along (bf_vec3_scale (n, cosine), on->m, sign * sine);
  pose->m = bf_vec3_along (bf_vec3_scale (n, -sign * sine), on->m, cosine);
  pose->origin =
      bf_vec3_along (bf_vec3_along (tangent, n, r * sine), on->m, sign * r * (1.0 - cosine));
}

static gboolean
find_base_edge (const BfLayout *layout, BfFlap *flap)
{
  guint i = flap->flange->edge_index;
  BfVec2 from, to;

  if (i >= bf_part_n_points (layout->part))
    return FALSE;
  from = bf_part_point (layout->part, i);
  to = bf_part_point (layout->part, i + 1);
  flap->edge_length_mm = bf_vec2_distance (from, to);
  flap->edge_start = from;
  flap->edge_e = bf_vec2_unit (bf_vec2_sub (to, from));
  flap->edge_n = bf_vec2 (flap->edge_e.y, -flap->edge_e.x);
  return flap->edge_length_mm > BF_TOLERANCE_SIZE_MM;
}

/* TRUE where flanges on a side begin at the tip's corner too; a tab keeps off it. */
static gboolean
shares_corner (const GPtrArray *on_side)
{
  return on_side != NULL && !((const BfFlap *)g_ptr_array_index (on_side, 0))->flange->is_tab;
}

/* q of the parent's side at which an edge on its tip starts or ends. On sloping sides a child takes
 * the narrower of its parent's width at the tip and at the child's tangent, so that its bend has
 * metal on both sides; where the side carries a flange too, the two share the corner. */
static double
tip_end_q (const BfFlap *parent, const BfFlap *flap, BfSideName name)
{
  const BfSide *side = &parent->sides[name];
  double tangent = parent->tip_w_mm - flap->sums.setback_mm;
  double outer_tip = tangent + flap->sums.outside_setback_mm; /* whatever the part's measure */

  if (shares_corner (parent->on_side[name]))
    return bf_side_at (side, parent->tip_w_mm);
  return MAX (bf_side_at (side, outer_tip), bf_side_at (side, tangent));
}

static gboolean
find_tip_edge (const BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = &layout->flaps[flap->parent];
  double from = tip_end_q (parent, flap, BF_SIDE_START);
  double to = parent->edge_length_mm - tip_end_q (parent, flap, BF_SIDE_END);

  flap->edge_length_mm = to - from;
  flap->edge_start = bf_vec2 (from, parent->tip_w_mm);
  flap->edge_e = bf_vec2 (1.0, 0.0);
  flap->edge_n = bf_vec2 (0.0, 1.0);
  return parent->placed && flap->edge_length_mm > BF_TOLERANCE_SIZE_MM;
}

static guint
longest_leg (const GArray *points)
{
  guint longest = 0;
  double length = -1.0;

  for (guint i = 0; i + 1 < points->len; i++)
    {
      double leg = bf_vec2_distance (g_array_index (points, BfVec2, i),
                                     g_array_index (points, BfVec2, i + 1));

      if (leg > length + BF_TOLERANCE_SIZE_MM)
        {
          length = leg;
          longest = i;
        }
    }
  return longest;
}

/* A flange on a side hangs on its longest straight stretch. A start edge runs from root to tip, an
 * end edge from tip to root. */
static gboolean
find_side_edge (const BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = &layout->flaps[flap->parent];
  BfSideName name = flap->flange->edge == BF_EDGE_START ? BF_SIDE_START : BF_SIDE_END;
  double across = name == BF_SIDE_START ? 1.0 : -1.0; /* from the side over to the other side */
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  const BfVec2 *p;
  guint leg, root = name == BF_SIDE_START ? 0 : 1;

  if (!parent->placed)
    return FALSE;
  bf_side_trace (&parent->sides[name], parent->tip_w_mm, points);
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 *point = &g_array_index (points, BfVec2, i);
      point->x = bf_flap_u (parent, name, point->x);
    }
  leg = longest_leg (points);
  p = &g_array_index (points, BfVec2, leg);
  flap->beside[root] = leg == 0 ? bf_vec2 (across, 0.0) : bf_vec2_sub (p[-1], p[0]);
  flap->beside[1 - root] =
      leg + 2 == points->len ? bf_vec2 (across, 0.0) : bf_vec2_sub (p[2], p[1]);
  flap->edge_start = p[root];
  flap->edge_e = bf_vec2_unit (bf_vec2_sub (p[1 - root], p[root]));
  flap->edge_n = bf_vec2 (-flap->edge_e.y, flap->edge_e.x); /* u and w run the other way round */
  flap->edge_length_mm = bf_vec2_distance (p[0], p[1]);
  return flap->edge_length_mm > BF_TOLERANCE_SIZE_MM;
}

static void
place_in_flat (const BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = flap->parent >= 0 ? &layout->flaps[flap->parent] : NULL;

  if (parent == NULL)
    {
      flap->flat_origin = flap->edge_start;
      flap->flat_e = flap->edge_e;
      flap->flat_n = flap->edge_n;
      return;
    }
  flap->flat_origin = bf_flap_to_blank (parent, flap->edge_start.x, flap->edge_start.y);
  flap->flat_e = bf_flap_vector_to_blank (parent, flap->edge_e);
  flap->flat_n = bf_flap_vector_to_blank (parent, flap->edge_n);
}

void
bf_layout_place (BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = flap->parent >= 0 ? &layout->flaps[flap->parent] : NULL;

  if (flap->flange->edge == BF_EDGE_INDEX)
    flap->placed = find_base_edge (layout, flap);
  else if (parent != NULL)
    flap->placed = flap->flange->edge == BF_EDGE_TIP ? find_tip_edge (layout, flap)
                                                     : find_side_edge (layout, flap);
  if (!flap->placed)
    return;

  place_in_flat (layout, flap);
  bf_flap_pose (layout, flap, parent != NULL ? &parent->pose : NULL,
                (BfTurned){ flap->angle_rad, flap->radius_mm }, &flap->pose);
}
