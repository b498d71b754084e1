/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The steps of cutting: what they say of each cut, against the blank itself. */

#include <string.h>

#include "core/units.h"
#include "make-part.h"
#include "read-work.h"

#define N_PARTS 60

/* The step that tells of a cut. */
static const BfWorkStep *
step_of_cut (const BfWork *work, guint cut)
{
  g_autofree char *words = g_strdup_printf ("Cut %u of %u: ", cut + 1, work->cuts->len);

  g_assert_cmpuint (count_steps (work, BF_STAGE_CUT, words), ==, 1);
  return find_step (work, BF_STAGE_CUT, words);
}

/* Toward which side a step says that the waste falls away. */
static BfVec2
told_side (const BfWorkStep *step)
{
  static const struct
  {
    const char *words;
    BfVec2 side;
  } sides[] = { { "above right", { 1.0, 1.0 } },  { "above left", { -1.0, 1.0 } },
                { "below right", { 1.0, -1.0 } }, { "below left", { -1.0, -1.0 } },
                { "at the right", { 1.0, 0.0 } }, { "at the left", { -1.0, 0.0 } },
                { "above", { 0.0, 1.0 } },        { "below", { 0.0, -1.0 } } };

  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    if (strstr (step->words, sides[i].words) != NULL)
      return sides[i].side;
  g_assert_not_reached ();
}

/* How many ends of a cut lie on the circle of a relief that is drilled. */
static guint
count_ends_in_holes (const BfFold *fold, const BfCut *cut)
{
  guint n = 0;

  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      const BfRelief *relief = bf_fold_relief (fold, i);
      double radius = relief->diameter_mm / 2.0;

      if (relief->drill == NULL)
        continue;
      n += fabs (bf_vec2_distance (relief->at, cut->from) - radius) < 1e-3 ? 1 : 0;
      n += fabs (bf_vec2_distance (relief->at, cut->to) - radius) < 1e-3 ? 1 : 0;
    }
  return n;
}

/* ---- every cut ---------------------------------------------------------------------------- */

/* Straight cuts of all kinds of parts: the length said is how far its ends are apart, and one step
 * to the side that is told there is no metal, one to the other side there is. */
static void
check_cut (const BfWork *work, guint i)
{
  const BfCut *cut = bf_cut (work->cuts, i);
  const BfWorkStep *step = step_of_cut (work, i);
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (cut->from, cut->to), 0.5);
  BfVec2 side = told_side (step);

  g_assert_cmpint (step->at, ==, (int)i);
  g_assert_cmpfloat_with_epsilon (nth_number (step->words, 2),
                                  bf_vec2_distance (cut->from, cut->to), 0.051);
  g_assert_cmpfloat_with_epsilon (nth_number (number_of (step, "ends in holes")->value, 0),
                                  count_ends_in_holes (work->fold, cut), 1e-9);
  g_assert_false (is_metal (work->fold, bf_vec2_along (middle, side, 1e-3)));
  g_assert_true (is_metal (work->fold, bf_vec2_along (middle, side, -1e-3)));
}

static void
test_every_cut (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work =
          work_of_any (seed, seed % 2 == 0 ? BF_CUTTING_DISC : BF_CUTTING_SNIPS);
      double together = 0.0;
      const BfWorkStep *first = bf_work_stage_step (work, BF_STAGE_CUT, 0);

      if (bf_fold_count_checks (work->fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      g_test_message ("seed %u", seed);
      for (guint i = 0; i < work->cuts->len; i++)
        {
          check_cut (work, i);
          together += bf_cut (work->cuts, i)->length_mm;
        }
      g_assert_cmpfloat_with_epsilon (nth_number (number_of (first, "together")->value, 0),
                                      together, 0.051);
      g_assert_cmpfloat_with_epsilon (nth_number (number_of (first, "straight cuts")->value, 0),
                                      work->cuts->len, 1e-9);
    }
}

/* ---- ways of cutting ---------------------------------------------------------------------- */

static void
test_ways (void)
{
  static const struct
  {
    BfCuttingWay by;
    const char *first, *caution;
    guint n_guides, n_cuts;
  } rows[] = {
    { BF_CUTTING_DISC, "Clamp a guide on the line", "Guard on", 1, 1 },
    { BF_CUTTING_SNIPS, "Cut with snips", "gloves", 0, 1 },
    { BF_CUTTING_TABLE, "Have the blank cut", "manual", 0, 0 },
    { BF_CUTTING_SERVICE, "Have the blank cut", NULL, 0, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfWork) work = NULL;
      const BfWorkStep *first;

      part->cutting.by = rows[i].by;
      work = work_of (part);
      first = bf_work_stage_step (work, BF_STAGE_CUT, 0);
      g_assert_true (g_str_has_prefix (first->words, rows[i].first));
      g_assert_true ((first->caution == NULL) == (rows[i].caution == NULL));
      g_assert_true (rows[i].caution == NULL || strstr (first->caution, rows[i].caution) != NULL);
      g_assert_cmpuint (count_steps (work, BF_STAGE_CUT, "guide"), ==, rows[i].n_guides);
      g_assert_cmpuint (count_steps (work, BF_STAGE_CUT, "The waste is"), ==,
                        rows[i].n_cuts * work->cuts->len);
      g_assert_nonnull (strstr (
          bf_work_stage_step (work, BF_STAGE_CUT, bf_work_n_steps (work, BF_STAGE_CUT) - 1)->words,
          "burr"));
    }
}

/* A machine cuts all of the outline, arcs and slots too: 2 (200 + 120) of a bare rectangle, and
 * round a hole of 20. */
static void
test_machine_length (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);
  g_autoptr (BfWork) work = NULL;

  hole->at_mm = bf_vec2 (60.0, 60.0);
  hole->diameter_mm = 20.0;
  g_ptr_array_add (part->openings, hole);
  part->cutting.by = BF_CUTTING_TABLE;
  work = work_of (part);
  assert_number (bf_work_stage_step (work, BF_STAGE_CUT, 0), "cut in all", "702.8 mm");
}

/* A cut that is square to an edge of the metal tells how far its line is from that edge, to half a
 * mm as the rule has it, and its guide: so far from the line, toward the metal. Without an offset
 * there is no guide to tell of. */
static void
check_place (const BfWork *work, guint i, double offset_mm)
{
  const BfCut *cut = bf_cut (work->cuts, i);
  const BfWorkStep *step = step_of_cut (work, i);
  const BfBox *box = &work->fold->blank.box;
  gboolean level = fabs (cut->waste.y) > 0.5;
  const BfWorkNumber *line = number_of (step, level ? "line, from below" : "line, from the left");
  const BfWorkNumber *guide =
      number_of (step, level ? "guide, from below" : "guide, from the left");
  double toward = level ? cut->waste.y : cut->waste.x;
  double line_mm;

  g_assert_nonnull (line);
  line_mm = nth_number (line->value, 0);
  g_assert_cmpfloat_with_epsilon (
      line_mm, level ? cut->from.y - box->min.y : cut->from.x - box->min.x, 0.251);
  g_assert_true ((guide != NULL) == (offset_mm > 0.0));
  if (guide != NULL)
    g_assert_cmpfloat_with_epsilon (nth_number (guide->value, 0), line_mm - toward * offset_mm,
                                    1e-6);
}

/* The guide stands off by what the person's tool needs, for every cut of a tray, all of which are
 * square to an edge; the lag of the disc behind is said once, 3.3 mm for 125 mm on 1.5 mm (reckoned
 * by hand in test-cuts.c). */
static void
test_guide (void)
{
  static const struct
  {
    double offset_mm;
    const char *words;
  } rows[] = {
    { 0.0, "the disc just touches it" },
    { 22.5, "22.5 mm from the line" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfWorkOptions options = { .guide_offset_mm = rows[i].offset_mm };
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfWork) work = NULL;

      part->cutting.by = BF_CUTTING_DISC;
      part->cutting.disc_diameter_mm = 125.0;
      fold = bf_fold (part);
      work = bf_work_new (fold, &options);
      g_assert_nonnull (strstr (bf_work_stage_step (work, BF_STAGE_CUT, 0)->words, rows[i].words));
      for (guint k = 0; k < work->cuts->len; k++)
        check_place (work, k, rows[i].offset_mm);
      assert_number (find_step (work, BF_STAGE_CUT, "Plunge"), "shorter behind", "3.3 mm");
      assert_number (find_step (work, BF_STAGE_CUT, "Plunge"), "plunge", "6.5 mm");
    }
}

/* A disc too small to go through says nothing of plunging. */
static void
test_small_disc (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfWork) work = NULL;

  part->cutting.by = BF_CUTTING_DISC;
  part->cutting.disc_diameter_mm = 12.0;
  work = work_of (part);
  g_assert_null (find_step (work, BF_STAGE_CUT, "Plunge"));
}

/* A bracket whose two upper corners are round has them filed; a tray's four rounds are its drilled
 * reliefs, and the waste falls away with straight cuts. */
static void
test_rounds (void)
{
  g_autoptr (BfPart) bracket = load_example ("pump-bracket");
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfWork) round = work_of (bracket), straight = NULL;

  tray->cutting.by = BF_CUTTING_DISC;
  straight = work_of (tray);
  assert_number (find_step (round, BF_STAGE_CUT, "Rounds on the rim"), "rounds", "2");
  g_assert_null (find_step (straight, BF_STAGE_CUT, "Rounds on the rim"));
}

/* ---- slots -------------------------------------------------------------------------------- */

static BfPart *
make_slotted (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  BfPart *part =
      make_tray (g_rand_double_range (rand, 120.0, 400.0), g_rand_double_range (rand, 120.0, 300.0),
                 g_rand_double_range (rand, 30.0, 80.0), 90.0);

  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.inside_radius_mm = NAN;
  part->cutting.by = BF_CUTTING_DISC;
  if (g_rand_boolean (rand))
    {
      BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

      hole->at_mm = bf_vec2 (g_rand_double_range (rand, 30.0, 90.0), 0.0);
      hole->diameter_mm = 12.0;
      g_ptr_array_add (part->openings, hole);
    }
  return part;
}

/* One step a slotted line: as many slots as the blank has there, each as long as the step says, on
 * either face. */
static void
test_slots (void)
{
  guint slotted = 0;

  for (guint seed = 0; seed < 30; seed++)
    {
      g_autoptr (BfPart) part = make_slotted (seed);
      g_autoptr (BfWork) work = work_of (part);

      for (guint i = 0; i < work->fold->bends->len; i++)
        {
          const BfBendResult *bend = bf_fold_bend (work->fold, i);
          g_autofree char *line = g_strdup_printf ("along the bend line of %s.", bend->flange);
          const BfWorkStep *step = find_step (work, BF_STAGE_CUT, line);

          g_assert_true ((step == NULL) == (bend->slots->len == 0));
          if (step == NULL)
            continue;
          slotted++;
          g_assert_cmpuint (count_steps (work, BF_STAGE_CUT, line), ==, 1);
          g_assert_cmpfloat_with_epsilon (nth_number (step->words, 0), bend->slots->len, 1e-9);
          for (guint k = 0; k < bend->slots->len; k++)
            {
              const BfBendSlot *slot = bf_bend_slot (bend, k);

              g_assert_cmpfloat_with_epsilon (
                  nth_number (number_of (step, "on this face")->value, 0), slot->near_mm, 0.051);
              g_assert_cmpfloat_with_epsilon (
                  nth_number (number_of (step, "on the other")->value, 0), slot->far_mm, 0.051);
            }
        }
    }
  g_assert_cmpuint (slotted, >, 60);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/work-cut/every-cut", test_every_cut);
  g_test_add_func ("/make/work-cut/ways", test_ways);
  g_test_add_func ("/make/work-cut/machine-length", test_machine_length);
  g_test_add_func ("/make/work-cut/guide", test_guide);
  g_test_add_func ("/make/work-cut/small-disc", test_small_disc);
  g_test_add_func ("/make/work-cut/rounds", test_rounds);
  g_test_add_func ("/make/work-cut/slots", test_slots);
  return g_test_run ();
}
