/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Nothing of any page runs off its paper, whatever the part. */

#include "make-any.h"
#include "make-part.h"
#include "page-ink.h"
#include "paint/card.h"
#include "paint/gauges.h"
#include "paint/marking-pages.h"
#include "paint/model.h"
#include "paint/strip-page.h"
#include "paint/template.h"

#define N_PARTS 24

/* What printers leave white (common practice: 4 to 6 mm), and what pages that are read keep. */
#define PRINTED_MM 5.0
#define READ_MM 10.0

static const char *const paper_names[] = { "A4", "Letter", "Legal", "A3", "Tabloid" };

static const BfPaper *
nth_paper (guint i)
{
  return bf_paper_find (paper_names[i % G_N_ELEMENTS (paper_names)]);
}

/* A random part with a long name, every other one in inches. */
static BfFold *
fold_any (guint seed)
{
  g_autoptr (BfPart) part = make_any (seed);

  g_free (part->name);
  part->name = g_strdup (
      seed % 3 == 0 ? "A bracket for the second shelf above the truing stand, left" : "Tray");
  part->units = seed % 2 == 0 ? BF_UNITS_MM : BF_UNITS_IN;
  return bf_fold (part);
}

/* ---- random parts ------------------------------------------------------------------------- */

static void
test_card (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfFold) fold = fold_any (seed);
      g_autoptr (BfWork) work = bf_work_new (fold, NULL);
      g_autoptr (BfCard) card = bf_card_new (work, nth_paper (seed));

      for (guint i = 0; i < bf_card_n_pages (card); i++)
        {
          BfBox ink = page_ink (draw_card, card, i);

          g_test_message ("seed %u page %u", seed, i);
          assert_on_paper (&ink, nth_paper (seed), READ_MM);
        }
    }
}

static void
test_gauges (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfFold) fold = fold_any (seed);
      g_autoptr (BfGauges) gauges = bf_gauges_new (fold, nth_paper (seed));

      for (guint i = 0; i < bf_gauges_n_pages (gauges); i++)
        {
          BfBox ink = page_ink (draw_gauges, gauges, i);

          g_test_message ("seed %u page %u", seed, i);
          assert_on_paper (&ink, nth_paper (seed), READ_MM);
        }
    }
}

static void
test_model (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfFold) fold = fold_any (seed);
      g_autoptr (BfModel) model = bf_model_new (fold, nth_paper (seed));
      BfBox ink = page_ink (draw_model, model, 0);

      g_test_message ("seed %u", seed);
      assert_on_paper (&ink, nth_paper (seed), READ_MM);
    }
}

static void
test_pack (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfFold) fold = fold_any (seed);
      PackPage pack = { fold, nth_paper (seed) };
      BfBox ink = page_ink (draw_pack, &pack, 0);

      g_test_message ("seed %u", seed);
      assert_on_paper (&ink, pack.paper, READ_MM);
    }
}

static void
test_strip (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfStripPage) page = bf_strip_page_new (
          part, nth_paper (seed), seed % 2 == 0 ? BF_UNITS_MM : BF_UNITS_IN, NULL);
      BfBox ink = page_ink (draw_strip, page, 0);

      g_test_message ("seed %u", seed);
      assert_on_paper (&ink, nth_paper (seed), PRINTED_MM);
    }
}

static void
test_marking (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfFold) fold = fold_any (seed);
      g_autoptr (BfWork) work = bf_work_new (fold, NULL);
      g_autoptr (BfMarkingPages) pages = bf_marking_pages_new (work, nth_paper (seed));

      for (guint i = 0; i < bf_marking_pages_n (pages); i++)
        {
          BfBox ink = page_ink (draw_marking, pages, i);

          g_test_message ("seed %u page %u", seed, i);
          assert_on_paper (&ink, nth_paper (seed), READ_MM);
        }
    }
}

static void
check_template (guint seed, gboolean corners_only)
{
  g_autoptr (BfFold) fold = fold_any (seed);
  BfTemplateOptions options = { .paper = nth_paper (seed),
                                .units = fold->part->units,
                                .corners_only = corners_only,
                                .mirror = seed % 5 == 0 };
  g_autoptr (BfTemplate) template = bf_template_new (fold, &options);

  for (guint i = 0; i < bf_template_n_pages (template); i++)
    {
      BfBox ink = page_ink (draw_template, template, i);

      g_test_message ("seed %u page %u", seed, i);
      assert_on_paper (&ink, options.paper, PRINTED_MM);
    }
}

static void
test_template (void)
{
  for (guint seed = 0; seed < N_PARTS / 2; seed++)
    {
      check_template (seed, FALSE);
      check_template (seed, TRUE);
    }
}

/* ---- parts of many flanges ---------------------------------------------------------------- */

/* Forty walls of one lean: their names stand below one gauge, and their sizes on one card. */
static void
test_crowd (void)
{
  g_autoptr (BfPart) part = make_ring (40, 600.0, 40.0, 60.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfWork) work = bf_work_new (fold, NULL);
  g_autoptr (BfCard) card = bf_card_new (work, bf_paper_default ());
  g_autoptr (BfGauges) gauges = bf_gauges_new (fold, bf_paper_default ());

  for (guint i = 0; i < bf_card_n_pages (card); i++)
    {
      BfBox ink = page_ink (draw_card, card, i);

      assert_on_paper (&ink, bf_paper_default (), READ_MM);
    }
  g_assert_cmpuint (gauges->gauges->len, ==, 1);
}

/* A dozen walls, each with a lean of its own: twelve gauges, on as many pages as they take. */
static void
test_many_gauges (void)
{
  for (guint k = 0; k < G_N_ELEMENTS (paper_names); k++)
    {
      g_autoptr (BfPart) part = make_ring (12, 300.0, 40.0, 60.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfGauges) gauges = NULL;

      for (guint i = 0; i < 12; i++)
        ((BfFlange *)g_ptr_array_index (part->flanges, i))->angle_deg = 4.0 + 14.0 * i;
      fold = bf_fold (part);
      gauges = bf_gauges_new (fold, nth_paper (k));
      g_assert_cmpuint (gauges->gauges->len, ==, 12);
      for (guint i = 0; i < bf_gauges_n_pages (gauges); i++)
        {
          BfBox ink = page_ink (draw_gauges, gauges, i);

          assert_on_paper (&ink, nth_paper (k), READ_MM);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/on-paper/card", test_card);
  g_test_add_func ("/on-paper/gauges", test_gauges);
  g_test_add_func ("/on-paper/model", test_model);
  g_test_add_func ("/on-paper/pack", test_pack);
  g_test_add_func ("/on-paper/strip", test_strip);
  g_test_add_func ("/on-paper/marking", test_marking);
  g_test_add_func ("/on-paper/template", test_template);
  g_test_add_func ("/on-paper/crowd", test_crowd);
  g_test_add_func ("/on-paper/many-gauges", test_many_gauges);
  return g_test_run ();
}
