/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/own-trials.h"
#include "fold/expected-error.h"

/* The first finished part corrects the second: from sizes as they came out, the likeliest cause of
 * what is off, and what to change on the next blank.
 *
 * A size that ends at a bend moves with where that bend was made, and by half of what the bend took
 * more or less than was thought; both sides of a bend measured tell the two apart. Of all single
 * causes that is named which, by least squares, leaves least unexplained, each size weighed by how
 * far off it may be by itself (fold/expected-error.h). */

typedef enum
{
  BF_MADE_AS_ASKED,   /* off by no more than is to be expected */
  BF_MADE_ALLOWANCE,  /* the bends took more or less than K says */
  BF_MADE_RADIUS,     /* the bends came out rounder or sharper than asked */
  BF_MADE_OFF_LINE,   /* a bend was made beside its line */
  BF_MADE_WRONG_SIDE, /* the bar stood on its line, but on the wrong side of it */
  BF_MADE_NOT_TOLD,   /* no single cause explains it */
} BfMadeCause;

/* One size of the finished part. It reaches over one or two bends, to the outside (or inside) face
 * on the far side of each, and to so many cut edges. */
typedef struct
{
  double asked_mm, measured_mm;
  int bends[2]; /* indices in fold->bends; −1 for none */
  int grows[2]; /* 1 where it grows as that bend moves toward its flange's tip, −1 where it shrinks
                 */
  guint n_cut_edges;
} BfMadeSize;

typedef struct
{
  BfMadeCause cause;
  int bend;       /* of which bend: BF_MADE_OFF_LINE and BF_MADE_WRONG_SIDE; −1: of every bend */
  double off_mm;  /* how far that bend was made toward its flange's tip */
  guint like;     /* the bend that k and the radius are of: the first that was measured over */
  double k;       /* for the next blank: as before but for BF_MADE_ALLOWANCE */
  double k_error; /* how far off that may be either way; NAN but for BF_MADE_ALLOWANCE */
  double radius_mm; /* the same for BF_MADE_RADIUS */
  double left_mm;   /* the most that any of these sizes would still be off */
} BfSecondMake;

/* How well a finished size is measured, either way (common practice). */
#define BF_MADE_MEASURED_TO_MM 0.15

/* A flange's length as measured: over its own bend to its tip, or to the bend at its tip. FALSE
 * where there is no such flange. */
gboolean bf_made_flange (const BfFold *fold, const char *id, double measured_mm, BfMadeSize *size);

/* An edge of the base, from one neighbouring edge to the other: each a bend, or cut. FALSE where
 * the base has no such edge. */
gboolean bf_made_edge (const BfFold *fold, guint edge, double measured_mm, BfMadeSize *size);

/* How far off a size is to be expected. error: (out). */
void bf_made_expected (const BfFold *fold, const BfMadeSize *size, BfExpectedError *error);

/* radius_mm: the inside radius as it came out (by a gauge or a coin); NAN where it was not
 * measured. second: (out). FALSE where nothing can be told: nothing measured, no size over a bend,
 * or one that is none. */
gboolean bf_second_make (const BfFold *fold,
                         const BfMadeSize *sizes,
                         guint n_sizes,
                         double radius_mm,
                         BfSecondMake *second);

/* The part that the next blank is of: as asked, with the K or the radius that was found, and the
 * day (as bf_today() gives it) on which it was. Flanges with a bend of their own keep it. Returns:
 * (transfer full), or NULL where the blank is right as it is. */
BfPart *bf_second_make_part (const BfFold *fold,
                             const BfSecondMake *second,
                             const char *day) G_GNUC_WARN_UNUSED_RESULT;

/* The finished part as a trial bend, to be kept for others of its metal, thickness, way and radius.
 * FALSE, trial untouched, where it is none: another cause than the allowance, a scored bend, or
 * figures of a bend with a radius, way or K of its own. trial: (out): its id NULL, its strips and
 * sizes to be unreferenced; day as above. */
gboolean bf_second_make_trial (const BfFold *fold,
                               const BfSecondMake *second,
                               const GArray *sizes,
                               const char *day,
                               BfTrialRecord *trial);

/* The part that the next blank is of with that trial bend, once it is kept: as asked, with its K,
 * and the day. Returns: (transfer full). */
BfPart *bf_second_make_part_tried (const BfFold *fold,
                                   const BfTrialRecord *kept) G_GNUC_WARN_UNUSED_RESULT;

/* What to tell the person: the cause and what to change, a sentence or two. Returns: (transfer
 * full). */
char *bf_second_make_words (const BfFold *fold,
                            const BfSecondMake *second) G_GNUC_WARN_UNUSED_RESULT;
