/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "make/drill-list.h"

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

/* Two holes and a large one in a tray with four corner reliefs of 6.5 mm. */
static void
test_order (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) list = NULL;

  add_hole (part, 150.0, 60.0, 5.0);
  add_hole (part, 50.0, 60.0, 5.0);
  add_hole (part, 100.0, 60.0, 30.0);
  fold = bf_fold (part);
  list = bf_drill_list (fold);
  g_assert_cmpuint (list->len, ==, 6);
  g_assert_cmpfloat_with_epsilon (nth (list, 0)->at.x, 50.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (nth (list, 1)->at.x, 150.0, 1e-9);
  g_assert_null (nth (list, 1)->drill);
  for (guint i = 2; i < 6; i++)
    g_assert_cmpstr (nth (list, i)->drill, ==, "6.5 mm");
  g_assert_cmpfloat (nth (list, 2)->at.x, <, nth (list, 5)->at.x);
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

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/drill-list/order", test_order);
  g_test_add_func ("/make/drill-list/machine-drills-nothing", test_machine_drills_nothing);
  g_test_add_func ("/make/drill-list/largest", test_largest);
  return g_test_run ();
}
