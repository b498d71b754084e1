/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/read-file.h"

#include <string.h>
#include <sys/stat.h>

#include <glib/gstdio.h>

#include "core/part-file.h"

#define MAX_BYTES 16

static char *folder;

/* What is read of a file in the test's folder that holds that; NULL for text: there is none. */
static GBytes *
read_back (const char *text, GError **error)
{
  g_autofree char *path = g_build_filename (folder, "file", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  GBytes *bytes;

  if (text != NULL)
    g_assert_true (g_file_set_contents (path, text, -1, NULL));
  bytes = bf_read_file (file, MAX_BYTES, error);
  g_unlink (path);
  return bytes;
}

/* All of a file; of one that is too long one byte more than is asked for, and no further. */
static void
test_read (void)
{
  static const struct
  {
    const char *text;
    gsize n_bytes;
  } rows[] = { { "", 0 },
               { "a", 1 },
               { "0123456789abcdef", 16 },
               { "0123456789abcdefg", 17 },
               { "0123456789abcdefgh", 17 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (GBytes) bytes = read_back (rows[i].text, &error);
      gsize size;
      const char *data;

      g_assert_no_error (error);
      data = g_bytes_get_data (bytes, &size);
      g_assert_cmpuint (size, ==, rows[i].n_bytes);
      g_assert_true (size == 0 || memcmp (data, rows[i].text, size) == 0);
    }
}

static void
assert_refused (const char *path, const char *words)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = bf_read_file (file, MAX_BYTES, &error);

  g_assert_null (bytes);
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_READ);
  g_assert_cmpstr (error->message, ==, words);
}

/* What gives no end of bytes, or waits for somebody to write, is not read at all. */
static void
test_refused (void)
{
  g_autofree char *pipe = g_build_filename (folder, "pipe", NULL);
  g_autofree char *missing = g_build_filename (folder, "missing", NULL);

  g_assert_cmpint (mkfifo (pipe, 0600), ==, 0);
  assert_refused (pipe, "this is not an ordinary file");
  assert_refused ("/dev/zero", "this is not an ordinary file");
  assert_refused (folder, "this is a folder, not a file");
  assert_refused (missing, "there is no such file");
  g_unlink (pipe);
}

/* Nobody may read it; for the superuser, who may, there is nothing to be tested. */
static void
test_forbidden (void)
{
  g_autofree char *path = g_build_filename (folder, "secret", NULL);

  g_assert_true (g_file_set_contents (path, "secret", -1, NULL));
  g_assert_cmpint (g_chmod (path, 0), ==, 0);
  if (g_access (path, R_OK) == 0)
    g_test_skip ("this user may read everything");
  else
    assert_refused (path, "you are not allowed to read this file");
  g_unlink (path);
}

/* A link to a file is the file. */
static void
test_link (void)
{
  g_autofree char *path = g_build_filename (folder, "file", NULL);
  g_autofree char *name = g_build_filename (folder, "link", NULL);
  g_autoptr (GFile) link = g_file_new_for_path (name);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = NULL;

  g_assert_true (g_file_set_contents (path, "part", -1, NULL));
  g_assert_true (g_file_make_symbolic_link (link, path, NULL, NULL));
  bytes = bf_read_file (link, MAX_BYTES, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (g_bytes_get_size (bytes), ==, 4);
  g_unlink (name);
  g_unlink (path);
}

int
main (int argc, char **argv)
{
  int result;

  g_test_init (&argc, &argv, NULL);
  folder = g_dir_make_tmp ("benchfold-read-XXXXXX", NULL);
  g_test_add_func ("/read-file/read", test_read);
  g_test_add_func ("/read-file/refused", test_refused);
  g_test_add_func ("/read-file/forbidden", test_forbidden);
  g_test_add_func ("/read-file/link", test_link);
  result = g_test_run ();
  g_rmdir (folder);
  g_free (folder);
  return result;
}
