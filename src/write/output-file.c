/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/output-file.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include <glib/gi18n.h>
#include <glib/gstdio.h>

G_DEFINE_QUARK (bf - write - error - quark, bf_write_error)

#define NEW_FILE_MODE 0666 /* less what the person's umask takes away */
#define LAST_ERRNO 133     /* EHWPOISON, the highest that Linux has */

static gboolean
fail (const char *path, const char *reason, GError **error)
{
  g_autofree char *shown = g_filename_display_name (path);

  /* Translators: a file's name and the system's reason ("Permission denied"). */
  g_set_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE, _ ("%s: could not be written: %s"),
               shown, reason);
  return FALSE;
}

/* TRUE where path is there and is something else than a file or a directory. */
static gboolean
is_device (const char *path)
{
  GStatBuf status;

  return g_stat (path, &status) == 0 && !S_ISREG (status.st_mode) && !S_ISDIR (status.st_mode);
}

static gboolean
write_device (const char *path, const void *bytes, gsize length, GError **error)
{
  FILE *file = g_fopen (path, "wb");
  gboolean written;

  if (file == NULL)
    return fail (path, g_strerror (errno), error);
  written = fwrite (bytes, 1, length, file) == length;
  if (fclose (file) != 0 || !written)
    return fail (path, g_strerror (errno), error);
  return TRUE;
}

char *
bf_output_resolve_links (const char *path)
{
  char *resolved = realpath (path, NULL);
  char *owned = g_strdup (resolved != NULL ? resolved : path);

  free (resolved);
  return owned;
}

/* The system's own words for what GLib ran into. GLib's message names its temporary file, which
 * nobody knows, and errno may be another's by the time that it returns. */
static const char *
describe_reason (const GError *error)
{
  for (int number = 1; number <= LAST_ERRNO; number++)
    {
      GFileError code = g_file_error_from_errno (number);
      if (code != G_FILE_ERROR_FAILED && (int)code == error->code)
        return g_strerror (number);
    }
  return error->message;
}

static gboolean
write_file (const char *path, const void *bytes, gsize length, GError **error)
{
  g_autofree char *target = bf_output_resolve_links (path);
  g_autoptr (GError) local = NULL;

  if (g_file_set_contents_full (target, bytes, (gssize)length, G_FILE_SET_CONTENTS_CONSISTENT,
                                NEW_FILE_MODE, &local))
    return TRUE;
  return fail (path, describe_reason (local), error);
}

gboolean
bf_write_output_file (const char *path, const void *bytes, gsize length, GError **error)
{
  g_return_val_if_fail (path != NULL, FALSE);
  g_return_val_if_fail (bytes != NULL || length == 0, FALSE);
  g_return_val_if_fail (length <= G_MAXSSIZE, FALSE);

  if (g_file_test (path, G_FILE_TEST_IS_DIR))
    return fail (path, g_strerror (EISDIR), error);
  if (is_device (path))
    return write_device (path, bytes, length, error);
  return write_file (path, bytes, length, error);
}
