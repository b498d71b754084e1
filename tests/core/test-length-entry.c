/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "comma-locale.h"
#include "core/length-entry.h"
#include "core/units.h"

#define IN 25.4
#define FT (12 * 25.4)

static const BfLengthContext mm = { BF_UNITS_MM, NULL };
static const BfLengthContext inch = { BF_UNITS_IN, NULL };
static const BfLengthContext steel = { BF_UNITS_MM, "mild-steel" };
static const BfLengthContext zinc = { BF_UNITS_IN, "zinc" };
static const BfLengthContext unknown = { BF_UNITS_MM, "unobtainium" };

static const struct
{
  const char *text;
  const BfLengthContext *context;
  double length_mm;
} good[] = {
  { "120", &mm, 120 },
  { "  120  ", &mm, 120 },
  { "120", &inch, 120 * IN },
  { "0", &mm, 0 },
  { "4.5", &mm, 4.5 },
  { "4,5", &mm, 4.5 },
  { "4,75", &mm, 4.75 },
  { "1.500", &mm, 1.5 },
  { ".5", &inch, 0.5 * IN },
  { "5.", &mm, 5 },
  { "100000", &mm, 1e5 },
  { "-12.5", &mm, -12.5 },
  { "−3", &mm, -3 },
  /* Fractions and quotients. */
  { "4 3/4", &inch, 4.75 * IN },
  { "4 3/4", &mm, 4.75 },
  { "4-3/4", &inch, 4.75 * IN },
  { "4 - 3/4", &inch, 4.75 * IN },
  { "4-3/4 in", &mm, 4.75 * IN },
  { "-4 3/4 in", &mm, -4.75 * IN },
  { "3/4", &inch, 0.75 * IN },
  { "3 / 4 in", &mm, 0.75 * IN },
  { "3⁄4 in", &mm, 0.75 * IN },
  { "200/3", &mm, 200.0 / 3 },
  { "200/3 mm", &inch, 200.0 / 3 },
  { "10.5/2", &mm, 5.25 },
  { "1/0.5", &mm, 2 },
  { "4\302\2403/4\"", &mm, 4.75 * IN },
  /* Units. */
  { "38.1 mm", &inch, 38.1 },
  { "38.1mm", &inch, 38.1 },
  { "3.81 cm", &inch, 38.1 },
  { "0.0381 m", &inch, 38.1 },
  { "38.1 MM", &inch, 38.1 },
  { "1.5 In", &mm, 1.5 * IN },
  { "1.5 in.", &mm, 1.5 * IN },
  { "1.5 inches", &mm, 1.5 * IN },
  { "1 inch", &mm, IN },
  { "1.5\"", &mm, 1.5 * IN },
  { "1.5″", &mm, 1.5 * IN },
  { "1.5”", &mm, 1.5 * IN },
  { "1.5''", &mm, 1.5 * IN },
  /* Feet, alone and with inches. */
  { "2 ft", &mm, 2 * FT },
  { "2'", &mm, 2 * FT },
  { "2′", &mm, 2 * FT },
  { "1.5 feet", &mm, 1.5 * FT },
  { "1' 2 3/8\"", &mm, FT + 2.375 * IN },
  { "1'2\"", &mm, FT + 2 * IN },
  { "1'-2 3/8\"", &mm, FT + 2.375 * IN },
  { "1 ft 2", &mm, FT + 2 * IN },
  { "1 ft 2.5 in", &mm, FT + 2.5 * IN },
  { "1′ 2″", &inch, FT + 2 * IN },
  { "1’ 3/8”", &inch, FT + 0.375 * IN },
  { "-1' 6\"", &mm, -1.5 * FT },
  /* Gauges, where a thickness is meant. */
  { "16 ga", &steel, 0.0598 * IN },
  { "16ga", &steel, 0.0598 * IN },
  { "16 gauge", &steel, 0.0598 * IN },
  { "16 GA.", &steel, 0.0598 * IN },
  { "14 ga", &zinc, 0.036 * IN },
  { "1.5", &steel, 1.5 },
  { "0.060 in", &steel, 1.524 },
  { "1/16", &steel, IN / 16 },
  { "3/64", &steel, 3 * IN / 64 },
  { "1/16 mm", &steel, 1.0 / 16 },
  { "1/3", &steel, 1.0 / 3 },
  { "3/2", &steel, 1.5 },
  { "1 1/2", &steel, 1.5 },
  { "0.5", &steel, 0.5 },
  { "1/16", &mm, 1.0 / 16 },
  { "0.06", &zinc, 0.06 * IN },
  { "1.5 mm", &unknown, 1.5 },
};

static void
test_good (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (good); i++)
    {
      g_autoptr (GError) error = NULL;
      double length_mm = NAN;

      g_test_message ("%s", good[i].text);
      g_assert_true (bf_length_parse (good[i].text, good[i].context, &length_mm, &error));
      g_assert_no_error (error);
      g_assert_cmpfloat_with_epsilon (length_mm, good[i].length_mm, 1e-9);
    }
}

static const struct
{
  const char *text;
  const BfLengthContext *context;
  int code;
} bad[] = {
  { "", &mm, BF_LENGTH_ERROR_EMPTY },
  { "   ", &mm, BF_LENGTH_ERROR_EMPTY },
  { "abc", &mm, BF_LENGTH_ERROR_NUMBER },
  { "mm", &mm, BF_LENGTH_ERROR_NUMBER },
  { "-", &mm, BF_LENGTH_ERROR_NUMBER },
  { ".", &mm, BF_LENGTH_ERROR_NUMBER },
  { "--5", &mm, BF_LENGTH_ERROR_NUMBER },
  { "+5", &mm, BF_LENGTH_ERROR_NUMBER },
  { "nan", &mm, BF_LENGTH_ERROR_NUMBER },
  { "inf", &mm, BF_LENGTH_ERROR_NUMBER },
  { "3/", &mm, BF_LENGTH_ERROR_NUMBER },
  { "/3", &mm, BF_LENGTH_ERROR_NUMBER },
  { "3/0", &mm, BF_LENGTH_ERROR_NUMBER },
  { "4 3/0", &mm, BF_LENGTH_ERROR_NUMBER },
  { "4 5/4", &mm, BF_LENGTH_ERROR_NUMBER },
  { "4 4/4", &mm, BF_LENGTH_ERROR_NUMBER },
  { "4 1/2.5", &mm, BF_LENGTH_ERROR_NUMBER },
  { "1234567890123", &mm, BF_LENGTH_ERROR_NUMBER },
  { "0.1234567890123", &mm, BF_LENGTH_ERROR_NUMBER },
  { "1' 3/0\"", &mm, BF_LENGTH_ERROR_NUMBER },
  { "\xff", &mm, BF_LENGTH_ERROR_NUMBER },
  { "5 furlongs", &mm, BF_LENGTH_ERROR_UNIT },
  { "5 mmm", &mm, BF_LENGTH_ERROR_UNIT },
  { "5 i", &mm, BF_LENGTH_ERROR_UNIT },
  { "5 mm 3", &mm, BF_LENGTH_ERROR_UNIT },
  { "5 6", &mm, BF_LENGTH_ERROR_UNIT },
  { "4.5 3/4", &mm, BF_LENGTH_ERROR_UNIT },
  { "10-5", &mm, BF_LENGTH_ERROR_UNIT },
  { "1e5", &mm, BF_LENGTH_ERROR_UNIT },
  { "0x10", &mm, BF_LENGTH_ERROR_UNIT },
  { "1/2/3", &mm, BF_LENGTH_ERROR_UNIT },
  { "1.2.3", &mm, BF_LENGTH_ERROR_UNIT },
  { "2 ft 3 mm", &mm, BF_LENGTH_ERROR_UNIT },
  { "2' 3'", &mm, BF_LENGTH_ERROR_UNIT },
  { "2' 3\" 4", &mm, BF_LENGTH_ERROR_UNIT },
  { "5 °", &mm, BF_LENGTH_ERROR_UNIT },
  { "1,500", &mm, BF_LENGTH_ERROR_AMBIGUOUS },
  { "12,345 mm", &inch, BF_LENGTH_ERROR_AMBIGUOUS },
  { "16 ga", &mm, BF_LENGTH_ERROR_GAUGE },
  { "16 ga", &unknown, BF_LENGTH_ERROR_GAUGE },
  { "2 ga", &steel, BF_LENGTH_ERROR_GAUGE },
  { "39 ga", &steel, BF_LENGTH_ERROR_GAUGE },
  { "16.5 ga", &steel, BF_LENGTH_ERROR_GAUGE },
  { "99999999999 ga", &steel, BF_LENGTH_ERROR_GAUGE },
  { "100001", &mm, BF_LENGTH_ERROR_RANGE },
  { "-100001", &mm, BF_LENGTH_ERROR_RANGE },
  { "101 m", &mm, BF_LENGTH_ERROR_RANGE },
  { "4000", &inch, BF_LENGTH_ERROR_RANGE },
};

static void
test_bad (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (GError) error = NULL;
      double length_mm = -77;

      g_test_message ("%u: %s", i, g_utf8_validate (bad[i].text, -1, NULL) ? bad[i].text : "?");
      g_assert_false (bf_length_parse (bad[i].text, bad[i].context, &length_mm, &error));
      g_assert_error (error, BF_LENGTH_ERROR, bad[i].code);
      g_assert_true (g_str_has_suffix (error->message, "."));
      g_assert_true (g_utf8_validate (error->message, -1, NULL));
      g_assert_cmpfloat_with_epsilon (length_mm, -77, 1e-12); /* untouched */
    }
}

/* A sentence tells what to type instead. */
static void
test_sentences (void)
{
  static const struct
  {
    const char *text;
    const BfLengthContext *context;
    const char *message;
  } cases[] = {
    { "", &mm, "Type a length, as in 120 or 4 3/4." },
    { "5 furlongs", &mm, "“furlongs” is no unit here; use mm, cm, m, in or ft." },
    { "40 ga", &steel,
      "Gauges of this metal are whole numbers from 3 to 38 (Manufacturers’ "
      "Standard Gauge for steel)." },
    { "16 ga", &mm, "A gauge is the thickness of a metal; a length is wanted here." },
    { "3/0", &mm, "A length cannot be divided by 0." },
    { "1,500", &mm, "This may mean two lengths. Write it without a sign between thousands." },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;
      double length_mm;

      g_assert_false (bf_length_parse (cases[i].text, cases[i].context, &length_mm, &error));
      g_assert_cmpstr (error->message, ==, cases[i].message);
    }
}

static void
test_comma_locale (void)
{
  static const struct
  {
    const char *text;
    double length_mm; /* NAN: refused */
  } cases[] = {
    { "4,5", 4.5 }, { "4.5", 4.5 }, { "1,500", 1.5 }, { "1.500", NAN }, { "0,75/3", 0.25 },
  };

  if (!comma_locale_begin ())
    return;
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      double length_mm = NAN;
      gboolean read = bf_length_parse (cases[i].text, &mm, &length_mm, NULL);

      g_assert_cmpint (read, ==, !isnan (cases[i].length_mm));
      if (read)
        g_assert_cmpfloat_with_epsilon (length_mm, cases[i].length_mm, 1e-12);
    }
  comma_locale_end ();
}

static void
test_understood (void)
{
  static const struct
  {
    double length_mm;
    BfUnits units;
    const char *text;
  } cases[] = {
    { 200.0 / 3, BF_UNITS_MM, "= 66.667 mm" },
    { 120, BF_UNITS_MM, "= 120 mm" },
    { 1.5184, BF_UNITS_MM, "= 1.518 mm" },
    { 4.75 * IN, BF_UNITS_IN, "= 4.75 in" },
    { 0, BF_UNITS_IN, "= 0 in" },
    { -12.5, BF_UNITS_MM, "= -12.5 mm" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = bf_length_understood (cases[i].length_mm, cases[i].units);

      g_assert_cmpstr (text, ==, cases[i].text);
    }
}

/* What the program shows can be typed in again: fractions of an inch exactly. */
static void
test_shown_is_read (void)
{
  for (int parts = 1; parts < 2000; parts += 7)
    {
      double length_mm = parts * IN / 64, read_mm = 0;
      g_autofree char *in = bf_format_length (length_mm, BF_UNITS_IN);
      g_autofree char *tenths = bf_format_length (parts / 10.0, BF_UNITS_MM);

      g_assert_true (bf_length_parse (in, &mm, &read_mm, NULL));
      g_assert_cmpfloat_with_epsilon (read_mm, length_mm, 1e-9);
      g_assert_true (bf_length_parse (tenths, &inch, &read_mm, NULL));
      g_assert_cmpfloat_with_epsilon (read_mm, parts / 10.0, 1e-9);
    }
}

/* Anything may be typed. */
static void
test_anything (void)
{
  static const char *const pieces[] = { "1",  "20", "/",  "-",  " ",  ".",   ",", "'",
                                        "\"", "mm", "in", "ft", "ga", "3/4", "x", "″" };
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);
  guint n_read = 0;

  for (int i = 0; i < 50000; i++)
    {
      g_autoptr (GString) text = g_string_new (NULL);
      g_autoptr (GError) error = NULL;
      double length_mm = NAN;

      for (int n = g_rand_int_range (rand, 0, 7); n > 0; n--)
        g_string_append (text, pieces[g_rand_int_range (rand, 0, G_N_ELEMENTS (pieces))]);
      if (bf_length_parse (text->str, &steel, &length_mm, &error))
        {
          n_read++;
          g_assert_cmpfloat (fabs (length_mm), <=, 1e5);
        }
      else
        g_assert_cmpuint (strlen (error->message), >, 10);
    }
  g_assert_cmpuint (n_read, >, 1000);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/length-entry/good", test_good);
  g_test_add_func ("/length-entry/bad", test_bad);
  g_test_add_func ("/length-entry/sentences", test_sentences);
  g_test_add_func ("/length-entry/comma-locale", test_comma_locale);
  g_test_add_func ("/length-entry/understood", test_understood);
  g_test_add_func ("/length-entry/shown-is-read", test_shown_is_read);
  g_test_add_func ("/length-entry/anything", test_anything);
  return g_test_run ();
}
