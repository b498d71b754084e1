/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-words.h"

#include <glib/gi18n.h>

#include "fold/bend-force.h"

#define NEWTONS_PER_KG 9.80665
#define KG_PER_LB 0.45359237 /* exact: international yard and pound, 1959 */

char *
bf_push_weight (double force_n, BfUnits units)
{
  double kg = force_n / NEWTONS_PER_KG;

  if (units == BF_UNITS_IN)
    /* Translators: a push, as a weight in pounds */
    return g_strdup_printf (_ ("%.0f lb"), kg / KG_PER_LB);
  /* Translators: a push, as a weight in kilograms */
  return g_strdup_printf (_ ("%.0f kg"), kg);
}

char *
bf_push_words (const BfBendResult *bend, BfUnits units)
{
  double share = bend->force_n / bend->limit_n;
  const char *words = share <= BF_FORCE_AIM       ? _ ("easy")
                      : share <= BF_FORCE_LOOK_AT ? _ ("firm")
                      : share <= 1.0              ? _ ("hard, take a longer board")
                                                  : _ ("too hard, needs a longer board or a brake");
  g_autofree char *weight = NULL;

  if (isnan (bend->force_n))
    return g_strdup ("–");
  weight = bf_push_weight (bend->force_n, units);
  /* Translators: a word for a push, "easy", and the push as a weight with its unit */
  return g_strdup_printf (_ ("%s, %s"), words, weight);
}

const BfBendResult *
bf_hardest_bend (const BfFold *fold)
{
  const BfBendResult *hardest = NULL;

  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);

      if (!isnan (bend->force_n) &&
          (hardest == NULL || bend->force_n / bend->limit_n > hardest->force_n / hardest->limit_n))
        hardest = bend;
    }
  return hardest;
}

double
bf_bend_bridge_mm (const BfBendResult *bend)
{
  double shortest = INFINITY;

  for (guint i = 1; i < bend->slots->len; i++)
    {
      const BfBendSlot *a = bf_bend_slot (bend, i - 1), *b = bf_bend_slot (bend, i);
      double bridge = bf_vec2_distance (a->at, b->at) - (a->near_mm + b->near_mm) / 2.0;

      shortest = MIN (shortest, bridge);
    }
  return shortest;
}

/* Fractions that people say. */
static const struct
{
  double share;
  const char *words;
} fractions[] = {
  { 1.0 / 20.0, N_ ("hardly any metal left") },
  { 1.0 / 10.0, N_ ("a tenth of the metal left") },
  { 1.0 / 5.0, N_ ("a fifth of the metal left") },
  { 1.0 / 4.0, N_ ("a quarter of the metal left") },
  { 1.0 / 3.0, N_ ("a third of the metal left") },
  { 2.0 / 5.0, N_ ("two fifths of the metal left") },
  { 1.0 / 2.0, N_ ("half of the metal left") },
  { 3.0 / 5.0, N_ ("three fifths of the metal left") },
  { 2.0 / 3.0, N_ ("two thirds of the metal left") },
  { 3.0 / 4.0, N_ ("three quarters of the metal left") },
  { 4.0 / 5.0, N_ ("four fifths of the metal left") },
  { 9.0 / 10.0, N_ ("nine tenths of the metal left") },
};

double
bf_bend_metal_left (const BfFold *fold, const BfBendResult *bend)
{
  if (isnan (bend->score_left_mm))
    return bend->kept;
  return bend->kept * bend->score_left_mm / fold->part->metal.thickness_mm;
}

const char *
bf_metal_left_words (double share)
{
  guint best = 0;

  for (guint i = 1; i < G_N_ELEMENTS (fractions); i++)
    if (fabs (fractions[i].share - share) < fabs (fractions[best].share - share))
      best = i;
  return _ (fractions[best].words);
}

const char *
bf_bend_lost_words (const BfFold *fold, const BfBendResult *bend)
{
  if (bend->slots->len == 0 && isnan (bend->score_left_mm))
    return NULL;
  return bf_metal_left_words (bf_bend_metal_left (fold, bend));
}
