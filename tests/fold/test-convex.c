/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Polygons cut into convex parts, parts cut by each other, and how deep convex solids go into each
 * other. */

#include "fold/convex.h"

#define N_DRAWN 300

/* ---- polygons ----------------------------------------------------------------------------- */

static GArray *
parts_array (void)
{
  return g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
}

static const BfConvexPart *
nth (const GArray *parts, guint i)
{
  return &g_array_index (parts, BfConvexPart, i);
}

static double
area_of (const GArray *parts)
{
  double sum = 0.0;

  for (guint i = 0; i < parts->len; i++)
    sum += bf_polygon_area (nth (parts, i)->corners, nth (parts, i)->n);
  return sum;
}

static gboolean
holds (const BfConvexPart *part, BfVec2 p)
{
  for (guint i = 0; i < part->n; i++)
    if (bf_vec2_cross (bf_vec2_sub (part->corners[(i + 1) % part->n], part->corners[i]),
                       bf_vec2_sub (p, part->corners[i])) < 0.0)
      return FALSE;
  return TRUE;
}

static guint
count_holding (const GArray *parts, BfVec2 p)
{
  guint n = 0;

  for (guint i = 0; i < parts->len; i++)
    n += holds (nth (parts, i), p) ? 1 : 0;
  return n;
}

static void
assert_convex (const GArray *parts)
{
  for (guint i = 0; i < parts->len; i++)
    {
      const BfConvexPart *part = nth (parts, i);

      g_assert_cmpuint (part->n, >=, 3);
      g_assert_cmpuint (part->n, <=, BF_CONVEX_CORNERS_MAX);
      for (guint k = 0; k < part->n; k++)
        {
          BfVec2 a = part->corners[k], b = part->corners[(k + 1) % part->n],
                 c = part->corners[(k + 2) % part->n];

          g_assert_cmpfloat (
              bf_vec2_cross (bf_vec2_unit (bf_vec2_sub (b, a)), bf_vec2_unit (bf_vec2_sub (c, b))),
              >=, -1e-6);
        }
    }
}

static BfRing *
ring_of (const GArray *polygon)
{
  BfRing *ring = bf_ring_new ();

  for (guint i = 0; i < polygon->len; i++)
    bf_ring_add (ring, g_array_index (polygon, BfVec2, i), 0.0);
  return ring;
}

/* Convex parts that make up the polygon: as large together, and any point of it in one of them, any
 * point outside in none. */
static void
check_parts (const GArray *polygon, GRand *rand)
{
  g_autoptr (GArray) parts = parts_array ();
  g_autoptr (BfRing) ring = ring_of (polygon);
  double area = bf_ring_area (ring);

  bf_convex_parts (polygon, parts);
  assert_convex (parts);
  g_assert_cmpfloat_with_epsilon (area_of (parts), area, 1e-6 * area);
  for (guint i = 0; i < 50; i++)
    {
      BfVec2 p = { g_rand_double_range (rand, -110, 110), g_rand_double_range (rand, -110, 110) };

      g_assert_cmpuint (count_holding (parts, p), ==, bf_ring_contains (ring, p) ? 1 : 0);
    }
}

/* Points round the origin, at any distance: simple, with as many corners that go in as out. */
static GArray *
draw_star (GRand *rand)
{
  GArray *polygon = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  guint n = (guint)g_rand_int_range (rand, 3, 25);

  for (guint i = 0; i < n; i++)
    {
      double a = 2.0 * G_PI * i / n, r = g_rand_double_range (rand, 10.0, 100.0);
      BfVec2 p = { r * cos (a), r * sin (a) };

      g_array_append_val (polygon, p);
    }
  return polygon;
}

static void
test_stars (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (41);

  for (guint i = 0; i < N_DRAWN; i++)
    {
      g_autoptr (GArray) star = draw_star (rand);

      check_parts (star, rand);
    }
}

/* Steps up and down of whole numbers over one floor: right angles all over, with corners in line
 * with others, as blanks have them. */
static GArray *
draw_comb (GRand *rand)
{
  GArray *polygon = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  int n = g_rand_int_range (rand, 2, 12);
  BfVec2 p = { -60.0, -50.0 };

  g_array_append_val (polygon, p);
  p.x += 10.0 * n;
  g_array_append_val (polygon, p);
  for (int i = n; i > 0; i--)
    {
      p.y = 10.0 * g_rand_int_range (rand, 0, 4);
      g_array_append_val (polygon, p);
      p.x -= 10.0;
      g_array_append_val (polygon, p);
    }
  return polygon;
}

static void
test_combs (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (42);

  for (guint i = 0; i < N_DRAWN; i++)
    {
      g_autoptr (GArray) comb = draw_comb (rand);

      check_parts (comb, rand);
    }
}

/* ---- parts cut by each other -------------------------------------------------------------- */

static BfConvexPart
draw_part (GRand *rand)
{
  BfConvexPart part = { .n = (guint)g_rand_int_range (rand, 3, BF_CONVEX_CORNERS_MAX + 1) };
  BfVec2 at = { g_rand_double_range (rand, -40, 40), g_rand_double_range (rand, -40, 40) };
  double r = g_rand_double_range (rand, 5.0, 50.0), turn = g_rand_double_range (rand, 0.0, 6.0);

  for (guint i = 0; i < part.n; i++)
    part.corners[i] = bf_vec2_along (
        at, bf_vec2 (cos (turn + 2.0 * G_PI * i / part.n), sin (turn + 2.0 * G_PI * i / part.n)),
        r);
  return part;
}

/* What is within a tool and what is outside of it make up the part, and each is where it belongs.
 */
static void
test_less_and_within (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (43);
  guint cut = 0;

  for (guint i = 0; i < N_DRAWN; i++)
    {
      BfConvexPart part = draw_part (rand), tool = draw_part (rand);
      g_autoptr (GArray) left = parts_array (), within = parts_array ();
      double area = bf_polygon_area (part.corners, part.n);

      bf_convex_part_less (&part, &tool, left);
      bf_convex_part_within (&part, &tool, within);
      assert_convex (left);
      assert_convex (within);
      g_assert_cmpfloat_with_epsilon (area_of (left) + area_of (within), area, 1e-6 * area);
      cut += within->len > 0 && left->len > 0 ? 1 : 0;
      for (guint k = 0; k < 40; k++)
        {
          BfVec2 p = { g_rand_double_range (rand, -90, 90), g_rand_double_range (rand, -90, 90) };
          gboolean in_part = holds (&part, p), in_tool = holds (&tool, p);

          g_assert_cmpuint (count_holding (left, p), ==, in_part && !in_tool ? 1 : 0);
          g_assert_cmpuint (count_holding (within, p), ==, in_part && in_tool ? 1 : 0);
        }
      if (within->len > 0)
        g_assert_true (bf_convex_parts_near (&part, &tool));
    }
  g_assert_cmpuint (cut, >, N_DRAWN / 4);
}

/* ---- solids ------------------------------------------------------------------------------- */

/* A box of that size, one corner of its upper face at that place, turned about z and then about x.
 */
static BfConvex
make_box (BfVec3 at, BfVec3 size, double turn_z, double turn_x)
{
  BfConvexPart part = { .corners = { { 0, 0 }, { size.x, 0 }, { size.x, size.y }, { 0, size.y } },
                        .n = 4 };
  double c = cos (turn_z), s = sin (turn_z), d = cos (turn_x), e = sin (turn_x);
  BfFrame frame = { at, { c, s, 0 }, { -s * d, c * d, e }, { s * e, -c * e, d } };
  BfConvex box;

  bf_convex_from_slab (&frame, &part, size.z, &box);
  return box;
}

/* By hand: boxes beside, in, on and over each other. */
static void
test_depths (void)
{
  static const struct
  {
    BfVec3 at;
    double turn_z, depth; /* turned about its lower corner */
  } rows[] = {
    { { 20, 0, 0 }, 0, -10 },  /* 10 apart along x */
    { { 10, 0, 0 }, 0, 0 },    /* face to face */
    { { 7, 0, 0 }, 0, 3 },     /* 3 into it */
    { { 0, -9, 0 }, 0, 1 },    /* along y */
    { { 2, 2, 9.5 }, 0, 0.5 }, /* along z */
    { { 0, 0, 0 }, 0, 10 },    /* one in the other */
    /* Turned by 45°, its corner foremost: 3 into the face at 10, then 2 short of it. */
    { { 7, 5, 0 }, -G_PI / 4.0, 3 },
    { { 12, 5, 0 }, -G_PI / 4.0, -2 },
  };
  BfConvex one = make_box (bf_vec3 (0, 0, 0), bf_vec3 (10, 10, 10), 0.0, 0.0);

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfConvex other = make_box (rows[i].at, bf_vec3 (10, 10, 10), rows[i].turn_z, 0.0);

      g_assert_cmpfloat_with_epsilon (bf_convex_depth (&one, &other, -1e9), rows[i].depth, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_convex_depth (&other, &one, -1e9), rows[i].depth, 1e-9);
    }
}

/* How far a point is from being in a solid that is a box: its greatest distance beyond a face. */
static double
beyond (const BfConvex *box, BfVec3 p)
{
  double most = -G_MAXDOUBLE;

  for (guint i = 0; i < box->n_normals; i++)
    {
      double high = -G_MAXDOUBLE, low = G_MAXDOUBLE, at = bf_vec3_dot (box->normals[i], p);

      for (guint k = 0; k < box->n_points; k++)
        {
          high = MAX (high, bf_vec3_dot (box->normals[i], box->points[k]));
          low = MIN (low, bf_vec3_dot (box->normals[i], box->points[k]));
        }
      most = MAX (most, MAX (at - high, low - at));
    }
  return most;
}

/* A point of one box by its shares of the three edges at its first corner. */
static BfVec3
point_in (const BfConvex *box, double x, double y, double z)
{
  BfVec3 o = box->points[0];

  o = bf_vec3_along (o, bf_vec3_sub (box->points[1], box->points[0]), x);
  o = bf_vec3_along (o, bf_vec3_sub (box->points[3], box->points[0]), y);
  return bf_vec3_along (o, bf_vec3_sub (box->points[4], box->points[0]), z);
}

/* Boxes anyhow: where they are said to stand apart, no point of one lies in the other; where one is
 * found to lie well inside the other, they are said to go into each other at least so deep; and the
 * depth is the same either way round. */
static void
test_boxes (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (44);
  guint apart = 0, deep = 0;

  for (guint i = 0; i < N_DRAWN; i++)
    {
      BfConvex box[2];
      double depth, found = -G_MAXDOUBLE;

      for (guint k = 0; k < 2; k++)
        box[k] = make_box (
            bf_vec3 (g_rand_double_range (rand, -12, 12), g_rand_double_range (rand, -12, 12),
                     g_rand_double_range (rand, -12, 12)),
            bf_vec3 (g_rand_double_range (rand, 4, 20), g_rand_double_range (rand, 4, 20),
                     g_rand_double_range (rand, 1, 9)),
            g_rand_double_range (rand, 0, 6), g_rand_double_range (rand, 0, 6));
      depth = bf_convex_depth (&box[0], &box[1], -1e9);
      g_assert_cmpfloat_with_epsilon (bf_convex_depth (&box[1], &box[0], -1e9), depth, 1e-9);
      for (guint k = 0; k < 1000; k++)
        found = MAX (found, -beyond (&box[1], point_in (&box[0], k % 10 / 9.0, k / 10 % 10 / 9.0,
                                                        k / 100 / 9.0)));
      g_assert_true (depth >= -1e-9 || found < 1e-9);
      if (found > 0.0)
        g_assert_cmpfloat (depth, >=, found - 1e-9);
      apart += depth < 0.0 ? 1 : 0;
      deep += found > 0.5 ? 1 : 0;
    }
  g_assert_cmpuint (apart, >, N_DRAWN / 10);
  g_assert_cmpuint (deep, >, N_DRAWN / 10);
}

/* Once it is known to be little enough, no more is asked for: what is told is a bound. */
static void
test_enough (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (45);

  for (guint i = 0; i < N_DRAWN; i++)
    {
      BfConvex a = make_box (bf_vec3 (0, 0, 0), bf_vec3 (10, 10, 2), 0.3, 0.2);
      BfConvex b = make_box (
          bf_vec3 (g_rand_double_range (rand, -12, 12), g_rand_double_range (rand, -12, 12), 1.0),
          bf_vec3 (10, 10, 2), g_rand_double_range (rand, 0, 6), 0.7);
      double exact = bf_convex_depth (&a, &b, -1e9), told = bf_convex_depth (&a, &b, 1.0);

      g_assert_cmpfloat (told, >=, exact - 1e-12);
      g_assert_true (exact > 1.0 ? fabs (told - exact) < 1e-12 : told <= 1.0);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/convex/stars", test_stars);
  g_test_add_func ("/convex/combs", test_combs);
  g_test_add_func ("/convex/less-and-within", test_less_and_within);
  g_test_add_func ("/convex/depths", test_depths);
  g_test_add_func ("/convex/boxes", test_boxes);
  g_test_add_func ("/convex/enough", test_enough);
  return g_test_run ();
}
