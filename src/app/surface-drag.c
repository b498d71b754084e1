/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-drag.h"

#include <glib/gi18n.h>

#include "app/opening-drag.h"
#include "app/size-edits.h"
#include "core/part-file.h"
#include "core/tolerance.h"
#include "core/units.h"

/* So near in pixels a dragged point lines up with another. */
#define ALIGN_PX 6.0

/* Seen so much from its side, an edge can't be dragged: a pixel would be a leap. */
#define LEAST_PX_PER_MM 0.15

struct _BfSurfaceDrag
{
  BfDocument *document;
  BfSurfaceScene *scene;
  BfSelection selection;
  BfPart *first; /* as it was when the drag began */
  char *id;      /* the face's, for faces are counted anew */
  char *name;
  double size_mm; /* as it was */
  BfVec2 start_px, outward_px;
  BfOpeningDrag opening; /* of an opening alone */
  BfVec2 pointer_px;
  gboolean finely, waits, changed;
};

static double
step_mm (const BfSurfaceDrag *drag)
{
  if (drag->first->units == BF_UNITS_IN)
    return BF_MM_PER_INCH / (drag->finely ? 64.0 : 16.0);
  return drag->finely ? 0.1 : 1.0;
}

static double
whole (const BfSurfaceDrag *drag, double mm)
{
  double step = step_mm (drag);
  return MAX (round (mm / step), 1.0) * step;
}

static char *
name_step (const BfPart *part, const BfFold *fold, BfSelection selection)
{
  if (bf_selection_is_point (selection))
    return g_strdup (_ ("Move a point"));
  if (bf_selection_is_opening (selection))
    return g_strdup (bf_opening_move_name (selection));
  if (selection.face == 0)
    /* Translators: %u is the number of an edge of the base, from 1 */
    return g_strdup_printf (_ ("Move base edge %u"), (guint)selection.edge + 1);
  BfSizeTarget target = { bf_fold_face (fold, (guint)selection.face)->id, 0 };
  if (selection.edge != BF_FLANGE_TIP)
    /* Translators: %s is a flange's name; one of its sides is dragged inward or back */
    return g_strdup_printf (_ ("Move a side of %s"), target.flange);
  return bf_size_edit_name (part, &target, BF_SIZE_FIELD_LENGTH);
}

/* The inset of a flange's side. */
static double
inset_of (const BfFlange *flange, int side)
{
  return side == BF_FLANGE_START ? flange->start_mm : flange->end_mm;
}

static double
size_of (const BfFold *fold, const BfSurfaceEdge *edge)
{
  const BfPart *part = fold->part;

  if (bf_selection_is_point (edge->selection) || bf_selection_is_opening (edge->selection))
    return 0.0;
  if (edge->selection.face == 0)
    return bf_part_edge_depth_mm (part, (guint)edge->selection.edge);
  if (edge->selection.edge != BF_FLANGE_TIP)
    return inset_of (
        bf_part_find_flange (part, bf_fold_face (fold, (guint)edge->selection.face)->id),
        edge->selection.edge);
  return edge->length_mm;
}

BfSurfaceDrag *
bf_surface_drag_begin (BfDocument *document,
                       BfSurfaceScene *scene,
                       BfSelection selection,
                       BfVec2 px)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document) && scene != NULL, NULL);

  const GArray *edges = bf_surface_scene_get_edges (scene);
  int at = bf_surface_edges_find (edges, selection);
  gboolean on_formed = bf_surface_scene_is_formed_side (scene, px);
  if (at < 0 || (bf_selection_is_corner (selection) && (on_formed || selection.face > 0)))
    return NULL;
  const BfSurfaceEdge *edge = bf_surface_edge (edges, (guint)at);
  BfVec2 outward_px =
      bf_surface_scene_outward_px (scene, edge, on_formed ? BF_PICTURE_FORMED : BF_PICTURE_BLANK);
  BfOpeningDrag opening = { 0 };
  if (bf_selection_is_opening (selection))
    {
      if (!bf_opening_drag_begin (&opening, scene, selection, px))
        return NULL;
    }
  else if (!bf_selection_is_point (selection) && bf_vec2_length (outward_px) < LEAST_PX_PER_MM)
    return NULL;

  BfSurfaceDrag *drag = g_new0 (BfSurfaceDrag, 1);
  drag->document = g_object_ref (document);
  drag->scene = scene;
  drag->selection = selection;
  drag->first = bf_part_ref (bf_document_get_part (document));
  drag->id = g_strdup (bf_fold_face (bf_document_get_fold (document), (guint)selection.face)->id);
  drag->name = name_step (drag->first, bf_document_get_fold (document), selection);
  drag->size_mm = size_of (bf_document_get_fold (document), edge);
  drag->start_px = px;
  drag->outward_px = outward_px;
  drag->opening = opening;
  bf_document_end_step (document);
  bf_surface_scene_set_held (scene, TRUE);
  return drag;
}

void
bf_surface_drag_to (BfSurfaceDrag *drag, BfVec2 px, gboolean finely)
{
  g_return_if_fail (drag != NULL);

  drag->pointer_px = px;
  drag->finely = finely;
  drag->waits = TRUE;
}

/* Lines a coordinate up with that of another point, if it is near one. */
static double
aligned (const BfSurfaceDrag *drag, double value, guint point, gboolean upright)
{
  double reach_mm = ALIGN_PX / bf_surface_view_get_scale (bf_surface_scene_get_view (drag->scene));
  double found = round (value / step_mm (drag)) * step_mm (drag);

  for (guint i = 0; i < bf_part_n_points (drag->first); i++)
    {
      BfVec2 p = bf_part_point (drag->first, i);
      double other = upright ? p.y : p.x;
      if (i == point || fabs (value - other) > reach_mm)
        continue;
      reach_mm = fabs (value - other);
      found = other;
    }
  return found;
}

static BfPart *
moved_point (const BfSurfaceDrag *drag)
{
  BfSurfaceView *view = bf_surface_scene_get_view (drag->scene);
  guint point = bf_selection_corner_at (drag->selection);
  BfVec2 by = bf_vec2_sub (bf_surface_view_to_blank (view, drag->pointer_px),
                           bf_surface_view_to_blank (view, drag->start_px));
  BfVec2 to = bf_vec2_add (bf_part_point (drag->first, point), by);

  to = bf_vec2 (aligned (drag, to.x, point, FALSE), aligned (drag, to.y, point, TRUE));
  return bf_edit_move_point (drag->first, point, to);
}

/* A side goes inward by its inset. Where a corner has trimmed it further already, a little of that
 * changes nothing. */
static BfPart *
moved_side (const BfSurfaceDrag *drag, const BfFlange *flange, double outward_mm)
{
  double step = step_mm (drag);
  double inset_mm = MAX (round ((drag->size_mm - outward_mm) / step), 0.0) * step;
  gboolean start = drag->selection.edge == BF_FLANGE_START;

  return bf_edit_flange_insets (drag->first, flange->id, start ? inset_mm : flange->start_mm,
                                start ? flange->end_mm : inset_mm);
}

static BfPart *
moved (const BfSurfaceDrag *drag)
{
  BfVec2 by = bf_vec2_sub (drag->pointer_px, drag->start_px);
  double px2 = bf_vec2_dot (drag->outward_px, drag->outward_px);

  if (bf_selection_is_point (drag->selection))
    return moved_point (drag);
  if (bf_selection_is_opening (drag->selection))
    return bf_opening_drag_to (&drag->opening, drag->first, by, step_mm (drag));
  double outward_mm = bf_vec2_dot (by, drag->outward_px) / px2;
  double size_mm = whole (drag, drag->size_mm + outward_mm);
  if (drag->selection.face == 0)
    return bf_edit_move_edge (drag->first, (guint)drag->selection.edge, size_mm - drag->size_mm);
  if (drag->selection.edge != BF_FLANGE_TIP)
    return moved_side (drag, bf_part_find_flange (drag->first, drag->id), outward_mm);
  return bf_edit_flange_length (drag->first, drag->id, size_mm);
}

/* Where the outline would cross itself, the part stays as the last that did not. */
static gboolean
is_sound (const BfPart *part)
{
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      BfVec2 p = bf_part_point (part, i);
      if (fabs (p.x) > BF_LENGTH_MAX_MM || fabs (p.y) > BF_LENGTH_MAX_MM)
        return FALSE;
    }
  return bf_part_check_outline (part, NULL) &&
         bf_polygon_area ((const BfVec2 *)(const void *)part->outline->data, part->outline->len) >
             0.0;
}

gboolean
bf_surface_drag_follow (BfSurfaceDrag *drag)
{
  g_return_val_if_fail (drag != NULL, FALSE);

  if (!drag->waits)
    return FALSE;
  drag->waits = FALSE;
  g_autoptr (BfPart) part = moved (drag);
  if (!is_sound (part))
    return FALSE;
  bf_document_apply (drag->document, part, drag->name, "drag");
  drag->changed = TRUE;
  return TRUE;
}

void
bf_surface_drag_end (BfSurfaceDrag *drag, gboolean back)
{
  g_return_if_fail (drag != NULL);

  if (!back)
    bf_surface_drag_follow (drag);
  bf_document_end_step (drag->document);
  if (back && drag->changed)
    bf_document_undo (drag->document);
  bf_surface_scene_set_held (drag->scene, FALSE);
  bf_part_unref (drag->first);
  g_object_unref (drag->document);
  g_free (drag->id);
  g_free (drag->name);
  g_free (drag);
}
