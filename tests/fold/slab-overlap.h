/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Whether the formed metal passes through itself: a check of its own that shares nothing with the
 * fold but the result. Every flat is cut into convex slabs and every bend into thin slices; two
 * convex solids pass through each other as deep as the least gap that would part them. */

/* How deep the worst pair of a fold's solids goes into each other, in mm; below 0 they stand that
 * far apart. Solids that belong together (a face, its bends, and the faces at their other ends) are
 * left out. a, b: (out) the faces, a bend counted to the flange that it bends. */
double slab_worst_overlap (const BfFold *fold, guint *a, guint *b);
