/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

/* Two bars to check a printer by, 100 mm and 4 in, one above the other with what they measure
 * beside them: 127 mm wide and BF_CHECK_BARS_MM high. The upper one begins at (0, y); cap: height
 * of the words' capitals. cr's units are millimetres, y down. */
void bf_check_bars_draw (cairo_t *cr, double y, double cap);

#define BF_CHECK_BARS_MM 6.3

/* The one of 100 mm alone, its words that far beyond its end. Half a tick reaches off to each side.
 */
void bf_check_bar_draw (cairo_t *cr, double y, double cap, double gap_mm);

#define BF_CHECK_BAR_TICK_MM 1.3
