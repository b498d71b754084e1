/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/size-text.h"

#include <glib/gi18n.h>

#include "core/length-entry.h"
#include "core/units.h"

G_DEFINE_QUARK (bf - size - error - quark, bf_size_error)

/* A number with either decimal sign and nothing behind it but that suffix. */
static gboolean
read_number (const char *words, const char *suffix, double *number)
{
  g_autofree char *plain = g_strdelimit (g_strstrip (g_strdup (words)), ",", '.');
  char *end = NULL;

  *number = g_ascii_strtod (plain, &end);
  if (end == plain || !isfinite (*number))
    return FALSE;
  g_strchug (end);
  return *end == '\0' || g_str_equal (end, suffix);
}

static gboolean
read_angle (const char *words, double *angle_deg, GError **error)
{
  if (read_number (words, "°", angle_deg) && *angle_deg >= 1.0 && *angle_deg <= 180.0)
    return TRUE;
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_ANGLE,
                       _ ("An angle is a number from 1 to 180."));
  return FALSE;
}

static gboolean
read_turn (const char *words, double *angle_deg, GError **error)
{
  if (read_number (words, "°", angle_deg) && fabs (*angle_deg) <= 360.0)
    return TRUE;
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_ANGLE,
                       _ ("It lies at an angle from 0 to 360."));
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
  if (length_mm > 0.0 || reading->kind == BF_SIZE_FIELD_PLACE)
    {
      *size = length_mm;
      return TRUE;
    }
  g_set_error_literal (error, BF_SIZE_ERROR, BF_SIZE_ERROR_NOTHING,
                       _ ("A size has to be more than nothing."));
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
  return read_length (words, reading, size, error);
}

static gboolean
is_angle (BfSizeFieldKind kind)
{
  return kind == BF_SIZE_FIELD_ANGLE || kind == BF_SIZE_FIELD_TURN;
}

char *
bf_size_understood (const char *words, double size, const BfSizeReading *reading)
{
  g_return_val_if_fail (words != NULL && reading != NULL, NULL);

  g_autofree char *plain = bf_size_words (size, reading);
  if (is_angle (reading->kind) || g_str_equal (plain, words))
    return NULL;
  return bf_length_understood (size, reading->units);
}

char *
bf_size_words (double size, const BfSizeReading *reading)
{
  g_return_val_if_fail (reading != NULL, NULL);

  if (is_angle (reading->kind))
    return bf_format_angle (size);
  return bf_format_number (size, reading->units);
}
