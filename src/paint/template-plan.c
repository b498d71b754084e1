/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-plan.h"

#include "paint/page-courses.h"
#include "paint/page-links.h"

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
transposed_box (const BfBox *box)
{
  return (BfBox){ bf_vec2 (box->min.y, box->min.x), bf_vec2 (box->max.y, box->max.x) };
}

/* A page of the drawing that was looked at with x and y exchanged. */
static void
transpose_page (BfPlanPage *page, const BfPageGrid *grid)
{
  guint column = page->column;

  page->column = grid->n[1] - 1 - page->row;
  page->row = grid->n[0] - 1 - column;
  page->window = transposed_box (&page->window);
  page->cell = transposed_box (&page->cell);
}

/* Row by row. */
static int
compare_pages (gconstpointer x, gconstpointer y)
{
  const BfPlanPage *a = x, *b = y;

  return a->row != b->row ? (int)a->row - (int)b->row : (int)a->column - (int)b->column;
}

static void
add_pages (BfTemplatePlan *plan, const BfPageGrid *grid, gboolean transposed)
{
  gsize n = (gsize)grid->n[0] * grid->n[1];
  guint n_pages;
  g_autofree guint8 *has_ink = bf_page_grid_ink (grid, &n_pages);

  for (gsize i = 0; i < n; i++)
    {
      guint column = (guint)(i % grid->n[0]), row = (guint)(i / grid->n[0]);
      BfPlanPage page = { .column = column,
                          .row = row,
                          .window = bf_page_grid_window (grid, column, row),
                          .cell = bf_page_grid_cell (grid, column, row) };

      if (!has_ink[i])
        continue;
      if (transposed)
        transpose_page (&page, grid);
      g_array_append_val (plan->pages, page);
    }
  g_array_sort (plan->pages, compare_pages);
}

/* transposed: the grid is of the drawing with x and y exchanged, and of a format of that kind. */
static BfTemplatePlan *
plan_from_grid (const BfPageGrid *grid,
                const BfPageFormat *format,
                guint turn_deg,
                gboolean transposed)
{
  BfTemplatePlan *plan = g_new0 (BfTemplatePlan, 1);

  plan->format = *format;
  plan->turn_deg = turn_deg;
  plan->n_columns = grid->n[transposed ? 1 : 0];
  plan->n_rows = grid->n[transposed ? 0 : 1];
  plan->pages = g_array_new (FALSE, TRUE, sizeof (BfPlanPage));
  add_pages (plan, grid, transposed);
  bf_plan_link_pages (plan);
  return plan;
}

/* The cheapest start for a drawing turned one way. best: (inout) knows ink, marks and format. */
static BfGridCost
best_start (BfPageGrid *best)
{
  BfGridCost least = BF_GRID_COST_MOST;

  for (guint i = 0; i < BF_N_PAGE_STARTS * BF_N_PAGE_STARTS; i++)
    {
      const double shares[2] = { bf_page_start_share (i % BF_N_PAGE_STARTS),
                                 bf_page_start_share (i / BF_N_PAGE_STARTS) };
      BfPageGrid grid = *best;
      BfGridCost cost;

      bf_page_grid_init (&grid, shares);
      cost = bf_page_grid_cost (&grid);
      if (!bf_grid_is_cheaper (cost, least))
        continue;
      least = cost;
      *best = grid;
    }
  return least;
}

/* ---- rows shifted against each other ------------------------------------------------------- */

static guint
count_apart (const BfTemplatePlan *plan)
{
  guint n = 0;

  for (guint i = 0; i < plan->pages->len; i++)
    n += bf_template_plan_page (plan, i)->is_apart ? 1 : 0;
  return n;
}

static GArray *
transposed_ink (const GArray *ink)
{
  GArray *other = g_array_sized_new (FALSE, FALSE, sizeof (BfInkLine), ink->len);

  for (guint i = 0; i < ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (ink, BfInkLine, i);
      BfInkLine moved = { { line->a.y, line->a.x }, { line->b.y, line->b.x } };

      g_array_append_val (other, moved);
    }
  return other;
}

static GArray *
transposed_marks (const GArray *marks)
{
  GArray *other = g_array_sized_new (FALSE, FALSE, sizeof (BfVec2), marks->len);

  for (guint i = 0; i < marks->len; i++)
    {
      BfVec2 p = g_array_index (marks, BfVec2, i), moved = bf_vec2 (p.y, p.x);

      g_array_append_val (other, moved);
    }
  return other;
}

/* The best plan so far, and what it costs. */
typedef struct
{
  BfTemplatePlan *plan;
  BfGridCost cost;
} Best;

/* Rows, or columns, are shifted where that saves a page, or a hole on a join, and no page loses its
 * neighbours. */
static void
try_courses (Best *best, const BfPageGrid *drawing, guint turn_deg, gboolean transposed)
{
  const BfPageFormat *format = drawing->format;
  BfPageFormat other = { .width_mm = format->height_mm,
                         .height_mm = format->width_mm,
                         .margin_mm = format->margin_mm,
                         .foot_mm = format->side_mm,
                         .side_mm = format->foot_mm,
                         .overlap_mm = format->overlap_mm };
  g_autoptr (GArray) ink = transposed ? transposed_ink (drawing->ink) : NULL;
  g_autoptr (GArray) marks = transposed ? transposed_marks (drawing->marks) : NULL;
  BfPageGrid grid =
      transposed ? (BfPageGrid){ .ink = ink, .marks = marks, .format = &other } : *drawing;
  BfTemplatePlan *courses;
  BfGridCost found;

  if (!bf_page_courses_find (&grid, &found) || found.n_pages > best->cost.n_pages ||
      (found.n_pages == best->cost.n_pages && found.n_marks >= best->cost.n_marks))
    return;
  courses = plan_from_grid (&grid, format, turn_deg, transposed);
  if (count_apart (courses) > count_apart (best->plan))
    {
      bf_template_plan_free (courses);
      return;
    }
  bf_template_plan_free (best->plan);
  *best = (Best){ courses, found };
}

BfTemplatePlan *
bf_template_plan_new (const GArray *ink, const GArray *marks, const BfPageFormat *format)
{
  g_autoptr (GArray) turned = NULL;
  g_autoptr (GArray) marks_upright = turned_marks (marks, 0);
  g_autoptr (GArray) marks_turned = turned_marks (marks, 90);
  BfPageGrid upright = { .ink = ink, .marks = marks_upright, .format = format };
  BfPageGrid sideways = { .marks = marks_turned, .format = format };
  BfGridCost cost, cost_turned;
  Best best;
  gboolean turns;

  g_return_val_if_fail (ink != NULL && ink->len > 0, NULL);

  sideways.ink = turned = turned_ink (ink, 90);
  cost = best_start (&upright);
  cost_turned = best_start (&sideways);
  cost.beside_mm = cost_turned.beside_mm = 0.0; /* no reason to turn a drawing */
  turns = bf_grid_is_cheaper (cost_turned, cost);
  best.plan = turns ? plan_from_grid (&sideways, format, 90, FALSE)
                    : plan_from_grid (&upright, format, 0, FALSE);
  best.cost = turns ? cost_turned : cost;
  for (int transposed = 0; transposed < 2; transposed++)
    {
      try_courses (&best, &upright, 0, transposed != 0);
      try_courses (&best, &sideways, 90, transposed != 0);
    }
  return best.plan;
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
  return bf_vec2_add (size, bf_vec2 (2.0 * BF_GRID_PAD_MM, 2.0 * BF_GRID_PAD_MM));
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
