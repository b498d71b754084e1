/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/names.h"

/* The words of the file format, a second time: they stand in files that people keep. */
static void
test_words (void)
{
  static const struct
  {
    const BfNames *names;
    const char *list;
  } cases[] = {
    { &bf_names_units, "mm, in" },
    { &bf_names_measure, "outside, inside" },
    { &bf_names_turn, "up, down" },
    { &bf_names_cutting_way, "disc, snips, table, service" },
    { &bf_names_drill_set, "metric, fraction, number, list" },
    { &bf_names_joining, "welded, riveted, screwed, folded, none" },
    { &bf_names_bend_way, "brake, bar, slots, score" },
    { &bf_names_allowance_rule, "k-factor, din-6935, handbook, trial-bend" },
    { &bf_names_handbook_group, "soft, medium, hard" },
    { &bf_names_join, "open, covers-before, covers-after, untrimmed, tab, folded" },
    { &bf_names_relief_shape, "round, square, none" },
    { &bf_names_end_relief, "hole, notch" },
    { &bf_names_finish, "sharp, round, chamfer" },
    { &bf_names_opening_shape, "round, slot, rectangle, keyhole, outline" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *list = bf_names_list (cases[i].names);

      g_assert_cmpstr (list, ==, cases[i].list);
      for (guint k = 0; k < cases[i].names->n_words; k++)
        if (cases[i].names->words[k] != NULL)
          g_assert_cmpint (bf_names_find (cases[i].names, cases[i].names->words[k]), ==, k);
      g_assert_cmpint (bf_names_find (cases[i].names, "something"), ==, -1);
      g_assert_cmpint (bf_names_find (cases[i].names, ""), ==, -1);
    }
}

/* Each enum's last member has the last word: a list that misses one would be out of step. */
static void
test_in_step (void)
{
  g_assert_cmpstr (bf_units_name (BF_UNITS_IN), ==, "in");
  g_assert_cmpstr (bf_measure_name (BF_MEASURE_INSIDE), ==, "inside");
  g_assert_cmpstr (bf_turn_name (BF_TURN_DOWN), ==, "down");
  g_assert_cmpstr (bf_cutting_way_name (BF_CUTTING_SERVICE), ==, "service");
  g_assert_cmpstr (bf_drill_set_name (BF_DRILLS_LIST), ==, "list");
  g_assert_cmpstr (bf_joining_name (BF_JOINING_NONE), ==, "none");
  g_assert_cmpstr (bf_bend_way_name (BF_BEND_WAY_SCORE), ==, "score");
  g_assert_cmpstr (bf_allowance_rule_name (BF_ALLOWANCE_TRIAL_BEND), ==, "trial-bend");
  g_assert_cmpstr (bf_handbook_group_name (BF_HANDBOOK_HARD), ==, "hard");
  g_assert_cmpstr (bf_join_name (BF_JOIN_FOLDED), ==, "folded");
  g_assert_cmpstr (bf_relief_shape_name (BF_RELIEF_NONE), ==, "none");
  g_assert_cmpstr (bf_end_relief_name (BF_END_RELIEF_NOTCH), ==, "notch");
  g_assert_cmpstr (bf_finish_name (BF_FINISH_CHAMFER), ==, "chamfer");
  g_assert_cmpstr (bf_opening_shape_name (BF_OPENING_OUTLINE), ==, "outline");
}

static void
test_unset (void)
{
  g_assert_null (bf_bend_way_name (BF_BEND_WAY_UNSET));
  g_assert_null (bf_allowance_rule_name (BF_ALLOWANCE_UNSET));
  g_assert_null (bf_join_name (BF_JOIN_UNSET));
  g_assert_null (bf_relief_shape_name (BF_RELIEF_UNSET));
  g_assert_null (bf_end_relief_name (BF_END_RELIEF_UNSET));
  g_assert_null (bf_finish_name (BF_FINISH_UNSET));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/names/words", test_words);
  g_test_add_func ("/names/in-step", test_in_step);
  g_test_add_func ("/names/unset", test_unset);
  return g_test_run ();
}
