/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/defaults.h"

#include "core/tolerance.h"

/* Common practice, all of it, but for the K of a hem and of a score: there the neutral line is
 * taken to lie in the middle of the metal that bends. */
#define DISC_DIAMETER_MM 125.0
#define DISC_KERF_MM 1.3
#define TABLE_KERF_MM 1.5
#define HAND_SLACK_MM 0.75
#define HAND_GAP_MM 0.5
#define MACHINE_GAP_MM 0.2
#define BEND_K 0.42
#define SLOTS_K 0.40
#define MIDDLE_K 0.50
#define SLOTS_RADIUS_SHARE 0.5
#define SCORE_LEFT_SHARE 0.4

static gboolean
by_hand (BfCuttingWay by)
{
  return by == BF_CUTTING_DISC || by == BF_CUTTING_SNIPS;
}

static gboolean
is_hem (double angle_deg)
{
  return angle_deg >= 180.0 - BF_TOLERANCE_ZERO;
}

static double
either (double given, double otherwise)
{
  return isnan (given) ? otherwise : given;
}

double
bf_default_slack_mm (BfCuttingWay by)
{
  return by_hand (by) ? HAND_SLACK_MM : 0.0;
}

/* Snips shear and lose nothing; a service allows for its own beam. */
double
bf_default_kerf_mm (BfCuttingWay by)
{
  switch (by)
    {
    case BF_CUTTING_DISC:
      return DISC_KERF_MM;
    case BF_CUTTING_TABLE:
      return TABLE_KERF_MM;
    case BF_CUTTING_SNIPS:
    case BF_CUTTING_SERVICE:
      return 0.0;
    default:
      g_return_val_if_reached (0.0);
    }
}

double
bf_default_gap_mm (BfCuttingWay by)
{
  return by_hand (by) ? HAND_GAP_MM : MACHINE_GAP_MM;
}

BfEndRelief
bf_default_end_relief (BfCuttingWay by)
{
  return by_hand (by) ? BF_END_RELIEF_HOLE : BF_END_RELIEF_NOTCH;
}

BfJoin
bf_default_join (BfJoining joining)
{
  switch (joining)
    {
    case BF_JOINING_RIVETED:
    case BF_JOINING_SCREWED:
      return BF_JOIN_TAB;
    case BF_JOINING_FOLDED:
      return BF_JOIN_FOLDED;
    case BF_JOINING_WELDED:
    case BF_JOINING_NONE:
      return BF_JOIN_OPEN;
    default:
      g_return_val_if_reached (BF_JOIN_OPEN);
    }
}

double
bf_default_radius_mm (BfBendWay way, double thickness_mm, double angle_deg)
{
  if (is_hem (angle_deg))
    return 0.0;
  switch (way)
    {
    case BF_BEND_WAY_SLOTS:
      return SLOTS_RADIUS_SHARE * thickness_mm;
    case BF_BEND_WAY_SCORE:
      return 0.0;
    case BF_BEND_WAY_UNSET:
    case BF_BEND_WAY_BRAKE:
    case BF_BEND_WAY_BAR:
      return thickness_mm;
    default:
      g_return_val_if_reached (thickness_mm);
    }
}

double
bf_default_k (BfBendWay way, double angle_deg)
{
  if (is_hem (angle_deg))
    return MIDDLE_K;
  switch (way)
    {
    case BF_BEND_WAY_SLOTS:
      return SLOTS_K;
    case BF_BEND_WAY_SCORE:
      return MIDDLE_K;
    case BF_BEND_WAY_UNSET:
    case BF_BEND_WAY_BRAKE:
    case BF_BEND_WAY_BAR:
      return BEND_K;
    default:
      g_return_val_if_reached (BEND_K);
    }
}

double
bf_default_score_left_mm (double thickness_mm)
{
  return SCORE_LEFT_SHARE * thickness_mm;
}

double
bf_part_slack_mm (const BfPart *part)
{
  return either (part->cutting.slack_mm, bf_default_slack_mm (part->cutting.by));
}

double
bf_part_kerf_mm (const BfPart *part)
{
  return either (part->cutting.kerf_mm, bf_default_kerf_mm (part->cutting.by));
}

gboolean
bf_part_drills_reliefs (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, FALSE);

  return part->cutting.by == BF_CUTTING_DISC || part->cutting.by == BF_CUTTING_SNIPS;
}

double
bf_part_disc_diameter_mm (const BfPart *part)
{
  return either (part->cutting.disc_diameter_mm, DISC_DIAMETER_MM);
}

/* A rule brings its own group along: a flange that asks for one handbook group does not take the
 * part's. k and the trial's id are taken from the part where the flange gives none. */
static BfAllowance
merge_allowance (const BfAllowance *own, const BfAllowance *part)
{
  BfAllowance merged = *part;

  if (own->rule != BF_ALLOWANCE_UNSET)
    {
      merged.rule = own->rule;
      merged.group = own->group;
    }
  if (own->trial_id != NULL)
    merged.trial_id = own->trial_id;
  merged.k = either (own->k, part->k);
  if (!isnan (own->k) || own->rule != BF_ALLOWANCE_UNSET)
    merged.k_error = own->k_error;
  return merged;
}

static BfBend
merge_bend (const BfBend *own, const BfBend *part)
{
  BfBend merged;

  merged.way = own->way != BF_BEND_WAY_UNSET ? own->way : part->way;
  merged.inside_radius_mm = either (own->inside_radius_mm, part->inside_radius_mm);
  merged.allowance = merge_allowance (&own->allowance, &part->allowance);
  merged.slot_mm = either (own->slot_mm, part->slot_mm);
  merged.bridge_mm = either (own->bridge_mm, part->bridge_mm);
  merged.score_left_mm = either (own->score_left_mm, part->score_left_mm);
  merged.hand_limit_n = either (own->hand_limit_n, part->hand_limit_n);
  merged.hand_lever_mm = either (own->hand_lever_mm, part->hand_lever_mm);
  merged.corrected = own->corrected != NULL ? own->corrected : part->corrected;
  return merged;
}

BfBend
bf_part_resolve_bend (const BfPart *part, const BfFlange *flange)
{
  double angle_deg = flange != NULL ? flange->angle_deg : 90.0;
  BfBend bend = flange != NULL ? merge_bend (&flange->bend, &part->bend) : part->bend;

  if (bend.way == BF_BEND_WAY_UNSET)
    bend.way = BF_BEND_WAY_BAR;
  if (bend.allowance.rule == BF_ALLOWANCE_UNSET)
    bend.allowance.rule = BF_ALLOWANCE_K_FACTOR;
  bend.inside_radius_mm = either (
      bend.inside_radius_mm, bf_default_radius_mm (bend.way, part->metal.thickness_mm, angle_deg));
  bend.allowance.k = either (bend.allowance.k, bf_default_k (bend.way, angle_deg));
  if (bend.way == BF_BEND_WAY_SCORE)
    bend.score_left_mm =
        either (bend.score_left_mm, bf_default_score_left_mm (part->metal.thickness_mm));
  return bend;
}

BfJoin
bf_part_resolve_join (const BfPart *part, const BfCorner *corner)
{
  if (corner != NULL && corner->join != BF_JOIN_UNSET)
    return corner->join;
  return bf_default_join (part->joining);
}

double
bf_part_resolve_gap_mm (const BfPart *part, const BfCorner *corner)
{
  return either (corner != NULL ? corner->gap_mm : NAN, bf_default_gap_mm (part->cutting.by));
}

BfEndRelief
bf_part_resolve_end_relief (const BfPart *part, BfEndRelief asked)
{
  return asked != BF_END_RELIEF_UNSET ? asked : bf_default_end_relief (part->cutting.by);
}
