/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/strip-pdf.h"

#include "write/pdf-pages.h"

static BfPdfPage
page_size (guint i, gconstpointer strips)
{
  const BfPaper *paper = bf_strip_page_paper (strips);

  (void)i;
  return (BfPdfPage){ paper->width_mm, paper->height_mm, NULL };
}

static void
draw_page (guint i, cairo_t *cr, gconstpointer strips)
{
  (void)i;
  bf_strip_page_draw (strips, cr);
}

GBytes *
bf_strip_pdf (const BfStripPage *strips, GError **error)
{
  BfPdfPages pages = { .n_pages = 1, .page = page_size, .draw = draw_page, .data = strips };

  g_return_val_if_fail (strips != NULL, NULL);
  pages.part = bf_strip_page_fold (strips)->part;
  return bf_pdf_pages (&pages, error);
}
