/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "core/part.h"

/* Work that stands in no file yet, kept aside in case the program ends. Each piece has a folder of
 * its own below the state folder (~/.local/state/benchfold/kept): the part as a part file like any
 * other, where it came from, and a lock. The lock is the system's, so that it goes with the program
 * however that ends, and no other run of the program takes work that is still being done. */

typedef struct _BfKeptWork BfKeptWork;

/* Room for a new piece of work, empty, locked by this program. NULL with error set where the state
 * folder can't be written to. Returns: (transfer full). */
BfKeptWork *bf_kept_work_new (GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* What earlier runs left behind, newest first: (element-type BfKeptWork), each locked by this
 * program from now on. Returns: (transfer full). */
GPtrArray *bf_kept_work_find (void) G_GNUC_WARN_UNUSED_RESULT;

BfKeptWork *bf_kept_work_ref (BfKeptWork *work);

/* The last one gives up the lock; what was written stays, for the next run to find. */
void bf_kept_work_unref (BfKeptWork *work);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfKeptWork, bf_kept_work_unref)

/* Takes the work and its folder away. */
void bf_kept_work_remove (BfKeptWork *work);

/* Before the first part is written: the file that the work is on, NULL for none, and the etag that
 * the file had when the work on it began. */
gboolean bf_kept_work_set_origin (BfKeptWork *work, GFile *file, const char *tag, GError **error);

/* The file that the work is on, or NULL; its etag then, or NULL. Owned by the work. */
GFile *bf_kept_work_get_file (const BfKeptWork *work);
const char *bf_kept_work_get_tag (const BfKeptWork *work);

/* Puts the part in the place of what was kept before, whole or not at all. May be called in any
 * thread, by one at a time. */
gboolean bf_kept_work_write (BfKeptWork *work, const BfPart *part, GError **error);

/* Returns: (transfer full), or NULL with error set. */
BfPart *bf_kept_work_read (const BfKeptWork *work, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* When it was written, local time; NULL where nothing was. Returns: (transfer full). */
GDateTime *bf_kept_work_get_time (const BfKeptWork *work) G_GNUC_WARN_UNUSED_RESULT;
