/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/figure.h"

#include "core/units.h"
#include "paint/blank-view.h"
#include "paint/formed-view.h"
#include "paint/palette.h"
#include "paint/text.h"

/* From in front, a little from the left, and from above. */
#define AZIMUTH_RAD (-62.0 * G_PI / 180.0)
#define ELEVATION_RAD (32.0 * G_PI / 180.0)

#define LENGTHS_MM 7.0 /* beside the blank, for its width and height */
#define CAP_MM 2.2
#define ARROW_MM 1.6

void
bf_figure_formed (
    const BfFold *fold, const BfFormed *formed, int highlight, BfVec2 size_mm, cairo_t *cr)
{
  g_autoptr (BfFormedView) view =
      bf_formed_view_prepare (fold, formed, (BfFormedLook){ AZIMUTH_RAD, ELEVATION_RAD });
  BfBox box = bf_formed_view_box (view);
  BfVec2 extent = bf_vec2_sub (box.max, box.min);
  BfFormedStyle style = bf_formed_style (FALSE);

  if (extent.x <= 0.0 || extent.y <= 0.0)
    return;
  style.scale = MIN (size_mm.x / extent.x, size_mm.y / extent.y);
  style.line_width = BF_WIDE_LINE_MM;
  style.highlight = highlight;
  cairo_save (cr);
  cairo_translate (cr, (size_mm.x - style.scale * (box.min.x + box.max.x)) / 2.0,
                   (size_mm.y - style.scale * (box.min.y + box.max.y)) / 2.0);
  bf_formed_view_paint (view, cr, &style);
  cairo_restore (cr);
}

static void
draw_arrow (cairo_t *cr, BfVec2 tip, BfVec2 along)
{
  BfVec2 back = bf_vec2_along (tip, along, -ARROW_MM);
  BfVec2 side = bf_vec2 (-along.y * ARROW_MM * 0.3, along.x * ARROW_MM * 0.3);

  cairo_move_to (cr, tip.x, tip.y);
  cairo_line_to (cr, back.x + side.x, back.y + side.y);
  cairo_line_to (cr, back.x - side.x, back.y - side.y);
  cairo_close_path (cr);
  cairo_fill (cr);
}

void
bf_figure_length (cairo_t *cr, BfVec2 from, BfVec2 to, const char *words)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (to, from));
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (from, to), 0.5);
  double turn = atan2 (along.y, along.x);

  /* Read from below or from the right. */
  if (turn > G_PI / 2.0 - 1e-9)
    turn -= G_PI;
  else if (turn < -G_PI / 2.0 - 1e-9)
    turn += G_PI;
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_move_to (cr, from.x, from.y);
  cairo_line_to (cr, to.x, to.y);
  cairo_stroke (cr);
  draw_arrow (cr, to, along);
  draw_arrow (cr, from, bf_vec2_scale (along, -1.0));
  cairo_save (cr);
  cairo_translate (cr, middle.x, middle.y);
  cairo_rotate (cr, turn);
  bf_text_show (cr, words, CAP_MM, 0.5, bf_vec2 (0.0, -1.0));
  cairo_restore (cr);
}

void
bf_figure_blank (const BfFold *fold, BfVec2 size_mm, cairo_t *cr)
{
  const BfBox *box = &fold->blank.box;
  BfVec2 extent = bf_vec2_sub (box->max, box->min),
         room = bf_vec2_sub (size_mm, bf_vec2 (LENGTHS_MM, LENGTHS_MM));
  double scale = MIN (room.x / extent.x, room.y / extent.y), left, bottom;
  g_autofree char *width = bf_format_length (extent.x, fold->part->units);
  g_autofree char *height = bf_format_length (extent.y, fold->part->units);
  BfBlankStyle style;

  if (fold->blank.rings->len == 0 || !(scale > 0.0))
    return;
  left = LENGTHS_MM + (room.x - scale * extent.x) / 2.0;
  bottom = (room.y + scale * extent.y) / 2.0;
  bf_blank_style_init (&style, fold);
  style.layers = BF_BLANK_LINES | BF_BLANK_METAL;
  style.unit = 1.0 / scale;
  cairo_save (cr);
  cairo_translate (cr, left - scale * box->min.x, bottom + scale * box->min.y);
  cairo_scale (cr, scale, scale);
  bf_blank_view_draw (fold, &style, cr);
  cairo_restore (cr);
  bf_figure_length (cr, bf_vec2 (left, bottom + LENGTHS_MM - 1.5),
                    bf_vec2 (left + scale * extent.x, bottom + LENGTHS_MM - 1.5), width);
  bf_figure_length (cr, bf_vec2 (left - LENGTHS_MM + 4.0, bottom),
                    bf_vec2 (left - LENGTHS_MM + 4.0, bottom - scale * extent.y), height);
}
