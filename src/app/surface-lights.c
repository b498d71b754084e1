/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-lights.h"

#include "app/surface-openings.h"

#include "paint/palette.h"

#define SELECTED_PX 5.0
#define POINTED_PX 3.0
#define RING_PX 2.0
#define RING_AWAY_PX 6.0
#define POINT_PX 4.5

static void
set_light (cairo_t *cr, gboolean dark)
{
  bf_set_source_rgb (cr, bf_okabe_ito (dark ? BF_OKABE_ITO_YELLOW : BF_OKABE_ITO_ORANGE));
}

static void
set_ink (cairo_t *cr, gboolean dark)
{
  bf_set_source_rgb (cr, dark ? 0xF4F2EE : 0x1E1E1E);
}

/* A line with a rim in the colour of ink, so that it stands out on metal and bench alike. */
static void
paint_line (cairo_t *cr, const BfVec2 line[2], double width_px, gboolean dark)
{
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  cairo_move_to (cr, line[0].x, line[0].y);
  cairo_line_to (cr, line[1].x, line[1].y);
  set_ink (cr, dark);
  cairo_set_line_width (cr, width_px + 2.0);
  cairo_stroke_preserve (cr);
  set_light (cr, dark);
  cairo_set_line_width (cr, width_px);
  cairo_stroke (cr);
}

static void
paint_point (cairo_t *cr, BfVec2 at, gboolean filled, gboolean dark)
{
  cairo_rectangle (cr, at.x - POINT_PX, at.y - POINT_PX, 2.0 * POINT_PX, 2.0 * POINT_PX);
  if (filled)
    set_light (cr, dark);
  else
    bf_set_source_rgb (cr, dark ? 0x2E2E2E : 0xFFFFFF);
  cairo_fill_preserve (cr);
  set_ink (cr, dark);
  cairo_set_line_width (cr, 1.4);
  cairo_stroke (cr);
}

static void
set_ring (cairo_t *cr, gboolean dark)
{
  bf_set_source_rgb (cr, bf_okabe_ito (dark ? BF_OKABE_ITO_SKY_BLUE : BF_OKABE_ITO_BLUE));
  cairo_set_line_width (cr, RING_PX);
}

/* The keyboard's ring: all round the line, a little away from it. */
static void
paint_ring (cairo_t *cr, const BfVec2 line[2], gboolean dark)
{
  double angle = atan2 (line[1].y - line[0].y, line[1].x - line[0].x);

  cairo_new_sub_path (cr);
  cairo_arc (cr, line[1].x, line[1].y, RING_AWAY_PX, angle - G_PI_2, angle + G_PI_2);
  cairo_arc (cr, line[0].x, line[0].y, RING_AWAY_PX, angle + G_PI_2, angle + 3.0 * G_PI_2);
  cairo_close_path (cr);
  set_ring (cr, dark);
  cairo_stroke (cr);
}

static void
paint_edge (BfSurfaceScene *scene,
            const BfSurfaceEdge *edge,
            BfPicture picture,
            cairo_t *cr,
            const BfSurfaceLights *lights)
{
  gboolean selected = bf_selection_is_same (edge->selection, lights->selected);
  gboolean pointed = bf_selection_is_same (edge->selection, lights->pointed);
  gboolean focused = bf_selection_is_same (edge->selection, lights->focused);
  gboolean point = bf_selection_is_corner (edge->selection);
  BfVec2 line[2];

  if ((!selected && !pointed && !focused) || (point && picture == BF_PICTURE_FORMED) ||
      !bf_surface_scene_edge_px (scene, edge, picture, line))
    return;
  if (!point && (selected || pointed))
    paint_line (cr, line, selected ? SELECTED_PX : POINTED_PX, lights->dark);
  if (focused)
    paint_ring (cr, line, lights->dark);
}

static void
path_round (cairo_t *cr, const GArray *px, double away_px)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < px->len; i++)
    bf_box_extend (&box, g_array_index (px, BfVec2, i));
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  cairo_new_sub_path (cr);
  for (guint i = 0; i < px->len; i++)
    {
      BfVec2 p = g_array_index (px, BfVec2, i);
      p = bf_vec2_along (p, bf_vec2_unit (bf_vec2_sub (p, middle)), away_px);
      cairo_line_to (cr, p.x, p.y);
    }
  cairo_close_path (cr);
}

/* From the edges that an opening's place is measured from, thin lines to its middle. */
static void
paint_distances (BfSurfaceScene *scene, BfSelection selection, cairo_t *cr, gboolean dark)
{
  BfSurfaceView *view = bf_surface_scene_get_view (scene);
  BfVec2 lines[2][2];

  bf_surface_opening_lines (bf_surface_scene_get_fold (scene), selection, lines);
  for (guint i = 0; i < 2; i++)
    {
      BfVec2 from = bf_surface_view_from_blank (view, lines[i][0]);
      BfVec2 to = bf_surface_view_from_blank (view, lines[i][1]);
      cairo_move_to (cr, from.x, from.y);
      cairo_line_to (cr, to.x, to.y);
    }
  set_ink (cr, dark);
  cairo_set_line_width (cr, 1.0);
  cairo_stroke (cr);
}

static void
paint_opening (BfSurfaceScene *scene,
               BfSelection opening,
               BfPicture picture,
               cairo_t *cr,
               const BfSurfaceLights *lights)
{
  gboolean selected = bf_selection_is_same (opening, lights->selected);
  gboolean pointed = bf_selection_is_same (opening, lights->pointed);
  gboolean focused = bf_selection_is_same (opening, lights->focused);
  g_autoptr (GArray) px = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  if ((!selected && !pointed && !focused) || !bf_surface_opening_px (scene, opening, picture, px))
    return;
  if (selected && picture == BF_PICTURE_BLANK)
    paint_distances (scene, opening, cr, lights->dark);
  if (selected || pointed)
    {
      double width_px = selected ? SELECTED_PX - 1.0 : POINTED_PX;
      path_round (cr, px, 0.0);
      set_ink (cr, lights->dark);
      cairo_set_line_width (cr, width_px + 2.0);
      cairo_stroke_preserve (cr);
      set_light (cr, lights->dark);
      cairo_set_line_width (cr, width_px);
      cairo_stroke (cr);
    }
  if (!focused)
    return;
  path_round (cr, px, RING_AWAY_PX);
  set_ring (cr, lights->dark);
  cairo_stroke (cr);
}

/* Points of the cut-out that one is busy with. */
static void
paint_opening_point (BfSurfaceScene *scene,
                     const BfSurfaceEdge *point,
                     cairo_t *cr,
                     const BfSurfaceLights *lights)
{
  BfVec2 px[2];

  if (!bf_surface_offers_points (scene, point->selection) ||
      !bf_surface_scene_edge_px (scene, point, BF_PICTURE_BLANK, px))
    return;
  gboolean selected = bf_selection_is_same (point->selection, lights->selected);
  if (selected)
    paint_distances (scene, point->selection, cr, lights->dark);
  paint_point (cr, px[0], selected, lights->dark);
  if (bf_selection_is_same (point->selection, lights->focused))
    paint_ring (cr, px, lights->dark);
}

/* The corners that can be taken hold of: the selected one, or both ends of the selected edge. */
static void
paint_corners (BfSurfaceScene *scene, const BfSurfaceLights *lights, cairo_t *cr)
{
  BfSurfaceView *view = bf_surface_scene_get_view (scene);
  const GArray *edges = bf_surface_scene_get_edges (scene);

  for (guint i = 0; i < edges->len; i++)
    {
      const BfSurfaceEdge *corner = bf_surface_edge (edges, i);
      if (bf_surface_scene_offers_corner (scene, corner->selection))
        paint_point (cr, bf_surface_view_from_blank (view, corner->blank[0]),
                     bf_selection_is_same (corner->selection, lights->selected), lights->dark);
    }
}

void
bf_surface_lights_paint (BfSurfaceScene *scene,
                         const BfSurfaceLights *lights,
                         BfPicture picture,
                         cairo_t *cr)
{
  g_return_if_fail (scene != NULL && lights != NULL && cr != NULL);

  const GArray *edges = bf_surface_scene_get_edges (scene);
  if (edges == NULL)
    return;
  cairo_save (cr);
  for (guint i = 0; i < edges->len; i++)
    {
      const BfSurfaceEdge *edge = bf_surface_edge (edges, i);
      if (bf_selection_is_opening (edge->selection) &&
          bf_selection_point_of_opening (edge->selection) >= 0)
        {
          if (picture == BF_PICTURE_BLANK)
            paint_opening_point (scene, edge, cr, lights);
        }
      else if (bf_selection_is_opening (edge->selection))
        paint_opening (scene, edge->selection, picture, cr, lights);
      else
        paint_edge (scene, edge, picture, cr, lights);
    }
  if (picture == BF_PICTURE_BLANK)
    paint_corners (scene, lights, cr);
  cairo_restore (cr);
}
