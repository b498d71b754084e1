/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Corners that are to be rounded or chamfered: of the base where no flange bends, and the two
 * corners of a flange's tip. */

/* What is asked where no size is given: 3 mm, or 1/8 in (common practice). */
#define BF_FREE_CORNER_MM 3.0
#define BF_FREE_CORNER_IN 0.125

double bf_usual_finish_mm (const BfPart *part);

/* The size that a finish has: the one given, else the usual. */
double bf_finish_size_mm (const BfPart *part, const BfCorner *asked);

/* A corner that is asked to be finished. A round's size is its radius; a chamfer's is what it takes
 * of either edge. */
typedef struct _BfFreeCorner
{
  int flap; /* the face's flap; −1 for the base */
  guint at; /* the base's point; 0 or 1 on a flange */
  BfFinish finish;
  gboolean bent;             /* a flange bends there: nothing to finish */
  double asked_mm, drawn_mm; /* drawn: the largest that its edges have room for, at most asked */
  BfVec2 vertex;             /* in the blank */
  BfVec2 from, to;           /* where the finish begins and ends */
  double bulge;              /* of the line between */
} BfFreeCorner;

/* Fills layout->free_corners; every flap is settled. */
void bf_free_corners_find (BfLayout *layout);

/* TRUE where no flange bends at that corner of a face, so that it can be finished. place: (out)
 * where its two drawn edges meet in the blank; (0, 0) where there is no such corner. */
gboolean bf_free_corner_has_room (const BfLayout *layout, int flap, guint at, BfVec2 *place);

/* The finish that is drawn at a corner, or NULL where it stays sharp. */
const BfFreeCorner *bf_free_corner_at (const BfLayout *layout, int flap, int at);
