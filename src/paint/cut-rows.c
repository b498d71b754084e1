/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/cut-rows.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "make/marking-points.h"
#include "paint/cut-labels.h"
#include "paint/figure.h"
#include "paint/page-head.h"
#include "paint/palette.h"
#include "paint/text.h"

#define LINE_MM 5.2
#define CAP_MM 2.5
#define BASELINE_MM 3.9
#define BOX_MM 3.0

/* Where the columns begin, as shares of the width; the box to tick stands before them. */
enum
{
  COLUMN_NUMBER,
  COLUMN_LENGTH,
  COLUMN_LINE,
  COLUMN_GUIDE,
  COLUMN_WASTE,
  COLUMN_ENDS,
  N_COLUMNS
};
static const double begins[N_COLUMNS] = { 0.04, 0.09, 0.21, 0.45, 0.69, 0.86 };

/* ---- the picture -------------------------------------------------------------------------- */

/* As high as the blank gets across the whole width, or as is let. */
static double
picture_height_mm (const BfWork *work, double width_mm, double most_mm)
{
  BfVec2 extent = bf_vec2_sub (work->fold->blank.box.max, work->fold->blank.box.min);
  double whole = width_mm * extent.y / extent.x + 2.0 * BF_CUT_LABELS_MM + 8.0;

  return extent.x > 0.0 ? MIN (most_mm, whole) : most_mm;
}

static void
draw_picture (const BfWork *work, double width_mm, double height_mm, cairo_t *cr)
{
  BfVec2 room =
      bf_vec2 (width_mm - 2.0 * BF_CUT_LABELS_MM, height_mm - 2.0 * BF_CUT_LABELS_MM - 2.0);

  cairo_translate (cr, BF_CUT_LABELS_MM, BF_CUT_LABELS_MM);
  bf_figure_blank (work->fold, room, cr);
  bf_cut_labels_draw (work, room, cr);
}

/* ---- the list ----------------------------------------------------------------------------- */

/* From a column to where another one begins. */
static void
show_over (const char *words, int column, int before, double width_mm, cairo_t *cr)
{
  double end = before < N_COLUMNS ? begins[before] : 1.0;
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, column == COLUMN_NUMBER);

  bf_text_wrap (text, (end - begins[column]) * width_mm - 1.0, 1);
  bf_text_draw (text, cr, begins[column] * width_mm, BASELINE_MM);
}

static void
show (const char *words, int column, double width_mm, cairo_t *cr)
{
  show_over (words, column, column + 1, width_mm, cr);
}

/* TRUE where a cut is told by its ends, whose arrows must be told. */
static gboolean
has_slants (const BfWork *work)
{
  BfCutPlace place;

  for (guint i = 0; i < work->cuts->len; i++)
    if (!bf_work_cut_place (work, i, &place))
      return TRUE;
  return FALSE;
}

static double
head_height_mm (const BfWork *work)
{
  return LINE_MM * (has_slants (work) ? 2.0 : 1.0) + 0.6;
}

static void
draw_head (const BfWork *work, double width_mm, cairo_t *cr)
{
  const char *const words[N_COLUMNS] = { [COLUMN_LENGTH] = _ ("length"),
                                         [COLUMN_LINE] = _ ("line"),
                                         [COLUMN_GUIDE] = _ ("guide"),
                                         [COLUMN_WASTE] = _ ("waste"),
                                         [COLUMN_ENDS] = _ ("ends in") };
  gboolean guided = work->fold->part->cutting.by == BF_CUTTING_DISC;

  if (has_slants (work))
    {
      show_over (_ ("→ is from the left edge, ↑ from the bottom edge."), COLUMN_LENGTH, N_COLUMNS,
                 width_mm, cr);
      cairo_translate (cr, 0.0, LINE_MM);
    }
  for (int i = 0; i < N_COLUMNS; i++)
    if (words[i] != NULL && (i != COLUMN_GUIDE || guided))
      show (words[i], i, width_mm, cr);
  bf_page_rule (cr, bf_vec2 (0.0, LINE_MM), width_mm);
}

/* "40 from the left". Returns: (transfer full). */
static char *
from_words (const BfWork *work, const BfCutPlace *place, double at_mm)
{
  g_autofree char *at = bf_format_number (at_mm, work->fold->part->units);

  /* Translators: a length without its unit, measured from the metal's lower or left edge */
  return g_strdup_printf (
      place->from == BF_DATUM_BOTTOM ? _ ("%s from below") : _ ("%s from the left"), at);
}

/* By its two ends, over both columns. */
static void
draw_slant (const BfWork *work, guint at, double width_mm, cairo_t *cr)
{
  const BfCut *cut = bf_cut (work->cuts, at);
  BfUnits units = work->fold->part->units;
  BfMarkedPoint from = bf_marking_point (work->marking, cut->from);
  BfMarkedPoint to = bf_marking_point (work->marking, cut->to);
  g_autofree char *a = bf_marked_point_words (&from, units);
  g_autofree char *b = bf_marked_point_words (&to, units);
  /* Translators: two points, each by its distances "→ 43  ↑ 10" */
  g_autofree char *words = g_strdup_printf (_ ("%s   to   %s"), a, b);

  show_over (words, COLUMN_LINE, COLUMN_WASTE, width_mm, cr);
}

static void
draw_place (const BfWork *work, guint at, double width_mm, cairo_t *cr)
{
  BfCutPlace place;
  g_autofree char *line = NULL, *guide = NULL;

  if (!bf_work_cut_place (work, at, &place))
    {
      draw_slant (work, at, width_mm, cr);
      return;
    }
  line = from_words (work, &place, place.line_mm);
  guide = from_words (work, &place, place.guide_mm);
  show (line, COLUMN_LINE, width_mm, cr);
  if (work->fold->part->cutting.by == BF_CUTTING_DISC)
    show (work->guide_offset_mm > 0.0 ? guide : _ ("on the line"), COLUMN_GUIDE, width_mm, cr);
}

static void
draw_cut (const BfWork *work, guint at, double width_mm, cairo_t *cr)
{
  const BfCut *cut = bf_cut (work->cuts, at);
  guint n_holes = (cut->from_hole ? 1u : 0u) + (cut->to_hole ? 1u : 0u);
  g_autofree char *number = g_strdup_printf ("%u", at + 1);
  g_autofree char *length = bf_format_length (cut->length_mm, work->fold->part->units);
  /* Translators: how many drilled holes a cut ends in */
  g_autofree char *ends = g_strdup_printf (ngettext ("%u hole", "%u holes", n_holes), n_holes);

  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  cairo_rectangle (cr, 0.4, BASELINE_MM - (CAP_MM + BOX_MM) / 2.0, BOX_MM, BOX_MM);
  cairo_stroke (cr);
  show (number, COLUMN_NUMBER, width_mm, cr);
  show (length, COLUMN_LENGTH, width_mm, cr);
  draw_place (work, at, width_mm, cr);
  show (bf_cut_waste_words (cut), COLUMN_WASTE, width_mm, cr);
  if (n_holes > 0)
    show (ends, COLUMN_ENDS, width_mm, cr);
}

void
bf_cut_row_draw (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr)
{
  switch (row->kind)
    {
    case BF_CARD_CUT_PICTURE:
      draw_picture (work, width_mm, row->height_mm, cr);
      break;
    case BF_CARD_CUT_HEAD:
      draw_head (work, width_mm, cr);
      break;
    case BF_CARD_CUT:
      draw_cut (work, row->at, width_mm, cr);
      break;
    case BF_CARD_PICTURES:
    case BF_CARD_STAGE:
    case BF_CARD_STEP:
    case BF_CARD_SIZES:
    case BF_CARD_WHO:
    default:
      g_return_if_reached ();
    }
}

/* ---- all of them -------------------------------------------------------------------------- */

static void
add (GArray *rows, BfCardRowKind kind, guint at, double height_mm)
{
  BfCardRow row = { .kind = kind, .at = at, .height_mm = height_mm };

  g_array_append_val (rows, row);
}

static void
add_cuts (const BfWork *work, GArray *rows)
{
  if (work->cuts->len == 0)
    return;
  add (rows, BF_CARD_CUT_HEAD, 0, head_height_mm (work));
  for (guint i = 0; i < work->cuts->len; i++)
    add (rows, BF_CARD_CUT, i, LINE_MM);
}

/* How it is done in general comes before the list of cuts, what is cut besides comes after. */
GArray *
bf_cut_rows (const BfWork *work, double width_mm, double picture_mm)
{
  GArray *rows = g_array_new (FALSE, TRUE, sizeof (BfCardRow));
  gboolean listed = FALSE;

  add (rows, BF_CARD_CUT_PICTURE, 0, picture_height_mm (work, width_mm, picture_mm));
  for (guint i = work->first[BF_STAGE_CUT]; i < work->first[BF_STAGE_CUT + 1]; i++)
    {
      const BfWorkStep *step = bf_work_step (work, i);

      if (!step->detail)
        bf_card_add_step (work, i, width_mm, rows);
      else if (!listed)
        add_cuts (work, rows);
      listed = listed || step->detail;
    }
  return rows;
}
