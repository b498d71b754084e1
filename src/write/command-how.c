/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/command-how.h"

#include <string.h>

#include <glib/gi18n.h>

static gboolean
refuse (GError **error, const char *option, const char *what)
{
  g_set_error (error, BF_COMMAND_ERROR, BF_COMMAND_ERROR_USAGE, "%s: %s", option, what);
  return FALSE;
}

gboolean
bf_command_how_corners_only (BfCommand *command, const char *value, GError **error)
{
  (void)value;
  (void)error;
  command->how.template.corners_only = TRUE;
  return TRUE;
}

gboolean
bf_command_how_mirror (BfCommand *command, const char *value, GError **error)
{
  (void)value;
  (void)error;
  command->how.template.mirror = TRUE;
  return TRUE;
}

/* One factor, which must end where end stands. */
static gboolean
read_factor (const char *text, const char *end, double *factor)
{
  char *stop = NULL;

  if (!g_ascii_isdigit (text[0]) && text[0] != '.')
    return FALSE;
  *factor = g_ascii_strtod (text, &stop);
  return stop == end && stop != text;
}

gboolean
bf_command_how_printer_scale (BfCommand *command, const char *value, GError **error)
{
  const char *comma = strchr (value, ',');
  BfPrinterScale *scale = &command->how.template.printer;
  g_autoptr (GError) fault = NULL;

  command->has_printer_scale = TRUE;
  if (comma == NULL || !read_factor (value, comma, &scale->x) ||
      !read_factor (comma + 1, value + strlen (value), &scale->y))
    return refuse (error, "--printer-scale",
                   _ ("must be two factors, across and down the page, as 0.992,1.004 where bars of "
                      "100 mm measure 99.2 and 100.4 mm"));
  if (!bf_printer_scale_is_sane (scale, &fault))
    return refuse (error, "--printer-scale", fault->message);
  return TRUE;
}

gboolean
bf_command_how_kerf (BfCommand *command, const char *value, GError **error)
{
  command->has_kerf = TRUE;
  command->how.kerf = g_str_equal (value, "on");
  if (!command->how.kerf && !g_str_equal (value, "off"))
    return refuse (error, "--kerf", _ ("must be on or off"));
  return TRUE;
}

gboolean
bf_command_how_bend_lines (BfCommand *command, const char *value, GError **error)
{
  static const char *const ways[] = { "in", "out", "notches" };

  command->has_bend_lines = TRUE;
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    if (g_str_equal (value, ways[i]))
      {
        command->how.bend_lines = (BfBendLines)i;
        return TRUE;
      }
  return refuse (error, "--bend-lines", _ ("must be in, out or notches"));
}

gboolean
bf_command_how_check (const BfCommand *command, GError **error)
{
  gboolean has_template =
      command->template_path != NULL || (command->report && command->paper != NULL);
  gboolean has_pattern = command->patterns->len > 0;
  const struct
  {
    const char *name;
    gboolean given, fits;
  } options[] = {
    { "--corners-only", command->how.template.corners_only, has_template },
    { "--mirror", command->how.template.mirror, has_template },
    { "--printer-scale", command->has_printer_scale, has_template },
    { "--kerf", command->has_kerf, has_pattern },
    { "--bend-lines", command->has_bend_lines, has_pattern },
  };

  for (guint i = 0; i < G_N_ELEMENTS (options); i++)
    if (options[i].given && !options[i].fits)
      return refuse (error, options[i].name,
                     i < 3 ? _ ("goes with --template; none is asked for")
                           : _ ("goes with --pattern; none is asked for"));
  return TRUE;
}
