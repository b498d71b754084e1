/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* How a drawing at full size is spread over pages of paper: arithmetic only, nothing is drawn.
 *
 * A plan looks at the drawing as it lies on the paper: turned counter-clockwise by turn_deg about
 * its origin, x to the right and y up. Papers are always held upright; it is the drawing that is
 * turned. Each page shows its window. Where pages join, the windows of neighbours overlap, and the
 * line along the overlap's middle is where one ends and the other begins: between those lines lie
 * the cells, which share the drawing out without gap or overlap. */

typedef struct
{
  double width_mm, height_mm; /* the paper, held upright */
  double margin_mm;           /* what a printer can't reach, on all sides */
  double foot_mm;             /* kept for words at the page's foot, above the margin */
  double overlap_mm;          /* what neighbours show of each other */
  double side_mm;             /* kept at the right, within the margin */
} BfPageFormat;

/* A straight line of the drawing, in its own coordinates. */
typedef struct
{
  BfVec2 a, b;
} BfInkLine;

typedef enum
{
  BF_SIDE_LEFT,
  BF_SIDE_RIGHT,
  BF_SIDE_ABOVE,
  BF_SIDE_BELOW,
  BF_SIDE_ABOVE_RIGHT, /* the second one above, where that row is shifted */
  BF_SIDE_BELOW_RIGHT,
  BF_SIDE_LEFT_LOWER, /* the second one beside, where that column is shifted */
  BF_SIDE_RIGHT_LOWER,
  BF_N_SIDES,
} BfPageSide;

typedef struct
{
  guint column, row;         /* from the left, from the top; 0 is the first */
  BfBox window, cell;        /* on the turned drawing */
  int neighbour[BF_N_SIDES]; /* index of the page there, or −1 */
  gboolean is_apart;         /* no row of neighbours leads from the first page to this one */
} BfPlanPage;

typedef struct
{
  BfPageFormat format;
  guint turn_deg; /* 0 or 90 */
  guint n_columns, n_rows;
  GArray *pages; /* BfPlanPage, row by row; only those that hold ink */
} BfTemplatePlan;

/* Rows, or columns, of pages may be shifted against each other, like courses of bricks, where that
 * saves a page or keeps a hole off a join.
 *
 * The plan with the fewest pages; where several have as few, the one with the fewest of marks on or
 * close beside a join, then the one that is not turned and has the drawing in the middle.
 * ink: BfInkLine, at least one. marks: BfVec2, the middles of holes, or NULL.
 * Returns: (transfer full). */
BfTemplatePlan *bf_template_plan_new (const GArray *ink,
                                      const GArray *marks,
                                      const BfPageFormat *format) G_GNUC_WARN_UNUSED_RESULT;
void bf_template_plan_free (BfTemplatePlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfTemplatePlan, bf_template_plan_free)

static inline const BfPlanPage *
bf_template_plan_page (const BfTemplatePlan *plan, guint i)
{
  return &g_array_index (plan->pages, BfPlanPage, i);
}

/* What a drawing of that size takes on paper, with the room round it. */
BfVec2 bf_template_plan_size (BfVec2 size);

/* "A1", "B1", … "AA12": column letters, row numbers. Returns: (transfer full). */
char *bf_plan_page_label (const BfPlanPage *page) G_GNUC_WARN_UNUSED_RESULT;

/* A point of the turned drawing in the drawing's own coordinates, and the other way. */
BfVec2 bf_template_plan_unturn (const BfTemplatePlan *plan, BfVec2 p);
BfVec2 bf_template_plan_turn (const BfTemplatePlan *plan, BfVec2 p);

/* The point of the turned drawing that lies at the page's lower left corner. */
BfVec2 bf_template_plan_corner (const BfTemplatePlan *plan, const BfPlanPage *page);
