/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "app/setup-changes.h"
#include "app/setup-drills.h"
#include "app/setup-edit.h"
#include "core/drills.h"
#include "core/edit.h"
#include "core/first-part.h"
#include "core/own-drills.h"
#include "core/own-trials.h"

/* A tray of 200 × 120 × 40 outside in 1.5 mm: its blank is 274.692 × 194.692 (two deductions of
 * 2.654 off each side), its corners are drilled 6.5 mm. */
static BfPart *
make_tray (void)
{
  static const BfVec2 outline[] = { { 0, 0 }, { 200, 0 }, { 200, 120 }, { 0, 120 } };
  g_autoptr (BfPart) first = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfPart) base = bf_edit_outline (first, outline, G_N_ELEMENTS (outline));
  BfEdge edge = { "base", BF_EDGE_INDEX, 0 };
  g_autofree char *id = NULL;
  g_autoptr (BfPart) one = bf_edit_add_flange (base, &edge, BF_TURN_UP, &id);
  g_autoptr (BfPart) longer = bf_edit_flange_length (one, id, 40.0);

  return bf_edit_copy_all_round (longer, id);
}

/* Takes the part that it is changed to. */
static char *
changes (BfPart *part, BfPart *changed)
{
  g_autoptr (BfFold) before = bf_fold (part), after = bf_fold (changed);

  bf_part_unref (changed);
  return bf_setup_changes (before, after);
}

static void
test_words (void)
{
  g_autoptr (BfPart) part = make_tray ();
  g_autoptr (GArray) step = bf_drills_parse ("4..20 + 2", BF_UNITS_MM, NULL);
  BfAllowance own = { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.3 };
  g_autofree char *drill = changes (part, bf_edit_drills (part, BF_DRILLS_LIST, step));
  g_autofree char *k = changes (part, bf_edit_allowance (part, &own));
  g_autofree char *none = changes (part, bf_edit_hand (part, 190.0, NAN));
  g_autofree char *board = changes (part, bf_edit_hand (part, NAN, 100.0));
  g_autofree char *service = changes (part, bf_edit_cutting (part, BF_CUTTING_SERVICE, NAN));
  g_autofree char *snips = changes (part, bf_edit_cutting (part, BF_CUTTING_SNIPS, NAN));
  g_autofree char *riveted = changes (part, bf_edit_joining (part, BF_JOINING_RIVETED));
  g_autofree char *folded = changes (part, bf_edit_joining (part, BF_JOINING_FOLDED));
  g_autofree char *slotted = changes (part, bf_edit_bend_way (part, BF_BEND_WAY_SLOTS));

  g_assert_cmpstr (drill, ==, "relief drill 6.5 mm → 8 mm");
  g_assert_cmpstr (
      k, ==, "relief drill 6.5 mm → 6 mm, K 0.42 → 0.3, blank 274.7 × 194.7 mm → 274.1 × 194.1 mm");
  g_assert_null (none);
  g_assert_cmpstr (board, ==,
                   "push firm, 10 kg → too hard, needs a longer board or a brake, 31 kg");
  g_assert_cmpstr (service, ==,
                   "relief drill 6.5 mm → none, kerf 1.3 mm → 0 mm, slack 0.75 mm → 0 mm, corner "
                   "gap 0.5 mm → 0.2 mm");
  g_assert_cmpstr (snips, ==, "kerf 1.3 mm → 0 mm");
  g_assert_nonnull (strstr (riveted, "tabs 0 → 4"));
  g_assert_nonnull (strstr (folded, "folded corners 0 → 4"));
  g_assert_cmpstr (slotted, ==,
                   "relief drill 6.5 mm → 4.5 mm, inside radius 1.5 mm → 0.75 mm, K 0.42 → 0.4, "
                   "slots 0 → 6, push firm, 10 kg → too hard, needs a longer board or a brake, "
                   "23 kg, blank 274.7 × 194.7 mm → 275.2 × 195.2 mm");
}

/* A tray's sizes can be said either way; a strip beside a wall that ends within its edge cannot. */
static void
test_measure (void)
{
  g_autoptr (BfPart) part = make_tray ();
  g_autoptr (BfPart) inset = bf_part_copy (part);
  g_autofree char *none = changes (part, bf_edit_measure (part, BF_MEASURE_INSIDE));
  g_autofree char *moved = NULL;

  ((BfFlange *)inset->flanges->pdata[0])->start_mm = 40.0;
  moved = changes (inset, bf_edit_measure (inset, BF_MEASURE_INSIDE));
  g_assert_null (none);
  g_assert_cmpstr (moved, ==,
                   "up to 1.5 mm of metal moves at the base: no size can say it otherwise");
}

static void
test_expected (void)
{
  g_autoptr (BfPart) part = make_tray ();
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autofree char *wall = bf_setup_expect_words (fold);
  g_autofree char *k = bf_part_k_words (fold), *typed_k = NULL;
  BfAllowance typed = { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.37 };
  g_autoptr (BfPart) own = NULL;
  g_autoptr (BfFold) typed_fold = NULL;

  g_assert_cmpstr (wall, ==, "Expect ± 1 mm, mostly from the cutting.");
  g_assert_cmpstr (k, ==, "0.42 ± 0.06, a rule of thumb");
  own = bf_edit_allowance (part, &typed);
  typed_fold = bf_fold (own);
  typed_k = bf_part_k_words (typed_fold);
  g_assert_cmpstr (typed_k, ==, "0.37 ± 0.06, as you set it");
}

/* Every choice of drills is what the part has after it was chosen; a box of one's own, too. */
static void
test_drills (void)
{
  static const char *const words[] = { "metric",     "fraction",       "number",
                                       "list:A..Z",  "list:4..20 + 2", "list:4..30 + 2",
                                       "box:red-box" };
  g_autoptr (BfPart) part = make_tray ();
  g_autoptr (GArray) sizes = bf_drills_parse ("3; 4.2; 9", BF_UNITS_MM, NULL);

  g_assert_true (bf_own_drills_keep (NULL, "Red box", sizes, NULL));
  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    {
      g_autoptr (BfPart) changed = bf_setup_drills_edit (part, words[i]);
      g_autofree char *word = bf_setup_drills_word (changed);

      g_assert_cmpstr (word, ==, words[i]);
    }
  g_assert_null (bf_setup_drills_edit (part, "box:gone"));
  g_assert_null (bf_setup_drills_edit (part, "list:"));
  g_assert_null (bf_setup_drills_edit (part, "sharp"));
}

static void
keep_trial (void)
{
  g_autoptr (GArray) strips = g_array_new (FALSE, FALSE, sizeof (BfTrialStrip));
  BfTrialStrip strip = { 100.0, { 51.4, 51.4 }, 90.0 };
  BfTrialRecord trial = { .material = "mild-steel",
                          .date = "2026-01-31",
                          .thickness_mm = 2.0,
                          .radius_mm = 2.0,
                          .way = BF_BEND_WAY_BAR,
                          .measured_to_mm = 0.1,
                          .strips = strips,
                          .k = 0.46,
                          .k_error = 0.03 };

  g_array_append_val (strips, strip);
  g_assert_nonnull (bf_own_trial_keep (&trial, NULL));
}

/* A thickness that a trial bend fits brings its K, in one step that is undone as one. */
static void
test_trial_fits (void)
{
  g_autoptr (BfDocument) document = bf_document_new ();
  g_autoptr (BfPart) part = make_tray ();
  g_autoptr (BfFold) before = NULL;
  g_autofree char *k = NULL, *told = NULL;

  keep_trial ();
  bf_document_set_part (document, part, NULL);
  before = bf_fold_ref (bf_document_get_fold (document));
  bf_setup_edit (document, bf_edit_thickness (part, 2.0), "Thickness", NULL);
  told = bf_setup_changes (before, bf_document_get_fold (document));
  g_assert_nonnull (strstr (told, "K 0.42 → 0.46 by a trial bend"));
  g_assert_cmpint (bf_document_get_part (document)->bend.allowance.rule, ==,
                   BF_ALLOWANCE_TRIAL_BEND);
  k = bf_part_k_words (bf_document_get_fold (document));
  g_assert_cmpstr (k, ==, "0.46 ± 0.03, by a trial bend");
  bf_document_undo (document);
  g_assert_true (bf_document_get_part (document) == part);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/setup-changes/words", test_words);
  g_test_add_func ("/setup-changes/measure", test_measure);
  g_test_add_func ("/setup-changes/expected", test_expected);
  g_test_add_func ("/setup-changes/drills", test_drills);
  g_test_add_func ("/setup-changes/trial-fits", test_trial_fits);
  return g_test_run ();
}
