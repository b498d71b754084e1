/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/page-courses.h"

#include "core/tolerance.h"
#include "paint/label-field.h"
#include "paint/page-links.h"

/* One place where a row may begin, and the cheapest way down to it. */
typedef struct
{
  double shift_mm;
  guint ends[2];
  guint n_columns;
  BfGridCost cost; /* of this row and those above it; BF_GRID_COST_MOST where it meets none */
  guint above;     /* which place of the row above it goes with */
} Place;

typedef struct
{
  BfPageGrid grid;
  Place places[BF_GRID_SHIFTED_ROWS][BF_N_PAGE_STARTS];
} Search;

double
bf_page_start_share (guint i)
{
  double away = 0.5 * ((i + 1) / 2) / (BF_N_PAGE_STARTS / 2);

  return i % 2 == 1 ? 0.5 - away : 0.5 + away;
}

/* Rows that are shifted meet in long enough stretches, or their joins are upright lines right
 * through. */
static gboolean
meet_well (double a_mm, double b_mm, double step_mm)
{
  double apart = fabs (a_mm - b_mm);

  return apart < BF_TOLERANCE_SIZE_MM ||
         (apart >= BF_LEAST_MEETING_MM && step_mm - apart >= BF_LEAST_MEETING_MM);
}

/* What of the drawing lies in a row, so that its places are judged by that alone. box: (out) round
 * it. */
static GArray *
row_ink (const BfPageGrid *grid, guint row, BfBox *box)
{
  GArray *ink = g_array_new (FALSE, FALSE, sizeof (BfInkLine));
  BfBox band = bf_page_grid_band (grid, row);

  *box = bf_box_empty ();
  for (guint i = 0; i < grid->ink->len; i++)
    {
      BfInkLine line = g_array_index (grid->ink, BfInkLine, i);

      if (!bf_box_clip_line (&band, &line.a, &line.b))
        continue;
      bf_box_extend (box, line.a);
      bf_box_extend (box, line.b);
      g_array_append_val (ink, line);
    }
  return ink;
}

/* The cheapest place of the row above that this one goes with. */
static void
join_above (const Search *search, guint row, Place *place)
{
  double step = bf_page_grid_step_mm (&search->grid);
  BfGridCost own = place->cost, least = BF_GRID_COST_MOST;

  for (guint i = 0; row > 0 && i < BF_N_PAGE_STARTS; i++)
    {
      const Place *above = &search->places[row - 1][i];

      if (above->cost.n_pages == G_MAXUINT || !meet_well (place->shift_mm, above->shift_mm, step) ||
          !bf_grid_is_cheaper (above->cost, least))
        continue;
      least = above->cost;
      place->above = i;
    }
  if (row > 0)
    place->cost = least.n_pages < G_MAXUINT ? bf_grid_cost_add (own, least) : least;
}

/* FALSE where a row is empty: then those above and below it don't meet. */
static gboolean
find_places (Search *search, guint row)
{
  BfPageGrid grid = search->grid;
  double step = bf_page_grid_step_mm (&grid), begin, length, slack;
  g_autoptr (GArray) ink = NULL;
  BfBox box;

  grid.ink = ink = row_ink (&search->grid, row, &box);
  if (ink->len == 0)
    return FALSE;
  begin = box.min.x - BF_GRID_PAD_MM;
  length = box.max.x - box.min.x + 2.0 * BF_GRID_PAD_MM;
  bf_page_grid_place_row (&grid, row, begin, length);
  slack = (grid.ends[row][1] - grid.ends[row][0]) * step + grid.window.x - length;
  for (guint i = 0; i < BF_N_PAGE_STARTS; i++)
    {
      Place *place = &search->places[row][i];

      bf_page_grid_place_row (&grid, row, begin - slack * bf_page_start_share (i), length);
      *place = (Place){ .shift_mm = grid.shifts_mm[row],
                        .ends = { grid.ends[row][0], grid.ends[row][1] },
                        .n_columns = grid.n[0],
                        .cost = bf_page_grid_row_cost (&grid, row) };
      join_above (search, row, place);
    }
  return TRUE;
}

/* Takes each row's place on the cheapest way from the last row up. FALSE where there is none. */
static gboolean
take_places (Search *search)
{
  BfPageGrid *grid = &search->grid;
  BfGridCost least = BF_GRID_COST_MOST;
  guint at = 0;

  for (guint i = 0; i < BF_N_PAGE_STARTS; i++)
    if (bf_grid_is_cheaper (search->places[grid->n[1] - 1][i].cost, least))
      {
        least = search->places[grid->n[1] - 1][i].cost;
        at = i;
      }
  for (guint row = grid->n[1]; row-- > 0;)
    {
      const Place *place = &search->places[row][at];

      grid->shifts_mm[row] = place->shift_mm;
      grid->ends[row][0] = place->ends[0];
      grid->ends[row][1] = place->ends[1];
      grid->n[0] = MAX (grid->n[0], place->n_columns);
      at = place->above;
    }
  return least.n_pages < G_MAXUINT;
}

static gboolean
shift_rows (Search *search)
{
  for (guint row = 0; row < search->grid.n[1]; row++)
    if (!find_places (search, row))
      return FALSE;
  return take_places (search);
}

gboolean
bf_page_courses_find (BfPageGrid *best, BfGridCost *least)
{
  g_autofree Search *search = g_new0 (Search, 1);

  *least = BF_GRID_COST_MOST;
  for (guint i = 0; i < BF_N_PAGE_STARTS; i++)
    {
      const double shares[2] = { 0.0, bf_page_start_share (i) };
      BfPageGrid *grid = &search->grid;
      BfGridCost cost;

      *grid = *best;
      bf_page_grid_init (grid, shares);
      if (grid->n[1] < 2 || grid->n[1] > BF_GRID_SHIFTED_ROWS)
        return FALSE;
      grid->start.x -= 2.0 * bf_page_grid_step_mm (grid);
      if (!shift_rows (search))
        continue;
      bf_page_grid_trim (grid);
      cost = bf_page_grid_cost (grid);
      if (!bf_grid_is_cheaper (cost, *least))
        continue;
      *least = cost;
      *best = *grid;
    }
  return least->n_pages < G_MAXUINT;
}
