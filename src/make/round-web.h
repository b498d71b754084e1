/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* How marks hang on sizes, in numbers alone, and moves of the sizes that bring marks to whole
 * steps. Marks go with sizes in proportion as long as the moves are as small as a step. */

typedef struct
{
  guint n_marks, n_sizes;
  double step_mm;
  double *marks_mm;  /* of each mark: its distance, as it would be after the moves so far */
  double *rates;     /* [mark * n_sizes + size]: how far a mark goes as a size grows by 1 */
  double *stretches; /* [other * n_sizes + size]: how far another size goes along */
  gboolean *fixed;   /* of each size: it may not move */
  double *moved_mm;  /* of each size: its move */
  double *off_mm;    /* of each size: its move and what others stretched it by */
} BfRoundWeb;

/* All zero. Returns: (transfer full). */
BfRoundWeb *
bf_round_web_new (guint n_marks, guint n_sizes, double step_mm) G_GNUC_WARN_UNUSED_RESULT;
void bf_round_web_free (BfRoundWeb *web);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfRoundWeb, bf_round_web_free)

/* By how much a distance would have to grow to be the nearest whole step. */
double bf_round_lacks_mm (double exact_mm, double step_mm);

/* How far all marks are off, together. */
double bf_round_web_off_mm (const BfRoundWeb *web);

/* Finds moves, none past a step: first marks are made whole one after the other, those that hang on
 * fewest sizes first, each by a size that moves none of those before it; then each size is moved
 * again as long as that brings all marks nearer together. */
void bf_round_web_settle (BfRoundWeb *web);
