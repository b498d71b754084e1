/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/tolerance.h"
#include "core/units.h"
#include "fold/allowance.h"
#include "fold/expected-error.h"

const char *
bf_error_source_name (BfErrorSource source)
{
  switch (source)
    {
    case BF_ERROR_MARKING:
      return _ ("the marking");
    case BF_ERROR_CUTTING:
      return _ ("the cutting");
    case BF_ERROR_BENDING:
      return _ ("where the bend is made");
    case BF_ERROR_ALLOWANCE:
    case BF_N_ERROR_SOURCES:
    default:
      return _ ("the allowance for the bend");
    }
}

/* A K that is just the way's own was chosen by nobody. */
static const char *
k_factor_words (const BfBend *bend)
{
  if (bend->corrected != NULL && bend->allowance.k_error > 0.0)
    return _ ("by the first one made");
  if (fabs (bend->allowance.k - bf_default_k (bend->way, 90.0)) > BF_TOLERANCE_SIZE_MM)
    return _ ("as you set it");
  return _ ("a rule of thumb");
}

static const char *
rule_words (const BfBend *bend)
{
  switch (bend->allowance.rule)
    {
    case BF_ALLOWANCE_DIN_6935:
      return _ ("by DIN 6935");
    case BF_ALLOWANCE_HANDBOOK:
      return _ ("by the handbook");
    case BF_ALLOWANCE_TRIAL_BEND:
      return _ ("by a trial bend");
    case BF_ALLOWANCE_UNSET:
    case BF_ALLOWANCE_K_FACTOR:
    default:
      return k_factor_words (bend);
    }
}

char *
bf_part_k_words (const BfFold *fold)
{
  g_autofree char *k = NULL, *off = NULL;
  BfBend bend;

  g_return_val_if_fail (fold != NULL, NULL);

  bend = bf_part_resolve_bend (fold->part, NULL);
  k = bf_format_decimal (
      bf_allowance_k (&bend.allowance, bend.inside_radius_mm, fold->part->metal.thickness_mm), 3);
  off = bf_format_decimal (bf_allowance_k_error (&bend.allowance), 2);
  /* Translators: a K-factor, how far off it may be, and where it comes from: "0.42 ± 0.06, a rule
   * of thumb". */
  return g_strdup_printf (_ ("%s ± %s, %s"), k, off, rule_words (&bend));
}

char *
bf_expected_size (const BfFold *fold, const BfExpectedError *error, double size_mm)
{
  BfUnits units;
  g_autofree char *number = NULL, *off = NULL;

  g_return_val_if_fail (fold != NULL && error != NULL, NULL);

  units = fold->part->units;
  number = bf_format_number (size_mm, units);
  off = units == BF_UNITS_IN ? bf_format_decimal (error->total_mm / BF_MM_PER_INCH, 2)
                             : bf_format_decimal (error->total_mm, 1);
  return g_strdup_printf ("%s ± %s", number, off);
}

char *
bf_expected_words (const BfFold *fold, const BfExpectedError *error, double size_mm)
{
  g_autofree char *size = bf_expected_size (fold, error, size_mm);

  /* Translators: a length and how far off it may be, "200 ± 1.5"; and what most of that comes from,
   * "the marking". */
  return g_strdup_printf (_ ("expect %s, mostly from %s"), size,
                          bf_error_source_name (error->biggest));
}
