/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "core/part.h"
#include "fold/fold.h"

G_BEGIN_DECLS

/* One part that is open: the part now, its fold, its file, and the edits made to it. It knows no
 * widget; everything that shows a part listens to `changed`.
 *
 * Signal changed: the part, its file or what can be undone is another one. */

#define BF_TYPE_DOCUMENT (bf_document_get_type ())
G_DECLARE_FINAL_TYPE (BfDocument, bf_document, BF, DOCUMENT, GObject)

/* A document with no part in it yet. */
BfDocument *bf_document_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* The part and its fold, or NULL while there is none. Owned by the document; valid until the next
 * `changed`. */
BfPart *bf_document_get_part (BfDocument *self);
BfFold *bf_document_get_fold (BfDocument *self);

/* The file that it was read from or saved to, or NULL; and the etag that the file had then, NULL
 * where it has none. */
GFile *bf_document_get_file (BfDocument *self);
const char *bf_document_get_file_tag (BfDocument *self);

/* What to call it: the part's name, else the file's, else "New part". Returns: (transfer full). */
char *bf_document_dup_title (BfDocument *self) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE where the part is not what stands in its file. */
gboolean bf_document_is_changed (BfDocument *self);

/* Starts anew with that part. file: where it stands, or NULL for one that stands nowhere yet, which
 * counts as changed. */
void bf_document_set_part (BfDocument *self, BfPart *part, GFile *file);

/* Starts anew with a part that is newer than what stands in that file (or in none, where file is
 * NULL). file_tag: the etag that the file had when the work on it began, or NULL. */
void bf_document_recover_part (BfDocument *self, BfPart *part, GFile *file, const char *file_tag);

/* The part becomes another one. name: what was done, translated. merge_key: see
 * bf_history_push(); NULL for a step of its own. */
void bf_document_apply (BfDocument *self, BfPart *part, const char *name, const char *merge_key);

/* The same with a part that is taken over. stepped: by an arrow key; such edits of one name in a
 * row make one step. */
void bf_document_take (BfDocument *self, BfPart *part, const char *name, gboolean stepped);

/* The name of what undo or redo would do, or NULL where it would do nothing. */
const char *bf_document_get_undo_name (BfDocument *self);
const char *bf_document_get_redo_name (BfDocument *self);
void bf_document_undo (BfDocument *self);
void bf_document_redo (BfDocument *self);

/* Folds the part again, after a metal's own figures became others. */
void bf_document_fold_again (BfDocument *self);

/* The next edit starts a step of its own. */
void bf_document_end_step (BfDocument *self);

/* Reads a part file; on a fault nothing is changed. */
gboolean bf_document_load (BfDocument *self, GFile *file, GError **error);

/* Writes the part to file, or where file is NULL to the one it has. */
gboolean bf_document_save (BfDocument *self, GFile *file, GError **error);

/* TRUE where the file was written by someone else since it was read or saved here. */
gboolean bf_document_file_is_foreign (BfDocument *self);

G_END_DECLS
