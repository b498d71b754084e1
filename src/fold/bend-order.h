/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/bend-reach.h"

/* In what order to make the bends, so that each can still be clamped and swung when its turn comes.
 *
 * Found from the end: of the finished part, one bend that could have been the last is opened again,
 * then the next, until the metal lies flat. Fewer bends are never more in the way, so that whatever
 * order there is, this finds one. Of those that could be last, walls are opened before what hangs
 * on them, and walls that face each other one after the other, short ones first: hems and lips are
 * made first, and a bar cut short for the last two walls fits between the others. Walls that rise
 * in step (fold/bend-groups.h) are one bend here: they follow each other, and each is tried with
 * the others as far up as itself. */

typedef struct
{
  guint bend;    /* index in fold->bends */
  guint in_step; /* steps of one number above 0 are made in step, a little each in turn */
  BfReach reach; /* with all before it made; fault is free, but where no order does it */
} BfBendStep;

/* Needs the fold's faces, bends and layout. Returns: (transfer full) (element-type BfBendStep). */
GArray *bf_bend_order (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* The metal when the first n_made bends of the order are made and the rest lies flat; of some that
 * rise in step each stands as far up as they have been gone through. Neither box nor volume is
 * worked out. formed: (out), clear with bf_formed_clear(). */
void bf_fold_formed_after (const BfFold *fold, guint n_made, BfFormed *formed);

static inline const BfBendStep *
bf_fold_bend_step (const BfFold *fold, guint i)
{
  return &g_array_index (fold->order, BfBendStep, i);
}
