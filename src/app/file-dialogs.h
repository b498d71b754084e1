/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* The one place that asks the toolkit for files: its way of asking changes after GTK 4.8. */

/* file: what was chosen, or NULL where the person thought better of it. */
typedef void (*BfFileChosen) (GFile *file, gpointer user_data);

/* Asks for a part file to open. */
void bf_file_dialog_open (GtkWindow *parent, BfFileChosen chosen, gpointer user_data);

/* Asks where to put a file. title is translated; name is what it would be called, with its
 * suffix; folder may be NULL. */
void bf_file_dialog_save (GtkWindow *parent,
                          const char *title,
                          const char *name,
                          BfFileChosen chosen,
                          gpointer user_data);
