/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The sizes that metal is sold in: whole, and cut down for small work (common practice). */

/* The smallest common size that a blank of that width and height fits on, either way round: "500 ×
 * 1000 mm", "12 × 24 in". NULL where none is large enough. Returns: (transfer full). */
char *bf_stock_name (double width_mm, double height_mm, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The largest common size, by name and by its sides: (out). Returns: (transfer full). */
char *
bf_stock_largest (BfUnits units, double *shorter_mm, double *longer_mm) G_GNUC_WARN_UNUSED_RESULT;
