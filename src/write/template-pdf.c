/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/template-pdf.h"

#include "write/pdf-pages.h"

static BfPdfPage
page_size (guint i, gconstpointer template)
{
  BfTemplatePage page = bf_template_page (template, i);

  return (BfPdfPage){ page.width_mm, page.height_mm, page.label };
}

static void
draw_page (guint i, cairo_t *cr, gconstpointer template)
{
  bf_template_draw_page (template, i, cr);
}

GBytes *
bf_template_pdf (const BfTemplate *template, GError **error)
{
  BfPdfPages pages = { .page = page_size, .draw = draw_page, .data = template };

  g_return_val_if_fail (template != NULL, NULL);
  pages.part = bf_template_fold (template)->part;
  pages.n_pages = bf_template_n_pages (template);
  return bf_pdf_pages (&pages, error);
}
