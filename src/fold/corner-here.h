/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What can be asked at one corner of the base or of a flange, and what holds there where nothing
 * is asked: so that nobody is offered what unfolding would not heed. */

typedef struct
{
  BfVec2 place;               /* in the blank: where the two drawn edges meet */
  const char *before, *after; /* ids of the flanges that meet there; NULL where none do */
  guint joins;                /* 1 << BfJoin for each that can be made; 0 where nothing closes */
  double usual_gap_mm;        /* NAN where a gap means nothing */
  gboolean has_relief;        /* a relief is cut there unless the person wants none */
  BfReliefShape shape;        /* of that; BF_RELIEF_NONE where they want none */
  double need_mm;             /* by geometry alone; NAN for none */
  double wander_mm;           /* what is added for a drill that wanders; 0 for what is cut */
  double usual_size_mm;       /* as wide as needed; NAN for none */
  gboolean is_free;           /* no flange bends there, so that it can be rounded or cut off */
} BfCornerHere;

/* on: "base" or a flange's id; at: as BfCorner has it. The strings are the fold's. FALSE where
 * nothing can be asked there, or there is no such corner; here is then all nothing. */
gboolean bf_corner_here (const BfFold *fold, const char *on, guint at, BfCornerHere *here);
