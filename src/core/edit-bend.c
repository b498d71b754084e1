/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

/* The flange of that id in a part of our own, to be changed. */
static BfFlange *
find (const BfPart *copy, const char *id)
{
  return (BfFlange *)bf_part_find_flange (copy, id);
}

static double
either (double given, double otherwise)
{
  return isnan (given) ? otherwise : given;
}

/* What the part gives is handed down to the flanges that take it from there, all but one. */
BfPart *
bf_edit_flange_plan_slots (const BfPart *part, const char *id)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL && bf_part_find_flange (part, id) != NULL, NULL);
  copy = bf_part_copy (part);
  for (guint i = 0; i < bf_part_n_flanges (copy); i++)
    {
      BfBend *bend = &((BfFlange *)g_ptr_array_index (copy->flanges, i))->bend;

      bend->slot_mm = either (bend->slot_mm, part->bend.slot_mm);
      bend->bridge_mm = either (bend->bridge_mm, part->bend.bridge_mm);
    }
  copy->bend.slot_mm = copy->bend.bridge_mm = NAN;
  find (copy, id)->bend.slot_mm = find (copy, id)->bend.bridge_mm = NAN;
  return copy;
}

BfPart *
bf_edit_flange_score_left (const BfPart *part, const char *id, double left_mm)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL && bf_part_find_flange (part, id) != NULL, NULL);
  g_return_val_if_fail (left_mm > 0.0, NULL);
  copy = bf_part_copy (part);
  find (copy, id)->bend.score_left_mm = left_mm;
  return copy;
}

BfPart *
bf_edit_flange_lever (const BfPart *part, const char *id, double lever_mm)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL && bf_part_find_flange (part, id) != NULL, NULL);
  g_return_val_if_fail (lever_mm > 0.0, NULL);
  copy = bf_part_copy (part);
  find (copy, id)->bend.hand_lever_mm = lever_mm;
  return copy;
}
