/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/pattern.h"

/* The words on a pattern: how each bend is made, drill sizes, and who the drawing belongs to, each
 * where it hides no line. The lines that say whose drawing it is always stand somewhere in the
 * blank's box: where there is no free room for them they are made small.
 * Returns: (transfer full): BfBlankLabel; freed with g_ptr_array_unref(). */
GPtrArray *bf_pattern_words (const BfPattern *pattern) G_GNUC_WARN_UNUSED_RESULT;
