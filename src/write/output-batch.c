/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/output-batch.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <glib/gi18n.h>
#include <glib/gstdio.h>

#include "write/output-file.h"

/* Less what the person's umask takes away. */
#define NEW_FILE_MODE 0666
#define NEW_FOLDER_MODE 0777

typedef struct
{
  char *path;   /* as the person gave it, for messages */
  char *target; /* links followed */
  char *staged; /* written, not yet in place; NULL: nothing there */
  GBytes *bytes;
  gboolean is_device;
} Output;

struct BfOutputBatch
{
  GPtrArray *outputs; /* Output */
};

static void
output_free (gpointer data)
{
  Output *output = data;

  if (output->staged != NULL)
    g_unlink (output->staged);
  g_free (output->path);
  g_free (output->target);
  g_free (output->staged);
  g_bytes_unref (output->bytes);
  g_free (output);
}

BfOutputBatch *
bf_output_batch_new (void)
{
  BfOutputBatch *batch = g_new0 (BfOutputBatch, 1);

  batch->outputs = g_ptr_array_new_with_free_func (output_free);
  return batch;
}

void
bf_output_batch_free (BfOutputBatch *batch)
{
  if (batch == NULL)
    return;
  g_ptr_array_unref (batch->outputs);
  g_free (batch);
}

void
bf_output_batch_add (BfOutputBatch *batch, const char *path, GBytes *bytes)
{
  Output *output;
  GStatBuf status;

  g_return_if_fail (batch != NULL);
  g_return_if_fail (path != NULL && bytes != NULL);

  output = g_new0 (Output, 1);
  output->path = g_strdup (path);
  output->target = bf_output_resolve_links (path);
  output->bytes = g_bytes_ref (bytes);
  output->is_device =
      g_stat (path, &status) == 0 && !S_ISREG (status.st_mode) && !S_ISDIR (status.st_mode);
  g_ptr_array_add (batch->outputs, output);
}

static gboolean
fail (const Output *output, int number, GError **error)
{
  g_autofree char *shown = g_filename_display_name (output->path);

  /* Translators: a file's name and the system's reason ("Permission denied"). */
  g_set_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE, _ ("%s: could not be written: %s"),
               shown, g_strerror (number));
  return FALSE;
}

/* The mode that the target has, or what a new file gets. umask() can only be read by setting it;
 * nothing else of the program runs at this time. */
static mode_t
wanted_mode (const char *target)
{
  GStatBuf status;
  mode_t mask;

  if (g_stat (target, &status) == 0)
    return status.st_mode & 07777;
  mask = umask (0);
  umask (mask);
  return NEW_FILE_MODE & ~mask;
}

static gboolean
fill (int fd, GBytes *bytes)
{
  gsize left;
  const char *at = g_bytes_get_data (bytes, &left);

  while (left > 0)
    {
      gssize n = write (fd, at, left);

      if (n < 0 && errno == EINTR)
        continue;
      if (n < 0)
        return FALSE;
      at += n;
      left -= (gsize)n;
    }
  return TRUE;
}

static gboolean
stage (Output *output, GError **error)
{
  g_autofree char *folder = g_path_get_dirname (output->target);
  g_autofree char *staged = g_build_filename (folder, ".benchfold-XXXXXX", NULL);
  gboolean written;
  int fd, number;

  if (g_file_test (output->target, G_FILE_TEST_IS_DIR))
    return fail (output, EISDIR, error);
  fd = g_mkstemp (staged);
  if (fd < 0)
    return fail (output, errno, error);

  output->staged = g_steal_pointer (&staged);
  written =
      fill (fd, output->bytes) && fchmod (fd, wanted_mode (output->target)) == 0 && fsync (fd) == 0;
  number = errno;
  if (close (fd) != 0 && written)
    return fail (output, errno, error);
  return written || fail (output, number, error);
}

static gboolean
put_in_place (Output *output, GError **error)
{
  gsize length;
  const void *bytes = g_bytes_get_data (output->bytes, &length);

  if (output->is_device)
    return bf_write_output_file (output->path, bytes, length, error);
  if (g_rename (output->staged, output->target) != 0)
    return fail (output, errno, error);
  g_clear_pointer (&output->staged, g_free);
  return TRUE;
}

/* Puts the devices, or the files, in place. */
static gboolean
put_all (BfOutputBatch *batch, gboolean devices, GError **error)
{
  for (guint i = 0; i < batch->outputs->len; i++)
    {
      Output *output = g_ptr_array_index (batch->outputs, i);

      if (output->is_device == devices && !put_in_place (output, error))
        return FALSE;
    }
  return TRUE;
}

gboolean
bf_output_batch_commit (BfOutputBatch *batch, GError **error)
{
  g_return_val_if_fail (batch != NULL, FALSE);

  for (guint i = 0; i < batch->outputs->len; i++)
    {
      Output *output = g_ptr_array_index (batch->outputs, i);

      if (!output->is_device && !stage (output, error))
        return FALSE;
    }
  return put_all (batch, FALSE, error) && put_all (batch, TRUE, error);
}

/* A path for comparing: of the file where it is there, else of its folder and its name. */
static char *
settle (const char *path)
{
  g_autofree char *folder = g_path_get_dirname (path);
  g_autofree char *name = g_path_get_basename (path);
  g_autofree char *settled_folder = bf_output_resolve_links (folder);

  if (g_file_test (path, G_FILE_TEST_EXISTS))
    return bf_output_resolve_links (path);
  return g_build_filename (settled_folder, name, NULL);
}

gboolean
bf_output_same_file (const char *a, const char *b)
{
  g_autofree char *settled_a = NULL;
  g_autofree char *settled_b = NULL;
  GStatBuf status_a, status_b;

  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  if (g_stat (a, &status_a) == 0 && g_stat (b, &status_b) == 0)
    return status_a.st_dev == status_b.st_dev && status_a.st_ino == status_b.st_ino;
  settled_a = settle (a);
  settled_b = settle (b);
  return g_str_equal (settled_a, settled_b);
}

gboolean
bf_output_has_suffix (const char *path, const char *suffix)
{
  gsize length, tail;

  g_return_val_if_fail (path != NULL && suffix != NULL, FALSE);

  length = strlen (path);
  tail = strlen (suffix);
  return length >= tail && g_ascii_strcasecmp (path + length - tail, suffix) == 0;
}

gboolean
bf_output_make_folder (const char *dir, GError **error)
{
  g_autofree char *shown = g_filename_display_name (dir);

  if (g_mkdir_with_parents (dir, NEW_FOLDER_MODE) == 0)
    return TRUE;
  /* Translators: a folder's name and the system's reason ("Permission denied"). */
  g_set_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE,
               _ ("%s: the folder could not be made: %s"), shown, g_strerror (errno));
  return FALSE;
}
