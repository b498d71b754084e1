/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

/* What is asked at that corner, to be changed; made where nothing was asked yet. */
static BfCorner *
corner_to_change (BfPart *part, const char *on, guint at)
{
  for (guint i = 0; i < part->corners->len; i++)
    {
      BfCorner *corner = g_ptr_array_index (part->corners, i);
      if (g_str_equal (corner->on, on) && corner->at == at)
        return corner;
    }
  g_ptr_array_add (part->corners, bf_corner_new (on, at));
  return g_ptr_array_index (part->corners, part->corners->len - 1);
}

BfPart *
bf_edit_corner_relief (
    const BfPart *part, const char *on, guint at, BfReliefShape shape, double size_mm)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);
  g_return_val_if_fail (isnan (size_mm) || size_mm > 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  BfCorner *corner = corner_to_change (copy, on, at);
  corner->relief = shape;
  corner->relief_size_mm = size_mm;
  return copy;
}

BfPart *
bf_edit_corner_gap (const BfPart *part, const char *on, guint at, double gap_mm)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);
  g_return_val_if_fail (isnan (gap_mm) || gap_mm >= 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  corner_to_change (copy, on, at)->gap_mm = gap_mm;
  return copy;
}

BfPart *
bf_edit_corner_join (const BfPart *part, const char *on, guint at, BfJoin join)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  corner_to_change (copy, on, at)->join = join;
  return copy;
}

BfPart *
bf_edit_corner_finish (
    const BfPart *part, const char *on, guint at, BfFinish finish, double size_mm)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);
  g_return_val_if_fail (isnan (size_mm) || size_mm > 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  BfCorner *corner = corner_to_change (copy, on, at);
  corner->finish = finish;
  corner->finish_size_mm = size_mm;
  return copy;
}

static void
forget_finish (GPtrArray *corners, const char *on, guint at)
{
  for (guint i = 0; i < corners->len; i++)
    {
      BfCorner *corner = g_ptr_array_index (corners, i);
      if (corner->at != at || !g_str_equal (corner->on, on))
        continue;
      corner->finish = BF_FINISH_UNSET;
      corner->finish_size_mm = NAN;
    }
}

BfPart *
bf_edit_corner_forget_finish (const BfPart *part, const char *on, guint at)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  forget_finish (copy->corners, on, at);
  forget_finish (copy->base_corners, on, at);
  return copy;
}

BfPart *
bf_edit_corner_forget_join (const BfPart *part, const char *on, guint at)
{
  g_return_val_if_fail (part != NULL && on != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  BfCorner *corner = corner_to_change (copy, on, at);
  corner->join = BF_JOIN_UNSET;
  corner->gap_mm = NAN;
  corner->relief = BF_RELIEF_UNSET;
  corner->relief_size_mm = NAN;
  return copy;
}
