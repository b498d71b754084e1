/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The sums that are shown, against worked examples, to the digits that their sources print. */

#include "core/units.h"
#include "fold/shown-sums.h"
#include "look-up.h"
#include "make-part.h"

#define INCH 25.4
#define PSI_TO_MPA 6.894757293168e-3

static BfSumNumbers
numbers (double radius_mm, double thickness_mm)
{
  return (BfSumNumbers){ .angle_rad = G_PI_2,
                         .radius_mm = radius_mm,
                         .thickness_mm = thickness_mm,
                         .k = 0.42,
                         .width_mm = 100.0,
                         .lever_mm = NAN,
                         .yield_mpa = NAN,
                         .tensile_mpa = NAN,
                         .elastic_gpa = NAN };
}

/* The first row is a problem set's that quotes Kalpakjian & Schmid (20 gauge, 0.5 in, 40 ksi,
 * 29·10⁶ psi: Rf 0.5306 in, bent to 95.31°); the others are worked out from the same formula. */
static const struct
{
  double radius_mm, thickness_mm, yield_mpa, elastic_gpa, sprung_mm, within_mm;
  const char *ratio, *turned;
} springbacks[] = {
  { 0.5 * INCH, 0.0359 * INCH, 40e3 * PSI_TO_MPA, 29e3 * PSI_TO_MPA, 0.5306 * INCH, 5e-5 * INCH,
    "= 0.9424", "= 95.31" },
  { 3.0, 1.5, 200.0, 210.0, 3.0172, 5e-5, "= 0.9943", "= 90.41" },
  { 3.0, 1.5, 285.0, 200.0, 3.0259, 5e-5, "= 0.9915", "= 90.62" },
  { 3.0, 1.5, 193.0, 70.3, 3.0502, 5e-5, "= 0.9835", "= 91.2" },
  { 6.0, 2.0, 276.0, 68.9, 6.2244, 5e-5, "= 0.964", "= 92.88" },
};

static void
test_springback (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (springbacks); i++)
    {
      BfSumNumbers n = numbers (springbacks[i].radius_mm, springbacks[i].thickness_mm);
      g_auto (BfShownSum) shown = { .words = NULL };

      n.yield_mpa = springbacks[i].yield_mpa;
      n.elastic_gpa = springbacks[i].elastic_gpa;
      g_assert_true (bf_sum_show (BF_SUM_SPRINGBACK, &n, NULL, &shown));
      g_test_message ("%s", shown.words);
      g_assert_cmpfloat_with_epsilon (shown.result, springbacks[i].sprung_mm,
                                      springbacks[i].within_mm);
      g_assert_nonnull (strstr (shown.words, springbacks[i].ratio));
      g_assert_nonnull (strstr (shown.words, springbacks[i].turned));
    }
}

/* What is shown for a bend is what the fold has, for every rule, angle, measure and way. */
static void
test_k_and_setback (void)
{
  static const struct
  {
    BfAllowanceRule rule;
    double angle_deg;
    BfMeasure measure;
    BfBendWay way;
    const char *k, *source;
  } rows[] = {
    /* DIN 6935 at R = t: k 0.65, K 0.325. Handbook, medium, R = t: (0.64 + 1.57) / (π/2) − 1. */
    { BF_ALLOWANCE_DIN_6935, 90.0, BF_MEASURE_OUTSIDE, BF_BEND_WAY_BAR, "K = k / 2 = 0.325",
      "DIN 6935" },
    { BF_ALLOWANCE_HANDBOOK, 60.0, BF_MEASURE_INSIDE, BF_BEND_WAY_BRAKE, "= 0.4069", "Machinery" },
    { BF_ALLOWANCE_K_FACTOR, 120.0, BF_MEASURE_OUTSIDE, BF_BEND_WAY_BAR, "K = 0.42 ± 0.06",
      "rule of thumb" },
    { BF_ALLOWANCE_TRIAL_BEND, 120.0, BF_MEASURE_INSIDE, BF_BEND_WAY_BAR, "K = 0.42 ± 0.02",
      "trial bend" },
    { BF_ALLOWANCE_K_FACTOR, 90.0, BF_MEASURE_INSIDE, BF_BEND_WAY_SCORE, "K = 0.42 ± 0.06",
      "rule of thumb" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, rows[i].angle_deg);
      g_autoptr (BfFold) fold = NULL;
      g_auto (BfShownSum) k = { .words = NULL };
      g_auto (BfShownSum) setback = { .words = NULL };
      g_auto (BfShownSum) allowance = { .words = NULL };
      g_autofree char *deduction = NULL;
      const BfBendResult *bend;
      BfSumNumbers n;

      part->measure = rows[i].measure;
      part->bend.way = rows[i].way;
      part->bend.allowance.rule = rows[i].rule;
      fold = bf_fold (part);
      bend = bf_fold_bend (fold, 0);
      n = bf_sum_numbers (fold, bend);
      g_assert_true (bf_sum_show (BF_SUM_K, &n, NULL, &k));
      g_assert_true (bf_sum_show (BF_SUM_SETBACK, &n, NULL, &setback));
      g_assert_true (bf_sum_show (BF_SUM_ALLOWANCE, &n, NULL, &allowance));
      g_test_message ("%s\n%s\n%s", k.words, setback.words, allowance.words);
      g_assert_cmpfloat_with_epsilon (k.result, bend->k, 1e-12);
      g_assert_cmpfloat_with_epsilon (setback.result, bend->setback_mm, 1e-12);
      g_assert_cmpfloat_with_epsilon (allowance.result, bend->allowance_mm, 1e-12);
      g_assert_nonnull (strstr (k.words, rows[i].k));
      g_assert_nonnull (strstr (k.source, rows[i].source));
      deduction = bf_format_decimal (bend->deduction_mm, 4);
      g_assert_nonnull (strstr (setback.words, deduction));
    }
}

/* Fully plastic moment of a rectangle, as structural texts have it: Y 280, b 100, t 1: 7.0 N·m; Y
 * 235, b 150, t 1.5: 19.83; Y 280, b 200, t 1.5: 31.5, which is 315 N at a lever of 100 mm. */
static void
test_moment_and_push (void)
{
  static const struct
  {
    double stress_mpa, width_mm, thickness_mm, moment_nm, lever_mm, push_n;
  } table[] = {
    { 280.0, 100.0, 1.0, 7.0, 100.0, 70.0 },
    { 235.0, 150.0, 1.5, 19.83, 100.0, 198.3 },
    { 280.0, 200.0, 1.5, 31.5, 100.0, 315.0 },
    { 280.0, 60.0, 1.5, 9.45, 100.0, 94.5 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      BfSumNumbers n = numbers (1.5, table[i].thickness_mm);
      g_auto (BfShownSum) moment = { .words = NULL };
      g_auto (BfShownSum) push = { .words = NULL };

      n.yield_mpa = n.tensile_mpa = table[i].stress_mpa;
      n.width_mm = table[i].width_mm;
      g_assert_true (bf_sum_show (BF_SUM_MOMENT, &n, NULL, &moment));
      g_assert_cmpfloat_with_epsilon (moment.result, table[i].moment_nm, 5e-3);
      g_assert_false (bf_sum_show (BF_SUM_PUSH, &n, NULL, &push));
      n.lever_mm = table[i].lever_mm;
      g_assert_true (bf_sum_show (BF_SUM_PUSH, &n, NULL, &push));
      g_assert_cmpfloat_with_epsilon (push.result, table[i].push_n, 5e-2);
      g_assert_nonnull (strstr (push.words, " N·mm / 100 mm = "));
    }
}

/* Groover's example (from memory): 450 MPa, 44.5 wide, 3.2 thick, a die of 25: 10 909 N. And the
 * simple form beside Oehler's in a forming handbook: 310 MPa, 100, 1, 10: 4123 N. */
static void
test_brake_force (void)
{
  static const struct
  {
    double tensile_mpa, width_mm, thickness_mm, die_mm, force_n;
  } table[] = { { 450.0, 44.5, 3.2, 25.0, 10909.0 }, { 310.0, 100.0, 1.0, 10.0, 4123.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      BfSumNumbers n = numbers (3.0, table[i].thickness_mm);
      BfBrakeAsked brake = { table[i].die_mm, NULL };
      g_auto (BfShownSum) shown = { .words = NULL };

      n.tensile_mpa = table[i].tensile_mpa;
      n.width_mm = table[i].width_mm;
      g_assert_true (bf_sum_show (BF_SUM_BRAKE_FORCE, &n, &brake, &shown));
      g_assert_cmpfloat_with_epsilon (shown.result, table[i].force_n, 0.5);
      g_assert_nonnull (strstr (shown.words, "1.33"));
      g_assert_false (bf_sum_show (BF_SUM_BRAKE_FORCE, &n, NULL, &shown));
    }
  g_assert_cmpfloat_with_epsilon (bf_sum_die_mm (1.5), 12.0, 1e-12);
}

/* A plate of 1000 × 1.5. Half as wide and 2 thick, mild: 0.5 · (2/1.5)² = 0.889. Stainless 304, all
 * of it: (285 + 640)/(210 + 340) = 1.682: more than the brake has. */
static void
test_hand_brake (void)
{
  const BfBrakePlate plate = { 1000.0, 1.5 };
  const BfBrakeAsked brake = { NAN, &plate };
  BfSumNumbers n = numbers (2.0, 2.0);
  g_auto (BfShownSum) mild = { .words = NULL };
  g_auto (BfShownSum) stainless = { .words = NULL };

  n.width_mm = 500.0;
  n.yield_mpa = 210.0;
  n.tensile_mpa = 340.0;
  g_assert_true (bf_sum_show (BF_SUM_HAND_BRAKE, &n, &brake, &mild));
  g_assert_cmpfloat_with_epsilon (mild.result, 0.8889, 5e-5);
  g_assert_cmpstr (mild.words, ==, "(500 · 2² · 275) / (1000 · 1.5² · 275) = 0.8889");
  n = numbers (1.5, 1.5);
  n.width_mm = 1000.0;
  n.yield_mpa = 285.0;
  n.tensile_mpa = 640.0;
  g_assert_true (bf_sum_show (BF_SUM_HAND_BRAKE, &n, &brake, &stainless));
  g_assert_cmpfloat_with_epsilon (stainless.result, 1.6818, 5e-5);
  g_assert_false (bf_sum_show (BF_SUM_HAND_BRAKE, &n, NULL, &mild));
}

/* T = R = 2, 90°, K 0.33, 0.40, 0.44: 4.1783, 4.3982, 4.5239; T 1.5, R 3, 45°, K 0.38: 2.8039. */
static void
test_allowance (void)
{
  static const double table[][5] = { { 2.0, 2.0, 90.0, 0.33, 4.1783 },
                                     { 2.0, 2.0, 90.0, 0.40, 4.3982 },
                                     { 2.0, 2.0, 90.0, 0.44, 4.5239 },
                                     { 3.0, 1.5, 45.0, 0.38, 2.8039 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      BfSumNumbers n = numbers (table[i][0], table[i][1]);
      g_auto (BfShownSum) shown = { .words = NULL };

      n.angle_rad = bf_deg_to_rad (table[i][2]);
      n.k = table[i][3];
      g_assert_true (bf_sum_show (BF_SUM_ALLOWANCE, &n, NULL, &shown));
      g_assert_cmpfloat_with_epsilon (shown.result, table[i][4], 5e-5);
    }
}

/* The sums give what the fold has, for a bend of each way; every one has a name and a source. */
static void
test_as_folded (void)
{
  for (BfBendWay way = BF_BEND_WAY_BRAKE; way <= BF_BEND_WAY_SCORE; way++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      const BfBendResult *bend;
      BfSumNumbers n;

      part->bend.way = way;
      add_flange (part, "front", 0, 40.0, 90.0);
      fold = bf_fold (part);
      bend = find_bend (fold, "front");
      n = bf_sum_numbers (fold, bend);
      for (BfSumKind kind = BF_SUM_K; kind <= BF_SUM_PUSH; kind++)
        {
          const double wanted[] = { bend->k, bend->allowance_mm, bend->setback_mm,
                                    NAN,     bend->moment_nm,    bend->force_n };
          g_auto (BfShownSum) shown = { .words = NULL };
          gboolean known = bf_sum_show (kind, &n, NULL, &shown);

          g_assert_cmpint (known, ==, kind != BF_SUM_PUSH || way != BF_BEND_WAY_BRAKE);
          if (known && kind != BF_SUM_SPRINGBACK)
            g_assert_cmpfloat_with_epsilon (shown.result, wanted[kind], 1e-9);
          if (known)
            g_assert_cmpuint (strlen (bf_sum_name (kind)) * strlen (shown.source), >, 0);
        }
    }
}

/* Of a metal that nobody knows no force is worked out. */
static void
test_unknown_metal (void)
{
  BfSumNumbers n = numbers (1.5, 1.5);
  BfShownSum shown = { .words = NULL };

  for (BfSumKind kind = BF_SUM_SPRINGBACK; kind <= BF_SUM_HAND_BRAKE; kind++)
    g_assert_false (bf_sum_show (kind, &n, NULL, &shown));
  g_assert_null (shown.words);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/shown-sums/springback", test_springback);
  g_test_add_func ("/shown-sums/moment-and-push", test_moment_and_push);
  g_test_add_func ("/shown-sums/brake-force", test_brake_force);
  g_test_add_func ("/shown-sums/hand-brake", test_hand_brake);
  g_test_add_func ("/shown-sums/allowance", test_allowance);
  g_test_add_func ("/shown-sums/k-and-setback", test_k_and_setback);
  g_test_add_func ("/shown-sums/as-folded", test_as_folded);
  g_test_add_func ("/shown-sums/unknown-metal", test_unknown_metal);
  return g_test_run ();
}
