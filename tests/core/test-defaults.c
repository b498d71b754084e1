/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/defaults.h"

/* The values are the program's own choice (common practice); they are written down here a second
 * time, because every file that leaves something out depends on them. */

static void
assert_number (double value, double expected)
{
  g_assert_cmpfloat_with_epsilon (value, expected, 1e-12);
}

static void
test_cutting (void)
{
  static const struct
  {
    BfCuttingWay by;
    double slack, kerf, gap;
    BfEndRelief end_relief;
  } cases[] = {
    { BF_CUTTING_DISC, 0.75, 1.3, 0.5, BF_END_RELIEF_HOLE },
    { BF_CUTTING_SNIPS, 0.75, 0, 0.5, BF_END_RELIEF_HOLE },
    { BF_CUTTING_TABLE, 0, 1.5, 0.2, BF_END_RELIEF_NOTCH },
    { BF_CUTTING_SERVICE, 0, 0, 0.2, BF_END_RELIEF_NOTCH },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = bf_part_new ();

      part->cutting.by = cases[i].by;
      assert_number (bf_default_slack_mm (cases[i].by), cases[i].slack);
      assert_number (bf_part_slack_mm (part), cases[i].slack);
      assert_number (bf_default_kerf_mm (cases[i].by), cases[i].kerf);
      assert_number (bf_part_kerf_mm (part), cases[i].kerf);
      assert_number (bf_default_gap_mm (cases[i].by), cases[i].gap);
      assert_number (bf_part_resolve_gap_mm (part, NULL), cases[i].gap);
      g_assert_cmpint (bf_default_end_relief (cases[i].by), ==, cases[i].end_relief);
      g_assert_cmpint (bf_part_resolve_end_relief (part, BF_END_RELIEF_UNSET), ==,
                       cases[i].end_relief);
      g_assert_cmpint (bf_part_resolve_end_relief (part, BF_END_RELIEF_HOLE), ==,
                       BF_END_RELIEF_HOLE);
      assert_number (bf_part_disc_diameter_mm (part), 125);
    }
}

/* A size that is given holds, 0 too. */
static void
test_cutting_given (void)
{
  g_autoptr (BfPart) part = bf_part_new ();

  part->cutting.slack_mm = 0;
  part->cutting.kerf_mm = 2;
  part->cutting.disc_diameter_mm = 115;
  assert_number (bf_part_slack_mm (part), 0);
  assert_number (bf_part_kerf_mm (part), 2);
  assert_number (bf_part_disc_diameter_mm (part), 115);
}

static void
test_bending (void)
{
  static const struct
  {
    BfBendWay way;
    double angle_deg, radius, k;
  } cases[] = {
    { BF_BEND_WAY_BRAKE, 90, 2, 0.42 },  { BF_BEND_WAY_BAR, 90, 2, 0.42 },
    { BF_BEND_WAY_BAR, 179, 2, 0.42 },   { BF_BEND_WAY_BAR, 1, 2, 0.42 },
    { BF_BEND_WAY_SLOTS, 90, 1, 0.40 },  { BF_BEND_WAY_SCORE, 90, 0, 0.50 },
    { BF_BEND_WAY_BRAKE, 180, 0, 0.50 }, { BF_BEND_WAY_BAR, 180, 0, 0.50 },
    { BF_BEND_WAY_SLOTS, 180, 0, 0.50 }, { BF_BEND_WAY_SCORE, 180, 0, 0.50 },
    { BF_BEND_WAY_UNSET, 90, 2, 0.42 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = bf_part_new ();
      BfFlange *flange = bf_flange_new ("f");
      BfBend bend;

      part->metal.thickness_mm = 2;
      flange->bend.way = cases[i].way;
      flange->angle_deg = cases[i].angle_deg;
      g_ptr_array_add (part->flanges, flange);
      bend = bf_part_resolve_bend (part, flange);
      assert_number (bf_default_radius_mm (cases[i].way, 2, cases[i].angle_deg), cases[i].radius);
      assert_number (bf_default_k (cases[i].way, cases[i].angle_deg), cases[i].k);
      assert_number (bend.inside_radius_mm, cases[i].radius);
      assert_number (bend.allowance.k, cases[i].k);
      g_assert_cmpint (bend.allowance.rule, ==, BF_ALLOWANCE_K_FACTOR);
      g_assert_cmpint (bend.way, ==,
                       cases[i].way == BF_BEND_WAY_UNSET ? BF_BEND_WAY_BAR : cases[i].way);
    }
}

static void
test_joining (void)
{
  static const struct
  {
    BfJoining joining;
    BfJoin join;
  } cases[] = {
    { BF_JOINING_WELDED, BF_JOIN_OPEN },   { BF_JOINING_NONE, BF_JOIN_OPEN },
    { BF_JOINING_RIVETED, BF_JOIN_TAB },   { BF_JOINING_SCREWED, BF_JOIN_TAB },
    { BF_JOINING_FOLDED, BF_JOIN_FOLDED },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = bf_part_new ();
      g_autoptr (BfCorner) corner = bf_corner_new ("base", 0);

      part->joining = cases[i].joining;
      g_assert_cmpint (bf_default_join (cases[i].joining), ==, cases[i].join);
      g_assert_cmpint (bf_part_resolve_join (part, NULL), ==, cases[i].join);
      g_assert_cmpint (bf_part_resolve_join (part, corner), ==, cases[i].join);
      corner->join = BF_JOIN_UNTRIMMED;
      g_assert_cmpint (bf_part_resolve_join (part, corner), ==, BF_JOIN_UNTRIMMED);
    }
}

static void
test_gap_given (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  g_autoptr (BfCorner) corner = bf_corner_new ("base", 0);

  assert_number (bf_part_resolve_gap_mm (part, corner), 0.5);
  corner->gap_mm = 0;
  assert_number (bf_part_resolve_gap_mm (part, corner), 0);
}

/* The part at 90°, the flange at its own angle. A value given anywhere beats a way's default, a
 * hem's too. */
static void
test_levels (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  g_autoptr (BfFlange) flange = bf_flange_new ("f");
  BfBend bend;

  part->bend.inside_radius_mm = 3;
  flange->angle_deg = 180;
  bend = bf_part_resolve_bend (part, flange);
  assert_number (bend.inside_radius_mm, 3);
  assert_number (bend.allowance.k, 0.5);
  flange->bend.inside_radius_mm = 0;
  bend = bf_part_resolve_bend (part, flange);
  assert_number (bend.inside_radius_mm, 0);
  part->bend.allowance.k = 0.33;
  bend = bf_part_resolve_bend (part, flange);
  assert_number (bend.allowance.k, 0.33);
  flange->bend.allowance.k = 0.44;
  bend = bf_part_resolve_bend (part, flange);
  assert_number (bend.allowance.k, 0.44);
  bend = bf_part_resolve_bend (part, NULL);
  assert_number (bend.allowance.k, 0.33);
}

/* Each member merges by itself. */
static void
test_merge (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  g_autoptr (BfFlange) flange = bf_flange_new ("f");
  BfBend bend;

  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.slot_mm = 40;
  part->bend.hand_limit_n = 150;
  part->bend.hand_lever_mm = 250;
  part->bend.score_left_mm = 0.5;
  flange->bend.bridge_mm = 9;
  flange->bend.hand_limit_n = 80;
  bend = bf_part_resolve_bend (part, flange);
  g_assert_cmpint (bend.way, ==, BF_BEND_WAY_SLOTS);
  assert_number (bend.inside_radius_mm, 0.75);
  assert_number (bend.slot_mm, 40);
  assert_number (bend.bridge_mm, 9);
  assert_number (bend.hand_limit_n, 80);
  assert_number (bend.hand_lever_mm, 250);
  assert_number (bend.score_left_mm, 0.5);
  flange->bend.way = BF_BEND_WAY_BRAKE;
  bend = bf_part_resolve_bend (part, flange);
  assert_number (bend.inside_radius_mm, 1.5);
}

/* A rule brings its group along; k and the trial's id are inherited. */
static void
test_merge_allowance (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  g_autoptr (BfFlange) flange = bf_flange_new ("f");
  BfBend bend;

  part->bend.allowance.rule = BF_ALLOWANCE_HANDBOOK;
  part->bend.allowance.group = BF_HANDBOOK_SOFT;
  bend = bf_part_resolve_bend (part, flange);
  g_assert_cmpint (bend.allowance.rule, ==, BF_ALLOWANCE_HANDBOOK);
  g_assert_cmpint (bend.allowance.group, ==, BF_HANDBOOK_SOFT);
  flange->bend.allowance.rule = BF_ALLOWANCE_HANDBOOK;
  flange->bend.allowance.group = BF_HANDBOOK_HARD;
  bend = bf_part_resolve_bend (part, flange);
  g_assert_cmpint (bend.allowance.group, ==, BF_HANDBOOK_HARD);
  part->bend.allowance.rule = BF_ALLOWANCE_TRIAL_BEND;
  part->bend.allowance.trial_id = g_strdup ("strip");
  part->bend.allowance.k = 0.37;
  flange->bend.allowance.rule = BF_ALLOWANCE_UNSET;
  bend = bf_part_resolve_bend (part, flange);
  g_assert_cmpint (bend.allowance.rule, ==, BF_ALLOWANCE_TRIAL_BEND);
  g_assert_cmpstr (bend.allowance.trial_id, ==, "strip");
  assert_number (bend.allowance.k, 0.37);
  flange->bend.allowance.rule = BF_ALLOWANCE_DIN_6935;
  bend = bf_part_resolve_bend (part, flange);
  g_assert_cmpint (bend.allowance.rule, ==, BF_ALLOWANCE_DIN_6935);
}

/* What nobody gave and no way knows stays open: it is planned. */
static void
test_left_open (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  BfBend bend = bf_part_resolve_bend (part, NULL);

  g_assert_true (isnan (bend.slot_mm));
  g_assert_true (isnan (bend.bridge_mm));
  g_assert_true (isnan (bend.score_left_mm));
  g_assert_true (isnan (bend.hand_limit_n));
  g_assert_true (isnan (bend.hand_lever_mm));
}

/* A score leaves two fifths of the metal (common practice). */
static void
test_score_left (void)
{
  assert_number (bf_default_score_left_mm (1.5), 0.6);
  assert_number (bf_default_score_left_mm (3.0), 1.2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/defaults/score-left", test_score_left);
  g_test_add_func ("/defaults/cutting", test_cutting);
  g_test_add_func ("/defaults/cutting-given", test_cutting_given);
  g_test_add_func ("/defaults/bending", test_bending);
  g_test_add_func ("/defaults/joining", test_joining);
  g_test_add_func ("/defaults/gap-given", test_gap_given);
  g_test_add_func ("/defaults/levels", test_levels);
  g_test_add_func ("/defaults/merge", test_merge);
  g_test_add_func ("/defaults/merge-allowance", test_merge_allowance);
  g_test_add_func ("/defaults/left-open", test_left_open);
  return g_test_run ();
}
