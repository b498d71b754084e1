/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Walls that share a folded corner can't be bent one after the other: the metal between them folds
 * as they rise, both by as much, and so do all that such corners join in a row. */

/* Which bends rise in step: those of one number above 0 do; a bend of number 0 is made alone.
 * groups: (out) as many as the fold has bends. Needs the fold's faces, bends and folded corners. */
void bf_bend_groups (const BfFold *fold, guint *groups);
