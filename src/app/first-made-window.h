/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the window where the sizes of the first part made are typed in: what was likely done
 * otherwise than thought stands below at once, and one button corrects the next blank. anchor: a
 * widget of the window that it stands over. */
void bf_first_made_window_open (GtkWidget *anchor, BfDocument *document);
