/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/print.h"

#include <glib/gi18n.h>

#include "app/message.h"
#include "app/page-preview.h"
#include "app/printers.h"

#define POINTS_PER_INCH 72.0

/* What lives as long as one printing. */
typedef struct
{
  BfFold *fold;
  BfTemplateOptions how;
  GSettings *settings; /* or NULL */
  BfPaper paper;       /* as chosen in the dialogue */
  BfTemplate *template;
} Job;

static void
job_free (Job *job)
{
  g_clear_pointer (&job->template, bf_template_free);
  g_clear_object (&job->settings);
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

/* "" where the operation does not know, as with a file. Returns: (transfer full). */
static char *
printer_of (GtkPrintOperation *operation)
{
  GtkPrintSettings *chosen = gtk_print_operation_get_print_settings (operation);
  const char *name = chosen != NULL ? gtk_print_settings_get_printer (chosen) : NULL;

  return g_strdup (name != NULL ? name : "");
}

static BfTemplate *
lay_out (Job *job, GtkPrintOperation *operation, GtkPrintContext *context)
{
  g_autofree char *printer = printer_of (operation);
  BfTemplateOptions options = job->how;

  read_paper (&job->paper, context);
  options.paper = &job->paper;
  options.units = job->fold->part->units;
  options.printer = bf_printers_scale (job->settings, printer, job->paper.name);
  return bf_template_new (job->fold, &options);
}

static void
begin_cb (GtkPrintOperation *operation, GtkPrintContext *context, gpointer user_data)
{
  Job *job = user_data;

  g_clear_pointer (&job->template, bf_template_free);
  job->template = lay_out (job, operation, context);
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
bf_print_operation_new (BfFold *fold, const BfTemplateOptions *how, GSettings *settings)
{
  g_return_val_if_fail (fold != NULL, NULL);

  GtkPrintOperation *operation = gtk_print_operation_new ();
  Job *job = g_new0 (Job, 1);
  const char *name = fold->part->name;

  job->fold = bf_fold_ref (fold);
  if (how != NULL)
    job->how = *how;
  g_set_object (&job->settings, settings);
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

/* How many pages went out is not known here: a range may have been chosen. */
static void
done_cb (GtkPrintOperation *operation, GtkPrintOperationResult result, BfWindow *window)
{
  g_autoptr (GError) error = NULL;

  if (result == GTK_PRINT_OPERATION_RESULT_APPLY)
    {
      g_autofree char *printer = printer_of (operation);

      bf_printers_note_last (bf_window_get_settings (window), printer);
      bf_window_notify (window,
                        _ ("The template went to the printer. Measure the bars on every page "
                           "before you trust it."));
    }
  if (result != GTK_PRINT_OPERATION_RESULT_ERROR)
    return;
  gtk_print_operation_get_error (operation, &error);
  bf_message_show (GTK_WINDOW (window), _ ("The template was not printed"),
                   error != NULL ? error->message : NULL);
}

static GtkPageSetup *
page_setup_of (const BfPaper *paper)
{
  GtkPageSetup *setup = gtk_page_setup_new ();
  GtkPaperSize *size = gtk_paper_size_new_custom (paper->name, paper->name, paper->width_mm,
                                                  paper->height_mm, GTK_UNIT_MM);

  gtk_page_setup_set_paper_size (setup, size);
  gtk_paper_size_free (size);
  return setup;
}

/* The toolkit will not begin a preview that has nothing to draw on. */
static void
set_something_to_draw_on (GtkPrintContext *context)
{
  cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR, NULL);
  cairo_t *cr = cairo_create (surface);

  gtk_print_context_set_cairo_context (context, cr, POINTS_PER_INCH, POINTS_PER_INCH);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

/* In place of a viewer that may not be there: the pages as they would come out, on that paper. */
static gboolean
preview_cb (GtkPrintOperation *operation,
            GtkPrintOperationPreview *preview,
            GtkPrintContext *context,
            GtkWindow *parent,
            gpointer user_data)
{
  Job *job = user_data;

  set_something_to_draw_on (context);
  g_autoptr (BfTemplate) template = lay_out (job, operation, context);
  GtkWindow *window = bf_page_preview_show (parent, template);
  g_signal_connect_object (window, "destroy", G_CALLBACK (gtk_print_operation_preview_end_preview),
                           preview, G_CONNECT_SWAPPED);
  return TRUE;
}

void
bf_print_template (BfWindow *window, BfFold *fold)
{
  g_return_if_fail (BF_IS_WINDOW (window) && fold != NULL);

  g_autoptr (GtkPrintOperation) operation = bf_print_operation_new (
      fold, &bf_window_get_how (window)->template, bf_window_get_settings (window));
  g_autoptr (GtkPageSetup) setup = page_setup_of (bf_window_get_paper (window));

  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_allow_async (operation, TRUE);
  g_signal_connect (operation, "preview", G_CALLBACK (preview_cb),
                    g_object_get_data (G_OBJECT (operation), "job"));
  g_signal_connect_object (operation, "done", G_CALLBACK (done_cb), window, 0);
  gtk_print_operation_run (operation, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, GTK_WINDOW (window),
                           NULL);
}
