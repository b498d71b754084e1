/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Whether a bend can be made while others are made already.
 *
 * Over a bar or in a brake one side of the bend line lies flat between two straight bars, cut to
 * about the bend's length, with their front edges on the tangent; the other side swings. The bars
 * are as small as bars that hold thin metal come, so that what they can't reach nobody's bars
 * reach. With slots or a score nothing is clamped: the metal only has to swing. Faces count whole,
 * bends themselves do not. */

/* Common practice, all three: a flat bar of 20 × 10 mm on either face, and what it has to grip. */
#define BF_BAR_WIDTH_MM 20.0
#define BF_BAR_HEIGHT_MM 10.0
#define BF_BAR_HOLD_MM 6.0

/* What goes further than this is hammered down once the bar is taken out (common practice). */
#define BF_BAR_MOST_DEG 135.0

typedef enum
{
  BF_HELD_PARENT, /* what the flange hangs on lies between the bars */
  BF_HELD_FLANGE, /* the flange lies there, and all the rest swings */
} BfHeldSide;

typedef enum
{
  BF_REACH_FREE,  /* it can be made */
  BF_REACH_HOLD,  /* too little flat beside the line to hold, on either side */
  BF_REACH_BAR,   /* something stands where the bar has to lie, or swings into it */
  BF_REACH_SWING, /* what swings runs into what is held */
} BfReachFault;

typedef struct
{
  BfHeldSide held;
  BfReachFault fault;
  guint blocker;   /* the face in the way; of BF_REACH_BAR and BF_REACH_SWING */
  double clear_mm; /* how wide a bar there is room for, or how much flat to hold; NAN for a swing */
} BfReach;

typedef struct BfReachTest BfReachTest;

/* The fold is kept by pointer: let it live as long. Returns: (transfer full). */
BfReachTest *bf_reach_test_new (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
void bf_reach_test_free (BfReachTest *test);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfReachTest, bf_reach_test_free)

/* Whether bend can be made while those are made for which made[] is TRUE and the others lie flat.
 * What rises in step with it (fold/bend-groups.h) stands as far up as it does. The side with more
 * metal is held if either can be. */
BfReach bf_reach_try (BfReachTest *test, guint bend, const gboolean *made);
