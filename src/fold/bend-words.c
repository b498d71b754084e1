/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-words.h"

#include <glib/gi18n.h>

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
