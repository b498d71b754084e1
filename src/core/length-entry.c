/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/length-entry.h"

#include <locale.h>
#include <string.h>

#include <glib/gi18n.h>

#include "core/gauges.h"
#include "core/tolerance.h"
#include "core/units.h"

/* More digits than this are no length; they would not fit where they are counted. */
#define MOST_DIGITS 12

/* The finest fraction of an inch that metal is named by. */
#define PARTS_OF_INCH 64.0

#define MM_PER_FOOT (12.0 * BF_MM_PER_INCH)

G_DEFINE_QUARK (bf - length - error - quark, bf_length_error)

typedef enum
{
  UNIT_NONE,
  UNIT_MM,
  UNIT_CM,
  UNIT_M,
  UNIT_INCH,
  UNIT_FOOT,
  UNIT_GAUGE,
} Unit;

typedef struct
{
  const char *at;
  const BfLengthContext *context;
  GError **error;
  gboolean is_quotient; /* typed with a slash, and no whole number before it */
} Scan;

static gboolean
fail (Scan *scan, BfLengthError code, const char *message)
{
  g_set_error_literal (scan->error, BF_LENGTH_ERROR, (int)code, message);
  return FALSE;
}

/* Spaces of any kind: a phone's keyboard likes to put thin ones. */
static gboolean
skip_space (Scan *scan)
{
  const char *start = scan->at;

  while (*scan->at != '\0' && g_unichar_isspace (g_utf8_get_char (scan->at)))
    scan->at = g_utf8_next_char (scan->at);
  return scan->at > start;
}

static guint
count_digits (const char *text)
{
  guint n = 0;

  while (g_ascii_isdigit (text[n]))
    n++;
  return n;
}

static gboolean
is_decimal_sign (char c)
{
  return c == '.' || c == ',';
}

/* "1,500" is 1.5 to some and 1500 to others; only the locale's own sign settles it. */
static gboolean
check_sign (Scan *scan, char sign, guint n_after)
{
  const char *own = localeconv ()->decimal_point;

  if (n_after != 3 || sign == own[0])
    return TRUE;
  return fail (scan, BF_LENGTH_ERROR_AMBIGUOUS,
               _ ("This may mean two lengths. Write it without a sign between thousands."));
}

/* A decimal without sign. whole: (out) TRUE where it has no decimals. */
static gboolean
scan_decimal (Scan *scan, double *value, gboolean *whole)
{
  guint before = count_digits (scan->at), after = 0;
  g_autofree char *number = NULL;

  if (is_decimal_sign (scan->at[before]))
    after = count_digits (scan->at + before + 1);
  if (before + after == 0)
    return fail (scan, BF_LENGTH_ERROR_NUMBER, _ ("A number is missing, as in 120 or 4 3/4."));
  if (before > MOST_DIGITS || after > MOST_DIGITS)
    return fail (scan, BF_LENGTH_ERROR_NUMBER, _ ("This number has too many digits."));
  if (after > 0 && !check_sign (scan, scan->at[before], after))
    return FALSE;

  number = g_strdup_printf ("%.*s.%.*s", (int)before, scan->at, (int)after,
                            after > 0 ? scan->at + before + 1 : "");
  *value = g_ascii_strtod (number, NULL);
  *whole = !is_decimal_sign (scan->at[before]);
  scan->at += *whole ? before : before + 1 + after;
  return TRUE;
}

/* The slash of a fraction, plain or as a sign of its own. */
static gboolean
take_slash (Scan *scan)
{
  skip_space (scan);
  if (*scan->at == '/')
    scan->at++;
  else if (g_str_has_prefix (scan->at, "⁄"))
    scan->at += strlen ("⁄");
  else
    return FALSE;
  skip_space (scan);
  return TRUE;
}

/* TRUE where a whole number and a slash come next, after a space or a dash. */
static gboolean
fraction_follows (const Scan *scan)
{
  Scan ahead = *scan;
  gboolean apart = skip_space (&ahead);
  guint n;

  if (*ahead.at == '-')
    {
      ahead.at++;
      skip_space (&ahead);
    }
  else if (!apart)
    return FALSE;
  n = count_digits (ahead.at);
  ahead.at += n;
  return n > 0 && take_slash (&ahead);
}

static gboolean
scan_divisor (Scan *scan, double *divisor, gboolean *whole)
{
  if (!scan_decimal (scan, divisor, whole))
    return FALSE;
  if (*divisor > 0.0)
    return TRUE;
  return fail (scan, BF_LENGTH_ERROR_NUMBER, _ ("A length cannot be divided by 0."));
}

/* The "3/4" of "4 3/4". */
static gboolean
scan_fraction (Scan *scan, double *value)
{
  double above, below;
  gboolean whole_above, whole_below;

  skip_space (scan);
  if (*scan->at == '-')
    scan->at++;
  skip_space (scan);
  if (!scan_decimal (scan, &above, &whole_above))
    return FALSE;
  take_slash (scan);
  if (!scan_divisor (scan, &below, &whole_below))
    return FALSE;
  if (!whole_above || !whole_below || above >= below)
    return fail (scan, BF_LENGTH_ERROR_NUMBER,
                 _ ("After a whole number a fraction below 1 may stand, as in 4 3/4."));
  *value += above / below;
  return TRUE;
}

/* A decimal, a quotient, or a whole number and a fraction. */
static gboolean
scan_value (Scan *scan, double *value)
{
  gboolean whole, ignored;
  double divisor;
  const char *before_slash;

  skip_space (scan);
  if (!scan_decimal (scan, value, &whole))
    return FALSE;
  if (whole && fraction_follows (scan))
    return scan_fraction (scan, value);
  before_slash = scan->at;
  if (!take_slash (scan))
    {
      scan->at = before_slash;
      return TRUE;
    }
  if (!scan_divisor (scan, &divisor, &ignored))
    return FALSE;
  *value /= divisor;
  scan->is_quotient = TRUE;
  return TRUE;
}

/* A unit by name: letters, or a mark that stands for one. */
static const struct
{
  const char *name;
  Unit unit;
} unit_names[] = {
  { "mm", UNIT_MM },     { "cm", UNIT_CM },       { "m", UNIT_M },         { "in", UNIT_INCH },
  { "inch", UNIT_INCH }, { "inches", UNIT_INCH }, { "ft", UNIT_FOOT },     { "foot", UNIT_FOOT },
  { "feet", UNIT_FOOT }, { "ga", UNIT_GAUGE },    { "gauge", UNIT_GAUGE }, { "\"", UNIT_INCH },
  { "″", UNIT_INCH },    { "”", UNIT_INCH },      { "''", UNIT_INCH },     { "'", UNIT_FOOT },
  { "′", UNIT_FOOT },    { "’", UNIT_FOOT },
};

static gsize
word_length (const char *text)
{
  gsize n = 0;

  while (g_ascii_isalpha (text[n]))
    n++;
  return n;
}

static gboolean
name_matches (const char *name, const char *text, gsize letters)
{
  gsize length = strlen (name);

  if (letters > 0)
    return length == letters && g_ascii_strncasecmp (name, text, length) == 0;
  return g_str_has_prefix (text, name);
}

/* The unit that comes next, UNIT_NONE where none does. */
static Unit
scan_unit (Scan *scan)
{
  gsize letters;

  skip_space (scan);
  letters = word_length (scan->at);
  for (guint i = 0; i < G_N_ELEMENTS (unit_names); i++)
    if (name_matches (unit_names[i].name, scan->at, letters))
      {
        scan->at += strlen (unit_names[i].name);
        if (letters > 0 && *scan->at == '.')
          scan->at++;
        return unit_names[i].unit;
      }
  return UNIT_NONE;
}

/* Fails unless all has been read. */
static gboolean
check_end (Scan *scan)
{
  g_autofree char *message = NULL;

  skip_space (scan);
  if (*scan->at == '\0')
    return TRUE;
  /* Translators: %s is what the person typed and the program does not understand. */
  message = g_strdup_printf (_ ("“%s” is no unit here; use mm, cm, m, in or ft."), scan->at);
  return fail (scan, BF_LENGTH_ERROR_UNIT, message);
}

static gboolean
gauge_to_mm (Scan *scan, double gauge, double *length_mm)
{
  const char *material = scan->context->material;
  g_autofree char *message = NULL;
  int first, last;

  if (material == NULL)
    return fail (scan, BF_LENGTH_ERROR_GAUGE,
                 _ ("A gauge is the thickness of a metal; a length is wanted here."));
  if (!bf_gauge_range (material, &first, &last))
    return fail (scan, BF_LENGTH_ERROR_GAUGE,
                 _ ("This metal has no gauge that is known here; type its thickness."));
  if (gauge - floor (gauge) <= 0.0 && gauge >= first && gauge <= last)
    {
      *length_mm = bf_gauge_mm (material, (int)gauge);
      return TRUE;
    }
  /* Translators: the first and last number of a gauge, and its name. */
  message = g_strdup_printf (_ ("Gauges of this metal are whole numbers from %d to %d (%s)."),
                             first, last, bf_gauge_name (material));
  return fail (scan, BF_LENGTH_ERROR_GAUGE, message);
}

/* What may come after feet: inches, with their unit or without. */
static gboolean
scan_inches_after_feet (Scan *scan, double *length_mm)
{
  double inches;
  Unit unit;

  skip_space (scan);
  if (*scan->at == '-' && g_ascii_isdigit (scan->at[1]))
    scan->at++;
  if (!g_ascii_isdigit (*scan->at) && !is_decimal_sign (*scan->at))
    return TRUE;
  if (!scan_value (scan, &inches))
    return FALSE;
  unit = scan_unit (scan);
  if (unit != UNIT_INCH && unit != UNIT_NONE)
    return fail (scan, BF_LENGTH_ERROR_UNIT, _ ("After feet only inches may stand."));
  *length_mm += inches * BF_MM_PER_INCH;
  return TRUE;
}

/* A thickness typed as 1/16 is an inch's: nobody's metal is a 16th of a millimetre. */
static gboolean
is_inch_fraction (const Scan *scan, double value)
{
  double parts = value * PARTS_OF_INCH;

  return scan->context->material != NULL && scan->is_quotient && value < 1.0 &&
         fabs (parts - round (parts)) < BF_TOLERANCE_SIZE_MM;
}

static gboolean
convert (Scan *scan, double value, Unit unit, double *length_mm)
{
  static const double mm_per_unit[] = { [UNIT_MM] = 1.0,
                                        [UNIT_CM] = 10.0,
                                        [UNIT_M] = 1000.0,
                                        [UNIT_INCH] = BF_MM_PER_INCH,
                                        [UNIT_FOOT] = MM_PER_FOOT };

  if (unit == UNIT_GAUGE)
    return gauge_to_mm (scan, value, length_mm);
  if (unit == UNIT_NONE)
    unit =
        scan->context->units == BF_UNITS_IN || is_inch_fraction (scan, value) ? UNIT_INCH : UNIT_MM;
  *length_mm = value * mm_per_unit[unit];
  return unit != UNIT_FOOT || scan_inches_after_feet (scan, length_mm);
}

/* A minus before the number, as typed or as typeset. */
static gboolean
take_minus (Scan *scan)
{
  skip_space (scan);
  if (*scan->at == '-')
    scan->at++;
  else if (g_str_has_prefix (scan->at, "−"))
    scan->at += strlen ("−");
  else
    return FALSE;
  return TRUE;
}

static gboolean
scan_length (Scan *scan, double *length_mm)
{
  gboolean negative;
  double value;

  skip_space (scan);
  if (*scan->at == '\0')
    return fail (scan, BF_LENGTH_ERROR_EMPTY, _ ("Type a length, as in 120 or 4 3/4."));
  negative = take_minus (scan);
  if (!scan_value (scan, &value) || !convert (scan, value, scan_unit (scan), length_mm) ||
      !check_end (scan))
    return FALSE;
  if (*length_mm > BF_LENGTH_MAX_MM)
    return fail (scan, BF_LENGTH_ERROR_RANGE, _ ("This is longer than 100 m."));
  if (negative)
    *length_mm = -*length_mm;
  return TRUE;
}

gboolean
bf_length_parse (const char *text,
                 const BfLengthContext *context,
                 double *length_mm,
                 GError **error)
{
  Scan scan = { text, context, error, FALSE };
  double read_mm;

  g_return_val_if_fail (text != NULL && context != NULL && length_mm != NULL, FALSE);

  if (!g_utf8_validate (text, -1, NULL))
    return fail (&scan, BF_LENGTH_ERROR_NUMBER, _ ("This is not text."));
  if (!scan_length (&scan, &read_mm))
    return FALSE;
  *length_mm = read_mm;
  return TRUE;
}

gboolean
bf_length_is_gauge (const char *text)
{
  g_autofree char *small = NULL;

  g_return_val_if_fail (text != NULL, FALSE);

  small = g_ascii_strdown (text, -1);
  return strstr (small, "ga") != NULL;
}

char *
bf_length_understood (double length_mm, BfUnits units)
{
  double value = units == BF_UNITS_IN ? length_mm / BF_MM_PER_INCH : length_mm;
  g_autofree char *number = bf_format_decimal (value, 3);

  if (units == BF_UNITS_IN)
    /* Translators: what a typed length was understood as, in inches. */
    return g_strdup_printf (_ ("= %s in"), number);
  /* Translators: what a typed length was understood as, in millimetres. */
  return g_strdup_printf (_ ("= %s mm"), number);
}
