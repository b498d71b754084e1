/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <glib/gstdio.h>

#include "write/output-file.h"

typedef struct
{
  char *folder;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  (void)data;
  fixture->folder = g_dir_make_tmp ("benchfold-output-XXXXXX", NULL);
  g_assert_nonnull (fixture->folder);
}

static guint
count_files (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint n = 0;

  while (g_dir_read_name (dir) != NULL)
    n++;
  return n;
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GDir) dir = g_dir_open (fixture->folder, 0, NULL);
  const char *name;

  (void)data;
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (fixture->folder, name, NULL);
      g_remove (path);
    }
  g_rmdir (fixture->folder);
  g_free (fixture->folder);
}

static void
assert_holds (const char *path, const char *wanted)
{
  g_autofree char *text = NULL;

  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  g_assert_cmpstr (text, ==, wanted);
}

static gboolean
write_text (const char *path, const char *text, GError **error)
{
  return bf_write_output_file (path, text, strlen (text), error);
}

/* A new file, and one in place of another: whole, and nothing left beside it. */
static void
test_writes (Fixture *fixture, gconstpointer data)
{
  g_autofree char *path = g_build_filename (fixture->folder, "Träy.pdf", NULL);
  g_autoptr (GError) error = NULL;

  (void)data;
  g_assert_true (write_text (path, "first, and longer", &error));
  g_assert_no_error (error);
  assert_holds (path, "first, and longer");
  g_assert_true (write_text (path, "second", &error));
  assert_holds (path, "second");
  g_assert_true (bf_write_output_file (path, NULL, 0, &error));
  assert_holds (path, "");
  g_assert_cmpuint (count_files (fixture->folder), ==, 1);
}

/* Everybody that the umask lets may read it, as with any program's output. */
static void
test_mode (Fixture *fixture, gconstpointer data)
{
  g_autofree char *path = g_build_filename (fixture->folder, "out.svg", NULL);
  mode_t mask = umask (022);
  GStatBuf status;

  (void)data;
  g_assert_true (write_text (path, "x", NULL));
  umask (mask);
  g_assert_cmpint (g_stat (path, &status), ==, 0);
  g_assert_cmpuint (status.st_mode & 0777, ==, 0644);
}

static void
test_link (Fixture *fixture, gconstpointer data)
{
  g_autofree char *target = g_build_filename (fixture->folder, "target.dxf", NULL);
  g_autofree char *link = g_build_filename (fixture->folder, "link.dxf", NULL);

  (void)data;
  g_assert_true (write_text (target, "old", NULL));
  g_assert_cmpint (symlink (target, link), ==, 0);
  g_assert_true (write_text (link, "new", NULL));
  g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
  assert_holds (target, "new");
}

/* What can't be written: the error names the file and the reason, and nothing is left. */
static void
test_failures (Fixture *fixture, gconstpointer data)
{
  g_autofree char *missing = g_build_filename (fixture->folder, "no", "such", "out.pdf", NULL);
  const struct
  {
    const char *path, *reason;
  } failures[] = { { missing, "No such file or directory" },
                   { fixture->folder, "Is a directory" },
                   { "/proc/benchfold.pdf", "No such file or directory" },
                   { "", "No such file or directory" } };

  (void)data;
  for (guint i = 0; i < G_N_ELEMENTS (failures); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autofree char *wanted =
          g_strdup_printf ("%s: could not be written: %s", failures[i].path, failures[i].reason);
      g_assert_false (write_text (failures[i].path, "x", &error));
      g_assert_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE);
      g_assert_cmpstr (error->message, ==, wanted);
    }
  g_assert_cmpuint (count_files (fixture->folder), ==, 0);
}

/* A device can't be replaced, and must not be: it is written to. */
static void
test_device (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  GStatBuf status;

  (void)fixture;
  (void)data;
  g_assert_true (write_text ("/dev/null", "x", &error));
  g_assert_no_error (error);
  g_assert_cmpint (g_stat ("/dev/null", &status), ==, 0);
  g_assert_true (S_ISCHR (status.st_mode));
  g_assert_false (write_text ("/dev/full", "x", &error));
  g_assert_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE);
  g_assert_nonnull (strstr (error->message, "No space left on device"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add ("/output-file/writes", Fixture, NULL, set_up, test_writes, tear_down);
  g_test_add ("/output-file/mode", Fixture, NULL, set_up, test_mode, tear_down);
  g_test_add ("/output-file/link", Fixture, NULL, set_up, test_link, tear_down);
  g_test_add ("/output-file/failures", Fixture, NULL, set_up, test_failures, tear_down);
  g_test_add ("/output-file/device", Fixture, NULL, set_up, test_device, tear_down);
  return g_test_run ();
}
