/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pattern-pdf.h"

#include "paint/ring-path.h"
#include "paint/text.h"
#include "write/pdf-pages.h"

#define MARK_ARM_MM 2.0
#define CURVE_TOLERANCE 0.005 /* of 1/72 in, finer than cairo's own */

static BfPdfPage
page_size (guint i, gconstpointer data)
{
  const BfPattern *pattern = data;
  const BfBox *box = &pattern->box;

  (void)i;
  return (BfPdfPage){ box->max.x - box->min.x + 2.0 * BF_PATTERN_PDF_MARGIN_MM,
                      box->max.y - box->min.y + 2.0 * BF_PATTERN_PDF_MARGIN_MM, NULL };
}

static void
add_mark_path (BfVec2 at, cairo_t *cr)
{
  cairo_move_to (cr, at.x - MARK_ARM_MM, at.y);
  cairo_line_to (cr, at.x + MARK_ARM_MM, at.y);
  cairo_move_to (cr, at.x, at.y - MARK_ARM_MM);
  cairo_line_to (cr, at.x, at.y + MARK_ARM_MM);
}

/* cr stands with y up; words are turned back. */
static void
draw_words (const BfPatternItem *item, cairo_t *cr)
{
  BfVec2 along = bf_vec2_sub (item->to, item->at);

  cairo_save (cr);
  cairo_translate (cr, item->at.x, item->at.y);
  cairo_rotate (cr, atan2 (along.y, along.x));
  cairo_scale (cr, 1.0, -1.0);
  bf_text_show (cr, item->words, item->cap_height_mm, 0.0, bf_vec2 (0.0, 0.0));
  cairo_restore (cr);
}

static void
draw_item (const BfPatternItem *item, cairo_t *cr)
{
  bf_pen_apply (bf_pen (item->purpose), cr, 1.0, FALSE);
  switch (item->kind)
    {
    case BF_PATTERN_RING:
      bf_ring_path (item->ring, cr);
      break;
    case BF_PATTERN_LINE:
      cairo_move_to (cr, item->at.x, item->at.y);
      cairo_line_to (cr, item->to.x, item->to.y);
      break;
    case BF_PATTERN_MARK:
      add_mark_path (item->at, cr);
      break;
    case BF_PATTERN_WORDS:
    default:
      draw_words (item, cr);
      cairo_new_path (cr);
      return;
    }
  cairo_stroke (cr);
}

static void
draw_page (guint i, cairo_t *cr, gconstpointer data)
{
  const BfPattern *pattern = data;

  (void)i;
  cairo_set_tolerance (cr, CURVE_TOLERANCE);
  cairo_translate (cr, BF_PATTERN_PDF_MARGIN_MM - pattern->box.min.x,
                   BF_PATTERN_PDF_MARGIN_MM + pattern->box.max.y);
  cairo_scale (cr, 1.0, -1.0);
  for (guint k = 0; k < pattern->items->len; k++)
    draw_item (bf_pattern_item (pattern, k), cr);
}

GBytes *
bf_pattern_pdf (const BfPattern *pattern, GError **error)
{
  BfPdfPages pages = { .n_pages = 1, .page = page_size, .draw = draw_page, .data = pattern };

  g_return_val_if_fail (pattern != NULL, NULL);

  pages.part = pattern->fold->part;
  return bf_pdf_pages (&pages, error);
}
