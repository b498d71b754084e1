/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What is said on paper about bends that are slotted or scored: how many slots, how long on either
 * face, how wide a groove on which face, and what metal is left. Bends that are alike share a row,
 * short enough for one line of a page: "front and 3 more: 3 slots, 45 mm where you cut, 38.2 mm
 * behind; a quarter of the metal left." Returns: (transfer full) (element-type utf8): frees its
 * rows. */
GPtrArray *bf_bend_notes (const BfFold *fold, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* What making the bends takes, for the person who is still choosing: the part in one row, then a
 * row for bends that are alike: "front and 3 more: 3 slots, 45 mm where you cut, 38.2 mm behind,
 * bridges of 12 mm; a quarter of the metal left; push easy, 7 kg at 45 mm." Bends in a brake ask
 * for no push and have no row. Returns: as above. */
GPtrArray *bf_bend_plan (const BfFold *fold, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The same as one text, a line a row, as many as have room beside other things: those left over are
 * counted. Returns: (transfer full), empty where there is nothing to say. */
char *bf_bend_plan_text (const BfFold *fold, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* What is said of a score on the blank itself: "score this face 2.3 mm wide, leave 0.6 mm".
 * Returns: (transfer full), NULL where there is none. */
char *bf_score_words (const BfBendResult *bend, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
