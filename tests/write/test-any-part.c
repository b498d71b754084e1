/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Whatever a file asks for, everything that is made of it comes out: no part of random sizes,
 * however odd, leads to a fault of our own, a number that is none, or a page that can't be drawn.
 */

#include <string.h>

#include "core/part-file.h"
#include "draw-page.h"
#include "make/bend-notes.h"
#include "make/sizes.h"
#include "paint/card.h"
#include "paint/gauges.h"
#include "paint/marking-pages.h"
#include "paint/model.h"
#include "paint/strip-page.h"
#include "random-part.h"
#include "write/dxf.h"
#include "write/marking-csv.h"
#include "write/report.h"
#include "write/svg.h"

#define N_PARTS 14
#define N_PAGES 3 /* of each kind */

/* ---- odd parts ---------------------------------------------------------------------------- */

/* Mostly the size as it is, else much smaller or larger. */
static double
odd (GRand *rand, double size)
{
  static const double times[] = { 1.0, 1.0, 1.0, 1.0, 1e-4, 0.03, 8.0, 30.0 };

  return size * times[g_rand_int_range (rand, 0, G_N_ELEMENTS (times))];
}

static void
make_bend_odd (GRand *rand, BfBend *bend)
{
  bend->inside_radius_mm = odd (rand, bend->inside_radius_mm);
  bend->slot_mm = odd (rand, bend->slot_mm);
  bend->bridge_mm = odd (rand, bend->bridge_mm);
  bend->score_left_mm = odd (rand, bend->score_left_mm);
  bend->hand_limit_n = odd (rand, bend->hand_limit_n);
  bend->hand_lever_mm = odd (rand, bend->hand_lever_mm);
}

static void
make_odd (GRand *rand, BfPart *part)
{
  part->metal.thickness_mm = odd (rand, part->metal.thickness_mm);
  part->cutting.disc_diameter_mm = odd (rand, part->cutting.disc_diameter_mm);
  part->cutting.kerf_mm = odd (rand, part->cutting.kerf_mm);
  part->cutting.slack_mm = odd (rand, part->cutting.slack_mm);
  make_bend_odd (rand, &part->bend);
  for (guint i = 0; i < part->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (part->flanges, i);

      flange->length_mm = odd (rand, flange->length_mm);
      flange->start_mm = odd (rand, flange->start_mm);
      flange->end_mm = odd (rand, flange->end_mm);
      make_bend_odd (rand, &flange->bend);
    }
  for (guint i = 0; i < part->openings->len; i++)
    {
      BfOpening *opening = g_ptr_array_index (part->openings, i);

      opening->at_mm.x = odd (rand, opening->at_mm.x);
      opening->diameter_mm = odd (rand, opening->diameter_mm);
      opening->length_mm = odd (rand, opening->length_mm);
      opening->width_mm = odd (rand, opening->width_mm);
    }
}

/* The part as a file would give it, or NULL where the file is refused. */
static BfPart *
draw_part (guint seed, gboolean is_odd)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  g_autoptr (BfPart) part = random_part (seed);
  g_autofree char *text = NULL;

  if (is_odd)
    make_odd (rand, part);
  text = bf_part_to_text (part);
  return bf_part_from_text (text, -1, NULL);
}

/* ---- what comes of it --------------------------------------------------------------------- */

/* Fails the test where a number in the text is none: "nan" or "inf" that is no part of a word. */
static void
assert_numbers (const char *text)
{
  static const char *const none[] = { "nan", "inf" };

  for (guint i = 0; i < G_N_ELEMENTS (none); i++)
    for (const char *at = strstr (text, none[i]); at != NULL; at = strstr (at + 1, none[i]))
      {
        gboolean begins = at == text || !g_ascii_isalpha (at[-1]);

        if (begins && !g_ascii_isalpha (at[3]))
          g_error ("\"%.60s\"", at - MIN (at - text, 30));
      }
}

static void
assert_draws (PageFunc draw, gconstpointer pages, guint n_pages)
{
  g_assert_cmpuint (n_pages, >, 0);
  for (guint i = 0; i < MIN (n_pages, N_PAGES); i++)
    {
      cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
      cairo_t *cr = cairo_create (surface);

      draw (pages, i, cr);
      g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
      cairo_destroy (cr);
      cairo_surface_destroy (surface);
    }
}

static void
check_words (const BfWork *work)
{
  const BfFold *fold = work->fold;
  g_autoptr (GPtrArray) notes = bf_bend_notes (fold, fold->part->units);
  g_autofree char *csv = bf_marking_csv (work);

  assert_numbers (csv);
  for (guint i = 0; i < notes->len; i++)
    assert_numbers (g_ptr_array_index (notes, i));
  for (guint i = 0; i < fold->checks->len; i++)
    assert_numbers (bf_fold_check (fold, i)->message);
  for (guint i = 0; i < work->steps->len; i++)
    {
      const BfWorkStep *step = bf_work_step (work, i);

      assert_numbers (step->words);
      for (guint k = 0; k < step->n_numbers; k++)
        assert_numbers (step->numbers[k].value);
    }
}

static void
check_bench_pages (const BfWork *work)
{
  const BfPaper *paper = bf_paper_default ();
  g_autoptr (BfCard) card = bf_card_new (work, paper);
  g_autoptr (BfGauges) gauges = bf_gauges_new (work->fold, paper);
  g_autoptr (BfModel) model = bf_model_new (work->fold, paper);
  g_autoptr (BfMarkingPages) marking = bf_marking_pages_new (work, paper);
  g_autoptr (BfStripPage) strip =
      bf_strip_page_new (work->fold->part, paper, work->fold->part->units, NULL);
  PackPage pack = { work->fold, paper };

  assert_draws (draw_card, card, bf_card_n_pages (card));
  assert_draws (draw_gauges, gauges, bf_gauges_n_pages (gauges));
  assert_draws (draw_model, model, 1);
  assert_draws (draw_marking, marking, bf_marking_pages_n (marking));
  assert_draws (draw_strip, strip, 1);
  assert_draws (draw_pack, &pack, 1);
}

static void
check_templates (BfFold *fold)
{
  for (guint corners_only = 0; corners_only < 2; corners_only++)
    {
      BfTemplateOptions options = { .units = fold->part->units, .corners_only = corners_only == 1 };
      g_autoptr (BfTemplate) template = bf_template_new (fold, &options);
      g_autofree char *report = bf_report_text (fold, template);

      assert_numbers (report);
      assert_draws (draw_template, template, bf_template_n_pages (template));
    }
}

static void
check_patterns (BfFold *fold)
{
  static const BfBendLines ways[] = { BF_BEND_LINES_IN, BF_BEND_LINES_OUT, BF_BEND_LINES_NOTCHES };

  for (guint i = 0; i < 2 * G_N_ELEMENTS (ways); i++)
    {
      BfPatternOptions options = { .kerf = i % 2 == 1, .bend_lines = ways[i / 2] };
      g_autoptr (BfPattern) pattern = bf_pattern_new (fold, &options);
      g_autofree char *svg = bf_svg_text (pattern);
      g_autofree char *dxf = bf_dxf_text (pattern, i % 2 == 0 ? BF_UNITS_MM : BF_UNITS_IN);

      assert_numbers (svg);
      assert_numbers (dxf);
    }
}

static void
test_parts (gconstpointer data)
{
  gboolean is_odd = GPOINTER_TO_INT (data);
  guint seen = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = draw_part (seed, is_odd);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfWork) work = NULL;

      if (part == NULL)
        continue; /* too large a size, told so by the reader */
      g_test_message ("seed %u", seed);
      fold = bf_fold (part);
      work = bf_work_new (fold, NULL);
      check_words (work);
      check_patterns (fold);
      /* A blank of many metres takes hundreds of pages: what there is to lay out, not to find. */
      if (fold->blank.rings->len > 0 && fold->blank.box.max.x - fold->blank.box.min.x > 3000.0)
        continue;
      check_bench_pages (work);
      check_templates (fold);
      seen++;
    }
  g_assert_cmpuint (seen, >, N_PARTS / 3);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_data_func ("/any-part/random", GINT_TO_POINTER (FALSE), test_parts);
  g_test_add_data_func ("/any-part/odd", GINT_TO_POINTER (TRUE), test_parts);
  return g_test_run ();
}
