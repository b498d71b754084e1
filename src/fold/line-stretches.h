/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"
#include "fold/slot-plan.h"

/* What is whole of a straight line in the blank. */

typedef struct
{
  BfVec2 from, to;
} BfLine;

/* The stretches of the line that lie clear of every ring, by at least clear_mm across the line
 * (along it they end where the ring does): at 0, the metal that the line crosses. A ring that comes
 * near twice takes what lies between with it.
 * rings: (element-type BfRing). Returns: (transfer full) (element-type BfRun): in order. */
GArray *bf_line_stretches (const BfLine *line,
                           const GPtrArray *rings,
                           double clear_mm) G_GNUC_WARN_UNUSED_RESULT;
