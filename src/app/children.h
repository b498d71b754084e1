/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* How wide a widget would be, and how high at that width, in pixels: (out). */
void bf_widget_natural_size (GtkWidget *widget, int *width, int *height);

/* Unparents every child of a widget, as its dispose has to: a template's children as well, of which
 * the toolkit takes back only those with a name. */
void bf_widget_drop_children (GtkWidget *widget);
