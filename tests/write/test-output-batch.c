/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/output-batch.h"

#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <glib/gstdio.h>

#include "write/output-file.h"

typedef struct
{
  char *dir;
} Fixture;

static void
set_up (Fixture *fixture, const void *data)
{
  (void)data;
  fixture->dir = g_dir_make_tmp ("benchfold-batch-XXXXXX", NULL);
  g_assert_nonnull (fixture->dir);
}

/* Empties one level of folders below too. */
static void
remove_all (const char *dir)
{
  GDir *open = g_dir_open (dir, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (open)) != NULL)
    {
      g_autofree char *path = g_build_filename (dir, name, NULL);

      if (g_remove (path) != 0)
        remove_all (path);
    }
  g_dir_close (open);
  g_rmdir (dir);
}

static void
tear_down (Fixture *fixture, const void *data)
{
  (void)data;
  remove_all (fixture->dir);
  g_free (fixture->dir);
}

static char *
in (const Fixture *fixture, const char *name)
{
  return g_build_filename (fixture->dir, name, NULL);
}

static void
add (BfOutputBatch *batch, const char *path, const char *text)
{
  g_autoptr (GBytes) bytes = g_bytes_new_static (text, strlen (text));

  bf_output_batch_add (batch, path, bytes);
}

static void
assert_holds (const char *path, const char *text)
{
  g_autofree char *found = NULL;

  g_assert_true (g_file_get_contents (path, &found, NULL, NULL));
  g_assert_cmpstr (found, ==, text);
}

static guint
count_files (const char *dir)
{
  GDir *open = g_dir_open (dir, 0, NULL);
  guint n = 0;

  while (g_dir_read_name (open) != NULL)
    n++;
  g_dir_close (open);
  return n;
}

static void
test_commit (Fixture *fixture, const void *data)
{
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
  g_autofree char *a = in (fixture, "a.svg");
  g_autofree char *b = in (fixture, "b.dxf");
  g_autoptr (GError) error = NULL;

  (void)data;
  g_file_set_contents (a, "earlier", -1, NULL);
  add (batch, a, "new a");
  add (batch, b, "");
  assert_holds (a, "earlier");
  g_assert_true (bf_output_batch_commit (batch, &error));
  g_assert_no_error (error);
  assert_holds (a, "new a");
  assert_holds (b, "");
  g_assert_cmpuint (count_files (fixture->dir), ==, 2);
}

/* What can't be written, wherever it stands in the order, keeps everything as it was. */
static void
test_failure (Fixture *fixture, const void *data)
{
  static const char *const bad[] = { "no-folder/c.svg", "folder", "/proc/benchfold.svg" };

  (void)data;
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
      g_autofree char *folder = in (fixture, "folder");
      g_autofree char *good = in (fixture, "good.svg");
      g_autofree char *fresh = in (fixture, "fresh.svg");
      g_autofree char *target = bad[i][0] == '/' ? g_strdup (bad[i]) : in (fixture, bad[i]);
      g_autofree char *start = g_strconcat (target, ": ", NULL);
      g_autoptr (GError) error = NULL;

      g_mkdir_with_parents (folder, 0777);
      g_file_set_contents (good, "earlier", -1, NULL);
      add (batch, good, "new");
      add (batch, target, "new");
      add (batch, fresh, "new");
      g_assert_false (bf_output_batch_commit (batch, &error));
      g_assert_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE);
      g_assert_true (g_str_has_prefix (error->message, start));
      g_clear_pointer (&batch, bf_output_batch_free);
      assert_holds (good, "earlier");
      g_assert_cmpuint (count_files (fixture->dir), ==, 2);
      g_assert_cmpuint (count_files (folder), ==, 0);
    }
}

static void
test_mode (Fixture *fixture, const void *data)
{
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
  g_autofree char *kept = in (fixture, "kept");
  g_autofree char *fresh = in (fixture, "fresh");
  mode_t mask = umask (027);
  GStatBuf status;

  (void)data;
  g_file_set_contents (kept, "earlier", -1, NULL);
  g_chmod (kept, 0604);
  add (batch, kept, "new");
  add (batch, fresh, "new");
  g_assert_true (bf_output_batch_commit (batch, NULL));
  umask (mask);
  g_stat (kept, &status);
  g_assert_cmpuint (status.st_mode & 0777, ==, 0604);
  g_stat (fresh, &status);
  g_assert_cmpuint (status.st_mode & 0777, ==, 0640);
}

static void
test_link (Fixture *fixture, const void *data)
{
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
  g_autofree char *file = in (fixture, "file");
  g_autofree char *link = in (fixture, "link");

  (void)data;
  g_file_set_contents (file, "earlier", -1, NULL);
  g_assert_cmpint (symlink ("file", link), ==, 0);
  add (batch, link, "new");
  g_assert_true (bf_output_batch_commit (batch, NULL));
  assert_holds (file, "new");
  g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
}

static void
test_device (Fixture *fixture, const void *data)
{
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
  g_autoptr (BfOutputBatch) full = bf_output_batch_new ();
  g_autoptr (GError) error = NULL;

  (void)data;
  add (batch, "/dev/null", "gone");
  g_assert_true (bf_output_batch_commit (batch, &error));
  g_assert_no_error (error);
  add (full, "/dev/full", "no room");
  g_assert_false (bf_output_batch_commit (full, &error));
  g_assert_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE);
  g_assert_cmpuint (count_files (fixture->dir), ==, 0);
}

static void
test_same_file (Fixture *fixture, const void *data)
{
  g_autofree char *file = in (fixture, "file");
  g_autofree char *spelled = in (fixture, "./folder/../file");
  g_autofree char *link = in (fixture, "link");
  g_autofree char *hard = in (fixture, "hard");
  g_autofree char *folder = in (fixture, "folder");
  g_autofree char *absent = in (fixture, "absent");
  g_autofree char *absent_spelled = in (fixture, "folder/../absent");

  (void)data;
  g_mkdir_with_parents (folder, 0777);
  g_file_set_contents (file, "text", -1, NULL);
  g_assert_cmpint (symlink (file, link), ==, 0);
  g_assert_cmpint (linkat (AT_FDCWD, file, AT_FDCWD, hard, 0), ==, 0);

  g_assert_true (bf_output_same_file (file, spelled));
  g_assert_true (bf_output_same_file (file, link));
  g_assert_true (bf_output_same_file (hard, file));
  g_assert_true (bf_output_same_file (absent, absent_spelled));
  g_assert_true (bf_output_same_file ("here.svg", "./here.svg"));
  g_assert_false (bf_output_same_file (file, absent));
  g_assert_false (bf_output_same_file ("here.svg", "there.svg"));
}

static void
test_suffix (void)
{
  g_assert_true (bf_output_has_suffix ("a.svg", ".svg"));
  g_assert_true (bf_output_has_suffix ("A.SVG", ".svg"));
  g_assert_false (bf_output_has_suffix ("a.svg.bak", ".svg"));
  g_assert_false (bf_output_has_suffix ("svg", ".svg"));
}

static void
add_test (const char *path, void (*test) (Fixture *, const void *))
{
  g_test_add (path, Fixture, NULL, set_up, test, tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  add_test ("/write/output-batch/commit", test_commit);
  add_test ("/write/output-batch/failure", test_failure);
  add_test ("/write/output-batch/mode", test_mode);
  add_test ("/write/output-batch/link", test_link);
  add_test ("/write/output-batch/device", test_device);
  add_test ("/write/output-batch/same-file", test_same_file);
  g_test_add_func ("/write/output-batch/suffix", test_suffix);
  return g_test_run ();
}
