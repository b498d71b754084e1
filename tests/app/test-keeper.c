/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gstdio.h>

#include "app/keeper.h"
#include "core/edit.h"
#include "core/first-part.h"
#include "core/part-file.h"

/* Work is kept aside while it stands in no file, and found again by the next run. Every test has a
 * state folder of its own (G_TEST_OPTION_ISOLATE_DIRS). */

typedef struct
{
  BfDocument *document;
  BfKeeper *keeper;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  fixture->document = bf_document_new ();
  fixture->keeper = bf_keeper_new (fixture->document);
  bf_document_set_part (fixture->document, part, NULL);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_clear_object (&fixture->keeper);
  g_clear_object (&fixture->document);
  while (g_main_context_iteration (NULL, FALSE))
    continue;
}

static void
set_thickness (Fixture *fixture, double mm)
{
  g_autoptr (BfPart) part = bf_edit_thickness (bf_document_get_part (fixture->document), mm);
  bf_document_apply (fixture->document, part, "Thickness", NULL);
}

static void
end_program (Fixture *fixture)
{
  g_clear_object (&fixture->keeper);
  g_clear_object (&fixture->document);
}

/* How many pieces of work there are that belong to nobody. */
static guint
n_left (void)
{
  g_autoptr (GPtrArray) left = bf_kept_work_find ();
  return left->len;
}

static double
thickness_left (void)
{
  g_autoptr (GPtrArray) left = bf_kept_work_find ();
  g_autoptr (GError) error = NULL;
  g_assert_cmpuint (left->len, ==, 1);
  g_autoptr (BfPart) part = bf_kept_work_read (g_ptr_array_index (left, 0), &error);
  g_assert_no_error (error);
  return part->metal.thickness_mm;
}

static char *
kept_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "benchfold", "kept", NULL);
}

/* Entries of the state folder, whether claimed or not. */
static guint
n_folders (void)
{
  g_autofree char *path = kept_folder ();
  g_autoptr (GDir) dir = g_dir_open (path, 0, NULL);
  guint n = 0;
  while (dir != NULL && g_dir_read_name (dir) != NULL)
    n++;
  return n;
}

static void
test_kept_at_the_end (Fixture *fixture, gconstpointer data)
{
  (void)data;
  set_thickness (fixture, 2.25);
  end_program (fixture);
  g_assert_cmpfloat_with_epsilon (thickness_left (), 2.25, 1e-12);
}

/* By the main loop alone, as while a person works. */
static void
test_kept_while_working (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autofree char *folder = kept_folder ();
  gboolean written = FALSE;

  set_thickness (fixture, 2.25);
  while (!written)
    {
      g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
      const char *name = dir != NULL ? g_dir_read_name (dir) : NULL;
      g_autofree char *path =
          name != NULL ? g_build_filename (folder, name, "part.benchfold", NULL) : NULL;
      written = path != NULL && g_file_test (path, G_FILE_TEST_EXISTS);
      g_main_context_iteration (NULL, FALSE);
      g_usleep (1000);
    }
}

/* Nobody takes work that is still being done, nor work that another already looks at. */
static void
test_not_taken_from_another (Fixture *fixture, gconstpointer data)
{
  (void)data;
  set_thickness (fixture, 2.25);
  bf_keeper_flush (fixture->keeper);
  g_assert_cmpuint (n_left (), ==, 0);
  g_assert_cmpuint (n_folders (), ==, 1);
  end_program (fixture);

  g_autoptr (GPtrArray) first = bf_kept_work_find ();
  g_assert_cmpuint (first->len, ==, 1);
  g_assert_cmpuint (n_left (), ==, 0);
  g_clear_pointer (&first, g_ptr_array_unref);
  g_assert_cmpuint (n_left (), ==, 1);
}

static GFile *
file_to_save_to (void)
{
  g_mkdir_with_parents (g_get_user_data_dir (), 0700);
  return g_file_new_build_filename (g_get_user_data_dir (), "part.benchfold", NULL);
}

static void
test_gone_when_saved (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (GFile) file = file_to_save_to ();
  g_autoptr (GError) error = NULL;

  set_thickness (fixture, 2.25);
  bf_keeper_flush (fixture->keeper);
  g_assert_cmpuint (n_folders (), ==, 1);
  bf_document_save (fixture->document, file, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (n_folders (), ==, 0);

  set_thickness (fixture, 2.5);
  bf_keeper_flush (fixture->keeper);
  g_assert_cmpuint (n_folders (), ==, 1);
  bf_document_undo (fixture->document);
  g_assert_cmpuint (n_folders (), ==, 0);
  end_program (fixture);
  g_assert_cmpuint (n_left (), ==, 0);
}

/* It is known where the work came from, and that the file is another one by now. */
static void
test_taken_up (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (GFile) file = file_to_save_to ();
  g_autoptr (GError) error = NULL;

  bf_document_save (fixture->document, file, &error);
  g_assert_no_error (error);
  set_thickness (fixture, 2.25);
  end_program (fixture);
  g_assert_true (
      g_file_replace_contents (file, "{}", 2, NULL, FALSE, G_FILE_CREATE_NONE, NULL, NULL, &error));

  g_autoptr (GPtrArray) left = bf_kept_work_find ();
  g_assert_cmpuint (left->len, ==, 1);
  fixture->document = bf_document_new ();
  fixture->keeper = bf_keeper_new (fixture->document);
  g_assert_true (bf_keeper_take_up (fixture->keeper, g_ptr_array_index (left, 0), &error));
  g_assert_no_error (error);
  g_assert_true (g_file_equal (bf_document_get_file (fixture->document), file));
  g_assert_true (bf_document_is_changed (fixture->document));
  g_assert_true (bf_document_file_is_foreign (fixture->document));
  g_clear_pointer (&left, g_ptr_array_unref);

  set_thickness (fixture, 2.75);
  end_program (fixture);
  g_assert_cmpfloat_with_epsilon (thickness_left (), 2.75, 1e-12);
}

/* What is no part is left alone: it is for a person to look at. */
static void
test_unreadable (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (GError) error = NULL;

  bf_keeper_flush (fixture->keeper);
  end_program (fixture);
  g_autoptr (GPtrArray) left = bf_kept_work_find ();
  g_assert_cmpuint (left->len, ==, 1);
  g_autofree char *state = kept_folder ();
  g_autoptr (GDir) dir = g_dir_open (state, 0, NULL);
  g_autofree char *path = g_build_filename (state, g_dir_read_name (dir), "part.benchfold", NULL);
  g_assert_true (g_file_set_contents (path, "{", 1, NULL));

  fixture->document = bf_document_new ();
  fixture->keeper = bf_keeper_new (fixture->document);
  g_assert_false (bf_keeper_take_up (fixture->keeper, g_ptr_array_index (left, 0), &error));
  g_assert_nonnull (error);
  g_assert_null (bf_document_get_part (fixture->document));
  g_assert_cmpuint (n_folders (), ==, 1);
}

/* Files that a run left half-written go with the folder, and an empty folder is nothing to offer.
 */
static void
test_leftovers (Fixture *fixture, gconstpointer data)
{
  (void)data;
  end_program (fixture);
  g_autoptr (GPtrArray) left = bf_kept_work_find ();
  g_assert_cmpuint (left->len, ==, 1);
  g_autofree char *state = kept_folder ();
  g_autoptr (GDir) dir = g_dir_open (state, 0, NULL);
  g_autofree char *folder = g_build_filename (state, g_dir_read_name (dir), NULL);
  g_autofree char *half = g_build_filename (folder, "part.benchfold.ABCDEF", NULL);
  g_autofree char *part = g_build_filename (folder, "part.benchfold", NULL);
  g_assert_true (g_file_set_contents (half, "{", 1, NULL));

  g_unlink (part);
  g_clear_pointer (&left, g_ptr_array_unref);
  g_assert_cmpuint (n_left (), ==, 0);
  g_assert_cmpuint (n_folders (), ==, 0);
}

static void
count_cb (guint *n)
{
  ++*n;
}

static void
test_says_that_it_cannot (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autofree char *above = g_build_filename (g_get_user_state_dir (), "benchfold", NULL);
  guint n = 0;

  g_mkdir_with_parents (g_get_user_state_dir (), 0700);
  g_assert_true (g_file_set_contents (above, "in the way", -1, NULL));
  g_signal_connect_swapped (fixture->keeper, "failed", G_CALLBACK (count_cb), &n);
  bf_keeper_flush (fixture->keeper);
  bf_keeper_flush (fixture->keeper);
  g_assert_cmpuint (n, ==, 1);

  g_unlink (above);
  bf_keeper_flush (fixture->keeper);
  g_assert_cmpuint (n_folders (), ==, 1);
}

#define ADD(name, test) g_test_add (name, Fixture, NULL, set_up, test, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  ADD ("/keeper/kept-at-the-end", test_kept_at_the_end);
  ADD ("/keeper/kept-while-working", test_kept_while_working);
  ADD ("/keeper/not-taken-from-another", test_not_taken_from_another);
  ADD ("/keeper/gone-when-saved", test_gone_when_saved);
  ADD ("/keeper/taken-up", test_taken_up);
  ADD ("/keeper/unreadable", test_unreadable);
  ADD ("/keeper/leftovers", test_leftovers);
  ADD ("/keeper/says-that-it-cannot", test_says_that_it_cannot);
  return g_test_run ();
}
