/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* The straight cuts of a blank, in the order in which to make them by hand along a guide.
 *
 * A guide needs metal under both its ends to be clamped to. So openings are cut first, one after
 * the other, from left to right, then the
 * short cuts of corners and notches while there is metal all round, and the long ones last (common
 * practice). The metal's own two edges, which all is measured from, are not cut. */

typedef struct
{
  BfVec2 from, to; /* along the blank's edge, the blank at the left */
  double length_mm;
  BfVec2 waste;                /* unit vector, square to the cut, toward what falls away */
  gboolean inside;             /* of an opening */
  BfBox opening;               /* which: the box round it; the blank's where it is not inside */
  gboolean from_hole, to_hole; /* it ends in a drilled relief */
} BfCut;

/* The shortest edge of an opening that the person's tool makes: a disc's cut is longer even where
 * it has only just come through (fold/slot-plan.h), and snips need room to turn in (25 mm, common
 * practice). 0 for a machine. */
double bf_least_inside_cut_mm (const BfPart *part);

/* How many openings the tool can't make whole: they have an edge that is too short for it, or a
 * round that no drill makes. */
guint bf_count_filed_openings (const BfFold *fold);

/* How many rounds of the blank's outside no drill makes: no straight cut does. */
guint bf_count_filed_rounds (const BfFold *fold);

/* Straight edges that go on in one line are one cut; what is shorter than 3 mm is filed, and so is
 * an edge of an opening that is too short for the tool. keep_datum: FALSE where the blank's left
 * and bottom edges are edges of the metal already. Returns: (transfer full) (element-type BfCut).
 */
GArray *bf_cuts (const BfFold *fold, gboolean keep_datum) G_GNUC_WARN_UNUSED_RESULT;

/* How far the disc is plunged past the metal, so that its far face is cut nearly as far as its near
 * one (common practice). */
#define BF_PLUNGE_BEYOND_MM 5.0

/* How far the cut on the near face runs ahead of the one on the far face, at either end, of a disc
 * of that diameter plunged d = t + BF_PLUNGE_BEYOND_MM deep: √(d (D − d)) − √((d − t)(D − d + t)),
 * the half chords of its circle. NAN where the disc does not reach. */
double bf_cut_lag_mm (double disc_mm, double thickness_mm);

/* How far off its line a guide is set for that cut, so that a tool whose cut runs offset_mm from
 * the guide leaves the blank whole: the guide lies on the blank's side. Both ends of the guide's
 * edge: (out). offset_mm: the person's own, 0 where the disc just touches the guide. */
void bf_cut_guide (const BfCut *cut, double offset_mm, BfVec2 ends[2]);

/* TRUE where both are edges of the same opening. */
gboolean bf_cuts_share_opening (const BfCut *a, const BfCut *b);

static inline const BfCut *
bf_cut (const GArray *cuts, guint i)
{
  return &g_array_index (cuts, BfCut, i);
}
