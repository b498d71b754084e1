/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Distances of lines and arcs, against points sampled on them. */

#include "fold/edge-distance.h"

#define N_PAIRS 400
#define N_SAMPLES 400

static BfEdge
edge_between (BfVec2 from, BfVec2 to, double bulge)
{
  g_autoptr (BfRing) ring = bf_ring_new ();

  bf_ring_add (ring, from, bulge);
  bf_ring_add (ring, to, 0.0);
  return bf_edge_of (ring, 0);
}

static BfEdge
draw_edge (GRand *rand)
{
  BfVec2 from = { g_rand_double_range (rand, -20, 20), g_rand_double_range (rand, -20, 20) };
  BfVec2 to = { g_rand_double_range (rand, -20, 20), g_rand_double_range (rand, -20, 20) };
  double bulge = g_rand_boolean (rand) ? 0.0 : g_rand_double_range (rand, -3.0, 3.0);

  return edge_between (from, to, bulge);
}

/* A point of the edge, by how much of its sweep or its length lies before it. */
static BfVec2
sample (const BfEdge *edge, double share)
{
  BfVec2 out = bf_vec2_sub (edge->from, edge->centre);
  double a = share * 4.0 * atan (edge->bulge);

  if (!edge->curved)
    return bf_vec2_along (edge->from, bf_vec2_sub (edge->to, edge->from), share);
  return bf_vec2 (edge->centre.x + cos (a) * out.x - sin (a) * out.y,
                  edge->centre.y + sin (a) * out.x + cos (a) * out.y);
}

static double
length_mm (const BfEdge *edge)
{
  return edge->curved ? edge->radius * fabs (4.0 * atan (edge->bulge))
                      : bf_vec2_distance (edge->from, edge->to);
}

/* ---- one edge ----------------------------------------------------------------------------- */

static void
test_box (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (3);

  for (guint i = 0; i < N_PAIRS; i++)
    {
      BfEdge edge = draw_edge (rand);
      BfBox seen = bf_box_empty ();
      double step = length_mm (&edge) / N_SAMPLES;

      for (guint k = 0; k <= N_SAMPLES; k++)
        bf_box_extend (&seen, sample (&edge, (double)k / N_SAMPLES));
      g_assert_cmpfloat (edge.box.min.x, <=, seen.min.x + 1e-9);
      g_assert_cmpfloat (edge.box.min.y, <=, seen.min.y + 1e-9);
      g_assert_cmpfloat (edge.box.max.x, >=, seen.max.x - 1e-9);
      g_assert_cmpfloat (edge.box.max.y, >=, seen.max.y - 1e-9);
      g_assert_cmpfloat (edge.box.max.x - edge.box.min.x, <=, seen.max.x - seen.min.x + step);
      g_assert_cmpfloat (edge.box.max.y - edge.box.min.y, <=, seen.max.y - seen.min.y + step);
    }
}

/* The nearest point lies on the edge, and no sampled one is nearer. */
static void
test_nearest (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (4);

  for (guint i = 0; i < N_PAIRS; i++)
    {
      BfEdge edge = draw_edge (rand);
      BfVec2 p = { g_rand_double_range (rand, -40, 40), g_rand_double_range (rand, -40, 40) };
      BfVec2 near = bf_edge_nearest (&edge, p);
      double least = G_MAXDOUBLE, off = G_MAXDOUBLE;

      for (guint k = 0; k <= N_SAMPLES; k++)
        {
          BfVec2 q = sample (&edge, (double)k / N_SAMPLES);

          least = MIN (least, bf_vec2_distance (p, q));
          off = MIN (off, bf_vec2_distance (near, q));
        }
      g_assert_cmpfloat (bf_vec2_distance (p, near), <=, least + 1e-9);
      g_assert_cmpfloat (off, <=, length_mm (&edge) / N_SAMPLES);
    }
}

/* ---- two edges ---------------------------------------------------------------------------- */

/* Never further apart than any two of their points, and hardly nearer than the nearest two of many;
 * either way round the same, and the place told lies on the first, that far from the second. */
static void
check_pair (const BfEdge *a, const BfEdge *b)
{
  BfVec2 place, back;
  double distance = bf_edge_distance (a, b, &place), least = G_MAXDOUBLE;
  double step = MAX (length_mm (a), length_mm (b)) / N_SAMPLES;

  for (guint i = 0; i <= N_SAMPLES; i++)
    for (guint k = 0; k <= N_SAMPLES; k++)
      least = MIN (least, bf_vec2_distance (sample (a, (double)i / N_SAMPLES),
                                            sample (b, (double)k / N_SAMPLES)));
  g_assert_cmpfloat (distance, <=, least + 1e-9);
  g_assert_cmpfloat (distance, >=, least - step);
  g_assert_cmpfloat_with_epsilon (bf_edge_distance (b, a, &back), distance, 1e-7);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (bf_edge_nearest (a, place), place), 0.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (bf_edge_nearest (b, place), place), distance,
                                  1e-6);
  g_assert_cmpfloat (bf_box_gap (&a->box, &b->box), <=, distance + 1e-9);
}

static void
test_pairs (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (5);

  for (guint i = 0; i < N_PAIRS / 4; i++)
    {
      BfEdge a = draw_edge (rand), b = draw_edge (rand);

      check_pair (&a, &b);
    }
}

/* The cases that have no one nearest pair, or whose nearest points are hard to come by. */
static void
test_special (void)
{
  static const struct
  {
    BfVec2 a[2];
    double a_bulge;
    BfVec2 b[2];
    double b_bulge, wanted;
  } rows[] = {
    /* Beside each other, and end to end in one line. */
    { { { 0, 0 }, { 10, 0 } }, 0, { { 2, 3 }, { 8, 3 } }, 0, 3 },
    { { { 0, 0 }, { 10, 0 } }, 0, { { 14, 0 }, { 20, 0 } }, 0, 4 },
    { { { 0, 0 }, { 10, 0 } }, 0, { { 5, 0 }, { 20, 0 } }, 0, 0 },
    { { { 0, 0 }, { 10, 0 } }, 0, { { 10, 0 }, { 10, 9 } }, 0, 0 },
    /* Half circles round one centre: 5 and 3 mm. */
    { { { 5, 0 }, { -5, 0 } }, 1, { { 3, 0 }, { -3, 0 } }, 1, 2 },
    /* The same, the inner one on the other side: from end to end. */
    { { { 5, 0 }, { -5, 0 } }, 1, { { -3, 0 }, { 3, 0 } }, 1, 2 },
    /* A line under a half circle's top, and one that cuts it. */
    { { { -9, 7 }, { 9, 7 } }, 0, { { 5, 0 }, { -5, 0 } }, 1, 2 },
    { { { -9, 4 }, { 9, 4 } }, 0, { { 5, 0 }, { -5, 0 } }, 1, 0 },
    /* A short line within the circle: as far as from its end to the rim. */
    { { { -1, 0 }, { 2, 0 } }, 0, { { 0, -5 }, { 0, 5 } }, 1, 3 },
    /* Two half circles that bulge at each other, centres 12 apart, of 5 and 3 mm. */
    { { { 0, -5 }, { 0, 5 } }, 1, { { 12, 3 }, { 12, -3 } }, 1, 4 },
    /* And bulging away: from end to end, 12 across and 2 up. */
    { { { 0, 5 }, { 0, -5 } }, 1, { { 12, -3 }, { 12, 3 } }, 1, 12.165525060596439 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfEdge a = edge_between (rows[i].a[0], rows[i].a[1], rows[i].a_bulge);
      BfEdge b = edge_between (rows[i].b[0], rows[i].b[1], rows[i].b_bulge);
      BfVec2 place;

      g_test_message ("row %u", i);
      g_assert_cmpfloat_with_epsilon (bf_edge_distance (&a, &b, &place), rows[i].wanted, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_edge_distance (&b, &a, &place), rows[i].wanted, 1e-9);
    }
}

static void
test_box_gap (void)
{
  static const struct
  {
    BfBox a, b;
    double gap;
  } rows[] = {
    { { { 0, 0 }, { 2, 2 } }, { { 5, 0 }, { 6, 2 } }, 3 },
    { { { 0, 0 }, { 2, 2 } }, { { 0, -9 }, { 2, -4 } }, 4 },
    { { { 0, 0 }, { 2, 2 } }, { { 1, 1 }, { 3, 3 } }, 0 },
    { { { 0, 0 }, { 2, 2 } }, { { 5, 6 }, { 7, 8 } }, 4 }, /* the least that no pair is below */
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (bf_box_gap (&rows[i].a, &rows[i].b), rows[i].gap, 1e-12);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edge-distance/box", test_box);
  g_test_add_func ("/edge-distance/nearest", test_nearest);
  g_test_add_func ("/edge-distance/pairs", test_pairs);
  g_test_add_func ("/edge-distance/special", test_special);
  g_test_add_func ("/edge-distance/box-gap", test_box_gap);
  return g_test_run ();
}
