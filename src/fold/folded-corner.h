/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* A corner that is not cut but folded double along its bisector, so that nothing leaks. Two square
 * walls of one height stand at a square corner of the base. The metal between them folds into two
 * triangles that lie on each other, and both on the inside of the wall on the longer edge (of equal
 * edges the higher wall's, of equal walls the one whose id comes later: what is not the end wall,
 * see fold/end-wall.h). There they take 2t of room inside and none outside, so that the part keeps
 * its outer size; and only there do the three folds close: round the outside the metal would have
 * to go round a hem, and with r = t lacks 2.8 t for it.
 *
 * The three folds: where the long wall ends, turned back by half a turn against its inside (a hem
 * without a radius); the bisector, half a turn the other way; and where the end wall ends, a square
 * bend of the part's radius round the other two. Each has its own allowance. That the two triangles
 * lie on each other point by point settles where the long wall ends: with thicknesses t, corner
 * bend of radius r and allowance A, hems of allowance H, the walls' bends alike, at
 * (A − H)/2 − 2t − r from the outer corner; the end wall ends 3t + r from it.
 *
 * What is left out: the metal where all the bends run into each other at the foot of the corner,
 * and the point of the bisector's fold beyond the rim, keep their flat size; that metal is crushed
 * a little. Its volume is counted as that of the flat, and it is not drawn in the formed shape. The
 * triangles begin above both walls' bends, by what the fold on the bisector swells. */

/* Why a corner cannot be folded. */
typedef enum
{
  BF_FOLDED_FITS,
  BF_FOLDED_NOT_SQUARE, /* the corner, or a wall's bend; or not a corner of the base */
  BF_FOLDED_UNLIKE,     /* the walls' heights */
  BF_FOLDED_NOT_WHOLE,  /* an inset, a taper, or something on the wall's tip or side there */
  BF_FOLDED_BRITTLE,    /* the metal cracks when it is folded flat on itself; or a wall is scored */
  BF_FOLDED_LOW,        /* the walls' height */
  BF_FOLDED_SHORT,      /* a wall's length, for what lies against it */
  BF_FOLDED_ROUND,      /* the bends: the folds would run into each other */
} BfFoldedTrouble;

/* found, needed: lengths; NAN where it is not one of UNLIKE, LOW and SHORT. */
typedef struct
{
  BfFoldedTrouble trouble;
  double found_mm, needed_mm;
} BfFoldedVerdict;

/* A fold of the corner. */
typedef struct
{
  double allowance_mm, radius_mm, k;
} BfFoldedBend;

/* The corner in the flat: x runs outward from the end wall's drawn line, y from the long wall's. */
typedef struct
{
  BfSideName along; /* the side of the meeting that the long wall stands on */
  BfFoldedBend hem, round;
  double along_end_mm, round_end_mm; /* x where the long wall ends; y where the end wall does */
  double low_x_mm, low_y_mm;         /* where the triangles begin, above the walls' bends */
  double tip_x_mm, tip_y_mm;         /* the rim: where the two walls' tips cross */
  double along_k_mm, round_k_mm;     /* the bisector's tangents: y = x + k */
  double bisector_x_mm;              /* where its fold begins on the long wall's tangent */
  double reach_mm;                   /* of the triangles along the long wall, from the drawn line */
} BfFoldedPlan;

/* Works the corner out; the plan is whole where it says that it fits. */
BfFoldedVerdict
bf_folded_corner_plan (const BfLayout *layout, const BfMeeting *meeting, BfFoldedPlan *plan);

/* Ends both walls of a meeting that is folded. */
void bf_folded_corner_trim (BfLayout *layout, const BfMeeting *meeting);

/* A point, and a direction, of the plan in the blank. */
BfVec2 bf_folded_corner_point (const BfLayout *layout,
                               const BfMeeting *meeting,
                               const BfFoldedPlan *plan,
                               BfVec2 p);
BfVec2 bf_folded_corner_vector (const BfLayout *layout,
                                const BfMeeting *meeting,
                                const BfFoldedPlan *plan,
                                BfVec2 v);

/* Appends what every folded corner of the layout is made of (BfFoldedCorner); its walls are
 * settled. */
void bf_folded_corners_find (const BfLayout *layout, GArray *corners);
void bf_folded_corner_clear (BfFoldedCorner *corner);
