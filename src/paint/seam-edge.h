/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Where a seam is: the edge of its wall before that comes nearest to an edge of its wall after once
 * both are formed. */
typedef struct
{
  guint face;  /* the wall before */
  BfVec2 a, b; /* the edge in the blank, as the face's outline runs */
} BfSeamEdge;

/* FALSE where there is none. edge: (out). */
gboolean bf_seam_edge_find (const BfFold *fold, const BfSeam *seam, BfSeamEdge *edge);
