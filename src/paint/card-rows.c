/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/card-rows.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/units.h"
#include "fold/expected-error.h"
#include "paint/cut-labels.h"
#include "paint/cut-rows.h"
#include "paint/figure.h"
#include "paint/page-head.h"
#include "paint/palette.h"
#include "paint/text.h"

#define PICTURES_MM 60.0
#define STAGE_MM 7.5
#define STAGE_CAP_MM 3.0
#define BOX_MM 3.2
#define BOX_COLUMN_MM 6.0
#define NUMBERS_SHARE 0.4
#define COLUMN_GAP_MM 5.0
#define STEP_GAP_MM 1.6
#define ASCENT_MM 3.2 /* from a row's upper edge to its first baseline */
#define SIZE_LINE_MM 6.2
#define SIZE_COLUMNS 2
#define WHO_MM 12.0

/* ---- words -------------------------------------------------------------------------------- */

/* "width 276.2 mm;  height 196.2 mm": a number and its label are never parted. */
static char *
numbers_words (const BfWorkStep *step)
{
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < step->n_numbers; i++)
    {
      g_autofree char *pair =
          g_strdup_printf ("%s %s", step->numbers[i].label, step->numbers[i].value);
      g_auto (GStrv) pieces = g_strsplit (pair, " ", -1);
      g_autofree char *whole = g_strjoinv ("\302\240", pieces); /* no-break spaces */

      g_string_append_printf (words, "%s%s", i > 0 ? ";  " : "", whole);
    }
  return g_string_free (words, FALSE);
}

static double
words_width_mm (double width_mm)
{
  return width_mm * (1.0 - NUMBERS_SHARE) - BOX_COLUMN_MM - COLUMN_GAP_MM;
}

/* The measuring step's numbers have a table of their own. */
static gboolean
is_measuring (const BfWork *work, guint step)
{
  return step == work->first[BF_STAGE_FINISH];
}

/* ---- a step ------------------------------------------------------------------------------- */

/* Words at the left and numbers at the right, over the whole width where there are none; the
 * caution below both. Draws it where cr is not NULL; returns how high it is. */
static double
lay_out_step (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr)
{
  const BfWorkStep *step = bf_work_step (work, row->at);
  g_autofree char *numbers = numbers_words (step);
  gboolean beside = numbers[0] != '\0' && !is_measuring (work, row->at);
  double all_mm = width_mm - BOX_COLUMN_MM, y = ASCENT_MM, right = 0.0;

  y += bf_page_words (cr, step->words, bf_vec2 (BOX_COLUMN_MM, ASCENT_MM),
                      beside ? words_width_mm (width_mm) : all_mm, FALSE);
  if (beside)
    right = ASCENT_MM + bf_page_words (cr, numbers,
                                       bf_vec2 (width_mm * (1.0 - NUMBERS_SHARE), ASCENT_MM),
                                       width_mm * NUMBERS_SHARE, FALSE);
  y = MAX (y, right);
  if (row->warns)
    y += bf_page_words (cr, step->caution, bf_vec2 (BOX_COLUMN_MM, y), all_mm, TRUE);
  return y - ASCENT_MM + STEP_GAP_MM;
}

static void
draw_step (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr)
{
  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  cairo_rectangle (cr, 0.4, ASCENT_MM - BF_PAGE_CAP_MM - (BOX_MM - BF_PAGE_CAP_MM) / 2.0, BOX_MM,
                   BOX_MM);
  cairo_stroke (cr);
  lay_out_step (work, row, width_mm, cr);
}

/* ---- sizes -------------------------------------------------------------------------------- */

static guint
n_size_lines (const BfWork *work)
{
  g_autoptr (GArray) sizes = bf_main_sizes (work->fold);

  return (sizes->len + SIZE_COLUMNS - 1) / SIZE_COLUMNS;
}

static char *
size_words (const BfWork *work, const BfMainSize *size)
{
  g_autofree char *expected = bf_expected_size (work->fold, &size->error, size->size_mm);

  return g_strdup_printf ("%s: %s", bf_main_size_name (size), expected);
}

/* The words, and a line to write on up to the column's end. */
static void
draw_size (const char *words, BfVec2 at, double width_mm, cairo_t *cr)
{
  g_autoptr (BfText) text = bf_text_new (words, BF_PAGE_CAP_MM, FALSE);

  bf_text_wrap (text, width_mm * 0.6, 1);
  bf_text_draw (text, cr, at.x, at.y);
  bf_page_rule (cr, bf_vec2 (at.x + width_mm * 0.63, at.y + 0.8), width_mm * 0.37);
}

static void
draw_sizes (const BfWork *work, double width_mm, cairo_t *cr)
{
  g_autoptr (GArray) sizes = bf_main_sizes (work->fold);
  double column = (width_mm - BOX_COLUMN_MM - (SIZE_COLUMNS - 1) * COLUMN_GAP_MM) / SIZE_COLUMNS;
  guint lines = n_size_lines (work);

  for (guint i = 0; i < sizes->len; i++)
    {
      g_autofree char *words = size_words (work, bf_main_size (sizes, i));

      draw_size (words,
                 bf_vec2 (BOX_COLUMN_MM + i / lines * (column + COLUMN_GAP_MM),
                          ASCENT_MM + 1.5 + i % lines * SIZE_LINE_MM),
                 column, cr);
    }
}

/* ---- the others --------------------------------------------------------------------------- */

/* Where the blank's size comes from: a trial bend says so here, too. */
static void
draw_k (const BfWork *work, BfVec2 middle, cairo_t *cr)
{
  g_autofree char *k = bf_part_k_words (work->fold), *words = NULL;

  if (work->fold->bends->len == 0)
    return;
  /* Translators: a K-factor and where it comes from: "0.42 ± 0.06, a rule of thumb" */
  words = g_strdup_printf (_ ("Bends: K %s"), k);
  bf_text_show (cr, words, BF_PAGE_CAP_MM, 0.5, middle);
}

static void
draw_pictures (const BfWork *work, double width_mm, cairo_t *cr)
{
  double half = (width_mm - COLUMN_GAP_MM) / 2.0;
  BfVec2 room;
  BfVec3 size = bf_vec3_sub (work->fold->formed.max, work->fold->formed.min);
  BfUnits units = work->fold->part->units;
  g_autofree char *x = bf_format_number (size.x, units), *y = bf_format_number (size.y, units);
  g_autofree char *z = bf_format_length (size.z, units);
  /* Translators: three lengths over all, the last with its unit */
  g_autofree char *words = g_strdup_printf (_ ("Over all: %s × %s × %s"), x, y, z);

  bf_figure_formed (work->fold, &work->fold->formed, -1, bf_vec2 (half, PICTURES_MM - 12.5), cr);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_show (cr, words, BF_PAGE_CAP_MM, 0.5, bf_vec2 (half / 2.0, PICTURES_MM - 8.0));
  draw_k (work, bf_vec2 (half / 2.0, PICTURES_MM - 4.0), cr);
  cairo_translate (cr, half + COLUMN_GAP_MM, 0.0);
  cairo_translate (cr, 0.0, BF_CUT_LABELS_MM);
  room = bf_vec2 (half - BF_CUT_LABELS_MM, PICTURES_MM - 3.0 - BF_CUT_LABELS_MM);
  bf_figure_blank (work->fold, room, cr);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_cut_labels_draw (work, room, cr);
}

static void
draw_stage (BfStage stage, double width_mm, cairo_t *cr)
{
  g_autoptr (BfText) name = bf_text_new (bf_stage_name (stage), STAGE_CAP_MM, TRUE);

  bf_page_rule (cr, bf_vec2 (0.0, 0.4), width_mm);
  bf_text_draw (name, cr, 0.0, STAGE_CAP_MM + 2.2);
}

static void
draw_who (double width_mm, cairo_t *cr)
{
  const char *words[] = { _ ("Name"), _ ("Class"), _ ("Made on") };
  double column = (width_mm - 2.0 * COLUMN_GAP_MM) / 3.0;

  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    {
      g_autoptr (BfText) text = bf_text_new (words[i], BF_PAGE_CAP_MM, FALSE);
      double x = i * (column + COLUMN_GAP_MM), from = bf_text_width (text) + 2.0;

      bf_text_draw (text, cr, x, WHO_MM - 2.0);
      bf_page_rule (cr, bf_vec2 (x + from, WHO_MM - 1.2), column - from);
    }
}

void
bf_card_row_draw (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr)
{
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  switch (row->kind)
    {
    case BF_CARD_PICTURES:
      draw_pictures (work, width_mm, cr);
      break;
    case BF_CARD_STAGE:
      draw_stage ((BfStage)row->at, width_mm, cr);
      break;
    case BF_CARD_STEP:
      draw_step (work, row, width_mm, cr);
      break;
    case BF_CARD_SIZES:
      draw_sizes (work, width_mm, cr);
      break;
    case BF_CARD_WHO:
      draw_who (width_mm, cr);
      break;
    case BF_CARD_CUT_PICTURE:
    case BF_CARD_CUT_HEAD:
    case BF_CARD_CUT:
    default:
      bf_cut_row_draw (work, row, width_mm, cr);
      break;
    }
}

/* ---- all of them -------------------------------------------------------------------------- */

static void
add (GArray *rows, BfCardRowKind kind, guint at, double height_mm)
{
  BfCardRow row = { .kind = kind, .at = at, .height_mm = height_mm };

  g_array_append_val (rows, row);
}

/* The caution that was said last in the stage of the row to come, or NULL. */
static const char *
last_caution (const BfWork *work, const GArray *rows)
{
  for (guint i = rows->len; i-- > 0;)
    {
      const BfCardRow *row = &g_array_index (rows, BfCardRow, i);

      if (row->kind == BF_CARD_STAGE)
        return NULL;
      if (row->kind == BF_CARD_STEP && bf_work_step (work, row->at)->caution != NULL)
        return bf_work_step (work, row->at)->caution;
    }
  return NULL;
}

void
bf_card_add_step (const BfWork *work, guint at, double width_mm, GArray *rows)
{
  const char *caution = bf_work_step (work, at)->caution;
  BfCardRow row = { .kind = BF_CARD_STEP, .at = at };

  row.warns = caution != NULL && g_strcmp0 (caution, last_caution (work, rows)) != 0;
  row.height_mm = lay_out_step (work, &row, width_mm, NULL);
  g_array_append_val (rows, row);
  if (is_measuring (work, at))
    add (rows, BF_CARD_SIZES, 0, n_size_lines (work) * SIZE_LINE_MM + 2.0);
}

GArray *
bf_card_rows (const BfWork *work, double width_mm)
{
  GArray *rows = g_array_new (FALSE, TRUE, sizeof (BfCardRow));

  add (rows, BF_CARD_PICTURES, 0, PICTURES_MM);
  for (BfStage stage = 0; stage < BF_N_STAGES; stage++)
    {
      if (bf_work_n_steps (work, stage) > 0)
        add (rows, BF_CARD_STAGE, (guint)stage, STAGE_MM);
      for (guint i = work->first[stage]; i < work->first[stage + 1]; i++)
        if (!bf_work_step (work, i)->detail)
          bf_card_add_step (work, i, width_mm, rows);
    }
  add (rows, BF_CARD_WHO, 0, WHO_MM);
  return rows;
}
