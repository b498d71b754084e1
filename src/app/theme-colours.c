/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/theme-colours.h"

gboolean
bf_theme_is_dark (GtkWidget *widget)
{
  GdkRGBA words;
  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &words);
  return words.red + words.green + words.blue > 1.5F;
}
