/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* How every output reaches the disk: whole, or not at all. */

typedef enum
{
  BF_WRITE_ERROR_FILE,    /* the file could not be written; an earlier one is as it was */
  BF_WRITE_ERROR_DRAWING, /* the drawing library gave up (no memory, a size it can't hold) */
} BfWriteError;

#define BF_WRITE_ERROR (bf_write_error_quark ())
GQuark bf_write_error_quark (void);

/* Writes length bytes to path (in the file system's encoding) by way of a temporary file beside
 * it that is renamed when it is complete. A link is followed, so that what it points to is
 * replaced and the link stays. A device or a pipe can't be replaced: it is written to as it is.
 * On failure: FALSE, an error of BF_WRITE_ERROR_FILE that reads "path: could not be written:
 * reason", no new file, and an earlier file as it was. */
gboolean bf_write_output_file (const char *path, const void *bytes, gsize length, GError **error);

/* The file that path stands for, links followed; path itself where there is none yet. Returns:
 * (transfer full). */
char *bf_output_resolve_links (const char *path) G_GNUC_WARN_UNUSED_RESULT;
