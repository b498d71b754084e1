/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the window for a metal of one's own: a copy of the part's metal, each figure to be changed.
 * Keeping it gives it to the document's part. anchor: a widget of the window that it stands over.
 */
void bf_own_metal_window_open (GtkWidget *anchor, BfDocument *document);
