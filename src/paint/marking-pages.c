/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/marking-pages.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "make/marking-points.h"
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

/* More points than these crowd a picture: they are numbered there, and told beside it. */
#define MOST_TOLD 4

/* A table of points, in one or two columns. */
#define POINT_MM 4.4
#define POINT_TOP_MM 5.0
#define POINT_X_MM 7.5
#define POINT_Y_MM 27.0
#define POINT_R_MM 47.0

/* What stands in a place of a page. */
typedef struct
{
  int step;            /* −1: nothing */
  gboolean has_points; /* a table of points that the step's picture numbers, not the picture */
  guint from, n;       /* which of them */
} Cell;

struct _BfMarkingPages
{
  const BfWork *work;
  const BfPaper *paper;
  char *errors;    /* the biggest rounding error, said once */
  GArray *cells;   /* Cell, row by row and page by page */
  guint n_marking; /* pages, before those of the cuts */
  BfCard *cuts;    /* NULL where a machine cuts */
};

/* ---- words -------------------------------------------------------------------------------- */

/* The biggest rounding error, said once. */
static char *
error_words (const BfWork *work)
{
  BfUnits units = work->fold->part->units;
  const BfMarking *marking = work->marking;
  g_autofree char *step = bf_format_length (marking->step_mm, units);
  g_autofree char *worst = bf_marking_worst_words (marking, units);

  /* Translators: two lengths with their units */
  return g_strdup_printf (_ ("Marking side up. Distances are rounded to %s; none is off by more "
                             "than %s."),
                          step, worst);
}

/* ---- places ------------------------------------------------------------------------------- */

static BfPageHead
head_of (const BfMarkingPages *pages, guint page)
{
  return (BfPageHead){ .fold = pages->work->fold,
                       .cautions = TRUE,
                       .paper = pages->paper,
                       .title = _ ("Marking out"),
                       .page = page,
                       .n_pages = bf_marking_pages_n (pages),
                       .note = pages->errors };
}

static BfVec2
cell_size (const BfMarkingPages *pages, double top_mm)
{
  const BfPaper *paper = pages->paper;

  return bf_vec2 ((paper->width_mm - 2.0 * MARGIN_MM - (COLUMNS - 1) * GUTTER_MM) / COLUMNS,
                  (paper->height_mm - MARGIN_MM - top_mm - (ROWS - 1) * GUTTER_MM) / ROWS);
}

static guint
points_in_a_column (BfVec2 size)
{
  return (guint)MAX (1.0, floor ((size.y - POINT_TOP_MM) / POINT_MM));
}

/* Radii take the room of a second column. */
static guint
n_point_columns (const BfMarkingStep *step)
{
  return step->kind == BF_STEP_ARC ? 1 : 2;
}

static void
add_cell (GArray *cells, int step, guint from, guint n)
{
  Cell cell = { step, n > 0, from, n };

  g_array_append_val (cells, cell);
}

/* A picture with its table begins at the left, so that both stand side by side. */
static void
add_step (BfMarkingPages *pages, guint i, BfVec2 size)
{
  const BfMarkingStep *step = &g_array_index (pages->work->marking_steps, BfMarkingStep, i);
  g_autoptr (GArray) points = bf_marking_step_points (pages->work->marking, step);
  guint room = n_point_columns (step) * points_in_a_column (size);

  if (points->len > MOST_TOLD && pages->cells->len % COLUMNS > 0)
    add_cell (pages->cells, -1, 0, 0);
  add_cell (pages->cells, (int)i, 0, 0);
  for (guint from = 0; points->len > MOST_TOLD && from < points->len; from += room)
    add_cell (pages->cells, (int)i, from, MIN (room, points->len - from));
}

static void
add_steps (BfMarkingPages *pages)
{
  BfPageHead head = head_of (pages, 0);
  BfVec2 size = cell_size (pages, bf_page_head_end_mm (&head));

  for (guint i = 0; i < pages->work->marking_steps->len; i++)
    add_step (pages, i, size);
  pages->n_marking = (pages->cells->len + PER_PAGE - 1) / PER_PAGE;
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
  pages->cells = g_array_new (FALSE, FALSE, sizeof (Cell));
  add_steps (pages);
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
  g_array_unref (pages->cells);
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
draw_point (const BfStepPoint *point, BfUnits units, BfVec2 at, cairo_t *cr)
{
  g_autofree char *x = bf_format_number (point->at.x.marked_mm, units);
  g_autofree char *y = bf_format_number (point->at.y.marked_mm, units);
  g_autofree char *radius = bf_format_number (point->radius_mm, units);
  g_autofree char *right = g_strdup_printf ("→ %s", x), *up = g_strdup_printf ("↑ %s", y);
  g_autofree char *compass = g_strdup_printf ("R %s", radius);

  bf_text_show (cr, right, CAP_MM, 0.0, bf_vec2 (at.x + POINT_X_MM, at.y));
  bf_text_show (cr, up, CAP_MM, 0.0, bf_vec2 (at.x + POINT_Y_MM, at.y));
  if (!isnan (point->radius_mm))
    bf_text_show (cr, compass, CAP_MM, 0.0, bf_vec2 (at.x + POINT_R_MM, at.y));
}

static void
draw_points (const BfMarkingPages *pages, const Cell *cell, BfVec2 size, cairo_t *cr)
{
  const BfWork *work = pages->work;
  const BfMarkingStep *step = &g_array_index (work->marking_steps, BfMarkingStep, cell->step);
  g_autoptr (GArray) points = bf_marking_step_points (work->marking, step);
  guint lines = points_in_a_column (size);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  for (guint i = 0; i < cell->n; i++)
    {
      BfVec2 at = bf_vec2 (i / lines * size.x / 2.0, POINT_TOP_MM + i % lines * POINT_MM);
      g_autofree char *number = g_strdup_printf ("%u", cell->from + i + 1);
      g_autoptr (BfText) bold = bf_text_new (number, CAP_MM, TRUE);

      bf_text_draw (bold, cr, at.x, at.y);
      draw_point (&g_array_index (points, BfStepPoint, cell->from + i), work->fold->part->units, at,
                  cr);
    }
}

static void
draw_cell (const BfMarkingPages *pages, guint at, BfVec2 size, cairo_t *cr)
{
  const BfWork *work = pages->work;
  const Cell *cell = &g_array_index (pages->cells, Cell, at);
  BfMarkingPicture picture = { work->marking, work->marking_steps, (guint)cell->step,
                               work->fold->part->units, FALSE };

  if (cell->step < 0)
    return;
  if (cell->has_points)
    {
      draw_points (pages, cell, size, cr);
      return;
    }
  picture.numbers = at + 1 < pages->cells->len && (cell + 1)->has_points;
  draw_words (pages, (guint)cell->step, size.x, cr);
  cairo_translate (cr, 0.0, WORDS_MM);
  bf_marking_picture_draw (&picture, size.x, size.y - WORDS_MM, cr);
}

static void
draw_marking (const BfMarkingPages *pages, guint i, cairo_t *cr)
{
  BfPageHead head = head_of (pages, i);
  double top = bf_page_head_draw (&head, cr);
  BfVec2 size = cell_size (pages, top);

  for (guint k = 0; k < PER_PAGE && i * PER_PAGE + k < pages->cells->len; k++)
    {
      cairo_save (cr);
      cairo_translate (cr, MARGIN_MM + k % COLUMNS * (size.x + GUTTER_MM),
                       top + k / COLUMNS * (size.y + GUTTER_MM));
      draw_cell (pages, i * PER_PAGE + k, size, cr);
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
