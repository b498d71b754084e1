/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What is drawn beside a bend line. */

#include "paint/bend-marks.h"

static const BfVec2 plate[] = { { 0, 0 }, { 100, 0 }, { 100, 60 }, { 0, 60 } };

static BfFold *
one_wall (BfBendWay way, double radius_mm)
{
  g_autoptr (BfPart) part = bf_part_new ();
  BfFlange *wall = bf_flange_new ("wall");

  g_array_append_vals (part->outline, plate, G_N_ELEMENTS (plate));
  part->metal.thickness_mm = 1.5;
  part->bend.way = way;
  part->bend.inside_radius_mm = radius_mm;
  part->bend.score_left_mm = 0.6;
  g_ptr_array_add (part->flanges, wall);
  return bf_fold (part);
}

static GArray *
marks_of (const BfFold *fold, double unit)
{
  GArray *marks = g_array_new (FALSE, FALSE, sizeof (BfBendMark));

  bf_bend_marks (fold, bf_fold_bend (fold, 0), unit, marks);
  return marks;
}

static const BfBendMark *
mark (const GArray *marks, guint i)
{
  return &g_array_index (marks, BfBendMark, i);
}

/* Two lines, a groove's width apart, the bend line in their middle. */
static void
test_score (void)
{
  g_autoptr (BfFold) fold = one_wall (BF_BEND_WAY_SCORE, NAN);
  g_autoptr (GArray) marks = marks_of (fold, 1.0);
  const BfBendResult *bend = bf_fold_bend (fold, 0);

  g_assert_cmpuint (marks->len, ==, 2);
  for (guint i = 0; i < 2; i++)
    {
      g_assert_cmpint (mark (marks, i)->purpose, ==, BF_PURPOSE_SCORE);
      g_assert_cmpfloat_with_epsilon (fabs (mark (marks, i)->a.y - bend->line[0].y),
                                      bend->groove_mm / 2.0, 1e-9);
      g_assert_cmpfloat_with_epsilon (mark (marks, i)->a.x, bend->line[0].x, 1e-9);
      g_assert_cmpfloat_with_epsilon (mark (marks, i)->b.x, bend->line[1].x, 1e-9);
    }
  g_assert_cmpfloat_with_epsilon (mark (marks, 0)->a.y + mark (marks, 1)->a.y,
                                  2.0 * bend->line[0].y, 1e-9);
}

/* R 6: S 7.5, the bar at y = 7.5 − 6 = 1.5, the bend line at 7.5 − π/4 · 6.63 = 2.29: 0.79 apart,
 * so that the line is drawn whole at full size, and at its ends alone at half of it. The ticks
 * point into the base. */
static void
test_bar (void)
{
  g_autoptr (BfFold) fold = one_wall (BF_BEND_WAY_BAR, 6.0);
  g_autoptr (GArray) whole = marks_of (fold, 1.0);
  g_autoptr (GArray) ends = marks_of (fold, 2.0);

  g_assert_cmpuint (whole->len, ==, 3);
  g_assert_cmpfloat_with_epsilon (mark (whole, 0)->a.y, 1.5, 1e-9);
  g_assert_cmpfloat_with_epsilon (mark (whole, 0)->b.x, 100.0, 1e-9);
  g_assert_cmpuint (ends->len, ==, 4);
  for (guint i = 0; i < ends->len; i++)
    {
      BfVec2 way = bf_vec2_sub (mark (ends, i)->b, mark (ends, i)->a);

      g_assert_cmpint (mark (ends, i)->purpose, ==, BF_PURPOSE_BAR);
      g_assert_cmpint (mark (ends, i)->tick, ==, i % 2 == 1);
      if (mark (ends, i)->tick)
        g_assert_cmpfloat_with_epsilon (way.y, 8.0, 1e-9);
      else
        g_assert_cmpfloat_with_epsilon (fabs (way.x), 16.0, 1e-9);
    }
}

/* Slots are drawn as what they are. */
static void
test_slots (void)
{
  g_autoptr (BfFold) fold = one_wall (BF_BEND_WAY_SLOTS, NAN);
  g_autoptr (GArray) marks = marks_of (fold, 1.0);

  g_assert_cmpuint (marks->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paint/bend-marks/score", test_score);
  g_test_add_func ("/paint/bend-marks/bar", test_bar);
  g_test_add_func ("/paint/bend-marks/slots", test_slots);
  return g_test_run ();
}
