/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "fold/corner-sides.h"
#include "fold/folded-corner.h"

/* A folded corner's pieces in the blank. */
typedef struct
{
  const BfLayout *layout;
  const BfMeeting *meeting;
  BfFoldedPlan plan;
} Corner;

static BfVec2
point (const Corner *corner, double x, double y)
{
  return bf_folded_corner_point (corner->layout, corner->meeting, &corner->plan, bf_vec2 (x, y));
}

/* ---- triangles ----------------------------------------------------------------------------- */

static BfRing *
ring_of (const Corner *corner, const double xy[][2], guint n)
{
  BfRing *ring = bf_ring_new ();

  for (guint i = 0; i < n; i++)
    bf_ring_add (ring, point (corner, xy[i][0], xy[i][1]), 0.0);
  bf_ring_make_counter_clockwise (ring);
  return ring;
}

/* The triangle at the long wall's end, cut off where the walls' bends begin; or not, where its own
 * corner lies above that. */
static BfRing *
along_ear (const Corner *corner)
{
  const BfFoldedPlan *plan = &corner->plan;
  double x = plan->along_end_mm + plan->hem.allowance_mm, low = plan->low_y_mm;
  double low_x = low - plan->along_k_mm, tip = plan->tip_y_mm;
  const double xy[][2] = { { x, tip },
                           { x, MAX (low, x + plan->along_k_mm) },
                           { MAX (low_x, x), MAX (low, x + plan->along_k_mm) },
                           { tip - plan->along_k_mm, tip } };

  if (low_x > x)
    return ring_of (corner, xy, 4);
  return ring_of (
      corner,
      (const double[][2]){ { xy[0][0], xy[0][1] }, { xy[1][0], xy[1][1] }, { xy[3][0], xy[3][1] } },
      3);
}

/* The one at the end wall's end. */
static BfRing *
round_ear (const Corner *corner)
{
  const BfFoldedPlan *plan = &corner->plan;
  double y = plan->round_end_mm + plan->round.allowance_mm, low = plan->low_x_mm;
  double low_y = low + plan->round_k_mm, tip = plan->tip_x_mm;
  const double xy[][2] = { { tip, y },
                           { MAX (low, y - plan->round_k_mm), y },
                           { MAX (low, y - plan->round_k_mm), MAX (low_y, y) },
                           { tip, tip + plan->round_k_mm } };

  if (low_y > y)
    return ring_of (corner, xy, 4);
  return ring_of (
      corner,
      (const double[][2]){ { xy[0][0], xy[0][1] }, { xy[1][0], xy[1][1] }, { xy[3][0], xy[3][1] } },
      3);
}

/* ---- folds --------------------------------------------------------------------------------- */

/* A fold from its foot outward, and the way across its zone. */
static BfCrease
make_crease (const Corner *corner, BfVec2 from, BfVec2 to, BfVec2 across)
{
  BfVec2 half = bf_vec2_scale (across, 0.5);
  BfVec2 far_from = bf_vec2_add (from, across), far_to = bf_vec2_add (to, across);
  const BfVec2 zone[] = { from, to, far_to, far_from };
  BfCrease crease = { .line = { bf_vec2_add (from, half), bf_vec2_add (to, half) } };

  for (guint i = 0; i < 2; i++)
    crease.line[i] = point (corner, crease.line[i].x, crease.line[i].y);
  for (guint i = 0; i < 4; i++)
    crease.zone[i] = point (corner, zone[i].x, zone[i].y);
  if (bf_vec2_cross (bf_vec2_sub (crease.zone[0], crease.zone[1]),
                     bf_vec2_sub (crease.zone[3], crease.zone[0])) < 0.0)
    for (guint i = 0; i < 4; i++) /* the other way round, as a flange's zone runs */
      crease.zone[i] = point (corner, zone[i ^ 1].x, zone[i ^ 1].y);
  return crease;
}

static void
make_creases (const Corner *corner, BfCrease creases[3])
{
  const BfFoldedPlan *plan = &corner->plan;
  BfTurn turn = bf_meeting_flap (corner->layout, corner->meeting, plan->along)->flange->turn;
  double half = plan->hem.allowance_mm * G_SQRT2 / 2.0;
  BfVec2 foot = { plan->bisector_x_mm, plan->bisector_x_mm + plan->along_k_mm };

  creases[0] = make_crease (corner, bf_vec2 (plan->along_end_mm, plan->low_y_mm),
                            bf_vec2 (plan->along_end_mm, plan->tip_y_mm),
                            bf_vec2 (plan->hem.allowance_mm, 0.0));
  creases[1] =
      make_crease (corner, foot, bf_vec2 (plan->tip_y_mm - plan->along_k_mm, plan->tip_y_mm),
                   bf_vec2 (half, -half));
  creases[1].line[1] = point (corner, plan->tip_x_mm, plan->tip_y_mm);
  creases[2] = make_crease (corner, bf_vec2 (plan->low_x_mm, plan->round_end_mm),
                            bf_vec2 (plan->tip_x_mm, plan->round_end_mm),
                            bf_vec2 (0.0, plan->round.allowance_mm));
  creases[0].angle_rad = creases[1].angle_rad = G_PI;
  creases[2].angle_rad = G_PI_2;
  creases[0].turn = creases[2].turn = turn;
  creases[1].turn = turn == BF_TURN_UP ? BF_TURN_DOWN : BF_TURN_UP;
}

/* ---- the rest ------------------------------------------------------------------------------ */

/* What a wall leaves bare of the strip beside it, from its bend's parent to its tip, as far as the
 * base's corner. */
static double
beside_wall_mm2 (const BfFlap *wall, BfSideName name, double end_mm, double corner_mm)
{
  double zone = corner_mm + wall->sides[name].zone_mm, flat = corner_mm - end_mm;

  return zone * wall->sums.allowance_mm + flat * wall->tip_w_mm;
}

/* All the metal of the corner, less what is a triangle or a fold. */
static double
rest_mm2 (const Corner *corner, const BfFoldedCorner *made)
{
  const BfFoldedPlan *plan = &corner->plan;
  BfSideName along = plan->along, end = bf_other_side (along);
  const BfFlap *a = bf_meeting_flap (corner->layout, corner->meeting, along);
  const BfFlap *b = bf_meeting_flap (corner->layout, corner->meeting, end);
  double x = -b->sums.setback_mm, y = -a->sums.setback_mm;
  double area = (plan->tip_x_mm - x) * (plan->tip_y_mm - y) +
                beside_wall_mm2 (a, along, plan->along_end_mm, x) +
                beside_wall_mm2 (b, end, plan->round_end_mm, y);

  for (guint i = 0; i < 3; i++)
    area -= bf_vec2_distance (made->creases[i].zone[0], made->creases[i].zone[1]) *
            bf_vec2_distance (made->creases[i].zone[1], made->creases[i].zone[2]);
  return area - bf_ring_area (made->ears[0]) - bf_ring_area (made->ears[1]);
}

void
bf_folded_corner_clear (BfFoldedCorner *corner)
{
  g_clear_pointer (&corner->where, g_free);
  g_clear_pointer (&corner->name, g_free);
  g_clear_pointer (&corner->ears[0], bf_ring_free);
  g_clear_pointer (&corner->ears[1], bf_ring_free);
}

static BfFoldedCorner
make_corner (const Corner *corner)
{
  const BfMeeting *meeting = corner->meeting;
  gboolean before = corner->plan.along == BF_SIDE_END;
  const BfFlap *a = bf_meeting_flap (corner->layout, meeting, corner->plan.along);
  const BfFlap *b = bf_meeting_flap (corner->layout, meeting, bf_other_side (corner->plan.along));
  BfFoldedCorner made = {
    .where = bf_meeting_where (corner->layout, meeting),
    /* Translators: the names of the two walls at a folded corner */
    .name = g_strdup_printf (_ ("%s/%s fold"),
                             bf_meeting_flap (corner->layout, meeting, BF_SIDE_END)->flange->id,
                             bf_meeting_flap (corner->layout, meeting, BF_SIDE_START)->flange->id),
    .along = (guint)(before ? meeting->before : meeting->after) + 1,
    .end = (guint)(before ? meeting->after : meeting->before) + 1,
    .foot = point (corner, -a->sides[corner->plan.along].zone_mm,
                   -b->sides[bf_other_side (corner->plan.along)].zone_mm),
    .tip = point (corner, corner->plan.tip_x_mm, corner->plan.tip_y_mm),
    .ears = { along_ear (corner), round_ear (corner) },
  };

  make_creases (corner, made.creases);
  made.rest_mm2 = rest_mm2 (corner, &made);
  return made;
}

void
bf_folded_corners_find (const BfLayout *layout, GArray *corners)
{
  for (guint i = 0; i < layout->meetings->len; i++)
    {
      Corner corner = { .layout = layout, .meeting = bf_layout_meeting (layout, i) };
      BfFoldedCorner made;

      if (!corner.meeting->folded)
        continue;
      bf_folded_corner_plan (layout, corner.meeting, &corner.plan);
      made = make_corner (&corner);
      g_array_append_val (corners, made);
    }
}

BfBendResult
bf_fold_crease_as_bend (const BfFold *fold, guint i)
{
  const BfFoldedCorner *corner = bf_fold_folded_corner (fold, i / 3);
  const BfCrease *crease = bf_fold_crease (fold, i);
  BfBendResult bend = { .flange = corner->name,
                        .face = i % 3 == 0 ? corner->along : corner->end,
                        .angle_rad = crease->angle_rad,
                        .turn = crease->turn,
                        .moment_nm = NAN,
                        .lever_mm = NAN,
                        .force_n = NAN,
                        .limit_n = NAN,
                        .overbend_rad = NAN,
                        .kept = 1.0 };

  memcpy (bend.line, crease->line, sizeof bend.line);
  memcpy (bend.zone, crease->zone, sizeof bend.zone);
  return bend;
}
