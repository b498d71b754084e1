/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The parts that a document has been, each with the name of the edit that made it. Parts are
 * values, so that undo is a step back along a list. */

typedef struct _BfHistory BfHistory;

/* A history that begins with that part, and counts as saved. The part is kept by reference. */
BfHistory *bf_history_new (BfPart *first) G_GNUC_WARN_UNUSED_RESULT;
void bf_history_free (BfHistory *history);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfHistory, bf_history_free)

/* Adds the part that an edit made; what could be redone is dropped. name is for people,
 * translated ("Length of front"). Where merge_key is not NULL and equals that of the step before,
 * the new part takes the place of that step's, so that ten arrow keys are one step. */
void bf_history_push (BfHistory *history, BfPart *part, const char *name, const char *merge_key);

/* The next push starts a step of its own, whatever its key. */
void bf_history_break_merge (BfHistory *history);

/* The part now. Owned by the history. */
BfPart *bf_history_part (const BfHistory *history);

/* The name of the edit that undo would take back or redo would make again; NULL where there is
 * none. Owned by the history. */
const char *bf_history_undo_name (const BfHistory *history);
const char *bf_history_redo_name (const BfHistory *history);

/* FALSE where there is nothing to step to. */
gboolean bf_history_undo (BfHistory *history);
gboolean bf_history_redo (BfHistory *history);

/* The part now is what stands in the file. */
void bf_history_mark_saved (BfHistory *history);

/* No part of this history stands in a file. */
void bf_history_mark_unsaved (BfHistory *history);
gboolean bf_history_is_saved (const BfHistory *history);
