/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the details of the bending: how tight, by what rule and K, what hands can push, slots. Each
 * change is an edit of its own, made at once. anchor: a widget of the window that it stands over.
 */
void bf_bending_window_open (GtkWidget *anchor, BfDocument *document);

/* The same for the cutting: kerf and slack. */
void bf_cutting_window_open (GtkWidget *anchor, BfDocument *document);
