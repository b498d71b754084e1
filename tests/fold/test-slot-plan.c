/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "fold/bend-force.h"
#include "fold/slot-plan.h"

#define NEAR 1e-6

static BfSlotTool
tool_of (BfCuttingWay by, double disc_mm, double thickness_mm)
{
  g_autoptr (BfPart) part = bf_part_new ();

  part->cutting.by = by;
  part->cutting.disc_diameter_mm = disc_mm;
  part->metal.thickness_mm = thickness_mm;
  return bf_slot_tool (part);
}

static const BfSlot *
slot (const GArray *slots, guint i)
{
  return &g_array_index (slots, BfSlot, i);
}

/* A disc of 125 mm that stands 20 mm deep in 1.5 mm metal: by the circle, 2√(20·105) = 91.652 on
 * the near face, 2√(18.5·106.5) = 88.774 on the far one. */
static void
test_chords (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_DISC, 125.0, 1.5);
  double near = 2.0 * sqrt (20.0 * 105.0), far = 2.0 * sqrt (18.5 * 106.5);

  g_assert_cmpfloat_with_epsilon (bf_slot_far_mm (&tool, near), far, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_slot_mean_mm (&tool, near), (near + far) / 2.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_slot_near_mm (&tool, (near + far) / 2.0), near, NEAR);
  g_assert_cmpfloat_with_epsilon (bf_slot_near_mm (&tool, 200.0),
                                  200.0 + (125.0 - bf_slot_far_mm (&tool, 125.0)) / 2.0, NEAR);
  tool = tool_of (BF_CUTTING_TABLE, NAN, 1.5);
  g_assert_cmpfloat_with_epsilon (bf_slot_far_mm (&tool, 40.0), 40.0, 1e-12);
}

/* 300 mm of which 100 may stay, cut by machine: three slots of 66.7, marked 67, since one or two
 * reach no more than 100 each. Bridges between are equal; the rest is at the ends. */
static void
test_by_hand (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_TABLE, NAN, 1.5);
  const BfRun whole = { 0.0, 300.0 };
  BfSlotTask task = { &whole, 1, 101.0, NAN, NAN };
  g_autoptr (GArray) two = bf_slot_plan (&tool, &task);
  g_autoptr (GArray) three = NULL;

  g_assert_cmpuint (two->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (slot (two, 0)->near_mm, 99.5, NEAR);
  task.keep_mm = 99.0;
  three = bf_slot_plan (&tool, &task);
  g_assert_cmpuint (three->len, ==, 3);
  g_assert_cmpfloat_with_epsilon (slot (three, 0)->near_mm, 67.0, NEAR);
  g_assert_cmpfloat_with_epsilon (slot (three, 1)->at_mm, 150.0, NEAR);
  g_assert_cmpfloat_with_epsilon (slot (three, 1)->at_mm - slot (three, 0)->at_mm, 67.0 + 24.5,
                                  NEAR);
  g_assert_cmpfloat_with_epsilon (bf_slot_plan_kept_mm (&task, three), 99.0, NEAR);
}

/* A disc has to break through by 1 mm to leave a slot, and goes a third of its width deep: by the
 * circle. A machine's slots are 5 to 100 mm long. All common practice. */
static void
test_reach (void)
{
  static const double discs[] = { 100.0, 125.0, 230.0 };
  BfSlotTool table = tool_of (BF_CUTTING_TABLE, NAN, 1.5);

  for (guint i = 0; i < G_N_ELEMENTS (discs); i++)
    {
      double d = discs[i], deep = d / 3.0;
      BfSlotTool tool = tool_of (BF_CUTTING_DISC, d, 1.5);

      g_assert_cmpfloat_with_epsilon (tool.shortest_mm, 2.0 * sqrt (2.5 * (d - 2.5)), 1e-9);
      g_assert_cmpfloat_with_epsilon (tool.longest_mm, 2.0 * sqrt (deep * (d - deep)), 1e-9);
    }
  g_assert_cmpfloat_with_epsilon (table.shortest_mm, 5.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (table.longest_mm, 100.0, 1e-12);
}

/* Two bridges of 3 mm and a slot of 5 want 11 mm; on less there is none. */
static void
test_too_short_a_bend (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_TABLE, NAN, 1.5);
  const BfRun fits = { 0.0, 11.01 }, misses = { 0.0, 10.99 };
  BfSlotTask task = { &fits, 1, 1.0, NAN, NAN };
  g_autoptr (GArray) one = bf_slot_plan (&tool, &task), none = NULL;

  g_assert_cmpuint (one->len, ==, 1);
  task.stretches = &misses;
  none = bf_slot_plan (&tool, &task);
  g_assert_cmpuint (none->len, ==, 0);
}

static void
test_none_needed (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_DISC, 125.0, 1.5);
  const BfRun whole = { 0.0, 80.0 };
  BfSlotTask task = { &whole, 1, 80.0, NAN, NAN };
  g_autoptr (GArray) slots = bf_slot_plan (&tool, &task);

  g_assert_cmpuint (slots->len, ==, 0);
}

static void
test_snips_cut_none (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_SNIPS, NAN, 1.0);
  const BfRun whole = { 0.0, 300.0 };
  BfSlotTask task = { &whole, 1, 10.0, NAN, NAN };
  g_autoptr (GArray) slots = bf_slot_plan (&tool, &task);

  g_assert_false (tool.cuts);
  g_assert_cmpuint (slots->len, ==, 0);
}

/* Slot 50, bridge 12 on 300 mm by machine: four fit (4·50 + 5·12 = 260), the ends get 32. */
static void
test_given (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_SERVICE, NAN, 1.5);
  const BfRun whole = { 10.0, 310.0 };
  BfSlotTask task = { &whole, 1, 0.0, 50.0, 12.0 };
  g_autoptr (GArray) slots = bf_slot_plan (&tool, &task);

  g_assert_cmpuint (slots->len, ==, 4);
  g_assert_cmpfloat_with_epsilon (slot (slots, 0)->at_mm, 10.0 + 32.0 + 25.0, NEAR);
  g_assert_cmpfloat_with_epsilon (slot (slots, 3)->at_mm, 310.0 - 32.0 - 25.0, NEAR);
  g_assert_cmpfloat_with_epsilon (slot (slots, 2)->length_mm, 50.0, NEAR);
}

/* A hole in the middle parts the line: the slots keep clear of it, with a bridge on both sides. */
static void
test_parted (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_DISC, 125.0, 1.2);
  const BfRun parts[] = { { 0.0, 120.0 }, { 140.0, 300.0 } };
  BfSlotTask task = { parts, 2, 100.0, NAN, NAN };
  g_autoptr (GArray) slots = bf_slot_plan (&tool, &task);

  g_assert_cmpuint (slots->len, ==, 2);
  g_assert_cmpfloat (slot (slots, 0)->at_mm + slot (slots, 0)->near_mm / 2.0, <=, 110.0 + NEAR);
  g_assert_cmpfloat (slot (slots, 1)->at_mm - slot (slots, 1)->near_mm / 2.0, >=, 150.0 - NEAR);
  g_assert_cmpfloat (bf_slot_plan_kept_mm (&task, slots), <=, 100.0);
}

/* Recomputes from the drawn slots alone what a plan must hold. */
static void
judge (const BfSlotTool *tool, const BfSlotTask *task, const GArray *slots)
{
  double end = task->stretches[0].from_mm, cut = 0.0;

  for (guint i = 0; i < slots->len; i++)
    {
      const BfSlot *one = slot (slots, i);
      double near = one->near_mm, r = tool->disc_mm / 2.0;

      g_assert_cmpfloat (one->at_mm - near / 2.0 - end, >=, tool->least_bridge_mm - NEAR);
      g_assert_cmpfloat (near, >=, tool->shortest_mm - NEAR);
      g_assert_cmpfloat (near, <=, tool->longest_mm + NEAR);
      if (!isnan (r))
        {
          /* Both chords lie on one circle, a thickness apart. */
          double apart =
              sqrt (r * r - one->far_mm * one->far_mm / 4.0) - sqrt (r * r - near * near / 4.0);
          g_assert_cmpfloat_with_epsilon (apart, tool->thickness_mm, NEAR);
        }
      end = one->at_mm + near / 2.0;
      cut += (near + one->far_mm) / 2.0;
    }
  if (slots->len > 0)
    g_assert_cmpfloat (task->stretches[0].to_mm - end, >=, tool->least_bridge_mm - NEAR);
  g_assert_cmpfloat_with_epsilon (bf_slot_plan_kept_mm (task, slots),
                                  task->stretches[0].to_mm - cut, NEAR);
}

/* With one slot fewer, however long and wherever, too much metal would be left. */
static void
judge_fewest (const BfSlotTool *tool, const BfSlotTask *task, const GArray *slots)
{
  double length = task->stretches[0].to_mm, fewer = slots->len - 1.0, near;

  if (slots->len < 2 || bf_slot_plan_kept_mm (task, slots) > task->keep_mm + NEAR)
    return;
  near = MIN (tool->longest_mm, (length - slots->len * tool->least_bridge_mm) / fewer);
  g_assert_cmpfloat (length - fewer * bf_slot_mean_mm (tool, near), >, task->keep_mm);
}

static void
test_all_sizes (void)
{
  static const double discs[] = { 100.0, 115.0, 125.0, 180.0, 230.0, NAN };
  static const double thicknesses[] = { 0.9, 1.2, 1.5, 2.0 };
  guint met = 0;

  for (guint d = 0; d < G_N_ELEMENTS (discs); d++)
    for (guint k = 0; k < G_N_ELEMENTS (thicknesses); k++)
      for (double length = 90.0; length <= 400.0; length += 10.0)
        {
          double t = thicknesses[k];
          BfSlotTool tool =
              tool_of (isnan (discs[d]) ? BF_CUTTING_TABLE : BF_CUTTING_DISC, discs[d], t);
          const BfRun whole = { 0.0, length };
          BfSlotTask task = { &whole, 1, bf_bend_width_mm (275.0, t, 100.0, 65.0), NAN, NAN };
          g_autoptr (GArray) slots = bf_slot_plan (&tool, &task);

          judge (&tool, &task, slots);
          judge_fewest (&tool, &task, slots);
          met += bf_slot_plan_kept_mm (&task, slots) <= task.keep_mm + NEAR;
        }
  g_assert_cmpuint (met, >, 500);
}

/* Where no plan does it, the one that leaves least is laid out. */
static void
test_cannot (void)
{
  BfSlotTool tool = tool_of (BF_CUTTING_DISC, 125.0, 1.5);
  const BfRun whole = { 0.0, 200.0 };
  BfSlotTask task = { &whole, 1, bf_bend_width_mm (275.0, 1.5, 7.5, 40.0), NAN, NAN };
  g_autoptr (GArray) slots = bf_slot_plan (&tool, &task);

  judge (&tool, &task, slots);
  g_assert_cmpfloat (bf_slot_plan_kept_mm (&task, slots), >, task.keep_mm);
  g_assert_cmpfloat (bf_slot_plan_kept_mm (&task, slots), <, 45.0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/slot-plan/chords", test_chords);
  g_test_add_func ("/fold/slot-plan/by-hand", test_by_hand);
  g_test_add_func ("/fold/slot-plan/none-needed", test_none_needed);
  g_test_add_func ("/fold/slot-plan/reach", test_reach);
  g_test_add_func ("/fold/slot-plan/too-short-a-bend", test_too_short_a_bend);
  g_test_add_func ("/fold/slot-plan/snips-cut-none", test_snips_cut_none);
  g_test_add_func ("/fold/slot-plan/given", test_given);
  g_test_add_func ("/fold/slot-plan/parted", test_parted);
  g_test_add_func ("/fold/slot-plan/all-sizes", test_all_sizes);
  g_test_add_func ("/fold/slot-plan/cannot", test_cannot);
  return g_test_run ();
}
