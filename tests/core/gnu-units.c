/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "gnu-units.h"

#include <gio/gio.h>

/* A line with what there is and a line with what is wanted, for each. */
static char *
questions (char **expressions, const char *unit)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; expressions[i] != NULL; i++)
    g_string_append_printf (text, "%s\n%s\n", expressions[i], unit);
  return g_string_free (text, FALSE);
}

double *
gnu_units (char **expressions, const char *unit)
{
  guint n = g_strv_length (expressions);
  double *values = g_new (double, n);
  g_autofree char *input = questions (expressions, unit);
  g_autofree char *output = NULL;
  g_auto (GStrv) lines = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) process =
      g_subprocess_new (G_SUBPROCESS_FLAGS_STDIN_PIPE | G_SUBPROCESS_FLAGS_STDOUT_PIPE, &error,
                        "units", "-t", "-o", "%.10g", NULL);

  g_assert_no_error (error);
  g_assert_true (g_subprocess_communicate_utf8 (process, input, NULL, &output, NULL, &error));
  g_assert_no_error (error);
  lines = g_strsplit (output, "\n", -1);
  g_assert_cmpuint (g_strv_length (lines), >=, n);
  for (guint i = 0; i < n; i++)
    {
      char *end;

      values[i] = g_ascii_strtod (lines[i], &end);
      if (end == lines[i] || *end != '\0')
        g_error ("units does not know %s: %s", expressions[i], lines[i]);
    }
  return values;
}
