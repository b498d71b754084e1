/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/folded-corner.h"

#include "core/materials.h"
#include "core/tolerance.h"
#include "fold/corner-sides.h"
#include "fold/score.h"
#include "fold/side.h"

#define SQUARE_RAD 1e-6

/* The bisector's fold must be this many thicknesses long to be made at all (common practice). */
#define LEAST_FOLD 4.0

static const BfFlap *
along_wall (const BfLayout *layout, const BfMeeting *meeting, const BfFoldedPlan *plan)
{
  return bf_meeting_flap (layout, meeting, plan->along);
}

static const BfFlap *
end_wall (const BfLayout *layout, const BfMeeting *meeting, const BfFoldedPlan *plan)
{
  return bf_meeting_flap (layout, meeting, bf_other_side (plan->along));
}

/* ---- whether it fits ----------------------------------------------------------------------- */

static gboolean
is_square (double angle_rad)
{
  return fabs (angle_rad - G_PI_2) < SQUARE_RAD;
}

/* From the base's outer face to the wall's tip. */
static double
height_mm (const BfLayout *layout, const BfFlap *wall)
{
  return layout->thickness_mm + wall->radius_mm + wall->tip_w_mm;
}

static gboolean
is_whole (const BfFlap *wall, BfSideName name)
{
  return !wall->sides[name].own && wall->on_tip == NULL && wall->on_side[name] == NULL;
}

/* As a closed hem: metals that bend to once their thickness can be folded flat. */
static gboolean
is_brittle (const BfLayout *layout)
{
  const BfMaterial *material = bf_material_find (layout->part->metal.material);

  return material != NULL && material->least_radius > 1.0 + BF_TOLERANCE_SIZE_MM;
}

static BfFoldedVerdict
judge_walls (const BfLayout *layout, const BfMeeting *meeting)
{
  const BfFlap *before = bf_meeting_flap (layout, meeting, BF_SIDE_END);
  const BfFlap *after = bf_meeting_flap (layout, meeting, BF_SIDE_START);
  double heights[] = { height_mm (layout, before), height_mm (layout, after) };

  if (meeting->face >= 0 || !is_square (meeting->interior_rad) || !is_square (before->angle_rad) ||
      !is_square (after->angle_rad))
    return (BfFoldedVerdict){ BF_FOLDED_NOT_SQUARE, NAN, NAN };
  if (!is_whole (before, BF_SIDE_END) || !is_whole (after, BF_SIDE_START))
    return (BfFoldedVerdict){ BF_FOLDED_NOT_WHOLE, NAN, NAN };
  if (fabs (heights[0] - heights[1]) > BF_TOLERANCE_SIZE_MM)
    return (BfFoldedVerdict){ BF_FOLDED_UNLIKE, MIN (heights[0], heights[1]),
                              MAX (heights[0], heights[1]) };
  if (is_brittle (layout) || before->bend.way == BF_BEND_WAY_SCORE ||
      after->bend.way == BF_BEND_WAY_SCORE)
    return (BfFoldedVerdict){ BF_FOLDED_BRITTLE, NAN, NAN };
  return (BfFoldedVerdict){ BF_FOLDED_FITS, NAN, NAN };
}

/* ---- the plan ------------------------------------------------------------------------------ */

static BfFoldedBend
make_bend (const BfLayout *layout, double angle_deg)
{
  g_autoptr (BfFlange) flange = bf_flange_new ("corner");
  BfFoldedBend bend;
  BfBend resolved;
  BfBendSums sums;

  flange->angle_deg = angle_deg;
  if (angle_deg > 90.0)
    flange->bend.inside_radius_mm = 0.0;
  if (layout->part->bend.way == BF_BEND_WAY_SCORE)
    flange->bend.way = BF_BEND_WAY_BAR;
  resolved = bf_bend_as_folded (layout->part, flange);
  bf_bend_sums (&resolved, bf_deg_to_rad (angle_deg), layout->thickness_mm, BF_MEASURE_OUTSIDE,
                &sums);
  bend.allowance_mm = sums.allowance_mm;
  bend.radius_mm = sums.face_radius_mm;
  bend.k = sums.k;
  return bend;
}

/* What a wall's y in the flat lacks of its height over the base's outer face. */
static double
rise_mm (const BfLayout *layout, const BfFlap *wall)
{
  return layout->thickness_mm + wall->radius_mm + wall->sums.setback_mm - wall->sums.allowance_mm;
}

/* From the drawn line to the wall's outer face. */
static double
outer_face_mm (const BfLayout *layout, const BfFlap *wall)
{
  return wall->radius_mm + layout->thickness_mm - wall->sums.setback_mm;
}

/* Unfolded about its own wall's end, each triangle is placed along the long wall by a length less
 * what it has in the flat: the two must agree wherever the walls' heights do. */
static void
fill_ends (const BfLayout *layout, const BfMeeting *meeting, BfFoldedPlan *plan)
{
  const BfFlap *a = along_wall (layout, meeting, plan), *b = end_wall (layout, meeting, plan);
  double t = layout->thickness_mm, r = plan->round.radius_mm, placed;

  plan->round_end_mm = outer_face_mm (layout, a) - 3.0 * t - r;
  placed = outer_face_mm (layout, b) - t - r + plan->round_end_mm + plan->round.allowance_mm;
  placed += rise_mm (layout, a) - rise_mm (layout, b);
  plan->along_end_mm = (placed - plan->hem.allowance_mm) / 2.0;
}

static void
fill_bisector (const BfLayout *layout, const BfMeeting *meeting, BfFoldedPlan *plan)
{
  const BfFlap *a = along_wall (layout, meeting, plan), *b = end_wall (layout, meeting, plan);
  double rise_a = rise_mm (layout, a), rise_b = rise_mm (layout, b), t = layout->thickness_mm;
  double low = t + MAX (a->radius_mm, b->radius_mm), swell = t * G_SQRT2 / 2.0;
  double half = plan->hem.allowance_mm * G_SQRT2 / 2.0;

  plan->low_x_mm = low - rise_b;
  plan->low_y_mm = low - rise_a;
  plan->tip_x_mm = height_mm (layout, b) - rise_b;
  plan->tip_y_mm = height_mm (layout, a) - rise_a;
  plan->along_k_mm = rise_b - rise_a + half;
  plan->round_k_mm = rise_b - rise_a - half;
  plan->bisector_x_mm = low + swell - rise_a - plan->along_k_mm;
  plan->reach_mm =
      plan->tip_y_mm - plan->along_k_mm - 2.0 * plan->along_end_mm - plan->hem.allowance_mm + swell;
}

static BfFoldedVerdict
judge_room (const BfLayout *layout, const BfMeeting *meeting, const BfFoldedPlan *plan)
{
  const BfFlap *a = along_wall (layout, meeting, plan), *b = end_wall (layout, meeting, plan);
  double t = layout->thickness_mm;
  double fold = plan->tip_y_mm - plan->along_k_mm - plan->bisector_x_mm, least = LEAST_FOLD * t;
  double beside = 2.0 * t - plan->round_end_mm;

  if (fold < least)
    return (BfFoldedVerdict){ BF_FOLDED_LOW, height_mm (layout, a),
                              height_mm (layout, a) + least - fold };
  if (plan->reach_mm > a->edge_length_mm / 2.0)
    return (BfFoldedVerdict){ BF_FOLDED_SHORT, a->edge_length_mm, 2.0 * plan->reach_mm };
  if (beside > b->edge_length_mm / 2.0)
    return (BfFoldedVerdict){ BF_FOLDED_SHORT, b->edge_length_mm, 2.0 * beside };
  if (plan->bisector_x_mm < plan->along_end_mm + plan->hem.allowance_mm ||
      plan->bisector_x_mm + plan->round_k_mm < plan->round_end_mm + plan->round.allowance_mm)
    return (BfFoldedVerdict){ BF_FOLDED_ROUND, NAN, NAN };
  return (BfFoldedVerdict){ BF_FOLDED_FITS, NAN, NAN };
}

BfFoldedVerdict
bf_folded_corner_plan (const BfLayout *layout, const BfMeeting *meeting, BfFoldedPlan *plan)
{
  BfFoldedVerdict verdict = judge_walls (layout, meeting);

  if (verdict.trouble != BF_FOLDED_FITS)
    return verdict;
  plan->along = bf_other_side (meeting->end_wall);
  plan->hem = make_bend (layout, 180.0);
  plan->round = make_bend (layout, 90.0);
  fill_ends (layout, meeting, plan);
  fill_bisector (layout, meeting, plan);
  return judge_room (layout, meeting, plan);
}

void
bf_folded_corner_trim (BfLayout *layout, const BfMeeting *meeting)
{
  BfFoldedPlan plan;
  BfSideName along;

  if (bf_folded_corner_plan (layout, meeting, &plan).trouble != BF_FOLDED_FITS)
    return;
  along = plan.along;
  bf_side_add_flat (&bf_meeting_flap (layout, meeting, along)->sides[along], -plan.along_end_mm,
                    0.0);
  bf_side_add_flat (
      &bf_meeting_flap (layout, meeting, bf_other_side (along))->sides[bf_other_side (along)],
      -plan.round_end_mm, 0.0);
}

/* ---- in the blank -------------------------------------------------------------------------- */

BfVec2
bf_folded_corner_vector (const BfLayout *layout,
                         const BfMeeting *meeting,
                         const BfFoldedPlan *plan,
                         BfVec2 v)
{
  return bf_vec2_along (bf_vec2_scale (end_wall (layout, meeting, plan)->flat_n, v.x),
                        along_wall (layout, meeting, plan)->flat_n, v.y);
}

BfVec2
bf_folded_corner_point (const BfLayout *layout,
                        const BfMeeting *meeting,
                        const BfFoldedPlan *plan,
                        BfVec2 p)
{
  return bf_vec2_add (meeting->vertex, bf_folded_corner_vector (layout, meeting, plan, p));
}
