/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/point-labels.h"

#define CAP_MM 1.9

static const BfBox view = { { 0.0, 0.0 }, { 70.0, 60.0 } };

/* Points on a ring about the view's middle, nearer to each other than words are wide. */
static BfVec2
on_ring (guint i, guint n, double radius_mm)
{
  double angle = 2.0 * G_PI * i / n;

  return bf_vec2 (35.0 + radius_mm * cos (angle), 30.0 + radius_mm * sin (angle));
}

static BfPointLabels *
ring_of_labels (guint n, double radius_mm)
{
  BfPointLabels *labels = bf_point_labels_new (&view, CAP_MM);

  for (guint i = 0; i < n; i++)
    bf_point_labels_add (labels, on_ring (i, n, radius_mm), "132.5 / 192.5");
  return labels;
}

static void
assert_apart (const BfPlate *a, const BfPlate *b)
{
  g_assert_true (fabs (a->centre.x - b->centre.x) >= (a->width + b->width) / 2.0 - 1e-9 ||
                 fabs (a->centre.y - b->centre.y) >= (a->height + b->height) / 2.0 - 1e-9);
}

static void
assert_in_view (const BfPlate *plate)
{
  g_assert_cmpfloat (plate->centre.x - plate->width / 2.0, >=, view.min.x);
  g_assert_cmpfloat (plate->centre.x + plate->width / 2.0, <=, view.max.x);
  g_assert_cmpfloat (plate->centre.y - plate->height / 2.0, >=, view.min.y);
  g_assert_cmpfloat (plate->centre.y + plate->height / 2.0, <=, view.max.y);
}

static const struct
{
  guint n;
  double radius_mm;
} rings[] = { { 1, 0.0 }, { 2, 0.6 }, { 4, 3.0 }, { 6, 6.0 }, { 8, 10.0 }, { 10, 14.0 } };

/* However near the points are: no words on others, none cut off by the view. */
static void
test_crowd (void)
{
  for (guint r = 0; r < G_N_ELEMENTS (rings); r++)
    {
      g_autoptr (BfPointLabels) labels = ring_of_labels (rings[r].n, rings[r].radius_mm);

      g_test_message ("%u points %g mm from the middle", rings[r].n, rings[r].radius_mm);
      g_assert_cmpuint (bf_point_labels_place (labels), ==, 0);
      g_assert_cmpuint (bf_point_labels_count (labels), ==, rings[r].n);
      for (guint i = 0; i < rings[r].n; i++)
        {
          const BfPlate *plate = bf_point_labels_plate (labels, i);

          assert_in_view (plate);
          for (guint k = 0; k < i; k++)
            assert_apart (plate, bf_point_labels_plate (labels, k));
        }
    }
}

/* A point alone has its words right beside it, and has them once. */
static void
test_beside (void)
{
  g_autoptr (BfPointLabels) labels = bf_point_labels_new (&view, CAP_MM);
  const BfPlate *plate;

  bf_point_labels_add (labels, bf_vec2 (20.0, 30.0), "12 / 34");
  bf_point_labels_add (labels, bf_vec2 (20.0, 30.0), "12 / 34");
  g_assert_cmpuint (bf_point_labels_place (labels), ==, 0);
  g_assert_cmpuint (bf_point_labels_count (labels), ==, 1);
  plate = bf_point_labels_plate (labels, 0);
  g_assert_cmpfloat (plate->centre.x - plate->width / 2.0, >, 20.0);
  g_assert_cmpfloat (plate->centre.x - plate->width / 2.0, <, 22.0);
}

/* Words keep off a line, and what finds no place is counted and still there. */
static void
test_lines (void)
{
  g_autoptr (BfPointLabels) labels = bf_point_labels_new (&view, CAP_MM);
  g_autoptr (BfPointLabels) full = bf_point_labels_new (&view, CAP_MM);

  bf_point_labels_avoid (labels, bf_vec2 (20.0, 30.0), bf_vec2 (40.0, 30.0));
  bf_point_labels_add (labels, bf_vec2 (20.0, 30.0), "12 / 34");
  g_assert_cmpuint (bf_point_labels_place (labels), ==, 0);
  g_assert_cmpfloat (bf_point_labels_plate (labels, 0)->centre.x, <, 20.0);
  for (double y = 0.0; y <= 60.0; y += 1.0)
    bf_point_labels_avoid (full, bf_vec2 (0.0, y), bf_vec2 (70.0, y));
  bf_point_labels_add (full, bf_vec2 (20.0, 30.0), "12 / 34");
  g_assert_cmpuint (bf_point_labels_place (full), ==, 1);
  g_assert_cmpuint (bf_point_labels_count (full), ==, 1);
}

/* Where lines leave no place, words stand over lines, not over each other, and even where there is
 * no place at all they are not cut off: points at the view's right edge, and far too many. */
static void
test_no_place (void)
{
  for (guint n = 2; n <= 200; n *= 10)
    {
      g_autoptr (BfPointLabels) labels = bf_point_labels_new (&view, CAP_MM);

      for (double y = 0.0; y <= 60.0; y += 1.0)
        bf_point_labels_avoid (labels, bf_vec2 (0.0, y), bf_vec2 (70.0, y));
      for (guint i = 0; i < n; i++)
        bf_point_labels_add (labels, bf_vec2 (69.0, 30.0 + 0.1 * i), "132.5 / 192.5");
      g_assert_cmpuint (bf_point_labels_place (labels), ==, n);
      for (guint i = 0; i < n; i++)
        {
          assert_in_view (bf_point_labels_plate (labels, i));
          for (guint k = 0; k < i && n == 2; k++)
            assert_apart (bf_point_labels_plate (labels, i), bf_point_labels_plate (labels, k));
        }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paint/point-labels/crowd", test_crowd);
  g_test_add_func ("/paint/point-labels/beside", test_beside);
  g_test_add_func ("/paint/point-labels/lines", test_lines);
  g_test_add_func ("/paint/point-labels/no-place", test_no_place);
  return g_test_run ();
}
