/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-plan.h"

#include "core/tolerance.h"
#include "paint/label-field.h"

/* Room round the drawing for half a line's width and the printer's own error. */
#define PAD_MM 0.5

/* One way to lay the drawing on a grid of pages. */
typedef struct
{
  const GArray *ink;   /* BfInkLine, turned */
  const GArray *marks; /* BfVec2, turned */
  const BfPageFormat *format;
  BfVec2 window; /* a window's size */
  BfVec2 start;  /* lower left corner of the grid, on the turned drawing */
  guint n[2];    /* columns, rows */
} Grid;

/* Where the slack of the last page goes: a share of it lies before the drawing. The middle is
 * tried first and wins where others are no better; then shares farther and farther from it. */
#define N_STARTS 21

/* A line of the drawing that runs so close beside a join is awkward to cut out and to check. */
#define BESIDE_JOIN_MM 4.0

/* A hole's middle closer to a join than this is hard to punch: paper is cut and glued there. */
#define MARK_OFF_JOIN_MM 3.0

/* What a plan costs: pages first, then marks on joins, then how much runs along joins. */
typedef struct
{
  guint n_pages, n_marks;
  double beside_mm;
} Cost;

static BfVec2
turn (BfVec2 p, guint turn_deg)
{
  return turn_deg == 90 ? bf_vec2 (-p.y, p.x) : p;
}

static GArray *
turned_ink (const GArray *ink, guint turn_deg)
{
  GArray *turned = g_array_sized_new (FALSE, FALSE, sizeof (BfInkLine), ink->len);

  for (guint i = 0; i < ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (ink, BfInkLine, i);
      BfInkLine moved = { turn (line->a, turn_deg), turn (line->b, turn_deg) };
      g_array_append_val (turned, moved);
    }
  return turned;
}

static GArray *
turned_marks (const GArray *marks, guint turn_deg)
{
  GArray *turned = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  for (guint i = 0; marks != NULL && i < marks->len; i++)
    {
      BfVec2 moved = turn (g_array_index (marks, BfVec2, i), turn_deg);
      g_array_append_val (turned, moved);
    }
  return turned;
}

static BfBox
ink_box (const GArray *ink)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < ink->len; i++)
    {
      bf_box_extend (&box, g_array_index (ink, BfInkLine, i).a);
      bf_box_extend (&box, g_array_index (ink, BfInkLine, i).b);
    }
  box.min = bf_vec2_sub (box.min, bf_vec2 (PAD_MM, PAD_MM));
  box.max = bf_vec2_add (box.max, bf_vec2 (PAD_MM, PAD_MM));
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

static void
grid_init (Grid *grid, const double shares[2])
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
  grid->start = bf_vec2 (box.min.x - slack.x * shares[0], box.min.y - slack.y * shares[1]);
}

static BfBox
grid_window (const Grid *grid, guint column, guint row)
{
  double overlap = grid->format->overlap_mm;
  BfBox box;

  box.min.x = grid->start.x + column * (grid->window.x - overlap);
  box.min.y = grid->start.y + (grid->n[1] - 1 - row) * (grid->window.y - overlap);
  box.max = bf_vec2_add (box.min, grid->window);
  return box;
}

/* The window up to the middle of its overlaps; at the plan's outside the window itself. */
static BfBox
grid_cell (const Grid *grid, guint column, guint row)
{
  double half = grid->format->overlap_mm / 2.0;
  BfBox box = grid_window (grid, column, row);

  box.min.x += column > 0 ? half : 0.0;
  box.max.x -= column + 1 < grid->n[0] ? half : 0.0;
  box.max.y -= row > 0 ? half : 0.0;
  box.min.y += row + 1 < grid->n[1] ? half : 0.0;
  return box;
}

/* The cells, along one axis, that a stretch from low to high can touch: one more on either side
 * than it needs, as the clip decides. */
static void
cell_range (const Grid *grid, int axis, const double stretch[2], guint range[2])
{
  double start = axis == 0 ? grid->start.x : grid->start.y;
  double step = (axis == 0 ? grid->window.x : grid->window.y) - grid->format->overlap_mm;
  double last = grid->n[axis] - 1;
  double low = floor ((stretch[0] - start) / step) - 1.0;
  double high = floor ((stretch[1] - start) / step) + 1.0;

  range[0] = (guint)CLAMP (low, 0.0, last);
  range[1] = (guint)CLAMP (high, 0.0, last);
}

static void
mark_line (const Grid *grid, const BfInkLine *line, guint8 *has_ink)
{
  guint columns[2], ups[2];

  cell_range (grid, 0, (double[]){ MIN (line->a.x, line->b.x), MAX (line->a.x, line->b.x) },
              columns);
  cell_range (grid, 1, (double[]){ MIN (line->a.y, line->b.y), MAX (line->a.y, line->b.y) }, ups);
  for (guint up = ups[0]; up <= ups[1]; up++)
    for (guint column = columns[0]; column <= columns[1]; column++)
      {
        guint row = grid->n[1] - 1 - up;
        BfBox cell = grid_cell (grid, column, row);
        BfVec2 a = line->a, b = line->b;
        if (bf_box_clip_line (&cell, &a, &b))
          has_ink[row * grid->n[0] + column] = TRUE;
      }
}

/* Which cells hold ink, row by row. n_marked: (out). Returns: (transfer full). */
static guint8 *
mark_cells (const Grid *grid, guint *n_marked)
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

static void
link_pages (BfTemplatePlan *plan, const int *index)
{
  static const int steps[BF_N_SIDES][2] = { { -1, 0 }, { 1, 0 }, { 0, -1 }, { 0, 1 } };
  int n_columns = (int)plan->n_columns, n_rows = (int)plan->n_rows;

  for (guint i = 0; i < plan->pages->len; i++)
    {
      BfPlanPage *page = &g_array_index (plan->pages, BfPlanPage, i);
      for (int side = 0; side < BF_N_SIDES; side++)
        {
          int column = (int)page->column + steps[side][0], row = (int)page->row + steps[side][1];
          gboolean is_in = column >= 0 && column < n_columns && row >= 0 && row < n_rows;
          page->neighbour[side] = is_in ? index[row * n_columns + column] : -1;
        }
    }
}

/* Walks from the first page over neighbours; pages not reached are apart. */
static void
find_apart (BfTemplatePlan *plan)
{
  g_autoptr (GArray) open = g_array_new (FALSE, FALSE, sizeof (int));
  int first = 0;

  for (guint i = 0; i < plan->pages->len; i++)
    g_array_index (plan->pages, BfPlanPage, i).is_apart = TRUE;
  g_array_append_val (open, first);
  while (open->len > 0)
    {
      int i = g_array_index (open, int, open->len - 1);
      BfPlanPage *page = &g_array_index (plan->pages, BfPlanPage, i);
      g_array_set_size (open, open->len - 1);
      if (!page->is_apart)
        continue;
      page->is_apart = FALSE;
      for (int side = 0; side < BF_N_SIDES; side++)
        if (page->neighbour[side] >= 0)
          g_array_append_val (open, page->neighbour[side]);
    }
}

static void
add_pages (BfTemplatePlan *plan, const Grid *grid, const guint8 *has_ink)
{
  gsize n = (gsize)grid->n[0] * grid->n[1];
  g_autofree int *index = g_new (int, n);

  for (gsize i = 0; i < n; i++)
    {
      guint column = (guint)(i % grid->n[0]), row = (guint)(i / grid->n[0]);
      BfPlanPage page = { .column = column,
                          .row = row,
                          .window = grid_window (grid, column, row),
                          .cell = grid_cell (grid, column, row) };
      index[i] = has_ink[i] ? (int)plan->pages->len : -1;
      if (has_ink[i])
        g_array_append_val (plan->pages, page);
    }
  link_pages (plan, index);
  find_apart (plan);
}

static BfTemplatePlan *
plan_from_grid (const Grid *grid, guint turn_deg)
{
  BfTemplatePlan *plan = g_new0 (BfTemplatePlan, 1);
  guint n_pages;
  g_autofree guint8 *has_ink = mark_cells (grid, &n_pages);

  plan->format = *grid->format;
  plan->turn_deg = turn_deg;
  plan->n_columns = grid->n[0];
  plan->n_rows = grid->n[1];
  plan->pages = g_array_sized_new (FALSE, TRUE, sizeof (BfPlanPage), n_pages);
  add_pages (plan, grid, has_ink);
  return plan;
}

/* How far a coordinate is from the nearest join along that axis. */
static double
distance_to_join (const Grid *grid, int axis, double at)
{
  double start = axis == 0 ? grid->start.x : grid->start.y;
  double step = (axis == 0 ? grid->window.x : grid->window.y) - grid->format->overlap_mm;
  double first = start + step + grid->format->overlap_mm / 2.0;
  double nearest = CLAMP (round ((at - first) / step), 0.0, grid->n[axis] - 2.0);

  return grid->n[axis] > 1 ? fabs (at - first - nearest * step) : HUGE_VAL;
}

static double
length_beside_joins (const Grid *grid)
{
  double length = 0.0;

  for (guint i = 0; i < grid->ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (grid->ink, BfInkLine, i);
      BfVec2 step = bf_vec2_sub (line->b, line->a);
      gboolean beside_x = fabs (step.x) < BF_TOLERANCE_SIZE_MM &&
                          distance_to_join (grid, 0, line->a.x) < BESIDE_JOIN_MM;
      gboolean beside_y = fabs (step.y) < BF_TOLERANCE_SIZE_MM &&
                          distance_to_join (grid, 1, line->a.y) < BESIDE_JOIN_MM;
      if (beside_x || beside_y)
        length += bf_vec2_length (step);
    }
  return length;
}

static guint
count_marks_on_joins (const Grid *grid)
{
  guint n = 0;

  for (guint i = 0; i < grid->marks->len; i++)
    {
      BfVec2 p = g_array_index (grid->marks, BfVec2, i);
      n += distance_to_join (grid, 0, p.x) < MARK_OFF_JOIN_MM ||
                   distance_to_join (grid, 1, p.y) < MARK_OFF_JOIN_MM
               ? 1
               : 0;
    }
  return n;
}

static Cost
grid_cost (const Grid *grid)
{
  Cost cost = { 0, count_marks_on_joins (grid), length_beside_joins (grid) };

  g_free (mark_cells (grid, &cost.n_pages));
  return cost;
}

static gboolean
is_cheaper (Cost a, Cost b)
{
  if (a.n_pages != b.n_pages)
    return a.n_pages < b.n_pages;
  if (a.n_marks != b.n_marks)
    return a.n_marks < b.n_marks;
  return a.beside_mm < b.beside_mm - BF_TOLERANCE_SIZE_MM;
}

/* 0.5, 0.45, 0.55, 0.4, … 0, 1. */
static double
start_share (guint i)
{
  double away = 0.5 * ((i + 1) / 2) / (N_STARTS / 2);

  return i % 2 == 1 ? 0.5 - away : 0.5 + away;
}

/* The cheapest start for a drawing turned one way. best: (inout) knows ink, marks and format. */
static Cost
best_start (Grid *best)
{
  Cost least = { G_MAXUINT, G_MAXUINT, HUGE_VAL };

  for (guint i = 0; i < N_STARTS * N_STARTS; i++)
    {
      const double shares[2] = { start_share (i % N_STARTS), start_share (i / N_STARTS) };
      Grid grid = *best;
      Cost cost;
      grid_init (&grid, shares);
      cost = grid_cost (&grid);
      if (!is_cheaper (cost, least))
        continue;
      least = cost;
      *best = grid;
    }
  return least;
}

BfTemplatePlan *
bf_template_plan_new (const GArray *ink, const GArray *marks, const BfPageFormat *format)
{
  g_autoptr (GArray) turned = NULL;
  g_autoptr (GArray) marks_upright = turned_marks (marks, 0);
  g_autoptr (GArray) marks_turned = turned_marks (marks, 90);
  Grid upright = { .ink = ink, .marks = marks_upright, .format = format };
  Grid sideways = { .marks = marks_turned, .format = format };
  Cost cost, cost_turned;

  g_return_val_if_fail (ink != NULL && ink->len > 0, NULL);

  sideways.ink = turned = turned_ink (ink, 90);
  cost = best_start (&upright);
  cost_turned = best_start (&sideways);
  cost.beside_mm = cost_turned.beside_mm = 0.0; /* no reason to turn a drawing */
  if (is_cheaper (cost_turned, cost))
    return plan_from_grid (&sideways, 90);
  return plan_from_grid (&upright, 0);
}

void
bf_template_plan_free (BfTemplatePlan *plan)
{
  g_array_unref (plan->pages);
  g_free (plan);
}

BfVec2
bf_template_plan_size (BfVec2 size)
{
  return bf_vec2_add (size, bf_vec2 (2.0 * PAD_MM, 2.0 * PAD_MM));
}

char *
bf_plan_page_label (const BfPlanPage *page)
{
  GString *label = g_string_new (NULL);

  /* There is no letter for nought: Z is followed by AA. */
  for (guint left = page->column + 1; left > 0; left = (left - 1) / 26)
    g_string_prepend_c (label, (char)('A' + (left - 1) % 26));
  g_string_append_printf (label, "%u", page->row + 1);
  return g_string_free (label, FALSE);
}

BfVec2
bf_template_plan_turn (const BfTemplatePlan *plan, BfVec2 p)
{
  return turn (p, plan->turn_deg);
}

BfVec2
bf_template_plan_unturn (const BfTemplatePlan *plan, BfVec2 p)
{
  return plan->turn_deg == 90 ? bf_vec2 (p.y, -p.x) : p;
}

BfVec2
bf_template_plan_corner (const BfTemplatePlan *plan, const BfPlanPage *page)
{
  const BfPageFormat *format = &plan->format;

  return bf_vec2_sub (page->window.min,
                      bf_vec2 (format->margin_mm, format->margin_mm + format->foot_mm));
}
