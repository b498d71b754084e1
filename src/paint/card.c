/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/card.h"

#include <glib/gi18n.h>

#include "paint/card-rows.h"
#include "paint/cut-rows.h"
#include "paint/page-head.h"

struct _BfCard
{
  const BfWork *work;
  const BfPaper *paper;
  const char *title;
  GArray *rows;   /* BfCardRow */
  guint n_before; /* other pages that the card's follow in one document */
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
                       .title = card->title,
                       .cautions = TRUE,
                       .page = card->n_before + page,
                       .n_pages = card->n_before + card->n_pages };
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
         (row_at (card, i)->kind == BF_CARD_STAGE || row_at (card, i)->kind == BF_CARD_CUT_HEAD ||
          row_at (card, i + 1)->kind == BF_CARD_SIZES);
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

/* A list that goes on over the page has its columns' heads again there. */
static void
repeat_head (BfCard *card, guint at)
{
  guint i = at;

  if (row_at (card, at)->kind != BF_CARD_CUT)
    return;
  while (row_at (card, i)->kind != BF_CARD_CUT_HEAD)
    i--;
  if (i + 1 < at)
    {
      BfCardRow head = *row_at (card, i);

      g_array_insert_val (card->rows, at, head);
    }
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
      BfCardRow *row;

      if (y + needed_mm (card, i) > bottom && y > top)
        {
          page++;
          y = top;
          repeat_head (card, i);
        }
      row = row_at (card, i);
      row->page = page;
      row->y_mm = y;
      y += row->height_mm;
    }
  card->n_pages = page + 1;
}

static BfCard *
card_new (const BfWork *work, const BfPaper *paper, const char *title)
{
  BfCard *card = g_new0 (BfCard, 1);

  card->work = work;
  card->paper = paper;
  card->title = title;
  return card;
}

BfCard *
bf_card_new (const BfWork *work, const BfPaper *paper)
{
  BfCard *card;

  g_return_val_if_fail (work != NULL && paper != NULL, NULL);
  card = card_new (work, paper, _ ("Make card"));
  card->rows = bf_card_rows (work, width_mm (card));
  place_rows (card);
  return card;
}

/* The picture is as large as it can be without another page. */
static void
place_cuts (BfCard *card)
{
  static const double shares[] = { 0.26, 0.32, 0.38, 0.44, 0.5 };
  guint least = 0;

  for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
    {
      GArray *before = card->rows;

      card->rows = bf_cut_rows (card->work, width_mm (card), shares[i] * card->paper->height_mm);
      place_rows (card);
      if (before != NULL && card->n_pages > least)
        {
          g_array_unref (card->rows);
          card->rows = before;
          card->n_pages = least;
          return;
        }
      g_clear_pointer (&before, g_array_unref);
      least = card->n_pages;
    }
}

BfCard *
bf_card_new_cuts (const BfWork *work, const BfPaper *paper, guint n_before)
{
  BfCard *card;

  g_return_val_if_fail (work != NULL && paper != NULL, NULL);
  card = card_new (work, paper, _ ("Cutting"));
  card->n_before = n_before;
  place_cuts (card);
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
