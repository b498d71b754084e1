/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/tolerance.h"

/* What is left of an inset, or of a flange, that is less than the metal's thickness covers: an
 * inset of nothing would leave the end to the corner, which may have it elsewhere altogether. */
#define LEAST_MM 0.01

/* Between a size counted outside and the same counted inside lies, at a bend, the difference of
 * the two setbacks: t·tan(θ/2), and t beyond a square bend. So each drawn line moves by that
 * much, and the metal stays. */
static double
line_shift_mm (const BfPart *part, const BfFlange *flange)
{
  double half_rad = bf_deg_to_rad (MIN (flange->angle_deg, 90.0)) / 2.0;
  return part->metal.thickness_mm * tan (half_rad);
}

/* The shift of what hangs on an edge; 0 for a bare one. */
static double
edge_shift_mm (const BfPart *part, const char *on, BfEdgeKind kind, guint index)
{
  BfEdge edge = { on, kind, index };
  const BfFlange *flange = bf_part_flange_at (part, &edge);
  return flange != NULL ? line_shift_mm (part, flange) : 0.0;
}

typedef struct
{
  BfVec2 at, along;
} Line;

/* Base edge i moved outward by so much. */
static Line
moved_edge (const BfPart *part, guint i, double outward_mm)
{
  BfVec2 a = bf_part_point (part, i);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bf_part_point (part, i + 1), a));
  BfVec2 outward = bf_vec2 (along.y, -along.x);
  return (Line){ bf_vec2_along (a, outward, outward_mm), along };
}

/* Where two lines cross; fallback where they run alike. */
static BfVec2
crossing (const Line *a, const Line *b, BfVec2 fallback)
{
  double sine = bf_vec2_cross (a->along, b->along);
  if (fabs (sine) < BF_TOLERANCE_ZERO)
    return fallback;
  double way = bf_vec2_cross (bf_vec2_sub (b->at, a->at), b->along) / sine;
  return bf_vec2_along (a->at, a->along, way);
}

static void
move_base (const BfPart *part, BfPart *copy, double sign)
{
  guint n = bf_part_n_points (part);
  for (guint i = 0; i < n; i++)
    {
      guint before = (i + n - 1) % n;
      Line a =
          moved_edge (part, before, sign * edge_shift_mm (part, "base", BF_EDGE_INDEX, before));
      Line b = moved_edge (part, i, sign * edge_shift_mm (part, "base", BF_EDGE_INDEX, i));
      g_array_index (copy->outline, BfVec2, i) = crossing (&a, &b, b.at);
    }
}

/* How far, along base edge i, the point at one of its ends has gone toward the edge's middle. */
static double
inward_mm (const BfPart *part, const BfPart *copy, guint edge, gboolean at_end)
{
  guint point = at_end ? edge + 1 : edge;
  BfVec2 along =
      bf_vec2_unit (bf_vec2_sub (bf_part_point (part, edge + 1), bf_part_point (part, edge)));
  BfVec2 by = bf_vec2_sub (bf_part_point (copy, point), bf_part_point (part, point));
  return at_end ? -bf_vec2_dot (by, along) : bf_vec2_dot (by, along);
}

/* TRUE where the base's bare edge beside that end of the flange's leans in over it (an acute
 * corner): the end is left to the corner as it is beside another flange. */
static gboolean
is_acute_end (const BfPart *part, const BfFlange *flange, gboolean at_end)
{
  guint n = bf_part_n_points (part), edge = flange->edge_index;
  guint at = at_end ? edge + 1 : edge, to = at_end ? edge + 2 : edge + n - 1;
  BfVec2 along = bf_vec2_sub (bf_part_point (part, edge + 1), bf_part_point (part, edge));
  BfVec2 beside = bf_vec2_sub (bf_part_point (part, to), bf_part_point (part, at));
  double inward = at_end ? -bf_vec2_dot (along, beside) : bf_vec2_dot (along, beside);

  return inward > 0.0 && bf_vec2_cross (along, beside) > 0.0;
}

/* An inset of 0 leaves its end to the corner, which stays where it is; beside a bare edge that
 * leans away the flange stays where it is itself. */
static double
moved_inset (const BfPart *part, const BfFlange *flange, gboolean at_end, double inward)
{
  guint n = bf_part_n_points (part), edge = flange->edge_index;
  BfEdge beside = { "base", BF_EDGE_INDEX, at_end ? (edge + 1) % n : (edge + n - 1) % n };
  gboolean walled = bf_part_flange_at (part, &beside) != NULL;
  double inset_mm = at_end ? flange->end_mm : flange->start_mm;
  double moved = inset_mm - inward;

  if (inset_mm <= 0.0 && (walled || is_acute_end (part, flange, at_end)))
    return 0.0;
  if (!walled && (inset_mm <= 0.0 || fabs (moved) < BF_TOLERANCE_SIZE_MM))
    return moved < BF_TOLERANCE_SIZE_MM ? 0.0 : moved;
  return MAX (moved, LEAST_MM);
}

static void
move_flange (const BfPart *part, const BfPart *copy, BfFlange *flange, double sign)
{
  double shift = line_shift_mm (part, flange) + edge_shift_mm (part, flange->id, BF_EDGE_TIP, 0);

  flange->length_mm = MAX (flange->length_mm + sign * shift, LEAST_MM);
  if (flange->edge == BF_EDGE_INDEX)
    {
      guint edge = flange->edge_index;
      flange->start_mm = moved_inset (part, flange, FALSE, inward_mm (part, copy, edge, FALSE));
      flange->end_mm = moved_inset (part, flange, TRUE, inward_mm (part, copy, edge, TRUE));
    }
}

/* How much further along its edge a point of a flange lies than before: an edge of the base begins
 * elsewhere, and the end side of a flange at its tip. */
static double
moved_along_mm (const BfPart *part, const BfPart *copy, const BfFlange *flange, double sign)
{
  if (flange->edge == BF_EDGE_INDEX)
    return -inward_mm (part, copy, flange->edge_index, FALSE);
  return flange->edge == BF_EDGE_END ? sign * edge_shift_mm (part, flange->on, BF_EDGE_TIP, 0)
                                     : 0.0;
}

/* An opening in a flange is measured from the drawn line and from the edge's start; one in the base
 * from neither. */
static void
move_opening (const BfPart *part, const BfPart *copy, BfOpening *opening, double sign)
{
  const BfFlange *flange = bf_part_find_flange (part, opening->on);
  if (flange == NULL)
    return;

  BfVec2 by = { moved_along_mm (part, copy, flange, sign), sign * line_shift_mm (part, flange) };
  bf_opening_move (opening, by);
}

BfPart *
bf_edit_measure (const BfPart *part, BfMeasure measure)
{
  g_return_val_if_fail (part != NULL, NULL);

  g_autoptr (BfPart) copy = bf_part_copy (part);
  double sign = measure == BF_MEASURE_INSIDE ? -1.0 : 1.0;

  if (part->measure == measure)
    return g_steal_pointer (&copy);
  copy->measure = measure;
  move_base (part, copy, sign);
  for (guint i = 0; i < copy->flanges->len; i++)
    move_flange (part, copy, g_ptr_array_index (copy->flanges, i), sign);
  for (guint i = 0; i < copy->openings->len; i++)
    move_opening (part, copy, g_ptr_array_index (copy->openings, i), sign);
  return g_steal_pointer (&copy);
}
