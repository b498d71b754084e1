/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/convex.h"
#include "fold/layout.h"

/* Scored bends: a groove is milled along the bend, on the face that will be inside, and the skin
 * left under it folds as metal of its own thickness would, without a radius. */

/* Past this the groove would have to be more than five times as wide as it is deep, and nothing
 * holds the skin in line (common practice). */
#define BF_SCORE_MAX_RAD (135.0 * G_PI / 180.0)

typedef enum
{
  BF_SCORE_SOUND,
  BF_SCORE_TOO_FAR,     /* turned past BF_SCORE_MAX_RAD */
  BF_SCORE_TOO_SHALLOW, /* what it is to leave is all of the metal */
} BfScoreFault;

/* What keeps a flange from being scored as asked. Of a bend that is made in another way: sound.
 * left_mm: (out) (optional): the skin asked. */
BfScoreFault bf_score_fault (const BfPart *part, const BfFlange *flange, double *left_mm);

/* The flange's bend as it is folded: as bf_part_resolve_bend() has it, but a scored one that cannot
 * be is a bend over a bar with the usual radius and K, whatever was asked of the score. */
BfBend bf_bend_as_folded (const BfPart *part, const BfFlange *flange);

/* How wide a groove with square walls must be so that a scored flap's bend closes: the zone itself,
 * and 2 (t − skin) tan (θ/2), by which the walls' edges come together. */
double bf_score_groove_mm (const BfLayout *layout, const BfFlap *flap);

/* A groove as a strip of the blank, as long as any metal beside it that the bend brings together.
 */
typedef struct
{
  BfConvexPart strip;
  gboolean in_marking_side;
  double depth_mm;
} BfGroove;

/* Appends the grooves (BfGroove) that run along the edges of a face (0: the base). */
void bf_score_grooves (const BfLayout *layout, guint face, GArray *grooves);
