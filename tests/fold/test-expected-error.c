/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "fold/allowance.h"
#include "fold/expected-error.h"

#include "make-part.h"

#define N_MAKINGS 10000

/* An error that is within ± by_mm in 19 of 20 makings: the sum of twelve even ones is as good as
 * normal. */
static double
draw (GRand *rand, double by_mm)
{
  double sum = 0.0;

  for (int i = 0; i < 12; i++)
    sum += g_rand_double (rand) - 0.5;
  return sum * by_mm / 1.96;
}

/* How far off a size comes out that reaches over those bends and to so many cut edges. A bend whose
 * metal takes another K than was thought uses up more of the flat or less: half of it on each side
 * of the line. At a score it is the skin that bends. */
static double
make_once (GRand *rand, const BfFold *fold, const guint *bends, guint n_bends, guint n_cut_edges)
{
  double off = 0.0;

  for (guint i = 0; i < n_bends; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, bends[i]);
      gboolean scored = bend->way == BF_BEND_WAY_SCORE;
      double t = scored ? bend->score_left_mm : fold->part->metal.thickness_mm;
      double k = bend->k + draw (rand, bf_error_of_source (fold, bends[i], BF_ERROR_ALLOWANCE));

      off += draw (rand, bf_error_of_source (fold, bends[i], BF_ERROR_MARKING));
      off += draw (rand, bf_error_of_source (fold, bends[i], BF_ERROR_BENDING));
      off += (bf_bend_allowance_mm (bend->angle_rad, bend->inside_radius_mm, t, k) -
              bend->allowance_mm) /
             2.0;
    }
  for (guint i = 0; i < n_cut_edges; i++)
    off += draw (rand, bf_error_of_source (fold, 0, BF_ERROR_MARKING)) +
           draw (rand, bf_error_of_source (fold, 0, BF_ERROR_CUTTING));
  return off;
}

/* Of 10,000 makings drawn from the stated sources at least 9 in 10 are within what was stated.
 * Thick metal, where K counts for most, and every tool and way. */
static void
test_covers (void)
{
  static const struct
  {
    guint n_bends, n_cut_edges;
    BfCuttingWay by;
    BfBendWay way;
    double thickness_mm, angle_deg;
  } rows[] = {
    { 1, 1, BF_CUTTING_DISC, BF_BEND_WAY_BAR, 1.5, 90 },
    { 2, 0, BF_CUTTING_DISC, BF_BEND_WAY_BAR, 1.5, 90 },
    { 0, 2, BF_CUTTING_DISC, BF_BEND_WAY_BAR, 1.5, 90 },
    { 1, 1, BF_CUTTING_SNIPS, BF_BEND_WAY_BAR, 0.8, 60 },
    { 2, 0, BF_CUTTING_TABLE, BF_BEND_WAY_SLOTS, 2.0, 90 },
    { 2, 0, BF_CUTTING_SERVICE, BF_BEND_WAY_BRAKE, 6.0, 90 },
    { 1, 1, BF_CUTTING_SERVICE, BF_BEND_WAY_BRAKE, 6.0, 130 },
    { 2, 0, BF_CUTTING_TABLE, BF_BEND_WAY_SCORE, 3.0, 90 },
  };
  g_autoptr (GRand) rand = g_rand_new_with_seed (4);
  const guint bends[] = { 0, 2 };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (300.0, 200.0, 60.0, rows[i].angle_deg);
      g_autoptr (BfFold) fold = NULL;
      BfExpectedError error;
      guint covered = 0;

      part->cutting.by = rows[i].by;
      part->bend.way = rows[i].way;
      part->metal.thickness_mm = rows[i].thickness_mm;
      fold = bf_fold (part);
      bf_expected_error (fold, bends, rows[i].n_bends, rows[i].n_cut_edges, &error);
      for (guint k = 0; k < N_MAKINGS; k++)
        covered += fabs (make_once (rand, fold, bends, rows[i].n_bends, rows[i].n_cut_edges)) <=
                   error.total_mm;
      g_test_message ("row %u: ±%.2f covers %u of %u", i, error.total_mm, covered, N_MAKINGS);
      g_assert_cmpuint (covered, >=, N_MAKINGS * 9 / 10);
      g_assert_cmpuint (covered, <, N_MAKINGS * 98 / 100);
    }
}

/* By hand, for a tray wall bent over a bar and cut with a disc: marking 0.3 twice, cutting 0.7,
 * bending 0.5, K ±0.06 · π/2 · 1.5 / 2 = 0.0707: √(0.18 + 0.49 + 0.25 + 0.005) = 0.9618. */
static void
test_by_hand (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  BfExpectedError error;
  const guint bend = 0;

  bf_expected_error (fold, &bend, 1, 1, &error);
  g_assert_cmpfloat_with_epsilon (error.total_mm, 0.9618, 1e-4);
  g_assert_cmpint (error.biggest, ==, BF_ERROR_CUTTING);
  g_assert_cmpfloat_with_epsilon (error.parts_mm[BF_ERROR_ALLOWANCE], 0.0707, 1e-4);
}

/* Either way, in mm, for each tool and way: common practice. A wall's length: marking at its bend
 * and at its edge, cutting, bending. */
static void
test_sources (void)
{
  static const struct
  {
    BfCuttingWay by;
    BfBendWay way;
    double marking_mm, cutting_mm, bending_mm;
    BfErrorSource biggest;
  } rows[] = {
    { BF_CUTTING_DISC, BF_BEND_WAY_BAR, 0.3, 0.7, 0.5, BF_ERROR_CUTTING },
    { BF_CUTTING_SNIPS, BF_BEND_WAY_SLOTS, 0.3, 0.5, 0.3, BF_ERROR_CUTTING },
    { BF_CUTTING_TABLE, BF_BEND_WAY_BAR, 0.1, 0.15, 0.5, BF_ERROR_BENDING },
    { BF_CUTTING_SERVICE, BF_BEND_WAY_BRAKE, 0.1, 0.1, 0.3, BF_ERROR_BENDING },
    { BF_CUTTING_TABLE, BF_BEND_WAY_SCORE, 0.1, 0.15, 0.2, BF_ERROR_BENDING },
  };
  const guint bend = 0;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      BfExpectedError error;

      part->cutting.by = rows[i].by;
      part->bend.way = rows[i].way;
      fold = bf_fold (part);
      bf_expected_error (fold, &bend, 1, 1, &error);
      g_test_message ("row %u", i);
      g_assert_cmpfloat_with_epsilon (error.parts_mm[BF_ERROR_MARKING],
                                      rows[i].marking_mm * sqrt (2.0), 1e-9);
      g_assert_cmpfloat_with_epsilon (error.parts_mm[BF_ERROR_CUTTING], rows[i].cutting_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (error.parts_mm[BF_ERROR_BENDING], rows[i].bending_mm, 1e-9);
      g_assert_cmpint (error.biggest, ==, rows[i].biggest);
    }
}

/* What the strips left open counts, and nothing else of K. */
static void
test_trial_bends_own_error (void)
{
  static const struct
  {
    BfAllowanceRule rule;
    double given, counts;
  } rows[] = {
    { BF_ALLOWANCE_TRIAL_BEND, 0.011, 0.011 }, { BF_ALLOWANCE_TRIAL_BEND, 0.09, 0.09 },
    { BF_ALLOWANCE_TRIAL_BEND, NAN, 0.02 },    { BF_ALLOWANCE_K_FACTOR, 0.03, 0.03 },
    { BF_ALLOWANCE_K_FACTOR, NAN, 0.06 },      { BF_ALLOWANCE_DIN_6935, 0.03, 0.06 },
  };
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  const guint bend = 0;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfFold) fold = NULL;
      BfExpectedError error;

      part->bend.allowance.rule = rows[i].rule;
      part->bend.allowance.k = 0.42;
      part->bend.allowance.k_error = rows[i].given;
      fold = bf_fold (part);
      bf_expected_error (fold, &bend, 1, 1, &error);
      g_test_message ("row %u", i);
      g_assert_cmpfloat_with_epsilon (error.parts_mm[BF_ERROR_ALLOWANCE],
                                      rows[i].counts * G_PI_2 * 1.5 / 2.0, 1e-12);
    }
}

static void
test_words (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part), fold_in = NULL;
  BfExpectedError error = { .total_mm = 1.5, .biggest = BF_ERROR_MARKING };
  g_autofree char *words = bf_expected_words (fold, &error, 200.0), *words_in = NULL;

  g_assert_cmpstr (words, ==, "expect 200 ± 1.5, mostly from the marking");
  part->units = BF_UNITS_IN;
  fold_in = bf_fold (part);
  words_in = bf_expected_size (fold_in, &error, 203.2);
  g_assert_cmpstr (words_in, ==, "8 ± 0.06");
}

static void
test_trial_bend_is_surer (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) by_book = bf_fold (part), by_trial = NULL;
  BfExpectedError book, trial;
  const guint bend = 0;

  part->bend.allowance.rule = BF_ALLOWANCE_TRIAL_BEND;
  by_trial = bf_fold (part);
  bf_expected_error (by_book, &bend, 1, 1, &book);
  bf_expected_error (by_trial, &bend, 1, 1, &trial);
  g_assert_cmpfloat (trial.total_mm, <, book.total_mm);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/expected-error/covers", test_covers);
  g_test_add_func ("/fold/expected-error/by-hand", test_by_hand);
  g_test_add_func ("/fold/expected-error/sources", test_sources);
  g_test_add_func ("/fold/expected-error/trial-bend-is-surer", test_trial_bend_is_surer);
  g_test_add_func ("/fold/expected-error/words", test_words);
  g_test_add_func ("/fold/expected-error/trial-bends-own-error", test_trial_bends_own_error);
  return g_test_run ();
}
