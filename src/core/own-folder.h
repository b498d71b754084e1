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

/* Writes a thing, whole or not at all; the folder is made where it is missing. object gets the
 * format's own members. error: BF_PART_ERROR_WRITE, "PATH: what is wrong". */
gboolean bf_own_write (const BfOwnKind *kind, const char *id, JsonObject *object, GError **error);

/* Takes a thing's file away; one that is not there is as good as taken. error: as above. */
gboolean bf_own_remove (const BfOwnKind *kind, const char *id, GError **error);
