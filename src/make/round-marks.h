/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/edit.h"
#include "fold/fold.h"

/* "Round marks": sizes that do not matter to a fraction are nudged so that what is marked out lands
 * on whole marks of the rule, and every distance can be set without guessing between marks. What is
 * pinned in the part (bf_part_is_pinned()) never moves. */

typedef struct
{
  BfPinKind kind;
  guint at;                   /* as for bf_part_is_pinned() */
  gboolean across;            /* of an opening: its y, not its x */
  double before_mm, after_mm; /* by no more than a mark of the rule apart */
} BfRoundSize;

/* The part with its free sizes nudged, each by no more than step_mm, so far as that brings marks
 * nearer to whole steps; what cannot be mended so stays. sizes: (out) (transfer full) (element-type
 * BfRoundSize), all that there are, changed or not. Returns: (transfer full). */
BfPart *
bf_round_marks (const BfPart *part, double step_mm, GArray **sizes) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE where it is another size than before. */
gboolean bf_round_size_moved (const BfRoundSize *size);

/* How far all marks of a fold are off whole steps, together, in mm: the distances from the left and
 * the bottom edge of what is struck, joined and punched. */
double bf_marks_off_mm (BfFold *fold, double step_mm);
