/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Metal of the blank that two flanges want, and that no relief takes. */

typedef struct
{
  int flaps[2];      /* the lower index first; −1 is the base */
  double mm2;        /* how much */
  double over_mm[2]; /* by how much the one or the other is too long; NAN for the base */
  BfVec2 at;         /* its middle */
} BfWanted;

/* For a fold whose blank, walked round, is not simple: fills layout->wanted, the most first, and
 * says whether metal is wanted twice at all. Pieces of the blank that themselves are none want it
 * too, though no pair of them does. */
void bf_wanted_twice_find (BfFold *fold);

/* TRUE where those two flaps (−1: the base) want the same metal. */
gboolean bf_wanted_twice_by (const BfFold *fold, const int flaps[2]);
