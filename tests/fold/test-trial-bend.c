/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "fold/allowance.h"
#include "fold/trial-bend.h"

#define N_TRIALS 10000

/* Kalpakjian & Schmid's allowance turned round, by hand: T = R = 2 mm, 90°, K 0.33 has BA 4.1783
 * and deduction 3.8217, so legs of 50 and 40 outside come from a strip of 86.1783. */
static void
test_by_hand (void)
{
  BfTrialBend strip = { 86.1783, { 50.0, 40.0 }, G_PI_2, 2.0, 2.0, 0.1 };
  BfTrialK k;

  g_assert_true (bf_trial_bend_k (&strip, &k, NULL));
  g_assert_cmpfloat_with_epsilon (k.k, 0.33, 1e-4);
  /* Three lengths, each ±0.1 evenly: they deviate by 0.1 together; twice that over θ t. */
  g_assert_cmpfloat_with_epsilon (k.k_error, 0.2 / (G_PI_2 * 2.0), 1e-9);
}

static void
test_refused (void)
{
  static const struct
  {
    BfTrialBend strip;
    BfTrialError code;
  } rows[] = {
    { { NAN, { 50, 40 }, G_PI_2, 2, 2, 0.1 }, BF_TRIAL_ERROR_NO_SIZE },
    { { 86, { 0, 40 }, G_PI_2, 2, 2, 0.1 }, BF_TRIAL_ERROR_NO_SIZE },
    { { 86, { 50, 40 }, 0, 2, 2, 0.1 }, BF_TRIAL_ERROR_NO_SIZE },
    { { 86, { 50, 40 }, G_PI_2, -1, 2, 0.1 }, BF_TRIAL_ERROR_NO_SIZE },
    { { 80, { 50, 40 }, G_PI_2, 2, 2, 0.1 }, BF_TRIAL_ERROR_NO_FIT },
    { { 90, { 50, 40 }, G_PI_2, 2, 2, 0.1 }, BF_TRIAL_ERROR_NO_FIT },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      BfTrialK k = { 7.0, 7.0 };

      g_test_message ("row %u", i);
      g_assert_false (bf_trial_bend_k (&rows[i].strip, &k, &error));
      g_assert_error (error, BF_TRIAL_ERROR, (int)rows[i].code);
      g_assert_cmpfloat_with_epsilon (k.k, 7.0, 1e-12);
    }
}

/* A strip bent with that K, measured with a rule. */
static BfTrialBend
measure (GRand *rand, double k, double to_mm)
{
  BfTrialBend strip = { .angle_rad = g_rand_double_range (rand, 1.0, 2.2),
                        .thickness_mm = g_rand_double_range (rand, 0.9, 3.0),
                        .measured_to_mm = to_mm };
  double setback;

  strip.radius_mm = strip.thickness_mm * g_rand_double_range (rand, 0.0, 3.0);
  setback = (strip.radius_mm + strip.thickness_mm) * bf_setback_factor (strip.angle_rad);
  strip.legs_mm[0] = g_rand_double_range (rand, 40.0, 80.0);
  strip.legs_mm[1] = g_rand_double_range (rand, 40.0, 80.0);
  strip.length_mm = strip.legs_mm[0] + strip.legs_mm[1] - 2.0 * setback +
                    bf_bend_allowance_mm (strip.angle_rad, strip.radius_mm, strip.thickness_mm, k);
  strip.length_mm += g_rand_double_range (rand, -to_mm, to_mm);
  strip.legs_mm[0] += g_rand_double_range (rand, -to_mm, to_mm);
  strip.legs_mm[1] += g_rand_double_range (rand, -to_mm, to_mm);
  return strip;
}

/* Of 10,000 seeded trials the true K lies within what was stated in at least 95 of 100. */
static void
test_covers (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (2);
  guint covered = 0;

  for (guint i = 0; i < N_TRIALS; i++)
    {
      double k = g_rand_double_range (rand, 0.3, 0.5);
      BfTrialBend strip = measure (rand, k, 0.1);
      BfTrialK found;

      g_assert_true (bf_trial_bend_k (&strip, &found, NULL));
      covered += fabs (found.k - k) <= found.k_error;
    }
  g_test_message ("%u of %u", covered, N_TRIALS);
  g_assert_cmpuint (covered, >=, N_TRIALS * 95 / 100);
  g_assert_cmpuint (covered, <, N_TRIALS * 99 / 100); /* not by being vague */
}

static void
test_mean_covers (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (3);
  guint covered = 0;

  for (guint i = 0; i < N_TRIALS; i++)
    {
      double k = g_rand_double_range (rand, 0.3, 0.5), largest = 0.0;
      BfTrialK strips[4], mean;

      for (guint j = 0; j < G_N_ELEMENTS (strips); j++)
        {
          BfTrialBend strip = measure (rand, k, 0.1);

          g_assert_true (bf_trial_bend_k (&strip, &strips[j], NULL));
          largest = MAX (largest, strips[j].k_error);
        }
      mean = bf_trial_bends_mean (strips, G_N_ELEMENTS (strips));
      covered += fabs (mean.k - k) <= mean.k_error;
    }
  g_test_message ("%u of %u", covered, N_TRIALS);
  g_assert_cmpuint (covered, >=, N_TRIALS * 95 / 100);
}

/* Strips that lie apart by more than was measured wrong are no surer than they scatter: by hand,
 * Student's two-sided 95 % points (standard table) times the deviation over √n. */
static void
test_scatter (void)
{
  static const double student[] = { 0,     0,     0,     4.303, 3.182, 2.776, 2.571,
                                    2.447, 2.365, 2.306, 2.262, 2.228, 2.201 };

  for (guint n = 3; n < G_N_ELEMENTS (student); n++)
    {
      BfTrialK strips[12], mean;
      double squares = 0.0;

      for (guint i = 0; i < n; i++)
        {
          strips[i] = (BfTrialK){ 0.42 + 0.01 * (i - (n - 1) / 2.0), 0.001 };
          squares += 1e-4 * (i - (n - 1) / 2.0) * (i - (n - 1) / 2.0);
        }
      mean = bf_trial_bends_mean (strips, n);
      g_assert_cmpfloat_with_epsilon (mean.k, 0.42, 1e-12);
      g_assert_cmpfloat_with_epsilon (mean.k_error, student[n] * sqrt (squares / (n - 1) / n),
                                      1e-9);
    }
}

/* Strips that agree are as sure as the measuring, and surer together: √n times. Two scatter by
 * chance, and are judged by the measuring alone. */
static void
test_agreeing (void)
{
  for (guint n = 1; n <= 9; n++)
    {
      BfTrialK strips[9], mean;

      for (guint i = 0; i < n; i++)
        strips[i] = (BfTrialK){ n == 2 && i == 1 ? 0.44 : 0.40, 0.03 };
      mean = bf_trial_bends_mean (strips, n);
      g_assert_cmpfloat_with_epsilon (mean.k, n == 2 ? 0.42 : 0.40, 1e-12);
      g_assert_cmpfloat_with_epsilon (mean.k_error, 0.03 / sqrt (n), 1e-12);
    }
}

static void
test_mean_of_one (void)
{
  BfTrialK one = { 0.41, 0.03 }, mean = bf_trial_bends_mean (&one, 1);

  g_assert_cmpfloat_with_epsilon (mean.k, 0.41, 1e-12);
  g_assert_cmpfloat_with_epsilon (mean.k_error, 0.03, 1e-12);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/trial-bend/by-hand", test_by_hand);
  g_test_add_func ("/fold/trial-bend/refused", test_refused);
  g_test_add_func ("/fold/trial-bend/covers", test_covers);
  g_test_add_func ("/fold/trial-bend/mean-covers", test_mean_covers);
  g_test_add_func ("/fold/trial-bend/mean-of-one", test_mean_of_one);
  g_test_add_func ("/fold/trial-bend/scatter", test_scatter);
  g_test_add_func ("/fold/trial-bend/agreeing", test_agreeing);
  return g_test_run ();
}
