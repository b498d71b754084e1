/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/card.h"

#include <glib/gi18n.h>

#include "paint/card-rows.h"
#include "paint/page-head.h"

struct _BfCard
{
  const BfWork *work;
  const BfPaper *paper;
  GArray *rows; /* BfCardRow */
  guint n_pages;
};

static double
width_mm (const BfCard *card)
{
  return card->paper->width_mm - 2.0 * BF_PAGE_MARGIN_MM;
}

static BfPageHead
head_of (const BfCard *card, guint page)
{
  return (BfPageHead){ .fold = card->work->fold,
                       .paper = card->paper,
                       .title = _ ("Make card"),
                       .page = page,
                       .n_pages = card->n_pages };
}

static BfCardRow *
row_at (const BfCard *card, guint i)
{
  return &g_array_index (card->rows, BfCardRow, i);
}

/* A stage's name stays with its first step, and the words of the measuring with their table. */
static gboolean
stays_with_next (const BfCard *card, guint i)
{
  return i + 1 < card->rows->len &&
         (row_at (card, i)->kind == BF_CARD_STAGE || row_at (card, i + 1)->kind == BF_CARD_SIZES);
}

/* The height of what stands on one page together, from row i on. */
static double
needed_mm (const BfCard *card, guint i)
{
  double sum = row_at (card, i)->height_mm;

  for (; stays_with_next (card, i); i++)
    sum += row_at (card, i + 1)->height_mm;
  return sum;
}

static void
place_rows (BfCard *card)
{
  BfPageHead head = head_of (card, 0);
  double top = bf_page_head_end_mm (&head), y = top;
  double bottom = card->paper->height_mm - BF_PAGE_MARGIN_MM;
  guint page = 0;

  for (guint i = 0; i < card->rows->len; i++)
    {
      BfCardRow *row = row_at (card, i);

      if (y + needed_mm (card, i) > bottom && y > top)
        {
          page++;
          y = top;
        }
      row->page = page;
      row->y_mm = y;
      y += row->height_mm;
    }
  card->n_pages = page + 1;
}

BfCard *
bf_card_new (const BfWork *work, const BfPaper *paper)
{
  BfCard *card;

  g_return_val_if_fail (work != NULL && paper != NULL, NULL);
  card = g_new0 (BfCard, 1);
  card->work = work;
  card->paper = paper;
  card->rows = bf_card_rows (work, width_mm (card));
  place_rows (card);
  return card;
}

void
bf_card_free (BfCard *card)
{
  if (card == NULL)
    return;
  g_array_unref (card->rows);
  g_free (card);
}

guint
bf_card_n_pages (const BfCard *card)
{
  return card->n_pages;
}

const BfPaper *
bf_card_paper (const BfCard *card)
{
  return card->paper;
}

const BfPart *
bf_card_part (const BfCard *card)
{
  return card->work->fold->part;
}

void
bf_card_draw (const BfCard *card, guint i, cairo_t *cr)
{
  BfPageHead head = head_of (card, i);

  bf_page_head_draw (&head, cr);
  for (guint k = 0; k < card->rows->len; k++)
    {
      const BfCardRow *row = row_at (card, k);

      if (row->page != i)
        continue;
      cairo_save (cr);
      cairo_translate (cr, BF_PAGE_MARGIN_MM, row->y_mm);
      bf_card_row_draw (card->work, row, width_mm (card), cr);
      cairo_restore (cr);
    }
}
