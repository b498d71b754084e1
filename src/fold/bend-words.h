/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What a bend has lost, in words: a slotted or scored joint is said to be weaker wherever it is
 * shown. */

/* Share of the metal's section that is left where the bend is: of its length where slots are cut,
 * of its thickness where it is scored. 1 where neither is. Openings on the line count as lost. */
double bf_bend_metal_left (const BfFold *fold, const BfBendResult *bend);

/* "a quarter of the metal left", to the nearest plain fraction. Static, translated. */
const char *bf_metal_left_words (double share);

/* The same of a bend; NULL where neither slots nor a score weaken it. Static, translated. */
const char *bf_bend_lost_words (const BfFold *fold, const BfBendResult *bend);
