/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

BfPart *
bf_edit_kerf (const BfPart *part, double kerf_mm)
{
  g_return_val_if_fail (part != NULL && !(kerf_mm < 0.0), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->cutting.kerf_mm = kerf_mm;
  return copy;
}

BfPart *
bf_edit_slack (const BfPart *part, double slack_mm)
{
  g_return_val_if_fail (part != NULL && !(slack_mm < 0.0), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->cutting.slack_mm = slack_mm;
  return copy;
}

BfPart *
bf_edit_drills (const BfPart *part, BfDrillSet drills, const GArray *sizes_mm)
{
  g_return_val_if_fail (part != NULL, NULL);
  g_return_val_if_fail ((drills == BF_DRILLS_LIST) == (sizes_mm != NULL), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->cutting.drills = drills;
  g_clear_pointer (&copy->cutting.drill_list_mm, g_array_unref);
  if (sizes_mm != NULL)
    {
      copy->cutting.drill_list_mm = g_array_new (FALSE, FALSE, sizeof (double));
      g_array_append_vals (copy->cutting.drill_list_mm, sizes_mm->data, sizes_mm->len);
    }
  return copy;
}

BfPart *
bf_edit_bend_radius (const BfPart *part, double inside_radius_mm)
{
  g_return_val_if_fail (part != NULL && !(inside_radius_mm < 0.0), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->bend.inside_radius_mm = inside_radius_mm;
  copy->bend.corrected = NULL;
  return copy;
}

BfPart *
bf_edit_allowance (const BfPart *part, const BfAllowance *allowance)
{
  g_return_val_if_fail (part != NULL && allowance != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  g_free (copy->bend.allowance.trial_id);
  copy->bend.allowance = *allowance;
  copy->bend.allowance.trial_id = g_strdup (allowance->trial_id);
  copy->bend.corrected = NULL;
  return copy;
}

BfPart *
bf_edit_hand (const BfPart *part, double limit_n, double lever_mm)
{
  g_return_val_if_fail (part != NULL && !(limit_n <= 0.0) && !(lever_mm <= 0.0), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->bend.hand_limit_n = limit_n;
  copy->bend.hand_lever_mm = lever_mm;
  return copy;
}

BfPart *
bf_edit_slots (const BfPart *part, double slot_mm, double bridge_mm)
{
  g_return_val_if_fail (part != NULL && !(slot_mm <= 0.0) && !(bridge_mm <= 0.0), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->bend.slot_mm = slot_mm;
  copy->bend.bridge_mm = bridge_mm;
  return copy;
}

BfPart *
bf_edit_score_left (const BfPart *part, double left_mm)
{
  g_return_val_if_fail (part != NULL && !(left_mm <= 0.0), NULL);

  BfPart *copy = bf_part_copy (part);
  copy->bend.score_left_mm = left_mm;
  return copy;
}

BfPart *
bf_edit_grain (const BfPart *part, double grain_deg)
{
  g_return_val_if_fail (part != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->metal.grain_deg = grain_deg;
  return copy;
}
