/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gstdio.h>

#include "app/document.h"
#include "core/edit.h"
#include "core/part-file.h"
#include "core/thing.h"
#include "core/first-part.h"

/* A document is opened, changed, undone and saved without any widget. */

typedef struct
{
  char *folder;
  GFile *file;
  BfDocument *document;
  guint changes;
} Fixture;

static BfPart *
tray (void)
{
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  BfThingSizes sizes;
  bf_thing_sizes_init (&sizes, BF_THING_TRAY, BF_UNITS_MM);
  return bf_thing_make (BF_THING_TRAY, &sizes, setup, "Parts tray");
}

static void
count_cb (Fixture *fixture)
{
  fixture->changes++;
}

static void
set_up (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (BfPart) part = tray ();

  fixture->folder = g_dir_make_tmp ("benchfold-XXXXXX", NULL);
  g_assert_nonnull (fixture->folder);
  fixture->file = g_file_new_build_filename (fixture->folder, "tray.benchfold", NULL);
  fixture->document = bf_document_new ();
  bf_document_set_part (fixture->document, part, NULL);
  g_signal_connect_swapped (fixture->document, "changed", G_CALLBACK (count_cb), fixture);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_file_delete (fixture->file, NULL, NULL);
  g_rmdir (fixture->folder);
  g_free (fixture->folder);
  g_object_unref (fixture->file);
  g_assert_finalize_object (fixture->document);
}

static double
front_mm (Fixture *fixture)
{
  return bf_part_find_flange (bf_document_get_part (fixture->document), "front")->length_mm;
}

static void
set_front (Fixture *fixture, double length_mm, const char *key)
{
  g_autoptr (BfPart) part =
      bf_edit_flange_length (bf_document_get_part (fixture->document), "front", length_mm);
  bf_document_apply (fixture->document, part, "Length of front", key);
}

static void
save (Fixture *fixture)
{
  g_autoptr (GError) error = NULL;
  g_assert_true (bf_document_save (fixture->document, fixture->file, &error));
  g_assert_no_error (error);
}

static void
test_empty (void)
{
  g_autoptr (BfDocument) document = bf_document_new ();
  g_autofree char *title = bf_document_dup_title (document);

  g_assert_null (bf_document_get_part (document));
  g_assert_null (bf_document_get_fold (document));
  g_assert_false (bf_document_is_changed (document));
  g_assert_null (bf_document_get_undo_name (document));
  bf_document_undo (document);
  bf_document_redo (document);
  g_assert_cmpstr (title, ==, "New part");
}

/* What was made here and stands in no file yet is worth keeping. */
static void
test_made_counts_as_changed (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_assert_true (bf_document_is_changed (fixture->document));
  save (fixture);
  g_assert_false (bf_document_is_changed (fixture->document));
  g_assert_cmpuint (fixture->changes, ==, 1);
}

static void
test_fold_follows (Fixture *fixture, gconstpointer data)
{
  (void)data;
  double before = bf_document_get_fold (fixture->document)->blank.area_mm2;

  set_front (fixture, 60.0, NULL);
  g_assert_cmpuint (fixture->changes, ==, 1);
  g_assert_cmpfloat (bf_document_get_fold (fixture->document)->blank.area_mm2, >, before);
  bf_document_undo (fixture->document);
  g_assert_cmpfloat_with_epsilon (bf_document_get_fold (fixture->document)->blank.area_mm2, before,
                                  1e-9);
}

static void
test_undo_has_a_name (Fixture *fixture, gconstpointer data)
{
  (void)data;
  set_front (fixture, 60.0, NULL);
  g_assert_cmpstr (bf_document_get_undo_name (fixture->document), ==, "Length of front");
  bf_document_undo (fixture->document);
  g_assert_cmpstr (bf_document_get_redo_name (fixture->document), ==, "Length of front");
  g_assert_cmpfloat_with_epsilon (front_mm (fixture), 40.0, 1e-12);
  bf_document_redo (fixture->document);
  g_assert_cmpfloat_with_epsilon (front_mm (fixture), 60.0, 1e-12);
}

static void
test_steps_merge_until_told (Fixture *fixture, gconstpointer data)
{
  (void)data;
  set_front (fixture, 41.0, "front");
  set_front (fixture, 42.0, "front");
  bf_document_end_step (fixture->document);
  set_front (fixture, 43.0, "front");
  bf_document_undo (fixture->document);
  g_assert_cmpfloat_with_epsilon (front_mm (fixture), 42.0, 1e-12);
  bf_document_undo (fixture->document);
  g_assert_cmpfloat_with_epsilon (front_mm (fixture), 40.0, 1e-12);
}

static void
test_saves_and_loads (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (BfDocument) other = bf_document_new ();
  g_autoptr (GError) error = NULL;
  g_autofree char *title = NULL;

  set_front (fixture, 55.5, NULL);
  save (fixture);
  g_assert_true (bf_document_load (other, fixture->file, &error));
  g_assert_no_error (error);
  g_assert_cmpfloat_with_epsilon (
      bf_part_find_flange (bf_document_get_part (other), "front")->length_mm, 55.5, 1e-12);
  g_assert_false (bf_document_is_changed (other));
  title = bf_document_dup_title (other);
  g_assert_cmpstr (title, ==, "Parts tray");
}

static void
test_bad_file_changes_nothing (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (GError) error = NULL;
  BfPart *before = bf_document_get_part (fixture->document);

  g_assert_true (
      g_file_set_contents (g_file_peek_path (fixture->file), "{ \"format\": 3 }", -1, NULL));
  g_assert_false (bf_document_load (fixture->document, fixture->file, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_FORMAT);
  g_assert_true (bf_document_get_part (fixture->document) == before);
  g_assert_null (bf_document_get_file (fixture->document));
  g_assert_cmpuint (fixture->changes, ==, 0);
}

static void
test_failed_save_stays_changed (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) nowhere = g_file_new_build_filename (fixture->folder, "no", "tray", NULL);

  g_assert_false (bf_document_save (fixture->document, nowhere, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_WRITE);
  g_assert_true (bf_document_is_changed (fixture->document));
  g_assert_null (bf_document_get_file (fixture->document));
}

static void
test_foreign_change_is_noticed (Fixture *fixture, gconstpointer data)
{
  (void)data;
  save (fixture);
  g_assert_false (bf_document_file_is_foreign (fixture->document));
  g_usleep (20000); /* the file's time stamp has to be another one */
  g_assert_true (g_file_set_contents (g_file_peek_path (fixture->file), "{}", -1, NULL));
  g_assert_true (bf_document_file_is_foreign (fixture->document));
  save (fixture);
  g_assert_false (bf_document_file_is_foreign (fixture->document));
}

static void
test_nameless_is_called_by_its_file (Fixture *fixture, gconstpointer data)
{
  (void)data;
  g_autoptr (BfPart) part = bf_edit_name (bf_document_get_part (fixture->document), "");
  g_autofree char *title = NULL;

  bf_document_apply (fixture->document, part, "Name", NULL);
  save (fixture);
  title = bf_document_dup_title (fixture->document);
  g_assert_cmpstr (title, ==, "tray");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name, test) g_test_add ("/document/" name, Fixture, NULL, set_up, test, tear_down)
  g_test_add_func ("/document/empty", test_empty);
  ADD ("made-counts-as-changed", test_made_counts_as_changed);
  ADD ("fold-follows", test_fold_follows);
  ADD ("undo-has-a-name", test_undo_has_a_name);
  ADD ("steps-merge-until-told", test_steps_merge_until_told);
  ADD ("saves-and-loads", test_saves_and_loads);
  ADD ("bad-file-changes-nothing", test_bad_file_changes_nothing);
  ADD ("failed-save-stays-changed", test_failed_save_stays_changed);
  ADD ("foreign-change-is-noticed", test_foreign_change_is_noticed);
  ADD ("nameless-is-called-by-its-file", test_nameless_is_called_by_its_file);
  return g_test_run ();
}
