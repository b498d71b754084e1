/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part.h"
#include "core/ring.h"

/* Turning an outline round makes each edge run the other way. So does each edge of each flange,
 * and what was measured from an edge's start is measured from its end. */

static gboolean
on_base (const char *on)
{
  return g_str_equal (on, "base");
}

static void
swap_numbers (double *a, double *b)
{
  double kept = *a;

  *a = *b;
  *b = kept;
}

static void
turn_flange (BfFlange *flange, guint n_points)
{
  BfEndRelief kept = flange->start_relief;

  if (flange->edge == BF_EDGE_INDEX)
    flange->edge_index = n_points - 1 - flange->edge_index;
  else if (flange->edge == BF_EDGE_START)
    flange->edge = BF_EDGE_END;
  else if (flange->edge == BF_EDGE_END)
    flange->edge = BF_EDGE_START;
  swap_numbers (&flange->start_mm, &flange->end_mm);
  swap_numbers (&flange->start_taper_deg, &flange->end_taper_deg);
  flange->start_relief = flange->end_relief;
  flange->end_relief = kept;
}

/* On a flange corner 0 lies at the start and corner 1 at the end. */
static void
turn_corner (BfCorner *corner, guint n_points)
{
  if (on_base (corner->on))
    corner->at = (n_points - corner->at) % n_points;
  else
    corner->at = 1 - corner->at;
  corner->along_after = !corner->along_after;
  if (corner->join == BF_JOIN_COVERS_BEFORE)
    corner->join = BF_JOIN_COVERS_AFTER;
  else if (corner->join == BF_JOIN_COVERS_AFTER)
    corner->join = BF_JOIN_COVERS_BEFORE;
}

/* The first point stays the first. */
static void
reverse_points (GArray *points)
{
  for (guint i = 1, k = points->len - 1; i < k; i++, k--)
    {
      BfVec2 kept = g_array_index (points, BfVec2, i);

      g_array_index (points, BfVec2, i) = g_array_index (points, BfVec2, k);
      g_array_index (points, BfVec2, k) = kept;
    }
}

/* The points of an outline on a flange, from the other end of an edge that long. */
static void
turn_points (GArray *points, double length_mm)
{
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 *p = &g_array_index (points, BfVec2, i);
      p->x = length_mm - p->x;
    }
  reverse_points (points);
}

/* On a flange x runs along the bend from the edge's start, and an angle is counted from there. How
 * long an edge of a flange is, is not known here. */
static void
turn_opening (const BfPart *part, BfOpening *opening)
{
  const BfFlange *flange = bf_part_find_flange (part, opening->on);
  double length_mm;

  if (flange == NULL)
    return;
  opening->angle_deg += opening->angle_deg < 180.0 ? 180.0 : -180.0;
  if (!on_base (flange->on))
    {
      opening->from_end = !opening->from_end;
      return;
    }
  length_mm = bf_vec2_distance (bf_part_point (part, flange->edge_index),
                                bf_part_point (part, flange->edge_index + 1));
  if (opening->points != NULL)
    turn_points (opening->points, length_mm);
  else
    opening->at_mm.x = length_mm - opening->at_mm.x;
}

/* The openings come first: they are measured along edges as they are. */
static void
turn_round (BfPart *part)
{
  guint n_points = bf_part_n_points (part);

  for (guint i = 0; i < part->openings->len; i++)
    turn_opening (part, g_ptr_array_index (part->openings, i));
  if (n_points > 0)
    reverse_points (part->outline);
  for (guint i = 0; i < part->pinned_edges->len; i++)
    {
      guint *edge = &g_array_index (part->pinned_edges, guint, i);

      *edge = n_points - 1 - *edge;
    }
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    turn_flange (g_ptr_array_index (part->flanges, i), n_points);
  for (guint i = 0; i < part->base_corners->len; i++)
    turn_corner (g_ptr_array_index (part->base_corners, i), n_points);
  for (guint i = 0; i < part->corners->len; i++)
    turn_corner (g_ptr_array_index (part->corners, i), n_points);
}

void
bf_part_make_counter_clockwise (BfPart *part)
{
  g_return_if_fail (part != NULL);

  if (bf_polygon_area ((const BfVec2 *)(gconstpointer)part->outline->data,
                       bf_part_n_points (part)) < 0.0)
    turn_round (part);
}

static void
mirror_points (GArray *points)
{
  for (guint i = 0; points != NULL && i < points->len; i++)
    {
      BfVec2 *p = &g_array_index (points, BfVec2, i);
      p->x = -p->x;
    }
}

/* On the base x becomes −x. On a flange the mirror keeps what is measured from the edge's start,
 * and turns round which way an angle is counted. */
static void
mirror_opening (BfOpening *opening)
{
  if (!on_base (opening->on))
    {
      opening->angle_deg = -opening->angle_deg;
      return;
    }
  opening->at_mm.x = -opening->at_mm.x;
  opening->angle_deg = 180.0 - opening->angle_deg;
  mirror_points (opening->points);
  if (opening->points != NULL)
    reverse_points (opening->points);
}

BfPart *
bf_part_mirror (const BfPart *part)
{
  BfPart *mirrored;

  g_return_val_if_fail (part != NULL, NULL);

  mirrored = bf_part_copy (part);
  mirror_points (mirrored->outline);
  mirrored->metal.grain_deg = 180.0 - mirrored->metal.grain_deg;
  for (guint i = 0; i < mirrored->openings->len; i++)
    mirror_opening (g_ptr_array_index (mirrored->openings, i));
  turn_round (mirrored);
  return mirrored;
}
