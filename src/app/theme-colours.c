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

#define USUAL_PX (10.0 * 96.0 / 72.0)

double
bf_theme_text_size (GtkWidget *widget)
{
  PangoContext *context = gtk_widget_get_pango_context (widget);
  const PangoFontDescription *font = pango_context_get_font_description (context);
  double size = pango_font_description_get_size (font) / (double)PANGO_SCALE;

  if (!pango_font_description_get_size_is_absolute (font))
    size *= pango_cairo_context_get_resolution (context) / 72.0;
  return size > 0.0 ? size / USUAL_PX : 1.0;
}
