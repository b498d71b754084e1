/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* How far the blank's outlines have moved from one fold to another that stands on the same base:
 * the greatest distance of a corner of either blank to the other's lines. 0 where neither has any.
 * face: (out) (optional) the face nearest to where that is, by its index in after. */
double bf_fold_metal_moved_mm (const BfFold *before, const BfFold *after, guint *face);
