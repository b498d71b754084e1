/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-file.h"

#include <stdlib.h>
#include <string.h>
#include <glib/gstdio.h>

#include <glib/gi18n.h>

/* Mode of a file that is not there yet; the umask takes its share. */
#define NEW_FILE_MODE 0666

/* The commonest causes in plain words: GIO's own would name the file again. */
static const char *
plain_words (const GError *cause)
{
  if (g_error_matches (cause, G_IO_ERROR, G_IO_ERROR_NOT_FOUND))
    return _ ("there is no such file");
  if (g_error_matches (cause, G_IO_ERROR, G_IO_ERROR_PERMISSION_DENIED))
    return _ ("you are not allowed to read this file");
  return cause->message;
}

static gboolean
fail (GError **error, BfPartError code, GError *cause)
{
  g_set_error_literal (error, BF_PART_ERROR, (int)code,
                       code == BF_PART_ERROR_READ ? plain_words (cause) : cause->message);
  g_error_free (cause);
  return FALSE;
}

/* A pipe or a device could give bytes without end, and a folder none. */
static gboolean
check_regular (GFile *file, GError **error)
{
  GError *cause = NULL;
  g_autoptr (GFileInfo) info = g_file_query_info (file, G_FILE_ATTRIBUTE_STANDARD_TYPE,
                                                  G_FILE_QUERY_INFO_NONE, NULL, &cause);

  if (info == NULL)
    return fail (error, BF_PART_ERROR_READ, cause);
  if (g_file_info_get_file_type (info) == G_FILE_TYPE_REGULAR)
    return TRUE;
  g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_READ,
                       g_file_info_get_file_type (info) == G_FILE_TYPE_DIRECTORY
                           ? _ ("this is a folder, not a file")
                           : _ ("this is not an ordinary file"));
  return FALSE;
}

/* At most one byte more than is allowed, so that the reader can say that it is too much. */
static GBytes *
read_bytes (GFile *file, GError **error)
{
  GError *cause = NULL;
  g_autoptr (GFileInputStream) stream = g_file_read (file, NULL, &cause);
  g_autofree char *buffer = NULL;
  gsize size = 0;

  if (stream == NULL)
    {
      fail (error, BF_PART_ERROR_READ, cause);
      return NULL;
    }
  buffer = g_malloc (BF_PART_FILE_MAX_BYTES + 1);
  if (!g_input_stream_read_all (G_INPUT_STREAM (stream), buffer, BF_PART_FILE_MAX_BYTES + 1, &size,
                                NULL, &cause))
    {
      fail (error, BF_PART_ERROR_READ, cause);
      return NULL;
    }
  return g_bytes_new (buffer, size);
}

BfPart *
bf_part_load (GFile *file, GError **error)
{
  g_autoptr (GBytes) bytes = NULL;
  gsize size;
  const char *text;

  g_return_val_if_fail (G_IS_FILE (file), NULL);

  if (!check_regular (file, error))
    return NULL;
  bytes = read_bytes (file, error);
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
  GError *cause = NULL;
  gboolean saved;

  g_return_val_if_fail (part != NULL && G_IS_FILE (file), FALSE);

  text = bf_part_to_text (part);
  if (g_file_peek_path (file) != NULL)
    saved = save_local (g_file_peek_path (file), text, &cause);
  else
    saved = g_file_replace_contents (file, text, strlen (text), NULL, FALSE, G_FILE_CREATE_NONE,
                                     NULL, NULL, &cause);
  return saved || fail (error, BF_PART_ERROR_WRITE, cause);
}
