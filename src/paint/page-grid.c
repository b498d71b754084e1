/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/page-grid.h"

#include <string.h>

#include "core/tolerance.h"
#include "paint/label-field.h"

/* A line of the drawing that runs so close beside a join is awkward to cut out and to check. */
#define BESIDE_JOIN_MM 4.0

/* Beyond any drawing. */
#define FAR_MM 1e7

/* A hole's middle closer to a join than this is hard to punch: paper is cut and glued there. */
#define MARK_OFF_JOIN_MM 3.0

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

static double
row_shift (const BfPageGrid *grid, guint row)
{
  return row < BF_GRID_SHIFTED_ROWS ? grid->shifts_mm[row] : 0.0;
}

double
bf_page_grid_step_mm (const BfPageGrid *grid)
{
  return grid->window.x - grid->format->overlap_mm;
}

static guint
row_end (const BfPageGrid *grid, guint row, guint which)
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
      first = MIN (first, row_end (grid, row, 0));
      last = MAX (last, row_end (grid, row, 1));
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

  box.min.x = grid->start.x + row_shift (grid, row) + column * (grid->window.x - overlap);
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

  box.min.x += column > row_end (grid, row, 0) ? half : 0.0;
  box.max.x -= column < row_end (grid, row, 1) ? half : 0.0;
  box.max.y -= row > 0 ? half : 0.0;
  box.min.y += row + 1 < grid->n[1] ? half : 0.0;
  return box;
}

/* The cells, along one axis, that a stretch from low to high can touch: more on either side than it
 * needs, as rows may be shifted by up to a page and the clip decides. */
static void
cell_range (const BfPageGrid *grid, int axis, const double stretch[2], guint range[2])
{
  double start = axis == 0 ? grid->start.x : grid->start.y;
  double step = (axis == 0 ? grid->window.x : grid->window.y) - grid->format->overlap_mm;
  double last = grid->n[axis] - 1;
  double low = floor ((stretch[0] - start) / step) - 2.0;
  double high = floor ((stretch[1] - start) / step) + 1.0;

  range[0] = (guint)CLAMP (low, 0.0, last);
  range[1] = (guint)CLAMP (high, 0.0, last);
}

static gboolean
is_in_row (const BfPageGrid *grid, guint column, guint row)
{
  return column >= row_end (grid, row, 0) && column <= row_end (grid, row, 1);
}

static void
mark_line (const BfPageGrid *grid, const BfInkLine *line, guint8 *has_ink)
{
  guint columns[2], ups[2];

  cell_range (grid, 0, (double[]){ MIN (line->a.x, line->b.x), MAX (line->a.x, line->b.x) },
              columns);
  cell_range (grid, 1, (double[]){ MIN (line->a.y, line->b.y), MAX (line->a.y, line->b.y) }, ups);
  for (guint up = ups[0]; up <= ups[1]; up++)
    for (guint column = columns[0]; column <= columns[1]; column++)
      {
        guint row = grid->n[1] - 1 - up;
        BfBox cell = bf_page_grid_cell (grid, column, row);
        BfVec2 a = line->a, b = line->b;
        if (is_in_row (grid, column, row) && bf_box_clip_line (&cell, &a, &b))
          has_ink[row * grid->n[0] + column] = TRUE;
      }
}

guint8 *
bf_page_grid_ink (const BfPageGrid *grid, guint *n_marked)
{
  gsize n = (gsize)grid->n[0] * grid->n[1];
  guint8 *has_ink = g_new0 (guint8, n);

  for (guint i = 0; i < grid->ink->len; i++)
    mark_line (grid, &g_array_index (grid->ink, BfInkLine, i), has_ink);
  *n_marked = 0;
  for (gsize i = 0; i < n; i++)
    *n_marked += has_ink[i];
  return has_ink;
}

/* ---- costs -------------------------------------------------------------------------------- */

/* How far a coordinate is from the nearest of so many joins, the first of them at that place. */
static double
distance_to_nearest (double at, double first, double step, guint n_joins)
{
  double nearest = CLAMP (round ((at - first) / step), 0.0, n_joins - 1.0);

  return n_joins > 0 ? fabs (at - first - nearest * step) : HUGE_VAL;
}

/* From the upright joins of a row. */
static double
distance_in_row (const BfPageGrid *grid, guint row, double x)
{
  double step = bf_page_grid_step_mm (grid), half = grid->format->overlap_mm / 2.0;
  guint first = row_end (grid, row, 0);

  return distance_to_nearest (x, grid->start.x + row_shift (grid, row) + (first + 1) * step + half,
                              step, row_end (grid, row, 1) - first);
}

/* From the level joins between rows. */
static double
distance_to_rows (const BfPageGrid *grid, double y)
{
  double step = grid->window.y - grid->format->overlap_mm;

  return distance_to_nearest (y, grid->start.y + step + grid->format->overlap_mm / 2.0, step,
                              grid->n[1] - 1);
}

/* From where to where a row's own paper reaches. */
static BfBox
row_band (const BfPageGrid *grid, guint row)
{
  BfBox band = bf_page_grid_cell (grid, 0, row);

  band.min.x = -FAR_MM;
  band.max.x = FAR_MM;
  return band;
}

gboolean
bf_page_grid_row_reach (const BfPageGrid *grid, guint row, double reach[2])
{
  BfBox band = row_band (grid, row), ink = bf_box_empty ();

  for (guint i = 0; i < grid->ink->len; i++)
    {
      BfInkLine line = g_array_index (grid->ink, BfInkLine, i);

      if (!bf_box_clip_line (&band, &line.a, &line.b))
        continue;
      bf_box_extend (&ink, line.a);
      bf_box_extend (&ink, line.b);
    }
  reach[0] = ink.min.x - BF_GRID_PAD_MM;
  reach[1] = ink.max.x + BF_GRID_PAD_MM;
  return ink.max.x >= ink.min.x;
}

static double
length_beside (const BfPageGrid *grid, guint row, const BfInkLine *line)
{
  BfBox band = row_band (grid, row);
  double low = MAX (MIN (line->a.y, line->b.y), band.min.y);
  double high = MIN (MAX (line->a.y, line->b.y), band.max.y);
  gboolean upright = fabs (line->a.x - line->b.x) < BF_TOLERANCE_SIZE_MM;

  return upright && high > low && distance_in_row (grid, row, line->a.x) < BESIDE_JOIN_MM
             ? high - low
             : 0.0;
}

static guint
count_row_pages (const BfPageGrid *grid, guint row)
{
  guint n = 0;

  for (guint column = row_end (grid, row, 0); column <= row_end (grid, row, 1); column++)
    {
      BfBox cell = bf_page_grid_cell (grid, column, row);
      gboolean has_ink = FALSE;

      for (guint i = 0; i < grid->ink->len && !has_ink; i++)
        {
          BfInkLine line = g_array_index (grid->ink, BfInkLine, i);

          has_ink = bf_box_clip_line (&cell, &line.a, &line.b);
        }
      n += has_ink ? 1 : 0;
    }
  return n;
}

BfGridCost
bf_page_grid_row_cost (const BfPageGrid *grid, guint row)
{
  BfGridCost cost = { count_row_pages (grid, row), 0, 0.0 };
  BfBox band = row_band (grid, row);

  for (guint i = 0; i < grid->marks->len; i++)
    {
      BfVec2 p = g_array_index (grid->marks, BfVec2, i);

      if (bf_box_contains (&band, p) && distance_in_row (grid, row, p.x) < MARK_OFF_JOIN_MM)
        cost.n_marks++;
    }
  for (guint i = 0; i < grid->ink->len; i++)
    cost.beside_mm += length_beside (grid, row, &g_array_index (grid->ink, BfInkLine, i));
  return cost;
}

BfGridCost
bf_page_grid_cost (const BfPageGrid *grid)
{
  BfGridCost cost = { 0, 0, 0.0 };

  for (guint row = 0; row < grid->n[1]; row++)
    {
      BfGridCost of_row = bf_page_grid_row_cost (grid, row);

      cost.n_pages += of_row.n_pages;
      cost.n_marks += of_row.n_marks;
      cost.beside_mm += of_row.beside_mm;
    }
  for (guint i = 0; i < grid->marks->len; i++)
    if (distance_to_rows (grid, g_array_index (grid->marks, BfVec2, i).y) < MARK_OFF_JOIN_MM)
      cost.n_marks++;
  for (guint i = 0; i < grid->ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (grid->ink, BfInkLine, i);

      if (fabs (line->a.y - line->b.y) < BF_TOLERANCE_SIZE_MM &&
          distance_to_rows (grid, line->a.y) < BESIDE_JOIN_MM)
        cost.beside_mm += bf_vec2_distance (line->a, line->b);
    }
  return cost;
}

gboolean
bf_grid_is_cheaper (BfGridCost a, BfGridCost b)
{
  if (a.n_pages != b.n_pages)
    return a.n_pages < b.n_pages;
  if (a.n_marks != b.n_marks)
    return a.n_marks < b.n_marks;
  return a.beside_mm < b.beside_mm - BF_TOLERANCE_SIZE_MM;
}
