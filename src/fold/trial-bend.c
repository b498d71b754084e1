/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/trial-bend.h"

#include <math.h>

#include <glib/gi18n.h>

#include "core/units.h"
#include "fold/allowance.h"

/* What is measured of a strip: its length and two legs. */
#define N_MEASURED 3.0

/* Of a sum of evenly spread errors, 95 in 100 lie within about two standard deviations. */
#define DEVIATIONS 2.0

/* Beyond these the neutral line would lie outside the metal. */
#define LEAST_K 0.0
#define MOST_K 1.0

G_DEFINE_QUARK (bf - trial - error - quark, bf_trial_error)

static gboolean
is_size (double length_mm)
{
  return isfinite (length_mm) && length_mm > 0.0;
}

static gboolean
check_sizes (const BfTrialBend *strip, GError **error)
{
  gboolean fine = is_size (strip->length_mm) && is_size (strip->legs_mm[0]) &&
                  is_size (strip->legs_mm[1]) && is_size (strip->thickness_mm) &&
                  is_size (strip->angle_rad) && strip->angle_rad < G_PI &&
                  isfinite (strip->radius_mm) && strip->radius_mm >= 0.0 &&
                  isfinite (strip->measured_to_mm) && strip->measured_to_mm >= 0.0;

  if (!fine)
    g_set_error_literal (error, BF_TRIAL_ERROR, BF_TRIAL_ERROR_NO_SIZE,
                         _ ("A trial bend needs the strip's length, both legs, the thickness, the "
                            "inside radius, and an angle below 180°."));
  return fine;
}

gboolean
bf_trial_bend_k (const BfTrialBend *strip, BfTrialK *k, GError **error)
{
  double t = strip->thickness_mm, angle = strip->angle_rad, setback, allowance, found;
  g_autofree char *shown = NULL;

  if (!check_sizes (strip, error))
    return FALSE;
  setback = (strip->radius_mm + t) * bf_setback_factor (angle);
  allowance = strip->length_mm - strip->legs_mm[0] - strip->legs_mm[1] + 2.0 * setback;
  found = (allowance / angle - strip->radius_mm) / t;
  if (found < LEAST_K || found > MOST_K)
    {
      shown = bf_format_decimal (found, 2);
      g_set_error (error, BF_TRIAL_ERROR, BF_TRIAL_ERROR_NO_FIT,
                   /* Translators: a number, "1.32" */
                   _ ("These lengths give a K of %s, and it lies between 0 and 1. Measure the legs "
                      "and the radius again."),
                   shown);
      return FALSE;
    }
  k->k = found;
  /* Each error is evenly spread over ± measured_to, so it deviates by a √3rd of that. */
  k->k_error = DEVIATIONS * strip->measured_to_mm * sqrt (N_MEASURED) / sqrt (3.0) / (angle * t);
  return TRUE;
}

/* Two-sided 95 % points of Student's distribution for 2 to 11 degrees of freedom (standard table);
 * beyond, the last will do. */
static const double student_95[] = { 4.303, 3.182, 2.776, 2.571, 2.447,
                                     2.365, 2.306, 2.262, 2.228, 2.201 };

/* How far off the mean of three strips or more may be, judged by how they scatter about it. */
static double
scatter (const BfTrialK *strips, guint n, double mean)
{
  double squares = 0.0;
  guint row = MIN (n - 3, G_N_ELEMENTS (student_95) - 1);

  for (guint i = 0; i < n; i++)
    squares += (strips[i].k - mean) * (strips[i].k - mean);
  return student_95[row] * sqrt (squares / (n - 1) / n);
}

BfTrialK
bf_trial_bends_mean (const BfTrialK *strips, guint n)
{
  BfTrialK mean = { 0.0, 0.0 };
  double squares = 0.0;

  g_return_val_if_fail (n > 0, mean);
  for (guint i = 0; i < n; i++)
    {
      mean.k += strips[i].k / n;
      squares += strips[i].k_error * strips[i].k_error;
    }
  /* A few strips scatter by chance; more than two of them tell. */
  mean.k_error = sqrt (squares) / n;
  if (n > 2)
    mean.k_error = MAX (mean.k_error, scatter (strips, n, mean.k));
  return mean;
}
