/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>

#include "comma-locale.h"
#include "core/units.h"
#include "gnu-units.h"

static void
test_numbers (void)
{
  static const struct
  {
    double length_mm;
    BfUnits units;
    const char *text;
  } cases[] = {
    { 40, BF_UNITS_MM, "40" },
    { 4.7, BF_UNITS_MM, "4.7" },
    { 4.74, BF_UNITS_MM, "4.7" },
    { 4.76, BF_UNITS_MM, "4.8" },
    { 4.04, BF_UNITS_MM, "4" },
    { 39.96, BF_UNITS_MM, "40" },
    { 100, BF_UNITS_MM, "100" },
    { 0, BF_UNITS_MM, "0" },
    { -0.01, BF_UNITS_MM, "0" },
    { -12.5, BF_UNITS_MM, "-12.5" },
    { 12345.6, BF_UNITS_MM, "12345.6" },
    { NAN, BF_UNITS_MM, "–" },
    { INFINITY, BF_UNITS_IN, "–" },
    { 0, BF_UNITS_IN, "0" },
    { 25.4, BF_UNITS_IN, "1" },
    { 120.65, BF_UNITS_IN, "4 3/4" },
    { 19.05, BF_UNITS_IN, "3/4" },
    { 0.396875, BF_UNITS_IN, "1/64" },
    { 25.796875, BF_UNITS_IN, "1 1/64" },
    { 12.7, BF_UNITS_IN, "1/2" },
    { 1.51892, BF_UNITS_IN, "0.060" }, /* 0.0598 in: 16 ga steel, no 64th */
    { 4.7498, BF_UNITS_IN, "0.187" },  /* not 3/16, which is 0.1875 */
    { 4.7625, BF_UNITS_IN, "3/16" },
    { 25.41, BF_UNITS_IN, "1" }, /* 1.0004 in rounds to 1.000 */
    { 25.39, BF_UNITS_IN, "1" },
    { 25.42, BF_UNITS_IN, "1.001" },
    { 101.6 + 0.3, BF_UNITS_IN, "4.012" },
    { -120.65, BF_UNITS_IN, "-4 3/4" },
    { -0.001, BF_UNITS_IN, "0" },
    { -3.0, BF_UNITS_IN, "-0.118" },
    { 1e5, BF_UNITS_IN, "3937.008" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = bf_format_number (cases[i].length_mm, cases[i].units);

      g_assert_cmpstr (text, ==, cases[i].text);
    }
}

/* Stock that is sold by hundredths, and gauges, keep theirs. */
static void
test_thin (void)
{
  static const struct
  {
    double length_mm;
    BfUnits units;
    const char *number, *text;
  } cases[] = {
    { 1.5, BF_UNITS_MM, "1.5", "1.5 mm" },
    { 1.25, BF_UNITS_MM, "1.25", "1.25 mm" },
    { 1.51892, BF_UNITS_MM, "1.52", "1.52 mm" }, /* 16 ga steel */
    { 0.75, BF_UNITS_MM, "0.75", "0.75 mm" },
    { 3.0, BF_UNITS_MM, "3", "3 mm" },
    { 1.51892, BF_UNITS_IN, "0.060", "0.060 in" },
    { 1.5875, BF_UNITS_IN, "1/16", "1/16 in" },
    { NAN, BF_UNITS_MM, "–", "– mm" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *number = bf_format_thin_number (cases[i].length_mm, cases[i].units);
      g_autofree char *text = bf_format_thin (cases[i].length_mm, cases[i].units);

      g_assert_cmpstr (number, ==, cases[i].number);
      g_assert_cmpstr (text, ==, cases[i].text);
    }
}

static void
test_lengths (void)
{
  g_autofree char *mm = bf_format_length (40, BF_UNITS_MM);
  g_autofree char *in = bf_format_length (120.65, BF_UNITS_IN);

  g_assert_cmpstr (mm, ==, "40 mm");
  g_assert_cmpstr (in, ==, "4 3/4 in");
}

static void
test_angles (void)
{
  static const struct
  {
    double angle_deg;
    const char *text;
  } cases[] = {
    { 90, "90°" }, { 72.5, "72.5°" }, { 72.54, "72.5°" }, { 180, "180°" },
    { 0, "0°" },   { -7.5, "-7.5°" }, { NAN, "–" },       { 89.96, "90°" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = bf_format_angle (cases[i].angle_deg);

      g_assert_cmpstr (text, ==, cases[i].text);
    }
}

/* Every 64th of an inch is written as the fraction that it is, in its lowest terms. */
static void
test_every_64th (void)
{
  for (int parts = 1; parts < 1000; parts++)
    {
      g_autofree char *text = bf_format_number (parts * 25.4 / 64, BF_UNITS_IN);
      int whole = 0, above = 0, below = 1;

      if (parts % 64 == 0)
        {
          g_autofree char *expected = g_strdup_printf ("%d", parts / 64);
          g_assert_cmpstr (text, ==, expected);
          continue;
        }
      if (parts < 64)
        g_assert_cmpint (sscanf (text, "%d/%d", &above, &below), ==, 2);
      else
        g_assert_cmpint (sscanf (text, "%d %d/%d", &whole, &above, &below), ==, 3);
      g_assert_cmpint ((whole * below + above) * 64, ==, parts * below);
      g_assert_cmpint (above % 2, ==, 1);
    }
}

/* What is written is within half of its last place, or of a thousandth where it is a fraction. */
static void
test_no_worse_than_said (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (3);

  for (int i = 0; i < 5000; i++)
    {
      double length_mm = g_rand_double_range (rand, 0, 500);
      g_autofree char *mm = bf_format_number (length_mm, BF_UNITS_MM);
      g_autofree char *in = bf_format_number (length_mm, BF_UNITS_IN);
      double whole = 0, above = 0, below = 1, read;

      g_assert_cmpfloat_with_epsilon (g_ascii_strtod (mm, NULL), length_mm, 0.0500001);
      if (g_strstr_len (in, -1, "/") == NULL)
        read = g_ascii_strtod (in, NULL);
      else if (sscanf (in, "%lf %lf/%lf", &whole, &above, &below) == 3)
        read = whole + above / below;
      else
        {
          g_assert_cmpint (sscanf (in, "%lf/%lf", &above, &below), ==, 2);
          read = above / below;
        }
      g_assert_cmpfloat_with_epsilon (read, length_mm / 25.4, 0.00050001);
    }
}

static void
test_comma_locale (void)
{
  g_autofree char *mm = NULL;
  g_autofree char *angle = NULL;
  g_autofree char *in = NULL;

  if (!comma_locale_begin ())
    return;
  mm = bf_format_length (4.7, BF_UNITS_MM);
  angle = bf_format_angle (72.5);
  in = bf_format_number (4.7498, BF_UNITS_IN);
  comma_locale_end ();
  g_assert_cmpstr (mm, ==, "4,7 mm");
  g_assert_cmpstr (angle, ==, "72,5°");
  g_assert_cmpstr (in, ==, "0,187");
}

static void
test_inch_against_units (void)
{
  char *expressions[] = { (char *)"inch", NULL };
  g_autofree double *values = gnu_units (expressions, "mm");

  g_assert_cmpfloat_with_epsilon (BF_MM_PER_INCH, values[0], 1e-12);
}

static void
test_fine (void)
{
  static const struct
  {
    double length_mm;
    BfUnits units;
    const char *words;
  } rows[] = { { 40.0, BF_UNITS_MM, "40" },
               { 39.826, BF_UNITS_MM, "39.83" },
               { 25.4, BF_UNITS_IN, "1" },
               { 12.7, BF_UNITS_IN, "0.5" },
               { 3.175, BF_UNITS_IN, "0.125" } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *words = bf_format_fine (rows[i].length_mm, rows[i].units);

      g_assert_cmpstr (words, ==, rows[i].words);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/units/numbers", test_numbers);
  g_test_add_func ("/units/lengths", test_lengths);
  g_test_add_func ("/units/thin", test_thin);
  g_test_add_func ("/units/angles", test_angles);
  g_test_add_func ("/units/every-64th", test_every_64th);
  g_test_add_func ("/units/no-worse-than-said", test_no_worse_than_said);
  g_test_add_func ("/units/fine", test_fine);
  g_test_add_func ("/units/comma-locale", test_comma_locale);
  g_test_add_func ("/units/inch-against-units", test_inch_against_units);
  return g_test_run ();
}
