/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

#include "core/ring.h"

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

BfVec2
bf_opening_place_mm (const BfOpening *opening)
{
  g_return_val_if_fail (opening != NULL, bf_vec2 (0.0, 0.0));

  BfBox box = bf_box_empty ();
  if (opening->points == NULL || opening->points->len == 0)
    return opening->at_mm;
  for (guint i = 0; i < opening->points->len; i++)
    bf_box_extend (&box, g_array_index (opening->points, BfVec2, i));
  return bf_box_middle (&box);
}

void
bf_opening_move (BfOpening *opening, BfVec2 by_mm)
{
  g_return_if_fail (opening != NULL);

  if (opening->points == NULL)
    opening->at_mm = bf_vec2_add (opening->at_mm, by_mm);
  for (guint i = 0; opening->points != NULL && i < opening->points->len; i++)
    {
      BfVec2 *p = &g_array_index (opening->points, BfVec2, i);
      *p = bf_vec2_add (*p, by_mm);
    }
}

BfPart *
bf_edit_place_opening (const BfPart *part, guint index, BfVec2 place_mm)
{
  g_return_val_if_fail (part != NULL && index < part->openings->len, NULL);

  BfPart *copy = bf_part_copy (part);
  BfOpening *opening = g_ptr_array_index (copy->openings, index);
  bf_opening_move (opening, bf_vec2_sub (place_mm, bf_opening_place_mm (opening)));
  return copy;
}

BfPart *
bf_edit_add_opening (const BfPart *part, const BfOpening *opening)
{
  g_return_val_if_fail (part != NULL && opening != NULL, NULL);

  BfPart *copy = bf_part_copy (part);
  g_ptr_array_add (copy->openings, bf_opening_copy (opening));
  return copy;
}

BfPart *
bf_edit_remove_opening (const BfPart *part, guint index)
{
  g_return_val_if_fail (part != NULL && index < part->openings->len, NULL);

  BfPart *copy = bf_part_copy (part);
  g_ptr_array_remove_index (copy->openings, index);
  return copy;
}

static double *
size_of (BfOpening *opening, BfOpeningSize size)
{
  double *sizes[BF_N_OPENING_SIZES] = { &opening->diameter_mm, &opening->length_mm,
                                        &opening->width_mm, &opening->angle_deg };
  return sizes[size];
}

double
bf_opening_size (const BfOpening *opening, BfOpeningSize size)
{
  g_return_val_if_fail (opening != NULL && size < BF_N_OPENING_SIZES, NAN);

  if (opening->shape == BF_OPENING_OUTLINE)
    return NAN;
  return *size_of ((BfOpening *)opening, size);
}

BfPart *
bf_edit_opening_give (const BfPart *part, guint index, BfOpeningSize size, double value)
{
  g_return_val_if_fail (part != NULL && index < part->openings->len, NULL);
  g_return_val_if_fail (isfinite (value) && (value > 0.0 || size == BF_OPENING_ANGLE), NULL);

  BfPart *copy = bf_part_copy (part);
  *size_of (g_ptr_array_index (copy->openings, index), size) = value;
  return copy;
}

guint
bf_opening_n_points (const BfOpening *opening)
{
  g_return_val_if_fail (opening != NULL, 0);
  return opening->shape == BF_OPENING_OUTLINE ? opening->points->len : 0;
}

/* A copy of the part, with the points of one of its outlines to be changed. */
static BfPart *
copy_with_points (const BfPart *part, guint index, GArray **points)
{
  BfPart *copy = bf_part_copy (part);

  *points = ((BfOpening *)g_ptr_array_index (copy->openings, index))->points;
  return copy;
}

static gboolean
has_point (const BfPart *part, guint index, guint point)
{
  return part != NULL && index < part->openings->len &&
         point < bf_opening_n_points (g_ptr_array_index (part->openings, index));
}

BfPart *
bf_edit_opening_move_point (const BfPart *part, guint index, guint point, BfVec2 to_mm)
{
  g_return_val_if_fail (has_point (part, index, point), NULL);

  GArray *points;
  BfPart *copy = copy_with_points (part, index, &points);
  g_array_index (points, BfVec2, point) = to_mm;
  return copy;
}

BfPart *
bf_edit_opening_add_point (const BfPart *part, guint index, guint after)
{
  g_return_val_if_fail (has_point (part, index, after), NULL);

  GArray *points;
  BfPart *copy = copy_with_points (part, index, &points);
  BfVec2 next = g_array_index (points, BfVec2, (after + 1) % points->len);
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (g_array_index (points, BfVec2, after), next), 0.5);
  g_array_insert_val (points, after + 1, middle);
  return copy;
}

BfPart *
bf_edit_opening_remove_point (const BfPart *part, guint index, guint point)
{
  g_return_val_if_fail (has_point (part, index, point), NULL);

  GArray *points;
  g_autoptr (BfPart) copy = copy_with_points (part, index, &points);
  if (points->len <= 3)
    return NULL;
  g_array_remove_index (points, point);
  return g_steal_pointer (&copy);
}
