/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/pattern.h"

/* What is cut, as a pattern file is to have it: contours as drawn or moved by half the kerf, and
 * with notches where bend lines end. */

typedef struct
{
  BfPurpose purpose; /* slot, cut-inside or cut-outside; a bend's for a line at its end */
  BfRing *ring;      /* NULL for one straight line: a slot that is as wide as the kerf, or the end
                      * of a bend line where there is no room for a notch */
  BfVec2 line[2];
} BfPatternCut;

typedef struct
{
  const BfFold *fold;
  GArray *cuts;      /* BfPatternCut */
  GArray *too_small; /* BfVec2: the middles of holes that the tool is too wide for */
  double kerf_mm;    /* 0 where edges were not moved */
} BfPatternCuts;

/* The fold must outlive it. Returns: (transfer full). */
BfPatternCuts *bf_pattern_cuts_new (const BfFold *fold,
                                    const BfPatternOptions *options) G_GNUC_WARN_UNUSED_RESULT;
void bf_pattern_cuts_free (BfPatternCuts *cuts);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfPatternCuts, bf_pattern_cuts_free)

/* A sentence or two: how far edges were moved, and how many holes are too small for it.
 * Returns: (transfer full). */
char *bf_pattern_cuts_describe (const BfPatternCuts *cuts) G_GNUC_WARN_UNUSED_RESULT;
