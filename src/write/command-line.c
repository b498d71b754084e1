/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/command-line.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/names.h"
#include "core/part-file.h"
#include "write/command-how.h"
#include "write/demo.h"
#include "write/output-batch.h"

G_DEFINE_QUARK (bf - command - error - quark, bf_command_error)

typedef gboolean (*ApplyFunc) (BfCommand *command, const char *value, GError **error);

typedef struct
{
  const char *name;
  gboolean takes_value;
  gboolean repeats;
  ApplyFunc apply;
} Option;

static gboolean apply_report (BfCommand *command, const char *value, GError **error);
static gboolean apply_template (BfCommand *command, const char *value, GError **error);
static gboolean apply_pattern (BfCommand *command, const char *value, GError **error);
static gboolean apply_marking (BfCommand *command, const char *value, GError **error);
static gboolean apply_card (BfCommand *command, const char *value, GError **error);
static gboolean apply_model (BfCommand *command, const char *value, GError **error);
static gboolean apply_gauges (BfCommand *command, const char *value, GError **error);
static gboolean apply_pack (BfCommand *command, const char *value, GError **error);
static gboolean apply_strip (BfCommand *command, const char *value, GError **error);
static gboolean apply_demo (BfCommand *command, const char *value, GError **error);
static gboolean apply_paper (BfCommand *command, const char *value, GError **error);
static gboolean apply_units (BfCommand *command, const char *value, GError **error);
static gboolean apply_help (BfCommand *command, const char *value, GError **error);
static gboolean apply_version (BfCommand *command, const char *value, GError **error);

static const Option options[] = {
  { "--report", FALSE, FALSE, apply_report },
  { "--template", TRUE, FALSE, apply_template },
  { "--pattern", TRUE, TRUE, apply_pattern },
  { "--marking", TRUE, FALSE, apply_marking },
  { "--strip", TRUE, FALSE, apply_strip },
  { "--demo", TRUE, FALSE, apply_demo },
  { "--paper", TRUE, FALSE, apply_paper },
  { "--units", TRUE, FALSE, apply_units },
  { "--help", FALSE, FALSE, apply_help },
  { "--version", FALSE, FALSE, apply_version },
  { "--card", TRUE, FALSE, apply_card },
  { "--model", TRUE, FALSE, apply_model },
  { "--gauges", TRUE, FALSE, apply_gauges },
  { "--pack", TRUE, FALSE, apply_pack },
  { "--corners-only", FALSE, FALSE, bf_command_how_corners_only },
  { "--mirror", FALSE, FALSE, bf_command_how_mirror },
  { "--kerf", TRUE, FALSE, bf_command_how_kerf },
  { "--bend-lines", TRUE, FALSE, bf_command_how_bend_lines },
  { "--printer-scale", TRUE, FALSE, bf_command_how_printer_scale },
  { "--marks", TRUE, FALSE, bf_command_how_marks },
  { "--guide-offset", TRUE, FALSE, bf_command_how_guide_offset },
};

/* Where the parser stands in argv. */
typedef struct
{
  int argc, at;
  char **argv;
  gboolean seen[G_N_ELEMENTS (options)];
} Arguments;

/* "subject: what". Returns: FALSE, so that a caller can return it. */
static gboolean
refuse (GError **error, const char *subject, const char *what)
{
  g_autofree char *shown = g_filename_display_name (subject);

  g_set_error (error, BF_COMMAND_ERROR, BF_COMMAND_ERROR_USAGE, "%s: %s", shown, what);
  return FALSE;
}

static gboolean
apply_report (BfCommand *command, const char *value, GError **error)
{
  (void)value;
  (void)error;
  command->report = TRUE;
  return TRUE;
}

static gboolean
apply_template (BfCommand *command, const char *value, GError **error)
{
  (void)error;
  command->template_path = g_strdup (value);
  return TRUE;
}

static gboolean
apply_pattern (BfCommand *command, const char *value, GError **error)
{
  if (!bf_output_has_suffix (value, ".svg") && !bf_output_has_suffix (value, ".dxf") &&
      !bf_output_has_suffix (value, ".pdf"))
    return refuse (error, "--pattern", _ ("the file's name must end in .svg, .dxf or .pdf"));
  g_ptr_array_add (command->patterns, g_strdup (value));
  return TRUE;
}

static gboolean
apply_marking (BfCommand *command, const char *value, GError **error)
{
  if (!bf_output_has_suffix (value, ".pdf") && !bf_output_has_suffix (value, ".csv"))
    return refuse (error, "--marking", _ ("the file's name must end in .pdf or .csv"));
  command->marking_path = g_strdup (value);
  return TRUE;
}

static gboolean
apply_card (BfCommand *command, const char *value, GError **error)
{
  (void)error;
  command->card_path = g_strdup (value);
  return TRUE;
}

static gboolean
apply_model (BfCommand *command, const char *value, GError **error)
{
  (void)error;
  command->model_path = g_strdup (value);
  return TRUE;
}

static gboolean
apply_gauges (BfCommand *command, const char *value, GError **error)
{
  (void)error;
  command->gauges_path = g_strdup (value);
  return TRUE;
}

static gboolean
apply_pack (BfCommand *command, const char *value, GError **error)
{
  (void)error;
  command->pack_dir = g_strdup (value);
  return TRUE;
}

static gboolean
apply_strip (BfCommand *command, const char *value, GError **error)
{
  if (!bf_output_has_suffix (value, ".pdf"))
    return refuse (error, "--strip", _ ("the file's name must end in .pdf"));
  command->strip_path = g_strdup (value);
  return TRUE;
}

static gboolean
apply_demo (BfCommand *command, const char *value, GError **error)
{
  (void)error;
  command->demo_dir = g_strdup (value);
  return TRUE;
}

static gboolean
apply_paper (BfCommand *command, const char *value, GError **error)
{
  g_autofree char *names = NULL;
  g_autofree char *what = NULL;

  command->paper = bf_paper_find (value);
  if (command->paper != NULL)
    return TRUE;
  names = bf_paper_names ();
  /* Translators: the paper that was asked for and those there are, "A4, A3, Letter". */
  what = g_strdup_printf (_ ("there is no paper “%s” here; choose from %s"), value, names);
  return refuse (error, "--paper", what);
}

static gboolean
apply_units (BfCommand *command, const char *value, GError **error)
{
  int units = bf_names_find (&bf_names_units, value);

  if (units < 0)
    return refuse (error, "--units", _ ("must be mm or in"));
  command->has_units = TRUE;
  command->units = (BfUnits)units;
  return TRUE;
}

static gboolean
apply_help (BfCommand *command, const char *value, GError **error)
{
  (void)value;
  (void)error;
  command->help = TRUE;
  return TRUE;
}

static gboolean
apply_version (BfCommand *command, const char *value, GError **error)
{
  (void)value;
  (void)error;
  command->version = TRUE;
  return TRUE;
}

/* The option that arg names, as "--paper" or as "--paper=A4", or NULL. */
static const Option *
find_option (const char *arg)
{
  gsize length = strcspn (arg, "=");

  for (guint i = 0; i < G_N_ELEMENTS (options); i++)
    if (strlen (options[i].name) == length && strncmp (options[i].name, arg, length) == 0)
      return &options[i];
  return NULL;
}

/* The value of an option: what follows "=", else the next argument. NULL with error set where it
 * is missing. */
static const char *
take_value (Arguments *arguments, const Option *option, GError **error)
{
  const char *value = strchr (arguments->argv[arguments->at], '=');

  if (value != NULL)
    value++;
  else if (arguments->at + 1 < arguments->argc &&
           !g_str_has_prefix (arguments->argv[arguments->at + 1], "--"))
    value = arguments->argv[++arguments->at];
  if (value == NULL || value[0] == '\0')
    {
      refuse (error, option->name, _ ("a value must follow it"));
      return NULL;
    }
  return value;
}

static gboolean
take_option (BfCommand *command, Arguments *arguments, GError **error)
{
  const char *arg = arguments->argv[arguments->at];
  const Option *option = find_option (arg);
  const char *value = NULL;
  gboolean *seen;

  if (option == NULL)
    return refuse (error, arg, _ ("there is no such option (see benchfold --help)"));

  seen = &arguments->seen[option - options];
  if (*seen && !option->repeats)
    return refuse (error, option->name, _ ("must stand only once"));
  *seen = TRUE;
  if (!option->takes_value && strchr (arg, '=') != NULL)
    return refuse (error, option->name, _ ("takes no value"));
  if (option->takes_value && (value = take_value (arguments, option, error)) == NULL)
    return FALSE;
  return option->apply (command, value, error);
}

static gboolean
take_all (BfCommand *command, Arguments *arguments, GError **error)
{
  gboolean only_files = FALSE;

  for (arguments->at = 1; arguments->at < arguments->argc; arguments->at++)
    {
      const char *arg = arguments->argv[arguments->at];

      if (!only_files && g_str_equal (arg, "--"))
        only_files = TRUE;
      else if (only_files || arg[0] != '-')
        g_ptr_array_add (command->files, g_strdup (arg));
      else if (!take_option (command, arguments, error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
has_outputs (const BfCommand *command)
{
  return command->report || command->template_path != NULL || command->patterns->len > 0 ||
         command->marking_path != NULL || command->strip_path != NULL ||
         command->card_path != NULL || command->model_path != NULL ||
         command->gauges_path != NULL || command->pack_dir != NULL;
}

static gboolean
check_demo (const BfCommand *command, GError **error)
{
  if (has_outputs (command))
    return refuse (error, "--demo", _ ("writes its own outputs; ask for no others with it"));
  if (command->files->len > 0)
    return refuse (error, "--demo", _ ("brings its own part; name no FILE with it"));
  return TRUE;
}

static gboolean
check_files (const BfCommand *command, GError **error)
{
  const char *first = command->files->len > 0 ? g_ptr_array_index (command->files, 0) : "";

  if (first[0] == '\0')
    return refuse (error, "FILE", _ ("a part file must be named for outputs"));
  if (command->files->len > 1)
    return refuse (error, g_ptr_array_index (command->files, 1),
                   _ ("outputs are of one FILE; run once for each"));
  return TRUE;
}

/* No output may replace the part or another output. */
static gboolean
check_targets (const BfCommand *command, GError **error)
{
  g_autoptr (GPtrArray) paths = g_ptr_array_new ();
  char *const bench[] = { command->card_path, command->model_path, command->gauges_path };

  for (guint i = 0; i < G_N_ELEMENTS (bench); i++)
    if (bench[i] != NULL)
      g_ptr_array_add (paths, bench[i]);
  if (command->template_path != NULL)
    g_ptr_array_add (paths, command->template_path);
  if (command->marking_path != NULL)
    g_ptr_array_add (paths, command->marking_path);
  if (command->strip_path != NULL)
    g_ptr_array_add (paths, command->strip_path);
  for (guint i = 0; i < command->patterns->len; i++)
    g_ptr_array_add (paths, g_ptr_array_index (command->patterns, i));

  for (guint i = 0; i < paths->len; i++)
    {
      const char *path = g_ptr_array_index (paths, i);

      if (bf_output_same_file (path, g_ptr_array_index (command->files, 0)))
        return refuse (error, path, _ ("this output would replace the part itself"));
      for (guint k = 0; k < i; k++)
        if (bf_output_same_file (path, g_ptr_array_index (paths, k)))
          return refuse (error, path, _ ("two outputs would go to this file"));
    }
  return TRUE;
}

static gboolean
check (const BfCommand *command, GError **error)
{
  if (command->help || command->version)
    return TRUE;
  if (command->demo_dir != NULL)
    return check_demo (command, error) && bf_command_how_check (command, error);
  if (!bf_command_how_check (command, error))
    return FALSE;
  if (has_outputs (command))
    return check_files (command, error) && check_targets (command, error);
  if (command->paper != NULL)
    return refuse (error, "--paper", _ ("goes with an output; none is asked for"));
  if (command->has_units)
    return refuse (error, "--units", _ ("goes with an output; none is asked for"));
  return TRUE;
}

BfCommand *
bf_command_parse (int argc, char **argv, GError **error)
{
  g_autoptr (BfCommand) command = g_new0 (BfCommand, 1);
  Arguments arguments = { .argc = argc, .argv = argv };

  g_return_val_if_fail (argv != NULL || argc == 0, NULL);

  command->files = g_ptr_array_new_with_free_func (g_free);
  command->patterns = g_ptr_array_new_with_free_func (g_free);
  if (!take_all (command, &arguments, error) || !check (command, error))
    return NULL;
  if (command->demo_dir != NULL)
    g_ptr_array_add (command->files, bf_demo_part_path (command->demo_dir));
  return g_steal_pointer (&command);
}

void
bf_command_free (BfCommand *command)
{
  if (command == NULL)
    return;
  g_ptr_array_unref (command->files);
  g_ptr_array_unref (command->patterns);
  g_free (command->template_path);
  g_free (command->marking_path);
  g_free (command->card_path);
  g_free (command->model_path);
  g_free (command->gauges_path);
  g_free (command->pack_dir);
  g_free (command->strip_path);
  g_free (command->demo_dir);
  g_free (command->guide_offset);
  g_free (command);
}

gboolean
bf_command_opens_window (const BfCommand *command)
{
  g_return_val_if_fail (command != NULL, FALSE);

  return !command->help && !command->version && !has_outputs (command);
}
