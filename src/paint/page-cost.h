/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/page-grid.h"

/* What a way to lay a drawing on pages costs: pages first, then marks on joins, then how much runs
 * along joins. Of use to template-plan.c alone. */

typedef struct
{
  guint n_pages, n_marks;
  double beside_mm;
} BfGridCost;

/* More than any. */
#define BF_GRID_COST_MOST ((BfGridCost){ G_MAXUINT, G_MAXUINT, HUGE_VAL })

/* Of one row: its pages, and what lies on or beside the joins in it. */
BfGridCost bf_page_grid_row_cost (const BfPageGrid *grid, guint row);

/* Of all of it, joins between rows too. */
BfGridCost bf_page_grid_cost (const BfPageGrid *grid);

BfGridCost bf_grid_cost_add (BfGridCost a, BfGridCost b);
gboolean bf_grid_is_cheaper (BfGridCost a, BfGridCost b);
