/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw-page.h"

#include "paint/card.h"
#include "paint/gauges.h"
#include "paint/marking-pages.h"
#include "paint/model.h"
#include "paint/pack-page.h"
#include "paint/strip-page.h"
#include "paint/template.h"

void
draw_card (gconstpointer card, guint page, cairo_t *cr)
{
  bf_card_draw (card, page, cr);
}

void
draw_gauges (gconstpointer gauges, guint page, cairo_t *cr)
{
  bf_gauges_draw (gauges, page, cr);
}

void
draw_marking (gconstpointer marking, guint page, cairo_t *cr)
{
  bf_marking_pages_draw (marking, page, cr);
}

void
draw_template (gconstpointer template, guint page, cairo_t *cr)
{
  bf_template_draw_page (template, page, cr);
}

void
draw_model (gconstpointer model, guint page, cairo_t *cr)
{
  g_assert_cmpuint (page, ==, 0);
  bf_model_draw (model, cr);
}

void
draw_strip (gconstpointer strip, guint page, cairo_t *cr)
{
  g_assert_cmpuint (page, ==, 0);
  bf_strip_page_draw (strip, cr);
}

void
draw_pack (gconstpointer pack, guint page, cairo_t *cr)
{
  const PackPage *asked = pack;
  BfPackCheck check;

  g_assert_cmpuint (page, ==, 0);
  bf_pack_check (asked->fold, &check);
  bf_pack_page_draw (asked->fold, &check, asked->paper, cr);
}
