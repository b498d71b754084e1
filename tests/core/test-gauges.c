/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "core/gauges.h"
#include "core/materials.h"
#include "gnu-units.h"

/* Half of the last place of a table that is printed to 0.0001 in. */
#define HALF_PLACE_IN 0.0000501

static const struct
{
  const char *material, *expression; /* %d stands for the gauge number */
  int first, last;
} tables[] = {
  { "mild-steel", "stdgauge(%d)", 3, 38 },
  /* GNU units has no galvanized gauge: steel of the same number and 2.5 oz/ft² of zinc. */
  { "galvanized-steel", "stdgauge(%d)+(2.5 oz/ft^2)/(501.84 lb/ft^3)", 8, 32 },
  { "stainless-304", "plategauge(%d)", 3, 38 },
  { "aluminium-3003-h14", "awg(%d)", 1, 40 },
  { "aluminium-5052-h32", "awg(%d)", 1, 40 },
  { "aluminium-6061-t6", "awg(%d)", 1, 40 },
  { "copper-half-hard", "awg(%d)", 1, 40 },
  { "brass-half-hard", "awg(%d)", 1, 40 },
  { "zinc", "zincgauge(%d)", 1, 28 },
};

static char **
make_expressions (const char *pattern, int first, int last)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  const char *mark = g_strstr_len (pattern, -1, "%d");

  for (int gauge = first; gauge <= last; gauge++)
    {
      g_autofree char *expression =
          g_strdup_printf ("%.*s%d%s", (int)(mark - pattern), pattern, gauge, mark + 2);
      g_strv_builder_add (builder, expression);
    }
  return g_strv_builder_end (builder);
}

static void
test_against_units (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    {
      g_auto (GStrv) expressions =
          make_expressions (tables[i].expression, tables[i].first, tables[i].last);
      g_autofree double *inches = gnu_units (expressions, "in");

      for (int gauge = tables[i].first; gauge <= tables[i].last; gauge++)
        g_assert_cmpfloat_with_epsilon (bf_gauge_mm (tables[i].material, gauge) / 25.4,
                                        inches[gauge - tables[i].first], HALF_PLACE_IN);
    }
}

/* Sizes as tables print them: steel, stainless, Brown & Sharpe and zinc are GNU units' rounded;
 * galvanized as sheet makers' tables print it. */
static void
test_printed (void)
{
  static const struct
  {
    const char *material;
    int gauge;
    double inches;
  } cases[] = {
    { "mild-steel", 10, 0.1345 },
    { "mild-steel", 16, 0.0598 },
    { "mild-steel", 20, 0.0359 },
    { "mild-steel", 30, 0.0120 },
    { "galvanized-steel", 8, 0.1681 },
    { "galvanized-steel", 16, 0.0635 },
    { "galvanized-steel", 28, 0.0187 },
    { "stainless-304", 16, 0.0625 },
    { "stainless-304", 14, 0.0781 },
    { "stainless-304", 20, 0.0375 },
    { "aluminium-5052-h32", 14, 0.0641 },
    { "copper-half-hard", 16, 0.0508 },
    { "zinc", 14, 0.036 },
    { "zinc", 20, 0.070 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    g_assert_cmpfloat_with_epsilon (bf_gauge_mm (cases[i].material, cases[i].gauge),
                                    cases[i].inches * 25.4, 1e-9);
}

/* Higher is thinner, but for zinc. */
static void
test_order (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    for (int gauge = tables[i].first; gauge < tables[i].last; gauge++)
      {
        double this = bf_gauge_mm (tables[i].material, gauge);
        double next = bf_gauge_mm (tables[i].material, gauge + 1);

        if (g_str_equal (tables[i].material, "zinc"))
          g_assert_cmpfloat (next, >, this);
        else
          g_assert_cmpfloat (next, <, this);
      }
}

static void
test_range (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    {
      int first = 0, last = 0;

      g_assert_true (bf_gauge_range (tables[i].material, &first, &last));
      g_assert_cmpint (first, ==, tables[i].first);
      g_assert_cmpint (last, ==, tables[i].last);
      g_assert_true (isnan (bf_gauge_mm (tables[i].material, first - 1)));
      g_assert_true (isnan (bf_gauge_mm (tables[i].material, last + 1)));
      g_assert_true (isnan (bf_gauge_mm (tables[i].material, G_MAXINT)));
      g_assert_true (isnan (bf_gauge_mm (tables[i].material, G_MININT)));
    }
}

/* Every number is nearest to itself, and a thickness between two goes to the nearer. */
static void
test_nearest (void)
{
  int gauge = 0;

  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    for (int k = tables[i].first; k <= tables[i].last; k++)
      {
        g_assert_true (
            bf_gauge_nearest (tables[i].material, bf_gauge_mm (tables[i].material, k), &gauge));
        g_assert_cmpint (gauge, ==, k);
      }
  g_assert_true (bf_gauge_nearest ("mild-steel", 1.5, &gauge));
  g_assert_cmpint (gauge, ==, 16);
  g_assert_true (bf_gauge_nearest ("aluminium-5052-h32", 1.5, &gauge));
  g_assert_cmpint (gauge, ==, 15);
  g_assert_false (bf_gauge_nearest ("titanium", 1.5, &gauge));
}

/* Metals whose numbers mean other thicknesses have gauges of other names. */
static void
test_names (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    for (guint k = 0; k < G_N_ELEMENTS (tables); k++)
      {
        double one = bf_gauge_mm (tables[i].material, 16),
               two = bf_gauge_mm (tables[k].material, 16);

        g_assert_true (
            g_str_equal (bf_gauge_name (tables[i].material), bf_gauge_name (tables[k].material)) ==
            (fabs (one - two) < 1e-9));
      }
  g_assert_nonnull (strstr (bf_gauge_name ("mild-steel"), "Manufacturers"));
  g_assert_nonnull (strstr (bf_gauge_name ("copper-half-hard"), "Brown & Sharpe"));
  g_assert_null (bf_gauge_name ("unobtainium"));
}

/* A metal that is not known has no gauge, and no other metal's is guessed for it. */
static void
test_unknown (void)
{
  int first = 7, last = 7;

  g_assert_true (isnan (bf_gauge_mm ("unobtainium", 16)));
  g_assert_true (isnan (bf_gauge_mm (NULL, 16)));
  g_assert_true (isnan (bf_gauge_mm ("", 16)));
  g_assert_false (bf_gauge_range ("titanium", &first, &last));
  g_assert_cmpint (first, ==, 7);
}

/* Every metal of the table has one. */
static void
test_all_metals (void)
{
  guint n;
  const BfMaterial *materials = bf_materials (&n);

  for (guint i = 0; i < n; i++)
    g_assert_false (isnan (bf_gauge_mm (materials[i].id, 16)));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/gauges/against-units", test_against_units);
  g_test_add_func ("/gauges/printed", test_printed);
  g_test_add_func ("/gauges/order", test_order);
  g_test_add_func ("/gauges/range", test_range);
  g_test_add_func ("/gauges/unknown", test_unknown);
  g_test_add_func ("/gauges/nearest", test_nearest);
  g_test_add_func ("/gauges/names", test_names);
  g_test_add_func ("/gauges/all-metals", test_all_metals);
  return g_test_run ();
}
