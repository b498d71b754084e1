/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/file-dialogs.h"

#include <glib/gi18n.h>

#include "core/part-file.h"

typedef struct
{
  BfFileChosen chosen;
  gpointer user_data;
} Asked;

static void
response_cb (GtkNativeDialog *dialog, int response, gpointer user_data)
{
  g_autofree Asked *asked = user_data;
  g_autoptr (GFile) file = NULL;

  if (response == GTK_RESPONSE_ACCEPT)
    file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (dialog));
  gtk_native_dialog_hide (dialog);
  asked->chosen (file, asked->user_data);
  g_object_unref (dialog);
}

/* The dialog keeps itself alive until it is answered. */
static void
ask (GtkFileChooserNative *dialog, BfFileChosen chosen, gpointer user_data)
{
  Asked *asked = g_new (Asked, 1);
  *asked = (Asked){ chosen, user_data };
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (dialog), TRUE);
  g_signal_connect (dialog, "response", G_CALLBACK (response_cb), asked);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (dialog));
}

static void
add_filter (GtkFileChooserNative *dialog, const char *name, const char *pattern)
{
  g_autoptr (GtkFileFilter) filter = gtk_file_filter_new ();
  gtk_file_filter_set_name (filter, name);
  gtk_file_filter_add_pattern (filter, pattern);
  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (dialog), filter);
}

void
bf_file_dialog_open (GtkWindow *parent, BfFileChosen chosen, gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      _ ("Open a part"), parent, GTK_FILE_CHOOSER_ACTION_OPEN, _ ("_Open"), _ ("_Cancel"));
  add_filter (dialog, _ ("Parts"), "*" BF_PART_FILE_SUFFIX);
  add_filter (dialog, _ ("All files"), "*");
  ask (dialog, chosen, user_data);
}

void
bf_file_dialog_save (
    GtkWindow *parent, const char *title, const char *name, BfFileChosen chosen, gpointer user_data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      title, parent, GTK_FILE_CHOOSER_ACTION_SAVE, _ ("_Save"), _ ("_Cancel"));
  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), name);
  ask (dialog, chosen, user_data);
}
