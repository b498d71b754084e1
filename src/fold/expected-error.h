/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* How far off a finished size is to be expected, and what is most to blame for it. */

typedef enum
{
  BF_ERROR_MARKING,   /* where lines and edges were marked */
  BF_ERROR_CUTTING,   /* how well the cut follows its line */
  BF_ERROR_BENDING,   /* how well the bend follows its line */
  BF_ERROR_ALLOWANCE, /* how well K is known */
  BF_N_ERROR_SOURCES,
} BfErrorSource;

typedef struct
{
  double parts_mm[BF_N_ERROR_SOURCES]; /* what each source adds, either way */
  double total_mm;                     /* either way; no further in 9 of 10 makings */
  BfErrorSource biggest;
} BfExpectedError;

/* How far off one line, one cut, one bend may be either way in this part, in mm, and K (a number):
 * as the part is cut, and that bend is made. Common practice, all of them; a person's own trial
 * bend makes K surer. */
double bf_error_of_source (const BfFold *fold, guint bend, BfErrorSource source);

/* Of a finished size that reaches over those bends (indices in fold->bends; each ends it by its
 * outside face) and to so many cut edges: a flange's length reaches over its bend to its tip, a
 * tray's width from bend to bend. error: (out). */
void bf_expected_error (const BfFold *fold,
                        const guint *bends,
                        guint n_bends,
                        guint n_cut_edges,
                        BfExpectedError *error);

/* What such an error comes from, in the middle of a sentence: "the marking". Translated, static. */
const char *bf_error_source_name (BfErrorSource source);

/* "0.42 ± 0.06, a rule of thumb": the K of the part's bends, how sure it is, and where it comes
 * from. Returns: (transfer full). */
char *bf_part_k_words (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* "200 ± 1.5" in the part's units. Returns: (transfer full). */
char *bf_expected_size (const BfFold *fold,
                        const BfExpectedError *error,
                        double size_mm) G_GNUC_WARN_UNUSED_RESULT;

/* "expect 200 ± 1.5, mostly from the marking". Returns: (transfer full). */
char *bf_expected_words (const BfFold *fold,
                         const BfExpectedError *error,
                         double size_mm) G_GNUC_WARN_UNUSED_RESULT;
