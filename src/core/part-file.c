/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-file.h"

#include <stdlib.h>
#include <string.h>
#include <glib/gstdio.h>

#include "core/read-file.h"

/* Mode of a file that is not there yet; the umask takes its share. */
#define NEW_FILE_MODE 0666

BfPart *
bf_part_load (GFile *file, GError **error)
{
  g_autoptr (GBytes) bytes = NULL;
  gsize size;
  const char *text;

  g_return_val_if_fail (G_IS_FILE (file), NULL);

  bytes = bf_read_file (file, BF_PART_FILE_MAX_BYTES, error);
  if (bytes == NULL)
    return NULL;
  text = g_bytes_get_data (bytes, &size);
  return bf_part_from_text (text != NULL ? text : "", (gssize)size, error);
}

/* The new file takes the old one's place by its name, so the name must be that of the file itself
 * and not of a link to it. Returns: (transfer full). */
static char *
true_path (const char *path)
{
  g_autofree char *link = g_file_read_link (path, NULL);
  char *real = realpath (path, NULL);
  char *copy;

  if (real == NULL && link != NULL)
    {
      g_autofree char *folder = g_path_get_dirname (path);
      return g_canonicalize_filename (link, folder);
    }
  copy = g_strdup (real != NULL ? real : path);
  free (real);
  return copy;
}

static gboolean
save_local (const char *path, const char *text, GError **error)
{
  g_autofree char *real = true_path (path);
  GStatBuf status;
  int mode = g_stat (real, &status) == 0 ? (int)(status.st_mode & 07777) : NEW_FILE_MODE;

  return g_file_set_contents_full (real, text, (gssize)strlen (text),
                                   G_FILE_SET_CONTENTS_CONSISTENT | G_FILE_SET_CONTENTS_DURABLE,
                                   mode, error);
}

gboolean
bf_part_save (const BfPart *part, GFile *file, GError **error)
{
  g_autofree char *text = NULL;
  g_autoptr (GError) cause = NULL;
  gboolean saved;

  g_return_val_if_fail (part != NULL && G_IS_FILE (file), FALSE);

  text = bf_part_to_text (part);
  if (g_file_peek_path (file) != NULL)
    saved = save_local (g_file_peek_path (file), text, &cause);
  else
    saved = g_file_replace_contents (file, text, strlen (text), NULL, FALSE, G_FILE_CREATE_NONE,
                                     NULL, NULL, &cause);
  if (!saved)
    g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_WRITE, cause->message);
  return saved;
}
