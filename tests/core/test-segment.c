/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/segment.h"

#include "core/compare.h"

#define N_DRAWN 20000

static BfVec2
draw_point (GRand *rand)
{
  return bf_vec2 (g_rand_double_range (rand, -50.0, 50.0), g_rand_double_range (rand, -50.0, 50.0));
}

/* ---- distance ----------------------------------------------------------------------------- */

static void
test_distance (void)
{
  static const struct
  {
    BfVec2 p, a, b;
    double wanted;
  } rows[] = {
    { { 5, 3 }, { 0, 0 }, { 10, 0 }, 3.0 },   /* beside it */
    { { 5, -3 }, { 0, 0 }, { 10, 0 }, 3.0 },  /* on its other side */
    { { -3, 4 }, { 0, 0 }, { 10, 0 }, 5.0 },  /* before its start: 3, 4, 5 */
    { { 13, -4 }, { 0, 0 }, { 10, 0 }, 5.0 }, /* past its end */
    { { 7, 0 }, { 0, 0 }, { 10, 0 }, 0.0 },   /* on it */
    { { 12, 0 }, { 0, 0 }, { 10, 0 }, 2.0 },  /* on its line, past its end */
    { { 3, 4 }, { 0, 0 }, { 0, 0 }, 5.0 },    /* of an edge that is a point */
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_cmpfloat_with_epsilon (bf_segment_distance (rows[i].p, rows[i].a, rows[i].b),
                                      rows[i].wanted, 1e-12);
      g_assert_cmpfloat_with_epsilon (bf_segment_distance (rows[i].p, rows[i].b, rows[i].a),
                                      rows[i].wanted, 1e-12);
    }
}

/* No point of the edge is nearer than that, and one is as near. */
static void
test_nearest (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);

  for (guint i = 0; i < 500; i++)
    {
      BfVec2 p = draw_point (rand), a = draw_point (rand), b = draw_point (rand);
      double distance = bf_segment_distance (p, a, b), least = G_MAXDOUBLE;
      double step = bf_vec2_distance (a, b) / 1000.0;

      for (guint k = 0; k <= 1000; k++)
        {
          BfVec2 q = bf_vec2_along (a, bf_vec2_sub (b, a), k / 1000.0);

          least = MIN (least, bf_vec2_distance (p, q));
        }
      g_assert_cmpfloat (distance, <=, least + 1e-12);
      g_assert_cmpfloat (distance, >=, least - step);
    }
}

/* ---- sides and crossings ------------------------------------------------------------------ */

static void
test_side (void)
{
  BfVec2 a = { 1, 1 }, b = { 4, 5 };

  g_assert_cmpfloat (bf_segment_side (bf_vec2 (0, 5), a, b), >, 0.0);
  g_assert_cmpfloat (bf_segment_side (bf_vec2 (5, 0), a, b), <, 0.0);
  g_assert_cmpfloat_with_epsilon (bf_segment_side (bf_vec2 (7, 9), a, b), 0.0, 1e-12);
}

/* Where two edges cross, solved as two equations in two unknowns. */
static gboolean
cross_by_equations (BfVec2 a, BfVec2 b, BfVec2 c, BfVec2 d)
{
  BfVec2 u = bf_vec2_sub (b, a), w = bf_vec2_sub (d, c), between = bf_vec2_sub (c, a);
  double det = u.x * -w.y + w.x * u.y;
  double s = (between.x * -w.y + w.x * between.y) / det;
  double r = (u.x * between.y - between.x * u.y) / det;

  return s > 0.0 && s < 1.0 && r > 0.0 && r < 1.0;
}

static void
test_cross (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (12);
  guint crossing = 0;

  for (guint i = 0; i < N_DRAWN; i++)
    {
      BfVec2 a = draw_point (rand), b = draw_point (rand), c = draw_point (rand);
      BfVec2 d = draw_point (rand);
      gboolean cross = bf_segments_cross (a, b, c, d);

      g_assert_true (cross == cross_by_equations (a, b, c, d));
      g_assert_true (cross == bf_segments_cross (c, d, a, b));
      g_assert_true (cross == bf_segments_cross (b, a, c, d));
      crossing += cross ? 1 : 0;
    }
  /* About a quarter of chords drawn by lot in a square cross (23 %, Sylvester's four points). */
  g_assert_cmpuint (crossing, >, N_DRAWN / 5);
  g_assert_cmpuint (crossing, <, N_DRAWN * 3 / 10);
}

/* ---- comparing ---------------------------------------------------------------------------- */

static void
test_sorted (void)
{
  double values[] = { 3.0, -1.0, INFINITY, 0.0, 2.5, -INFINITY, 2.5 };
  const double wanted[] = { -INFINITY, -1.0, 0.0, 2.5, 2.5, 3.0, INFINITY };

  qsort (values, G_N_ELEMENTS (values), sizeof values[0], bf_compare_doubles);
  for (guint i = 0; i < G_N_ELEMENTS (values); i++)
    g_assert_cmpint (bf_compare_doubles (&values[i], &wanted[i]), ==, 0);
}

/* A size that is not given is the same as another that is not, and as none that is. */
static void
test_same_size (void)
{
  static const struct
  {
    double a_mm, b_mm;
    gboolean same;
  } rows[] = {
    { 3.0, 3.0, TRUE },  { 3.0, 3.0 + 9e-7, TRUE }, { 3.0, 3.0 + 1.1e-6, FALSE },
    { NAN, NAN, TRUE },  { NAN, 0.0, FALSE },       { 0.0, NAN, FALSE },
    { 0.0, -0.0, TRUE }, { 3.0, -3.0, FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_true (bf_is_same_size (rows[i].a_mm, rows[i].b_mm) == rows[i].same);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/segment/distance", test_distance);
  g_test_add_func ("/segment/nearest", test_nearest);
  g_test_add_func ("/segment/side", test_side);
  g_test_add_func ("/segment/cross", test_cross);
  g_test_add_func ("/segment/sorted", test_sorted);
  g_test_add_func ("/segment/same-size", test_same_size);
  return g_test_run ();
}
