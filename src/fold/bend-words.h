/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What making a bend takes and what it has lost, in words. */

/* A push as a weight that a person can imagine: "7 kg", or in inches "15 lb". Returns: (transfer
 * full). */
char *bf_push_weight (double force_n, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The push of a bend in words first, then as a weight: "easy, 7 kg". "–" at a brake, and for a
 * metal that is not known. Returns: (transfer full). */
char *bf_push_words (const BfBendResult *bend, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The bend that takes most of what the person can push; NULL where none is pushed by hand. */
const BfBendResult *bf_hardest_bend (const BfFold *fold);

/* The shortest bridge between two slots, on the near face; INFINITY where there are not two. */
double bf_bend_bridge_mm (const BfBendResult *bend);

/* What a bend has lost: a slotted or scored joint is said to be weaker wherever it is shown. */

/* Share of the metal's section that is left where the bend is: of its length where slots are cut,
 * of its thickness where it is scored. 1 where neither is. Openings on the line count as lost. */
double bf_bend_metal_left (const BfFold *fold, const BfBendResult *bend);

/* "a quarter of the metal left", to the nearest plain fraction. Static, translated. */
const char *bf_metal_left_words (double share);

/* The same of a bend; NULL where neither slots nor a score weaken it. Static, translated. */
const char *bf_bend_lost_words (const BfFold *fold, const BfBendResult *bend);
