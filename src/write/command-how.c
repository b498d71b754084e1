/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/command-how.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/length-entry.h"

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
bf_command_how_marks (BfCommand *command, const char *value, GError **error)
{
  command->how.marks = bf_rule_marks_find (value);
  return command->how.marks != NULL ||
         refuse (error, "--marks", _ ("must be 1 or 0.5 (mm), or 1/16 or 1/32 (in)"));
}

/* What a bare number means is known only with the part: until then it is as it was given. */
gboolean
bf_command_how_guide_offset (BfCommand *command, const char *value, GError **error)
{
  const BfLengthContext context = { BF_UNITS_MM, NULL };
  double offset_mm = 0.0;

  command->guide_offset = g_strdup (value);
  if (!bf_length_parse (value, &context, &offset_mm, NULL) || offset_mm < 0.0)
    return refuse (
        error, "--guide-offset",
        _ ("must be a length from 0, as 38, 38mm or 1-1/2in: from the guide to the cut"));
  return TRUE;
}

gboolean
bf_command_how_in_units (const BfCommand *command, BfUnits units, BfOutputHow *how, GError **error)
{
  const BfLengthContext context = { units, NULL };
  const BfRuleMarks *marks = command->how.marks;
  double offset_mm = 0.0;

  if (marks != NULL && marks->units != units)
    return refuse (error, "--marks",
                   units == BF_UNITS_IN ? _ ("these are marks of mm; with inches, 1/16 or 1/32")
                                        : _ ("these are marks of inches; with mm, 1 or 0.5"));
  if (command->guide_offset != NULL &&
      !bf_length_parse (command->guide_offset, &context, &offset_mm, error))
    return FALSE;
  *how = command->how;
  how->guide_offset_mm = offset_mm;
  return TRUE;
}

gboolean
bf_command_how_check (const BfCommand *command, GError **error)
{
  gboolean has_template =
      command->template_path != NULL || (command->report && command->paper != NULL);
  gboolean has_pattern = command->patterns->len > 0;
  gboolean has_work = command->marking_path != NULL || command->card_path != NULL;
  const char *const lacks[] = { _ ("goes with --template; none is asked for"),
                                _ ("goes with --pattern; none is asked for"),
                                _ ("goes with --marking or --card; none is asked for") };
  const struct
  {
    const char *name;
    gboolean given, fits;
    guint lack;
  } options[] = {
    { "--corners-only", command->how.template.corners_only, has_template, 0 },
    { "--mirror", command->how.template.mirror, has_template, 0 },
    { "--printer-scale", command->has_printer_scale, has_template, 0 },
    { "--kerf", command->has_kerf, has_pattern, 1 },
    { "--bend-lines", command->has_bend_lines, has_pattern, 1 },
    { "--marks", command->how.marks != NULL, has_work, 2 },
    { "--guide-offset", command->guide_offset != NULL, has_work, 2 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (options); i++)
    if (options[i].given && !options[i].fits)
      return refuse (error, options[i].name, lacks[options[i].lack]);
  return TRUE;
}
