/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Several outputs that are put in place together. Everything is written beside its place first;
 * only when all of it is on the disk does anything replace an earlier file. */

typedef struct BfOutputBatch BfOutputBatch;

BfOutputBatch *bf_output_batch_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* Drops the batch; what was not put in place leaves no trace. */
void bf_output_batch_free (BfOutputBatch *batch);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfOutputBatch, bf_output_batch_free)

/* Adds the file at path (in the file system's encoding), which is to hold bytes: (transfer none).
 * A link is followed. */
void bf_output_batch_add (BfOutputBatch *batch, const char *path, GBytes *bytes);

/* Puts every file in place, in the order in which they were added. On failure: FALSE, an error of
 * BF_WRITE_ERROR_FILE that names the path, and every earlier file as it was; only where the disk
 * gives up between two renames can those before it stand replaced. A device or a pipe can't be
 * held back: it is written to last. */
gboolean bf_output_batch_commit (BfOutputBatch *batch, GError **error);

/* TRUE where two paths are the same file, however they are spelled and whether it is there yet. */
gboolean bf_output_same_file (const char *a, const char *b);

/* TRUE where path ends in suffix (".svg"), in whatever case. */
gboolean bf_output_has_suffix (const char *path, const char *suffix);

/* Makes a folder for outputs where there is none, and what it stands in. FALSE with
 * BF_WRITE_ERROR_FILE where it can't be made. */
gboolean bf_output_make_folder (const char *dir, GError **error);
