/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>
#include <string.h>

#include "fold/bend-order.h"
#include "fold/stock.h"
#include "look-up.h"
#include "make-part.h"
#include "make/join-plan.h"
#include "make/sizes.h"
#include "read-work.h"

/* ---- every step is whole ------------------------------------------------------------------ */

static void
check_step (const BfWork *work, const BfWorkStep *step, BfStage stage)
{
  g_assert_cmpint (step->stage, ==, stage);
  g_assert_cmpuint (strlen (step->words), >, 10);
  g_assert_cmpuint (step->n_numbers, <=, BF_WORK_MAX_NUMBERS);
  for (guint i = 0; i < step->n_numbers; i++)
    g_assert_true (step->numbers[i].label[0] != '\0' && step->numbers[i].value[0] != '\0');
  g_assert_true (step->caution == NULL || strchr (step->caution, '\n') == NULL);
  if (step->shows == BF_SHOWS_MARKING)
    g_assert_cmpint (step->at, <, (int)work->marking_steps->len);
  if (step->shows == BF_SHOWS_CUT)
    g_assert_cmpint (step->at, <, (int)work->cuts->len);
  if (step->shows == BF_SHOWS_BEND)
    g_assert_cmpint (step->at, <, (int)work->fold->order->len);
  if (step->shows == BF_SHOWS_SEAM)
    g_assert_cmpint (step->at, <, (int)work->fold->seams->len);
}

static void
test_whole (void)
{
  static const char *const names[] = { "drip-pan", "hex-bit-caddy", "lever-rail", "pump-bracket",
                                       "rag-bin",  "spoke-tray",    "tool-shelf" };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autoptr (BfPart) part = load_example (names[i]);
      g_autoptr (BfWork) work = work_of (part);
      guint n = 0;

      for (BfStage stage = 0; stage < BF_N_STAGES; stage++)
        for (guint k = 0; k < bf_work_n_steps (work, stage); k++, n++)
          check_step (work, bf_work_stage_step (work, stage, k), stage);
      g_assert_cmpuint (n, ==, work->steps->len);
      g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_BEND), ==, work->fold->bends->len);
      g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_METAL), >, 0);
      g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_FINISH), >, 0);
    }
}

/* ---- cautions stand at the step they belong to -------------------------------------------- */

/* How many steps of a stage have a caution in which that word stands. */
static guint
count_cautions (const BfWork *work, BfStage stage, const char *word)
{
  guint n = 0;

  for (guint i = 0; i < bf_work_n_steps (work, stage); i++)
    {
      const char *caution = bf_work_stage_step (work, stage, i)->caution;

      n += caution != NULL && strstr (caution, word) != NULL ? 1 : 0;
    }
  return n;
}

static void
test_cautions (void)
{
  static const struct
  {
    const char *material;
    BfJoining joining;
    BfStage stage;
    const char *word;
    guint n;
  } rows[] = {
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_JOIN, "cadmium", 1 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_JOIN, "does not glow", 1 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_JOIN, "bystanders", 1 },
    { "galvanized-steel", BF_JOINING_WELDED, BF_STAGE_JOIN, "Zinc fumes", 1 },
    { "stainless-304", BF_JOINING_WELDED, BF_STAGE_JOIN, "chromium", 1 },
    { "zinc", BF_JOINING_WELDED, BF_STAGE_JOIN, "Flux", 1 },
    { "zinc", BF_JOINING_WELDED, BF_STAGE_JOIN, "does not glow", 0 },
    { "mild-steel", BF_JOINING_NONE, BF_STAGE_JOIN, "", 0 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_CUT, "Guard on", 1 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_CUT, "side load", 1 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_CUT, "Deburr", 1 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_FINISH, "load rating", 1 },
    { "mild-steel", BF_JOINING_WELDED, BF_STAGE_BEND, "Fingers", 4 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfWork) work = NULL;

      g_free (part->metal.material);
      part->metal.material = g_strdup (rows[i].material);
      part->joining = rows[i].joining;
      work = work_of (part);
      g_assert_cmpuint (count_cautions (work, rows[i].stage, rows[i].word), ==, rows[i].n);
    }
}

/* ---- bends -------------------------------------------------------------------------------- */

static void
test_bend_words (void)
{
  static const struct
  {
    double angle_deg;
    BfTurn turn;
    const char *words, *opening;
  } rows[] = {
    { 90.0, BF_TURN_UP, "front: bend it up, square. Clamp the base under the bar.", NULL },
    { 90.0, BF_TURN_DOWN, "front: bend it down, square. Clamp the base under the bar.", NULL },
    { 60.0, BF_TURN_UP,
      "front: bend it up by 60°, so that it leans out. Clamp the base under the bar.", "120°" },
    { 105.0, BF_TURN_DOWN,
      "front: bend it down by 105°, past square, so that it leans in. Clamp the base under the "
      "bar.",
      "75°" },
    { 180.0, BF_TURN_UP,
      "front: fold it over upward, flat on the metal. Clamp the base under the bar.", NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfFlange *front = add_flange (part, "front", 0, 30.0, rows[i].angle_deg);
      g_autoptr (BfWork) work = NULL;
      const BfWorkStep *step;

      front->turn = rows[i].turn;
      work = work_of (part);
      step = bf_work_stage_step (work, BF_STAGE_BEND, 0);
      g_assert_cmpstr (step->words, ==, rows[i].words);
      g_assert_true ((number_of (step, "opening") == NULL) == (rows[i].opening == NULL));
      if (rows[i].opening != NULL)
        g_assert_cmpstr (number_of (step, "opening")->value, ==, rows[i].opening);
    }
}

/* A slotted or scored joint has lost strength, said where it is bent; grooves are milled before. */
static void
test_weakened (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfFlange *front = add_flange (part, "front", 0, 60.0, 90.0);
  BfFlange *back = add_flange (part, "back", 2, 60.0, 90.0);
  g_autoptr (BfWork) work = NULL;
  guint lost = 0, grooves = 0;

  part->cutting.by = BF_CUTTING_DISC;
  front->bend.way = BF_BEND_WAY_SLOTS;
  front->bend.slot_mm = 40.0;
  front->bend.bridge_mm = 15.0;
  back->bend.way = BF_BEND_WAY_SCORE;
  back->bend.score_left_mm = 0.6;
  work = work_of (part);
  for (guint i = 0; i < work->steps->len; i++)
    {
      const BfWorkStep *step = bf_work_step (work, i);

      lost += number_of (step, "joint") != NULL ? 1 : 0;
      if (strstr (step->words, "Mill the groove of back") == NULL)
        continue;
      grooves++;
      g_assert_cmpint (step->stage, ==, BF_STAGE_CUT);
      g_assert_cmpstr (number_of (step, "leave")->value, ==, "0.6 mm");
    }
  g_assert_cmpuint (lost, ==, 2);
  g_assert_cmpuint (grooves, ==, 1);
  g_assert_cmpuint (count_cautions (work, BF_STAGE_BEND, "Bend this line once"), ==, 2);
}

/* Corners that are folded double: told before the bends, and after. */
static void
test_folded (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 30.0, 90.0);
  g_autoptr (BfWork) work = NULL;

  part->joining = BF_JOINING_FOLDED;
  work = work_of (part);
  g_assert_cmpuint (work->fold->folded->len, ==, 4);
  g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_BEND), ==, 5);
  g_assert_nonnull (
      strstr (bf_work_stage_step (work, BF_STAGE_BEND, 0)->words, "Crease the corners first"));
  g_assert_nonnull (strstr (bf_work_stage_step (work, BF_STAGE_BEND, 1)->words,
                            "It rises in step with f2, f1 and f3: each a third of the way"));
  for (guint i = 2; i < 5; i++)
    g_assert_nonnull (
        strstr (bf_work_stage_step (work, BF_STAGE_BEND, i)->words, "In step with f"));
  g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_JOIN), ==, 1);
  g_assert_cmpstr (number_of (bf_work_stage_step (work, BF_STAGE_JOIN, 0), "corners")->value, ==,
                   "4");
}

/* Where no corner is folded nothing rises in step. */
static void
test_not_in_step (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 30.0, 90.0);
  g_autoptr (BfWork) work = work_of (part);

  for (guint i = 0; i < bf_work_n_steps (work, BF_STAGE_BEND); i++)
    g_assert_null (strstr (bf_work_stage_step (work, BF_STAGE_BEND, i)->words, "step with"));
}

/* A part that is mostly flange is held by the flange. */
static void
test_held_by_flange (void)
{
  g_autoptr (BfPart) part = make_rectangle (20.0, 120.0);
  g_autoptr (BfWork) work = NULL;

  add_flange (part, "back-board", 3, 200.0, 90.0);
  work = work_of (part);
  g_assert_nonnull (strstr (bf_work_stage_step (work, BF_STAGE_BEND, 0)->words,
                            "Clamp back-board itself under the bar; the rest swings."));
}

/* After n bends the last face made stands, and the rest lies flat. */
static void
test_formed_after (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint n = 0; n <= fold->order->len; n++)
    {
      g_auto (BfFormed) formed = { .solids = NULL };
      guint standing = 0;

      bf_fold_formed_after (fold, n, &formed);
      for (guint i = 0; i < formed.solids->len; i++)
        if (bf_formed_solid (&formed, i)->kind == BF_SOLID_SLAB &&
            fabs (bf_formed_solid (&formed, i)->frame.ez.z) < 1e-9)
          standing++;
      g_assert_cmpuint (standing, ==, n);
    }
}

/* ---- joins, sizes, stock ------------------------------------------------------------------ */

static void
test_join_order (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfWork) work = work_of (part);

  /* Seams stand at the corners round the tray: the one across comes second. */
  g_assert_cmpuint (work->seams->len, ==, 4);
  g_assert_cmpuint ((g_array_index (work->seams, guint, 0) + 2) % 4, ==,
                    g_array_index (work->seams, guint, 1));
}

static void
test_tacks (void)
{
  static const struct
  {
    double length_mm;
    guint n;
  } rows[] = { { 0.0, 1 }, { 4.0, 1 }, { 10.0, 2 }, { 40.0, 2 }, { 41.0, 3 }, { 100.0, 4 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpuint (bf_join_n_tacks (rows[i].length_mm), ==, rows[i].n);
}

static void
test_sizes (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) sizes = NULL;
  guint front = 0;
  BfExpectedError error;

  add_flange (part, "front", 0, 40.0, 90.0);
  fold = bf_fold (part);
  sizes = bf_main_sizes (fold);
  g_assert_cmpuint (sizes->len, ==, 3);
  g_assert_cmpfloat_with_epsilon (bf_main_size (sizes, 0)->size_mm, 200.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_main_size (sizes, 1)->size_mm, 120.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_main_size (sizes, 2)->size_mm, 40.0, 1e-9);
  /* Along x two cut edges; along y one, and the bend. */
  bf_expected_error (fold, NULL, 0, 2, &error);
  g_assert_cmpfloat_with_epsilon (bf_main_size (sizes, 0)->error.total_mm, error.total_mm, 1e-9);
  bf_expected_error (fold, &front, 1, 1, &error);
  g_assert_cmpfloat_with_epsilon (bf_main_size (sizes, 1)->error.total_mm, error.total_mm, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_main_size (sizes, 2)->error.total_mm, error.total_mm, 1e-9);
}

static void
test_stock (void)
{
  static const struct
  {
    double width_mm, height_mm;
    BfUnits units;
    const char *name;
  } rows[] = {
    { 276.2, 196.2, BF_UNITS_MM, "200 × 300 mm" },   { 196.2, 276.2, BF_UNITS_MM, "200 × 300 mm" },
    { 500.0, 1000.0, BF_UNITS_MM, "500 × 1000 mm" }, { 500.1, 500.0, BF_UNITS_MM, "500 × 1000 mm" },
    { 1600.0, 1600.0, BF_UNITS_MM, NULL },           { 276.2, 196.2, BF_UNITS_IN, "12 × 12 in" },
    { 304.8, 304.8, BF_UNITS_IN, "12 × 12 in" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *name = bf_stock_name (rows[i].width_mm, rows[i].height_mm, rows[i].units);

      g_assert_cmpstr (name, ==, rows[i].name);
    }
}

/* Worked out by hand. Four of 200 × 120 mm: two pieces of 200 × 300 (120,000 mm²) that hold two
 * each are less than one of 250 × 500 (125,000 mm²) that holds all. */
static void
test_stock_plan (void)
{
  static const struct
  {
    double width_mm, height_mm, between_mm;
    guint quantity;
    BfUnits units;
    const char *name;
    guint n_pieces, longer, shorter;
  } rows[] = {
    { 200.0, 120.0, 1.3, 1, BF_UNITS_MM, "200 × 200 mm", 1, 1, 1 },
    { 200.0, 100.0, 0.0, 2, BF_UNITS_MM, "200 × 200 mm", 1, 1, 2 },
    { 200.0, 100.0, 1.3, 2, BF_UNITS_MM, "100 × 200 mm", 2, 1, 1 },
    { 200.0, 120.0, 1.3, 2, BF_UNITS_MM, "200 × 300 mm", 1, 2, 1 },
    { 200.0, 120.0, 1.3, 4, BF_UNITS_MM, "200 × 300 mm", 2, 2, 1 },
    { 240.0, 120.0, 1.3, 4, BF_UNITS_MM, "250 × 500 mm", 1, 2, 2 },
    { 1000.0, 2000.0, 1.3, 3, BF_UNITS_MM, "1000 × 2000 mm", 3, 1, 1 },
    { 1600.0, 1600.0, 1.3, 3, BF_UNITS_MM, NULL, 0, 0, 0 },
    { 304.8, 152.4, 0.0, 2, BF_UNITS_IN, "12 × 12 in", 1, 1, 2 },
    { 304.8, 152.4, 1.3, 2, BF_UNITS_IN, "6 × 12 in", 2, 1, 1 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_auto (BfStockPlan) plan = { .name = NULL };

      bf_stock_plan (bf_vec2 (rows[i].width_mm, rows[i].height_mm), rows[i].quantity,
                     rows[i].between_mm, rows[i].units, &plan);
      g_assert_cmpstr (plan.name, ==, rows[i].name);
      g_assert_cmpuint (plan.n_pieces, ==, rows[i].n_pieces);
      g_assert_cmpuint (plan.along_longer, ==, rows[i].longer);
      g_assert_cmpuint (plan.along_shorter, ==, rows[i].shorter);
    }
}

/* Whatever the size of blanks, as many as are said lie in a piece beside each other, and the pieces
 * hold them all. */
static void
test_stock_holds (void)
{
  for (guint i = 0; i < 200; i++)
    {
      double w = g_test_rand_double_range (20.0, 900.0), h = g_test_rand_double_range (20.0, 900.0);
      guint quantity = (guint)g_test_rand_int_range (1, 40);
      double longer, shorter, least = MIN (w, h), most = MAX (w, h);
      g_auto (BfStockPlan) plan = { .name = NULL };

      bf_stock_plan (bf_vec2 (w, h), quantity, 2.0, BF_UNITS_MM, &plan);
      g_assert_nonnull (plan.name);
      g_assert_cmpint (sscanf (plan.name, "%lf × %lf mm", &shorter, &longer), ==, 2);
      g_assert_cmpuint (plan.n_pieces * plan.along_longer * plan.along_shorter, >=, quantity);
      g_assert_true ((plan.along_longer * (most + 2.0) - 2.0 <= longer + 1e-3 &&
                      plan.along_shorter * (least + 2.0) - 2.0 <= shorter + 1e-3) ||
                     (plan.along_longer * (least + 2.0) - 2.0 <= longer + 1e-3 &&
                      plan.along_shorter * (most + 2.0) - 2.0 <= shorter + 1e-3));
    }
}

/* What is done once for a part is said for all of them: the metal, the marks, the cuts. */
static void
test_two_off (void)
{
  g_autoptr (BfPart) one = load_example ("spoke-tray"), two = bf_part_copy (one);
  g_autoptr (BfWork) single = work_of (one), both = NULL;
  const BfWorkStep *metal, *strike, *cut;
  double mass, once;

  two->quantity = 2;
  both = work_of (two);
  metal = bf_work_stage_step (both, BF_STAGE_METAL, 0);
  strike = bf_work_stage_step (both, BF_STAGE_MARK, 2);
  cut = bf_work_stage_step (both, BF_STAGE_CUT, 0);
  once = g_ascii_strtod (number_of (bf_work_stage_step (single, BF_STAGE_METAL, 0), "mass")->value,
                         NULL);
  mass = g_ascii_strtod (number_of (metal, "mass of all")->value, NULL);
  g_assert_cmpfloat_with_epsilon (mass, 2.0 * once, 0.011);
  g_assert_nonnull (strstr (metal->words, "2 blanks"));
  g_assert_true (g_str_has_suffix (strike->words, " Mark both blanks."));
  g_assert_true (g_str_has_prefix (number_of (cut, "straight cuts")->value, "2 × "));
  g_assert_cmpuint (bf_work_n_steps (both, BF_STAGE_METAL), ==,
                    bf_work_n_steps (single, BF_STAGE_METAL) + 1);
}

/* One step over the largest stock is looked at, one inside is not. */
static void
test_over_stock (void)
{
  static const struct
  {
    double width_mm, height_mm;
    BfUnits units;
    double found_mm, needed_mm; /* NAN: it fits */
  } rows[] = {
    { 3000.0, 1500.0, BF_UNITS_MM, NAN, NAN },
    { 3000.1, 1500.0, BF_UNITS_MM, 3000.1, 3000.0 },
    { 1500.2, 2000.0, BF_UNITS_MM, 1500.2, 1500.0 },
    { 1524.0, 3048.0, BF_UNITS_IN, NAN, NAN }, /* 60 by 120 in */
    { 1524.0, 3049.0, BF_UNITS_IN, 3049.0, 3048.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (rows[i].width_mm, rows[i].height_mm);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;

      part->units = rows[i].units;
      fold = bf_fold (part);
      check = find_check (fold, "blank-over-stock", "base");
      g_assert_true ((check == NULL) == isnan (rows[i].found_mm));
      if (check == NULL)
        continue;
      g_assert_cmpfloat_with_epsilon (check->found, rows[i].found_mm, 1e-6);
      g_assert_cmpfloat_with_epsilon (check->needed, rows[i].needed_mm, 1e-6);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/work/whole", test_whole);
  g_test_add_func ("/make/work/cautions", test_cautions);
  g_test_add_func ("/make/work/bend-words", test_bend_words);
  g_test_add_func ("/make/work/weakened", test_weakened);
  g_test_add_func ("/make/work/folded", test_folded);
  g_test_add_func ("/make/work/not-in-step", test_not_in_step);
  g_test_add_func ("/make/work/held-by-flange", test_held_by_flange);
  g_test_add_func ("/make/work/formed-after", test_formed_after);
  g_test_add_func ("/make/work/join-order", test_join_order);
  g_test_add_func ("/make/work/tacks", test_tacks);
  g_test_add_func ("/make/work/sizes", test_sizes);
  g_test_add_func ("/make/work/stock", test_stock);
  g_test_add_func ("/make/work/stock-plan", test_stock_plan);
  g_test_add_func ("/make/work/stock-holds", test_stock_holds);
  g_test_add_func ("/make/work/two-off", test_two_off);
  g_test_add_func ("/make/work/over-stock", test_over_stock);
  return g_test_run ();
}
