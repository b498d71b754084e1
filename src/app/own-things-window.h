/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "core/own-things.h"

/* Opens the list of the person's own metals, boxes of drills or trial bends: each can be changed,
 * or taken away and put back while the window is open. anchor: a widget of the window that it
 * stands over. */
void bf_own_things_window_open (GtkWidget *anchor, BfDocument *document, BfOwnThing what);
