/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/allowance.h"

/* Machinery's Handbook, 31st ed., p. 1421: thickness constants for soft, medium and hard metal. */
static const double handbook_constants[] = { 0.55, 0.64, 0.71 };

#define BOOK_K_ERROR 0.06
#define TRIAL_K_ERROR 0.02

double
bf_bend_allowance_mm (double angle_rad, double radius_mm, double thickness_mm, double k)
{
  return angle_rad * (radius_mm + k * thickness_mm);
}

double
bf_setback_factor (double angle_rad)
{
  return angle_rad <= G_PI_2 ? tan (angle_rad / 2.0) : 1.0;
}

static double
din_6935_k (double radius_mm, double thickness_mm)
{
  if (radius_mm <= 0.0)
    return 0.0;
  return CLAMP (0.65 + 0.5 * log10 (radius_mm / thickness_mm), 0.0, 1.0) / 2.0;
}

double
bf_handbook_constant (BfHandbookGroup group)
{
  g_return_val_if_fail ((guint)group < G_N_ELEMENTS (handbook_constants), NAN);

  return handbook_constants[group];
}

static double
handbook_k (BfHandbookGroup group, double radius_mm, double thickness_mm)
{
  double square_mm =
      handbook_constants[group] * thickness_mm + BF_HANDBOOK_QUARTER_TURN * radius_mm;

  return (square_mm / G_PI_2 - radius_mm) / thickness_mm;
}

double
bf_allowance_k (const BfAllowance *allowance, double radius_mm, double thickness_mm)
{
  switch (allowance->rule)
    {
    case BF_ALLOWANCE_DIN_6935:
      return din_6935_k (radius_mm, thickness_mm);
    case BF_ALLOWANCE_HANDBOOK:
      return handbook_k (allowance->group, radius_mm, thickness_mm);
    case BF_ALLOWANCE_UNSET:
    case BF_ALLOWANCE_K_FACTOR:
    case BF_ALLOWANCE_TRIAL_BEND:
    default:
      return allowance->k;
    }
}

double
bf_allowance_k_error (const BfAllowance *allowance)
{
  switch (allowance->rule)
    {
    case BF_ALLOWANCE_DIN_6935:
    case BF_ALLOWANCE_HANDBOOK:
      return BOOK_K_ERROR;
    case BF_ALLOWANCE_TRIAL_BEND:
      return allowance->k_error > 0.0 ? allowance->k_error : TRIAL_K_ERROR;
    case BF_ALLOWANCE_UNSET:
    case BF_ALLOWANCE_K_FACTOR:
    default:
      return allowance->k_error > 0.0 ? allowance->k_error : BOOK_K_ERROR;
    }
}

void
bf_bend_sums (
    const BfBend *bend, double angle_rad, double thickness_mm, BfMeasure measure, BfBendSums *sums)
{
  gboolean scored = bend->way == BF_BEND_WAY_SCORE;
  double radius_mm = scored ? 0.0 : bend->inside_radius_mm;
  double skin_mm = scored ? bend->score_left_mm : thickness_mm;
  double factor = bf_setback_factor (angle_rad);

  sums->skin_mm = skin_mm;
  sums->face_radius_mm = radius_mm - (thickness_mm - skin_mm);
  sums->k = bf_allowance_k (&bend->allowance, radius_mm, skin_mm);
  sums->allowance_mm = bf_bend_allowance_mm (angle_rad, radius_mm, skin_mm, sums->k);
  sums->outside_setback_mm = (radius_mm + skin_mm) * factor;
  sums->setback_mm =
      measure == BF_MEASURE_OUTSIDE ? sums->outside_setback_mm : sums->face_radius_mm * factor;
  sums->deduction_mm = 2.0 * sums->outside_setback_mm - sums->allowance_mm;
}
