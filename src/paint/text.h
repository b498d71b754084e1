/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "core/vec.h"

/* Words on paper, sized by the height of their capitals: that is what makes them legible, and
 * fonts differ in it. All measures are in cr's units, y down. */

typedef struct _BfText BfText;

/* Lays words out in one line. Needs no display. Returns: (transfer full). */
BfText *bf_text_new (const char *words, double cap_height, gboolean bold) G_GNUC_WARN_UNUSED_RESULT;
void bf_text_free (BfText *text);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfText, bf_text_free)

/* Breaks the words into lines no wider than width; what is more than max_lines is cut short with
 * an ellipsis. */
void bf_text_wrap (BfText *text, double width, int max_lines);

double bf_text_width (const BfText *text);

/* From one baseline to the next, and how many lines there are. */
double bf_text_line_height (const BfText *text);
int bf_text_n_lines (const BfText *text);

/* Draws with the first line's baseline beginning at (x, y), in cr's present colour. */
void bf_text_draw (const BfText *text, cairo_t *cr, double x, double y);

/* Lays out and draws one line of words with its baseline at that point. align: 0 begins there,
 * 0.5 is centred on it, 1 ends there. */
void bf_text_show (cairo_t *cr, const char *words, double cap_height, double align, BfVec2 at);
