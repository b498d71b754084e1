/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* In what order to join the seams of a part, and how a thin one is tacked. */

/* From tack to tack, and the longest run that is welded at a time (common practice for 1 to 2 mm:
 * more heat at once pulls the part out of square). */
#define BF_TACK_PITCH_MM 40.0
#define BF_RUN_MM 25.0

/* How many tacks hold a seam of that length: both ends, and between them so that none are further
 * apart than the pitch. One where the seam is shorter than a tack is wide. */
guint bf_join_n_tacks (double length_mm);

/* Indices of the fold's seams (guint, appended) in the order to join them: each time the one that
 * is furthest from those before it, so that heat and pull spread. Left out is what is not joined:
 * where flanges meet at a point or not at all, and, of a riveted or screwed part, where no tab is.
 */
void bf_join_order (const BfFold *fold, GArray *seams);
