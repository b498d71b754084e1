/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "paint/formed-view.h"

/* How things to start from are drawn: in pencil, hardly any tone. */

/* The outline's width in pixels. */
#define BF_PENCIL_LINE_PX 1.3

BfFormedStyle bf_pencil_style (gboolean dark);

/* Where all such pictures are seen from: the side the bench shows parts from, too. */
extern const BfFormedLook bf_pencil_look;

/* A size with its two ends and the two thin lines that lead to them, in pixels. out: which way the
 * line stands off, a unit vector; off_px: how far. */
typedef struct
{
  BfVec2 from, to, out;
  double off_px;
} BfPencilSize;

void bf_pencil_draw_size (cairo_t *cr, const BfPencilSize *size);

/* The middle of the size's line. */
BfVec2 bf_pencil_size_middle (const BfPencilSize *size);
