/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gstdio.h>

#include "app/print.h"
#include "core/first-part.h"
#include "core/thing.h"
#include "write/template-pdf.h"

/* What the print dialogue's operation puts on paper is, point for point, the template's own PDF,
 * whose scale tests/write/test-template.py measures. */

static BfFold *
long_channel (void)
{
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  BfThingSizes sizes;
  bf_thing_sizes_init (&sizes, BF_THING_CHANNEL, BF_UNITS_MM);
  sizes.size_mm[BF_THING_LENGTH] = 600.0;
  g_autoptr (BfPart) part = bf_thing_make (BF_THING_CHANNEL, &sizes, setup, "Channel");
  return bf_fold (part);
}

static void export(BfFold *fold,
                   const char *paper,
                   GtkPageOrientation orientation,
                   const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GtkPrintOperation) operation = bf_print_operation_new (fold, NULL, NULL);
  g_autoptr (GtkPageSetup) setup = gtk_page_setup_new ();
  GtkPaperSize *size = gtk_paper_size_new (paper);

  gtk_page_setup_set_paper_size (setup, size);
  gtk_paper_size_free (size);
  gtk_page_setup_set_orientation (setup, orientation);
  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_show_progress (operation, FALSE); /* there is no display */
  gtk_print_operation_set_export_filename (operation, path);
  GtkPrintOperationResult result =
      gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_EXPORT, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpint (result, ==, GTK_PRINT_OPERATION_RESULT_APPLY);
}

static void
write_template (BfFold *fold, const BfPaper *paper, const char *path)
{
  g_autoptr (GError) error = NULL;
  BfTemplateOptions options = { .paper = paper, .units = BF_UNITS_MM };
  g_autoptr (BfTemplate) template = bf_template_new (fold, &options);
  g_autoptr (GBytes) pdf = bf_template_pdf (template, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_set_contents (path, g_bytes_get_data (pdf, NULL),
                                      (gssize)g_bytes_get_size (pdf), &error));
  g_assert_cmpuint (bf_template_n_pages (template), >, 1);
}

/* Every page as a picture, as Poppler sees it. */
static char *
picture_of (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) process = g_subprocess_new (
      G_SUBPROCESS_FLAGS_STDOUT_PIPE, &error, "sh", "-c",
      "pdfinfo \"$0\" | grep -E '^(Pages|Page size)' && pdftoppm -r 72 -gray \"$0\" | sha256sum",
      path, NULL);
  char *printed = NULL;

  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (process, NULL, NULL, &printed, NULL, &error);
  g_assert_no_error (error);
  g_assert_true (g_subprocess_get_successful (process));
  return printed;
}

typedef struct
{
  const char *paper, *name;
  GtkPageOrientation orientation;
} Case;

static const Case cases[] = {
  { GTK_PAPER_NAME_A4, "A4", GTK_PAGE_ORIENTATION_PORTRAIT },
  { GTK_PAPER_NAME_A3, "A3", GTK_PAGE_ORIENTATION_PORTRAIT },
  { GTK_PAPER_NAME_LETTER, "Letter", GTK_PAGE_ORIENTATION_PORTRAIT },
  { GTK_PAPER_NAME_A4, "A4", GTK_PAGE_ORIENTATION_LANDSCAPE },
};

/* A page that someone has turned in the dialogue is turned back: the template turns what is to be
 * turned. */
static void
test_same_as_the_template (gconstpointer data)
{
  const Case *c = data;
  g_autofree char *folder = g_dir_make_tmp ("benchfold-XXXXXX", NULL);
  g_autofree char *printed = g_build_filename (folder, "printed.pdf", NULL);
  g_autofree char *written = g_build_filename (folder, "written.pdf", NULL);
  g_autoptr (BfFold) fold = long_channel ();

  export(fold, c->paper, c->orientation, printed);
  write_template (fold, bf_paper_find (c->name), written);
  g_autofree char *a = picture_of (printed);
  g_autofree char *b = picture_of (written);
  g_assert_cmpstr (a, ==, b);
  g_unlink (printed);
  g_unlink (written);
  g_rmdir (folder);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      gboolean upright = cases[i].orientation == GTK_PAGE_ORIENTATION_PORTRAIT;
      g_autofree char *path =
          g_strdup_printf ("/print/%s%s", cases[i].name, upright ? "" : "-turned");
      g_test_add_data_func (path, &cases[i], test_same_as_the_template);
    }
  return g_test_run ();
}
