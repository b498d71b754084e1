/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/work.h"

/* The place of each cut in its order, as a number on the side of its waste, over a picture that
 * bf_figure_blank() drew into a box of that size. Where cuts crowd, numbers make room for each
 * other; one that finds none is left out, and so are those of small openings. Nothing for a
 * machine, which has an order of its own. */
void bf_cut_numbers_draw (const BfWork *work, BfVec2 size_mm, cairo_t *cr);

/* How far numbers may reach beyond the blank. */
#define BF_CUT_NUMBERS_MM 4.3
