/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/print.h"

#include <glib/gi18n.h>

#include "app/message.h"
#include "paint/template.h"

/* What lives as long as one printing. */
typedef struct
{
  BfFold *fold;
  BfPaper paper; /* as chosen in the dialogue */
  BfTemplate *template;
} Job;

static void
job_free (Job *job)
{
  g_clear_pointer (&job->template, bf_template_free);
  bf_fold_unref (job->fold);
  g_free (job);
}

/* The paper as it is held upright, whichever way round it lies in the printer. */
static void
read_paper (BfPaper *paper, GtkPrintContext *context)
{
  GtkPageSetup *setup = gtk_print_context_get_page_setup (context);
  double a = gtk_page_setup_get_paper_width (setup, GTK_UNIT_MM);
  double b = gtk_page_setup_get_paper_height (setup, GTK_UNIT_MM);

  paper->name = gtk_paper_size_get_display_name (gtk_page_setup_get_paper_size (setup));
  paper->width_mm = MIN (a, b);
  paper->height_mm = MAX (a, b);
}

static void
begin_cb (GtkPrintOperation *operation, GtkPrintContext *context, gpointer user_data)
{
  Job *job = user_data;

  read_paper (&job->paper, context);
  BfTemplateOptions options = { .paper = &job->paper, .units = job->fold->part->units };
  g_clear_pointer (&job->template, bf_template_free);
  job->template = bf_template_new (job->fold, &options);
  gtk_print_operation_set_n_pages (operation, (int)bf_template_n_pages (job->template));
}

/* Every page is held upright; what has to be turned, the template turns. */
static void
page_setup_cb (GtkPrintOperation *operation,
               GtkPrintContext *context,
               int page,
               GtkPageSetup *setup,
               gpointer user_data)
{
  (void)operation;
  (void)context;
  (void)page;
  (void)user_data;
  double width = gtk_page_setup_get_paper_width (setup, GTK_UNIT_MM);
  double height = gtk_page_setup_get_paper_height (setup, GTK_UNIT_MM);
  GtkPageOrientation now = gtk_page_setup_get_orientation (setup);
  gboolean lies =
      now == GTK_PAGE_ORIENTATION_LANDSCAPE || now == GTK_PAGE_ORIENTATION_REVERSE_LANDSCAPE;

  if (width > height)
    gtk_page_setup_set_orientation (setup, lies ? GTK_PAGE_ORIENTATION_PORTRAIT
                                                : GTK_PAGE_ORIENTATION_LANDSCAPE);
}

static void
draw_cb (GtkPrintOperation *operation, GtkPrintContext *context, int page, gpointer user_data)
{
  Job *job = user_data;
  (void)operation;
  bf_template_draw_page (job->template, (guint)page, gtk_print_context_get_cairo_context (context));
}

GtkPrintOperation *
bf_print_operation_new (BfFold *fold)
{
  g_return_val_if_fail (fold != NULL, NULL);

  GtkPrintOperation *operation = gtk_print_operation_new ();
  Job *job = g_new0 (Job, 1);
  const char *name = fold->part->name;

  job->fold = bf_fold_ref (fold);
  g_object_set_data_full (G_OBJECT (operation), "job", job, (GDestroyNotify)job_free);
  gtk_print_operation_set_unit (operation, GTK_UNIT_MM);
  gtk_print_operation_set_use_full_page (operation, TRUE);
  gtk_print_operation_set_embed_page_setup (operation, TRUE);
  gtk_print_operation_set_show_progress (operation, TRUE);
  gtk_print_operation_set_job_name (operation,
                                    name != NULL && name[0] != '\0' ? name : _ ("Template"));
  g_signal_connect (operation, "begin-print", G_CALLBACK (begin_cb), job);
  g_signal_connect (operation, "request-page-setup", G_CALLBACK (page_setup_cb), job);
  g_signal_connect (operation, "draw-page", G_CALLBACK (draw_cb), job);
  return operation;
}

static void
done_cb (GtkPrintOperation *operation, GtkPrintOperationResult result, GtkWindow *parent)
{
  g_autoptr (GError) error = NULL;

  if (result != GTK_PRINT_OPERATION_RESULT_ERROR)
    return;
  gtk_print_operation_get_error (operation, &error);
  bf_message_show (parent, _ ("The template was not printed"),
                   error != NULL ? error->message : NULL);
}

void
bf_print_template (GtkWindow *parent, BfFold *fold)
{
  g_return_if_fail (fold != NULL);

  g_autoptr (GtkPrintOperation) operation = bf_print_operation_new (fold);

  gtk_print_operation_set_allow_async (operation, TRUE);
  g_signal_connect_object (operation, "done", G_CALLBACK (done_cb), parent, 0);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, parent, NULL);
}
