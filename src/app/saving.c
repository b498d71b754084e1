/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/saving.h"

#include <glib/gi18n.h>

#include "app/small-window.h"
#include "write/output-watch.h"

#define MOMENT_MS 500 /* what is over by then needs no window */
#define TICK_MS 100

typedef struct
{
  GtkWindow *parent;
  BfSavingWork work;
  BfSavingDone done;
  gpointer data;
  BfOutputWatch watch;
  guint timer;         /* source, or 0 */
  GtkWindow *window;   /* NULL before the moment is over, and when it was closed */
  GtkProgressBar *bar; /* in it */
  GtkLabel *words;
} Saving;

static void
saving_free (gpointer data)
{
  Saving *saving = data;

  g_object_unref (saving->parent);
  g_free (saving);
}

/* ---- what is seen ------------------------------------------------------------------------- */

/* Closed by its button, by Escape, or with the window that it stands over. */
static void
stop_cb (Saving *saving)
{
  bf_output_watch_stop (&saving->watch);
  saving->window = NULL;
}

static void
open_window (Saving *saving)
{
  BfSmallWindow *frame = bf_small_window_new (GTK_WIDGET (saving->parent), _ ("Saving"));

  saving->words = bf_small_window_add_words (frame, "");
  saving->bar = GTK_PROGRESS_BAR (gtk_progress_bar_new ());
  gtk_accessible_update_property (GTK_ACCESSIBLE (saving->bar), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("How far it is"), -1);
  bf_small_window_add_wide (frame, GTK_WIDGET (saving->bar));
  saving->window = frame->window;
  g_signal_connect_swapped (saving->window, "destroy", G_CALLBACK (stop_cb), saving);
  bf_small_window_present (frame, _ ("_Stop"));
}

static void
show_how_far (Saving *saving)
{
  g_autofree char *words = NULL;
  guint done, n;

  bf_output_watch_read (&saving->watch, &done, &n);
  if (n == 0)
    {
      gtk_label_set_label (saving->words, _ ("The pages are laid out."));
      gtk_progress_bar_pulse (saving->bar);
      return;
    }
  /* Translators: which page of how many is drawn */
  words = g_strdup_printf (_ ("Page %u of %u"), MIN (done + 1, n), n);
  gtk_label_set_label (saving->words, words);
  gtk_progress_bar_set_fraction (saving->bar, (double)done / n);
}

static gboolean
tick_cb (gpointer user_data)
{
  Saving *saving = user_data;

  if (saving->window != NULL)
    show_how_far (saving);
  return G_SOURCE_CONTINUE;
}

static gboolean
moment_over_cb (gpointer user_data)
{
  Saving *saving = user_data;

  saving->timer = 0;
  if (!gtk_widget_get_mapped (GTK_WIDGET (saving->parent)))
    return G_SOURCE_REMOVE;
  open_window (saving);
  show_how_far (saving);
  saving->timer = g_timeout_add (TICK_MS, tick_cb, saving);
  return G_SOURCE_REMOVE;
}

/* ---- the work ----------------------------------------------------------------------------- */

static void
work_in_thread (GTask *task, gpointer source, gpointer task_data, GCancellable *cancellable)
{
  Saving *saving = task_data;
  GError *error = NULL;
  (void)source;
  (void)cancellable;

  bf_output_watch_set (&saving->watch);
  if (saving->work (saving->data, &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
  bf_output_watch_set (NULL);
}

static void
over_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  Saving *saving = g_task_get_task_data (G_TASK (result));
  g_autoptr (GError) error = NULL;
  (void)source;
  (void)user_data;

  g_clear_handle_id (&saving->timer, g_source_remove);
  if (saving->window != NULL)
    {
      g_signal_handlers_disconnect_by_data (saving->window, saving);
      gtk_window_destroy (g_steal_pointer (&saving->window));
    }
  g_task_propagate_boolean (G_TASK (result), &error);
  saving->done (saving->data, error);
}

void
bf_saving_run (GtkWindow *parent, BfSavingWork work, BfSavingDone done, gpointer data)
{
  g_autoptr (GTask) task = NULL;
  Saving *saving;

  g_return_if_fail (GTK_IS_WINDOW (parent) && work != NULL && done != NULL);

  task = g_task_new (NULL, NULL, over_cb, NULL);
  saving = g_new0 (Saving, 1);
  saving->parent = g_object_ref (parent);
  saving->work = work;
  saving->done = done;
  saving->data = data;
  saving->timer = g_timeout_add (MOMENT_MS, moment_over_cb, saving);
  g_task_set_task_data (task, saving, saving_free);
  g_task_run_in_thread (task, work_in_thread);
}
