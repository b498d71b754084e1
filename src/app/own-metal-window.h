/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the window for a metal of one's own. id NULL: a new one, a copy of the part's metal, each
 * figure to be changed; keeping it gives it to the document's part. Else the figures of that own
 * metal, which are replaced. anchor: a widget of the window that it stands over. Returns: the new
 * one, owned by the toolkit. */
GtkWindow *bf_own_metal_window_open (GtkWidget *anchor, BfDocument *document, const char *id);
