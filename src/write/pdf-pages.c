/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pdf-pages.h"

#include <cairo-pdf.h>
#include <glib/gi18n.h>

#include "core/setup-sentence.h"
#include "write/output-watch.h"

#define POINTS_PER_MM (72.0 / 25.4)
#define MAKER "Benchfold"

static cairo_status_t
append (void *closure, const unsigned char *bytes, unsigned int length)
{
  g_byte_array_append (closure, bytes, length);
  return CAIRO_STATUS_SUCCESS;
}

static void
set_metadata (cairo_surface_t *surface, const BfPart *part)
{
  g_autofree char *sentence = bf_setup_sentence (part);
  const char *name = part->name != NULL ? part->name : "";

  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE, name);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_SUBJECT, sentence);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_AUTHOR, MAKER);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATOR, MAKER);
}

static void
draw_page (cairo_surface_t *surface, cairo_t *cr, const BfPdfPages *pages, guint i)
{
  BfPdfPage page = pages->page (i, pages->data);

  cairo_pdf_surface_set_size (surface, page.width_mm * POINTS_PER_MM,
                              page.height_mm * POINTS_PER_MM);
  if (page.label != NULL)
    cairo_pdf_surface_set_page_label (surface, page.label);
  cairo_save (cr);
  cairo_scale (cr, POINTS_PER_MM, POINTS_PER_MM);
  pages->draw (i, cr, pages->data);
  cairo_restore (cr);
  cairo_show_page (cr);
}

/* Cairo remembers its first fault: everything is drawn, and asked about once at the end. FALSE with
 * error set where that was stopped. */
static gboolean
draw_pages (cairo_surface_t *surface, cairo_t *cr, const BfPdfPages *pages, GError **error)
{
  for (guint i = 0; i < pages->n_pages; i++)
    {
      if (!bf_output_watch_step (i, pages->n_pages, error))
        return FALSE;
      draw_page (surface, cr, pages, i);
    }
  return bf_output_watch_step (pages->n_pages, pages->n_pages, error);
}

static gboolean
is_drawn (cairo_status_t status, GError **error)
{
  if (status == CAIRO_STATUS_SUCCESS)
    return TRUE;
  /* Translators: what the drawing library says went wrong. */
  g_set_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_DRAWING,
               _ ("the pages could not be drawn: %s"), cairo_status_to_string (status));
  return FALSE;
}

GBytes *
bf_pdf_pages (const BfPdfPages *pages, GError **error)
{
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (append, bytes, 1.0, 1.0);
  cairo_t *cr = cairo_create (surface);
  gboolean goes_on, is_whole;
  cairo_status_t status;

  set_metadata (surface, pages->part);
  goes_on = draw_pages (surface, cr, pages, error);
  status = cairo_status (cr);
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  if (status == CAIRO_STATUS_SUCCESS)
    status = cairo_surface_status (surface);
  cairo_surface_destroy (surface);
  is_whole = goes_on && is_drawn (status, error);
  return is_whole ? g_byte_array_free_to_bytes (g_steal_pointer (&bytes)) : NULL;
}
