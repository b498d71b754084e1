/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/drills.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "core/units.h"

/* Thousandths of an inch would not do: some sizes have four decimals. ASME B94.11M, no. 1 first. */
static const double number_in[] = {
  0.2280, 0.2210, 0.2130, 0.2090, 0.2055, 0.2040, 0.2010, 0.1990, 0.1960, 0.1935, /* 1 */
  0.1910, 0.1890, 0.1850, 0.1820, 0.1800, 0.1770, 0.1730, 0.1695, 0.1660, 0.1610, /* 11 */
  0.1590, 0.1570, 0.1540, 0.1520, 0.1495, 0.1470, 0.1440, 0.1405, 0.1360, 0.1285, /* 21 */
  0.1200, 0.1160, 0.1130, 0.1110, 0.1100, 0.1065, 0.1040, 0.1015, 0.0995, 0.0980, /* 31 */
  0.0960, 0.0935, 0.0890, 0.0860, 0.0820, 0.0810, 0.0785, 0.0760, 0.0730, 0.0700, /* 41 */
  0.0670, 0.0635, 0.0595, 0.0550, 0.0520, 0.0465, 0.0430, 0.0420, 0.0410, 0.0400, /* 51 */
  0.0390, 0.0380, 0.0370, 0.0360, 0.0350, 0.0330, 0.0320, 0.0310, 0.0292, 0.0280, /* 61 */
  0.0260, 0.0250, 0.0240, 0.0225, 0.0210, 0.0200, 0.0180, 0.0160, 0.0145, 0.0135, /* 71 */
};

/* Letter drills A to Z, ASME B94.11M. */
static const double letter_in[] = {
  0.234, 0.238, 0.242, 0.246, 0.250, 0.257, 0.261, 0.266, 0.272, 0.277, 0.281, 0.290, 0.295,
  0.302, 0.316, 0.323, 0.332, 0.339, 0.348, 0.358, 0.368, 0.377, 0.386, 0.397, 0.404, 0.413,
};

#define N_NUMBERS ((guint)G_N_ELEMENTS (number_in))
#define N_LETTERS ((guint)G_N_ELEMENTS (letter_in))

/* What a home shop owns (common practice): twist drills 1 to 13 mm by 0.5, a step drill from
 * there to 30 mm by 1; or 1/16 to 1/2 in by 1/64, a step drill from there to 1 1/8 in by 1/16. */
#define N_TWIST_MM 25
#define N_METRIC 42
#define FIRST_64TH 4
#define LAST_TWIST_64TH 32
#define N_TWIST_IN 29
#define N_FRACTION 39

/* The first fraction wider than a letter Z. */
#define AFTER_LETTERS (27 - FIRST_64TH)

/* What a number drill and a letter drill are called by. */
#define NUMBER_WORD "no. "
#define LETTER_WORD "letter "

/* One kind of drills, counted from the thinnest: how wide drill n is (NAN after the last), and
 * what it is called. */
typedef struct
{
  double (*width_mm) (const BfPart *part, guint n);
  char *(*name) (const BfPart *part, guint n);
} DrillSet;

static char *
name_mm (double width_mm)
{
  char number[G_ASCII_DTOSTR_BUF_SIZE];

  return g_strdup_printf (
      "%s mm", g_ascii_formatd (number, sizeof number, "%g", round (width_mm * 1e3) / 1e3));
}

static char *
name_both (const char *name, double width_in)
{
  g_autofree char *mm = name_mm (width_in * BF_MM_PER_INCH);

  return g_strdup_printf ("%s (%s)", name, mm);
}

static double
metric_width (const BfPart *part, guint n)
{
  (void)part;
  if (n >= N_METRIC)
    return NAN;
  return n < N_TWIST_MM ? 1.0 + 0.5 * n : 14.0 + (n - N_TWIST_MM);
}

static char *
metric_name (const BfPart *part, guint n)
{
  return name_mm (metric_width (part, n));
}

static guint
fraction_64ths (guint n)
{
  return n < N_TWIST_IN ? FIRST_64TH + n : LAST_TWIST_64TH + 4 * (n - N_TWIST_IN + 1);
}

static double
fraction_width (const BfPart *part, guint n)
{
  (void)part;
  return n < N_FRACTION ? fraction_64ths (n) * BF_MM_PER_INCH / 64.0 : NAN;
}

static char *
fraction_name (const BfPart *part, guint n)
{
  guint above = fraction_64ths (n), below = 64;

  (void)part;
  while (above % 2 == 0 && below > 1)
    {
      above /= 2;
      below /= 2;
    }
  if (below == 1)
    return g_strdup_printf ("%u in", above);
  if (above > below)
    return g_strdup_printf ("%u %u/%u in", above / below, above % below, below);
  return g_strdup_printf ("%u/%u in", above, below);
}

static char *
letter_name (guint n)
{
  g_autofree char *name = g_strdup_printf (LETTER_WORD "%c", (char)('A' + (int)n));

  return name_both (name, letter_in[n]);
}

static double
number_width (const BfPart *part, guint n)
{
  if (n < N_NUMBERS)
    return number_in[N_NUMBERS - 1 - n] * BF_MM_PER_INCH;
  if (n < N_NUMBERS + N_LETTERS)
    return letter_in[n - N_NUMBERS] * BF_MM_PER_INCH;
  return fraction_width (part, n - N_NUMBERS - N_LETTERS + AFTER_LETTERS);
}

static char *
number_name (const BfPart *part, guint n)
{
  g_autofree char *name = NULL;

  if (n >= N_NUMBERS + N_LETTERS)
    return fraction_name (part, n - N_NUMBERS - N_LETTERS + AFTER_LETTERS);
  if (n < N_NUMBERS)
    {
      name = g_strdup_printf (NUMBER_WORD "%u", N_NUMBERS - n);
      return name_both (name, number_in[N_NUMBERS - 1 - n]);
    }
  return letter_name (n - N_NUMBERS);
}

static double
list_width (const BfPart *part, guint n)
{
  GArray *list = part->cutting.drill_list_mm;

  return list != NULL && n < list->len ? g_array_index (list, double, n) : NAN;
}

/* A list of just the letter drills is called by its letters. */
static gboolean
list_is_letters (const GArray *list)
{
  if (list->len != N_LETTERS)
    return FALSE;
  for (guint i = 0; i < N_LETTERS; i++)
    if (fabs (g_array_index (list, double, i) - letter_in[i] * BF_MM_PER_INCH) >
        BF_TOLERANCE_SIZE_MM)
      return FALSE;
  return TRUE;
}

static char *
list_name (const BfPart *part, guint n)
{
  if (list_is_letters (part->cutting.drill_list_mm))
    return letter_name (n);
  return name_mm (list_width (part, n));
}

double
bf_drill_next_up (const BfPart *part, double diameter_mm, char **name)
{
  static const DrillSet sets[] = {
    [BF_DRILLS_METRIC] = { metric_width, metric_name },
    [BF_DRILLS_FRACTION] = { fraction_width, fraction_name },
    [BF_DRILLS_NUMBER] = { number_width, number_name },
    [BF_DRILLS_LIST] = { list_width, list_name },
  };
  const DrillSet *set;
  double width_mm;
  guint n = 0;

  g_return_val_if_fail (part != NULL && part->cutting.drills < G_N_ELEMENTS (sets), NAN);

  set = &sets[part->cutting.drills];
  width_mm = set->width_mm (part, n);
  while (width_mm < diameter_mm - BF_TOLERANCE_SIZE_MM)
    width_mm = set->width_mm (part, ++n);
  if (name != NULL)
    *name = isnan (width_mm) ? NULL : set->name (part, n);
  return width_mm;
}

/* A point between digits becomes the locale's decimal sign. */
static char *
localized (const char *name)
{
  GString *words = g_string_new (NULL);

  for (const char *c = name; *c != '\0'; c++)
    if (*c == '.' && c > name && g_ascii_isdigit (c[-1]) && g_ascii_isdigit (c[1]))
      g_string_append (words, localeconv ()->decimal_point);
    else
      g_string_append_c (words, *c);
  return g_string_free (words, FALSE);
}

char *
bf_drill_words (const char *name)
{
  g_return_val_if_fail (name != NULL, NULL);

  g_autofree char *words = localized (name);
  if (g_str_has_prefix (words, NUMBER_WORD))
    /* Translators: a number drill and how wide it is: "no. 7 (5.105 mm)" */
    return g_strdup_printf (_ ("no. %s"), words + strlen (NUMBER_WORD));
  if (g_str_has_prefix (words, LETTER_WORD))
    /* Translators: a letter drill and how wide it is: "letter F (6.528 mm)" */
    return g_strdup_printf (_ ("letter %s"), words + strlen (LETTER_WORD));
  return g_steal_pointer (&words);
}

double
bf_drill_number_in (int number)
{
  return number >= 1 && number <= (int)N_NUMBERS ? number_in[number - 1] : NAN;
}

double
bf_drill_letter_in (char letter)
{
  return letter >= 'A' && letter <= 'Z' ? letter_in[letter - 'A'] : NAN;
}

gboolean
bf_drills_equal (const GArray *a, const GArray *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    if (fabs (g_array_index (a, double, i) - g_array_index (b, double, i)) > BF_TOLERANCE_SIZE_MM)
      return FALSE;
  return TRUE;
}
