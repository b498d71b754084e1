/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/score.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/side.h"

/* An angle that a person typed as the most that may be scored. */
#define ANGLE_TOLERANCE_RAD 1e-9

BfScoreFault
bf_score_fault (const BfPart *part, const BfFlange *flange, double *left_mm)
{
  BfBend bend = bf_part_resolve_bend (part, flange);

  if (left_mm != NULL)
    *left_mm = bend.score_left_mm;
  if (bend.way != BF_BEND_WAY_SCORE)
    return BF_SCORE_SOUND;
  if (bf_deg_to_rad (flange->angle_deg) > BF_SCORE_MAX_RAD + ANGLE_TOLERANCE_RAD)
    return BF_SCORE_TOO_FAR;
  return bend.score_left_mm >= part->metal.thickness_mm - BF_TOLERANCE_SIZE_MM
             ? BF_SCORE_TOO_SHALLOW
             : BF_SCORE_SOUND;
}

BfBend
bf_bend_as_folded (const BfPart *part, const BfFlange *flange)
{
  BfBend bend = bf_part_resolve_bend (part, flange);

  if (bf_score_fault (part, flange, NULL) == BF_SCORE_SOUND)
    return bend;
  bend.way = BF_BEND_WAY_BAR;
  bend.inside_radius_mm =
      bf_default_radius_mm (bend.way, part->metal.thickness_mm, flange->angle_deg);
  bend.allowance.rule = BF_ALLOWANCE_K_FACTOR;
  bend.allowance.k = bf_default_k (bend.way, flange->angle_deg);
  return bend;
}

/* How far from the bend's two tangents the groove's walls stand. */
static double
wall_mm (const BfLayout *layout, const BfFlap *flap)
{
  return (layout->thickness_mm - flap->sums.skin_mm) * tan (flap->angle_rad / 2.0);
}

double
bf_score_groove_mm (const BfLayout *layout, const BfFlap *flap)
{
  return flap->sums.allowance_mm + 2.0 * wall_mm (layout, flap);
}

/* How far the flat goes on past its side, to the tangent of what that side carries. */
static double
past_side_mm (const BfFlap *flap, BfSideName name)
{
  const GPtrArray *carried = flap->on_side[name];
  double past = 0.0;

  for (guint i = 0; carried != NULL && i < carried->len; i++)
    past = MAX (past, -((const BfFlap *)g_ptr_array_index (carried, i))->sums.setback_mm);
  return past;
}

/* q from which the groove runs: the zone's end, or that of the flat beside the groove where it is
 * wider. */
static double
groove_q (const BfFlap *flap, BfSideName name, double to_mm)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double q = flap->sides[name].zone_mm, past = past_side_mm (flap, name);

  bf_side_trace (&flap->sides[name], to_mm, points);
  for (guint i = 0; i < points->len; i++)
    q = MIN (q, g_array_index (points, BfVec2, i).x - past);
  return q;
}

static void
add_groove (const BfLayout *layout, const BfFlap *flap, GArray *grooves)
{
  double wall = wall_mm (layout, flap), root = -flap->sums.allowance_mm - wall;
  /* A flap that leans out comes under the parent's face as far up as this. */
  double reach = wall * (1.0 + MAX (cos (flap->angle_rad), 0.0));
  double start = bf_flap_u (flap, BF_SIDE_START, groove_q (flap, BF_SIDE_START, reach));
  double end = bf_flap_u (flap, BF_SIDE_END, groove_q (flap, BF_SIDE_END, reach));
  BfGroove groove = { .in_marking_side = flap->flange->turn == BF_TURN_UP,
                      .depth_mm = layout->thickness_mm - flap->sums.skin_mm };
  BfVec2 corners[4] = { bf_flap_to_blank (flap, start, root), bf_flap_to_blank (flap, start, wall),
                        bf_flap_to_blank (flap, end, wall), bf_flap_to_blank (flap, end, root) };

  /* u and w run against each other on a flap's side: round the other way there. */
  if (bf_polygon_area (corners, 4) < 0.0)
    for (guint i = 0; i < 4; i++)
      groove.strip.corners[i] = corners[3 - i];
  else
    memcpy (groove.strip.corners, corners, sizeof corners);
  groove.strip.n = 4;
  if (end > start)
    g_array_append_val (grooves, groove);
}

void
bf_score_grooves (const BfLayout *layout, guint face, GArray *grooves)
{
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      const BfFlap *flap = &layout->flaps[i];
      gboolean beside = i + 1 == face || (guint)(flap->parent + 1) == face;

      if (beside && flap->placed && flap->bend.way == BF_BEND_WAY_SCORE)
        add_groove (layout, flap, grooves);
    }
}
