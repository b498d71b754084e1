/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/marking.h"

/* Marking-out as a table (RFC 4180), a row for each line, point or hole. Columns: step, do, what,
 * from (bottom, left or nothing), distance, begin, end, x, y, size. Lengths are as marked, decimal,
 * in mm or in; x is from the left edge and y from the bottom edge. Words are the same in every
 * language. Returns: (transfer full). */
char *bf_marking_csv (const BfMarking *marking, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
