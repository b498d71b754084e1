/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-order.h"

#include <cairo.h>

#include "core/part-file.h"
#include "formed-depth.h"
#include "formed-fixtures.h"
#include "paint/formed-build.h"
#include "paint/formed-split.h"
#include "paint/formed-view.h"

#define N_DIRECTIONS 200
#define MOST_WRONG 0.005

/* A face's number as the colour of a pixel; 0 stands for nothing painted. */
static void
set_face (cairo_t *cr, guint face)
{
  cairo_set_source_rgb (cr, 0.0, 0.0, (face + 1) / 255.0);
}

static void
trace (const BfFormedStack *stack, const BfFormedPiece *piece, const BfDepth *depth, cairo_t *cr)
{
  for (guint r = 0; r < piece->rings.size; r++)
    {
      const BfFormedSpan *ring = bf_formed_piece_ring (stack, piece, r);

      cairo_new_sub_path (cr);
      for (guint i = 0; i < ring->size; i++)
        {
          BfVec3 p = bf_formed_ring_point (stack, ring, i)->p;

          cairo_line_to (cr, (p.x - depth->x0) * depth->scale, (depth->y0 - p.y) * depth->scale);
        }
      cairo_close_path (cr);
    }
}

/* The order painted as flat face numbers, without antialiasing. */
static cairo_surface_t *
paint_faces (const BfFormedStack *stack, const BfDepth *depth)
{
  cairo_surface_t *surface =
      cairo_image_surface_create (CAIRO_FORMAT_RGB24, BF_DEPTH_SIZE, BF_DEPTH_SIZE);
  cairo_t *cr = cairo_create (surface);

  cairo_set_antialias (cr, CAIRO_ANTIALIAS_NONE);
  for (guint i = 0; i < stack->order->len; i++)
    {
      const BfFormedPiece *piece = bf_formed_piece (stack, g_array_index (stack->order, guint, i));

      set_face (cr, bf_formed_polygon (stack->scene, piece->polygon)->face);
      trace (stack, piece, depth, cr);
      cairo_fill (cr);
    }
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static int
face_at (cairo_surface_t *surface, guint column, guint row)
{
  const guint8 *line = cairo_image_surface_get_data (surface) +
                       row * (gsize)cairo_image_surface_get_stride (surface);

  return (int)(((const guint32 *)(gconstpointer)line)[column] & 0xFF) - 1;
}

/* Share of the covered pixels, edges left out, where the two show another face. */
static double
share_wrong (cairo_surface_t *surface, const BfDepth *depth)
{
  guint covered = 0, wrong = 0;

  for (guint row = 0; row < BF_DEPTH_SIZE; row++)
    for (guint column = 0; column < BF_DEPTH_SIZE; column++)
      {
        int seen = depth->faces[row * BF_DEPTH_SIZE + column];

        if (bf_depth_is_edge (depth, column, row))
          continue;
        covered += seen >= 0;
        wrong += seen != face_at (surface, column, row);
      }
  return covered > 0 ? (double)wrong / covered : 0.0;
}

/* The straight views, where most is exactly edge-on and in line, then any. */
static BfFrame
direction (guint i, GRand *random)
{
  static const double straight[][2] = {
    { 0, 90 }, { 0, -90 }, { 0, 0 },  { 90, 0 },   { 180, 0 }, { 270, 0 }, { 45, 35.264389683 },
    { 0, 45 }, { 90, 45 }, { 45, 0 }, { 30, -60 }, { 90, 90 },
  };

  if (i < G_N_ELEMENTS (straight))
    return bf_formed_eye (bf_deg_to_rad (straight[i][0]), bf_deg_to_rad (straight[i][1]));
  return bf_formed_eye (g_rand_double_range (random, 0.0, 2.0 * G_PI),
                        asin (g_rand_double_range (random, -1.0, 1.0)));
}

typedef void (*Arrange) (BfFormedStack *stack);

static void
check_scene (const BfFormedScene *scene, const char *name, Arrange arrange, guint n_directions)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (20240611);

  for (guint i = 0; i < n_directions; i++)
    {
      BfFrame eye = direction (i, random);
      g_autoptr (BfFormedStack) stack = bf_formed_stack_new (scene, &eye);
      g_autoptr (BfDepth) depth = bf_depth_render (scene, &eye);
      cairo_surface_t *surface;
      double wrong;

      arrange (stack);
      surface = paint_faces (stack, depth);
      wrong = share_wrong (surface, depth);
      cairo_surface_destroy (surface);
      if (wrong > MOST_WRONG)
        g_test_message ("%s, direction %u (%.3f %.3f %.3f): %.2f %% wrong", name, i, eye.ez.x,
                        eye.ez.y, eye.ez.z, 100.0 * wrong);
      g_assert_cmpfloat (wrong, <=, MOST_WRONG);
    }
}

static void
test_hand_made (gconstpointer data)
{
  const BfFormedFixture *fixture = data;
  BfFold *fold = fixture->make ();
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);

  check_scene (scene, fixture->name, bf_formed_stack_put_in_order, N_DIRECTIONS);
  bf_formed_fixture_free (fold);
}

static BfFold *
fold_example (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("BENCHFOLD_DATA"), "examples", name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_load (file, &error);

  g_assert_no_error (error);
  return bf_fold (part);
}

/* A part of data/examples as it is formed, and on its way there. */
static void
test_example (gconstpointer name)
{
  static const double fractions[] = { 0.0, 0.35, 1.0 };
  g_autoptr (BfFold) fold = fold_example (name);

  for (guint i = 0; i < G_N_ELEMENTS (fractions); i++)
    {
      g_auto (BfFormed) formed = { 0 };
      g_autoptr (BfFormedScene) scene = NULL;

      bf_fold_formed_at (fold, fractions[i], &formed);
      scene = bf_formed_scene_new (fold, &formed, NULL);
      check_scene (scene, name, bf_formed_stack_put_in_order, fractions[i] < 1.0 ? 40 : 200);
    }
}

static const char *const examples[] = {
  "drip-pan", "hex-bit-caddy", "lever-rail", "pump-bracket", "rag-bin", "spoke-tray", "tool-shelf",
};

static void
add_examples (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (examples); i++)
    {
      g_autofree char *path = g_strdup_printf ("/paint/formed-order/example/%s", examples[i]);

      g_test_add_data_func_full (path, g_strconcat (examples[i], BF_PART_FILE_SUFFIX, NULL),
                                 test_example, g_free);
    }
}

/* Every piece through the tree of half-spaces, as if all hid one another in a ring. */
static void
split_all (BfFormedStack *stack)
{
  g_autoptr (GArray) members = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < stack->pieces->len; i++)
    g_array_append_val (members, i);
  bf_formed_split_in_order (stack, members);
}

static void
test_split (gconstpointer data)
{
  const BfFormedFixture *fixture = data;
  BfFold *fold = fixture->make ();
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);

  check_scene (scene, fixture->name, split_all, 40);
  bf_formed_fixture_free (fold);
}

static BfFormedScene *
empty_scene (void)
{
  BfFold *fold = bf_formed_fixture_new (NULL, 0, 1.0);
  BfFormedScene *scene = bf_formed_scene_new (fold, &fold->formed, NULL);

  bf_formed_fixture_free (fold);
  return scene;
}

/* A bar, 10 wide and 0.5 thick, one end of which is 4 higher than the other. */
static void
add_bar (BfFormedScene *scene, guint face, BfVec2 from, BfVec2 to)
{
  static const guint sides[6][4] = { { 0, 1, 2, 3 }, { 7, 6, 5, 4 }, { 4, 5, 1, 0 },
                                     { 5, 6, 2, 1 }, { 6, 7, 3, 2 }, { 7, 4, 0, 3 } };
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (to, from));
  BfVec2 left = bf_vec2 (-5.0 * along.y, 5.0 * along.x);
  BfVec3 p[8] = { bf_vec3 (from.x - left.x, from.y - left.y, 0.0),
                  bf_vec3 (to.x - left.x, to.y - left.y, 4.0),
                  bf_vec3 (to.x + left.x, to.y + left.y, 4.0),
                  bf_vec3 (from.x + left.x, from.y + left.y, 0.0) };

  for (guint i = 0; i < 4; i++)
    p[i + 4] = bf_vec3 (p[i].x, p[i].y, p[i].z - 0.5);
  for (guint i = 0; i < 6; i++)
    {
      const BfVec3 q[4] = { p[sides[i][0]], p[sides[i][1]], p[sides[i][2]], p[sides[i][3]] };
      BfFormedPolygon like = { .face = face, .band = -1 };

      like.normal =
          bf_vec3_unit (bf_vec3_cross (bf_vec3_sub (q[1], q[0]), bf_vec3_sub (q[3], q[0])));
      bf_formed_add_quad (scene, &like, q);
    }
}

/* Three bars, each over the next: no order of whole bars is right. */
static void
test_ring (void)
{
  g_autoptr (BfFormedScene) scene = empty_scene ();

  for (guint i = 0; i < 3; i++)
    {
      double a = i * 2.0 * G_PI / 3.0;
      BfVec2 side = bf_vec2 (12.0 * cos (a), 12.0 * sin (a));
      BfVec2 along = bf_vec2 (-sin (a), cos (a));

      add_bar (scene, i, bf_vec2_along (side, along, -40.0), bf_vec2_along (side, along, 40.0));
    }
  check_scene (scene, "ring", bf_formed_stack_put_in_order, N_DIRECTIONS);

  {
    BfFrame eye = bf_formed_eye (0.0, G_PI_2);
    g_autoptr (BfFormedStack) stack = bf_formed_stack_new (scene, &eye);

    bf_formed_stack_put_in_order (stack);
    g_assert_cmpuint (stack->order->len, >, 3);
  }
}

/* Squares of one plane that lie on each other, touch or only nearly touch. */
static void
test_coplanar (void)
{
  static const double places[][2] = { { 0, 0 }, { 5, 5 }, { 10, 0 }, { 20.00001, 0 }, { 0, 10 } };
  g_autoptr (BfFormedScene) scene = empty_scene ();
  BfFrame eye = bf_formed_eye (0.3, 1.0);
  g_autoptr (BfFormedStack) stack = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    {
      double x = places[i][0], y = places[i][1], z = i * 2e-6;
      const BfVec3 p[4] = {
        { x, y, z }, { x + 10, y, z }, { x + 10, y + 10, z }, { x, y + 10, z }
      };
      BfFormedPolygon like = { .face = i, .band = -1, .normal = { 0, 0, 1 } };

      bf_formed_add_quad (scene, &like, p);
    }
  stack = bf_formed_stack_new (scene, &eye);
  bf_formed_stack_put_in_order (stack);

  /* Each once and none split. */
  g_assert_cmpuint (stack->order->len, ==, G_N_ELEMENTS (places));
  g_assert_cmpuint (stack->pieces->len, ==, G_N_ELEMENTS (places));
}

/* Parts whose metal passes through no other metal hardly ever need a cut, and the order has every
 * piece once. */
static void
test_whole (gconstpointer data)
{
  const BfFormedFixture *fixture = data;
  BfFold *fold = fixture->make ();
  g_autoptr (BfFormedScene) scene = bf_formed_scene_new (fold, &fold->formed, NULL);
  g_autoptr (GRand) random = g_rand_new_with_seed (7);
  guint n_seen = 0, n_ordered = 0;

  for (guint i = 0; i < N_DIRECTIONS; i++)
    {
      BfFrame eye = direction (i, random);
      g_autoptr (BfFormedStack) stack = bf_formed_stack_new (scene, &eye);

      n_seen += stack->pieces->len;
      bf_formed_stack_put_in_order (stack);
      n_ordered += stack->order->len;
    }
  g_test_message ("%s: %u pieces painted for %u seen", fixture->name, n_ordered, n_seen);
  g_assert_cmpuint (n_ordered, >=, n_seen);
  g_assert_cmpfloat (n_ordered, <=, 1.02 * n_seen);
  bf_formed_fixture_free (fold);
}

static void
add_case (const char *group, const BfFormedFixture *fixture, GTestDataFunc test)
{
  g_autofree char *path = g_strdup_printf ("/paint/formed-order/%s/%s", group, fixture->name);

  g_test_add_data_func (path, fixture, test);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  for (guint i = 0; i < bf_n_formed_fixtures; i++)
    {
      add_case ("depth", &bf_formed_fixtures[i], test_hand_made);
      add_case ("split", &bf_formed_fixtures[i], test_split);
      if (bf_formed_fixtures[i].sound)
        add_case ("whole", &bf_formed_fixtures[i], test_whole);
    }
  add_examples ();
  g_test_add_func ("/paint/formed-order/ring", test_ring);
  g_test_add_func ("/paint/formed-order/coplanar", test_coplanar);
  return g_test_run ();
}
