/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

/* Below this sine two edges run on as one, and a neighbour's direction cannot lead a point. */
#define STRAIGHT_ON_SINE 0.02

static BfVec2 *
point_of (BfPart *part, guint i)
{
  return &g_array_index (part->outline, BfVec2, i % part->outline->len);
}

BfPart *
bf_edit_outline (const BfPart *part, const BfVec2 *points, guint n_points)
{
  g_return_val_if_fail (part != NULL && points != NULL && n_points >= 3, NULL);

  BfPart *copy = bf_part_copy (part);

  g_ptr_array_set_size (copy->flanges, 0);
  g_ptr_array_set_size (copy->corners, 0);
  g_ptr_array_set_size (copy->base_corners, 0);
  g_ptr_array_set_size (copy->openings, 0);
  g_ptr_array_set_size (copy->parted, 0);
  g_array_set_size (copy->pinned_edges, 0);
  g_array_set_size (copy->outline, 0);
  g_array_append_vals (copy->outline, points, n_points);
  bf_part_make_counter_clockwise (copy);
  return copy;
}

BfPart *
bf_edit_move_point (const BfPart *part, guint point, BfVec2 to)
{
  g_return_val_if_fail (part != NULL && point < bf_part_n_points (part), NULL);

  BfPart *copy = bf_part_copy (part);
  *point_of (copy, point) = to;
  return copy;
}

/* How an end of the edge goes where the edge goes 1 mm outward: along its neighbour, or straight
 * out where that neighbour runs on the same way. */
static BfVec2
slide (BfVec2 outward, BfVec2 neighbour)
{
  double rise = bf_vec2_dot (neighbour, outward);

  return fabs (rise) > STRAIGHT_ON_SINE ? bf_vec2_scale (neighbour, 1.0 / rise) : outward;
}

BfPart *
bf_edit_move_edge (const BfPart *part, guint edge, double outward_mm)
{
  g_return_val_if_fail (part != NULL && edge < bf_part_n_points (part), NULL);

  BfPart *copy = bf_part_copy (part);
  guint n = bf_part_n_points (part);
  BfVec2 a = bf_part_point (part, edge);
  BfVec2 b = bf_part_point (part, edge + 1);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (b, a));
  BfVec2 outward = bf_vec2 (along.y, -along.x);
  BfVec2 before = bf_vec2_unit (bf_vec2_sub (a, bf_part_point (part, edge + n - 1)));
  BfVec2 after = bf_vec2_unit (bf_vec2_sub (bf_part_point (part, edge + 2), b));

  *point_of (copy, edge) = bf_vec2_along (a, slide (outward, before), outward_mm);
  *point_of (copy, edge + 1) = bf_vec2_along (b, slide (outward, after), outward_mm);
  return copy;
}

double
bf_part_edge_depth_mm (const BfPart *part, guint edge)
{
  g_return_val_if_fail (part != NULL && edge < bf_part_n_points (part), NAN);

  BfVec2 a = bf_part_point (part, edge);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bf_part_point (part, edge + 1), a));
  double depth_mm = 0.0;
  for (guint i = 0; i < bf_part_n_points (part); i++)
    depth_mm = MAX (depth_mm, bf_vec2_cross (along, bf_vec2_sub (bf_part_point (part, i), a)));
  return depth_mm;
}

/* Openings of a flange are measured from its edge's start: where that goes, they count anew. */
static void
shift_openings (BfPart *part, const char *on, double by_mm)
{
  for (guint i = 0; i < part->openings->len; i++)
    {
      BfOpening *opening = g_ptr_array_index (part->openings, i);
      if (!g_str_equal (opening->on, on))
        continue;
      opening->at_mm.x += by_mm;
      for (guint k = 0; opening->points != NULL && k < opening->points->len; k++)
        g_array_index (opening->points, BfVec2, k).x += by_mm;
    }
}

/* The corners of the base that count from that point on move by one. */
static void
shift_corners (GPtrArray *corners, guint from, int by)
{
  for (guint i = 0; i < corners->len; i++)
    {
      BfCorner *corner = g_ptr_array_index (corners, i);
      if (g_str_equal (corner->on, "base") && corner->at >= from)
        corner->at = (guint)((int)corner->at + by);
    }
}

/* Edges that are pinned count on as those corners do; one that is split or made one with another is
 * not the size any more that mattered. */
static void
shift_edges (GArray *edges, guint from, int by)
{
  for (guint i = 0; i < edges->len; i++)
    if (g_array_index (edges, guint, i) >= from)
      g_array_index (edges, guint, i) = (guint)((int)g_array_index (edges, guint, i) + by);
}

static void
unpin_edge (GArray *edges, guint edge)
{
  for (guint i = edges->len; i-- > 0;)
    if (g_array_index (edges, guint, i) == edge)
      g_array_remove_index (edges, i);
}

static void
drop_corners (GPtrArray *corners, guint at)
{
  for (guint i = corners->len; i-- > 0;)
    {
      const BfCorner *corner = g_ptr_array_index (corners, i);
      if (g_str_equal (corner->on, "base") && corner->at == at)
        g_ptr_array_remove_index (corners, i);
    }
}

BfPart *
bf_edit_add_point (const BfPart *part, guint edge, BfVec2 at)
{
  g_return_val_if_fail (part != NULL && edge < bf_part_n_points (part), NULL);

  BfPart *copy = bf_part_copy (part);
  double first_mm = bf_vec2_distance (bf_part_point (part, edge), at);
  double second_mm = bf_vec2_distance (at, bf_part_point (part, edge + 1));

  g_array_insert_val (copy->outline, edge + 1, at);
  unpin_edge (copy->pinned_edges, edge);
  shift_edges (copy->pinned_edges, edge + 1, 1);
  shift_corners (copy->corners, edge + 1, 1);
  shift_corners (copy->base_corners, edge + 1, 1);
  for (guint i = 0; i < copy->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (copy->flanges, i);
      gboolean to_second = flange->edge_index == edge && second_mm > first_mm;
      if (flange->edge != BF_EDGE_INDEX || (flange->edge_index <= edge && !to_second))
        continue;
      flange->edge_index++;
      if (to_second)
        shift_openings (copy, flange->id, -first_mm);
    }
  return copy;
}

/* Which of two flanges that come to hang on one edge stays: the one before the point. The other,
 * and what hangs on it, goes. */
static BfPart *
without_second_flange (const BfPart *part, guint point)
{
  guint n = bf_part_n_points (part);
  BfEdge before = { "base", BF_EDGE_INDEX, (point + n - 1) % n };
  BfEdge after = { "base", BF_EDGE_INDEX, point };
  BfPart *copy = bf_part_copy (part);
  const BfFlange *gone = NULL;

  while (bf_part_flange_at (copy, &before) != NULL &&
         (gone = bf_part_flange_at (copy, &after)) != NULL)
    {
      BfPart *next = bf_edit_remove_flange (copy, gone->id);
      bf_part_unref (copy);
      copy = next;
    }
  return copy;
}

BfPart *
bf_edit_remove_point (const BfPart *part, guint point)
{
  g_return_val_if_fail (part != NULL && point < bf_part_n_points (part), NULL);

  guint n = bf_part_n_points (part);
  if (n <= 3)
    return NULL;

  BfPart *copy = without_second_flange (part, point);
  guint before = (point + n - 1) % n;
  double before_mm = bf_part_edge_length_mm (part, before);
  for (guint i = 0; i < copy->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (copy->flanges, i);
      if (flange->edge != BF_EDGE_INDEX)
        continue;
      if (flange->edge_index == point)
        {
          flange->edge_index = before;
          shift_openings (copy, flange->id, before_mm);
        }
      if (flange->edge_index > point)
        flange->edge_index--;
    }
  unpin_edge (copy->pinned_edges, before);
  unpin_edge (copy->pinned_edges, point);
  shift_edges (copy->pinned_edges, point + 1, -1);
  drop_corners (copy->corners, point);
  drop_corners (copy->base_corners, point);
  shift_corners (copy->corners, point + 1, -1);
  shift_corners (copy->base_corners, point + 1, -1);
  g_array_remove_index (copy->outline, point);
  return copy;
}
