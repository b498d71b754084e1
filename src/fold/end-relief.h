/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* The relief where a bend ends within an edge, so that the bend tears nothing. */

typedef struct
{
  BfEndRelief kind;
  double need_mm; /* width of a notch, or diameter of a hole, by geometry alone */
  double size_mm; /* as drawn */
  double drill_mm;
  char *drill; /* (owned) NULL where it is not drilled */
} BfEndReliefSize;

/* What the part asks for, or its way of cutting gives, at that end of a flap. Needs, common
 * practice: a notch runs past the tangent by t/2 and is at least as wide as the metal is thick and
 * as the kerf; a drilled hole stands at the bend line's end and clears the zone by t/2 and the
 * drawn line. size: (out); free size->drill. */
void bf_end_relief_size (const BfLayout *layout,
                         const BfFlap *flap,
                         BfSideName name,
                         BfEndReliefSize *size);

/* How far beyond the flap's end its relief may take metal, along the edge. */
double bf_end_relief_reach_mm (const BfPart *part, const BfFlap *flap, BfSideName name);

/* A notch's depth from the drawn line, in v (negative: inward). */
double bf_end_relief_notch_v (const BfLayout *layout, const BfFlap *flap);
