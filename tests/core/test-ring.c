/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/ring.h"
#include "core/tolerance.h"

#define NEAR 1e-9

/* Less than the last digit of any number here. */
#define EXACT 1e-18

typedef struct
{
  double x, y, bulge;
} Corner;

static BfRing *
make_ring (const Corner *corners, guint n)
{
  BfRing *ring = bf_ring_new ();

  for (guint i = 0; i < n; i++)
    bf_ring_add (ring, bf_vec2 (corners[i].x, corners[i].y), corners[i].bulge);
  return ring;
}

static BfRing *
make_circle (double x, double y, double radius, double bulge)
{
  Corner corners[] = { { x + radius, y, bulge }, { x - radius, y, bulge } };

  return make_ring (corners, 2);
}

/* tan (sweep / 4) of a quarter turn. */
#define QUARTER 0.41421356237309503

/* A slot 30 long over all and 10 wide about (0, 0), lying. */
static const Corner slot[] = { { -10, -5, 0 }, { 10, -5, 1 }, { 10, 5, 0 }, { -10, 5, 1 } };

/* A square of 20 with corners rounded by 3. */
static const Corner rounded[] = { { 3, 0, 0 },         { 17, 0, QUARTER }, { 20, 3, 0 },
                                  { 20, 17, QUARTER }, { 17, 20, 0 },      { 3, 20, QUARTER },
                                  { 0, 17, 0 },        { 0, 3, QUARTER } };

/* A square of 20 with a half circle of radius 5 bitten out of its lower edge. */
static const Corner bitten[] = { { 0, 0, 0 },  { 5, 0, -1 },  { 15, 0, 0 },
                                 { 20, 0, 0 }, { 20, 20, 0 }, { 0, 20, 0 } };

/* There and back: a ring of no area. */
static const Corner flat[] = { { 0, 0, 0 }, { 4, 0, 0 }, { 0, 0, 0 } };

static void
test_sums (void)
{
  const struct
  {
    const char *what;
    const Corner *corners;
    guint n;
    double area, length;
    BfBox box;
  } cases[] = {
    { "slot", slot, 4, 200 + 25 * G_PI, 40 + 10 * G_PI, { { -15, -5 }, { 15, 5 } } },
    { "rounded", rounded, 8, 400 - 36 + 9 * G_PI, 56 + 6 * G_PI, { { 0, 0 }, { 20, 20 } } },
    { "bitten", bitten, 6, 400 - 12.5 * G_PI, 70 + 5 * G_PI, { { 0, 0 }, { 20, 20 } } },
    { "flat", flat, 3, 0, 8, { { 0, 0 }, { 4, 0 } } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfRing) ring = make_ring (cases[i].corners, cases[i].n);
      BfBox box = bf_box_empty ();

      g_test_message ("%s", cases[i].what);
      g_assert_cmpfloat_with_epsilon (bf_ring_area (ring), cases[i].area, NEAR);
      g_assert_cmpfloat_with_epsilon (bf_ring_length (ring), cases[i].length, NEAR);
      bf_ring_extend_box (ring, &box);
      g_assert_cmpfloat_with_epsilon (box.min.x, cases[i].box.min.x, NEAR);
      g_assert_cmpfloat_with_epsilon (box.min.y, cases[i].box.min.y, NEAR);
      g_assert_cmpfloat_with_epsilon (box.max.x, cases[i].box.max.x, NEAR);
      g_assert_cmpfloat_with_epsilon (box.max.y, cases[i].box.max.y, NEAR);
    }
}

static void
test_circle (void)
{
  g_autoptr (BfRing) circle = make_circle (3, -2, 2.5, 1);
  g_autoptr (BfRing) hole = make_circle (3, -2, 2.5, -1);
  g_autoptr (BfRing) oblong = make_ring (slot, 4);
  BfVec2 centre = { 0, 0 };
  double radius = 0;

  g_assert_true (bf_ring_is_circle (circle, &centre, &radius));
  g_assert_cmpfloat_with_epsilon (centre.x, 3, NEAR);
  g_assert_cmpfloat_with_epsilon (centre.y, -2, NEAR);
  g_assert_cmpfloat_with_epsilon (radius, 2.5, NEAR);
  g_assert_true (bf_ring_is_circle (hole, NULL, NULL));
  g_assert_cmpfloat_with_epsilon (bf_ring_area (hole), -6.25 * G_PI, NEAR);
  g_assert_false (bf_ring_is_circle (oblong, NULL, NULL));
}

/* Two half circles that bulge the same way leave a ring of no area: not a circle. */
static void
test_not_a_circle (void)
{
  const Corner there_and_back[] = { { 1, 0, 1 }, { -1, 0, -1 } };
  g_autoptr (BfRing) ring = make_ring (there_and_back, 2);
  g_autoptr (BfRing) empty = bf_ring_new ();

  g_assert_false (bf_ring_is_circle (ring, NULL, NULL));
  g_assert_false (bf_ring_is_circle (empty, NULL, NULL));
  g_assert_cmpfloat_with_epsilon (bf_ring_area (ring), 0, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (empty), 0, NEAR);
}

static void
test_arc (void)
{
  const struct
  {
    double bulge, radius, from_deg, sweep_deg;
    BfVec2 centre;
  } cases[] = {
    /* From (10, 0) to (0, 10): the quarter circles about (0, 0) and about (10, 10), and the three
     * quarters about (10, 10) and about (0, 0). */
    { QUARTER, 10, 0, 90, { 0, 0 } },          { -QUARTER, 10, -90, -90, { 10, 10 } },
    { 1 / QUARTER, 10, -90, 270, { 10, 10 } }, { -1 / QUARTER, 10, 0, -270, { 0, 0 } },
    { 1, 5 * G_SQRT2, -45, 180, { 5, 5 } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const Corner corners[] = { { 10, 0, cases[i].bulge }, { 0, 10, 0 } };
      g_autoptr (BfRing) ring = make_ring (corners, 2);
      BfArc arc;

      g_assert_true (bf_ring_arc (ring, 0, &arc));
      g_assert_cmpfloat_with_epsilon (arc.centre.x, cases[i].centre.x, NEAR);
      g_assert_cmpfloat_with_epsilon (arc.centre.y, cases[i].centre.y, NEAR);
      g_assert_cmpfloat_with_epsilon (arc.radius, cases[i].radius, NEAR);
      g_assert_cmpfloat_with_epsilon (bf_rad_to_deg (arc.from), cases[i].from_deg, NEAR);
      g_assert_cmpfloat_with_epsilon (bf_rad_to_deg (arc.sweep), cases[i].sweep_deg, NEAR);
      g_assert_false (bf_ring_arc (ring, 1, &arc));
    }
}

/* Where the closed form of a segment's area hands over to its series the two must agree; far
 * below, the area is two thirds of chord times height (Archimedes' parabola). */
static void
test_slight_bulges (void)
{
  for (double bulge = 0.1; bulge > 1e-7; bulge *= 0.83)
    {
      const Corner corners[] = { { 0, 0, bulge }, { 10, 0, 0 } };
      g_autoptr (BfRing) ring = make_ring (corners, 2);
      double height = 5 * bulge, parabola = 2.0 / 3.0 * 10 * height;
      double third_order = 100 * bulge * bulge * bulge / 15;

      g_assert_cmpfloat_with_epsilon (bf_ring_area (ring) / (parabola + third_order), 1.0,
                                      bulge * bulge * bulge * bulge + 1e-11);
    }
}

/* What is inside must be inside by an independent test too: of the flattened ring, far finer than
 * the points tried. */
static gboolean
polygon_contains (GArray *points, BfVec2 p)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < points->len; i++)
    {
      BfVec2 a = g_array_index (points, BfVec2, i);
      BfVec2 b = g_array_index (points, BfVec2, (i + 1) % points->len);

      if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
        inside = !inside;
    }
  return inside;
}

static void
test_contains_like_polygon (void)
{
  const struct
  {
    const Corner *corners;
    guint n;
  } cases[] = { { slot, 4 }, { rounded, 8 }, { bitten, 6 } };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfRing) ring = make_ring (cases[i].corners, cases[i].n);
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

      bf_ring_flatten (ring, 1e-6, points);
      /* Odd steps keep the points off the outline. */
      for (double y = -21.0371; y < 22; y += 0.7113)
        for (double x = -21.0717; x < 22; x += 0.7057)
          g_assert_cmpint (bf_ring_contains (ring, bf_vec2 (x, y)), ==,
                           polygon_contains (points, bf_vec2 (x, y)));
    }
}

/* Points whose ray grazes a vertex, an arc's top or a level edge are where such tests go wrong. */
static void
test_contains_at_vertices (void)
{
  g_autoptr (BfRing) oblong = make_ring (slot, 4);
  g_autoptr (BfRing) circle = make_circle (0, 0, 5, 1);
  g_autoptr (BfRing) hole = make_circle (0, 0, 5, -1);
  const struct
  {
    const BfRing *ring;
    double x, y;
    gboolean inside;
  } cases[] = {
    { oblong, 0, 0, TRUE },    { oblong, 0, 5, TRUE },       { oblong, -20, 5, FALSE },
    { oblong, 20, 5, FALSE },  { oblong, -20, -5, FALSE },   { oblong, -20, 0, FALSE },
    { oblong, 15, 0, TRUE },   { oblong, 15.001, 0, FALSE }, { oblong, 10, 5, TRUE },
    { circle, 0, 5, TRUE },    { circle, -3, 5, FALSE },     { circle, 0, -5, TRUE },
    { circle, -3, -5, FALSE }, { circle, 5, 0, TRUE },       { circle, -5, 0, TRUE },
    { circle, -6, 0, FALSE },  { circle, 3, 4, TRUE },       { circle, 3.001, 4, FALSE },
    { hole, 0, 0, TRUE },      { hole, -6, 0, FALSE },       { hole, 5, 0, TRUE },
    { hole, 1, 4.8, TRUE },    { hole, 1.5, 4.8, FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_test_message ("case %u: %g, %g", i, cases[i].x, cases[i].y);
      g_assert_cmpint (bf_ring_contains (cases[i].ring, bf_vec2 (cases[i].x, cases[i].y)), ==,
                       cases[i].inside);
    }
}

/* Every arc of a turned ring begins and ends anywhere, so its cuts at top and bottom move. */
static void
test_contains_turned (void)
{
  for (int turn = 0; turn < 360; turn += 7)
    {
      double a = bf_deg_to_rad (turn);
      g_autoptr (BfRing) ring = bf_ring_new ();

      for (guint i = 0; i < G_N_ELEMENTS (bitten); i++)
        bf_ring_add (ring,
                     bf_vec2 (bitten[i].x * cos (a) - bitten[i].y * sin (a),
                              bitten[i].x * sin (a) + bitten[i].y * cos (a)),
                     bitten[i].bulge);
      for (int x = 0; x <= 20; x++)
        {
          /* At 3 above the bitten edge the bite is 8 wide: 6 to 14. */
          BfVec2 p = { x * cos (a) - 3 * sin (a), x * sin (a) + 3 * cos (a) };
          BfVec2 below = { x * cos (a) + sin (a), x * sin (a) - cos (a) };

          if (x != 0 && x != 20 && x != 6 && x != 14)
            g_assert_cmpint (bf_ring_contains (ring, p), ==, x < 6 || x > 14);
          g_assert_false (bf_ring_contains (ring, below));
        }
    }
}

static void
test_flatten (void)
{
  const double sagittas[] = { 1.0, 0.1, 1e-3, 1e-6 };

  for (guint i = 0; i < G_N_ELEMENTS (sagittas); i++)
    {
      g_autoptr (BfRing) circle = make_circle (0, 0, 50, 1);
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      double worst = 0;

      bf_ring_flatten (circle, sagittas[i], points);
      for (guint k = 0; k < points->len; k++)
        {
          BfVec2 a = g_array_index (points, BfVec2, k);
          BfVec2 b = g_array_index (points, BfVec2, (k + 1) % points->len);
          BfVec2 middle = bf_vec2_scale (bf_vec2_add (a, b), 0.5);

          g_assert_cmpfloat_with_epsilon (bf_vec2_length (a), 50, NEAR);
          worst = MAX (worst, 50 - bf_vec2_length (middle));
        }
      g_assert_cmpfloat (worst, <=, sagittas[i] * (1 + 1e-6));
      g_assert_cmpfloat (worst, >, sagittas[i] * 0.5); /* and no finer than it must be */
    }
}

/* The polygon's area comes up to the ring's from inside as the chords shorten. */
static void
test_flatten_area (void)
{
  g_autoptr (BfRing) ring = make_ring (rounded, 8);
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double area;

  bf_ring_flatten (ring, 1e-7, points);
  area = bf_polygon_area ((const BfVec2 *)(gconstpointer)points->data, points->len);
  g_assert_cmpfloat (area, <, bf_ring_area (ring));
  g_assert_cmpfloat_with_epsilon (area, bf_ring_area (ring), 1e-5);
}

static void
test_reverse (void)
{
  g_autoptr (BfRing) ring = make_ring (rounded, 8);
  g_autoptr (BfRing) twice = bf_ring_copy (ring);

  bf_ring_reverse (twice);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (twice), -bf_ring_area (ring), NEAR);
  g_assert_cmpfloat_with_epsilon (bf_ring_length (twice), bf_ring_length (ring), NEAR);
  g_assert_cmpfloat_with_epsilon (bf_ring_vertex (twice, 0)->p.x, 3, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_ring_vertex (twice, 0)->bulge, -QUARTER, NEAR);
  bf_ring_reverse (twice);
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      g_assert_cmpfloat_with_epsilon (bf_ring_vertex (twice, i)->p.x, bf_ring_vertex (ring, i)->p.x,
                                      EXACT);
      g_assert_cmpfloat_with_epsilon (bf_ring_vertex (twice, i)->p.y, bf_ring_vertex (ring, i)->p.y,
                                      EXACT);
      g_assert_cmpfloat_with_epsilon (bf_ring_vertex (twice, i)->bulge,
                                      bf_ring_vertex (ring, i)->bulge, EXACT);
    }
}

/* A copy is its own: changing it leaves the first as it was. */
static void
test_copy (void)
{
  g_autoptr (BfRing) ring = make_ring (slot, 4);
  g_autoptr (BfRing) copy = bf_ring_copy (ring);

  bf_ring_add (copy, bf_vec2 (99, 99), 0);
  g_assert_cmpuint (bf_ring_size (ring), ==, 4);
  g_assert_cmpuint (bf_ring_size (copy), ==, 5);
  g_assert_true (bf_ring_vertex (ring, 5) == bf_ring_vertex (ring, 1));
}

/* Far from the origin the sums must not lose their digits. */
static void
test_far_away (void)
{
  g_autoptr (BfRing) circle = make_circle (9e4, -9e4, 2, 1);

  g_assert_cmpfloat_with_epsilon (bf_ring_area (circle), 4 * G_PI, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_ring_length (circle), 4 * G_PI, 1e-9);
}

static void
test_polygon_area (void)
{
  const BfVec2 square[] = { { 0, 0 }, { 7, 0 }, { 7, 3 }, { 0, 3 } };
  const BfVec2 clockwise[] = { { 0, 0 }, { 0, 3 }, { 7, 3 }, { 7, 0 } };

  g_assert_cmpfloat_with_epsilon (bf_polygon_area (square, 4), 21, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_polygon_area (clockwise, 4), -21, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_polygon_area (square, 2), 0, NEAR);
}

static void
test_box (void)
{
  BfBox box = bf_box_empty ();

  g_assert_cmpfloat (box.min.x, >, box.max.x);
  bf_box_extend (&box, bf_vec2 (3, 4));
  bf_box_extend (&box, bf_vec2 (-1, 9));
  g_assert_cmpfloat_with_epsilon (box.min.x, -1, EXACT);
  g_assert_cmpfloat_with_epsilon (box.min.y, 4, EXACT);
  g_assert_cmpfloat_with_epsilon (box.max.x, 3, EXACT);
  g_assert_cmpfloat_with_epsilon (box.max.y, 9, EXACT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ring/sums", test_sums);
  g_test_add_func ("/ring/circle", test_circle);
  g_test_add_func ("/ring/not-a-circle", test_not_a_circle);
  g_test_add_func ("/ring/arc", test_arc);
  g_test_add_func ("/ring/slight-bulges", test_slight_bulges);
  g_test_add_func ("/ring/contains-like-polygon", test_contains_like_polygon);
  g_test_add_func ("/ring/contains-at-vertices", test_contains_at_vertices);
  g_test_add_func ("/ring/contains-turned", test_contains_turned);
  g_test_add_func ("/ring/flatten", test_flatten);
  g_test_add_func ("/ring/flatten-area", test_flatten_area);
  g_test_add_func ("/ring/reverse", test_reverse);
  g_test_add_func ("/ring/copy", test_copy);
  g_test_add_func ("/ring/far-away", test_far_away);
  g_test_add_func ("/ring/polygon-area", test_polygon_area);
  g_test_add_func ("/ring/box", test_box);
  return g_test_run ();
}
