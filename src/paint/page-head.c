/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/page-head.h"

#include <glib/gi18n.h>

#include "core/part-title.h"
#include "core/setup-sentence.h"
#include "core/today.h"
#include "paint/palette.h"
#include "paint/text.h"

#define NAME_CAP_MM 4.0
#define LINES_MAX 12
#define GAP_MM 3.0
#define RULE_GREY 0.7

double
bf_page_words (cairo_t *cr, const char *words, BfVec2 at, double width_mm, gboolean bold)
{
  g_autoptr (BfText) text = bf_text_new (words, BF_PAGE_CAP_MM, bold);

  bf_text_wrap (text, width_mm, LINES_MAX);
  if (cr != NULL)
    bf_text_draw (text, cr, at.x, at.y);
  return bf_text_n_lines (text) * bf_text_line_height (text);
}

void
bf_page_rule (cairo_t *cr, BfVec2 from, double width_mm)
{
  cairo_save (cr);
  cairo_set_source_rgb (cr, RULE_GREY, RULE_GREY, RULE_GREY);
  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_move_to (cr, from.x, from.y);
  cairo_rel_line_to (cr, width_mm, 0.0);
  cairo_stroke (cr);
  cairo_restore (cr);
}

static char *
sentence_of (const BfPageHead *head)
{
  const BfPart *part = head->fold->part;
  g_autofree char *setup = bf_setup_sentence (part);
  const char *units = part->units == BF_UNITS_IN ? _ ("Sizes in inches.") : _ ("Sizes in mm.");

  const char *decides = head->cautions
                            ? _ ("The tool’s own manual, local codes and licensed practice decide.")
                            : NULL;

  if (head->note == NULL)
    return g_strjoin (" ", setup, units, decides, NULL);
  return g_strjoin (" ", setup, units, head->note, decides, NULL);
}

static char *
title_of (const BfPageHead *head)
{
  g_autofree char *date = bf_today ();

  if (head->n_pages < 2)
    return g_strdup_printf ("%s, %s", head->title, date);
  /* Translators: what the page is, its number, how many there are, and a date */
  return g_strdup_printf (_ ("%s, page %u of %u, %s"), head->title, head->page + 1, head->n_pages,
                          date);
}

char *
bf_page_warning (const BfFold *fold)
{
  guint n = bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX);

  if (n == 0)
    return NULL;
  /* Translators: how many things are wrong with the part, and a whole sentence about the first. */
  return g_strdup_printf (
      ngettext ("Don't cut yet, %u thing to fix: %s", "Don't cut yet, %u things to fix: %s", n), n,
      bf_fold_check (fold, 0)->message);
}

static void
draw_names (const BfPageHead *head, double width, cairo_t *cr)
{
  g_autofree char *title = title_of (head), *part = bf_part_title (head->fold->part);
  g_autoptr (BfText) name = bf_text_new (part, NAME_CAP_MM, TRUE);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_wrap (name, width * 0.55, 1);
  bf_text_draw (name, cr, BF_PAGE_MARGIN_MM, BF_PAGE_MARGIN_MM + NAME_CAP_MM);
  bf_text_show (cr, title, BF_PAGE_CAP_MM, 1.0,
                bf_vec2 (BF_PAGE_MARGIN_MM + width, BF_PAGE_MARGIN_MM + NAME_CAP_MM));
}

static double
lay_out (const BfPageHead *head, cairo_t *cr)
{
  double width = head->paper->width_mm - 2.0 * BF_PAGE_MARGIN_MM;
  double y = BF_PAGE_MARGIN_MM + NAME_CAP_MM + 6.0;
  g_autofree char *sentence = sentence_of (head), *warning = bf_page_warning (head->fold);

  if (cr != NULL)
    draw_names (head, width, cr);
  y += bf_page_words (cr, sentence, bf_vec2 (BF_PAGE_MARGIN_MM, y), width, FALSE);
  if (warning != NULL)
    y += bf_page_words (cr, warning, bf_vec2 (BF_PAGE_MARGIN_MM, y), width, TRUE);
  y += GAP_MM - BF_PAGE_CAP_MM;
  if (cr != NULL)
    bf_page_rule (cr, bf_vec2 (BF_PAGE_MARGIN_MM, y), width);
  return y + GAP_MM;
}

double
bf_page_head_draw (const BfPageHead *head, cairo_t *cr)
{
  return lay_out (head, cr);
}

double
bf_page_head_end_mm (const BfPageHead *head)
{
  return lay_out (head, NULL);
}
