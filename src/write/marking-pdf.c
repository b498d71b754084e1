/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/marking-pdf.h"

#include "write/pdf-pages.h"

static BfPdfPage
page_size (guint i, gconstpointer pages)
{
  const BfPaper *paper = bf_marking_pages_paper (pages);

  (void)i;
  return (BfPdfPage){ paper->width_mm, paper->height_mm, NULL };
}

static void
draw_page (guint i, cairo_t *cr, gconstpointer pages)
{
  bf_marking_pages_draw (pages, i, cr);
}

GBytes *
bf_marking_pdf (const BfMarkingPages *marking, GError **error)
{
  BfPdfPages pages = { .page = page_size, .draw = draw_page, .data = marking };

  g_return_val_if_fail (marking != NULL, NULL);
  pages.part = bf_marking_pages_part (marking);
  pages.n_pages = bf_marking_pages_n (marking);
  return bf_pdf_pages (&pages, error);
}
