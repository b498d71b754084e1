/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/stock.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "core/units.h"

typedef struct
{
  double shorter, longer;
} Stock;

/* Whole ones: 1000 × 2000, 1250 × 2500 and 1500 × 3000 mm, 4 × 8 ft; the smaller ones are what
 * hardware shops and dealers of cut pieces keep. Smallest area first. */
static const Stock stock_mm[] = { { 100.0, 200.0 },   { 200.0, 200.0 },   { 200.0, 300.0 },
                                  { 250.0, 500.0 },   { 300.0, 600.0 },   { 500.0, 500.0 },
                                  { 500.0, 1000.0 },  { 1000.0, 1000.0 }, { 1000.0, 2000.0 },
                                  { 1250.0, 2500.0 }, { 1500.0, 3000.0 } };

static const Stock stock_in[] = { { 6.0, 6.0 },   { 6.0, 12.0 },  { 12.0, 12.0 }, { 12.0, 24.0 },
                                  { 24.0, 24.0 }, { 24.0, 48.0 }, { 48.0, 96.0 }, { 60.0, 120.0 } };

/* All stock of a unit, and how many. */
static const Stock *
stock_of (BfUnits units, guint *n)
{
  gboolean inches = units == BF_UNITS_IN;

  *n = inches ? G_N_ELEMENTS (stock_in) : G_N_ELEMENTS (stock_mm);
  return inches ? stock_in : stock_mm;
}

static char *
name_of (const Stock *stock, BfUnits units)
{
  return units == BF_UNITS_IN
             /* Translators: width and height of stock, in inches */
             ? g_strdup_printf (_ ("%.0f × %.0f in"), stock->shorter, stock->longer)
             /* Translators: width and height of stock, in mm */
             : g_strdup_printf (_ ("%.0f × %.0f mm"), stock->shorter, stock->longer);
}

char *
bf_stock_name (double width_mm, double height_mm, BfUnits units)
{
  double unit = units == BF_UNITS_IN ? BF_MM_PER_INCH : 1.0;
  double shorter = MIN (width_mm, height_mm) / unit - BF_TOLERANCE_SIZE_MM;
  double longer = MAX (width_mm, height_mm) / unit - BF_TOLERANCE_SIZE_MM;
  guint n;
  const Stock *stock = stock_of (units, &n);

  for (guint i = 0; i < n; i++)
    if (stock[i].shorter >= shorter && stock[i].longer >= longer)
      return name_of (&stock[i], units);
  return NULL;
}

char *
bf_stock_largest (BfUnits units, double *shorter_mm, double *longer_mm)
{
  double unit = units == BF_UNITS_IN ? BF_MM_PER_INCH : 1.0;
  guint n;
  const Stock *stock = stock_of (units, &n);

  *shorter_mm = stock[n - 1].shorter * unit;
  *longer_mm = stock[n - 1].longer * unit;
  return name_of (&stock[n - 1], units);
}
