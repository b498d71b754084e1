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

#define LIT_MM 0.9 /* how wide a line is that is pointed out */

/* Fits the view into the box; cr is left in the view's own place. Returns the scale; 0 for nothing.
 */
static double
fit_view (const BfFormedView *view, BfVec2 size_mm, cairo_t *cr)
{
  BfBox box = bf_formed_view_box (view);
  BfVec2 extent = bf_vec2_sub (box.max, box.min);
  double scale;

  if (extent.x <= 0.0 || extent.y <= 0.0)
    return 0.0;
  scale = MIN (size_mm.x / extent.x, size_mm.y / extent.y);
  cairo_translate (cr, (size_mm.x - scale * (box.min.x + box.max.x)) / 2.0,
                   (size_mm.y - scale * (box.min.y + box.max.y)) / 2.0);
  return scale;
}

static double
paint_view (const BfFormedView *view, int highlight, BfVec2 size_mm, cairo_t *cr)
{
  BfFormedStyle style = bf_formed_style (FALSE);

  style.scale = fit_view (view, size_mm, cr);
  style.line_width = BF_WIDE_LINE_MM;
  style.highlight = highlight;
  if (style.scale > 0.0)
    bf_formed_view_paint (view, cr, &style);
  return style.scale;
}

void
bf_figure_formed (
    const BfFold *fold, const BfFormed *formed, int highlight, BfVec2 size_mm, cairo_t *cr)
{
  g_autoptr (BfFormedView) view =
      bf_formed_view_prepare (fold, formed, (BfFormedLook){ AZIMUTH_RAD, ELEVATION_RAD });

  cairo_save (cr);
  paint_view (view, highlight, size_mm, cr);
  cairo_restore (cr);
}

void
bf_figure_formed_line (
    const BfFold *fold, guint face, const BfVec2 line[2], BfVec2 size_mm, cairo_t *cr)
{
  g_autoptr (BfFormedView) view =
      bf_formed_view_prepare (fold, &fold->formed, (BfFormedLook){ AZIMUTH_RAD, ELEVATION_RAD });
  double scale;

  cairo_save (cr);
  scale = paint_view (view, -1, size_mm, cr);
  cairo_new_path (cr);
  for (guint i = 0; i < 2; i++)
    {
      BfVec2 p = bf_formed_view_project (view, bf_fold_place (fold, face, line[i]));
      cairo_line_to (cr, scale * p.x, scale * p.y);
    }
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_VERMILLION));
  cairo_set_line_width (cr, LIT_MM);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  cairo_stroke (cr);
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

BfFigurePlace
bf_figure_place (const BfFold *fold, BfVec2 size_mm)
{
  const BfBox *box = &fold->blank.box;
  BfVec2 extent = bf_vec2_sub (box->max, box->min);
  BfVec2 room = bf_vec2_sub (size_mm, bf_vec2 (LENGTHS_MM, LENGTHS_MM));
  double scale = MIN (room.x / extent.x, room.y / extent.y);

  if (fold->blank.rings->len == 0 || !(scale > 0.0))
    return (BfFigurePlace){ 0.0, 0.0, 0.0 };
  return (BfFigurePlace){ scale, LENGTHS_MM + (room.x - scale * (box->min.x + box->max.x)) / 2.0,
                          (room.y + scale * (box->min.y + box->max.y)) / 2.0 };
}

static void
draw_lengths (const BfFold *fold, const BfFigurePlace *place, cairo_t *cr)
{
  const BfBox *box = &fold->blank.box;
  BfVec2 extent = bf_vec2_sub (box->max, box->min);
  double left = place->left + place->scale * box->min.x;
  double bottom = place->bottom - place->scale * box->min.y;
  g_autofree char *width = bf_format_length (extent.x, fold->part->units);
  g_autofree char *height = bf_format_length (extent.y, fold->part->units);

  bf_figure_length (cr, bf_vec2 (left, bottom + LENGTHS_MM - 1.5),
                    bf_vec2 (left + place->scale * extent.x, bottom + LENGTHS_MM - 1.5), width);
  bf_figure_length (cr, bf_vec2 (left - LENGTHS_MM + 4.0, bottom),
                    bf_vec2 (left - LENGTHS_MM + 4.0, bottom - place->scale * extent.y), height);
}

void
bf_figure_blank (const BfFold *fold, BfVec2 size_mm, cairo_t *cr)
{
  BfFigurePlace place = bf_figure_place (fold, size_mm);
  BfBlankStyle style;

  if (!(place.scale > 0.0))
    return;
  bf_blank_style_init (&style, fold);
  style.layers = BF_BLANK_LINES | BF_BLANK_METAL;
  style.unit = 1.0 / place.scale;
  cairo_save (cr);
  cairo_translate (cr, place.left, place.bottom);
  cairo_scale (cr, place.scale, place.scale);
  bf_blank_view_draw (fold, &style, cr);
  cairo_restore (cr);
  draw_lengths (fold, &place, cr);
}
