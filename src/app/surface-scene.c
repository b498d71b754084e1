/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-scene.h"

#include "paint/blank-view.h"
#include "paint/formed-view.h"

/* A millimetre of paper on a screen of 96 dots an inch: pens and words are given in it. */
#define PX_PER_PAPER_MM (96.0 / 25.4)

#define CAP_HEIGHT_MM 2.2

struct _BfSurfaceScene
{
  BfSurfaceView *view;
  BfFold *fold; /* or NULL */

  BfFormedView *formed; /* the picture last prepared, or NULL; and what it was prepared for */
  BfFormedLook look;
  double fraction;
};

BfSurfaceScene *
bf_surface_scene_new (BfSurfaceView *view)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (view), NULL);

  BfSurfaceScene *scene = g_new0 (BfSurfaceScene, 1);
  scene->view = g_object_ref (view);
  return scene;
}

void
bf_surface_scene_free (BfSurfaceScene *scene)
{
  g_clear_pointer (&scene->formed, bf_formed_view_free);
  g_clear_pointer (&scene->fold, bf_fold_unref);
  g_object_unref (scene->view);
  g_free (scene);
}

/* The formed part has to find room from every side. While it opens it may reach out of that a
 * little: it is better seen large. */
static double
needed_radius (const BfFold *fold)
{
  BfVec3 size = bf_vec3_sub (fold->formed.max, fold->formed.min);
  BfVec2 flat = bf_vec2_sub (fold->blank.box.max, fold->blank.box.min);
  return MAX (bf_vec3_length (size), 0.85 * bf_vec2_length (flat)) / 2.0;
}

void
bf_surface_scene_set_fold (BfSurfaceScene *scene, BfFold *fold)
{
  g_return_if_fail (scene != NULL);

  if (fold != NULL)
    bf_fold_ref (fold);
  g_clear_pointer (&scene->formed, bf_formed_view_free);
  g_clear_pointer (&scene->fold, bf_fold_unref);
  scene->fold = fold;
  if (fold != NULL)
    bf_surface_view_set_content (scene->view, &fold->blank.box, needed_radius (fold));
}

static gboolean
is_prepared (const BfSurfaceScene *scene, BfFormedLook look, double fraction)
{
  if (scene->formed == NULL)
    return FALSE;
  return fabs (scene->look.azimuth_rad - look.azimuth_rad) <= 0.0 &&
         fabs (scene->look.elevation_rad - look.elevation_rad) <= 0.0 &&
         fabs (scene->fraction - fraction) <= 0.0;
}

/* The picture of the formed part as one looks at it now. */
static const BfFormedView *
prepare_formed (BfSurfaceScene *scene)
{
  BfFormedLook look = { bf_surface_view_get_azimuth (scene->view),
                        bf_surface_view_get_elevation (scene->view) };
  double fraction = bf_surface_view_get_fraction (scene->view);

  if (is_prepared (scene, look, fraction))
    return scene->formed;
  g_clear_pointer (&scene->formed, bf_formed_view_free);
  scene->look = look;
  scene->fraction = fraction;
  if (fraction >= 1.0)
    {
      scene->formed = bf_formed_view_prepare (scene->fold, &scene->fold->formed, look);
      return scene->formed;
    }
  g_auto (BfFormed) formed = { 0 };
  bf_fold_formed_at (scene->fold, fraction, &formed);
  scene->formed = bf_formed_view_prepare (scene->fold, &formed, look);
  return scene->formed;
}

/* What stays in its place while the part is turned and folded: the middle of the formed box, which
 * goes over into the middle of the blank. */
static BfVec3
formed_middle (const BfSurfaceScene *scene)
{
  const BfFormed *formed = &scene->fold->formed;
  const BfBox *flat = &scene->fold->blank.box;
  BfVec3 done = bf_vec3_scale (bf_vec3_add (formed->min, formed->max), 0.5);
  BfVec3 open = { (flat->min.x + flat->max.x) / 2.0, (flat->min.y + flat->max.y) / 2.0, 0.0 };
  double fraction = bf_surface_view_get_fraction (scene->view);

  return bf_vec3_add (bf_vec3_scale (done, fraction), bf_vec3_scale (open, 1.0 - fraction));
}

/* Where the formed picture's own origin is on the surface. */
static BfVec2
formed_origin (const BfSurfaceScene *scene, const BfFormedView *picture)
{
  double scale = bf_surface_view_get_scale (scene->view);
  BfVec2 middle = bf_formed_view_project (picture, formed_middle (scene));
  return bf_vec2_along (bf_surface_view_get_formed_centre (scene->view), middle, -scale);
}

void
bf_surface_scene_paint_blank (BfSurfaceScene *scene, cairo_t *cr, gboolean dark)
{
  g_return_if_fail (scene != NULL && cr != NULL);

  if (scene->fold == NULL)
    return;
  double scale = bf_surface_view_get_scale (scene->view);
  BfVec2 origin = bf_surface_view_from_blank (scene->view, bf_vec2 (0.0, 0.0));
  BfBlankStyle style;

  bf_blank_style_init (&style, scene->fold);
  style.layers |= BF_BLANK_METAL;
  style.unit = PX_PER_PAPER_MM / scale;
  style.cap_height_mm = CAP_HEIGHT_MM;
  style.highlight_face = bf_surface_view_get_selection (scene->view).face;
  style.dark = dark;
  cairo_save (cr);
  cairo_translate (cr, origin.x, origin.y);
  cairo_scale (cr, scale, scale);
  bf_blank_view_draw (scene->fold, &style, cr);
  cairo_restore (cr);
}

void
bf_surface_scene_paint_formed (BfSurfaceScene *scene, cairo_t *cr, gboolean dark)
{
  g_return_if_fail (scene != NULL && cr != NULL);

  if (scene->fold == NULL)
    return;
  const BfFormedView *picture = prepare_formed (scene);
  BfVec2 origin = formed_origin (scene, picture);
  BfFormedStyle style = bf_formed_style (dark);

  style.scale = bf_surface_view_get_scale (scene->view);
  style.line_width = BF_SURFACE_LINE_PX;
  style.highlight = bf_surface_view_get_selection (scene->view).face;
  cairo_save (cr);
  cairo_translate (cr, origin.x, origin.y);
  bf_formed_view_paint (picture, cr, &style);
  cairo_restore (cr);
}

gboolean
bf_surface_scene_is_formed_side (BfSurfaceScene *scene, BfVec2 px)
{
  g_return_val_if_fail (scene != NULL, FALSE);

  if (scene->fold == NULL)
    return FALSE;
  return bf_surface_view_to_blank (scene->view, px).x > scene->fold->blank.box.max.x;
}

static int
pick_formed (BfSurfaceScene *scene, BfVec2 px)
{
  const BfFormedView *picture = prepare_formed (scene);
  BfVec2 by = bf_vec2_sub (px, formed_origin (scene, picture));
  double scale = bf_surface_view_get_scale (scene->view);
  return bf_formed_view_pick (picture, bf_vec2_scale (by, 1.0 / scale));
}

static int
pick_blank (BfSurfaceScene *scene, BfVec2 px)
{
  BfVec2 at = bf_surface_view_to_blank (scene->view, px);
  for (guint i = 0; i < scene->fold->faces->len; i++)
    {
      const BfRing *outline = bf_fold_face (scene->fold, i)->outline;
      if (outline != NULL && bf_ring_size (outline) > 0 && bf_ring_contains (outline, at))
        return (int)i;
    }
  return -1;
}

BfSelection
bf_surface_scene_pick (BfSurfaceScene *scene, BfVec2 px)
{
  g_return_val_if_fail (scene != NULL, BF_SELECTION_NONE);

  if (scene->fold == NULL)
    return BF_SELECTION_NONE;
  int face = pick_blank (scene, px);
  if (face < 0)
    face = pick_formed (scene, px);
  return (BfSelection){ face, -1 };
}
