/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/drills.h"
#include "core/length-entry.h"
#include "gnu-units.h"

static GArray *
parse (const char *text, BfUnits units)
{
  g_autoptr (GError) error = NULL;
  GArray *sizes = bf_drills_parse (text, units, &error);

  g_assert_no_error (error);
  return sizes;
}

/* How many there are, and the first, the second and the last of them in mm. Letters and numbers:
 * ASME B94.11M. */
static void
test_read (void)
{
  static const struct
  {
    const char *text;
    BfUnits units;
    guint n;
    double first, second, last;
  } rows[] = {
    { "3", BF_UNITS_MM, 1, 3, NAN, 3 },
    { " 6.5; 3 ;4.2;", BF_UNITS_MM, 3, 3, 4.2, 6.5 },
    { "3; 3; 4; 3", BF_UNITS_MM, 2, 3, 4, 4 },
    { "1..13 + 0.5", BF_UNITS_MM, 25, 1, 1.5, 13 },
    { "1..10+0.1", BF_UNITS_MM, 91, 1, 1.1, 10 },
    { "4..20+2; 3", BF_UNITS_MM, 10, 3, 4, 20 },
    { "4..21+2", BF_UNITS_MM, 9, 4, 6, 20 },
    { "1/16..1/2 + 1/64", BF_UNITS_IN, 29, 1.5875, 1.984375, 12.7 },
    { "1/4 in; 6", BF_UNITS_MM, 2, 6, 6.35, 6.35 },
    { "A..Z", BF_UNITS_MM, 26, 5.9436, 6.0452, 10.4902 },
    { "f", BF_UNITS_MM, 1, 6.5278, NAN, 6.5278 },
    { "#1..#60", BF_UNITS_MM, 60, 1.016, 1.0414, 5.7912 },
    { "12;  #1..#60 ; 9", BF_UNITS_MM, 62, 1.016, 1.0414, 12.0 },
    { "#7\n1/4 in", BF_UNITS_MM, 2, 5.1054, 6.35, 6.35 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GArray) sizes = parse (rows[i].text, rows[i].units);

      g_test_message ("%s", rows[i].text);
      g_assert_cmpuint (sizes->len, ==, rows[i].n);
      g_assert_cmpfloat_with_epsilon (g_array_index (sizes, double, 0), rows[i].first, 1e-9);
      if (sizes->len > 1)
        g_assert_cmpfloat_with_epsilon (g_array_index (sizes, double, 1), rows[i].second, 1e-9);
      g_assert_cmpfloat_with_epsilon (g_array_index (sizes, double, sizes->len - 1), rows[i].last,
                                      1e-9);
    }
}

static void
test_refused (void)
{
  static const struct
  {
    const char *text;
    BfDrillError code; /* where it is one of ours */
    gboolean length;   /* the error is a length's */
  } rows[] = {
    { "", BF_DRILL_ERROR_NONE, FALSE },
    { " ; ;", BF_DRILL_ERROR_NONE, FALSE },
    { "1..13", BF_DRILL_ERROR_STEP, FALSE },
    { "13..1 + 0.5", BF_DRILL_ERROR_STEP, FALSE },
    { "1..13 + 0", BF_DRILL_ERROR_STEP, FALSE },
    { "1..13 + -1", BF_DRILL_ERROR_STEP, FALSE },
    { "A..13 + 1", BF_DRILL_ERROR_STEP, FALSE },
    { "Z..A", BF_DRILL_ERROR_STEP, FALSE },
    { "A..Z + 2", BF_DRILL_ERROR_STEP, FALSE },
    { "1..13 + A", BF_DRILL_ERROR_STEP, FALSE },
    { "0", BF_DRILL_ERROR_STEP, FALSE },
    { "-3", BF_DRILL_ERROR_STEP, FALSE },
    { "1..1000 + 0.001", BF_DRILL_ERROR_MANY, FALSE },
    { "0..100000 + 1e-300", BF_DRILL_ERROR_MANY, TRUE },
    { "#81", BF_DRILL_ERROR_NONE, TRUE },
    { "#0", BF_DRILL_ERROR_NONE, TRUE },
    { "wide", BF_DRILL_ERROR_NONE, TRUE },
    { "..", BF_DRILL_ERROR_NONE, TRUE },
    { "1.. + 2", BF_DRILL_ERROR_NONE, TRUE },
    { "ä", BF_DRILL_ERROR_NONE, TRUE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;

      g_test_message ("%s", rows[i].text);
      g_assert_null (bf_drills_parse (rows[i].text, BF_UNITS_MM, &error));
      g_assert_nonnull (error);
      if (rows[i].length)
        g_assert_true (error->domain == BF_LENGTH_ERROR);
      else
        g_assert_error (error, BF_DRILL_ERROR, (int)rows[i].code);
    }
}

/* Each letter as GNU units has it. */
static void
test_letters (void)
{
  char *expressions[27] = { NULL };
  g_autofree double *inches = NULL;

  for (guint i = 0; i < 26; i++)
    expressions[i] = g_strdup_printf ("drill%c", (char)('A' + (int)i));
  inches = gnu_units (expressions, "in");
  for (guint i = 0; i < 26; i++)
    {
      g_assert_cmpfloat_with_epsilon (bf_drill_letter_in ((char)('A' + (int)i)), inches[i], 1e-9);
      g_free (expressions[i]);
    }
  g_assert_true (isnan (bf_drill_letter_in ('a')));
  g_assert_true (isnan (bf_drill_letter_in ('[')));
}

/* A box of just the letters is called by them; one with a drill more is not. */
static void
test_names (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  g_autofree char *letter = NULL, *plain = NULL;
  double extra = 11.0;

  part->cutting.drills = BF_DRILLS_LIST;
  part->cutting.drill_list_mm = parse ("A..Z", BF_UNITS_MM);
  bf_drill_next_up (part, 6.5, &letter);
  g_assert_cmpstr (letter, ==, "letter F (6.528 mm)");
  g_array_append_val (part->cutting.drill_list_mm, extra);
  bf_drill_next_up (part, 6.5, &plain);
  g_assert_cmpstr (plain, ==, "6.528 mm");
}

/* What is written is read again as it was, in either unit. */
static void
test_to_text (void)
{
  static const char *const entries[] = { "4..10 + 2", "A..Z; #1..#60", "1/16; 12; 3.3", "1/64 in" };

  for (guint i = 0; i < G_N_ELEMENTS (entries); i++)
    for (BfUnits units = BF_UNITS_MM; units <= BF_UNITS_IN; units++)
      {
        g_autoptr (GError) error = NULL;
        g_autoptr (GArray) sizes = bf_drills_parse (entries[i], units, &error);
        g_assert_no_error (error);
        g_autofree char *text = bf_drills_to_text (sizes, units);
        g_autoptr (GArray) again = bf_drills_parse (text, units, NULL);

        g_test_message ("%s", text);
        g_assert_cmpuint (again->len, ==, sizes->len);
        for (guint k = 0; k < sizes->len; k++)
          g_assert_cmpfloat_with_epsilon (g_array_index (again, double, k),
                                          g_array_index (sizes, double, k), 1e-6);
      }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/drill-entry/read", test_read);
  g_test_add_func ("/drill-entry/refused", test_refused);
  g_test_add_func ("/drill-entry/letters", test_letters);
  g_test_add_func ("/drill-entry/names", test_names);
  g_test_add_func ("/drill-entry/to-text", test_to_text);
  return g_test_run ();
}
