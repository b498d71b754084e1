/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/theme-colours.h"

GdkRGBA
bf_theme_words_colour (GtkWidget *widget)
{
  GdkRGBA words;
  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &words);
  return words;
}

gboolean
bf_theme_is_dark (GtkWidget *widget)
{
  GdkRGBA words = bf_theme_words_colour (widget);
  return words.red + words.green + words.blue > 1.5F;
}
