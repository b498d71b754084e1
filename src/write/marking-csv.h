/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/work.h"

/* Marking-out as a table (RFC 4180), a row for each line, point or hole. Columns: step, do, what,
 * from (bottom, left or nothing), distance, begin, end, x, y, size. Lengths are as marked, decimal,
 * in the part's units; x is from the left edge and y from the bottom edge. Where hands cut, the
 * straight cuts follow in their order, the last column of each saying where its guide lies. Rows
 * of step 0 come first and tell of what the table is: part, set-up, units, date, marks of the rule,
 * and the biggest rounding error. What is to be done is in the same words in every language.
 * Returns: (transfer full). */
char *bf_marking_csv (const BfWork *work) G_GNUC_WARN_UNUSED_RESULT;
