/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/drills.h"
#include "comma-locale.h"
#include "gnu-units.h"

#define NEAR_MM 1e-9

static BfPart *
make_part (BfDrillSet drills)
{
  static const double widths[] = { 2, 3.3, 6.8, 20 };
  BfPart *part = bf_part_new ();

  part->cutting.drills = drills;
  if (drills == BF_DRILLS_LIST)
    {
      part->cutting.drill_list_mm = g_array_new (FALSE, FALSE, sizeof (double));
      g_array_append_vals (part->cutting.drill_list_mm, widths, G_N_ELEMENTS (widths));
    }
  return part;
}

/* The least drill wide enough: just wide enough, a hair too narrow, and past the last one. Number
 * and letter sizes from ASME B94.11M; which drills a shop owns is common practice. */
static const struct
{
  BfDrillSet drills;
  double asked, width;
  const char *name;
} cases[] = {
  { BF_DRILLS_METRIC, 0, 1, "1 mm" },
  { BF_DRILLS_METRIC, 6.5, 6.5, "6.5 mm" },
  { BF_DRILLS_METRIC, 6.5 + 1e-9, 6.5, "6.5 mm" },
  { BF_DRILLS_METRIC, 6.5 + 1e-5, 7, "7 mm" },
  { BF_DRILLS_METRIC, 6.01, 6.5, "6.5 mm" },
  { BF_DRILLS_METRIC, 12.6, 13, "13 mm" },
  { BF_DRILLS_METRIC, 13.1, 14, "14 mm" },
  { BF_DRILLS_METRIC, 29.5, 30, "30 mm" },
  { BF_DRILLS_METRIC, 30.1, NAN, NULL },
  { BF_DRILLS_FRACTION, 0, 1.5875, "1/16 in" },
  { BF_DRILLS_FRACTION, 1.6, 1.984375, "5/64 in" },
  { BF_DRILLS_FRACTION, 6.35, 6.35, "1/4 in" },
  { BF_DRILLS_FRACTION, 6.36, 6.746875, "17/64 in" },
  { BF_DRILLS_FRACTION, 12.7, 12.7, "1/2 in" },
  { BF_DRILLS_FRACTION, 12.8, 14.2875, "9/16 in" },
  { BF_DRILLS_FRACTION, 24, 25.4, "1 in" },
  { BF_DRILLS_FRACTION, 26, 26.9875, "1 1/16 in" },
  { BF_DRILLS_FRACTION, 28.5, 28.575, "1 1/8 in" },
  { BF_DRILLS_FRACTION, 28.6, NAN, NULL },
  { BF_DRILLS_NUMBER, 0, 0.3429, "no. 80 (0.343 mm)" },
  { BF_DRILLS_NUMBER, 5.1, 5.1054, "no. 7 (5.105 mm)" },
  { BF_DRILLS_NUMBER, 5.7912, 5.7912, "no. 1 (5.791 mm)" },
  { BF_DRILLS_NUMBER, 5.8, 5.9436, "letter A (5.944 mm)" },
  { BF_DRILLS_NUMBER, 6.5, 6.5278, "letter F (6.528 mm)" },
  { BF_DRILLS_NUMBER, 10.49, 10.4902, "letter Z (10.49 mm)" },
  { BF_DRILLS_NUMBER, 10.5, 10.715625, "27/64 in" },
  { BF_DRILLS_NUMBER, 13, 14.2875, "9/16 in" },
  { BF_DRILLS_NUMBER, 30, NAN, NULL },
  { BF_DRILLS_LIST, 0, 2, "2 mm" },
  { BF_DRILLS_LIST, 3.3, 3.3, "3.3 mm" },
  { BF_DRILLS_LIST, 7, 20, "20 mm" },
  { BF_DRILLS_LIST, 20.5, NAN, NULL },
};

static void
test_next_up (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = make_part (cases[i].drills);
      g_autofree char *name = NULL;
      double width = bf_drill_next_up (part, cases[i].asked, &name);

      g_test_message ("case %u", i);
      g_assert_cmpstr (name, ==, cases[i].name);
      if (isnan (cases[i].width))
        g_assert_true (isnan (width));
      else
        g_assert_cmpfloat_with_epsilon (width, cases[i].width, NEAR_MM);
    }
}

/* Asked for its own width, each drill gives itself; so each set rises without a step back. */
static void
test_rising (void)
{
  for (BfDrillSet set = BF_DRILLS_METRIC; set <= BF_DRILLS_LIST; set++)
    {
      g_autoptr (BfPart) part = make_part (set);
      double width = bf_drill_next_up (part, 0, NULL), widest = 0;
      guint n = 0;

      for (; !isnan (width); width = bf_drill_next_up (part, width + 1e-5, NULL), n++)
        {
          g_assert_cmpfloat (width, >, widest);
          g_assert_cmpfloat_with_epsilon (bf_drill_next_up (part, width, NULL), width, NEAR_MM);
          widest = width;
        }
      /* Number drills: 80, 26 letters, 27/64 to 32/64 and 9/16 to 18/16 in. The size 1/4 in is
       * letter E. */
      g_assert_cmpuint (n, ==, ((const guint[]){ 42, 39, 122, 4 })[set]);
    }
}

/* No drills at all: none is wide enough. */
static void
test_none (void)
{
  g_autoptr (BfPart) part = bf_part_new ();

  part->cutting.drills = BF_DRILLS_LIST;
  g_assert_true (isnan (bf_drill_next_up (part, 1, NULL)));
  part->cutting.drill_list_mm = g_array_new (FALSE, FALSE, sizeof (double));
  g_assert_true (isnan (bf_drill_next_up (part, 1, NULL)));
}

static void
test_numbers_against_units (void)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) expressions = NULL;
  g_autofree double *widths = NULL;

  for (int number = 1; number <= 80; number++)
    {
      g_autofree char *expression = g_strdup_printf ("drillgauge(%d)", number);
      g_strv_builder_add (builder, expression);
    }
  expressions = g_strv_builder_end (builder);
  widths = gnu_units (expressions, "in");
  for (int number = 1; number <= 80; number++)
    g_assert_cmpfloat_with_epsilon (bf_drill_number_in (number), widths[number - 1], 1e-9);
  g_assert_true (isnan (bf_drill_number_in (0)));
  g_assert_true (isnan (bf_drill_number_in (81)));
}

static void
test_letters_against_units (void)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) expressions = NULL;
  g_autofree double *widths = NULL;
  g_autoptr (BfPart) part = make_part (BF_DRILLS_NUMBER);

  for (char letter = 'A'; letter <= 'Z'; letter++)
    {
      g_autofree char *expression = g_strdup_printf ("drill%c", letter);
      g_strv_builder_add (builder, expression);
    }
  expressions = g_strv_builder_end (builder);
  widths = gnu_units (expressions, "mm");
  for (int i = 0; i < 26; i++)
    {
      g_autofree char *name = NULL;
      g_autofree char *start = g_strdup_printf ("letter %c (", 'A' + i);

      g_assert_cmpfloat_with_epsilon (bf_drill_next_up (part, widths[i], &name), widths[i], 1e-6);
      g_assert_true (g_str_has_prefix (name, start));
    }
}

/* Every drill there is, as a German reads it. */
static void
test_words (void)
{
  static const struct
  {
    const char *name, *words;
  } named[] = {
    { "6.5 mm", "6,5 mm" },
    { "7 mm", "7 mm" },
    { "1 1/16 in", "1 1/16 in" },
    { "no. 7 (5.105 mm)", "no. 7 (5,105 mm)" },
    { "letter Z (10.49 mm)", "letter Z (10,49 mm)" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *words = cases[i].name != NULL ? bf_drill_words (cases[i].name) : NULL;
      g_assert_cmpstr (words, ==, cases[i].name);
    }
  if (!comma_locale_begin ())
    return;
  for (guint i = 0; i < G_N_ELEMENTS (named); i++)
    {
      g_autofree char *words = bf_drill_words (named[i].name);
      g_assert_cmpstr (words, ==, named[i].words);
    }
  comma_locale_end ();
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/drills/next-up", test_next_up);
  g_test_add_func ("/drills/rising", test_rising);
  g_test_add_func ("/drills/none", test_none);
  g_test_add_func ("/drills/words", test_words);
  g_test_add_func ("/drills/numbers-against-units", test_numbers_against_units);
  g_test_add_func ("/drills/letters-against-units", test_letters_against_units);
  return g_test_run ();
}
