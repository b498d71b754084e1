/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/text.h"

#include <pango/pangocairo.h>

/* Layouts are made at one large size and scaled down, so that Pango's rounding to its own units
 * stays far below anything that can be seen. */
#define LAYOUT_CAP 64.0
#define TRIAL_SIZE 1000.0

struct _BfText
{
  PangoLayout *layout;
  double scale; /* the person's units for one of the layout's */
};

static PangoLayout *
new_layout (const char *words, double size, gboolean bold)
{
  PangoContext *context = pango_font_map_create_context (pango_cairo_font_map_get_default ());
  g_autoptr (PangoFontDescription) font = pango_font_description_new ();
  cairo_font_options_t *options = cairo_font_options_create ();
  PangoLayout *layout;

  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options (context, options);
  cairo_font_options_destroy (options);
  pango_context_set_round_glyph_positions (context, FALSE);

  pango_font_description_set_family_static (font, "Sans");
  pango_font_description_set_weight (font, bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size (font, size * PANGO_SCALE);
  layout = pango_layout_new (context);
  g_object_unref (context);
  pango_layout_set_font_description (layout, font);
  pango_layout_set_text (layout, words, -1);
  return layout;
}

/* The font size whose capitals are LAYOUT_CAP high, measured once. */
static double
layout_size (void)
{
  static double size = 0.0;
  g_autoptr (PangoLayout) trial = NULL;
  PangoRectangle ink;

  if (size > 0.0)
    return size;
  trial = new_layout ("H", TRIAL_SIZE, FALSE);
  pango_layout_get_extents (trial, &ink, NULL);
  /* Without any font there is no ink; most faces' capitals are 0.7 of their size. */
  size = ink.height > 0 ? LAYOUT_CAP * TRIAL_SIZE * PANGO_SCALE / ink.height : LAYOUT_CAP / 0.7;
  return size;
}

BfText *
bf_text_new (const char *words, double cap_height, gboolean bold)
{
  BfText *text = g_new0 (BfText, 1);

  text->layout = new_layout (words, layout_size (), bold);
  text->scale = cap_height / LAYOUT_CAP;
  return text;
}

void
bf_text_free (BfText *text)
{
  g_object_unref (text->layout);
  g_free (text);
}

void
bf_text_wrap (BfText *text, double width, int max_lines)
{
  pango_layout_set_width (text->layout, (int)(width / text->scale * PANGO_SCALE));
  pango_layout_set_wrap (text->layout, PANGO_WRAP_WORD_CHAR);
  pango_layout_set_height (text->layout, -max_lines);
  pango_layout_set_ellipsize (text->layout, PANGO_ELLIPSIZE_END);
}

double
bf_text_width (const BfText *text)
{
  PangoRectangle logical;

  pango_layout_get_extents (text->layout, NULL, &logical);
  return (double)logical.width / PANGO_SCALE * text->scale;
}

double
bf_text_line_height (const BfText *text)
{
  PangoRectangle logical;

  pango_layout_line_get_extents (pango_layout_get_line_readonly (text->layout, 0), NULL, &logical);
  return (double)logical.height / PANGO_SCALE * text->scale;
}

int
bf_text_n_lines (const BfText *text)
{
  return pango_layout_get_line_count (text->layout);
}

void
bf_text_draw (const BfText *text, cairo_t *cr, double x, double y)
{
  double baseline = (double)pango_layout_get_baseline (text->layout) / PANGO_SCALE;

  cairo_save (cr);
  cairo_translate (cr, x, y);
  cairo_scale (cr, text->scale, text->scale);
  cairo_move_to (cr, 0.0, -baseline);
  pango_cairo_show_layout (cr, text->layout);
  cairo_restore (cr);
}

void
bf_text_show (cairo_t *cr, const char *words, double cap_height, double align, BfVec2 at)
{
  g_autoptr (BfText) text = bf_text_new (words, cap_height, FALSE);

  bf_text_draw (text, cr, at.x - align * bf_text_width (text), at.y);
}
