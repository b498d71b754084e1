/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/size-text.h"

#include <glib/gi18n.h>
#include <stdlib.h>
#include <string.h>

#include "core/units.h"

#define BF_SIZE_ERROR (g_quark_from_static_string ("bf-size-error"))

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
  g_set_error_literal (error, BF_SIZE_ERROR, 0, _ ("An angle is a number from 1 to 180."));
  return FALSE;
}

gboolean
bf_size_read (const char *words, const BfSizeReading *reading, double *size, GError **error)
{
  g_return_val_if_fail (words != NULL && reading != NULL && size != NULL, FALSE);

  if (reading->kind == BF_SIZE_FIELD_ANGLE)
    return read_angle (words, size, error);
  if (read_number (words, "mm", size) && *size > 0.0)
    {
      *size *= reading->units == BF_UNITS_IN ? BF_MM_PER_INCH : 1.0;
      return TRUE;
    }
  g_set_error_literal (error, BF_SIZE_ERROR, 0, _ ("This is no length."));
  return FALSE;
}

char *
bf_size_words (double size, const BfSizeReading *reading)
{
  g_return_val_if_fail (reading != NULL, NULL);

  if (reading->kind == BF_SIZE_FIELD_ANGLE)
    return bf_format_angle (size);
  return bf_format_number (size, reading->units);
}
