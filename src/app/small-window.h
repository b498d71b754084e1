/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* A small window of rows over the one that a widget is in: a name and a field each, words below,
 * buttons at the bottom. Escape closes it. */

typedef struct
{
  GtkWindow *window;
  GtkGrid *grid;
  GtkBox *buttons;
  int n_rows;
} BfSmallWindow;

/* Owned by the toolkit; the struct lives as long as the window. anchor: any widget of the window
 * that it stands over. */
BfSmallWindow *bf_small_window_new (GtkWidget *anchor, const char *title);

/* Adds a row. The label is the field's name for a screen reader, too. */
void bf_small_window_add (BfSmallWindow *self, const char *label, GtkWidget *field);

/* Adds a line over the whole width. Returns: its label, for words that change (role status). */
GtkLabel *bf_small_window_add_words (BfSmallWindow *self, const char *words);

/* Adds something over the whole width. */
void bf_small_window_add_wide (BfSmallWindow *self, GtkWidget *widget);

/* Adds a button that Return presses, too, where suggested. Returns: the button. */
GtkWidget *bf_small_window_add_button (BfSmallWindow *self, const char *label, gboolean suggested);

/* Adds the button that closes it, and shows it. */
void bf_small_window_present (BfSmallWindow *self, const char *close_label);
