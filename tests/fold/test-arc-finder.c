/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Rings that are flattened, cut, and found again with their true arcs; and rings whose needless
 * vertices are dropped. */

#include "fold/arc-finder.h"

#include "core/tolerance.h"
#include "fold/ring-tidy.h"

#define N_DRAWN 200

/* A ring like a gear that is not regular: points round the origin, some joined by arcs. */
static BfRing *
draw_ring (GRand *rand, double least_bulge)
{
  BfRing *ring = bf_ring_new ();
  guint n = (guint)g_rand_int_range (rand, 3, 10);

  for (guint i = 0; i < n; i++)
    {
      double a = 2.0 * G_PI * i / n, r = g_rand_double_range (rand, 60.0, 100.0);
      double bulge = g_rand_double_range (rand, least_bulge, 0.4);

      bf_ring_add (ring, bf_vec2 (r * cos (a), r * sin (a)), g_rand_boolean (rand) ? bulge : 0.0);
    }
  return ring;
}

static BfRing *
make_circle (BfVec2 at, double radius)
{
  BfRing *ring = bf_ring_new ();

  bf_ring_add (ring, bf_vec2 (at.x + radius, at.y), 1.0);
  bf_ring_add (ring, bf_vec2 (at.x - radius, at.y), 1.0);
  return ring;
}

static void
assert_same_ring (const BfRing *a, const BfRing *b)
{
  BfBox box_a = bf_box_empty (), box_b = bf_box_empty ();

  g_assert_cmpfloat_with_epsilon (bf_ring_area (a), bf_ring_area (b), 1e-4);
  g_assert_cmpfloat_with_epsilon (bf_ring_length (a), bf_ring_length (b), 1e-5);
  bf_ring_extend_box (a, &box_a);
  bf_ring_extend_box (b, &box_b);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (box_a.min, box_b.min), 0.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (box_a.max, box_b.max), 0.0, 1e-6);
}

/* What an overlay would do to points: round them to its grid, and begin anywhere. */
static void
spoil (GArray *points, guint shift)
{
  g_autoptr (GArray) old = g_array_copy (points);

  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 p = g_array_index (old, BfVec2, (i + shift) % old->len);

      g_array_index (points, BfVec2, i) =
          bf_vec2 (round (p.x / BF_TOLERANCE_SNAP_MM) * BF_TOLERANCE_SNAP_MM,
                   round (p.y / BF_TOLERANCE_SNAP_MM) * BF_TOLERANCE_SNAP_MM);
    }
}

/* ---- there and back ----------------------------------------------------------------------- */

static void
test_there_and_back (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (31);
  guint arcs = 0;

  for (guint i = 0; i < N_DRAWN; i++)
    {
      g_autoptr (BfRing) ring = draw_ring (rand, -0.4), back = NULL;
      g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

      bf_arc_finder_flatten (finder, ring, points);
      spoil (points, (guint)g_rand_int_range (rand, 0, (gint32)points->len));
      back = bf_arc_finder_restore (finder, (const BfVec2 *)(gpointer)points->data, points->len);
      assert_same_ring (ring, back);
      g_assert_cmpuint (bf_ring_size (back), ==, bf_ring_size (ring));
      for (guint k = 0; k < bf_ring_size (back); k++)
        arcs += fabs (bf_ring_vertex (back, k)->bulge) > 0.0 ? 1 : 0;
    }
  g_assert_cmpuint (arcs, >, N_DRAWN);
}

static void
test_whole_circle (void)
{
  g_autoptr (BfRing) ring = make_circle (bf_vec2 (3.0, -2.0), 7.5), back = NULL;
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  BfVec2 centre;
  double radius;

  bf_arc_finder_flatten (finder, ring, points);
  spoil (points, 5);
  back = bf_arc_finder_restore (finder, (const BfVec2 *)(gpointer)points->data, points->len);
  g_assert_true (bf_ring_is_circle (back, &centre, &radius));
  g_assert_cmpfloat_with_epsilon (radius, 7.5, 1e-7);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (centre, bf_vec2 (3.0, -2.0)), 0.0, 1e-7);
}

/* ---- cut in between ----------------------------------------------------------------------- */

/* The part of a polygon that lies left of the line x = at, as an overlay cuts it: along chords. */
static GArray *
cut_right_of (const GArray *points, double at)
{
  GArray *left = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 a = g_array_index (points, BfVec2, i);
      BfVec2 b = g_array_index (points, BfVec2, (i + 1) % points->len);

      if (a.x <= at)
        g_array_append_val (left, a);
      if ((a.x < at && b.x > at) || (a.x > at && b.x < at))
        {
          BfVec2 p = bf_vec2_along (a, bf_vec2_sub (b, a), (at - a.x) / (b.x - a.x));
          g_array_append_val (left, p);
        }
    }
  return left;
}

/* A circle cut by a line: what is left has the area of a circle's segment, R² (α − sin α cos α)
 * with α half the angle of the arc that is left, though the overlay saw chords; its two corners lie
 * on the circle and on the line. */
static void
test_segment (void)
{
  static const double at[] = { -6.0, -2.5, 0.0, 3.1, 6.9 };

  for (guint i = 0; i < G_N_ELEMENTS (at); i++)
    {
      g_autoptr (BfRing) ring = make_circle (bf_vec2 (0.0, 0.0), 7.5), back = NULL;
      g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2)), left = NULL;
      double half = G_PI - acos (at[i] / 7.5);
      guint corners = 0;

      bf_arc_finder_flatten (finder, ring, points);
      left = cut_right_of (points, at[i]);
      spoil (left, i);
      back = bf_arc_finder_restore (finder, (const BfVec2 *)(gpointer)left->data, left->len);
      g_assert_cmpfloat_with_epsilon (bf_ring_area (back),
                                      7.5 * 7.5 * (half - sin (half) * cos (half)), 1e-5);
      for (guint k = 0; k < bf_ring_size (back); k++)
        {
          BfVec2 p = bf_ring_vertex (back, k)->p;

          g_assert_cmpfloat_with_epsilon (bf_vec2_length (p), 7.5, 1e-7);
          corners += fabs (p.x - at[i]) < 1e-6 ? 1 : 0;
        }
      g_assert_cmpuint (corners, ==, 2);
    }
}

/* A line that runs close by an arc stays a line: within the chords' own stray of the circle, it is
 * no chord of it. */
static void
test_close_by (void)
{
  g_autoptr (BfRing) circle = make_circle (bf_vec2 (0.0, 0.0), 50.0);
  g_autoptr (BfRing) square = bf_ring_new (), back = NULL;
  g_autoptr (BfArcFinder) finder = bf_arc_finder_new ();
  g_autoptr (GArray) chords = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_add (square, bf_vec2 (49.995, -0.5), 0.0);
  bf_ring_add (square, bf_vec2 (49.995, 0.5), 0.0);
  bf_ring_add (square, bf_vec2 (60.0, 0.5), 0.0);
  bf_ring_add (square, bf_vec2 (60.0, -0.5), 0.0);
  bf_ring_reverse (square);
  bf_arc_finder_flatten (finder, circle, chords);
  bf_arc_finder_flatten (finder, square, points);
  back = bf_arc_finder_restore (finder, (const BfVec2 *)(gpointer)points->data, points->len);
  g_assert_cmpuint (bf_ring_size (back), ==, 4);
  for (guint i = 0; i < 4; i++)
    g_assert_cmpfloat_with_epsilon (bf_ring_vertex (back, i)->bulge, 0.0, 1e-12);
}

/* ---- needless vertices -------------------------------------------------------------------- */

/* The ring with a vertex more on some of its lines and arcs: shape and length stay. */
static BfRing *
split_some (const BfRing *ring, GRand *rand)
{
  BfRing *split = bf_ring_new ();

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      const BfVertex *v = bf_ring_vertex (ring, i);
      double share = g_rand_double_range (rand, 0.2, 0.8);
      BfArc arc;

      if (g_rand_boolean (rand))
        {
          bf_ring_add (split, v->p, v->bulge);
          continue;
        }
      if (!bf_ring_arc (ring, i, &arc))
        {
          bf_ring_add (split, v->p, 0.0);
          bf_ring_add (
              split,
              bf_vec2_along (v->p, bf_vec2_sub (bf_ring_vertex (ring, i + 1)->p, v->p), share),
              0.0);
          continue;
        }
      bf_ring_add (split, v->p, tan (arc.sweep * share / 4.0));
      bf_ring_add (split,
                   bf_vec2 (arc.centre.x + arc.radius * cos (arc.from + arc.sweep * share),
                            arc.centre.y + arc.radius * sin (arc.from + arc.sweep * share)),
                   tan (arc.sweep * (1.0 - share) / 4.0));
    }
  return split;
}

/* What was split is one again, and nothing that belongs to the ring is lost. */
static void
test_tidy (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (32);
  guint dropped = 0;

  for (guint i = 0; i < N_DRAWN; i++)
    {
      g_autoptr (BfRing) ring = draw_ring (rand, 0.05), split = split_some (ring, rand);
      guint n = bf_ring_size (split);

      bf_ring_tidy (split);
      g_assert_cmpuint (bf_ring_size (split), ==, bf_ring_size (ring));
      assert_same_ring (split, ring);
      dropped += n - bf_ring_size (split);
    }
  g_assert_cmpuint (dropped, >, N_DRAWN);
}

/* A spike runs back in its own line: its tip is a vertex that counts. A circle keeps both of its
 * two. */
static void
test_not_tidied (void)
{
  g_autoptr (BfRing) spike = bf_ring_new (), circle = make_circle (bf_vec2 (0, 0), 5.0);
  static const BfVec2 points[] = { { 0, 0 }, { 10, 0 }, { 20, 0 }, { 10, 0 }, { 10, 5 }, { 0, 5 } };

  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    bf_ring_add (spike, points[i], 0.0);
  bf_ring_tidy (spike);
  g_assert_cmpfloat_with_epsilon (bf_ring_length (spike), 20 + 10 + 5 + 10 + 5, 1e-9);
  bf_ring_tidy (circle);
  g_assert_true (bf_ring_is_circle (circle, NULL, NULL));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/arc-finder/there-and-back", test_there_and_back);
  g_test_add_func ("/arc-finder/whole-circle", test_whole_circle);
  g_test_add_func ("/arc-finder/segment", test_segment);
  g_test_add_func ("/arc-finder/close-by", test_close_by);
  g_test_add_func ("/arc-finder/tidy", test_tidy);
  g_test_add_func ("/arc-finder/not-tidied", test_not_tidied);
  return g_test_run ();
}
