/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-view.h"

#include "formed-depth.h"
#include "formed-fixtures.h"

#define N_DIRECTIONS 40
#define SIZE BF_DEPTH_SIZE

static BfFormedLook
any_look (GRand *random)
{
  return (BfFormedLook){ g_rand_double_range (random, 0.0, 2.0 * G_PI),
                         asin (g_rand_double_range (random, -1.0, 1.0)) };
}

/* Picking finds the face that is nearest, wherever the depth render is not at an edge. */
static void
check_picking (const BfFormedView *view, const BfDepth *depth)
{
  guint asked = 0, wrong = 0;

  for (guint row = 0; row < SIZE; row++)
    for (guint column = 0; column < SIZE; column++)
      {
        BfVec2 at = bf_depth_middle (depth, column, row);

        if (bf_depth_is_edge (depth, column, row))
          continue;
        asked++;
        wrong +=
            bf_formed_view_pick (view, bf_vec2 (at.x, -at.y)) != depth->faces[row * SIZE + column];
      }
  g_assert_cmpfloat ((double)wrong, <=, 0.005 * asked);
}

static void
test_pick (gconstpointer data)
{
  const BfFormedFixture *fixture = data;
  BfFold *fold = fixture->make ();
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  g_autoptr (GRand) random = g_rand_new_with_seed (99);

  for (guint i = 0; i < N_DIRECTIONS; i++)
    {
      BfFormedLook look = any_look (random);
      BfFrame eye = bf_formed_eye (look.azimuth_rad, look.elevation_rad);
      g_autoptr (BfFormedView) view = bf_formed_view_prepare (fold, &fold->formed, look);
      g_autoptr (BfDepth) depth = bf_depth_render (scene, &eye);

      check_picking (view, depth);
    }
  bf_formed_fixture_free (fold);
}

/* The picture itself, at the depth render's scale and on a ground of pure blue, which no metal
 * has. */
static cairo_surface_t *
paint (const BfFormedView *view, const BfDepth *depth, BfFormedStyle style)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, SIZE, SIZE);
  cairo_t *cr = cairo_create (surface);

  style.scale = depth->scale;
  cairo_set_source_rgb (cr, 0.0, 0.0, 1.0);
  cairo_paint (cr);
  cairo_translate (cr, -depth->x0 * depth->scale, depth->y0 * depth->scale);
  bf_formed_view_paint (view, cr, &style);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static guint32
pixel (cairo_surface_t *surface, guint column, guint row)
{
  const guint8 *line = cairo_image_surface_get_data (surface) +
                       row * (gsize)cairo_image_surface_get_stride (surface);

  return ((const guint32 *)(gconstpointer)line)[column] & 0xFFFFFF;
}

/* How yellow a pixel is: metal hardly, the tint very much. */
static int
yellowness (guint32 rgb)
{
  return (int)(rgb >> 16 & 0xFF) - (int)(rgb & 0xFF);
}

/* A pixel and those round it all show that face. */
static gboolean
is_inside (const BfDepth *depth, guint column, guint row)
{
  for (guint r = row - 1; r <= row + 1; r++)
    for (guint c = column - 1; c <= column + 1; c++)
      if (bf_depth_is_edge (depth, c, r))
        return FALSE;
  return TRUE;
}

static void
check_picture (cairo_surface_t *surface, const BfDepth *depth, int highlight)
{
  guint asked = 0, wrong = 0;

  for (guint row = 2; row + 2 < SIZE; row++)
    for (guint column = 2; column + 2 < SIZE; column++)
      {
        guint32 rgb = pixel (surface, column, row);
        int seen = depth->faces[row * SIZE + column];

        if (!is_inside (depth, column, row))
          continue;
        asked++;
        if (seen < 0)
          wrong += rgb != 0x0000FF;
        else
          wrong += (yellowness (rgb) > 45) != (seen == highlight);
      }
  g_assert_cmpfloat ((double)wrong, <=, 0.005 * asked);
}

/* With the wall highlighted, what the painter makes yellow is that wall and nothing else, and what
 * is no metal is left as it was. */
static void
test_highlight (void)
{
  BfFold *fold = bf_formed_fixtures[1].make ();
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  g_autoptr (GRand) random = g_rand_new_with_seed (5);

  for (int highlight = -1; highlight < (int)fold->faces->len; highlight++)
    {
      BfFormedLook look = any_look (random);
      BfFrame eye = bf_formed_eye (look.azimuth_rad, look.elevation_rad);
      g_autoptr (BfFormedView) view = bf_formed_view_prepare (fold, &fold->formed, look);
      g_autoptr (BfDepth) depth = bf_depth_render (scene, &eye);
      BfFormedStyle style = bf_formed_style (FALSE);
      cairo_surface_t *surface;

      style.highlight = highlight;
      style.line_width = 0.0;
      surface = paint (view, depth, style);
      check_picture (surface, depth, highlight);
      cairo_surface_destroy (surface);
    }
  bf_formed_fixture_free (fold);
}

/* How sharply the tone turns at a pixel of a column. */
static int
tone_bend (cairo_surface_t *surface, guint column, guint row)
{
  int above = (int)(pixel (surface, column, row - 1) & 0xFF);
  int below = (int)(pixel (surface, column, row + 1) & 0xFF);

  return abs (above + below - 2 * (int)(pixel (surface, column, row) & 0xFF));
}

/* The first row of a column that shows that face. */
static guint
first_row (const BfDepth *depth, guint column, int face)
{
  guint row = 0;

  while (row < SIZE && depth->faces[row * SIZE + column] != face)
    row++;
  return row;
}

/* Tones run on from strip to strip and into the flat: down a bend that is seen from the front, the
 * tone nowhere turns sharply, as it does at a hairline or from one plain strip to the next. (The
 * first rows, where the bend turns out of sight, are left out.) */
static void
test_smooth_bend (void)
{
  static const BfVec2 base[] = { { 0, 0 }, { 40, 0 }, { 40, 5 }, { 0, 5 } };
  BfFold *fold = bf_formed_fixture_new (base, 4, 1.0);
  BfFormedLook look = { bf_deg_to_rad (-90.0), bf_deg_to_rad (20.0) };
  BfFrame eye = bf_formed_eye (look.azimuth_rad, look.elevation_rad);
  BfFormedStyle style = { .metal = 0xFFFFFF, .dark = 0.2, .other_side = 1.0, .highlight = -1 };
  g_autoptr (BfFormedScene) scene = NULL;
  g_autoptr (BfFormedView) view = NULL;
  g_autoptr (BfDepth) depth = NULL;
  cairo_surface_t *surface;
  guint row;

  bf_formed_fixture_add (fold, (BfFormedFlange){ 0, 0, 0, 0, 5, 90, 24, BF_TURN_DOWN, { 0 } });
  scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  view = bf_formed_view_prepare (fold, &fold->formed, look);
  depth = bf_depth_render (scene, &eye);
  surface = paint (view, depth, style);
  row = first_row (depth, SIZE / 2, 1) + 6;
  g_assert_cmpuint (row, <, SIZE / 2);
  for (; !bf_depth_is_edge (depth, SIZE / 2, row + 1); row++)
    g_assert_cmpint (tone_bend (surface, SIZE / 2, row), <=, 3);
  g_assert_cmpuint (row, >, SIZE / 2);
  cairo_surface_destroy (surface);
  bf_formed_fixture_free (fold);
}

/* Straight from above the picture is the plan: x to the right where the eye stands at azimuth
 * −90°, y up. */
static void
test_plan (void)
{
  BfFold *fold = bf_formed_fixtures[0].make ();
  g_autoptr (BfFormedView) view = bf_formed_view_prepare (
      fold, &fold->formed, (BfFormedLook){ bf_deg_to_rad (-90.0), bf_deg_to_rad (90.0) });
  BfBox box = bf_formed_view_box (view);
  BfVec2 p = bf_formed_view_project (view, bf_vec3 (120.0, 80.0, 0.0));

  g_assert_cmpfloat_with_epsilon (box.min.x, 0.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (box.max.x, 120.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (box.min.y, -80.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (box.max.y, 0.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (p.x, 120.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (p.y, -80.0, 1e-9);
  g_assert_cmpint (bf_formed_view_pick (view, bf_vec2 (60.0, -40.0)), ==, 0);
  g_assert_cmpint (bf_formed_view_pick (view, bf_vec2 (60.0, 1.0)), ==, -1);
  bf_formed_fixture_free (fold);
}

/* The front of a wall that stands up in front hides the base; the eye at azimuth −90° looks
 * along +y. */
static void
test_front (void)
{
  BfFold *fold = bf_formed_fixtures[1].make ();
  g_autoptr (BfFormedView) view = bf_formed_view_prepare (
      fold, &fold->formed, (BfFormedLook){ bf_deg_to_rad (-90.0), bf_deg_to_rad (10.0) });
  BfVec2 wall = bf_formed_view_project (view, bf_vec3 (60.0, -3.0, 20.0));
  BfVec2 far_wall = bf_formed_view_project (view, bf_vec3 (60.0, 81.5, 30.0));

  g_assert_cmpint (bf_formed_view_pick (view, wall), ==, 1);
  g_assert_cmpint (bf_formed_view_pick (view, far_wall), ==, 3);
  bf_formed_fixture_free (fold);
}

/* No metal at all is a picture too. */
static void
test_empty (void)
{
  BfFold *fold = bf_formed_fixture_new (NULL, 0, 1.0);
  g_autoptr (BfFormedView) view =
      bf_formed_view_prepare (fold, &fold->formed, (BfFormedLook){ 0.0, 0.0 });
  BfDepth depth = { .scale = 1.0 };
  cairo_surface_t *surface = paint (view, &depth, bf_formed_style (TRUE));
  BfBox box = bf_formed_view_box (view);

  g_assert_cmpuint (pixel (surface, 5, 5), ==, 0x0000FF);
  g_assert_cmpfloat (fabs (box.min.x) + fabs (box.max.y), <, 1e-12);
  g_assert_cmpint (bf_formed_view_pick (view, bf_vec2 (0.0, 0.0)), ==, -1);
  cairo_surface_destroy (surface);
  bf_formed_fixture_free (fold);
}

/* What cr was set to before is what it is set to after. */
static void
test_leaves_cr (void)
{
  BfFold *fold = bf_formed_fixtures[2].make ();
  g_autoptr (BfFormedView) view =
      bf_formed_view_prepare (fold, &fold->formed, (BfFormedLook){ 0.4, 0.4 });
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 20, 20);
  cairo_t *cr = cairo_create (surface);
  BfFormedStyle style = bf_formed_style (FALSE);

  cairo_set_line_width (cr, 7.0);
  cairo_move_to (cr, 1.0, 1.0);
  bf_formed_view_paint (view, cr, &style);
  g_assert_cmpfloat_with_epsilon (cairo_get_line_width (cr), 7.0, 1e-12);
  g_assert_cmpint (cairo_get_line_cap (cr), ==, CAIRO_LINE_CAP_BUTT);
  g_assert_false (cairo_has_current_point (cr));
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  bf_formed_fixture_free (fold);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  for (guint i = 0; i < bf_n_formed_fixtures; i++)
    {
      g_autofree char *path =
          g_strdup_printf ("/paint/formed-view/pick/%s", bf_formed_fixtures[i].name);

      g_test_add_data_func (path, &bf_formed_fixtures[i], test_pick);
    }
  g_test_add_func ("/paint/formed-view/highlight", test_highlight);
  g_test_add_func ("/paint/formed-view/smooth-bend", test_smooth_bend);
  g_test_add_func ("/paint/formed-view/plan", test_plan);
  g_test_add_func ("/paint/formed-view/front", test_front);
  g_test_add_func ("/paint/formed-view/empty", test_empty);
  g_test_add_func ("/paint/formed-view/leaves-cr", test_leaves_cr);
  return g_test_run ();
}
