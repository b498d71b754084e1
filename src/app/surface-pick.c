/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-openings.h"

/* So near the pointer takes hold of an edge, in pixels, and of a point. */
#define EDGE_REACH_PX 7.0
#define POINT_REACH_PX 8.0

static double
distance_to_line (BfVec2 p, const BfVec2 line[2])
{
  BfVec2 along = bf_vec2_sub (line[1], line[0]);
  double length2 = bf_vec2_dot (along, along);
  double share = length2 > 0.0 ? bf_vec2_dot (bf_vec2_sub (p, line[0]), along) / length2 : 0.0;

  return bf_vec2_distance (p, bf_vec2_along (line[0], along, CLAMP (share, 0.0, 1.0)));
}

/* TRUE for the corners at the ends of an edge. */
static gboolean
is_at_end (BfSelection edge, guint corner, guint n_points)
{
  if (edge.face == 0)
    return edge.edge >= 0 &&
           ((guint)edge.edge == corner || ((guint)edge.edge + 1) % n_points == corner);
  return edge.edge != (corner == 0 ? BF_FLANGE_END : BF_FLANGE_START);
}

gboolean
bf_surface_scene_offers_corner (BfSurfaceScene *scene, BfSelection corner)
{
  g_return_val_if_fail (scene != NULL, FALSE);

  BfSelection now = bf_surface_view_get_selection (bf_surface_scene_get_view (scene));
  guint n = bf_part_n_points (bf_surface_scene_get_fold (scene)->part);
  if (!bf_selection_is_corner (corner) || corner.face != now.face || bf_selection_is_opening (now))
    return FALSE;
  return bf_selection_is_corner (now) ? bf_selection_is_same (now, corner)
                                      : is_at_end (now, bf_selection_corner_at (corner), n);
}

/* The nearest edge of a picture within reach; reach_px gets how near. */
static BfSelection
pick_edge (BfSurfaceScene *scene, BfVec2 px, BfPicture picture, double *reach_px)
{
  const GArray *edges = bf_surface_scene_get_edges (scene);
  BfSelection found = BF_SELECTION_NONE;

  for (guint i = 0; i < edges->len; i++)
    {
      const BfSurfaceEdge *edge = bf_surface_edge (edges, i);
      BfVec2 line[2];
      if (bf_selection_is_corner (edge->selection) || bf_selection_is_opening (edge->selection) ||
          !bf_surface_scene_edge_px (scene, edge, picture, line))
        continue;
      double away = distance_to_line (px, line);
      if (away >= *reach_px)
        continue;
      *reach_px = away;
      found = edge->selection;
    }
  return found;
}

static BfSelection
pick_corner (BfSurfaceScene *scene, BfVec2 px)
{
  BfSurfaceView *view = bf_surface_scene_get_view (scene);
  const GArray *edges = bf_surface_scene_get_edges (scene);

  for (guint i = 0; i < edges->len; i++)
    {
      const BfSurfaceEdge *corner = bf_surface_edge (edges, i);
      BfVec2 at = bf_surface_view_from_blank (view, corner->blank[0]);
      if (bf_surface_scene_offers_corner (scene, corner->selection) &&
          bf_vec2_distance (px, at) < POINT_REACH_PX)
        return corner->selection;
    }
  return BF_SELECTION_NONE;
}

static int
pick_blank (BfSurfaceScene *scene, BfVec2 px)
{
  BfFold *fold = bf_surface_scene_get_fold (scene);
  BfVec2 at = bf_surface_view_to_blank (bf_surface_scene_get_view (scene), px);
  for (guint i = 0; i < fold->faces->len; i++)
    {
      const BfRing *outline = bf_fold_face (fold, i)->outline;
      if (outline != NULL && bf_ring_size (outline) > 0 && bf_ring_contains (outline, at))
        return (int)i;
    }
  return -1;
}

BfSelection
bf_surface_scene_pick (BfSurfaceScene *scene, BfVec2 px)
{
  g_return_val_if_fail (scene != NULL, BF_SELECTION_NONE);

  if (bf_surface_scene_get_fold (scene) == NULL)
    return BF_SELECTION_NONE;
  gboolean formed = bf_surface_scene_is_formed_side (scene, px);
  BfPicture picture = formed ? BF_PICTURE_FORMED : BF_PICTURE_BLANK;
  double reach_px = EDGE_REACH_PX;
  BfSelection found = formed ? BF_SELECTION_NONE : pick_corner (scene, px);
  if (found.face < 0)
    found = bf_surface_openings_pick (scene, px, picture);
  if (found.face < 0)
    found = pick_edge (scene, px, picture, &reach_px);
  if (found.face >= 0)
    return found;
  int face = formed ? bf_surface_scene_pick_formed (scene, px) : pick_blank (scene, px);
  return (BfSelection){ face, -1 };
}

gboolean
bf_surface_scene_is_formed_side (BfSurfaceScene *scene, BfVec2 px)
{
  g_return_val_if_fail (scene != NULL, FALSE);

  const BfFold *fold = bf_surface_scene_get_fold (scene);
  if (fold == NULL)
    return FALSE;
  /* Half of the room between the pictures belongs to each. */
  BfSurfaceView *view = bf_surface_scene_get_view (scene);
  double edge_px = bf_surface_view_from_blank (view, fold->blank.box.max).x;
  return px.x > edge_px + BF_SURFACE_BESIDE_PX;
}
