/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/vec.h"

#define NEAR 1e-12
#define N_RANDOM 500

static void
assert_vec2 (BfVec2 v, double x, double y)
{
  g_assert_cmpfloat_with_epsilon (v.x, x, NEAR);
  g_assert_cmpfloat_with_epsilon (v.y, y, NEAR);
}

static void
assert_vec3 (BfVec3 v, double x, double y, double z)
{
  g_assert_cmpfloat_with_epsilon (v.x, x, NEAR);
  g_assert_cmpfloat_with_epsilon (v.y, y, NEAR);
  g_assert_cmpfloat_with_epsilon (v.z, z, NEAR);
}

static void
test_angles (void)
{
  g_assert_cmpfloat_with_epsilon (bf_deg_to_rad (180), G_PI, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_deg_to_rad (-90), -G_PI_2, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_rad_to_deg (G_PI_4), 45, NEAR);
  for (double angle = -720; angle <= 720; angle += 31.7)
    g_assert_cmpfloat_with_epsilon (bf_rad_to_deg (bf_deg_to_rad (angle)), angle, 1e-10);
}

static void
test_plane (void)
{
  BfVec2 a = bf_vec2 (3, 4), b = bf_vec2 (-1, 2);

  assert_vec2 (bf_vec2_add (a, b), 2, 6);
  assert_vec2 (bf_vec2_sub (a, b), 4, 2);
  assert_vec2 (bf_vec2_scale (a, -0.5), -1.5, -2);
  assert_vec2 (bf_vec2_along (a, b, 3), 0, 10);
  g_assert_cmpfloat_with_epsilon (bf_vec2_dot (a, b), 5, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_vec2_cross (a, b), 10, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_vec2_length (a), 5, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (a, b), hypot (4, 2), NEAR);
  assert_vec2 (bf_vec2_unit (a), 0.6, 0.8);
  assert_vec2 (bf_vec2_unit (bf_vec2 (0, 0)), 0, 0);
}

/* Counter-clockwise is positive: y lies to the left of x. */
static void
test_hands (void)
{
  BfVec3 x = bf_vec3 (1, 0, 0), y = bf_vec3 (0, 1, 0);

  g_assert_cmpfloat (bf_vec2_cross (bf_vec2 (1, 0), bf_vec2 (0, 1)), >, 0);
  assert_vec3 (bf_vec3_cross (x, y), 0, 0, 1);
  assert_vec3 (bf_vec3_cross (y, x), 0, 0, -1);
}

static void
test_space (void)
{
  BfVec3 a = bf_vec3 (2, 3, 6), b = bf_vec3 (1, -1, 4);

  assert_vec3 (bf_vec3_add (a, b), 3, 2, 10);
  assert_vec3 (bf_vec3_sub (a, b), 1, 4, 2);
  assert_vec3 (bf_vec3_scale (a, 2), 4, 6, 12);
  assert_vec3 (bf_vec3_along (a, b, -1), 1, 4, 2);
  g_assert_cmpfloat_with_epsilon (bf_vec3_dot (a, b), 23, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_vec3_length (a), 7, NEAR);
  assert_vec3 (bf_vec3_unit (a), 2.0 / 7, 3.0 / 7, 6.0 / 7);
  assert_vec3 (bf_vec3_unit (bf_vec3 (0, 0, 0)), 0, 0, 0);
}

static BfVec3
random_vec3 (GRand *rand)
{
  return bf_vec3 (g_rand_double_range (rand, -9, 9), g_rand_double_range (rand, -9, 9),
                  g_rand_double_range (rand, -9, 9));
}

/* What a cross product is: square to both, as long as the parallelogram is large (Lagrange). */
static void
test_cross_is_square (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (2);

  for (int i = 0; i < N_RANDOM; i++)
    {
      BfVec3 a = random_vec3 (rand), b = random_vec3 (rand), c = bf_vec3_cross (a, b);
      double square =
          bf_vec3_dot (a, a) * bf_vec3_dot (b, b) - bf_vec3_dot (a, b) * bf_vec3_dot (a, b);

      g_assert_cmpfloat_with_epsilon (bf_vec3_dot (c, a), 0, 1e-10);
      g_assert_cmpfloat_with_epsilon (bf_vec3_dot (c, b), 0, 1e-10);
      g_assert_cmpfloat_with_epsilon (bf_vec3_dot (c, c), square, 1e-8);
    }
}

/* A frame keeps distances, and its origin is where it says. */
static void
test_frame (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (4);

  for (int i = 0; i < N_RANDOM; i++)
    {
      BfVec3 ex = bf_vec3_unit (random_vec3 (rand));
      BfVec3 ez = bf_vec3_unit (bf_vec3_cross (ex, random_vec3 (rand)));
      BfFrame frame = { random_vec3 (rand), ex, bf_vec3_cross (ez, ex), ez };
      BfVec3 p = random_vec3 (rand), q = random_vec3 (rand);
      BfVec3 apart = bf_vec3_sub (bf_frame_point (&frame, p.x, p.y, p.z),
                                  bf_frame_point (&frame, q.x, q.y, q.z));
      BfVec3 home = bf_frame_point (&frame, 0, 0, 0);

      g_assert_cmpfloat_with_epsilon (bf_vec3_length (apart), bf_vec3_length (bf_vec3_sub (p, q)),
                                      1e-10);
      assert_vec3 (home, frame.origin.x, frame.origin.y, frame.origin.z);
    }
}

static void
test_frame_axes (void)
{
  const BfFrame frame = { { 10, 20, 30 }, { 0, 1, 0 }, { 0, 0, 1 }, { 1, 0, 0 } };

  assert_vec3 (bf_frame_point (&frame, 1, 0, 0), 10, 21, 30);
  assert_vec3 (bf_frame_point (&frame, 0, 2, 0), 10, 20, 32);
  assert_vec3 (bf_frame_point (&frame, 0, 0, 3), 13, 20, 30);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/vec/angles", test_angles);
  g_test_add_func ("/vec/plane", test_plane);
  g_test_add_func ("/vec/hands", test_hands);
  g_test_add_func ("/vec/space", test_space);
  g_test_add_func ("/vec/cross-is-square", test_cross_is_square);
  g_test_add_func ("/vec/frame", test_frame);
  g_test_add_func ("/vec/frame-axes", test_frame_axes);
  return g_test_run ();
}
