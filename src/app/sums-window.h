/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* "Show the sum": opens the window with the sums behind the numbers of a bend, each with its
 * figures and its source. flange: whose bend to begin with; another name or "" begins with the
 * first. settings: where the plate of the person's hand brake is noted; may be NULL. anchor: a
 * widget of the window that it stands over. */
void bf_sums_window_open (GtkWidget *anchor,
                          BfDocument *document,
                          GSettings *settings,
                          const char *flange);
