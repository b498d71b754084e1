/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/card-rows.h"

/* The rows of a card of the cuts alone: a large picture with the order on it, how it is done, and a
 * line for each straight cut. Drawn by bf_card_row_draw(). */

/* Of a card of that width, the picture no higher than picture_mm. Returns: (transfer full)
 * (element-type BfCardRow). */
GArray *
bf_cut_rows (const BfWork *work, double width_mm, double picture_mm) G_GNUC_WARN_UNUSED_RESULT;

/* What card-rows.c leaves to here: BF_CARD_CUT_PICTURE, BF_CARD_CUT_HEAD and BF_CARD_CUT, from
 * (0, 0) down. */
void bf_cut_row_draw (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr);
