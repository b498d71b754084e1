/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* Opens the window for the pens that the person's templates are drawn with: a colour and a width a
 * kind of line. What is drawn from the document is drawn again once they are kept. anchor: a widget
 * of the window that it stands over. */
void bf_pens_window_open (GtkWidget *anchor, BfDocument *document);
