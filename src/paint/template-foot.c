/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include <glib/gi18n.h>

#include "core/part-title.h"
#include "make/drill-list.h"
#include "paint/bend-marks.h"
#include "paint/check-bars.h"
#include "paint/palette.h"
#include "paint/text.h"

/* The foot of a page, in millimetres from its upper left corner: a line, what the lines mean, who
 * and what the part is, two bars to check the printer by, and where this page belongs. */

#define CAP BF_TEMPLATE_CAP_MM
#define LINE_PITCH 4.3
#define WORDS_PITCH 3.85

/* Rows, by their baselines. */
#define RULE_Y 1.5
#define LEGEND_Y 6.2
#define NAME_Y 11.6
#define SENTENCE_Y 15.9 /* two lines of it, and one for what comes next */
#define PAGE_WORDS_Y 18.3
#define BAR_MM_Y 26.0

/* Columns, from the right edge. */
#define MAP_WIDTH 29.0
#define MAP_TOP 8.4
#define MAP_HEIGHT 23.2
#define PAGE_COLUMN 66.0 /* where the page's own column begins */
#define COLUMN_GAP 4.0

#define NAME_CAP 3.2
#define PAGE_CAP 5.0
#define SENTENCE_LINES 2
#define SAMPLE_MM 13.0
#define SAMPLE_GAP 1.5
#define LEGEND_GAP 6.0
#define SIDE_OFF_FOOT_MM 3.0

/* Returns how many lines it took. */
static int
draw_wrapped (cairo_t *cr, const char *words, BfVec2 at, double width, int max_lines)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP, FALSE);

  bf_text_wrap (text, width, max_lines);
  bf_text_draw (text, cr, at.x, at.y);
  return bf_text_n_lines (text);
}

static void
draw_bold (cairo_t *cr, const char *words, double cap, BfVec2 at, double width)
{
  g_autoptr (BfText) text = bf_text_new (words, cap, TRUE);

  bf_text_wrap (text, width, 1);
  bf_text_draw (text, cr, at.x, at.y);
}

/* Lines of the blank that a legend has to explain. */
static gboolean
has_bend (const BfFold *fold, BfTurn turn)
{
  for (guint i = 0; i < fold->bends->len; i++)
    if (bf_fold_bend (fold, i)->turn == turn)
      return TRUE;
  for (guint i = 0; i < bf_fold_n_creases (fold); i++)
    if (bf_fold_crease (fold, i)->turn == turn)
      return TRUE;
  return FALSE;
}

static gboolean
has_line (const BfFold *fold, BfPurpose purpose)
{
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (BfBendMark));

  for (guint i = 0; i < fold->bends->len; i++)
    bf_bend_marks (fold, bf_fold_bend (fold, i), 1.0, lines);
  for (guint i = 0; i < lines->len; i++)
    if (g_array_index (lines, BfBendMark, i).purpose == purpose)
      return TRUE;
  return FALSE;
}

static gboolean
has_drill (const BfFold *fold)
{
  g_autoptr (GArray) drilled = bf_drill_list (fold);

  return drilled->len > 0;
}

/* One entry of the legend; returns where the next begins. */
static double
draw_legend_words (cairo_t *cr, const char *words, double x)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP, FALSE);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_draw (text, cr, x + SAMPLE_GAP, LEGEND_Y);
  return x + SAMPLE_GAP + bf_text_width (text) + LEGEND_GAP;
}

static double
draw_line_sample (const BfPenSet *pens, cairo_t *cr, BfPurpose purpose, const char *words, double x)
{
  /* Two whole dashes of a bend up: a sample must show the gap. */
  double length = purpose == BF_PURPOSE_BEND_UP ? 20.5 : SAMPLE_MM;

  bf_pens_apply (pens, purpose, cr, 1.0, FALSE);
  cairo_move_to (cr, x, LEGEND_Y - CAP / 2.0);
  cairo_rel_line_to (cr, length, 0.0);
  cairo_stroke (cr);
  return draw_legend_words (cr, words, x + length);
}

static double
draw_drill_sample (const BfPenSet *pens, cairo_t *cr, const char *words, double x)
{
  double radius = CAP / 2.0, arm = radius + 0.6, y = LEGEND_Y - radius;

  bf_pens_apply (pens, BF_PURPOSE_DRILL, cr, 1.0, FALSE);
  cairo_new_path (cr);
  cairo_arc (cr, x + arm, y, radius, 0.0, 2.0 * G_PI);
  cairo_new_sub_path (cr);
  cairo_move_to (cr, x, y);
  cairo_rel_line_to (cr, 2.0 * arm, 0.0);
  cairo_move_to (cr, x + arm, y - arm);
  cairo_rel_line_to (cr, 0.0, 2.0 * arm);
  cairo_stroke (cr);
  return draw_legend_words (cr, words, x + 2.0 * arm);
}

static void
draw_legend (const BfTemplate *template, cairo_t *cr, double width)
{
  const BfFold *fold = template->fold;
  double x = draw_line_sample (template->pens, cr, BF_PURPOSE_CUT_OUTSIDE, _ ("cut"), 0.0);

  if (has_bend (fold, BF_TURN_UP))
    x = draw_line_sample (template->pens, cr, BF_PURPOSE_BEND_UP, _ ("fold up"), x);
  if (has_bend (fold, BF_TURN_DOWN))
    x = draw_line_sample (template->pens, cr, BF_PURPOSE_BEND_DOWN, _ ("fold down"), x);
  if (has_line (fold, BF_PURPOSE_SCORE))
    x = draw_line_sample (template->pens, cr, BF_PURPOSE_SCORE, _ ("score"), x);
  if (has_line (fold, BF_PURPOSE_BAR))
    x = draw_line_sample (template->pens, cr, BF_PURPOSE_BAR, _ ("bar's edge"), x);
  if (has_drill (fold))
    draw_drill_sample (template->pens, cr, _ ("drill"), x);
  bf_text_show (cr, template->is_mirrored ? _ ("marking side down") : _ ("marking side up"), CAP,
                1.0, bf_vec2 (width, LEGEND_Y));
}

/* What is done with the paper, and then with the metal under it: a word each, so that it fits in a
 * line. */
static char *
next_words (const BfTemplate *template)
{
  const BfFold *fold = template->fold;
  const struct
  {
    const char *words;
    gboolean is_due;
  } steps[] = {
    { _ ("check the bars"), TRUE },
    { _ ("join"), template->corners == NULL && bf_template_n_pages (template) > 1 },
    { _ ("glue on"), TRUE },
    { _ ("punch and drill"), has_drill (fold) },
    { _ ("cut out"), TRUE },
    { _ ("fold"), fold->bends->len > 0 },
  };
  GString *words = g_string_new (_ ("Next:"));

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i].is_due)
      g_string_append_printf (words, "%s%s", i > 0 ? ", " : " ", steps[i].words);
  g_string_append_c (words, '.');
  return g_string_free (words, FALSE);
}

static void
draw_part_data (const BfTemplate *template, cairo_t *cr, double width)
{
  g_autofree char *title = bf_part_title (template->fold->part), *next = next_words (template);
  int lines;

  draw_bold (cr, title, NAME_CAP, bf_vec2 (0.0, NAME_Y), width);
  lines = draw_wrapped (cr, template->sentence, bf_vec2 (0.0, SENTENCE_Y), width, SENTENCE_LINES);
  if (template->warning == NULL)
    draw_wrapped (cr, next, bf_vec2 (0.0, SENTENCE_Y + lines * WORDS_PITCH), width, 1);
}

static const char *
units_words (BfUnits units)
{
  return units == BF_UNITS_IN ? _ ("sizes in inches") : _ ("sizes in mm");
}

/* Where this page belongs, when and how it was printed. */
static void
draw_page_column (const BfTemplate *template, guint i, cairo_t *cr, double x, double width)
{
  guint n = bf_template_n_pages (template);
  const char *label = g_ptr_array_index (template->labels, i);
  /* Translators: the number of this page and how many there are. */
  g_autofree char *count = g_strdup_printf (_ ("page %u of %u"), i + 1, n);
  const char *words[] = { count, template->date, units_words (template->units),
                          /* Translators: not made smaller to fit the paper. */
                          _ ("print at 100 %") };

  draw_bold (cr, label, PAGE_CAP, bf_vec2 (x, NAME_Y + 1.8), width);
  for (guint row = 0; row < G_N_ELEMENTS (words); row++)
    bf_text_show (cr, words[row], CAP, 0.0, bf_vec2 (x, PAGE_WORDS_Y + row * LINE_PITCH));
}

/* words: NULL for none. */
static void
draw_extra_row (const char *words, cairo_t *cr, double width)
{
  if (words == NULL)
    return;
  draw_bold (cr, words, CAP, bf_vec2 (0.0, LEGEND_Y), width);
  cairo_translate (cr, 0.0, BF_TEMPLATE_WARNING_MM);
}

void
bf_template_draw_side (cairo_t *cr)
{
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_translate (cr, -BF_CHECK_BAR_TICK_MM, -SIDE_OFF_FOOT_MM);
  cairo_rotate (cr, -G_PI / 2.0);
  bf_check_bar_draw (cr, 0.0, CAP, 2.0);
  cairo_restore (cr);
}

void
bf_template_draw_foot (const BfTemplate *template, guint i, cairo_t *cr, double width_mm)
{
  double column = width_mm - PAGE_COLUMN;

  cairo_new_path (cr);
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
  cairo_move_to (cr, 0.0, RULE_Y);
  cairo_line_to (cr, width_mm, RULE_Y);
  cairo_stroke (cr);
  draw_extra_row (template->warning, cr, width_mm);
  for (guint row = 0; row < template->notices->len; row++)
    draw_extra_row (g_ptr_array_index (template->notices, row), cr, width_mm);
  draw_legend (template, cr, width_mm);
  draw_part_data (template, cr, column - COLUMN_GAP);
  bf_check_bars_draw (cr, BAR_MM_Y, CAP);
  draw_page_column (template, i, cr, column, PAGE_COLUMN - MAP_WIDTH - COLUMN_GAP);
  cairo_translate (cr, width_mm - MAP_WIDTH, MAP_TOP);
  if (template->corners != NULL || bf_template_n_pages (template) > 1)
    bf_template_draw_map (template, i, cr, bf_vec2 (MAP_WIDTH, MAP_HEIGHT));
}
