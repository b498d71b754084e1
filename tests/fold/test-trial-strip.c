/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "core/defaults.h"
#include "core/edit.h"
#include "fold/fold.h"
#include "fold/trial-strip.h"

#include "make-part.h"

/* The strip is as long and wide as is said, its bend line lies across its middle. */
static void
check_strip (const BfPart *part, BfUnits units)
{
  g_autoptr (BfPart) strip = bf_trial_strip_part (part, units);
  g_autoptr (BfFold) fold = bf_fold (strip);
  double length_mm = units == BF_UNITS_IN ? 101.6 : 100.0;
  const BfBendResult *bend = bf_fold_bend (fold, 0);

  g_assert_cmpuint (fold->bends->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (fold->blank.box.max.x - fold->blank.box.min.x, length_mm, 1e-6);
  g_assert_cmpfloat_with_epsilon (bend->line[0].x, length_mm / 2.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (bend->line[1].x, length_mm / 2.0, 1e-6);
  /* A slotted strip of thick metal may want a longer lever than its leg; it can be drawn. */
  if (bend->way != BF_BEND_WAY_SLOTS)
    g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
}

static void
test_sizes (void)
{
  static const BfBendWay ways[] = { BF_BEND_WAY_BRAKE, BF_BEND_WAY_BAR, BF_BEND_WAY_SLOTS };
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    for (double t = 0.8; t < 3.1; t += 0.7)
      {
        g_autoptr (BfPart) way = bf_edit_bend_way (tray, ways[i]);
        g_autoptr (BfPart) part = bf_edit_thickness (way, t);

        g_test_message ("way %u, %.1f mm", i, t);
        check_strip (part, BF_UNITS_MM);
        check_strip (part, BF_UNITS_IN);
      }
}

static void
test_rules (void)
{
  static const BfAllowance rules[] = {
    { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.33 },
    { .rule = BF_ALLOWANCE_DIN_6935, .k = NAN },
    { .rule = BF_ALLOWANCE_HANDBOOK, .k = NAN, .group = BF_HANDBOOK_HARD },
  };
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);

  for (guint i = 0; i < G_N_ELEMENTS (rules); i++)
    {
      g_autoptr (BfPart) part = bf_edit_allowance (tray, &rules[i]);
      g_autoptr (BfPart) inside = bf_edit_measure (part, BF_MEASURE_INSIDE);

      check_strip (part, BF_UNITS_MM);
      check_strip (inside, BF_UNITS_MM);
    }
}

/* As wide as one slot like the part's, a bridge on each side of it. */
static void
test_slotted (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) slotted = bf_edit_bend_way (tray, BF_BEND_WAY_SLOTS);
  g_autoptr (BfPart) given = bf_edit_slots (slotted, 50.0, 12.0);
  g_autoptr (BfPart) strip = bf_trial_strip_part (given, BF_UNITS_MM);
  g_autoptr (BfFold) fold = bf_fold (strip);
  const BfBendSlot *slot = bf_bend_slot (bf_fold_bend (fold, 0), 0);
  double width_mm = fold->blank.box.max.y - fold->blank.box.min.y;

  g_assert_cmpuint (bf_fold_bend (fold, 0)->slots->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (slot->length_mm, 50.0, 1e-6);
  g_assert_cmpfloat (width_mm, >=, slot->near_mm + 24.0);
  g_assert_cmpfloat (width_mm, <, slot->near_mm + 25.0 + 1e-6);
}

/* Where the part's own are long: 70 mm on the near face, so that strips go on a page. */
static void
test_long_slots (void)
{
  g_autoptr (BfPart) tray = make_tray (600.0, 300.0, 60.0, 90.0);
  g_autoptr (BfPart) slotted = bf_edit_bend_way (tray, BF_BEND_WAY_SLOTS);
  g_autoptr (BfPart) strip = NULL;
  g_autoptr (BfFold) fold = NULL;

  slotted->cutting.disc_diameter_mm = 230.0;
  strip = bf_trial_strip_part (slotted, BF_UNITS_MM);
  fold = bf_fold (strip);
  g_assert_cmpuint (bf_fold_bend (fold, 0)->slots->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (bf_bend_slot (bf_fold_bend (fold, 0), 0)->near_mm, 70.0, 1e-6);
}

/* What is left of the shape would be printed: there is nothing. */
static void
test_nothing_else (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);
  g_autoptr (BfPart) strip = NULL;
  g_autoptr (BfFold) fold = NULL;

  hole->at_mm = bf_vec2 (30.0, 30.0);
  hole->diameter_mm = 8.0;
  g_ptr_array_add (tray->openings, hole);
  strip = bf_trial_strip_part (tray, BF_UNITS_MM);
  fold = bf_fold (strip);
  g_assert_cmpuint (fold->blank.rings->len, ==, 1);
  g_assert_cmpuint (fold->reliefs->len, ==, 0);
  g_assert_cmpuint (bf_part_n_flanges (tray), ==, 4);
}

/* The legs that folding gives, measured without a fault, give back the K that was folded with. */
static void
test_round_trip (void)
{
  for (double k = 0.3; k < 0.501; k += 0.05)
    {
      g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
      BfAllowance own = { .rule = BF_ALLOWANCE_K_FACTOR, .k = k };
      g_autoptr (BfPart) part = bf_edit_allowance (tray, &own);
      g_autoptr (BfPart) strip = bf_trial_strip_part (part, BF_UNITS_MM);
      g_autoptr (GArray) strips = g_array_new (FALSE, FALSE, sizeof (BfTrialStrip));
      double leg = bf_part_flange (strip, 0)->length_mm;
      BfTrialStrip measured = { 100.0, { leg, leg }, 90.0 };
      BfTrialRecord trial = { .thickness_mm = 1.5,
                              .radius_mm = 1.5,
                              .measured_to_mm = BF_TRIAL_MEASURED_TO_MM,
                              .strips = strips };
      BfTrialK found;

      g_array_append_val (strips, measured);
      g_array_append_val (strips, measured);
      g_assert_true (bf_trial_record_k (&trial, &found, NULL));
      g_assert_cmpfloat_with_epsilon (found.k, k, 1e-6);
      /* Two strips: one strip's 0.2 / (θ t) by √2. */
      g_assert_cmpfloat_with_epsilon (found.k_error, 0.2 / (G_PI_2 * 1.5) / sqrt (2.0), 1e-9);
      g_array_index (strips, BfTrialStrip, 1).legs_mm[0] = -1.0;
      g_assert_false (bf_trial_record_k (&trial, &found, NULL));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/trial-strip/long-slots", test_long_slots);
  g_test_add_func ("/fold/trial-strip/sizes", test_sizes);
  g_test_add_func ("/fold/trial-strip/rules", test_rules);
  g_test_add_func ("/fold/trial-strip/slotted", test_slotted);
  g_test_add_func ("/fold/trial-strip/nothing-else", test_nothing_else);
  g_test_add_func ("/fold/trial-strip/round-trip", test_round_trip);
  return g_test_run ();
}
