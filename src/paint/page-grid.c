/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/page-grid.h"

#include <string.h>

#include "core/tolerance.h"
#include "paint/label-field.h"

/* Beyond any drawing. */
#define FAR_MM 1e7

static BfBox
ink_box (const GArray *ink)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < ink->len; i++)
    {
      bf_box_extend (&box, g_array_index (ink, BfInkLine, i).a);
      bf_box_extend (&box, g_array_index (ink, BfInkLine, i).b);
    }
  box.min = bf_vec2_sub (box.min, bf_vec2 (BF_GRID_PAD_MM, BF_GRID_PAD_MM));
  box.max = bf_vec2_add (box.max, bf_vec2 (BF_GRID_PAD_MM, BF_GRID_PAD_MM));
  return box;
}

/* How many windows in a row cover that length. */
static guint
count_windows (double length_mm, double window_mm, double overlap_mm)
{
  double more = (length_mm - window_mm) / (window_mm - overlap_mm);

  return more > 0.0 ? 1 + (guint)ceil (more) : 1;
}

static double
covered (guint n, double window_mm, double overlap_mm)
{
  return window_mm + (n - 1) * (window_mm - overlap_mm);
}

void
bf_page_grid_init (BfPageGrid *grid, const double shares[2])
{
  const BfPageFormat *format = grid->format;
  BfBox box = ink_box (grid->ink);
  double overlap = format->overlap_mm;
  BfVec2 size = bf_vec2_sub (box.max, box.min), slack;

  grid->window = bf_vec2 (format->width_mm - 2.0 * format->margin_mm - format->side_mm,
                          format->height_mm - 2.0 * format->margin_mm - format->foot_mm);
  grid->n[0] = count_windows (size.x, grid->window.x, overlap);
  grid->n[1] = count_windows (size.y, grid->window.y, overlap);
  slack = bf_vec2 (covered (grid->n[0], grid->window.x, overlap) - size.x,
                   covered (grid->n[1], grid->window.y, overlap) - size.y);
  memset (grid->shifts_mm, 0, sizeof grid->shifts_mm);
  for (guint row = 0; row < BF_GRID_SHIFTED_ROWS; row++)
    {
      grid->ends[row][0] = 0;
      grid->ends[row][1] = grid->n[0] - 1;
    }
  grid->start = bf_vec2 (box.min.x - slack.x * shares[0], box.min.y - slack.y * shares[1]);
}

double
bf_page_grid_row_shift_mm (const BfPageGrid *grid, guint row)
{
  return row < BF_GRID_SHIFTED_ROWS ? grid->shifts_mm[row] : 0.0;
}

double
bf_page_grid_step_mm (const BfPageGrid *grid)
{
  return grid->window.x - grid->format->overlap_mm;
}

guint
bf_page_grid_row_end (const BfPageGrid *grid, guint row, guint which)
{
  if (row < BF_GRID_SHIFTED_ROWS)
    return grid->ends[row][which];
  return which == 0 ? 0 : grid->n[0] - 1;
}

void
bf_page_grid_place_row (BfPageGrid *grid, guint row, double begin_mm, double length_mm)
{
  double step = bf_page_grid_step_mm (grid);
  double first = floor ((begin_mm - grid->start.x) / step);

  g_return_if_fail (row < BF_GRID_SHIFTED_ROWS && first >= 0.0);

  grid->shifts_mm[row] = begin_mm - grid->start.x - first * step;
  grid->ends[row][0] = (guint)first;
  grid->ends[row][1] =
      (guint)first + count_windows (length_mm, grid->window.x, grid->format->overlap_mm) - 1;
  grid->n[0] = MAX (grid->n[0], grid->ends[row][1] + 1);
}

void
bf_page_grid_trim (BfPageGrid *grid)
{
  guint first = grid->n[0], last = 0;

  for (guint row = 0; row < grid->n[1]; row++)
    {
      first = MIN (first, bf_page_grid_row_end (grid, row, 0));
      last = MAX (last, bf_page_grid_row_end (grid, row, 1));
    }
  for (guint row = 0; row < MIN (grid->n[1], BF_GRID_SHIFTED_ROWS); row++)
    for (guint i = 0; i < 2; i++)
      grid->ends[row][i] -= first;
  grid->start.x += first * bf_page_grid_step_mm (grid);
  grid->n[0] = last + 1 - first;
}

BfBox
bf_page_grid_window (const BfPageGrid *grid, guint column, guint row)
{
  double overlap = grid->format->overlap_mm;
  BfBox box;

  box.min.x =
      grid->start.x + bf_page_grid_row_shift_mm (grid, row) + column * (grid->window.x - overlap);
  box.min.y = grid->start.y + (grid->n[1] - 1 - row) * (grid->window.y - overlap);
  box.max = bf_vec2_add (box.min, grid->window);
  return box;
}

/* At the plan's outside the cell is the window itself. */
BfBox
bf_page_grid_cell (const BfPageGrid *grid, guint column, guint row)
{
  double half = grid->format->overlap_mm / 2.0;
  BfBox box = bf_page_grid_window (grid, column, row);

  box.min.x += column > bf_page_grid_row_end (grid, row, 0) ? half : 0.0;
  box.max.x -= column < bf_page_grid_row_end (grid, row, 1) ? half : 0.0;
  box.max.y -= row > 0 ? half : 0.0;
  box.min.y += row + 1 < grid->n[1] ? half : 0.0;
  return box;
}

guint
bf_page_grid_row_at (const BfPageGrid *grid, double y)
{
  double overlap = grid->format->overlap_mm, step = grid->window.y - overlap;
  double up = floor ((y - grid->start.y - overlap / 2.0) / step);

  return grid->n[1] - 1 - (guint)CLAMP (up, 0.0, grid->n[1] - 1.0);
}

/* The column whose own paper that place of a row lies on. */
static guint
column_at (const BfPageGrid *grid, guint row, double x)
{
  double half = grid->format->overlap_mm / 2.0,
         start = grid->start.x + bf_page_grid_row_shift_mm (grid, row);
  double column = floor ((x - start - half) / bf_page_grid_step_mm (grid));

  return (guint)CLAMP (column, bf_page_grid_row_end (grid, row, 0),
                       bf_page_grid_row_end (grid, row, 1));
}

BfBox
bf_page_grid_band (const BfPageGrid *grid, guint row)
{
  BfBox band = bf_page_grid_cell (grid, 0, row);

  /* The uppermost and the lowest row's paper takes what pokes out by rounding. */
  band.min = bf_vec2 (-FAR_MM, row + 1 < grid->n[1] ? band.min.y : -FAR_MM);
  band.max = bf_vec2 (FAR_MM, row > 0 ? band.max.y : FAR_MM);
  return band;
}

static void
mark_columns (const BfPageGrid *grid, guint row, BfVec2 a, BfVec2 b, guint8 *columns)
{
  guint last = column_at (grid, row, MAX (a.x, b.x));

  for (guint i = column_at (grid, row, MIN (a.x, b.x)); i <= last; i++)
    columns[i] = TRUE;
}

void
bf_page_grid_mark (const BfPageGrid *grid, guint row, const BfInkLine *line, guint8 *columns)
{
  BfBox band = bf_page_grid_band (grid, row);
  BfVec2 a = line->a, b = line->b;

  if (bf_box_clip_line (&band, &a, &b))
    mark_columns (grid, row, a, b, columns);
}

guint8 *
bf_page_grid_ink (const BfPageGrid *grid, guint *n_marked)
{
  gsize n = (gsize)grid->n[0] * grid->n[1];
  guint8 *has_ink = g_new0 (guint8, n);

  for (guint i = 0; i < grid->ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (grid->ink, BfInkLine, i);
      guint first = bf_page_grid_row_at (grid, MAX (line->a.y, line->b.y));
      guint last = bf_page_grid_row_at (grid, MIN (line->a.y, line->b.y));

      if (first == last)
        mark_columns (grid, first, line->a, line->b, has_ink + (gsize)first * grid->n[0]);
      for (guint row = first; first < last && row <= last; row++)
        bf_page_grid_mark (grid, row, line, has_ink + (gsize)row * grid->n[0]);
    }
  *n_marked = 0;
  for (gsize i = 0; i < n; i++)
    *n_marked += has_ink[i];
  return has_ink;
}
