/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* How far lines and arcs lie apart: by hand where that is easy, and against points set closely on
 * both where it is not. */

#include "fold/ring-distance.h"

#include "core/tolerance.h"

#define N_PAIRS 400
#define SAGITTA_MM 1e-5

static BfEdge
edge (BfVec2 from, BfVec2 to, double bulge)
{
  g_autoptr (BfRing) ring = bf_ring_new ();

  bf_ring_add (ring, from, bulge);
  bf_ring_add (ring, to, 0.0);
  return bf_edge_of (ring, 0);
}

/* ---- by hand ------------------------------------------------------------------------------ */

typedef struct
{
  const char *path;
  BfVec2 a[2];
  double a_bulge;
  BfVec2 b[2];
  double b_bulge;
  double distance_mm;
  BfVec2 place; /* on a; 0, 0 where there are two */
} Case;

/* Half circles have bulge 1, quarters tan (π/8). */
#define QUARTER 0.41421356237309503

static const Case cases[] = {
  { "/lines/ends", { { 0, 0 }, { 10, 0 } }, 0, { { 13, 4 }, { 20, 9 } }, 0, 5, { 10, 0 } },
  { "/lines/beside", { { 0, 0 }, { 10, 0 } }, 0, { { 4, 7 }, { 4, 2 } }, 0, 2, { 4, 0 } },
  { "/lines/cross", { { 0, 0 }, { 10, 0 } }, 0, { { 4, 7 }, { 4, -2 } }, 0, 0, { 4, 0 } },
  { "/line-arc/over", { { -9, 8 }, { 9, 8 } }, 0, { { 5, 0 }, { -5, 0 } }, 1, 3, { 0, 8 } },
  { "/line-arc/under", { { -9, -8 }, { 2, -8 } }, 0, { { 5, 0 }, { -5, 0 } }, 1, 8, { -5, -8 } },
  { "/line-arc/cuts", { { 0, 0 }, { 0, 9 } }, 0, { { 5, 0 }, { -5, 0 } }, 1, 0, { 0, 5 } },
  { "/line-arc/inside", { { 0, 0 }, { 1, 0 } }, 0, { { 5, 0 }, { -5, 0 } }, 1, 4, { 1, 0 } },
  { "/arc-line/over", { { 5, 0 }, { -5, 0 } }, 1, { { -9, 8 }, { 9, 8 } }, 0, 3, { 0, 5 } },
  { "/arcs/facing", { { 0, -5 }, { 0, 5 } }, 1, { { 20, 5 }, { 20, -5 } }, 1, 10, { 5, 0 } },
  { "/arcs/away", { { 0, 5 }, { 0, -5 } }, 1, { { 20, -5 }, { 20, 5 } }, 1, 20, { 0, 0 } },
  { "/arcs/cut", { { 0, -5 }, { 0, 5 } }, 1, { { 6, 5 }, { 6, -5 } }, 1, 0, { 0, 0 } },
  { "/arcs/one-centre",
    { { 5, 0 }, { 0, 5 } },
    QUARTER,
    { { -8, 0 }, { 0, -8 } },
    QUARTER,
    9.4339811320566038,
    { 0, 0 } },
  { "/arcs/within",
    { { 5, 0 }, { -5, 0 } },
    1,
    { { 3, 1 }, { -1, 1 } },
    1,
    1.5857864376269049,
    { 0, 0 } },
};

static void
test_case (gconstpointer data)
{
  const Case *c = data;
  BfEdge a = edge (c->a[0], c->a[1], c->a_bulge), b = edge (c->b[0], c->b[1], c->b_bulge);
  BfVec2 place, back;

  g_assert_cmpfloat_with_epsilon (bf_edge_distance (&a, &b, &place), c->distance_mm, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_edge_distance (&b, &a, &back), c->distance_mm, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (bf_edge_nearest (&b, place), place),
                                  c->distance_mm, 1e-9);
  if (bf_vec2_length (c->place) > 0.0)
    g_assert_cmpfloat_with_epsilon (bf_vec2_distance (place, c->place), 0.0, 1e-9);
}

/* ---- by lot ------------------------------------------------------------------------------- */

static BfRing *
make_ring_of (GRand *rand)
{
  BfRing *ring = bf_ring_new ();
  int n = g_rand_int_range (rand, 2, 5);

  for (int i = 0; i < n; i++)
    {
      BfVec2 p = { g_rand_double_range (rand, -20, 20), g_rand_double_range (rand, -20, 20) };
      double bulge = g_rand_boolean (rand) ? g_rand_double_range (rand, -1.6, 1.6) : 0.0;
      bf_ring_add (ring, p, bulge);
    }
  return ring;
}

static void
move (BfRing *ring, BfVec2 by)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      BfVertex *v = &g_array_index (ring->vertices, BfVertex, i);
      v->p = bf_vec2_add (v->p, by);
    }
}

/* Points of a against the other ring: never nearer than the two are, and somewhere as near. */
static double
by_points (const BfRing *ring, const BfNearRing *other)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double least = INFINITY;

  bf_ring_flatten (ring, SAGITTA_MM, points);
  for (guint i = 0; i < points->len; i++)
    least = MIN (least, bf_near_ring_distance_to (other, g_array_index (points, BfVec2, i)));
  return least;
}

static void
test_by_lot (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20);
  guint n_apart = 0;

  for (guint i = 0; i < N_PAIRS; i++)
    {
      g_autoptr (BfRing) a = make_ring_of (rand), b = make_ring_of (rand);
      g_auto (BfNearRing) near_a = { NULL }, near_b = { NULL };
      BfVec2 place = { 0, 0 };
      double distance;

      move (b, bf_vec2 (g_rand_double_range (rand, 0, 60), g_rand_double_range (rand, 0, 60)));
      bf_near_ring_init (&near_a, a);
      bf_near_ring_init (&near_b, b);
      distance = bf_near_ring_distance (&near_a, &near_b, INFINITY, &place);
      g_assert_cmpfloat_with_epsilon (bf_near_ring_distance (&near_b, &near_a, INFINITY, NULL),
                                      distance, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_near_ring_distance_to (&near_b, place), distance, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_near_ring_distance_to (&near_a, place), 0.0, 1e-9);
      if (distance < BF_TOLERANCE_SIZE_MM)
        continue;
      n_apart++;
      g_assert_cmpfloat_with_epsilon (MIN (by_points (a, &near_b), by_points (b, &near_a)),
                                      distance, 2.0 * SAGITTA_MM);
      g_assert_cmpfloat_with_epsilon (
          bf_near_ring_distance (&near_a, &near_b, distance / 2.0, NULL), distance / 2.0, 1e-12);
    }
  g_assert_cmpuint (n_apart, >, N_PAIRS / 4);
  g_assert_cmpuint (n_apart, <, N_PAIRS - 20);
}

/* Every point of an edge lies in its box, and some lie on all four sides of it. */
static void
test_box (void)
{
  BfEdge half = edge (bf_vec2 (0, -5), bf_vec2 (0, 5), 1.0);
  BfEdge most = edge (bf_vec2 (3, -4), bf_vec2 (3, 4), -2.0);

  g_assert_cmpfloat_with_epsilon (half.box.min.x, 0.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (half.box.max.x, 5.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (most.radius, 5.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (most.box.min.x, -5.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (most.box.max.x, 3.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (most.box.min.y, -5.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (most.box.max.y, 5.0, 1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *path = g_strconcat ("/ring-distance", cases[i].path, NULL);
      g_test_add_data_func (path, &cases[i], test_case);
    }
  g_test_add_func ("/ring-distance/by-lot", test_by_lot);
  g_test_add_func ("/ring-distance/box", test_box);
  return g_test_run ();
}
