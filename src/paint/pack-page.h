/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/pack-check.h"
#include "paint/paper.h"

/* The page that goes with a pattern file to whoever cuts it: the blank with its sizes, the finished
 * part, and what was checked of it. One page. check is read while it is drawn.
 * Draws in millimetres from the page's upper left corner. */
void
bf_pack_page_draw (const BfFold *fold, const BfPackCheck *check, const BfPaper *paper, cairo_t *cr);
