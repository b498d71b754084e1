/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "fold/smallest-circle.h"

#include "look-up.h"

typedef struct
{
  const char *what;
  guint n;
  BfVec2 points[6];
  BfVec2 centre;
  double radius;
} Case;

static const Case cases[] = {
  { "one point", 1, { { 3.0, -2.0 } }, { 3.0, -2.0 }, 0.0 },
  { "the same point twice", 2, { { 3.0, -2.0 }, { 3.0, -2.0 } }, { 3.0, -2.0 }, 0.0 },
  { "two points", 2, { { 0.0, 0.0 }, { 6.0, 8.0 } }, { 3.0, 4.0 }, 5.0 },
  { "on a line", 4, { { 0, 0 }, { 1, 1 }, { 4, 4 }, { 3, 3 } }, { 2.0, 2.0 }, 2.0 * G_SQRT2 },
  { "right angle", 3, { { 0, 0 }, { 6, 0 }, { 0, 8 } }, { 3.0, 4.0 }, 5.0 },
  { "obtuse: its long side", 3, { { 0, 0 }, { 10, 0 }, { 5, 1 } }, { 5.0, 0.0 }, 5.0 },
  /* 3-4-5 three times over: the points lie on the circle of radius 5 about the origin. */
  { "acute", 3, { { 3, 4 }, { -5, 0 }, { 4, -3 } }, { 0.0, 0.0 }, 5.0 },
  { "square and its middle",
    5,
    { { 0, 0 }, { 2, 0 }, { 2, 2 }, { 0, 2 }, { 1, 1 } },
    { 1, 1 },
    G_SQRT2 },
};

static void
test_by_hand (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const Case *c = &cases[i];
      BfVec2 centre = { 99.0, 99.0 };
      double radius = bf_smallest_circle (c->points, c->n, &centre);

      g_test_message ("%s", c->what);
      g_assert_cmpfloat_with_epsilon (radius, c->radius, 1e-12);
      assert_at (centre, c->centre, 1e-12);
    }
}

static void
test_none (void)
{
  BfVec2 centre = { 1.0, 2.0 };

  g_assert_cmpfloat (bf_smallest_circle (NULL, 0, &centre), <=, 0.0);
}

static double
farthest (const BfVec2 *points, guint n, BfVec2 from)
{
  double far = 0.0;

  for (guint i = 0; i < n; i++)
    far = MAX (far, bf_vec2_distance (points[i], from));
  return far;
}

/* It holds every point, and moving its centre any way makes it larger. */
static void
test_random (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);

  for (guint round = 0; round < 500; round++)
    {
      BfVec2 points[7], centre = { 0.0, 0.0 };
      guint n = (guint)g_rand_int_range (rand, 2, 8);
      double radius;

      for (guint i = 0; i < n; i++)
        points[i] = bf_vec2 (g_rand_double_range (rand, -9, 9), g_rand_double_range (rand, -9, 9));
      radius = bf_smallest_circle (points, n, &centre);
      g_assert_cmpfloat_with_epsilon (farthest (points, n, centre), radius, 1e-12);
      for (guint k = 0; k < 16; k++)
        {
          double a = 2.0 * G_PI * k / 16.0;
          BfVec2 moved = bf_vec2_along (centre, bf_vec2 (cos (a), sin (a)), 1e-3);
          g_assert_cmpfloat (farthest (points, n, moved), >, radius);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/smallest-circle/by-hand", test_by_hand);
  g_test_add_func ("/smallest-circle/none", test_none);
  g_test_add_func ("/smallest-circle/random", test_random);
  return g_test_run ();
}
