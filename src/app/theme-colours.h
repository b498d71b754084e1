/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* The one place that asks the theme for colours and the size of words: its way of answering changes
 * after GTK 4.8. */

/* TRUE where words are light on a dark ground. */
gboolean bf_theme_is_dark (GtkWidget *widget);

/* The colour that words have there. */
GdkRGBA bf_theme_words_colour (GtkWidget *widget);

/* How large words are there, against 10 points at 96 dots an inch. */
double bf_theme_text_size (GtkWidget *widget);
