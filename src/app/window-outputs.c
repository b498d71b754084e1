/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "app/file-dialogs.h"
#include "app/message.h"
#include "app/saving.h"
#include "app/settings.h"
#include "app/window-private.h"
#include "write/bench-outputs.h"

/* What the window writes for others to use: the same bytes as the command line's. */

typedef gboolean (*Add) (BfOutputs *outputs,
                         BfOutputBatch *batch,
                         const char *path,
                         GError **error);

/* What can be saved. */
typedef struct
{
  const char *target; /* of the action */
  const char *suffix; /* NULL of a folder */
  const char *title;  /* of the dialogue that asks where to */
  const char *words;  /* in the file's name, after the part's; or NULL */
  Add add;
} Kind;

/* The folder is there before its files are. */
static gboolean
add_pack (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  return bf_output_make_folder (path, error) && bf_outputs_add_pack (outputs, batch, path, error);
}

static const Kind kinds[] = {
  { "template", "pdf", N_ ("Save the template"), "template", bf_outputs_add_template },
  { "svg", "svg", N_ ("Save the pattern"), NULL, bf_outputs_add_pattern },
  { "dxf", "dxf", N_ ("Save the pattern"), NULL, bf_outputs_add_pattern },
  { "pdf", "pdf", N_ ("Save the pattern"), "pattern", bf_outputs_add_pattern },
  { "pack", NULL, N_ ("Make the pack"), "pack", add_pack },
  { "marking", "pdf", N_ ("Save the marking out"), "marking", bf_outputs_add_marking },
  { "distances", "csv", N_ ("Save the marking out"), "marking", bf_outputs_add_marking },
  { "card", "pdf", N_ ("Save the make card"), "card", bf_outputs_add_card },
  { "model", "pdf", N_ ("Save the card model"), "model", bf_outputs_add_model },
  { "gauges", "pdf", N_ ("Save the angle gauges"), "gauges", bf_outputs_add_gauges },
  { "strip", "pdf", N_ ("Save the strips for a trial bend"), "strip", bf_outputs_add_strip },
};

static const Kind *
find_kind (const char *target)
{
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (g_str_equal (kinds[i].target, target))
      return &kinds[i];
  return NULL;
}

typedef struct
{
  BfWindow *window;
  const Kind *kind;
} Asked;

static void
asked_free (Asked *asked)
{
  g_object_unref (asked->window);
  g_free (asked);
}
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Asked, asked_free)

/* The file chosen, with the suffix that says what it is. NULL with a sentence in the window where
 * that can't be written to. Returns: (transfer full). */
static char *
path_for (BfWindow *self, GFile *file, const char *ending)
{
  const char *chosen = g_file_peek_path (file);
  g_autofree char *suffix = ending != NULL ? g_strconcat (".", ending, NULL) : NULL;
  g_autofree char *path = NULL;

  if (chosen == NULL)
    {
      bf_window_notify (self, _ ("Nothing was saved: choose a folder of this computer."));
      return NULL;
    }
  if (suffix == NULL || bf_output_has_suffix (chosen, suffix))
    return g_strdup (chosen);
  path = g_strconcat (chosen, suffix, NULL);
  if (!g_file_test (path, G_FILE_TEST_EXISTS))
    return g_steal_pointer (&path);
  /* Translators: %s is a file's path */
  g_autofree char *words = g_strdup_printf (_ ("Nothing was saved: %s is there already."), path);
  bf_window_notify (self, words);
  return NULL;
}

/* One file being saved. */
typedef struct
{
  BfWindow *window;
  const Kind *kind;
  char *path;
  BfOutputs *outputs;
} Job;

static void
job_free (Job *job)
{
  g_object_unref (job->window);
  g_free (job->path);
  bf_outputs_free (job->outputs);
  g_free (job);
}
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Job, job_free)

/* In a thread: what it draws was folded before, and does not change. */
static gboolean
save_it (gpointer data, GError **error)
{
  Job *job = data;
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();

  return job->kind->add (job->outputs, batch, job->path, error) &&
         bf_output_batch_commit (batch, error);
}

static void
saved_cb (gpointer data, const GError *error)
{
  g_autoptr (Job) job = data;
  g_autofree char *name = g_filename_display_basename (job->path);
  g_autofree char *words = NULL;
  g_autoptr (GFile) saved = NULL;

  if (!gtk_widget_get_mapped (GTK_WIDGET (job->window)))
    return;
  if (g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED))
    {
      bf_window_notify (job->window, _ ("Stopped: nothing was saved."));
      return;
    }
  if (error != NULL)
    {
      bf_message_show (GTK_WINDOW (job->window), _ ("The file was not saved"), error->message);
      return;
    }
  saved = g_file_new_for_path (job->path);
  /* Translators: %s is a file's name */
  words = g_strdup_printf (_ ("Saved “%s”."), name);
  bf_window_notify_file (job->window, words, saved);
}

static BfOutputs *
outputs_of (BfWindow *self)
{
  BfPart *part = bf_document_get_part (bf_window_get_document (self));
  BfOutputs *outputs = bf_outputs_new (part, NULL, bf_window_get_paper (self));
  BfOutputHow how = *bf_window_get_how (self);

  how.marks = bf_settings_marks (bf_window_get_settings (self), part->units);
  how.guide_offset_mm = bf_settings_guide_offset_mm (bf_window_get_settings (self));
  bf_outputs_set_how (outputs, &how);
  return outputs;
}

static void
chosen_cb (GFile *file, gpointer user_data)
{
  g_autoptr (Asked) asked = user_data;
  g_autofree char *path = file != NULL ? path_for (asked->window, file, asked->kind->suffix) : NULL;
  Job *job;

  if (path == NULL)
    return;
  job = g_new0 (Job, 1);
  job->window = g_object_ref (asked->window);
  job->kind = asked->kind;
  job->path = g_steal_pointer (&path);
  job->outputs = outputs_of (asked->window);
  bf_saving_run (GTK_WINDOW (asked->window), save_it, saved_cb, job);
}

void
bf_window_save_output_action (GtkWidget *widget, const char *name, GVariant *target)
{
  const Kind *kind = find_kind (g_variant_get_string (target, NULL));
  BfDocument *document = bf_window_get_document (BF_WINDOW (widget));
  g_autofree char *title = bf_document_dup_title (document);
  g_autofree char *file_name = NULL;
  Asked *asked;
  (void)name;

  if (bf_document_get_part (document) == NULL || kind == NULL)
    return;
  asked = g_new0 (Asked, 1);
  asked->window = g_object_ref (BF_WINDOW (widget));
  asked->kind = kind;
  g_strdelimit (title, G_DIR_SEPARATOR_S, '-');
  file_name =
      g_strconcat (title, kind->words != NULL ? " " : "", kind->words != NULL ? kind->words : "",
                   kind->suffix != NULL ? "." : "", kind->suffix, NULL);
  bf_file_dialog_save (GTK_WINDOW (widget), _ (kind->title), file_name, chosen_cb, asked);
}
