/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/numbers.h"

#include <math.h>
#include <string.h>

void
bf_append_decimal (GString *text, double value)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE + 320]; /* the largest double has 309 digits */
  gsize end;

  g_return_if_fail (text != NULL);
  g_return_if_fail (isfinite (value));

  g_ascii_formatd (buffer, sizeof buffer, "%.9f", value);
  end = strlen (buffer);
  while (buffer[end - 1] == '0')
    end--;
  if (buffer[end - 1] == '.')
    end--;
  buffer[end] = '\0';
  g_string_append (text, strcmp (buffer, "-0") == 0 ? "0" : buffer);
}
