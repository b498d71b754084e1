/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Limits of a flange's side: by hand, and planes and lines that the whole flange must keep to
 * tried at points all over it. */

#include "fold/side.h"
#include "fold/outline.h"
#include "look-up.h"
#include "make-part.h"

static const BfSide no_side = { .zone_limit_mm = -G_MAXDOUBLE, .meeting = -1 };

/* ---- limits ------------------------------------------------------------------------------- */

static void
assert_trace (const BfSide *side, double to_mm, const BfVec2 *wanted, guint n)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_side_trace (side, to_mm, points);
  g_assert_cmpuint (points->len, ==, n);
  for (guint i = 0; i < n; i++)
    assert_at (g_array_index (points, BfVec2, i), wanted[i], 1e-12);
}

static void
test_no_limit (void)
{
  const BfVec2 straight[] = { { 0.0, 0.0 }, { 0.0, 7.0 } };

  g_assert_cmpfloat_with_epsilon (bf_side_at (&no_side, 3.0), 0.0, 1e-12);
  assert_trace (&no_side, 7.0, straight, G_N_ELEMENTS (straight));
}

/* A side may widen: with limits of its own the edge's end is none. */
static void
test_one_limit (void)
{
  BfSide side = no_side;
  const BfVec2 widening[] = { { 1.0, 0.0 }, { -4.0, 10.0 } };

  bf_side_add (&side, 1.0, -0.5);
  g_assert_cmpfloat_with_epsilon (bf_side_at (&side, 4.0), -1.0, 1e-12);
  assert_trace (&side, 10.0, widening, G_N_ELEMENTS (widening));
}

/* 5 − w meets 1 at w = 4; 1 meets −11 + 2w at w = 6; the two slopes meet below, at no corner. */
static void
test_corners (void)
{
  BfSide side = no_side;
  const BfVec2 all[] = { { 5.0, 0.0 }, { 1.0, 4.0 }, { 1.0, 6.0 }, { 9.0, 10.0 } };
  const BfVec2 some[] = { { 5.0, 0.0 }, { 1.0, 4.0 }, { 1.0, 5.0 } };

  bf_side_add (&side, 1.0, 0.0);
  bf_side_add (&side, 5.0, -1.0);
  bf_side_add (&side, -11.0, 2.0);
  assert_trace (&side, 10.0, all, G_N_ELEMENTS (all));
  assert_trace (&side, 5.0, some, G_N_ELEMENTS (some));
}

/* Three limits through one point make one corner of it. */
static void
test_one_corner_of_three (void)
{
  BfSide side = no_side;
  const BfVec2 bent[] = { { 5.0, 0.0 }, { 1.0, 4.0 }, { 13.0, 10.0 } };

  bf_side_add (&side, 5.0, -1.0);
  bf_side_add (&side, 1.0, 0.0);
  bf_side_add (&side, -7.0, 2.0);
  assert_trace (&side, 10.0, bent, G_N_ELEMENTS (bent));
}

/* ---- where the zone ends ------------------------------------------------------------------- */

/* A square bend of R 2: the inside mould line lies at w = −2. */
static void
test_settle (void)
{
  BfFlap flap = { .radius_mm = 2.0, .angle_rad = G_PI_2 };
  BfSide *side = &flap.sides[BF_SIDE_START];

  *side = no_side;
  bf_side_add (side, 3.0, 0.5);
  bf_side_settle (&flap, BF_SIDE_START);
  g_assert_cmpfloat_with_epsilon (side->zone_mm, 3.0, 1e-12);

  *side = no_side;
  bf_side_add (side, 3.0, -0.5); /* more inward at the mould line than at the tangent */
  bf_side_settle (&flap, BF_SIDE_START);
  g_assert_cmpfloat_with_epsilon (side->zone_mm, 4.0, 1e-12);

  side->zone_limit_mm = 6.0;
  bf_side_settle (&flap, BF_SIDE_START);
  g_assert_cmpfloat_with_epsilon (side->zone_mm, 6.0, 1e-12);
}

/* A hem has no mould line: the tangent alone decides. */
static void
test_settle_hem (void)
{
  BfFlap flap = { .radius_mm = 2.0, .angle_rad = G_PI };
  BfSide *side = &flap.sides[BF_SIDE_END];

  *side = no_side;
  bf_side_add (side, 3.0, -0.5);
  bf_side_settle (&flap, BF_SIDE_END);
  g_assert_cmpfloat_with_epsilon (side->zone_mm, 3.0, 1e-12);
}

/* ---- planes and lines ---------------------------------------------------------------------- */

/* One flange on the first edge of a rectangle, its sides without limits. */
typedef struct
{
  BfPart *part;
  BfLayout *layout;
  BfFlap *flap;
} Fixture;

static void
set_up (Fixture *f, double angle_deg, double radius_mm, BfTurn turn)
{
  f->part = make_rectangle (100.0, 60.0);
  add_flange (f->part, "front", 0, 30.0, angle_deg)->turn = turn;
  f->part->bend.inside_radius_mm = radius_mm;
  f->layout = bf_layout_new (f->part);
  bf_layout_unfold (f->layout);
  f->flap = &f->layout->flaps[0];
  f->flap->sides[BF_SIDE_START] = f->flap->sides[BF_SIDE_END] = no_side;
}

static void
tear_down (Fixture *f)
{
  bf_layout_free (f->layout);
  bf_part_unref (f->part);
}

/* A point of the flat at q and w, on the marking side or on the other. */
static BfVec3
flat_point (const Fixture *f, BfSideName name, double q, double w, gboolean other_face)
{
  const BfPose *pose = &f->flap->pose;
  BfVec3 p = bf_vec3_along (pose->origin, pose->e, bf_flap_u (f->flap, name, q));

  p = bf_vec3_along (p, pose->d, w);
  return other_face ? bf_vec3_along (p, pose->m, -f->layout->thickness_mm) : p;
}

/* A point of the bent zone, by what a bend is: the flange's pose at a part of its angle. */
static BfVec3
zone_point (const Fixture *f, BfSideName name, double q, double share, gboolean other_face)
{
  BfPose pose;
  BfVec3 p;

  bf_flap_pose (f->layout, f->flap, NULL,
                (BfTurned){ f->flap->angle_rad * share, f->flap->radius_mm }, &pose);
  p = bf_vec3_along (pose.origin, pose.e, bf_flap_u (f->flap, name, q));
  return other_face ? bf_vec3_along (p, pose.m, -f->layout->thickness_mm) : p;
}

/* Both faces keep the plane, and one of them reaches it: at the flat's side for every w, and
 * somewhere at the zone's end. */
static void
check_plane (const Fixture *f, BfSideName name, BfVec3 normal, double c)
{
  const BfSide *side = &f->flap->sides[name];
  double zone_least = G_MAXDOUBLE;

  for (guint i = 0; i <= 20; i++)
    {
      double w = f->flap->tip_w_mm * i / 20.0, q = bf_side_at (side, w);
      double near = bf_vec3_dot (normal, flat_point (f, name, q, w, FALSE)) - c;
      double far = bf_vec3_dot (normal, flat_point (f, name, q, w, TRUE)) - c;

      g_assert_cmpfloat_with_epsilon (MIN (near, far), 0.0, 1e-9);
    }
  for (guint i = 0; i <= 4000; i++)
    for (int face = 0; face < 2; face++)
      {
        BfVec3 p = zone_point (f, name, side->zone_limit_mm, i / 4000.0, face == 1);
        zone_least = MIN (zone_least, bf_vec3_dot (normal, p) - c);
      }
  g_assert_cmpfloat (zone_least, >, -1e-9);
  g_assert_cmpfloat (zone_least, <, 1e-4); /* the points are not on end */
}

static void
test_planes (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (3);

  for (guint i = 0; i < 400; i++)
    {
      BfSideName name = (BfSideName)g_rand_int_range (rand, 0, 2);
      BfTurn turn = (BfTurn)g_rand_int_range (rand, 0, 2);
      double c = g_rand_double_range (rand, -5.0, 5.0);
      BfVec3 normal = { g_rand_double_range (rand, 0.3, 1.0), g_rand_double_range (rand, -1, 1),
                        g_rand_double_range (rand, -1.0, 1.0) };
      Fixture f;

      set_up (&f, g_rand_double_range (rand, 5.0, 180.0), g_rand_double_range (rand, 0.0, 5.0),
              turn);
      normal = bf_vec3_unit (normal);
      if (name == BF_SIDE_END)
        normal.x = -normal.x;
      bf_side_keep_beyond_plane (f.layout, f.flap, name, normal, c);
      check_plane (&f, name, normal, c);
      tear_down (&f);
    }
}

/* A plane along the bend, or one that the side turns away from, is no limit. */
static void
test_no_plane (void)
{
  Fixture f;

  set_up (&f, 90.0, 1.5, BF_TURN_UP);
  bf_side_keep_beyond_plane (f.layout, f.flap, BF_SIDE_START, bf_vec3 (0.0, 0.0, 1.0), 5.0);
  bf_side_keep_beyond_plane (f.layout, f.flap, BF_SIDE_START, bf_vec3 (-1.0, 0.0, 0.0), 5.0);
  g_assert_cmpuint (f.flap->sides[BF_SIDE_START].n_trims, ==, 0);
  tear_down (&f);
}

static double
off_line (BfVec2 k, BfVec2 through, double c, BfVec2 p)
{
  return bf_vec2_dot (k, bf_vec2_sub (p, through)) - c;
}

/* In the blank the flat's side lies on the line, and the zone touches it at one of its edges. */
static void
test_lines (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (5);

  for (guint i = 0; i < 200; i++)
    {
      double a = g_rand_double_range (rand, -1.2, 1.2), c = g_rand_double_range (rand, -3.0, 3.0);
      BfVec2 through = { g_rand_double_range (rand, -2, 2), g_rand_double_range (rand, -2, 2) };
      BfVec2 k = { cos (a), sin (a) }, zone[4];
      Fixture f;

      set_up (&f, g_rand_double_range (rand, 5.0, 180.0), 2.0, BF_TURN_UP);
      bf_side_keep_beyond_line (f.flap, BF_SIDE_START, (BfFlatLine){ k, through, c });
      for (double w = 0.0; w < 20.0; w += 5.0)
        {
          double q = bf_side_at (&f.flap->sides[BF_SIDE_START], w);
          g_assert_cmpfloat_with_epsilon (off_line (k, through, c, bf_flap_to_blank (f.flap, q, w)),
                                          0.0, 1e-9);
        }
      bf_side_settle (f.flap, BF_SIDE_START);
      bf_outline_zone (f.flap, zone);
      g_assert_cmpfloat_with_epsilon (
          MIN (off_line (k, through, c, zone[0]), off_line (k, through, c, zone[3])), 0.0, 1e-9);
      tear_down (&f);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/side/no-limit", test_no_limit);
  g_test_add_func ("/side/one-limit", test_one_limit);
  g_test_add_func ("/side/corners", test_corners);
  g_test_add_func ("/side/one-corner-of-three", test_one_corner_of_three);
  g_test_add_func ("/side/settle", test_settle);
  g_test_add_func ("/side/settle-hem", test_settle_hem);
  g_test_add_func ("/side/planes", test_planes);
  g_test_add_func ("/side/no-plane", test_no_plane);
  g_test_add_func ("/side/lines", test_lines);
  return g_test_run ();
}
