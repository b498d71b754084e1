/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/marking-pages.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "paint/card.h"
#include "paint/marking-picture.h"
#include "paint/page-head.h"
#include "paint/palette.h"
#include "paint/text.h"

#define COLUMNS 2
#define ROWS 3
#define PER_PAGE (COLUMNS * ROWS)
#define MARGIN_MM BF_PAGE_MARGIN_MM
#define GUTTER_MM 8.0
#define CAP_MM 2.3
#define NUMBER_CAP_MM 4.0
#define NUMBER_COLUMN_MM 11.0
#define WORDS_LINES 5
#define WORDS_MM 19.0 /* above a picture */

struct _BfMarkingPages
{
  const BfWork *work;
  const BfPaper *paper;
  char *errors;    /* the biggest rounding error, said once */
  guint n_marking; /* pages, before those of the cuts */
  BfCard *cuts;    /* NULL where a machine cuts */
};

/* ---- words -------------------------------------------------------------------------------- */

/* Up to the next hundredth of a mm, or 1/64 in, so that what is said holds. With its unit. */
static char *
format_up (double length_mm, BfUnits units)
{
  double step_mm = units == BF_UNITS_IN ? BF_MM_PER_INCH / 64.0 : 0.01;
  double up_mm = ceil (length_mm / step_mm - 1e-9) * step_mm;
  g_autofree char *fine = NULL;

  if (units == BF_UNITS_IN)
    return bf_format_length (up_mm, units);
  fine = bf_format_fine (up_mm, units);
  /* Translators: a length in millimetres, "0.25 mm" */
  return g_strdup_printf (_ ("%s mm"), fine);
}

/* The biggest rounding error, said once. */
static char *
error_words (const BfWork *work)
{
  BfUnits units = work->fold->part->units;
  const BfMarking *marking = work->marking;
  g_autofree char *step = bf_format_length (marking->step_mm, units);
  g_autofree char *worst = format_up (marking->worst_mm, units);

  /* Translators: two lengths with their units */
  return g_strdup_printf (_ ("Marking side up. Distances are rounded to %s; none is off by more "
                             "than %s."),
                          step, worst);
}

/* ---- all of it ---------------------------------------------------------------------------- */

BfMarkingPages *
bf_marking_pages_new (const BfWork *work, const BfPaper *paper)
{
  BfMarkingPages *pages;

  g_return_val_if_fail (work != NULL && paper != NULL, NULL);
  pages = g_new0 (BfMarkingPages, 1);
  pages->work = work;
  pages->paper = paper;
  pages->errors = error_words (work);
  pages->n_marking = (work->marking_steps->len + PER_PAGE - 1) / PER_PAGE;
  if (bf_work_is_by_hand (work))
    pages->cuts = bf_card_new_cuts (work, paper, pages->n_marking);
  return pages;
}

void
bf_marking_pages_free (BfMarkingPages *pages)
{
  if (pages == NULL)
    return;
  g_clear_pointer (&pages->cuts, bf_card_free);
  g_free (pages->errors);
  g_free (pages);
}

guint
bf_marking_pages_n (const BfMarkingPages *pages)
{
  return pages->n_marking + (pages->cuts != NULL ? bf_card_n_pages (pages->cuts) : 0);
}

const BfPaper *
bf_marking_pages_paper (const BfMarkingPages *pages)
{
  return pages->paper;
}

const BfPart *
bf_marking_pages_part (const BfMarkingPages *pages)
{
  return pages->work->fold->part;
}

/* ---- drawing ------------------------------------------------------------------------------ */

static void
show_wrapped (cairo_t *cr, const char *words, BfVec2 at, double width_mm, int lines)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, FALSE);

  bf_text_wrap (text, width_mm, lines);
  bf_text_draw (text, cr, at.x, at.y);
}

static void
draw_words (const BfMarkingPages *pages, guint at, double width_mm, cairo_t *cr)
{
  const BfWork *work = pages->work;
  const BfMarkingStep *step = &g_array_index (work->marking_steps, BfMarkingStep, at);
  const char *caution = bf_marking_step_caution (step);
  g_autofree char *number = g_strdup_printf ("%u", at + 1);
  g_autofree char *words = bf_marking_step_words (work->marking, step, work->fold->part->units);
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
  const BfWork *work = pages->work;
  BfMarkingPicture picture = { work->marking, work->marking_steps, at, work->fold->part->units };

  draw_words (pages, at, size.x, cr);
  cairo_translate (cr, 0.0, WORDS_MM);
  bf_marking_picture_draw (&picture, size.x, size.y - WORDS_MM, cr);
}

static void
draw_marking (const BfMarkingPages *pages, guint i, cairo_t *cr)
{
  BfPageHead head = { .fold = pages->work->fold,
                      .paper = pages->paper,
                      .title = _ ("Marking out"),
                      .page = i,
                      .n_pages = bf_marking_pages_n (pages),
                      .note = pages->errors };
  double top = bf_page_head_draw (&head, cr);
  double width = (pages->paper->width_mm - 2.0 * MARGIN_MM - GUTTER_MM) / COLUMNS;
  double height = (pages->paper->height_mm - MARGIN_MM - top - (ROWS - 1) * GUTTER_MM) / ROWS;

  for (guint k = 0; k < PER_PAGE && i * PER_PAGE + k < pages->work->marking_steps->len; k++)
    {
      cairo_save (cr);
      cairo_translate (cr, MARGIN_MM + k % COLUMNS * (width + GUTTER_MM),
                       top + k / COLUMNS * (height + GUTTER_MM));
      draw_cell (pages, i * PER_PAGE + k, bf_vec2 (width, height), cr);
      cairo_restore (cr);
    }
}

void
bf_marking_pages_draw (const BfMarkingPages *pages, guint i, cairo_t *cr)
{
  if (i < pages->n_marking)
    draw_marking (pages, i, cr);
  else
    bf_card_draw (pages->cuts, i - pages->n_marking, cr);
}
