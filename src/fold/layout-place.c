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

/* On sloping sides a child takes the narrower of its parent's width at the tip and at the child's
 * tangent, so that its bend has metal on both sides. */
static gboolean
find_tip_edge (const BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = &layout->flaps[flap->parent];
  double tip = parent->tip_w_mm, tangent = tip - flap->sums.setback_mm;
  double outer_tip = tangent + flap->sums.outside_setback_mm; /* whatever the part's measure */
  const BfSide *start = &parent->sides[BF_SIDE_START], *end = &parent->sides[BF_SIDE_END];
  double from = MAX (bf_side_at (start, outer_tip), bf_side_at (start, tangent));
  double to = parent->edge_length_mm - MAX (bf_side_at (end, outer_tip), bf_side_at (end, tangent));

  flap->edge_length_mm = to - from;
  flap->edge_start = bf_vec2 (from, tip);
  flap->edge_e = bf_vec2 (1.0, 0.0);
  flap->edge_n = bf_vec2 (0.0, 1.0);
  return parent->placed && flap->edge_length_mm > BF_TOLERANCE_SIZE_MM;
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
  flap->flat_e = parent->flat_e;
  flap->flat_n = parent->flat_n;
}

void
bf_layout_place (BfLayout *layout, BfFlap *flap)
{
  const BfFlap *parent = flap->parent >= 0 ? &layout->flaps[flap->parent] : NULL;

  if (flap->flange->edge == BF_EDGE_INDEX)
    flap->placed = find_base_edge (layout, flap);
  else if (flap->flange->edge == BF_EDGE_TIP && parent != NULL)
    flap->placed = find_tip_edge (layout, flap);
  if (!flap->placed)
    return;

  place_in_flat (layout, flap);
  bf_flap_pose (layout, flap, parent != NULL ? &parent->pose : NULL,
                (BfTurned){ flap->angle_rad, flap->radius_mm }, &flap->pose);
}
