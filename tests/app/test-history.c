/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/history.h"

/* Undo is a walk along a list of parts; each part is told apart by its thickness here. */

static BfPart *
part_of (double thickness_mm)
{
  BfPart *part = bf_part_new ();
  part->metal.thickness_mm = thickness_mm;
  return part;
}

static void
push (BfHistory *history, double thickness_mm, const char *name, const char *key)
{
  g_autoptr (BfPart) part = part_of (thickness_mm);
  bf_history_push (history, part, name, key);
}

static BfHistory *
begin (void)
{
  g_autoptr (BfPart) part = part_of (1.0);
  return bf_history_new (part);
}

static void
assert_now (const BfHistory *history, double thickness_mm)
{
  g_assert_cmpfloat_with_epsilon (bf_history_part (history)->metal.thickness_mm, thickness_mm,
                                  1e-12);
}

static void
test_begins_saved (void)
{
  g_autoptr (BfHistory) history = begin ();

  g_assert_true (bf_history_is_saved (history));
  g_assert_null (bf_history_undo_name (history));
  g_assert_null (bf_history_redo_name (history));
  g_assert_false (bf_history_undo (history));
  g_assert_false (bf_history_redo (history));
}

static void
test_walks_both_ways (void)
{
  g_autoptr (BfHistory) history = begin ();

  push (history, 2.0, "two", NULL);
  push (history, 3.0, "three", NULL);
  g_assert_cmpstr (bf_history_undo_name (history), ==, "three");
  g_assert_true (bf_history_undo (history));
  assert_now (history, 2.0);
  g_assert_cmpstr (bf_history_undo_name (history), ==, "two");
  g_assert_cmpstr (bf_history_redo_name (history), ==, "three");
  g_assert_true (bf_history_undo (history));
  assert_now (history, 1.0);
  g_assert_true (bf_history_redo (history));
  g_assert_true (bf_history_redo (history));
  assert_now (history, 3.0);
}

static void
test_new_edit_drops_redo (void)
{
  g_autoptr (BfHistory) history = begin ();

  push (history, 2.0, "two", NULL);
  bf_history_undo (history);
  push (history, 3.0, "three", NULL);
  g_assert_null (bf_history_redo_name (history));
  bf_history_undo (history);
  assert_now (history, 1.0);
}

static void
test_same_key_is_one_step (void)
{
  g_autoptr (BfHistory) history = begin ();

  for (int i = 2; i < 12; i++)
    push (history, i, "thickness", "thickness");
  assert_now (history, 11.0);
  bf_history_undo (history);
  assert_now (history, 1.0);
  g_assert_false (bf_history_undo (history));
}

static void
test_broken_merge_is_two_steps (void)
{
  g_autoptr (BfHistory) history = begin ();

  push (history, 2.0, "thickness", "thickness");
  bf_history_break_merge (history);
  push (history, 3.0, "thickness", "thickness");
  bf_history_undo (history);
  assert_now (history, 2.0);
}

static void
test_undone_step_takes_no_merge (void)
{
  g_autoptr (BfHistory) history = begin ();

  push (history, 2.0, "a", "a");
  push (history, 3.0, "b", "b");
  bf_history_undo (history);
  push (history, 4.0, "a", "a");
  bf_history_undo (history);
  assert_now (history, 2.0);
}

static void
test_saved_part_is_found_again (void)
{
  g_autoptr (BfHistory) history = begin ();

  push (history, 2.0, "a", "a");
  bf_history_mark_saved (history);
  push (history, 3.0, "a", "a");
  g_assert_false (bf_history_is_saved (history));
  bf_history_undo (history);
  assert_now (history, 2.0);
  g_assert_true (bf_history_is_saved (history));
}

static void
test_saved_part_is_lost (void)
{
  g_autoptr (BfHistory) history = begin ();

  push (history, 2.0, "a", NULL);
  bf_history_mark_saved (history);
  bf_history_undo (history);
  push (history, 3.0, "b", NULL);
  g_assert_false (bf_history_is_saved (history));
  bf_history_undo (history);
  g_assert_false (bf_history_is_saved (history));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/history/begins-saved", test_begins_saved);
  g_test_add_func ("/history/walks-both-ways", test_walks_both_ways);
  g_test_add_func ("/history/new-edit-drops-redo", test_new_edit_drops_redo);
  g_test_add_func ("/history/same-key-is-one-step", test_same_key_is_one_step);
  g_test_add_func ("/history/broken-merge-is-two-steps", test_broken_merge_is_two_steps);
  g_test_add_func ("/history/undone-step-takes-no-merge", test_undone_step_takes_no_merge);
  g_test_add_func ("/history/saved-part-is-found-again", test_saved_part_is_found_again);
  g_test_add_func ("/history/saved-part-is-lost", test_saved_part_is_lost);
  return g_test_run ();
}
