/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/fold.h"
#include "fold/kerf.h"

#include "make-part.h"

/* Rings moved by half a kerf. Areas are Steiner's formula for a convex outline with sharp tips,
 * area + length·d + d²·Σ tan(turn/2), and what school geometry gives for the rest. */

#define NEAR 1e-5 /* overlays round to a grid of 1e-7; times a length of 100 */

typedef struct
{
  const char *what;
  double vertices[10][3]; /* x, y, bulge */
  guint n;
  double half_mm;
  guint n_left;
  double area_mm2;
  guint n_arcs;
} Case;

static const Case outside[] = {
  { "a rectangle, its corners sharp",
    { { 0, 0, 0 }, { 100, 0, 0 }, { 100, 60, 0 }, { 0, 60, 0 } },
    4,
    0.65,
    1,
    101.3 * 61.3,
    0 },
  { "an L: the inside corner stays sharp, too",
    { { 0, 0, 0 }, { 100, 0, 0 }, { 100, 20, 0 }, { 20, 20, 0 }, { 20, 60, 0 }, { 0, 60, 0 } },
    6,
    0.5,
    1,
    101.0 * 21.0 + 21.0 * 40.0,
    0 },
  { "a turn of 120° is cut sharp: twice the distance is allowed",
    { { 0, 0, 0 }, { 100, 0, 0 }, { 50, 86.60254037844386, 0 } },
    3,
    1.0,
    1,
    4330.127018922193 + 300.0 + 3.0 * 1.7320508075688772,
    0 },
  { "round ends grow in radius",
    { { 0, 0, 0 }, { 40, 0, 1 }, { 40, 20, 0 }, { 0, 20, 1 } },
    4,
    0.75,
    1,
    40.0 * 21.5 + G_PI * 10.75 * 10.75,
    2 },
  { "a slit narrower than the kerf closes",
    { { 0, 0, 0 },
      { 50, 0, 0 },
      { 50, 30, 0 },
      { 50.5, 30, 0 },
      { 50.5, 0, 0 },
      { 100, 0, 0 },
      { 100, 60, 0 },
      { 0, 60, 0 } },
    8,
    0.65,
    1,
    101.3 * 61.3,
    0 },
};

static const Case inside[] = {
  { "a rectangle",
    { { 0, 0, 0 }, { 0, 10, 0 }, { 20, 10, 0 }, { 20, 0, 0 } },
    4,
    0.65,
    1,
    18.7 * 8.7,
    0 },
  { "a slot with round ends",
    { { 4, 0, -1 }, { 4, 8, 0 }, { 36, 8, -1 }, { 36, 0, 0 } },
    4,
    0.65,
    1,
    32.0 * 6.7 + G_PI * 3.35 * 3.35,
    2 },
  { "a circle", { { 0, 0, -1 }, { 6, 0, -1 } }, 2, 0.65, 1, G_PI * 2.35 * 2.35, 2 },
  { "a circle as wide as the kerf", { { 0, 0, -1 }, { 1.3, 0, -1 } }, 2, 0.65, 0, 0.0, 0 },
  { "a slot as wide as the kerf",
    { { 0, 0, 0 }, { 0, 1.3, 0 }, { 40, 1.3, 0 }, { 40, 0, 0 } },
    4,
    0.65,
    0,
    0.0,
    0 },
  { "a waist that the tool can't pass: two holes",
    { { 0, 0, 0 },
      { 0, 10, 0 },
      { 10, 10, 0 },
      { 10, 5.5, 0 },
      { 20, 5.5, 0 },
      { 20, 10, 0 },
      { 30, 10, 0 },
      { 30, 0, 0 },
      { 20, 0, 0 },
      { 20, 4.5, 0 } /* and one more, see below */ },
    10,
    0.65,
    2,
    2.0 * 8.7 * 8.7,
    0 },
};

static BfRing *
ring_of (const Case *c)
{
  BfRing *ring = bf_ring_new ();

  for (guint i = 0; i < c->n; i++)
    bf_ring_add (ring, bf_vec2 (c->vertices[i][0], c->vertices[i][1]), c->vertices[i][2]);
  return ring;
}

static guint
count_arcs (const BfRing *ring)
{
  guint n = 0;
  BfArc arc;

  for (guint i = 0; i < bf_ring_size (ring); i++)
    n += bf_ring_arc (ring, i, &arc) ? 1 : 0;
  return n;
}

static void
assert_rings (const Case *c, const GPtrArray *rings)
{
  double area = 0.0;
  guint n_arcs = 0;

  g_test_message ("%s", c->what);
  g_assert_cmpuint (rings->len, ==, c->n_left);
  for (guint i = 0; i < rings->len; i++)
    {
      area += fabs (bf_ring_area (g_ptr_array_index (rings, i)));
      n_arcs += count_arcs (g_ptr_array_index (rings, i));
    }
  g_assert_cmpfloat_with_epsilon (area, c->area_mm2, NEAR * 10.0);
  g_assert_cmpuint (n_arcs, ==, c->n_arcs);
}

static void
test_outside (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (outside); i++)
    {
      g_autoptr (GPtrArray) rings = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
      g_autoptr (GPtrArray) grown = NULL;
      guint n_grown;

      g_ptr_array_add (rings, ring_of (&outside[i]));
      grown = bf_kerf_outside (rings, 1, outside[i].half_mm, &n_grown);
      g_assert_cmpuint (n_grown, ==, 1);
      assert_rings (&outside[i], grown);
      g_assert_cmpfloat (bf_ring_area (g_ptr_array_index (grown, 0)), >, 0.0);
    }
}

static void
test_inside (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (inside); i++)
    {
      g_autoptr (BfRing) hole = ring_of (&inside[i]);
      g_autoptr (GPtrArray) left = NULL;

      if (inside[i].n == 10)
        {
          bf_ring_add (hole, bf_vec2 (10.0, 4.5), 0.0);
          bf_ring_add (hole, bf_vec2 (10.0, 0.0), 0.0);
        }
      left = bf_kerf_inside (hole, inside[i].half_mm);
      assert_rings (&inside[i], left);
      for (guint k = 0; k < left->len; k++)
        g_assert_cmpfloat (bf_ring_area (g_ptr_array_index (left, k)), <, 0.0);
    }
}

/* A corner too sharp for a tip is gone round: half the kerf from it, and no further. */
static void
test_sharp_corner (void)
{
  const Case thin = { "a needle", { { 0, 0, 0 }, { 100, -10, 0 }, { 100, 10, 0 } }, 3, 1.0, 1, 0.0,
                      1 };
  g_autoptr (GPtrArray) rings = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  g_autoptr (GPtrArray) grown = NULL;
  BfBox box = bf_box_empty ();
  guint n_grown;

  g_ptr_array_add (rings, ring_of (&thin));
  grown = bf_kerf_outside (rings, 1, thin.half_mm, &n_grown);
  bf_ring_extend_box (g_ptr_array_index (grown, 0), &box);
  g_assert_cmpfloat_with_epsilon (box.min.x, -1.0, NEAR);
  g_assert_cmpuint (count_arcs (g_ptr_array_index (grown, 0)), ==, 1);
}

/* A gap that closes at its mouth leaves a pocket of waste, which is cut like a hole. */
static void
test_pocket (void)
{
  g_autoptr (GPtrArray) rings = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  g_autoptr (GPtrArray) grown = NULL;
  static const double flask[][2] = { { 0, 0 },    { 49.5, 0 }, { 49.5, 20 }, { 40, 20 },
                                     { 40, 40 },  { 60, 40 },  { 60, 20 },   { 50.5, 20 },
                                     { 50.5, 0 }, { 100, 0 },  { 100, 60 },  { 0, 60 } };
  BfRing *ring = bf_ring_new ();
  guint n_grown;

  for (guint i = 0; i < G_N_ELEMENTS (flask); i++)
    bf_ring_add (ring, bf_vec2 (flask[i][0], flask[i][1]), 0.0);
  g_ptr_array_add (rings, ring);
  grown = bf_kerf_outside (rings, 1, 0.75, &n_grown);
  g_assert_cmpuint (n_grown, ==, 1);
  g_assert_cmpuint (grown->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (g_ptr_array_index (grown, 0)), 101.5 * 61.5,
                                  NEAR * 10.0);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (g_ptr_array_index (grown, 1)), -18.5 * 18.5,
                                  NEAR * 10.0);
}

/* The distance from p to the nearest point of any of the rings, by chords. */
static double
distance_to (const GPtrArray *rings, BfVec2 p)
{
  double nearest = HUGE_VAL;

  for (guint i = 0; i < rings->len; i++)
    {
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      bf_ring_flatten (g_ptr_array_index (rings, i), 1e-4, points);
      for (guint k = 0; k < points->len; k++)
        {
          BfVec2 a = g_array_index (points, BfVec2, k);
          BfVec2 b = g_array_index (points, BfVec2, (k + 1) % points->len);
          BfVec2 step = bf_vec2_sub (b, a);
          double share = bf_vec2_dot (bf_vec2_sub (p, a), step) / bf_vec2_dot (step, step);
          BfVec2 foot = bf_vec2_along (a, step, CLAMP (share, 0.0, 1.0));
          nearest = MIN (nearest, bf_vec2_distance (p, foot));
        }
    }
  return nearest;
}

/* A whole blank, with reliefs: the moved outline is nowhere nearer to the metal than half the kerf,
 * and away from sharp tips nowhere further. */
static void
test_blank (void)
{
  g_autoptr (BfPart) part = make_tray (120.0, 80.0, 30.0, 75.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  g_autoptr (GPtrArray) grown = NULL;
  guint n_grown, n_exact = 0;

  grown = bf_kerf_outside (fold->blank.rings, fold->blank.n_outer, 0.65, &n_grown);
  g_assert_cmpuint (grown->len, ==, 1);
  g_assert_cmpuint (count_arcs (g_ptr_array_index (grown, 0)), >=, 4);
  bf_ring_flatten (g_ptr_array_index (grown, 0), 1e-3, points);
  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 a = g_array_index (points, BfVec2, i);
      BfVec2 step = bf_vec2_sub (g_array_index (points, BfVec2, (i + 1) % points->len), a);
      for (int k = 0; k < 10; k++)
        {
          double away = distance_to (fold->blank.rings, bf_vec2_along (a, step, k / 10.0));
          g_assert_cmpfloat (away, >, 0.65 - 2e-3);
          g_assert_cmpfloat (away, <, 1.3 + 2e-3);
          n_exact += away < 0.65 + 2e-3 ? 1 : 0;
        }
    }
  g_assert_cmpuint (n_exact, >, points->len * 9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/kerf/outside", test_outside);
  g_test_add_func ("/kerf/inside", test_inside);
  g_test_add_func ("/kerf/sharp-corner", test_sharp_corner);
  g_test_add_func ("/kerf/pocket", test_pocket);
  g_test_add_func ("/kerf/blank", test_blank);
  return g_test_run ();
}
