/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* "Round marks": sizes that do not matter to a fraction are nudged so that what is marked out lands
 * on whole marks of the rule, and every distance can be set without guessing between marks.
 *
 * A size is named "base:0" (the length of that base edge), by a flange's id (its length), or
 * "opening:0" (where that opening stands). */

typedef struct
{
  char *what;                 /* "base:0", "front"; of an opening "opening:0:x" or ":y" */
  double before_mm, after_mm; /* by no more than a mark of the rule apart */
} BfRoundChange;

/* The part with its free sizes nudged, each by no more than step_mm, so far as that brings marks
 * nearer to whole steps; what cannot be mended so stays. pinned: names of sizes that matter and
 * never move, ended by NULL; or NULL for none. changes: (out) (transfer full) (element-type
 * BfRoundChange), each size once; empty where nothing helped. Returns: (transfer full). */
BfPart *bf_round_marks (const BfPart *part,
                        double step_mm,
                        const char *const *pinned,
                        GArray **changes) G_GNUC_WARN_UNUSED_RESULT;

/* How far all marks of a fold are off whole steps, together, in mm: the distances from the left and
 * the bottom edge of what is struck, joined and punched. */
double bf_marks_off_mm (BfFold *fold, double step_mm);
