/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* A blank fitted into a box, and the numbers of its cuts. */

#include "paint/cut-labels.h"

#include "make-any.h"
#include "make-part.h"
#include "page-ink.h"
#include "paint/figure.h"

#define N_PARTS 40

static const BfVec2 boxes[] = { { 90.0, 53.0 }, { 60.0, 60.0 }, { 186.0, 120.0 } };

typedef struct
{
  const BfWork *work;
  BfVec2 size;
} Picture;

static void
draw_numbers (gconstpointer pages, guint page, cairo_t *cr)
{
  const Picture *picture = pages;

  g_assert_cmpuint (page, ==, 0);
  bf_cut_labels_draw (picture->work, picture->size, cr);
}

static void
draw_blank (gconstpointer pages, guint page, cairo_t *cr)
{
  const Picture *picture = pages;

  g_assert_cmpuint (page, ==, 0);
  bf_figure_blank (picture->work->fold, picture->size, cr);
}

static BfWork *
work_by (guint seed, BfCuttingWay by)
{
  g_autoptr (BfPart) part = make_any (seed);
  g_autoptr (BfFold) fold = NULL;

  part->cutting.by = by;
  fold = bf_fold (part);
  return bf_work_new (fold, NULL);
}

/* The blank's box on paper. */
static BfBox
blank_on_paper (const BfFold *fold, BfVec2 size)
{
  BfFigurePlace place = bf_figure_place (fold, size);
  const BfBox *box = &fold->blank.box;

  return (
      BfBox){ { place.left + place.scale * box->min.x, place.bottom - place.scale * box->max.y },
              { place.left + place.scale * box->max.x, place.bottom - place.scale * box->min.y } };
}

/* ---- the figure --------------------------------------------------------------------------- */

/* The blank fills the box one way or the other, beside and below it room for its lengths; and what
 * is drawn, lengths and words, stays in the box. */
static void
test_figure_fits (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_by (seed, BF_CUTTING_DISC);
      BfVec2 size = boxes[seed % G_N_ELEMENTS (boxes)];
      Picture picture = { work, size };
      BfBox blank = blank_on_paper (work->fold, size), ink = page_ink (draw_blank, &picture, 0);
      double free_x = size.x - (blank.max.x - blank.min.x);
      double free_y = size.y - (blank.max.y - blank.min.y);

      g_assert_cmpfloat (MIN (free_x, free_y), <, 7.0 + 1e-9);
      g_assert_cmpfloat (blank.min.x, >=, 5.0);
      g_assert_cmpfloat (blank.min.y, >=, -1e-9);
      g_assert_cmpfloat (blank.max.x, <=, size.x + 1e-9);
      g_assert_cmpfloat (blank.max.y, <=, size.y - 5.0);
      g_test_message ("seed %u", seed);
      g_assert_cmpfloat (ink.min.x, >=, -0.5);
      g_assert_cmpfloat (ink.min.y, >=, -0.5);
      g_assert_cmpfloat (ink.max.x, <=, size.x + 0.5);
      g_assert_cmpfloat (ink.max.y, <=, size.y + 0.5);
    }
}

/* A length's words stand above its line, read from below or from the right. */
static void
draw_length (gconstpointer pages, guint page, cairo_t *cr)
{
  const BfVec2 *ends = pages;

  bf_figure_length (cr, ends[page == 0 ? 0 : 1], ends[page == 0 ? 1 : 0], "276.2 mm");
}

static void
test_length (void)
{
  static const struct
  {
    BfVec2 ends[2];
    gboolean words_left; /* of an upright line; else above a level one */
  } rows[] = { { { { 10.0, 50.0 }, { 70.0, 50.0 } }, FALSE },
               { { { 50.0, 70.0 }, { 50.0, 10.0 } }, TRUE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (guint way = 0; way < 2; way++)
      {
        BfBox ink = page_ink (draw_length, rows[i].ends, way);
        double before = 50.0 - (rows[i].words_left ? ink.min.x : ink.min.y);
        double after = (rows[i].words_left ? ink.max.x : ink.max.y) - 50.0;

        g_assert_cmpfloat (before, >, 2.5);
        g_assert_cmpfloat (after, <, 1.0);
      }
}

/* ---- numbers ------------------------------------------------------------------------------ */

/* A machine has an order of its own. */
static void
test_machine (void)
{
  static const struct
  {
    BfCuttingWay by;
    gboolean numbered;
  } rows[] = { { BF_CUTTING_DISC, TRUE },
               { BF_CUTTING_SNIPS, TRUE },
               { BF_CUTTING_TABLE, FALSE },
               { BF_CUTTING_SERVICE, FALSE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfWork) work = work_by (0, rows[i].by);
      Picture picture = { work, boxes[0] };
      BfBox ink = page_ink (draw_numbers, &picture, 0);

      g_assert_true ((ink.max.x > ink.min.x) == rows[i].numbered);
    }
}

/* Numbers reach no further beyond the blank than whoever leaves room for them is told. */
static void
test_reach (void)
{
  guint seen = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    for (guint k = 0; k < G_N_ELEMENTS (boxes); k++)
      {
        g_autoptr (BfWork) work = work_by (seed, BF_CUTTING_DISC);
        Picture picture = { work, boxes[k] };
        BfBox blank = blank_on_paper (work->fold, boxes[k]);
        BfBox ink = page_ink (draw_numbers, &picture, 0);

        if (ink.max.x <= ink.min.x)
          continue;
        seen++;
        g_test_message ("seed %u", seed);
        g_assert_cmpfloat (ink.min.x, >=, blank.min.x - BF_CUT_LABELS_MM);
        g_assert_cmpfloat (ink.min.y, >=, blank.min.y - BF_CUT_LABELS_MM);
        g_assert_cmpfloat (ink.max.x, <=, blank.max.x + BF_CUT_LABELS_MM);
        g_assert_cmpfloat (ink.max.y, <=, blank.max.y + BF_CUT_LABELS_MM);
      }
  g_assert_cmpuint (seen, >, N_PARTS);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/cut-numbers/figure-fits", test_figure_fits);
  g_test_add_func ("/cut-numbers/length", test_length);
  g_test_add_func ("/cut-numbers/machine", test_machine);
  g_test_add_func ("/cut-numbers/reach", test_reach);
  return g_test_run ();
}
