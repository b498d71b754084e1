/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "app/file-dialogs.h"
#include "app/message.h"
#include "app/window-private.h"
#include "write/outputs.h"

/* What the window writes for others to use: the same bytes as the command line's. */

typedef struct
{
  BfWindow *window;
  char *kind; /* "pdf", "svg", "dxf": the suffix too */
} Asked;

static void
asked_free (Asked *asked)
{
  g_object_unref (asked->window);
  g_free (asked->kind);
  g_free (asked);
}
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Asked, asked_free)

static gboolean
write_output (BfWindow *self, const char *kind, const char *path, GError **error)
{
  BfPart *part = bf_document_get_part (bf_window_get_document (self));
  g_autoptr (BfOutputs) outputs = bf_outputs_new (part, NULL, bf_window_get_paper (self));
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();

  if (!(g_str_equal (kind, "pdf") ? bf_outputs_add_template (outputs, batch, path, error)
                                  : bf_outputs_add_pattern (outputs, batch, path, error)))
    return FALSE;
  return bf_output_batch_commit (batch, error);
}

/* The file chosen, with the suffix that says what it is. NULL with a sentence in the window where
 * that can't be written to. Returns: (transfer full). */
static char *
path_for (BfWindow *self, GFile *file, const char *kind)
{
  const char *chosen = g_file_peek_path (file);
  g_autofree char *suffix = g_strconcat (".", kind, NULL);
  g_autofree char *path = NULL;

  if (chosen == NULL)
    {
      bf_window_notify (self, _ ("Nothing was saved: choose a folder of this computer."));
      return NULL;
    }
  if (bf_output_has_suffix (chosen, suffix))
    return g_strdup (chosen);
  path = g_strconcat (chosen, suffix, NULL);
  if (!g_file_test (path, G_FILE_TEST_EXISTS))
    return g_steal_pointer (&path);
  /* Translators: %s is a file's path */
  g_autofree char *words = g_strdup_printf (_ ("Nothing was saved: %s is there already."), path);
  bf_window_notify (self, words);
  return NULL;
}

static void
chosen_cb (GFile *file, gpointer user_data)
{
  g_autoptr (Asked) asked = user_data;
  g_autoptr (GError) error = NULL;
  g_autofree char *path = file != NULL ? path_for (asked->window, file, asked->kind) : NULL;

  if (path == NULL)
    return;
  if (!write_output (asked->window, asked->kind, path, &error))
    {
      bf_message_show (GTK_WINDOW (asked->window), _ ("The file was not saved"), error->message);
      return;
    }
  g_autoptr (GFile) saved = g_file_new_for_path (path);
  g_autofree char *name = g_filename_display_basename (path);
  /* Translators: %s is a file's name */
  g_autofree char *words = g_strdup_printf (_ ("Saved “%s”."), name);
  bf_window_notify_file (asked->window, words, saved);
}

static const char *
dialog_title (const char *kind)
{
  return g_str_equal (kind, "pdf") ? _ ("Save the template") : _ ("Save the pattern");
}

void
bf_window_save_output_action (GtkWidget *widget, const char *name, GVariant *kind)
{
  BfDocument *document = bf_window_get_document (BF_WINDOW (widget));
  g_autofree char *title = bf_document_dup_title (document);
  Asked *asked;
  (void)name;

  if (bf_document_get_part (document) == NULL)
    return;
  asked = g_new0 (Asked, 1);
  asked->window = g_object_ref (BF_WINDOW (widget));
  asked->kind = g_variant_dup_string (kind, NULL);
  g_strdelimit (title, G_DIR_SEPARATOR_S, '-');
  gboolean is_template = g_str_equal (asked->kind, "pdf");
  g_autofree char *file_name =
      g_strconcat (title, is_template ? " template" : "", ".", asked->kind, NULL);
  bf_file_dialog_save (GTK_WINDOW (widget), dialog_title (asked->kind), file_name, chosen_cb,
                       asked);
}
