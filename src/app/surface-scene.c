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
  BfFold *fold;    /* or NULL */
  GArray *edges;   /* BfSurfaceEdge, of the fold */
  GArray *covered; /* BfBox, in pixels */
  gboolean held;
  BfVec3 held_middle;

  BfFormedView *formed; /* the picture last prepared, or NULL; and what it was prepared for */
  gboolean is_old;      /* for an earlier fold */
  BfFormedLook look;
  double fraction;
  BfFormed opened; /* the part at that fraction, where it is not folded wholly */
};

BfSurfaceScene *
bf_surface_scene_new (BfSurfaceView *view)
{
  g_return_val_if_fail (BF_IS_SURFACE_VIEW (view), NULL);

  BfSurfaceScene *scene = g_new0 (BfSurfaceScene, 1);
  scene->view = g_object_ref (view);
  scene->covered = g_array_new (FALSE, FALSE, sizeof (BfBox));
  return scene;
}

void
bf_surface_scene_free (BfSurfaceScene *scene)
{
  g_clear_pointer (&scene->formed, bf_formed_view_free);
  bf_formed_clear (&scene->opened);
  g_clear_pointer (&scene->edges, g_array_unref);
  g_clear_pointer (&scene->fold, bf_fold_unref);
  g_array_unref (scene->covered);
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

static void
make_room (BfSurfaceScene *scene)
{
  bf_surface_view_set_content (scene->view, &scene->fold->blank.box, needed_radius (scene->fold));
}

void
bf_surface_scene_set_fold (BfSurfaceScene *scene, BfFold *fold)
{
  g_return_if_fail (scene != NULL);

  if (fold != NULL)
    bf_fold_ref (fold);
  scene->is_old = TRUE;
  g_clear_pointer (&scene->edges, g_array_unref);
  g_clear_pointer (&scene->fold, bf_fold_unref);
  scene->fold = fold;
  if (fold == NULL)
    return;
  scene->edges = bf_surface_edges (fold);
  if (!scene->held)
    make_room (scene);
}

BfFold *
bf_surface_scene_get_fold (BfSurfaceScene *scene)
{
  g_return_val_if_fail (scene != NULL, NULL);
  return scene->fold;
}

BfSurfaceView *
bf_surface_scene_get_view (BfSurfaceScene *scene)
{
  g_return_val_if_fail (scene != NULL, NULL);
  return scene->view;
}

const GArray *
bf_surface_scene_get_edges (BfSurfaceScene *scene)
{
  g_return_val_if_fail (scene != NULL, NULL);
  return scene->edges;
}

static gboolean
is_same_look (BfFormedLook a, BfFormedLook b)
{
  return fabs (a.azimuth_rad - b.azimuth_rad) <= 0.0 &&
         fabs (a.elevation_rad - b.elevation_rad) <= 0.0;
}

static void
form (BfSurfaceScene *scene, BfFormedLook look, double fraction)
{
  const BfFormed *formed = &scene->fold->formed;

  bf_formed_clear (&scene->opened);
  if (fraction < 1.0)
    {
      bf_fold_formed_at (scene->fold, fraction, &scene->opened);
      formed = &scene->opened;
    }
  scene->formed = bf_formed_view_prepare_after (scene->formed, scene->fold, formed, look);
  scene->is_old = FALSE;
}

/* The picture of the formed part as one looks at it now. */
static const BfFormedView *
prepare_formed (BfSurfaceScene *scene)
{
  BfFormedLook look = { bf_surface_view_get_azimuth (scene->view),
                        bf_surface_view_get_elevation (scene->view) };
  double fraction = bf_surface_view_get_fraction (scene->view);

  if (scene->formed == NULL || scene->is_old || fabs (scene->fraction - fraction) > 0.0)
    form (scene, look, fraction);
  else if (!is_same_look (scene->look, look))
    bf_formed_view_look (scene->formed, look);
  scene->look = look;
  scene->fraction = fraction;
  return scene->formed;
}

/* What stays in its place while the part is turned and folded: the middle of the formed box, which
 * goes over into the middle of the blank. */
static BfVec3
formed_middle (const BfSurfaceScene *scene)
{
  if (scene->held)
    return scene->held_middle;
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
bf_surface_scene_set_held (BfSurfaceScene *scene, gboolean held)
{
  g_return_if_fail (scene != NULL);

  if (held == scene->held || scene->fold == NULL)
    return;
  scene->held_middle = formed_middle (scene);
  scene->held = held;
  if (!held)
    make_room (scene);
}

/* Where a point of a face's flat is in space, as far as the part is folded now. */
static gboolean
place_point (BfSurfaceScene *scene, guint face, BfVec2 p, BfVec3 *place)
{
  const BfFormed *formed = scene->fraction >= 1.0 ? &scene->fold->formed : &scene->opened;

  for (guint i = 0; i < formed->solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (formed, i);
      if (solid->kind != BF_SOLID_SLAB || solid->face != face)
        continue;
      BfVec2 local = bf_solid_local (solid, p);
      *place = bf_frame_point (&solid->frame, local.x, local.y, 0.0);
      return TRUE;
    }
  return FALSE;
}

static gboolean
formed_px (BfSurfaceScene *scene, guint face, BfVec2 p, BfVec2 *px)
{
  const BfFormedView *picture = prepare_formed (scene);
  BfVec3 place;

  if (!place_point (scene, face, p, &place))
    return FALSE;
  *px = bf_vec2_along (formed_origin (scene, picture), bf_formed_view_project (picture, place),
                       bf_surface_view_get_scale (scene->view));
  return TRUE;
}

static BfBox
blank_box_px (BfSurfaceScene *scene)
{
  const BfBox *box = &scene->fold->blank.box;
  BfVec2 a = bf_surface_view_from_blank (scene->view, box->min);
  BfVec2 b = bf_surface_view_from_blank (scene->view, box->max);

  return (BfBox){ { a.x, b.y }, { b.x, a.y } };
}

BfBox
bf_surface_scene_box (BfSurfaceScene *scene, BfPicture picture)
{
  g_return_val_if_fail (scene != NULL, bf_box_empty ());

  if (scene->fold == NULL)
    return bf_box_empty ();
  if (picture == BF_PICTURE_BLANK)
    return blank_box_px (scene);
  const BfFormedView *formed = prepare_formed (scene);
  BfVec2 origin = formed_origin (scene, formed);
  BfBox box = bf_formed_view_box (formed);
  double scale = bf_surface_view_get_scale (scene->view);
  return (BfBox){ bf_vec2_along (origin, box.min, scale), bf_vec2_along (origin, box.max, scale) };
}

gboolean
bf_surface_scene_point_px (
    BfSurfaceScene *scene, guint face, BfVec2 blank_mm, BfPicture picture, BfVec2 *px)
{
  g_return_val_if_fail (scene != NULL && scene->fold != NULL && px != NULL, FALSE);

  if (picture == BF_PICTURE_FORMED)
    return formed_px (scene, face, blank_mm, px);
  *px = bf_surface_view_from_blank (scene->view, blank_mm);
  return TRUE;
}

gboolean
bf_surface_scene_edge_px (BfSurfaceScene *scene,
                          const BfSurfaceEdge *edge,
                          BfPicture picture,
                          BfVec2 px[2])
{
  g_return_val_if_fail (scene != NULL && scene->fold != NULL && edge != NULL, FALSE);

  for (guint k = 0; k < 2; k++)
    if (picture == BF_PICTURE_BLANK)
      px[k] = bf_surface_view_from_blank (scene->view, edge->blank[k]);
    else if (!formed_px (scene, (guint)edge->selection.face, edge->formed[k], &px[k]))
      return FALSE;
  return TRUE;
}

BfVec2
bf_surface_scene_outward_px (BfSurfaceScene *scene, const BfSurfaceEdge *edge, BfPicture picture)
{
  g_return_val_if_fail (scene != NULL && scene->fold != NULL, bf_vec2 (0.0, 0.0));

  double scale = bf_surface_view_get_scale (scene->view);
  BfVec2 from, to;
  if (picture == BF_PICTURE_BLANK)
    return bf_vec2 (edge->outward.x * scale, -edge->outward.y * scale);
  if (!formed_px (scene, (guint)edge->selection.face, edge->formed[0], &from) ||
      !formed_px (scene, (guint)edge->selection.face, bf_vec2_add (edge->formed[0], edge->outward),
                  &to))
    return bf_vec2 (0.0, 0.0);
  return bf_vec2_sub (to, from);
}

void
bf_surface_scene_set_covered (BfSurfaceScene *scene, const GArray *px)
{
  g_return_if_fail (scene != NULL && px != NULL);

  g_array_set_size (scene->covered, 0);
  if (px->len > 0)
    g_array_append_vals (scene->covered, px->data, px->len);
}

/* What is covered, in the blank. */
static GArray *
covered_mm (const BfSurfaceScene *scene)
{
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (BfBox));

  for (guint i = 0; i < scene->covered->len; i++)
    {
      const BfBox *px = &g_array_index (scene->covered, BfBox, i);
      BfVec2 a = bf_surface_view_to_blank (scene->view, px->min);
      BfVec2 b = bf_surface_view_to_blank (scene->view, px->max);
      BfBox box = { { a.x, b.y }, { b.x, a.y } };
      g_array_append_val (boxes, box);
    }
  return boxes;
}

/* A face lights up where it is selected itself, not one of its edges. */
static int
lit_face (const BfSurfaceScene *scene)
{
  BfSelection now = bf_surface_view_get_selection (scene->view);
  return now.edge == -1 ? now.face : -1;
}

void
bf_surface_scene_paint_blank (BfSurfaceScene *scene, cairo_t *cr, gboolean dark)
{
  g_return_if_fail (scene != NULL && cr != NULL);

  if (scene->fold == NULL)
    return;
  double scale = bf_surface_view_get_scale (scene->view);
  BfVec2 origin = bf_surface_view_from_blank (scene->view, bf_vec2 (0.0, 0.0));
  g_autoptr (GArray) covered = covered_mm (scene);
  BfBlankStyle style;

  bf_blank_style_init (&style, scene->fold);
  style.keep_off = covered;
  /* Names, sizes and angles stand there as fields that can be typed in. */
  style.layers = BF_BLANK_METAL | BF_BLANK_LINES | BF_BLANK_DRILL_NOTES;
  style.unit = PX_PER_PAPER_MM / scale;
  style.cap_height_mm = CAP_HEIGHT_MM * bf_surface_view_get_text (scene->view);
  style.highlight_face = lit_face (scene);
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
  style.highlight = lit_face (scene);
  cairo_save (cr);
  cairo_translate (cr, origin.x, origin.y);
  bf_formed_view_paint (picture, cr, &style);
  cairo_restore (cr);
}

int
bf_surface_scene_pick_formed (BfSurfaceScene *scene, BfVec2 px)
{
  g_return_val_if_fail (scene != NULL && scene->fold != NULL, -1);

  const BfFormedView *picture = prepare_formed (scene);
  BfVec2 by = bf_vec2_sub (px, formed_origin (scene, picture));
  double scale = bf_surface_view_get_scale (scene->view);
  return bf_formed_view_pick (picture, bf_vec2_scale (by, 1.0 / scale));
}
