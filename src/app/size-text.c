/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/size-text.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/gauges.h"
#include "core/length-entry.h"
#include "core/units.h"

G_DEFINE_QUARK (bf - size - error - quark, bf_size_error)

/* The minus sign proper, as it may be typed for a hyphen. */
#define MINUS "\342\210\222"

/* A number of digits with either decimal sign, and nothing behind it but a degree sign; NAN where
 * it is none. */
static double
read_degrees (const char *words)
{
  g_autofree char *plain = g_strdelimit (g_strstrip (g_strdup (words)), ",", '.');
  gboolean long_minus = g_str_has_prefix (plain, MINUS);
  const char *number = plain + (long_minus ? strlen (MINUS) : plain[0] == '-' ? 1 : 0);
  gsize length = strspn (number, "0123456789.");
  g_autofree char *digits = g_strndup (number, length);
  const char *rest = number + length;
  char *end = NULL;
  double size = g_ascii_strtod (digits, &end);

  while (g_ascii_isspace (*rest))
    rest++;
  if (end == digits || *end != '\0' || (*rest != '\0' && !g_str_equal (rest, "°")))
    return NAN;
  return number > plain ? -size : size;
}

static gboolean
read_angle (const char *words, double *angle_deg, GError **error)
{
  double read_deg = read_degrees (words);

  if (read_deg >= 1.0 && read_deg <= 180.0)
    {
      *angle_deg = read_deg;
      return TRUE;
    }
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_ANGLE,
                       _ ("An angle is a number from 1 to 180."));
  return FALSE;
}

static gboolean
read_turn (const char *words, double *angle_deg, GError **error)
{
  double read_deg = read_degrees (words);

  if (fabs (read_deg) <= 360.0)
    {
      *angle_deg = read_deg;
      return TRUE;
    }
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_ANGLE,
                       _ ("It lies at an angle from 0 to 360."));
  return FALSE;
}

static gboolean
read_taper (const char *words, double *angle_deg, GError **error)
{
  double read_deg = read_degrees (words);

  if (fabs (read_deg) <= BF_TAPER_MAX_DEG)
    {
      *angle_deg = read_deg;
      return TRUE;
    }
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_ANGLE,
                       _ ("A side leans by an angle from −89 to 89."));
  return FALSE;
}

static gboolean
read_length (const char *words, const BfSizeReading *reading, double *size, GError **error)
{
  gboolean thick = reading->kind == BF_SIZE_FIELD_THICKNESS;
  BfLengthContext context = { reading->units, thick ? reading->material : NULL };
  double length_mm;

  if (!bf_length_parse (words, &context, &length_mm, error))
    return FALSE;
  gboolean may_be_none = reading->kind == BF_SIZE_FIELD_INSET || reading->kind == BF_SIZE_FIELD_GAP;
  if (length_mm > 0.0 || reading->kind == BF_SIZE_FIELD_PLACE ||
      (may_be_none && !(length_mm < 0.0)))
    {
      *size = length_mm;
      return TRUE;
    }
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_NOTHING,
                       may_be_none ? _ ("It can't be less than nothing.")
                                   : _ ("A size has to be more than nothing."));
  return FALSE;
}

gboolean
bf_size_read (const char *words, const BfSizeReading *reading, double *size, GError **error)
{
  g_return_val_if_fail (words != NULL && reading != NULL && size != NULL, FALSE);

  if (reading->kind == BF_SIZE_FIELD_ANGLE)
    return read_angle (words, size, error);
  if (reading->kind == BF_SIZE_FIELD_TURN)
    return read_turn (words, size, error);
  if (reading->kind == BF_SIZE_FIELD_TAPER)
    return read_taper (words, size, error);
  return read_length (words, reading, size, error);
}

gboolean
bf_size_is_angle (BfSizeFieldKind kind)
{
  return kind == BF_SIZE_FIELD_ANGLE || kind == BF_SIZE_FIELD_TURN || kind == BF_SIZE_FIELD_TAPER;
}

gboolean
bf_size_is_fine (BfSizeFieldKind kind)
{
  return kind == BF_SIZE_FIELD_GAP || kind == BF_SIZE_FIELD_FINE;
}

double
bf_size_within (double size, BfSizeFieldKind kind)
{
  switch (kind)
    {
    case BF_SIZE_FIELD_ANGLE:
      return CLAMP (size, 1.0, 180.0);
    case BF_SIZE_FIELD_TURN:
      return fmod (size + 360.0, 360.0);
    case BF_SIZE_FIELD_TAPER:
      return CLAMP (size, -BF_TAPER_MAX_DEG, BF_TAPER_MAX_DEG);
    case BF_SIZE_FIELD_INSET:
    case BF_SIZE_FIELD_GAP:
      return MAX (size, 0.0);
    case BF_SIZE_FIELD_PLACE:
      return size;
    case BF_SIZE_FIELD_LENGTH:
    case BF_SIZE_FIELD_THICKNESS:
    case BF_SIZE_FIELD_FINE:
    default:
      return size > 0.0 ? size : NAN;
    }
}

/* Which gauge it was taken for: the same number is another thickness in another metal. */
static char *
gauge_understood (double size, const BfSizeReading *reading)
{
  g_autofree char *length = bf_length_understood (size, reading->units);

  /* Translators: a length, "= 1.519 mm", and the name of a gauge. */
  return g_strdup_printf (_ ("%s, %s"), length, bf_gauge_name (reading->material));
}

char *
bf_size_understood (const char *words, double size, const BfSizeReading *reading)
{
  g_return_val_if_fail (words != NULL && reading != NULL, NULL);

  g_autofree char *plain = bf_size_words (size, reading);
  if (bf_size_is_angle (reading->kind) || g_str_equal (plain, words))
    return NULL;
  if (reading->kind == BF_SIZE_FIELD_THICKNESS && bf_length_is_gauge (words))
    return gauge_understood (size, reading);
  return bf_length_understood (size, reading->units);
}

char *
bf_size_words (double size, const BfSizeReading *reading)
{
  g_return_val_if_fail (reading != NULL, NULL);

  if (bf_size_is_angle (reading->kind))
    return bf_format_angle (size);
  if (reading->kind == BF_SIZE_FIELD_THICKNESS || bf_size_is_fine (reading->kind))
    return bf_format_thin_number (size, reading->units);
  return bf_format_number (size, reading->units);
}
