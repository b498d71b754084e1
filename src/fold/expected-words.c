/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/units.h"
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
