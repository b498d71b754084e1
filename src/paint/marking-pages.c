/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/marking-pages.h"

#include <glib/gi18n.h>

#include "core/part-title.h"
#include "core/setup-sentence.h"
#include "core/units.h"
#include "paint/marking-picture.h"
#include "paint/palette.h"
#include "paint/text.h"

#define COLUMNS 2
#define ROWS 3
#define PER_PAGE (COLUMNS * ROWS)
#define MARGIN_MM 12.0
#define HEAD_MM 22.0
#define HEAD_LINES 3
#define GUTTER_MM 8.0
#define NAME_CAP_MM 4.0
#define CAP_MM 2.3
#define NUMBER_CAP_MM 4.0
#define NUMBER_COLUMN_MM 11.0
#define WORDS_LINES 5
#define WORDS_MM 19.0 /* above a picture */

struct _BfMarkingPages
{
  const BfMarking *marking;
  const BfPaper *paper;
  BfUnits units;
  GArray *steps;
};

BfMarkingPages *
bf_marking_pages_new (const BfMarking *marking, const BfPaper *paper, BfUnits units)
{
  BfMarkingPages *pages;

  g_return_val_if_fail (marking != NULL && paper != NULL, NULL);
  pages = g_new0 (BfMarkingPages, 1);
  pages->marking = marking;
  pages->paper = paper;
  pages->units = units;
  pages->steps = bf_marking_steps (marking);
  return pages;
}

void
bf_marking_pages_free (BfMarkingPages *pages)
{
  if (pages == NULL)
    return;
  g_array_unref (pages->steps);
  g_free (pages);
}

guint
bf_marking_pages_n (const BfMarkingPages *pages)
{
  return (pages->steps->len + PER_PAGE - 1) / PER_PAGE;
}

const BfPaper *
bf_marking_pages_paper (const BfMarkingPages *pages)
{
  return pages->paper;
}

const BfMarking *
bf_marking_pages_marking (const BfMarkingPages *pages)
{
  return pages->marking;
}

/* ---- drawing ------------------------------------------------------------------------------ */

static void
show_wrapped (cairo_t *cr, const char *words, BfVec2 at, double width_mm, int lines)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, FALSE);

  bf_text_wrap (text, width_mm, lines);
  bf_text_draw (text, cr, at.x, at.y);
}

/* Up to the next step of so many decimals, so that what is said holds. */
static char *
format_up (double value, int decimals)
{
  double parts = pow (10.0, decimals);

  return bf_format_decimal (ceil (value * parts - 1e-9) / parts, decimals);
}

/* The biggest rounding error, said once. */
static char *
error_words (const BfMarkingPages *pages)
{
  g_autofree char *step = bf_format_length (pages->marking->step_mm, pages->units);
  g_autofree char *worst = pages->units == BF_UNITS_IN
                               ? format_up (pages->marking->worst_mm / BF_MM_PER_INCH, 3)
                               : format_up (pages->marking->worst_mm, 2);

  if (pages->units == BF_UNITS_IN)
    /* Translators: a length with its unit, and a length in inches without it */
    return g_strdup_printf (_ ("Marking side up. Distances are rounded to %s; none is off by more "
                               "than %s in."),
                            step, worst);
  /* Translators: a length with its unit, and a length in mm without it */
  return g_strdup_printf (_ ("Marking side up. Distances are rounded to %s; none is off by more "
                             "than %s mm."),
                          step, worst);
}

static char *
page_words (const BfMarkingPages *pages, guint i)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *date = g_date_time_format (now, "%Y-%m-%d");

  /* Translators: the page's number, how many pages there are, and a date */
  return g_strdup_printf (_ ("Marking out, page %u of %u, %s"), i + 1, bf_marking_pages_n (pages),
                          date);
}

static void
draw_head (const BfMarkingPages *pages, guint i, cairo_t *cr)
{
  const BfPart *part = pages->marking->fold->part;
  double width = pages->paper->width_mm - 2.0 * MARGIN_MM;
  g_autofree char *sentence = bf_setup_sentence (part), *errors = error_words (pages);
  g_autofree char *both = g_strconcat (sentence, " ", errors, NULL);
  g_autofree char *number = page_words (pages, i);
  g_autofree char *title = bf_part_title (part);
  g_autoptr (BfText) name = bf_text_new (title, NAME_CAP_MM, TRUE);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_wrap (name, width * 0.55, 1);
  bf_text_draw (name, cr, MARGIN_MM, MARGIN_MM + NAME_CAP_MM);
  bf_text_show (cr, number, CAP_MM, 1.0, bf_vec2 (MARGIN_MM + width, MARGIN_MM + NAME_CAP_MM));
  show_wrapped (cr, both, bf_vec2 (MARGIN_MM, MARGIN_MM + NAME_CAP_MM + 5.5), width, HEAD_LINES);
}

static void
draw_words (const BfMarkingPages *pages, guint at, double width_mm, cairo_t *cr)
{
  const BfMarkingStep *step = &g_array_index (pages->steps, BfMarkingStep, at);
  const char *caution = bf_marking_step_caution (step);
  g_autofree char *number = g_strdup_printf ("%u", at + 1);
  g_autofree char *words = bf_marking_step_words (pages->marking, step, pages->units);
  g_autofree char *all = caution != NULL ? g_strconcat (words, " ", caution, NULL) : NULL;
  g_autoptr (BfText) big = bf_text_new (number, NUMBER_CAP_MM, TRUE);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_draw (big, cr, 0.0, NUMBER_CAP_MM);
  show_wrapped (cr, all != NULL ? all : words, bf_vec2 (NUMBER_COLUMN_MM, CAP_MM + 0.8),
                width_mm - NUMBER_COLUMN_MM, WORDS_LINES);
}

static void
draw_cell (const BfMarkingPages *pages, guint at, BfVec2 size, cairo_t *cr)
{
  BfMarkingPicture picture = { pages->marking, pages->steps, at, pages->units };

  draw_words (pages, at, size.x, cr);
  cairo_translate (cr, 0.0, WORDS_MM);
  bf_marking_picture_draw (&picture, size.x, size.y - WORDS_MM, cr);
}

void
bf_marking_pages_draw (const BfMarkingPages *pages, guint i, cairo_t *cr)
{
  double width = (pages->paper->width_mm - 2.0 * MARGIN_MM - GUTTER_MM) / COLUMNS;
  double height =
      (pages->paper->height_mm - 2.0 * MARGIN_MM - HEAD_MM - (ROWS - 1) * GUTTER_MM) / ROWS;

  draw_head (pages, i, cr);
  for (guint k = 0; k < PER_PAGE && i * PER_PAGE + k < pages->steps->len; k++)
    {
      cairo_save (cr);
      cairo_translate (cr, MARGIN_MM + k % COLUMNS * (width + GUTTER_MM),
                       MARGIN_MM + HEAD_MM + k / COLUMNS * (height + GUTTER_MM));
      draw_cell (pages, i * PER_PAGE + k, bf_vec2 (width, height), cr);
      cairo_restore (cr);
    }
}
