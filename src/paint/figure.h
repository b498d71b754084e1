/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"

/* Small pictures on pages: fitted into a box of that size in mm, its upper left corner at (0, 0).
 */

/* The metal as formed, from in front and above. highlight: the face that is tinted, or −1. */
void bf_figure_formed (
    const BfFold *fold, const BfFormed *formed, int highlight, BfVec2 size_mm, cairo_t *cr);

/* How a blank is fitted into a box with its lengths beside it: its point (x, y) lies at (left +
 * scale · x, bottom − scale · y). scale is 0 where there is no blank. */
typedef struct
{
  double scale, left, bottom;
} BfFigurePlace;

BfFigurePlace bf_figure_place (const BfFold *fold, BfVec2 size_mm);

/* The blank with its lines, and its width and height beside it in the part's units. */
void bf_figure_blank (const BfFold *fold, BfVec2 size_mm, cairo_t *cr);

/* The same metal, from the same side, with a line of the blank's face lit: from a to b. */
void bf_figure_formed_line (
    const BfFold *fold, guint face, const BfVec2 line[2], BfVec2 size_mm, cairo_t *cr);

/* A length between two points, with arrows and the words in the middle, read from below or from the
 * right. */
void bf_figure_length (cairo_t *cr, BfVec2 from, BfVec2 to, const char *words);
