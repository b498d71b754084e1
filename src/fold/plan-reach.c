/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/plan-reach.h"

/* Follows the flap from its tangent, at v_mm, in the direction it takes at full bend. turned_rad is
 * how far its parent is turned up by then. */
static void
follow (const BfFlap *flap, double v_mm, double turned_rad, BfPlanReach *reach)
{
  double sign = flap->flange->turn == BF_TURN_UP ? 1.0 : -1.0;
  double turned = turned_rad + sign * flap->angle_rad;
  double v = v_mm + cos (turned) * MAX (flap->tip_w_mm + flap->tip_shift_mm, 0.0);

  reach->outward_mm = MAX (reach->outward_mm, v);
  reach->inward_mm = MIN (reach->inward_mm, v);
  for (guint i = 0; flap->on_tip != NULL && i < flap->on_tip->len; i++)
    follow (g_ptr_array_index (flap->on_tip, i), v, turned, reach);
}

BfPlanReach
bf_plan_reach (const BfFlap *flap)
{
  BfPlanReach reach = { 0.0, 0.0 };

  follow (flap, 0.0, 0.0, &reach);
  if (reach.inward_mm < 0.0)
    reach.inward_mm -= flap->sums.outside_setback_mm;
  return reach;
}
