/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the window for a box of drills of one's own. id NULL: a new one; keeping it gives its
 * drills to the document's part. Else that box, which is replaced; a part that has its drills gets
 * the new ones. anchor: a widget of the window that it stands over. Returns: the new one, owned by
 * the toolkit. */
GtkWindow *bf_drill_box_window_open (GtkWidget *anchor, BfDocument *document, const char *id);
