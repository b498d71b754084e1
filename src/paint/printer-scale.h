/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* How much larger or smaller than it should a printer prints, across the page and down it. */

typedef struct
{
  double x, y; /* printed length over true length: 0.992 where a bar of 100 mm measures 99.2 */
} BfPrinterScale;

/* Beyond this something else is wrong: a driver that fits pages to the paper, or the wrong bar. */
#define BF_PRINTER_SCALE_MOST_OFF 0.05

typedef enum
{
  BF_PRINTER_SCALE_ERROR_TOO_FAR_OFF,
} BfPrinterScaleError;

#define BF_PRINTER_SCALE_ERROR (bf_printer_scale_error_quark ())
GQuark bf_printer_scale_error_quark (void);

/* A printer that is right. */
BfPrinterScale bf_printer_scale_none (void);

/* The factors of a printer whose bars of bar_mm (100, or 101.6 for 4 in) were measured on a page
 * held upright: across_mm the level one, down_mm the upright one. scale: (out). FALSE with a
 * sentence in error, and scale untouched, where either is more than 5 % off or not a number. */
gboolean bf_printer_scale_from_bars (
    double bar_mm, double across_mm, double down_mm, BfPrinterScale *scale, GError **error);

/* TRUE where both factors are within 5 % of 1. */
gboolean bf_printer_scale_is_sane (const BfPrinterScale *scale, GError **error);

/* TRUE where it changes nothing that could be seen over the longest page. */
gboolean bf_printer_scale_is_none (const BfPrinterScale *scale);
