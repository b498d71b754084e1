/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/demo.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>

#include <glib/gi18n.h>
#include <glib/gstdio.h>

#include "core/part-file.h"
#include "write/bench-outputs.h"
#include "write/data-dir.h"
#include "write/output-file.h"
#include "write/outputs.h"

#define DEMO_NAME "spoke-tray"

static char *
demo_path (const char *dir, const char *tail)
{
  g_autofree char *name = g_strconcat (DEMO_NAME, tail, NULL);

  return g_build_filename (dir, name, NULL);
}

char *
bf_demo_part_path (const char *dir)
{
  g_return_val_if_fail (dir != NULL, NULL);

  return demo_path (dir, BF_PART_FILE_SUFFIX);
}

/* The example's text as it was written by hand. */
static GBytes *
read_example (GError **error)
{
  g_autofree char *path = bf_data_path ("examples/" DEMO_NAME BF_PART_FILE_SUFFIX);
  g_autofree char *shown = g_filename_display_name (path);
  g_autoptr (GError) local = NULL;
  char *text;
  gsize length;

  if (g_file_get_contents (path, &text, &length, &local))
    return g_bytes_new_take (text, length);
  /* Translators: a file's name. */
  g_set_error (error, BF_COMMAND_ERROR, BF_COMMAND_ERROR_DATA,
               _ ("%s: the demo's part is not there; is Benchfold installed whole?"), shown);
  return NULL;
}

static gboolean
add_outputs (const BfCommand *command, BfOutputBatch *batch, BfPart *part, GError **error)
{
  g_autoptr (BfOutputs) outputs =
      bf_outputs_new (part, command->has_units ? &command->units : NULL,
                      command->paper != NULL ? command->paper : bf_paper_of_locale ());
  g_autofree char *template_path = demo_path (command->demo_dir, "-template.pdf");
  g_autofree char *report_path = demo_path (command->demo_dir, "-report.json");
  g_autofree char *svg_path = demo_path (command->demo_dir, "-pattern.svg");
  g_autofree char *dxf_path = demo_path (command->demo_dir, "-pattern.dxf");
  g_autofree char *marking_path = demo_path (command->demo_dir, "-marking.pdf");
  g_autofree char *card_path = demo_path (command->demo_dir, "-card.pdf");
  g_autofree char *model_path = demo_path (command->demo_dir, "-model.pdf");
  g_autoptr (GBytes) report = NULL;
  char *text = bf_outputs_report (outputs);

  report = g_bytes_new_take (text, strlen (text));
  if (!bf_outputs_add_template (outputs, batch, template_path, error))
    return FALSE;
  bf_output_batch_add (batch, report_path, report);
  return bf_outputs_add_pattern (outputs, batch, svg_path, error) &&
         bf_outputs_add_pattern (outputs, batch, dxf_path, error) &&
         bf_outputs_add_marking (outputs, batch, marking_path, error) &&
         bf_outputs_add_card (outputs, batch, card_path, error) &&
         bf_outputs_add_model (outputs, batch, model_path, error);
}

static void
say_where (const BfCommand *command)
{
  static const char *const tails[] = { BF_PART_FILE_SUFFIX, "-template.pdf", "-report.json",
                                       "-pattern.svg",      "-pattern.dxf",  "-marking.pdf",
                                       "-card.pdf",         "-model.pdf" };

  g_print ("%s\n", _ ("The demo's part and what was made of it:"));
  for (guint i = 0; i < G_N_ELEMENTS (tails); i++)
    {
      g_autofree char *path = demo_path (command->demo_dir, tails[i]);
      g_autofree char *shown = g_filename_display_name (path);

      g_print ("  %s\n", shown);
    }
}

gboolean
bf_demo_write (const BfCommand *command, GError **error)
{
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
  g_autofree char *part_path = NULL;
  g_autoptr (GBytes) text = NULL;
  g_autoptr (BfPart) part = NULL;

  g_return_val_if_fail (command != NULL && command->demo_dir != NULL, FALSE);

  text = read_example (error);
  if (text == NULL)
    return FALSE;
  part = bf_part_from_text (g_bytes_get_data (text, NULL), (gssize)g_bytes_get_size (text), error);
  if (part == NULL)
    return FALSE;

  part_path = bf_demo_part_path (command->demo_dir);
  bf_output_batch_add (batch, part_path, text);
  if (!add_outputs (command, batch, part, error) ||
      !bf_output_make_folder (command->demo_dir, error) || !bf_output_batch_commit (batch, error))
    return FALSE;
  say_where (command);
  return TRUE;
}
