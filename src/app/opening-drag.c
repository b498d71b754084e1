/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/opening-drag.h"

#include "app/surface-openings.h"

/* So near in pixels it lines up. */
#define ALIGN_PX 5.0

/* Seen so much from its side, a face's openings can't be dragged: px² a mm². */
#define LEAST_PX2 0.02

static double
along (BfVec2 v, guint axis)
{
  return axis == 0 ? v.x : v.y;
}

/* Its own place lies by so much above the least, the middle and the most of its extent. */
static void
find_extent (const BfFold *fold, BfSelection selection, guint axis, double extent_mm[3])
{
  const BfOpeningResult *result = bf_surface_opening_result (fold, selection);
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  BfVec2 lines[2][2], axes[2];

  bf_surface_opening_lines (fold, selection, lines);
  bf_surface_opening_axes (fold, selection, axes);
  bf_ring_flatten (result->ring, 0.01, points);
  extent_mm[0] = HUGE_VAL;
  extent_mm[1] = 0.0;
  extent_mm[2] = -HUGE_VAL;
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 by = bf_vec2_sub (g_array_index (points, BfVec2, i), lines[0][1]);
      extent_mm[0] = MIN (extent_mm[0], bf_vec2_dot (by, axes[axis]));
      extent_mm[2] = MAX (extent_mm[2], bf_vec2_dot (by, axes[axis]));
    }
}

static void
add_line (BfOpeningDrag *drag, guint axis, double at_mm)
{
  if (drag->n_lines[axis] < G_N_ELEMENTS (drag->lines_mm[axis]))
    drag->lines_mm[axis][drag->n_lines[axis]++] = at_mm;
}

/* With another opening: middle to middle, and either edge to the same edge. */
static void
add_lines_with (BfOpeningDrag *drag, const BfFold *fold, BfSelection own, BfSelection other)
{
  const BfOpening *opening = bf_surface_opening_result (fold, other)->asked;

  for (guint axis = 0; axis < 2; axis++)
    {
      double mine[3], its[3];
      find_extent (fold, own, axis, mine);
      find_extent (fold, other, axis, its);
      for (guint k = 0; k < 3; k++)
        add_line (drag, axis, along (bf_opening_place_mm (opening), axis) + its[k] - mine[k]);
    }
}

/* The middle of the face: of the base's box, or of a flange's bend. */
static void
add_middle (BfOpeningDrag *drag, const BfFold *fold, BfSelection own)
{
  BfBox box = bf_box_empty ();

  if (own.face > 0)
    {
      const BfFace *face = bf_fold_face (fold, (guint)own.face);
      const BfBendResult *bend = bf_fold_bend (fold, (guint)face->bend);
      const BfFlange *flange = bf_part_find_flange (fold->part, face->id);
      add_line (drag, 0, flange->start_mm + bf_vec2_distance (bend->line[0], bend->line[1]) / 2.0);
      add_line (drag, 1, flange->length_mm / 2.0);
      return;
    }
  for (guint i = 0; i < bf_part_n_points (fold->part); i++)
    bf_box_extend (&box, bf_part_point (fold->part, i));
  add_line (drag, 0, (box.min.x + box.max.x) / 2.0);
  add_line (drag, 1, (box.min.y + box.max.y) / 2.0);
}

/* What the whole lines up with: other openings of the face. A point: the other points. */
static void
add_lines (BfOpeningDrag *drag, BfSurfaceScene *scene, BfSelection own)
{
  const BfFold *fold = bf_surface_scene_get_fold (scene);
  const BfOpening *opening = bf_surface_opening_result (fold, own)->asked;
  const GArray *edges = bf_surface_scene_get_edges (scene);

  for (guint i = 0; drag->point >= 0 && i < opening->points->len; i++)
    for (guint axis = 0; axis < 2 && (int)i != drag->point; axis++)
      add_line (drag, axis, along (g_array_index (opening->points, BfVec2, i), axis));
  for (guint i = 0; drag->point < 0 && i < edges->len; i++)
    {
      BfSelection other = bf_surface_edge (edges, i)->selection;
      if (bf_selection_is_opening (other) && bf_selection_point_of_opening (other) < 0 &&
          other.face == own.face && !bf_selection_is_same (other, own))
        add_lines_with (drag, fold, own, other);
    }
}

static gboolean
find_axes_px (BfOpeningDrag *drag, BfSurfaceScene *scene, BfSelection selection, BfPicture picture)
{
  const BfFold *fold = bf_surface_scene_get_fold (scene);
  guint face = (guint)selection.face;
  BfVec2 lines[2][2], axes[2], from;

  bf_surface_opening_lines (fold, selection, lines);
  bf_surface_opening_axes (fold, selection, axes);
  if (!bf_surface_scene_point_px (scene, face, lines[0][1], picture, &from))
    return FALSE;
  for (guint i = 0; i < 2; i++)
    {
      BfVec2 to;
      if (!bf_surface_scene_point_px (scene, face, bf_vec2_add (lines[0][1], axes[i]), picture,
                                      &to))
        return FALSE;
      drag->axes_px[i] = bf_vec2_sub (to, from);
    }
  return fabs (bf_vec2_cross (drag->axes_px[0], drag->axes_px[1])) > LEAST_PX2;
}

gboolean
bf_opening_drag_begin (BfOpeningDrag *drag, BfSurfaceScene *scene, BfSelection selection, BfVec2 px)
{
  g_return_val_if_fail (drag != NULL && scene != NULL, FALSE);

  const BfFold *fold = bf_surface_scene_get_fold (scene);
  const BfOpeningResult *result = bf_surface_opening_result (fold, selection);
  gboolean formed = bf_surface_scene_is_formed_side (scene, px);
  if (result == NULL ||
      !find_axes_px (drag, scene, selection, formed ? BF_PICTURE_FORMED : BF_PICTURE_BLANK))
    return FALSE;
  drag->index = bf_selection_opening_index (selection);
  drag->point = bf_selection_point_of_opening (selection);
  drag->place_mm = bf_surface_opening_place (result->asked, selection);
  drag->datum_mm = bf_surface_opening_datum (fold, selection);
  add_middle (drag, fold, selection);
  add_lines (drag, scene, selection);
  return TRUE;
}

static double
snapped (const BfOpeningDrag *drag, guint axis, double to_mm, double step_mm)
{
  double datum_mm = along (drag->datum_mm, axis);
  double reach_mm = ALIGN_PX / MAX (bf_vec2_length (drag->axes_px[axis]), 0.01);
  double found_mm = datum_mm + round ((to_mm - datum_mm) / step_mm) * step_mm;

  for (guint i = 0; i < drag->n_lines[axis]; i++)
    {
      double away_mm = fabs (drag->lines_mm[axis][i] - to_mm);
      if (away_mm >= reach_mm)
        continue;
      reach_mm = away_mm;
      found_mm = drag->lines_mm[axis][i];
    }
  return found_mm;
}

BfPart *
bf_opening_drag_to (const BfOpeningDrag *drag, const BfPart *part, BfVec2 by_px, double step_mm)
{
  g_return_val_if_fail (drag != NULL && part != NULL && step_mm > 0.0, NULL);

  double whole = bf_vec2_cross (drag->axes_px[0], drag->axes_px[1]);
  BfVec2 by_mm = { bf_vec2_cross (by_px, drag->axes_px[1]) / whole,
                   bf_vec2_cross (drag->axes_px[0], by_px) / whole };
  BfVec2 to_mm = bf_vec2_add (drag->place_mm, by_mm);

  to_mm = bf_vec2 (snapped (drag, 0, to_mm.x, step_mm), snapped (drag, 1, to_mm.y, step_mm));
  return drag->point < 0
             ? bf_edit_place_opening (part, drag->index, to_mm)
             : bf_edit_opening_move_point (part, drag->index, (guint)drag->point, to_mm);
}
