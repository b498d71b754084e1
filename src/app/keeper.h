/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "app/kept-work.h"

G_BEGIN_DECLS

/* Keeps the work on a document aside while it is not what stands in the document's file: it is on
 * the disk less than BF_KEEP_WITHIN_S after a change, and gone when the document is saved. Writing
 * is done in a thread of its own, so that no frame waits for the disk.
 *
 * Signal failed (const char *reason): work can't be kept now; once until it can be again. */

#define BF_KEEP_WITHIN_S 2

#define BF_TYPE_KEEPER (bf_keeper_get_type ())
G_DECLARE_FINAL_TYPE (BfKeeper, bf_keeper, BF, KEEPER, GObject)

/* Keeps what is done to that document from now on. What was kept outlives the keeper; see
 * bf_keeper_flush(). */
BfKeeper *bf_keeper_new (BfDocument *document) G_GNUC_WARN_UNUSED_RESULT;

/* Writes now, and waits for it, what is not written yet. For the end of a window or a program. */
void bf_keeper_flush (BfKeeper *self);

/* Goes on with work that was left behind: the document gets its part, and the work is kept where it
 * was. On a fault nothing is changed. */
gboolean bf_keeper_take_up (BfKeeper *self, BfKeptWork *work, GError **error);

G_END_DECLS
