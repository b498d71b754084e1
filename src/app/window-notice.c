/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/show-file.h"
#include "app/window-private.h"

/* The quiet line under the header bar. */

void
bf_window_close_notice (BfWindow *self)
{
  gtk_revealer_set_reveal_child (self->notice_revealer, FALSE);
}

void
bf_window_show_noticed_file (BfWindow *self)
{
  if (self->notice_file != NULL)
    bf_show_in_folder (self->notice_file);
}

/* A long sentence takes more lines; beside a button it is one line, however long a file's name is
 * (GTK 4.8 is at odds with itself about the height of words that wrap beside a button). */
static void
notify (BfWindow *self, const char *sentence, GFile *file)
{
  gtk_label_set_label (self->notice_label, sentence);
  gtk_label_set_wrap (self->notice_label, file == NULL);
  gtk_label_set_ellipsize (self->notice_label,
                           file != NULL ? PANGO_ELLIPSIZE_MIDDLE : PANGO_ELLIPSIZE_NONE);
  g_set_object (&self->notice_file, file);
  gtk_widget_set_visible (self->notice_button, file != NULL);
  gtk_revealer_set_reveal_child (self->notice_revealer, TRUE);
}

void
bf_window_notify (BfWindow *self, const char *sentence)
{
  g_return_if_fail (BF_IS_WINDOW (self) && sentence != NULL);
  notify (self, sentence, NULL);
}

void
bf_window_notify_file (BfWindow *self, const char *sentence, GFile *file)
{
  g_return_if_fail (BF_IS_WINDOW (self) && G_IS_FILE (file));

  notify (self, sentence, file);
}
