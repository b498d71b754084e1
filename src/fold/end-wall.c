/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/end-wall.h"

#include "core/tolerance.h"
#include "fold/corner-sides.h"

/* How far the metal of an edge stands in from its drawn line. */
static double
setback_of_edge (const BfLayout *layout, guint edge)
{
  const GPtrArray *flaps = layout->base_edges[edge];

  return flaps->len == 0 ? 0.0 : ((const BfFlap *)g_ptr_array_index (flaps, 0))->sums.setback_mm;
}

/* What the setbacks of an edge and of its neighbour take of the edge at the point between them. */
static double
taken_mm (const BfLayout *layout, guint at, double own_mm, double other_mm)
{
  guint n = bf_part_n_points (layout->part);
  BfVec2 p = bf_part_point (layout->part, at);
  BfVec2 before = bf_vec2_unit (bf_vec2_sub (p, bf_part_point (layout->part, at + n - 1)));
  BfVec2 after = bf_vec2_unit (bf_vec2_sub (bf_part_point (layout->part, at + 1), p));
  double sine = bf_vec2_cross (before, after), cosine = bf_vec2_dot (before, after);

  return fabs (sine) < BF_TOLERANCE_SIZE_MM ? 0.0 : (other_mm - own_mm * cosine) / sine;
}

/* The base's edge under a wall from bend to bend. */
static double
metal_edge_mm (const BfLayout *layout, const BfFlap *wall)
{
  guint n = bf_part_n_points (layout->part), edge = wall->flange->edge_index;
  double own = wall->sums.setback_mm;

  return wall->edge_length_mm -
         taken_mm (layout, edge, own, setback_of_edge (layout, (edge + n - 1) % n)) -
         taken_mm (layout, (edge + 1) % n, own, setback_of_edge (layout, (edge + 1) % n));
}

static double
height_mm (const BfFlap *wall)
{
  return wall->tip_w_mm + wall->tip_shift_mm;
}

BfSideName
bf_end_wall (const BfLayout *layout, const BfMeeting *meeting)
{
  const BfFlap *before = bf_meeting_flap (layout, meeting, BF_SIDE_END);
  const BfFlap *after = bf_meeting_flap (layout, meeting, BF_SIDE_START);
  double more =
      meeting->face >= 0 ? 0.0 : metal_edge_mm (layout, before) - metal_edge_mm (layout, after);

  if (fabs (more) < BF_TOLERANCE_SIZE_MM)
    more = height_mm (before) - height_mm (after);
  if (fabs (more) < BF_TOLERANCE_SIZE_MM)
    more = strcmp (before->flange->id, after->flange->id);
  return more > 0.0 ? BF_SIDE_START : BF_SIDE_END;
}
