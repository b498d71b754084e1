/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/strip-page.h"

#include <glib/gi18n.h>

#include "core/part-title.h"
#include "core/setup-sentence.h"
#include "core/today.h"
#include "core/units.h"
#include "fold/trial-strip.h"
#include "paint/check-bars.h"
#include "paint/palette.h"
#include "paint/strip-picture.h"
#include "paint/text.h"

#define MARGIN_MM 12.0
#define NAME_CAP_MM 4.0
#define CAP_MM 2.5
#define LINE_MM 4.6
#define STRIPS_TOP_MM 32.0
#define STRIPS_MM 92.0 /* room for strips, one above the other */
#define STRIP_GAP_MM 9.0
#define MAX_STRIPS 3
#define COLUMN_GAP_MM 8.0
#define STEPS_GAP_MM 6.0
#define TABLE_ROW_MM 9.0
#define TABLE_COLUMNS 4

struct _BfStripPage
{
  BfFold *fold;
  const BfPaper *paper;
  BfUnits units;
  char *date, *sentence;
  guint n_strips;
};

static double
strip_height (const BfFold *fold)
{
  return fold->blank.box.max.y - fold->blank.box.min.y;
}

BfStripPage *
bf_strip_page_new (const BfPart *part, const BfPaper *paper, BfUnits units, const char *date)
{
  BfStripPage *page;
  g_autoptr (BfPart) strip = NULL;

  g_return_val_if_fail (part != NULL && paper != NULL, NULL);

  strip = bf_trial_strip_part (part, units);
  strip->units = units;
  page = g_new0 (BfStripPage, 1);
  page->fold = bf_fold (strip);
  page->paper = paper;
  page->units = units;
  page->date = date != NULL ? g_strdup (date) : bf_today ();
  page->sentence = bf_setup_sentence (part);
  page->n_strips = (guint)((STRIPS_MM + STRIP_GAP_MM) / (strip_height (page->fold) + STRIP_GAP_MM));
  page->n_strips = CLAMP (page->n_strips, 1, MAX_STRIPS);
  return page;
}

void
bf_strip_page_free (BfStripPage *page)
{
  if (page == NULL)
    return;
  bf_fold_unref (page->fold);
  g_free (page->date);
  g_free (page->sentence);
  g_free (page);
}

const BfPaper *
bf_strip_page_paper (const BfStripPage *page)
{
  return page->paper;
}

const BfFold *
bf_strip_page_fold (const BfStripPage *page)
{
  return page->fold;
}

BfVec2
bf_strip_page_origin (const BfStripPage *page, guint i)
{
  double height = strip_height (page->fold);

  return bf_vec2 (MARGIN_MM - page->fold->blank.box.min.x, STRIPS_TOP_MM + height +
                                                               i * (height + STRIP_GAP_MM) +
                                                               page->fold->blank.box.min.y);
}

/* ---- drawing ------------------------------------------------------------------------------ */

/* Draws words in that width and returns how high they stand. */
static double
show_wrapped (cairo_t *cr, const char *words, BfVec2 at, double width_mm)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, FALSE);

  bf_text_wrap (text, width_mm, 4);
  bf_text_draw (text, cr, at.x, at.y);
  return bf_text_n_lines (text) * bf_text_line_height (text);
}

static void
draw_head (const BfStripPage *page, cairo_t *cr)
{
  double width = page->paper->width_mm - 2.0 * MARGIN_MM, y = MARGIN_MM + NAME_CAP_MM;
  /* Translators: a date. */
  g_autofree char *kind = g_strdup_printf (_ ("Strips for a trial bend, %s"), page->date);
  g_autoptr (BfText) title = bf_text_new (bf_part_shown_name (page->fold->part), NAME_CAP_MM, TRUE);

  bf_text_wrap (title, width * 0.5, 1);
  bf_text_draw (title, cr, MARGIN_MM, y);
  bf_text_show (cr, kind, CAP_MM, 1.0, bf_vec2 (MARGIN_MM + width, y));
  show_wrapped (cr, page->sentence, bf_vec2 (MARGIN_MM, y + 6.0), width);
}

/* What is bent, in numbers: the trial holds for just this. */
static char *
bend_words (const BfStripPage *page)
{
  const BfBendResult *bend = bf_fold_bend (page->fold, 0);
  double leg_mm = bf_part_flange (page->fold->part, 0)->length_mm;
  g_autofree char *radius = bf_format_fine (bend->inside_radius_mm, page->units);
  g_autofree char *k = bf_format_decimal (bend->k, 3);
  g_autofree char *leg = bf_format_fine (leg_mm, page->units);

  /* Translators: an inside radius, a K-factor, and a length, without units. */
  return g_strdup_printf (_ ("Bent square, inside radius %s. With the K of now, %s, each leg would "
                             "measure %s."),
                          radius, k, leg);
}

static void
draw_column (const BfStripPage *page, cairo_t *cr)
{
  double left = MARGIN_MM + bf_trial_strip_length_mm (page->units) + COLUMN_GAP_MM;
  double width = page->paper->width_mm - MARGIN_MM - left, side = MIN (width, 66.0);
  g_autofree char *words = bend_words (page);

  cairo_save (cr);
  cairo_translate (cr, left, STRIPS_TOP_MM);
  bf_strip_draw_bent (page->fold, side, cr);
  cairo_restore (cr);
  show_wrapped (cr, words, bf_vec2 (left, STRIPS_TOP_MM + side + 6.0), width);
}

/* A scored bend has no K to find: what is left under the groove makes it. */
static const char *
last_step (const BfStripPage *page)
{
  if (bf_fold_bend (page->fold, 0)->way == BF_BEND_WAY_SCORE)
    return _ (
        "A scored bend folds as the skin under its groove: measure at the strip’s edge what is "
        "left there, and type that into Trial bend, in the menu of the bending.");
  return _ ("Three strips make the figure surer than one. Type the numbers into Trial bend, in the "
            "menu of the bending, and keep them.");
}

/* Below the strips, however wide a slot and its bridges make them. */
static double
steps_top (const BfStripPage *page)
{
  double strips = page->n_strips * (strip_height (page->fold) + STRIP_GAP_MM) - STRIP_GAP_MM;

  return STRIPS_TOP_MM + MAX (strips, STRIPS_MM) + STEPS_GAP_MM;
}

static double
draw_steps (const BfStripPage *page, cairo_t *cr)
{
  const char *steps[] = {
    _ ("Measure the bars below; a page that was not printed at 100 % is of no use. Glue a strip to "
       "the metal, cut it out along its line, and take the burr off before you handle it."),
    _ ("Measure its length with a caliper and write it down: what you cut counts, not what is "
       "drawn."),
    _ ("Bend it up along the dashed line, as you will bend the part: the same bar, the same side "
       "of the line, the same blows. Check with a square that it is 90°. Keep fingers off the side "
       "that closes."),
    _ ("Measure both legs outside, in the middle of the width: from the end at the arrow to the "
       "outer face of the other leg, the jaws at the short mark, off the bend."),
    last_step (page),
  };
  double y = steps_top (page), width = page->paper->width_mm - 2.0 * MARGIN_MM;

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      g_autofree char *number = g_strdup_printf ("%u", i + 1);
      g_autoptr (BfText) bold = bf_text_new (number, CAP_MM, TRUE);

      bf_text_draw (bold, cr, MARGIN_MM, y);
      y += show_wrapped (cr, steps[i], bf_vec2 (MARGIN_MM + 6.0, y), width - 6.0) + 1.2;
    }
  return y;
}

/* Blanks to write in, a row a strip. */
static void
draw_table (const BfStripPage *page, double top, cairo_t *cr)
{
  const char *heads[TABLE_COLUMNS] = { _ ("strip"), _ ("length before"), _ ("leg 1"), _ ("leg 2") };
  double width = (page->paper->width_mm - 2.0 * MARGIN_MM) / TABLE_COLUMNS;

  for (guint column = 0; column < TABLE_COLUMNS; column++)
    bf_text_show (cr, heads[column], CAP_MM, 0.0, bf_vec2 (MARGIN_MM + column * width, top));
  for (guint row = 0; row < MAX_STRIPS; row++)
    {
      double y = top + (row + 1) * TABLE_ROW_MM;
      g_autofree char *number = g_strdup_printf ("%u", row + 1);

      bf_text_show (cr, number, CAP_MM, 0.0, bf_vec2 (MARGIN_MM, y));
      bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
      for (guint column = 1; column < TABLE_COLUMNS; column++)
        {
          cairo_move_to (cr, MARGIN_MM + column * width, y + 1.0);
          cairo_rel_line_to (cr, width - 10.0, 0.0);
        }
      cairo_stroke (cr);
    }
}

static void
draw_bars (const BfStripPage *page, cairo_t *cr)
{
  double y = page->paper->height_mm - MARGIN_MM - BF_CHECK_BARS_MM;

  cairo_save (cr);
  cairo_translate (cr, MARGIN_MM, 0.0);
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
  bf_check_bars_draw (cr, y, CAP_MM);
  cairo_restore (cr);
  bf_text_show (cr, _ ("print at 100 %"), CAP_MM, 1.0,
                bf_vec2 (page->paper->width_mm - MARGIN_MM, y + CAP_MM / 2.0));
  bf_text_show (cr, page->units == BF_UNITS_IN ? _ ("sizes in inches") : _ ("sizes in mm"), CAP_MM,
                1.0, bf_vec2 (page->paper->width_mm - MARGIN_MM, y + LINE_MM + CAP_MM / 2.0));
}

void
bf_strip_page_draw (const BfStripPage *page, cairo_t *cr)
{
  g_return_if_fail (page != NULL && cr != NULL);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  draw_head (page, cr);
  draw_column (page, cr);
  draw_table (page, draw_steps (page, cr) + LINE_MM, cr);
  draw_bars (page, cr);
  for (guint i = 0; i < page->n_strips; i++)
    {
      BfVec2 origin = bf_strip_page_origin (page, i);

      cairo_save (cr);
      cairo_translate (cr, origin.x, origin.y);
      bf_strip_draw_flat (page->fold, page->units, cr);
      cairo_restore (cr);
    }
}
