/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "make/drill-list.h"

#include "make-any.h"
#include "make-part.h"

static void
add_hole (BfPart *part, double x, double y, double diameter_mm)
{
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

  hole->at_mm = bf_vec2 (x, y);
  hole->diameter_mm = diameter_mm;
  g_ptr_array_add (part->openings, hole);
}

static const BfDrilled *
nth (const GArray *list, guint i)
{
  return &g_array_index (list, BfDrilled, i);
}

/* Three holes and a large one in a tray with four corner reliefs of 6.5 mm: by drill, then from the
 * left, then from below. */
static void
test_order (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) list = NULL;

  add_hole (part, 150.0, 60.0, 5.0);
  add_hole (part, 50.0, 60.0, 5.0);
  add_hole (part, 50.0, 30.0, 5.0);
  add_hole (part, 100.0, 60.0, 30.0);
  fold = bf_fold (part);
  list = bf_drill_list (fold);
  g_assert_cmpuint (list->len, ==, 7);
  g_assert_cmpfloat_with_epsilon (nth (list, 0)->at.y, 30.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (nth (list, 1)->at.y, 60.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (nth (list, 1)->at.x, 50.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (nth (list, 2)->at.x, 150.0, 1e-9);
  g_assert_cmpstr (nth (list, 2)->drill, ==, "5 mm");
  for (guint i = 3; i < 7; i++)
    g_assert_cmpstr (nth (list, i)->drill, ==, "6.5 mm");
  g_assert_cmpfloat (nth (list, 3)->at.x, <, nth (list, 6)->at.x);
}

static void
test_machine_drills_nothing (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) list = NULL;

  add_hole (part, 50.0, 60.0, 5.0);
  part->cutting.by = BF_CUTTING_SERVICE;
  fold = bf_fold (part);
  list = bf_drill_list (fold);
  g_assert_cmpuint (list->len, ==, 0);
}

static void
test_largest (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 100.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  g_assert_true (bf_is_drilled (fold, BF_LARGEST_DRILL_MM / 2.0));
  g_assert_false (bf_is_drilled (fold, BF_LARGEST_DRILL_MM / 2.0 + 0.01));
}

static BfPart *
part_with (BfOpeningShape shape, double diameter_mm, double length_mm, double width_mm)
{
  BfPart *part = make_rectangle (200.0, 120.0);
  BfOpening *opening = bf_opening_new ("base", shape);

  opening->at_mm = bf_vec2 (60.0, 60.0);
  opening->diameter_mm = diameter_mm;
  opening->length_mm = length_mm;
  opening->width_mm = width_mm;
  g_ptr_array_add (part->openings, opening);
  return part;
}

/* Where a drill makes the ends of an opening: plain geometry of the shape, small drill first. */
static const struct
{
  const char *what;
  BfOpeningShape shape;
  double diameter_mm, length_mm, width_mm;
  guint n;
  double x_mm[2], drill_mm[2];
} ends[] = {
  { "slot", BF_OPENING_SLOT, NAN, 40.0, 8.0, 2, { 44.0, 76.0 }, { 8.0, 8.0 } },
  { "slot as long as wide", BF_OPENING_SLOT, NAN, 8.001, 8.0, 2, { 59.9995, 60.0005 }, { 8, 8 } },
  { "slot wider than a drill", BF_OPENING_SLOT, NAN, 40.0, 13.1, 0, { 0 }, { 0 } },
  { "keyhole", BF_OPENING_KEYHOLE, 10.0, 12.0, 5.0, 2, { 69.5, 60.0 }, { 5.0, 10.0 } },
  { "keyhole, its round too large", BF_OPENING_KEYHOLE, 20.0, 24.0, 6.0, 1, { 81.0 }, { 6.0 } },
  { "rectangle", BF_OPENING_RECTANGLE, NAN, 40.0, 20.0, 0, { 0 }, { 0 } },
};

static void
test_ends (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
    {
      g_autoptr (BfPart) part =
          part_with (ends[i].shape, ends[i].diameter_mm, ends[i].length_mm, ends[i].width_mm);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) list = bf_drill_list (fold);

      g_test_message ("%s", ends[i].what);
      g_assert_cmpuint (list->len, ==, ends[i].n);
      for (guint k = 0; k < list->len; k++)
        {
          g_assert_cmpfloat_with_epsilon (nth (list, k)->at.x, ends[i].x_mm[k], 1e-6);
          g_assert_cmpfloat_with_epsilon (nth (list, k)->at.y, 60.0, 1e-6);
          g_assert_cmpfloat_with_epsilon (nth (list, k)->diameter_mm, ends[i].drill_mm[k], 1e-6);
        }
    }
}

/* A large round hole has a middle, and no drill; the large end of a keyhole has neither. */
static void
test_centres (void)
{
  g_autoptr (BfPart) part = part_with (BF_OPENING_KEYHOLE, 20.0, 24.0, 6.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) centres = NULL;

  add_hole (part, 150.0, 60.0, 30.0);
  fold = bf_fold (part);
  centres = bf_centre_list (fold);
  g_assert_cmpuint (centres->len, ==, 2);
  for (guint i = 0; i < 2; i++)
    g_assert_true (nth (centres, i)->by_drill == (nth (centres, i)->diameter_mm < 13.0));
}

/* ---- of all kinds of parts ---------------------------------------------------------------- */

/* How many holes of the list stand there with that diameter. */
static guint
count_at (const GArray *list, BfVec2 at, double diameter_mm)
{
  guint n = 0;

  for (guint i = 0; i < list->len; i++)
    n += bf_vec2_distance (nth (list, i)->at, at) < 1e-6 &&
                 fabs (nth (list, i)->diameter_mm - diameter_mm) < 1e-6
             ? 1
             : 0;
  return n;
}

/* Holes in the base of a random part, well apart, some too large for a chuck. */
static void
add_random_holes (BfPart *part, guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 1000);
  double across = 0.0;
  guint n = 1 + seed % 3;

  for (guint i = 0; i < bf_part_n_points (part); i++)
    across = MAX (across, bf_part_point (part, i).x);
  for (guint i = 0; i < n; i++)
    add_hole (part, across * (0.3 + 0.15 * i), 40.0, g_rand_double_range (rand, 2.0, 18.0));
}

/* Every relief that is drilled is in the list once, and so is every round opening that is left in
 * the blank whole and that a chuck holds a drill for; nothing else is. */
static void
test_all_and_once (void)
{
  guint reliefs = 0, openings = 0;

  for (guint seed = 0; seed < 80; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) list = NULL;
      guint wanted = 0;

      part->cutting.by = seed % 2 == 0 ? BF_CUTTING_DISC : BF_CUTTING_SNIPS;
      add_random_holes (part, seed);
      fold = bf_fold (part);
      if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      list = bf_drill_list (fold);
      for (guint i = 0; i < fold->reliefs->len; i++)
        if (bf_fold_relief (fold, i)->drill != NULL)
          {
            const BfRelief *relief = bf_fold_relief (fold, i);

            g_assert_cmpuint (count_at (list, relief->at, relief->diameter_mm), ==, 1);
            reliefs++;
            wanted++;
          }
      for (guint i = fold->blank.n_outer; i < fold->blank.rings->len; i++)
        {
          BfVec2 at;
          double radius;

          if (!bf_ring_is_circle (bf_blank_ring (&fold->blank, i), &at, &radius))
            continue;
          g_assert_cmpuint (count_at (list, at, 2.0 * radius), ==, radius <= 6.5 ? 1 : 0);
          openings += radius <= 6.5 ? 1 : 0;
        }
      g_assert_cmpuint (list->len, >=, wanted);
    }
  g_assert_cmpuint (reliefs, >, 100);
  g_assert_cmpuint (openings, >, 20);
}

/* Drills are changed as seldom as can be: sizes only grow. */
static void
test_sizes_grow (void)
{
  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) list = NULL;

      part->cutting.by = BF_CUTTING_DISC;
      add_random_holes (part, seed);
      fold = bf_fold (part);
      list = bf_drill_list (fold);
      for (guint i = 1; i < list->len; i++)
        g_assert_cmpfloat (nth (list, i)->diameter_mm, >=, nth (list, i - 1)->diameter_mm - 1e-6);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/drill-list/order", test_order);
  g_test_add_func ("/make/drill-list/machine-drills-nothing", test_machine_drills_nothing);
  g_test_add_func ("/make/drill-list/largest", test_largest);
  g_test_add_func ("/make/drill-list/ends", test_ends);
  g_test_add_func ("/make/drill-list/centres", test_centres);
  g_test_add_func ("/make/drill-list/all-and-once", test_all_and_once);
  g_test_add_func ("/make/drill-list/sizes-grow", test_sizes_grow);
  return g_test_run ();
}
