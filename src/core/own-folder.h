/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part-reader.h"

/* The person's own things, kept in their data folder: a folder a kind, a small JSON file a thing,
 * its id the file's name without ".json". So a file can be copied, given away or mended by hand,
 * and one that is broken leaves the others as they are. */

typedef struct
{
  const char *folder; /* "metals": below $XDG_DATA_HOME/benchfold */
  const char *format; /* "benchfold-metal": what each file says that it is */
} BfOwnKind;

/* In own-metals.c, own-drills.c and own-trials.c. */
extern const BfOwnKind bf_own_metal_kind, bf_own_drill_kind, bf_own_trial_kind;

/* Takes one thing from the file's outermost object; sets the reader's error where it can't be.
 * id: interned. */
typedef void (*BfOwnFunc) (BfReader *reader, const BfPlace *root, const char *id, gpointer data);

/* Hands every file of a kind to func, by id in the order of its bytes; no folder means none.
 * faults: (element-type char *): gets a line for each file that can't be read, "PATH: member: what
 * is wrong". */
void bf_own_read (const BfOwnKind *kind, BfOwnFunc func, gpointer data, GPtrArray *faults);

/* The same for the one thing of that id, if it is there; the folder "." is $XDG_DATA_HOME/benchfold
 * itself. */
void bf_own_read_one (
    const BfOwnKind *kind, const char *id, BfOwnFunc func, gpointer data, GPtrArray *faults);

/* An id for a new thing of that name that no file has yet: "Shed steel" becomes "shed-steel", or
 * "shed-steel-2". taken: ids that are not free for other reasons, or NULL; ends with NULL.
 * Returns: (transfer full). */
char *bf_own_new_id (const BfOwnKind *kind,
                     const char *name,
                     const char *const *taken) G_GNUC_WARN_UNUSED_RESULT;

/* What stands in a thing's file now, for bf_keep_unknown(): what a newer program or a hand wrote
 * there stays when the thing is changed. Returns: (transfer full), NULL where there is no file or
 * it can't be read. */
JsonObject *bf_own_source (const BfOwnKind *kind, const char *id) G_GNUC_WARN_UNUSED_RESULT;

/* Writes a thing, whole or not at all; the folder is made where it is missing. object gets the
 * format's own members. error: BF_PART_ERROR_WRITE, "PATH: what is wrong". */
gboolean bf_own_write (const BfOwnKind *kind, const char *id, JsonObject *object, GError **error);

/* Takes a thing's file away. removed: (out) (optional) (transfer full): what stood in it, NULL
 * where it was not there, which is as good as taken. error: as above. */
gboolean bf_own_remove (const BfOwnKind *kind, const char *id, GBytes **removed, GError **error);

/* Writes a file again as it stood, byte by byte, unless there is one of that id by now. error: as
 * above. */
gboolean bf_own_put_back (const BfOwnKind *kind, const char *id, GBytes *removed, GError **error);
