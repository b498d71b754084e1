/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "paint/palette.h"

/* The lines beside a bend line that say how the bend is made: the two edges of a score, and the
 * line that the bar's front edge sits on, with a tick at either end that points to what is clamped.
 */
typedef struct
{
  BfPurpose purpose; /* BF_PURPOSE_SCORE or BF_PURPOSE_BAR */
  gboolean tick;     /* a tick at a line's end, which has no gaps */
  BfVec2 a, b;       /* in the blank */
} BfBendMark;

/* Appends them (BfBendMark). unit: as BfBlankStyle has it. Where the bar's line lies so near to the
 * bend line that the two would be one on paper, it is drawn at its ends alone. */
void bf_bend_marks (const BfFold *fold, const BfBendResult *bend, double unit, GArray *lines);
