/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

BfPart *
bf_edit_name (const BfPart *part, const char *name)
{
  g_return_val_if_fail (part != NULL && name != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  g_free (copy->name);
  copy->name = g_strdup (name);
  return copy;
}

BfPart *
bf_edit_quantity (const BfPart *part, guint quantity)
{
  g_return_val_if_fail (part != NULL && quantity >= 1 && quantity <= BF_QUANTITY_MAX, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->quantity = quantity;
  return copy;
}

BfPart *
bf_edit_material (const BfPart *part, const char *material)
{
  g_return_val_if_fail (part != NULL && material != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  g_free (copy->metal.material);
  copy->metal.material = g_strdup (material);
  copy->bend.corrected = NULL;
  return copy;
}

BfPart *
bf_edit_thickness (const BfPart *part, double thickness_mm)
{
  g_return_val_if_fail (part != NULL && thickness_mm > 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->metal.thickness_mm = thickness_mm;
  copy->bend.corrected = NULL;
  return copy;
}

BfPart *
bf_edit_cutting (const BfPart *part, BfCuttingWay by, double disc_diameter_mm)
{
  g_return_val_if_fail (part != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->cutting.by = by;
  copy->cutting.kerf_mm = NAN;
  copy->cutting.slack_mm = NAN;
  if (by == BF_CUTTING_DISC && isfinite (disc_diameter_mm))
    copy->cutting.disc_diameter_mm = disc_diameter_mm;
  return copy;
}

BfPart *
bf_edit_bend_way (const BfPart *part, BfBendWay way)
{
  g_return_val_if_fail (part != NULL && way != BF_BEND_WAY_UNSET, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->bend.way = way;
  copy->bend.inside_radius_mm = NAN;
  copy->bend.allowance.rule = BF_ALLOWANCE_UNSET;
  copy->bend.allowance.k = NAN;
  copy->bend.allowance.k_error = NAN;
  copy->bend.corrected = NULL;
  g_clear_pointer (&copy->bend.allowance.trial_id, g_free);
  return copy;
}

BfPart *
bf_edit_joining (const BfPart *part, BfJoining joining)
{
  g_return_val_if_fail (part != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->joining = joining;
  return copy;
}

BfPart *
bf_edit_units (const BfPart *part, BfUnits units)
{
  g_return_val_if_fail (part != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  copy->units = units;
  return copy;
}
