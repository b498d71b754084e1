/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The sizes that metal is sold in: whole, and cut down for small work (common practice). */

/* The smallest common size that a blank of that width and height fits on, either way round: "500 ×
 * 1000 mm", "12 × 24 in". NULL where none is large enough. Returns: (transfer full). */
char *bf_stock_name (double width_mm, double height_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* What to buy for so many blanks: pieces of one size, and how the blanks lie on each. */
typedef struct
{
  char *name;     /* of the size; NULL where none is large enough for one blank */
  guint n_pieces; /* how many of it */
  guint along_longer, along_shorter; /* how many blanks a piece holds along its two sides */
} BfStockPlan;

/* The size of which so many blanks take the least area, all lying the same way in rows, between_mm
 * of metal from one to the next; the larger piece where two take as much. plan: (out). */
void bf_stock_plan (
    BfVec2 blank_mm, guint quantity, double between_mm, BfUnits units, BfStockPlan *plan);
void bf_stock_plan_clear (BfStockPlan *plan);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfStockPlan, bf_stock_plan_clear)

/* The largest common size, by name and by its sides: (out). Returns: (transfer full). */
char *
bf_stock_largest (BfUnits units, double *shorter_mm, double *longer_mm) G_GNUC_WARN_UNUSED_RESULT;
