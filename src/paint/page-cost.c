/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/page-cost.h"

#include "core/tolerance.h"

/* A line of the drawing that runs so close beside a join is awkward to cut out and to check. */
#define BESIDE_JOIN_MM 4.0

/* A hole's middle closer to a join than this is hard to punch: paper is cut and glued there. */
#define MARK_OFF_JOIN_MM 3.0

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
  double start = grid->start.x + bf_page_grid_row_shift_mm (grid, row);
  guint first = bf_page_grid_row_end (grid, row, 0);

  return distance_to_nearest (x, start + (first + 1) * step + half, step,
                              bf_page_grid_row_end (grid, row, 1) - first);
}

/* From the level joins between rows. */
static double
distance_to_rows (const BfPageGrid *grid, double y)
{
  double step = grid->window.y - grid->format->overlap_mm;

  return distance_to_nearest (y, grid->start.y + step + grid->format->overlap_mm / 2.0, step,
                              grid->n[1] - 1);
}

static gboolean
is_level (const BfInkLine *line)
{
  return fabs (line->a.y - line->b.y) < BF_TOLERANCE_SIZE_MM;
}

/* How much of a line runs along an upright join of that row. */
static double
length_in_row (const BfPageGrid *grid, guint row, const BfInkLine *line)
{
  BfBox band;

  if (fabs (line->a.x - line->b.x) >= BF_TOLERANCE_SIZE_MM ||
      distance_in_row (grid, row, line->a.x) >= BESIDE_JOIN_MM)
    return 0.0;
  band = bf_page_grid_band (grid, row);
  return MAX (0.0, MIN (MAX (line->a.y, line->b.y), band.max.y) -
                       MAX (MIN (line->a.y, line->b.y), band.min.y));
}

/* The same of all rows, and along the joins between them. */
static double
length_beside (const BfPageGrid *grid, const BfInkLine *line)
{
  guint last = bf_page_grid_row_at (grid, MIN (line->a.y, line->b.y));
  double sum = 0.0;

  for (guint row = bf_page_grid_row_at (grid, MAX (line->a.y, line->b.y)); row <= last; row++)
    sum += length_in_row (grid, row, line);
  if (is_level (line) && distance_to_rows (grid, line->a.y) < BESIDE_JOIN_MM)
    sum += bf_vec2_distance (line->a, line->b);
  return sum;
}

BfGridCost
bf_page_grid_row_cost (const BfPageGrid *grid, guint row)
{
  g_autofree guint8 *columns = g_new0 (guint8, grid->n[0]);
  BfBox band = bf_page_grid_band (grid, row);
  BfGridCost cost = { 0, 0, 0.0 };

  for (guint i = 0; i < grid->ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (grid->ink, BfInkLine, i);

      bf_page_grid_mark (grid, row, line, columns);
      cost.beside_mm += length_in_row (grid, row, line);
    }
  for (guint i = 0; i < grid->n[0]; i++)
    cost.n_pages += columns[i];
  for (guint i = 0; i < grid->marks->len; i++)
    {
      BfVec2 p = g_array_index (grid->marks, BfVec2, i);

      if (bf_box_contains (&band, p) && distance_in_row (grid, row, p.x) < MARK_OFF_JOIN_MM)
        cost.n_marks++;
    }
  return cost;
}

BfGridCost
bf_page_grid_cost (const BfPageGrid *grid)
{
  BfGridCost cost = { 0, 0, 0.0 };

  g_free (bf_page_grid_ink (grid, &cost.n_pages));
  for (guint i = 0; i < grid->marks->len; i++)
    {
      BfVec2 p = g_array_index (grid->marks, BfVec2, i);

      if (distance_in_row (grid, bf_page_grid_row_at (grid, p.y), p.x) < MARK_OFF_JOIN_MM)
        cost.n_marks++;
      if (distance_to_rows (grid, p.y) < MARK_OFF_JOIN_MM)
        cost.n_marks++;
    }
  for (guint i = 0; i < grid->ink->len; i++)
    cost.beside_mm += length_beside (grid, &g_array_index (grid->ink, BfInkLine, i));
  return cost;
}

BfGridCost
bf_grid_cost_add (BfGridCost a, BfGridCost b)
{
  return (BfGridCost){ a.n_pages + b.n_pages, a.n_marks + b.n_marks, a.beside_mm + b.beside_mm };
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
