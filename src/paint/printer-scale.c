/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/printer-scale.h"

#include <math.h>

#include <glib/gi18n.h>

#define SMALLEST_SEEN 1e-6

G_DEFINE_QUARK (bf - printer - scale - error - quark, bf_printer_scale_error)

BfPrinterScale
bf_printer_scale_none (void)
{
  return (BfPrinterScale){ 1.0, 1.0 };
}

/* The slack is for 95 mm of 100, which is not 0.95 to the last digit. */
static gboolean
is_sane (double factor)
{
  return isfinite (factor) && fabs (factor - 1.0) <= BF_PRINTER_SCALE_MOST_OFF + 1e-9;
}

gboolean
bf_printer_scale_is_sane (const BfPrinterScale *scale, GError **error)
{
  g_return_val_if_fail (scale != NULL, FALSE);

  if (is_sane (scale->x) && is_sane (scale->y))
    return TRUE;
  g_set_error_literal (
      error, BF_PRINTER_SCALE_ERROR, BF_PRINTER_SCALE_ERROR_TOO_FAR_OFF,
      _ ("a printer more than 5 % off has another fault: print at 100 %, not fitted to the page"));
  return FALSE;
}

gboolean
bf_printer_scale_from_bars (
    double bar_mm, double across_mm, double down_mm, BfPrinterScale *scale, GError **error)
{
  BfPrinterScale found = { across_mm / bar_mm, down_mm / bar_mm };

  g_return_val_if_fail (scale != NULL && bar_mm > 0.0, FALSE);

  if (!bf_printer_scale_is_sane (&found, error))
    return FALSE;
  *scale = found;
  return TRUE;
}

gboolean
bf_printer_scale_is_none (const BfPrinterScale *scale)
{
  g_return_val_if_fail (scale != NULL, TRUE);

  return fabs (scale->x - 1.0) < SMALLEST_SEEN && fabs (scale->y - 1.0) < SMALLEST_SEEN;
}
