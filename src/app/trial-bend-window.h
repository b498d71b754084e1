/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the window where the strips of a trial bend are typed in, with K and its error at once
 * below; keeping it gives it to the document's part. anchor: a widget of the window that it stands
 * over. */
void bf_trial_bend_window_open (GtkWidget *anchor, BfDocument *document);
