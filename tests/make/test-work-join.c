/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The steps of joining, against the seams of the fold. */

#include <string.h>

#include "make-any.h"
#include "make-part.h"
#include "core/own-metals.h"
#include "make/join-plan.h"
#include "read-work.h"

#define N_PARTS 60

/* The step that tells of a seam, and fails the test where there are none or two. */
static const BfWorkStep *
step_of_seam (const BfWork *work, guint seam)
{
  const BfWorkStep *found = NULL;

  for (guint i = 0; i < bf_work_n_steps (work, BF_STAGE_JOIN); i++)
    {
      const BfWorkStep *step = bf_work_stage_step (work, BF_STAGE_JOIN, i);

      if (step->shows != BF_SHOWS_SEAM || step->at != (int)seam)
        continue;
      g_assert_null (found);
      found = step;
    }
  g_assert_nonnull (found);
  return found;
}

static void
check_seam (const BfWork *work, guint i)
{
  const BfSeam *seam = bf_fold_seam (work->fold, i);
  const BfWorkStep *step = step_of_seam (work, i);
  const BfWorkNumber *gap = number_of (step, "gap"), *tacks = number_of (step, "tacks");
  g_autofree char *names = g_strdup_printf (": %s to %s.", seam->before, seam->after);

  g_assert_nonnull (strstr (step->words, names));
  g_assert_cmpfloat_with_epsilon (nth_number (number_of (step, "long")->value, 0), seam->length_mm,
                                  0.051);
  g_assert_true ((gap == NULL) == isnan (seam->gap_mm));
  if (gap != NULL)
    g_assert_cmpfloat_with_epsilon (nth_number (gap->value, 0), seam->gap_mm, 0.051);
  g_assert_true ((tacks != NULL) == (work->fold->part->joining == BF_JOINING_WELDED));
}

/* Every seam of the plan is joined in one step, by its two flanges' names; they are counted from 1
 * up, and the tacks of all add up to those that the first step tells. */
static void
check_all (const BfWork *work)
{
  double tacks = 0.0;
  const BfWorkStep *tacking = find_step (work, BF_STAGE_JOIN, "tack them");

  for (guint i = 0; i < work->seams->len; i++)
    {
      guint seam = g_array_index (work->seams, guint, i);
      g_autofree char *count = g_strdup_printf ("Seam %u of %u: ", i + 1, work->seams->len);
      const BfWorkNumber *one;

      check_seam (work, seam);
      g_assert_true (find_step (work, BF_STAGE_JOIN, count) == step_of_seam (work, seam));
      one = number_of (step_of_seam (work, seam), "tacks");
      tacks += one != NULL ? nth_number (one->value, 0) : 0.0;
    }
  if (tacking == NULL)
    return;
  g_assert_cmpfloat_with_epsilon (nth_number (number_of (tacking, "tacks")->value, 0), tacks, 1e-9);
  g_assert_cmpfloat_with_epsilon (nth_number (number_of (tacking, "seams")->value, 0),
                                  work->seams->len, 1e-9);
}

static void
test_every_seam (void)
{
  static const BfJoining joinings[] = { BF_JOINING_WELDED, BF_JOINING_RIVETED, BF_JOINING_SCREWED };
  guint seams = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfWork) work = NULL;

      part->joining = joinings[seed / 6 % G_N_ELEMENTS (joinings)];
      work = work_of (part);
      g_test_message ("seed %u", seed);
      check_all (work);
      seams += work->seams->len;
    }
  g_assert_cmpuint (seams, >, N_PARTS);
}

/* ---- by joining and metal ----------------------------------------------------------------- */

/* Zinc and brass boil off under an arc (common practice): soldered or riveted, never tacked. */
static void
test_welded_or_not (void)
{
  static const struct
  {
    const char *material;
    gboolean welded;
  } rows[] = { { "mild-steel", TRUE },
               { "galvanized-steel", TRUE },
               { "stainless-304", TRUE },
               { "copper-half-hard", TRUE },
               { "zinc", FALSE },
               { "brass-half-hard", FALSE },
               { NULL, TRUE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfWork) work = NULL;

      g_free (part->metal.material);
      part->metal.material = g_strdup (rows[i].material);
      part->joining = BF_JOINING_WELDED;
      work = work_of (part);
      g_assert_true ((find_step (work, BF_STAGE_JOIN, "Weld short runs") != NULL) ==
                     rows[i].welded);
      g_assert_true ((find_step (work, BF_STAGE_JOIN, "Do not weld") == NULL) == rows[i].welded);
      g_assert_cmpuint (count_steps (work, BF_STAGE_JOIN, "Seam "), ==, 4);
    }
}

/* What is not welded is not tacked either. */
static void
test_no_tacks_on_zinc (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfWork) work = NULL;

  g_free (part->metal.material);
  part->metal.material = g_strdup ("zinc");
  part->joining = BF_JOINING_WELDED;
  work = work_of (part);
  for (guint i = 0; i < work->fold->seams->len; i++)
    g_assert_null (number_of (step_of_seam (work, i), "tacks"));
}

static void
test_joinings (void)
{
  static const struct
  {
    BfJoining joining;
    const char *first; /* NULL: no step at all */
  } rows[] = {
    { BF_JOINING_WELDED, "Take paper, glue and oil off" },
    { BF_JOINING_RIVETED, "rivet: one hole of each corner first" },
    { BF_JOINING_SCREWED, "put all screws in loosely" },
    { BF_JOINING_FOLDED, "Tap the folded corners flat" },
    { BF_JOINING_NONE, NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfWork) work = NULL;

      part->joining = rows[i].joining;
      work = work_of (part);
      g_assert_true ((bf_work_n_steps (work, BF_STAGE_JOIN) == 0) == (rows[i].first == NULL));
      if (rows[i].first != NULL)
        g_assert_nonnull (
            strstr (bf_work_stage_step (work, BF_STAGE_JOIN, 0)->words, rows[i].first));
    }
}

/* Each caution of welding stands at the step that it belongs to, whatever the metal; what a metal
 * of one's own is like counts, not what it is called. */
static void
test_cautions (void)
{
  static const struct
  {
    const char *step, *says;
  } rows[] = {
    { "Take paper, glue", "never chlorinated" },
    { "Clamp the corners", "Cover eyes" },
    { "Seam 1 of 4", "vessel that held fuel" },
    { "Weld short runs", "does not glow" },
  };
  static const struct
  {
    const char *material, *says;
  } fumes[] = {
    { "mild-steel", "cadmium" },     { "galvanized-steel", "Zinc fumes" },
    { "stainless-304", "chromium" }, { "aluminium-3003-h14", "a coating that you do not know" },
    { "barn-plate", "Zinc fumes" },
  };
  BfMaterial own = *bf_material_find ("mild-steel");

  own.name = "Barn plate";
  own.like = "galvanized-steel";
  g_assert_nonnull (bf_own_metal_keep (NULL, &own, NULL));
  for (guint i = 0; i < G_N_ELEMENTS (fumes); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfWork) work = NULL;

      g_free (part->metal.material);
      part->metal.material = g_strdup (fumes[i].material);
      part->joining = BF_JOINING_WELDED;
      work = work_of (part);
      g_test_message ("%s", fumes[i].material);
      g_assert_nonnull (
          strstr (find_step (work, BF_STAGE_JOIN, "Grind the seams")->caution, fumes[i].says));
      for (guint k = 0; k < G_N_ELEMENTS (rows); k++)
        g_assert_nonnull (
            strstr (find_step (work, BF_STAGE_JOIN, rows[k].step)->caution, rows[k].says));
      g_assert_null (find_step (work, BF_STAGE_JOIN, "Drill a vent"));
    }
}

/* A hollow that welding closes is vented first. */
static void
test_vent (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfWork) work = NULL;

  add_lip (part, "lid", "f0", 119.0, 90.0);
  part->joining = BF_JOINING_WELDED;
  work = work_of (part);
  g_assert_nonnull (strstr (find_step (work, BF_STAGE_JOIN, "Drill a vent")->caution, "blows out"));
  g_assert_nonnull (strstr (find_step (work, BF_STAGE_JOIN, "Weld short")->caution, "glow"));
}

/* A part whose flanges do not meet has nothing to join. */
static void
test_nothing_meets (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfWork) work = NULL;

  add_flange (part, "front", 0, 40.0, 90.0);
  add_flange (part, "back", 2, 40.0, 90.0);
  part->joining = BF_JOINING_WELDED;
  work = work_of (part);
  g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_JOIN), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/make/work-join/every-seam", test_every_seam);
  g_test_add_func ("/make/work-join/welded-or-not", test_welded_or_not);
  g_test_add_func ("/make/work-join/no-tacks-on-zinc", test_no_tacks_on_zinc);
  g_test_add_func ("/make/work-join/joinings", test_joinings);
  g_test_add_func ("/make/work-join/nothing-meets", test_nothing_meets);
  g_test_add_func ("/make/work-join/cautions", test_cautions);
  g_test_add_func ("/make/work-join/vent", test_vent);
  return g_test_run ();
}
