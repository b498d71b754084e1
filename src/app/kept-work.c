/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/kept-work.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/file.h>
#include <unistd.h>

#include <glib/gstdio.h>

#include "core/part-file.h"

#define PART_NAME "part" BF_PART_FILE_SUFFIX
#define ORIGIN_NAME "origin"
#define LOCK_NAME "lock"
#define FOLDER_MODE 0700
#define LOCK_MODE 0600

struct _BfKeptWork
{
  gatomicrefcount ref_count;
  char *folder;
  int lock; /* a descriptor that holds the lock, −1 for none */
  GFile *file;
  char *tag;
};

static char *
state_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "benchfold", "kept", NULL);
}

static BfKeptWork *
work_new (const char *folder, int lock)
{
  BfKeptWork *work = g_new0 (BfKeptWork, 1);

  g_atomic_ref_count_init (&work->ref_count);
  work->folder = g_strdup (folder);
  work->lock = lock;
  return work;
}

BfKeptWork *
bf_kept_work_ref (BfKeptWork *work)
{
  g_return_val_if_fail (work != NULL, NULL);

  g_atomic_ref_count_inc (&work->ref_count);
  return work;
}

void
bf_kept_work_unref (BfKeptWork *work)
{
  if (work == NULL || !g_atomic_ref_count_dec (&work->ref_count))
    return;
  if (work->lock >= 0)
    close (work->lock);
  g_free (work->folder);
  g_free (work->tag);
  g_clear_object (&work->file);
  g_free (work);
}

/* −1 where the folder has no lock, or another program holds it. */
static int
take_lock (const char *folder, int flags)
{
  g_autofree char *path = g_build_filename (folder, LOCK_NAME, NULL);
  int lock = g_open (path, O_RDWR | O_CLOEXEC | flags, LOCK_MODE);

  if (lock < 0 || flock (lock, LOCK_EX | LOCK_NB) == 0)
    return lock;
  close (lock);
  return -1;
}

static BfKeptWork *
fail (GError **error, const char *path)
{
  int reason = errno;
  g_set_error (error, G_FILE_ERROR, (int)g_file_error_from_errno (reason), "%s: %s", path,
               g_strerror (reason));
  return NULL;
}

/* A folder is not seen by others before it is locked: until then its name begins with a point. */
BfKeptWork *
bf_kept_work_new (GError **error)
{
  g_autofree char *state = state_folder ();
  g_autofree char *hidden = g_build_filename (state, ".XXXXXX", NULL);

  if (g_mkdir_with_parents (state, FOLDER_MODE) != 0)
    return fail (error, state);
  if (g_mkdtemp_full (hidden, FOLDER_MODE) == NULL)
    return fail (error, state);

  g_autofree char *name = g_path_get_basename (hidden);
  g_autofree char *folder = g_build_filename (state, name + 1, NULL);
  int lock = take_lock (hidden, O_CREAT);
  g_autoptr (BfKeptWork) work = work_new (hidden, lock);
  if (lock >= 0 && g_rename (hidden, folder) == 0)
    {
      g_free (work->folder);
      work->folder = g_steal_pointer (&folder);
      return g_steal_pointer (&work);
    }
  fail (error, hidden);
  bf_kept_work_remove (work);
  return NULL;
}

/* Where the work came from: an address and an etag, a line each, either of which may be empty. */
static void
read_origin (BfKeptWork *work)
{
  g_autofree char *path = g_build_filename (work->folder, ORIGIN_NAME, NULL);
  g_autofree char *text = NULL;

  if (!g_file_get_contents (path, &text, NULL, NULL))
    return;
  g_auto (GStrv) lines = g_strsplit (text, "\n", 3);
  if (g_strv_length (lines) < 2)
    return;
  if (lines[0][0] != '\0')
    work->file = g_file_new_for_uri (lines[0]);
  if (lines[1][0] != '\0')
    work->tag = g_strdup (lines[1]);
}

/* What lies in that folder and belongs to nobody; NULL where there is nothing to go on with. */
static BfKeptWork *
claim (const char *folder)
{
  g_autofree char *part = g_build_filename (folder, PART_NAME, NULL);
  int lock = take_lock (folder, 0);

  if (lock < 0)
    return NULL;
  g_autoptr (BfKeptWork) work = work_new (folder, lock);
  if (!g_file_test (part, G_FILE_TEST_IS_REGULAR))
    {
      bf_kept_work_remove (work);
      return NULL;
    }
  read_origin (work);
  return g_steal_pointer (&work);
}

static int
compare_by_age (gconstpointer a, gconstpointer b)
{
  g_autoptr (GDateTime) x = bf_kept_work_get_time (*(BfKeptWork *const *)a);
  g_autoptr (GDateTime) y = bf_kept_work_get_time (*(BfKeptWork *const *)b);

  return x != NULL && y != NULL ? g_date_time_compare (y, x) : 0;
}

GPtrArray *
bf_kept_work_find (void)
{
  GPtrArray *found = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_kept_work_unref);
  g_autofree char *state = state_folder ();
  g_autoptr (GDir) dir = g_dir_open (state, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *folder = g_build_filename (state, name, NULL);
      BfKeptWork *work = name[0] != '.' ? claim (folder) : NULL;
      if (work != NULL)
        g_ptr_array_add (found, work);
    }
  g_ptr_array_sort (found, compare_by_age);
  return found;
}

/* Whatever lies there, half-written files of a run that was ended too; the lock last. */
void
bf_kept_work_remove (BfKeptWork *work)
{
  g_return_if_fail (work != NULL);

  g_autoptr (GDir) dir = g_dir_open (work->folder, 0, NULL);
  g_autofree char *lock = g_build_filename (work->folder, LOCK_NAME, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (work->folder, name, NULL);
      if (!g_str_equal (name, LOCK_NAME))
        g_unlink (path);
    }
  g_unlink (lock);
  g_rmdir (work->folder);
}

gboolean
bf_kept_work_set_origin (BfKeptWork *work, GFile *file, const char *tag, GError **error)
{
  g_return_val_if_fail (work != NULL, FALSE);

  g_autofree char *path = g_build_filename (work->folder, ORIGIN_NAME, NULL);
  g_autofree char *uri = file != NULL ? g_file_get_uri (file) : g_strdup ("");
  g_autofree char *text = g_strdup_printf ("%s\n%s\n", uri, tag != NULL ? tag : "");

  g_set_object (&work->file, file);
  g_free (work->tag);
  work->tag = g_strdup (tag);
  return g_file_set_contents (path, text, -1, error);
}

GFile *
bf_kept_work_get_file (const BfKeptWork *work)
{
  g_return_val_if_fail (work != NULL, NULL);
  return work->file;
}

const char *
bf_kept_work_get_tag (const BfKeptWork *work)
{
  g_return_val_if_fail (work != NULL, NULL);
  return work->tag;
}

gboolean
bf_kept_work_write (BfKeptWork *work, const BfPart *part, GError **error)
{
  g_return_val_if_fail (work != NULL && part != NULL, FALSE);

  g_autoptr (GFile) file = g_file_new_build_filename (work->folder, PART_NAME, NULL);
  return bf_part_save (part, file, error);
}

BfPart *
bf_kept_work_read (const BfKeptWork *work, GError **error)
{
  g_return_val_if_fail (work != NULL, NULL);

  g_autoptr (GFile) file = g_file_new_build_filename (work->folder, PART_NAME, NULL);
  return bf_part_load (file, error);
}

GDateTime *
bf_kept_work_get_time (const BfKeptWork *work)
{
  g_return_val_if_fail (work != NULL, NULL);

  g_autofree char *path = g_build_filename (work->folder, PART_NAME, NULL);
  GStatBuf status;
  return g_stat (path, &status) == 0 ? g_date_time_new_from_unix_local (status.st_mtime) : NULL;
}
