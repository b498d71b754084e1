/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What stands on a make card: every stage and step in its order, each caution where it belongs, and
 * room for all that is drawn. */

#include "paint/card-rows.h"

#include <string.h>

#include "make-any.h"
#include "make-part.h"
#include "page-ink.h"
#include "paint/card.h"
#include "paint/page-head.h"

#define N_PARTS 30
#define WIDTH_MM 186.0

typedef struct
{
  const BfWork *work;
  const GArray *rows;
} Card;

static const BfCardRow *
nth (const GArray *rows, guint i)
{
  return &g_array_index (rows, BfCardRow, i);
}

static BfWork *
work_of_any (guint seed)
{
  static const BfCuttingWay ways[] = { BF_CUTTING_DISC, BF_CUTTING_SNIPS, BF_CUTTING_SERVICE };
  g_autoptr (BfPart) part = make_any (seed);
  g_autoptr (BfFold) fold = NULL;

  part->cutting.by = ways[seed % G_N_ELEMENTS (ways)];
  part->joining = seed % 2 == 0 ? BF_JOINING_WELDED : BF_JOINING_RIVETED;
  fold = bf_fold (part);
  return bf_work_new (fold, NULL);
}

/* ---- which rows --------------------------------------------------------------------------- */

/* Pictures first, who made it last; between them the steps in the order of the work, but for those
 * that a summary stands for, each stage's name before its first; the sizes after the words that
 * tell to measure them. */
static void
check_order (const BfWork *work, const GArray *rows)
{
  guint step = 0, stage = 0, sizes = 0;

  g_assert_cmpint (nth (rows, 0)->kind, ==, BF_CARD_PICTURES);
  g_assert_cmpint (nth (rows, rows->len - 1)->kind, ==, BF_CARD_WHO);
  for (guint i = 1; i + 1 < rows->len; i++)
    {
      const BfCardRow *row = nth (rows, i);

      if (row->kind == BF_CARD_STAGE)
        {
          while (bf_work_n_steps (work, stage) == 0)
            stage++;
          g_assert_cmpuint (row->at, ==, stage++);
          continue;
        }
      if (row->kind == BF_CARD_SIZES)
        {
          g_assert_cmpuint (nth (rows, i - 1)->at, ==, work->first[BF_STAGE_FINISH]);
          sizes++;
          continue;
        }
      while (bf_work_step (work, step)->detail)
        step++;
      g_assert_cmpuint (row->at, ==, step);
      g_assert_cmpuint (bf_work_step (work, step++)->stage, ==, stage - 1);
    }
  for (; step < work->steps->len; step++)
    g_assert_true (bf_work_step (work, step)->detail);
  g_assert_cmpuint (sizes, ==, 1);
}

/* TRUE where a stage's rows show that caution at that step or before it. */
static gboolean
has_warned (const BfWork *work, const GArray *rows, guint upto, const char *caution)
{
  BfStage stage = bf_work_step (work, nth (rows, upto)->at)->stage;

  for (guint i = 0; i <= upto; i++)
    {
      const BfCardRow *row = nth (rows, i);

      if (row->kind == BF_CARD_STEP && row->warns && bf_work_step (work, row->at)->stage == stage &&
          strcmp (bf_work_step (work, row->at)->caution, caution) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
test_rows (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed);
      g_autoptr (GArray) rows = bf_card_rows (work, WIDTH_MM);

      g_test_message ("seed %u", seed);
      check_order (work, rows);
      for (guint i = 0; i < rows->len; i++)
        {
          const BfCardRow *row = nth (rows, i);

          if (row->kind != BF_CARD_STEP)
            continue;
          if (bf_work_step (work, row->at)->caution == NULL)
            g_assert_false (row->warns);
          else
            g_assert_true (has_warned (work, rows, i, bf_work_step (work, row->at)->caution));
        }
    }
}

/* ---- their room --------------------------------------------------------------------------- */

static void
draw_row (gconstpointer pages, guint page, cairo_t *cr)
{
  const Card *card = pages;

  bf_card_row_draw (card->work, nth (card->rows, page), WIDTH_MM, cr);
}

/* A row draws within its own height and the card's width; a descender may hang out of it. */
static void
test_rows_keep_to_their_room (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed);
      g_autoptr (GArray) rows = bf_card_rows (work, WIDTH_MM);
      Card card = { work, rows };

      for (guint i = 0; i < rows->len; i++)
        {
          BfBox ink = page_ink (draw_row, &card, i);

          g_test_message ("seed %u row %u: %g mm high, ink from %g to %g", seed, i,
                          nth (rows, i)->height_mm, ink.min.y, ink.max.y);
          g_assert_cmpfloat (ink.max.x, >, ink.min.x);
          g_assert_cmpfloat (ink.min.x, >=, -0.5);
          g_assert_cmpfloat (ink.min.y, >=, -0.5);
          g_assert_cmpfloat (ink.max.x, <=, WIDTH_MM + 0.5);
          g_assert_cmpfloat (ink.max.y, <=, nth (rows, i)->height_mm + 0.8);
        }
    }
}

/* The narrower the card, the higher it is, and no row loses words by it. */
static void
test_narrow (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (tray);
  g_autoptr (BfWork) work = bf_work_new (fold, NULL);
  double before = 0.0;
  guint n = 0;

  for (double width = 273.0; width > 120.0; width -= 30.0)
    {
      g_autoptr (GArray) rows = bf_card_rows (work, width);
      double sum = 0.0;

      for (guint i = 0; i < rows->len; i++)
        sum += nth (rows, i)->height_mm;
      g_assert_cmpfloat (sum, >=, before);
      g_assert_true (n == 0 || rows->len == n);
      before = sum;
      n = rows->len;
    }
}

/* Small paper takes more pages than large paper, and never none. */
static void
test_pages (void)
{
  static const char *const names[] = { "A3", "A4", "Letter", "Legal" };

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed);
      guint n[G_N_ELEMENTS (names)];

      for (guint i = 0; i < G_N_ELEMENTS (names); i++)
        {
          g_autoptr (BfCard) card = bf_card_new (work, bf_paper_find (names[i]));

          n[i] = bf_card_n_pages (card);
        }
      g_assert_cmpuint (n[0], >=, 1);
      g_assert_cmpuint (n[0], <=, n[1]);
      g_assert_cmpuint (n[3], <=, n[2]);
    }
}

/* ---- the head ----------------------------------------------------------------------------- */

static void
draw_head (gconstpointer pages, guint page, cairo_t *cr)
{
  const BfPageHead *head = pages;

  g_assert_cmpuint (page, ==, 0);
  g_assert_cmpfloat_with_epsilon (bf_page_head_draw (head, cr), bf_page_head_end_mm (head), 1e-9);
}

/* However long the name and the notes: what is drawn ends before the place that is told, and leaves
 * the margins. */
static void
test_head (void)
{
  static const char *const names[] = { NULL, "", "Tray",
                                       "A name that is a good deal longer than any "
                                       "that a person would give a small part" };
  static const char *const notes[] = { NULL, "Cut from stiff card.",
                                       "Print on stiff paper, cut round the outline, crease along "
                                       "the dashes with a blunt knife, fold, glue the tabs, let it "
                                       "dry, and look at it before any metal is cut." };

  for (guint i = 0; i < G_N_ELEMENTS (names) * G_N_ELEMENTS (notes); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      BfPageHead head = { .paper = bf_paper_default (),
                          .title = "Make card",
                          .n_pages = 2,
                          .note = notes[i % G_N_ELEMENTS (notes)] };
      BfBox ink;

      g_free (part->name);
      part->name = g_strdup (names[i / G_N_ELEMENTS (notes)]);
      fold = bf_fold (part);
      head.fold = fold;
      ink = page_ink (draw_head, &head, 0);
      g_assert_cmpfloat (ink.min.x, >=, BF_PAGE_MARGIN_MM - 0.5);
      g_assert_cmpfloat (ink.min.y, >=, BF_PAGE_MARGIN_MM - 0.5);
      g_assert_cmpfloat (ink.max.x, <=, 210.0 - BF_PAGE_MARGIN_MM + 0.5);
      g_assert_cmpfloat (ink.max.y, <=, bf_page_head_end_mm (&head));
    }
}

/* Only what must be fixed is warned of, with how many they are and the first in words. */
static void
test_warning (void)
{
  g_autoptr (BfPart) good = make_tray (200.0, 120.0, 40.0, 90.0), bad = bf_part_copy (good);
  g_autoptr (BfFold) sound = bf_fold (good), broken = NULL;
  g_autofree char *none = bf_page_warning (sound), *warning = NULL, *start = NULL;
  guint n;

  ((BfFlange *)g_ptr_array_index (bad->flanges, 0))->length_mm = 2.0;
  broken = bf_fold (bad);
  warning = bf_page_warning (broken);
  g_assert_null (none);
  n = bf_fold_count_checks (broken, BF_SEVERITY_MUST_FIX);
  g_assert_cmpuint (n, >, 0);
  start = g_strdup_printf (
      n == 1 ? "Don't cut yet, %u thing to fix: " : "Don't cut yet, %u things to fix: ", n);
  g_assert_true (g_str_has_prefix (warning, start));
  g_assert_nonnull (strstr (warning, bf_fold_check (broken, 0)->message));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/card-rows/rows", test_rows);
  g_test_add_func ("/card-rows/rows-keep-to-their-room", test_rows_keep_to_their_room);
  g_test_add_func ("/card-rows/narrow", test_narrow);
  g_test_add_func ("/card-rows/pages", test_pages);
  g_test_add_func ("/card-rows/head", test_head);
  g_test_add_func ("/card-rows/warning", test_warning);
  return g_test_run ();
}
