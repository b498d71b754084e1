/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/thing.h"
#include "make-part.h"
#include "make/work-ticks.h"

static BfPart *
tray (void)
{
  return make_tray (200, 120, 40, 90);
}

static void
drill (BfPart *part)
{
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

  hole->at_mm = bf_vec2 (50.0, 50.0);
  hole->diameter_mm = 6.0;
  g_ptr_array_add (part->openings, hole);
}

static char *
blank_of (BfPart *part)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  return bf_work_blank_word (fold);
}

static void
test_blank_word (void)
{
  g_autoptr (BfPart) part = tray ();
  g_autoptr (BfPart) named = bf_edit_name (part, "Another name");
  g_autoptr (BfPart) inches = bf_edit_units (part, BF_UNITS_IN);
  g_autoptr (BfPart) ticked = bf_edit_tick (part, "x", "metal:0", TRUE);
  g_autoptr (BfPart) longer = bf_edit_edge_length (part, 0, 200.1);
  g_autoptr (BfPart) drilled = bf_part_copy (part);
  g_autoptr (BfPart) copper = bf_edit_material (part, "copper-half-hard");
  g_autoptr (BfPart) down = bf_edit_flange_turn (part, bf_part_flange (part, 0)->id, BF_TURN_DOWN);
  BfPart *const same[] = { part, named, inches, ticked };
  BfPart *const other[] = { longer, drilled, copper, down };
  g_autofree char *word = blank_of (part);

  drill (drilled);
  for (guint i = 0; i < G_N_ELEMENTS (same); i++)
    {
      g_autofree char *again = blank_of (same[i]);

      g_assert_cmpstr (again, ==, word);
    }
  for (guint i = 0; i < G_N_ELEMENTS (other); i++)
    {
      g_autofree char *another = blank_of (other[i]);

      g_assert_cmpstr (another, !=, word);
    }
}

/* Each step has a word of its own, which begins with its stage. */
static void
test_step_words (void)
{
  g_autoptr (BfPart) part = tray ();
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfWork) work = bf_work_new (fold, NULL);
  g_autoptr (GHashTable) words = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autofree char *first = bf_work_step_word (work, 0);
  g_autofree char *bend = bf_work_step_word (work, work->first[BF_STAGE_BEND] + 1);

  g_assert_cmpstr (first, ==, "metal:0");
  g_assert_cmpstr (bend, ==, "bend:1");
  for (guint i = 0; i < work->steps->len; i++)
    g_hash_table_add (words, bf_work_step_word (work, i));
  g_assert_cmpuint (g_hash_table_size (words), ==, work->steps->len);
}

static void
test_count (void)
{
  g_autoptr (BfPart) part = tray ();
  g_autofree char *blank = blank_of (part);
  g_autoptr (BfPart) one = bf_edit_tick (part, blank, "bend:1", TRUE);
  g_autoptr (BfPart) two = bf_edit_tick (one, blank, "bend:3", TRUE);
  g_autoptr (BfPart) far = bf_edit_tick (two, blank, "bend:99", TRUE);
  g_autoptr (BfFold) fold = bf_fold (far);
  g_autoptr (BfWork) work = bf_work_new (fold, NULL);

  g_assert_cmpuint (bf_work_n_ticked (work, BF_STAGE_BEND, blank), ==, 2);
  g_assert_cmpuint (bf_work_n_ticked (work, BF_STAGE_CUT, blank), ==, 0);
  g_assert_cmpuint (bf_work_n_ticked (work, BF_STAGE_BEND, "another"), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/work-ticks/blank-word", test_blank_word);
  g_test_add_func ("/make/work-ticks/step-words", test_step_words);
  g_test_add_func ("/make/work-ticks/count", test_count);
  return g_test_run ();
}
