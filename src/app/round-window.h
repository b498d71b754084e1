/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* A small window that shows what rounding marks would make of each size, lets the person pin those
 * that matter, and does it. step_mm: marks of the rule. anchor: any widget of the window that it
 * stands over. The document has a part. */
void bf_round_window_open (GtkWidget *anchor, BfDocument *document, double step_mm);
