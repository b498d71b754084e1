/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What is typed for a size, and how it is shown. */

#include "app/size-text.h"

#include "core/length-entry.h"

#define IN 25.4

static const BfSizeReading length_mm = { BF_SIZE_FIELD_LENGTH, BF_UNITS_MM, NULL };
static const BfSizeReading length_in = { BF_SIZE_FIELD_LENGTH, BF_UNITS_IN, NULL };
static const BfSizeReading thickness = { BF_SIZE_FIELD_THICKNESS, BF_UNITS_MM, "mild-steel" };
static const BfSizeReading zinc = { BF_SIZE_FIELD_THICKNESS, BF_UNITS_MM, "zinc" };
static const BfSizeReading angle = { BF_SIZE_FIELD_ANGLE, BF_UNITS_MM, NULL };
static const BfSizeReading turn = { BF_SIZE_FIELD_TURN, BF_UNITS_MM, NULL };
static const BfSizeReading inset = { BF_SIZE_FIELD_INSET, BF_UNITS_MM, NULL };
static const BfSizeReading gap = { BF_SIZE_FIELD_GAP, BF_UNITS_MM, NULL };
static const BfSizeReading fine = { BF_SIZE_FIELD_FINE, BF_UNITS_MM, NULL };
static const BfSizeReading fine_in = { BF_SIZE_FIELD_FINE, BF_UNITS_IN, NULL };
static const BfSizeReading taper = { BF_SIZE_FIELD_TAPER, BF_UNITS_MM, NULL };
static const BfSizeReading place = { BF_SIZE_FIELD_PLACE, BF_UNITS_MM, NULL };

/* ---- read --------------------------------------------------------------------------------- */

/* 16 gauge of mild steel is 0.0598 in in every printed table. */
static const struct
{
  const char *words;
  const BfSizeReading *reading;
  double size;
} good[] = {
  { "120", &length_mm, 120 },
  { "4 3/4", &length_in, 4.75 * IN },
  { "4 3/4 in", &length_mm, 4.75 * IN },
  { "200/3", &length_mm, 200.0 / 3 },
  { "16 ga", &thickness, 0.0598 * IN },
  { "1.5", &thickness, 1.5 },
  { "90", &angle, 90 },
  { "72.5°", &angle, 72.5 },
  { "72,5 °", &angle, 72.5 },
  { " 1 ", &angle, 1 },
  { "180", &angle, 180 },
  { "0", &turn, 0 },
  { "-45", &turn, -45 },
  { "−45°", &turn, -45 }, /* the minus sign proper, as it is shown */
  { "360", &turn, 360 },
  { "0", &place, 0 },
  { "0", &inset, 0 },
  { "0", &gap, 0 },
  { "1/64 in", &fine, IN / 64.0 },
  { "0", &taper, 0 },
  { "−12,5°", &taper, -12.5 },
  { "89", &taper, 89 },
  { "-12.5", &place, -12.5 },
};

static void
test_good (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (good); i++)
    {
      g_autoptr (GError) error = NULL;
      double size = NAN;

      g_test_message ("%s", good[i].words);
      g_assert_true (bf_size_read (good[i].words, good[i].reading, &size, &error));
      g_assert_no_error (error);
      g_assert_cmpfloat_with_epsilon (size, good[i].size, 1e-9);
    }
}

static const struct
{
  const char *words;
  const BfSizeReading *reading;
} bad[] = {
  { "", &length_mm },      { "0", &length_mm },  { "-5", &length_mm }, { "16 ga", &length_mm },
  { "99 ga", &thickness }, { "", &angle },       { "0", &angle },      { "0.9", &angle },
  { "180.1", &angle },     { "square", &angle }, { "90 mm", &angle },  { "1.2.3", &angle },
  { "nan", &angle },       { "inf", &angle },    { "0x2d", &angle },   { "90°°", &angle },
  { "361", &turn },        { "-361", &turn },    { "x", &turn },       { "", &place },
  { "-1", &inset },        { "-0.1", &gap },     { "0", &fine },       { "89.1", &taper },
  { "-90", &taper },       { "", &taper },       { "5 mm", &taper },   { "1e400", &angle },
  { "2e5", &place },       { "1e2", &angle },
};

/* Refused with a sentence, and the size is left as it was. */
static void
test_bad (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (GError) error = NULL;
      double size = 7.0;
      gboolean read = bf_size_read (bad[i].words, bad[i].reading, &size, &error);

      g_test_message ("\"%s\"", bad[i].words);
      g_assert_false (read);
      g_assert_nonnull (error);
      g_assert_true (g_str_has_suffix (error->message, "."));
      g_assert_cmpfloat_with_epsilon (size, 7.0, 1e-12);
    }
}

/* ---- shown -------------------------------------------------------------------------------- */

/* What a field shows is read as what it was, to the last decimal that it shows: tenths of a mm,
 * hundredths of a thickness, a thousandth of an inch, tenths of a degree. */
static void
test_shown_is_read (void)
{
  static const struct
  {
    const BfSizeReading *reading;
    double from, to, step, epsilon;
  } rows[] = {
    { &length_mm, 0.1, 300.0, 0.37, 0.0501 }, { &length_in, 0.5, 300.0, 0.37, 0.0128 },
    { &thickness, 0.3, 6.0, 0.01, 0.00501 },  { &angle, 1.0, 180.0, 0.3, 0.0501 },
    { &gap, 0.0, 3.0, 0.017, 0.00501 },       { &fine, 0.1, 30.0, 0.13, 0.00501 },
    { &fine_in, 0.5, 30.0, 0.13, 0.0128 },    { &taper, -89.0, 89.0, 0.3, 0.0501 },
    { &turn, -360.0, 360.0, 1.7, 0.0501 },    { &place, -200.0, 200.0, 0.77, 0.0501 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (double size = rows[i].from; size <= rows[i].to; size += rows[i].step)
      {
        g_autofree char *words = bf_size_words (size, rows[i].reading);
        g_autoptr (GError) error = NULL;
        double back = NAN;

        if (!bf_size_read (words, rows[i].reading, &back, &error))
          g_error ("%g is shown as \"%s\": %s", size, words, error->message);
        g_assert_cmpfloat_with_epsilon (back, size, rows[i].epsilon);
      }
}

/* What was typed in plain is not explained; what was worked out is. */
static void
test_understood (void)
{
  static const struct
  {
    const char *words;
    const BfSizeReading *reading;
    double size;
    const char *understood;
  } rows[] = {
    { "120", &length_mm, 120.0, NULL },
    { "200/3", &length_mm, 200.0 / 3, "= 66.667 mm" },
    { "16 ga", &thickness, 0.0598 * IN, "= 1.519 mm, Manufacturers’ Standard Gauge for steel" },
    { "3/64", &thickness, 3 * IN / 64, "= 1.191 mm" },
    { "1.25", &thickness, 1.25, NULL },
    { "16 GA", &zinc, 0.045 * IN, "= 1.143 mm, zinc gauge, where a higher number is thicker" },
    { "72.5°", &angle, 72.5, NULL },
    { "72,5", &angle, 72.5, NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *understood =
          bf_size_understood (rows[i].words, rows[i].size, rows[i].reading);

      g_assert_cmpstr (understood, ==, rows[i].understood);
    }
}

/* Arrow keys stop where a kind ends; a length never comes to nothing. */
static void
test_within (void)
{
  static const struct
  {
    BfSizeFieldKind kind;
    double size, within;
  } rows[] = {
    { BF_SIZE_FIELD_LENGTH, 2.0, 2.0 },     { BF_SIZE_FIELD_LENGTH, 0.0, NAN },
    { BF_SIZE_FIELD_THICKNESS, -0.1, NAN }, { BF_SIZE_FIELD_FINE, 0.0, NAN },
    { BF_SIZE_FIELD_ANGLE, 0.5, 1.0 },      { BF_SIZE_FIELD_ANGLE, 181.0, 180.0 },
    { BF_SIZE_FIELD_TURN, -10.0, 350.0 },   { BF_SIZE_FIELD_TURN, 365.0, 5.0 },
    { BF_SIZE_FIELD_PLACE, -3.0, -3.0 },    { BF_SIZE_FIELD_INSET, -3.0, 0.0 },
    { BF_SIZE_FIELD_GAP, 0.3, 0.3 },        { BF_SIZE_FIELD_GAP, -0.1, 0.0 },
    { BF_SIZE_FIELD_TAPER, 90.0, 89.0 },    { BF_SIZE_FIELD_TAPER, -99.0, -89.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double within = bf_size_within (rows[i].size, rows[i].kind);
      g_assert_true (isnan (within) == isnan (rows[i].within));
      if (!isnan (within))
        g_assert_cmpfloat_with_epsilon (within, rows[i].within, 1e-12);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/size-text/good", test_good);
  g_test_add_func ("/size-text/bad", test_bad);
  g_test_add_func ("/size-text/shown-is-read", test_shown_is_read);
  g_test_add_func ("/size-text/within", test_within);
  g_test_add_func ("/size-text/understood", test_understood);
  return g_test_run ();
}
