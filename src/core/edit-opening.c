/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

static void
move_points (GArray *points, BfVec2 by_mm)
{
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 *p = &g_array_index (points, BfVec2, i);
      *p = bf_vec2_add (*p, by_mm);
    }
}

BfPart *
bf_edit_opening_at (const BfPart *part, guint index, BfVec2 at_mm)
{
  g_return_val_if_fail (part != NULL && index < part->openings->len, NULL);

  BfPart *copy = bf_part_copy (part);
  BfOpening *opening = g_ptr_array_index (copy->openings, index);
  if (opening->points != NULL && opening->points->len > 0)
    move_points (opening->points, bf_vec2_sub (at_mm, g_array_index (opening->points, BfVec2, 0)));
  else
    opening->at_mm = at_mm;
  return copy;
}

BfPart *
bf_edit_opening_size (const BfPart *part, guint index, double size_mm)
{
  g_return_val_if_fail (part != NULL && index < part->openings->len, NULL);
  g_return_val_if_fail (size_mm > 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  BfOpening *opening = g_ptr_array_index (copy->openings, index);
  if (isfinite (opening->diameter_mm))
    opening->diameter_mm = size_mm;
  else if (isfinite (opening->width_mm))
    opening->width_mm = size_mm;
  return copy;
}
