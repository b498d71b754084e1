/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/units.h"

#include <stdlib.h>
#include <string.h>

#include <glib/gi18n.h>

/* The finest mark on a steel rule that people still count in fractions. */
#define PARTS_OF_INCH 64

/* What rounds to the same thousandth of an inch, but no further: 0.187 is not 3/16. */
#define FRACTION_TOLERANCE_IN 0.0004999

/* Takes away what a rounded number does not need: "40.0" is "40", "4.70" is "4.7", "-0.0" is "0".
 * The locale's decimal sign is whatever stands between the digits. */
static char *
trim_zeros (char *number)
{
  size_t length = strlen (number);
  gboolean zero = strpbrk (number, "123456789") == NULL;

  while (length > 1 && number[length - 1] == '0')
    length--;
  while (length > 1 && !g_ascii_isdigit (number[length - 1]))
    length--;
  number[length] = '\0';
  if (zero)
    strcpy (number, "0");
  return number;
}

char *
bf_format_decimal (double value, int decimals)
{
  if (!isfinite (value))
    return g_strdup ("–");
  return trim_zeros (g_strdup_printf ("%.*f", decimals, value));
}

/* "4 3/4" from 304 sixty-fourths. */
static char *
format_parts (guint64 parts, gboolean negative)
{
  guint64 whole = parts / PARTS_OF_INCH;
  guint64 above = parts % PARTS_OF_INCH, below = PARTS_OF_INCH;
  const char *sign = negative && parts > 0 ? "-" : "";

  while (above > 0 && above % 2 == 0)
    {
      above /= 2;
      below /= 2;
    }
  if (above == 0)
    return g_strdup_printf ("%s%" G_GUINT64_FORMAT, sign, whole);
  if (whole == 0)
    return g_strdup_printf ("%s%" G_GUINT64_FORMAT "/%" G_GUINT64_FORMAT, sign, above, below);
  return g_strdup_printf ("%s%" G_GUINT64_FORMAT " %" G_GUINT64_FORMAT "/%" G_GUINT64_FORMAT, sign,
                          whole, above, below);
}

static char *
format_inches (double inches)
{
  double parts = round (fabs (inches) * PARTS_OF_INCH);

  if (fabs (fabs (inches) - parts / PARTS_OF_INCH) > FRACTION_TOLERANCE_IN)
    return g_strdup_printf ("%.3f", inches);
  return format_parts ((guint64)parts, inches < 0.0);
}

char *
bf_format_number (double length_mm, BfUnits units)
{
  if (!isfinite (length_mm))
    return g_strdup ("–");
  if (units == BF_UNITS_IN)
    return format_inches (length_mm / BF_MM_PER_INCH);
  return bf_format_decimal (length_mm, 1);
}

char *
bf_format_thin_number (double length_mm, BfUnits units)
{
  return units == BF_UNITS_IN ? bf_format_number (length_mm, units)
                              : bf_format_decimal (length_mm, 2);
}

static char *
with_unit (const char *number, BfUnits units)
{
  if (units == BF_UNITS_IN)
    /* Translators: a length in inches, "4 3/4 in". */
    return g_strdup_printf (_ ("%s in"), number);
  /* Translators: a length in millimetres, "40 mm". */
  return g_strdup_printf (_ ("%s mm"), number);
}

char *
bf_format_length (double length_mm, BfUnits units)
{
  g_autofree char *number = bf_format_number (length_mm, units);

  return with_unit (number, units);
}

char *
bf_format_thin (double length_mm, BfUnits units)
{
  g_autofree char *number = bf_format_thin_number (length_mm, units);

  return with_unit (number, units);
}

char *
bf_format_angle (double angle_deg)
{
  g_autofree char *number = bf_format_decimal (angle_deg, 1);

  if (!isfinite (angle_deg))
    return g_steal_pointer (&number);
  return g_strdup_printf ("%s°", number);
}

char *
bf_format_fine (double length_mm, BfUnits units)
{
  return units == BF_UNITS_IN ? bf_format_decimal (length_mm / BF_MM_PER_INCH, 3)
                              : bf_format_decimal (length_mm, 2);
}
