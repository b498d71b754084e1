/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/bench-outputs.h"

#include "paint/card.h"
#include "paint/gauges.h"
#include "paint/model.h"
#include "write/pdf-pages.h"

/* Pages of one paper, whatever they show. */
typedef struct
{
  const BfPaper *paper;
  void (*draw) (guint i, cairo_t *cr, gconstpointer data);
  gconstpointer data;
} Pages;

static BfPdfPage
page_size (guint i, gconstpointer data)
{
  const Pages *pages = data;

  (void)i;
  return (BfPdfPage){ pages->paper->width_mm, pages->paper->height_mm, NULL };
}

static void
draw_page (guint i, cairo_t *cr, gconstpointer data)
{
  const Pages *pages = data;

  pages->draw (i, cr, pages->data);
}

static GBytes *
pages_pdf (const BfOutputs *outputs, const Pages *pages, guint n, GError **error)
{
  BfPdfPages pdf = {
    .part = outputs->shown->part, .n_pages = n, .page = page_size, .draw = draw_page, .data = pages
  };

  return bf_pdf_pages (&pdf, error);
}

static gboolean
add (BfOutputBatch *batch, const char *path, GBytes *pdf)
{
  g_autoptr (GBytes) owned = pdf;

  if (pdf == NULL)
    return FALSE;
  bf_output_batch_add (batch, path, pdf);
  return TRUE;
}

static void
draw_card (guint i, cairo_t *cr, gconstpointer card)
{
  bf_card_draw (card, i, cr);
}

gboolean
bf_outputs_add_card (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  g_autoptr (BfWork) work = bf_outputs_work (outputs);
  g_autoptr (BfCard) card = bf_card_new (work, bf_outputs_page_paper (outputs));
  Pages pages = { bf_outputs_page_paper (outputs), draw_card, card };

  return add (batch, path, pages_pdf (outputs, &pages, bf_card_n_pages (card), error));
}

static void
draw_model (guint i, cairo_t *cr, gconstpointer model)
{
  (void)i;
  bf_model_draw (model, cr);
}

gboolean
bf_outputs_add_model (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  g_autoptr (BfModel) model = bf_model_new (outputs->shown, bf_outputs_page_paper (outputs));
  Pages pages = { bf_outputs_page_paper (outputs), draw_model, model };

  return add (batch, path, pages_pdf (outputs, &pages, 1, error));
}

static void
draw_gauges (guint i, cairo_t *cr, gconstpointer gauges)
{
  bf_gauges_draw (gauges, i, cr);
}

gboolean
bf_outputs_add_gauges (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  g_autoptr (BfGauges) gauges = bf_gauges_new (outputs->shown, bf_outputs_page_paper (outputs));
  Pages pages = { bf_outputs_page_paper (outputs), draw_gauges, gauges };

  return add (batch, path, pages_pdf (outputs, &pages, bf_gauges_n_pages (gauges), error));
}
