/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/work.h"

/* The picture of one step of the work, as its `shows` says: the blank, a step of marking out, the
 * blank with a cut lit and an arrow to where the waste is, the part as far as it is bent by then,
 * or the formed part with a seam lit. */

/* Step i of work->steps, drawn into a box of that size in mm, its upper left corner at (0, 0). On
 * white. */
void bf_work_picture_draw (const BfWork *work, guint i, BfVec2 size_mm, cairo_t *cr);
