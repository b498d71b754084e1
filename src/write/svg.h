/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/pattern.h"

/* A pattern as SVG 1.1, full size in millimetres: the blank's point (x, y) stands at (x, −y), so
 * that nothing is mirrored, and the view is the blank's box. One group for each purpose that has
 * something to show, with the purpose's name as its id; arcs stay arcs.
 * Returns: (transfer full). */
char *bf_svg_text (const BfPattern *pattern) G_GNUC_WARN_UNUSED_RESULT;
