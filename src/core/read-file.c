/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/read-file.h"

#include <glib/gi18n.h>

#include "core/part-file.h"

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

static void
fail (GError **error, const GError *cause)
{
  g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_READ, plain_words (cause));
}

static gboolean
check_regular (GFile *file, GError **error)
{
  g_autoptr (GError) cause = NULL;
  g_autoptr (GFileInfo) info = g_file_query_info (file, G_FILE_ATTRIBUTE_STANDARD_TYPE,
                                                  G_FILE_QUERY_INFO_NONE, NULL, &cause);

  if (info == NULL)
    {
      fail (error, cause);
      return FALSE;
    }
  if (g_file_info_get_file_type (info) == G_FILE_TYPE_REGULAR)
    return TRUE;
  g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_READ,
                       g_file_info_get_file_type (info) == G_FILE_TYPE_DIRECTORY
                           ? _ ("this is a folder, not a file")
                           : _ ("this is not an ordinary file"));
  return FALSE;
}

GBytes *
bf_read_file (GFile *file, gsize max_bytes, GError **error)
{
  g_autoptr (GError) cause = NULL;
  g_autoptr (GFileInputStream) stream = NULL;
  g_autofree char *buffer = NULL;
  gsize size = 0;

  g_return_val_if_fail (G_IS_FILE (file), NULL);

  if (!check_regular (file, error))
    return NULL;
  stream = g_file_read (file, NULL, &cause);
  buffer = g_malloc (max_bytes + 1);
  if (stream == NULL || !g_input_stream_read_all (G_INPUT_STREAM (stream), buffer, max_bytes + 1,
                                                  &size, NULL, &cause))
    {
      fail (error, cause);
      return NULL;
    }
  return g_bytes_new (buffer, size);
}
