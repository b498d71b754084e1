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

/* ---- so many on each ---------------------------------------------------------------------- */

/* How many of that size lie along a side. */
static guint
n_along (double side, double size, double between)
{
  return (guint)floor ((side + between + BF_TOLERANCE_SIZE_MM) / (size + between));
}

/* The blank lies along the piece or across it, whichever holds more. */
static void
fill (const Stock *stock, BfVec2 blank, double between, BfStockPlan *plan)
{
  const BfVec2 ways[] = { { MAX (blank.x, blank.y), MIN (blank.x, blank.y) },
                          { MIN (blank.x, blank.y), MAX (blank.x, blank.y) } };

  plan->along_longer = plan->along_shorter = 0;
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      guint longer = n_along (stock->longer, ways[i].x, between);
      guint shorter = n_along (stock->shorter, ways[i].y, between);

      if (longer * shorter > plan->along_longer * plan->along_shorter)
        {
          plan->along_longer = longer;
          plan->along_shorter = shorter;
        }
    }
}

void
bf_stock_plan (BfVec2 blank_mm, guint quantity, double between_mm, BfUnits units, BfStockPlan *plan)
{
  double unit = units == BF_UNITS_IN ? BF_MM_PER_INCH : 1.0, least = INFINITY;
  guint n;
  const Stock *stock = stock_of (units, &n), *best = NULL;

  g_return_if_fail (quantity > 0 && plan != NULL);

  *plan = (BfStockPlan){ .name = NULL };
  for (guint i = 0; i < n; i++)
    {
      BfStockPlan tried;
      double area;

      fill (&stock[i], bf_vec2_scale (blank_mm, 1.0 / unit), between_mm / unit, &tried);
      if (tried.along_longer == 0)
        continue;
      tried.n_pieces = (quantity - 1) / (tried.along_longer * tried.along_shorter) + 1;
      tried.name = NULL;
      area = tried.n_pieces * stock[i].shorter * stock[i].longer;
      if (area > least || (quantity == 1 && best != NULL))
        continue;
      least = area;
      best = &stock[i];
      *plan = tried;
    }
  if (best != NULL)
    plan->name = name_of (best, units);
}

void
bf_stock_plan_clear (BfStockPlan *plan)
{
  g_clear_pointer (&plan->name, g_free);
}

char *
bf_stock_name (double width_mm, double height_mm, BfUnits units)
{
  BfStockPlan plan;

  bf_stock_plan (bf_vec2 (width_mm, height_mm), 1, 0.0, units, &plan);
  return plan.name;
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
