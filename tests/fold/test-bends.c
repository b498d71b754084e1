/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include <string.h>

#include "fold/fold.h"

#include "look-up.h"
#include "make-part.h"

#define NEAR 1e-6
#define MILD_FLOW_MPA 275.0 /* midway between 210 and 340 */

/* One wall along the long edge of a rectangle, slotted, pushed at its tip. */
static BfPart *
slotted_wall (double width_mm, double thickness_mm)
{
  BfPart *part = make_rectangle (width_mm, 80.0);

  add_flange (part, "wall", 0, 55.0, 90.0);
  part->metal.thickness_mm = thickness_mm;
  part->bend.way = BF_BEND_WAY_SLOTS;
  part->cutting.disc_diameter_mm = 125.0;
  part->bend.hand_lever_mm = 40.0;
  return part;
}

static BfFold *
fold_and_drop (BfPart *part)
{
  BfFold *fold = bf_fold (part);

  bf_part_unref (part);
  return fold;
}

/* By hand: 275 MPa × 200 mm × 1.5² mm² / 4 = 30.9375 N·m, over a board of 300 mm 103.125 N. */
static void
test_unslotted (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 80.0);
  g_autoptr (BfFold) fold = NULL;
  const BfBendResult *bend;

  add_flange (part, "wall", 0, 40.0, 90.0);
  fold = bf_fold (part);
  bend = bf_fold_bend (fold, 0);
  g_assert_cmpfloat_with_epsilon (bend->moment_nm, 30.9375, NEAR);
  g_assert_cmpfloat_with_epsilon (bend->lever_mm, 300.0, NEAR);
  g_assert_cmpfloat_with_epsilon (bend->force_n, 103.125, NEAR);
  g_assert_cmpfloat_with_epsilon (bend->kept, 1.0, NEAR);
  g_assert_cmpuint (bend->slots->len, ==, 0);
}

/* A 50 mm hole in the middle of the bend leaves three quarters of a 200 mm line to be bent. */
static void
test_hole_in_bend (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 80.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);
  g_autoptr (BfFold) fold = NULL;
  const BfBendResult *bend;

  add_flange (part, "wall", 0, 60.0, 90.0);
  hole->at_mm = bf_vec2 (100.0, 0.0);
  hole->diameter_mm = 50.0;
  g_ptr_array_add (part->openings, hole);
  fold = bf_fold (part);
  bend = bf_fold_bend (fold, 0);
  g_assert_cmpfloat_with_epsilon (bend->kept, 0.75, 2e-3);
  g_assert_cmpfloat_with_epsilon (bend->moment_nm, 30.9375 * bend->kept, NEAR);
}

static void
test_unknown_metal (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 80.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "wall", 0, 40.0, 90.0);
  g_free (part->metal.material);
  part->metal.material = g_strdup ("unobtainium");
  fold = bf_fold (part);
  g_assert_true (isnan (bf_fold_bend (fold, 0)->force_n));
  g_assert_true (isnan (bf_fold_bend (fold, 0)->overbend_rad));
}

/* From the blank's own rings: what the slots leave, and what bending that takes. */
static void
judge_drawn (const BfFold *fold)
{
  const BfBendResult *bend = bf_fold_bend (fold, 0);
  double t = fold->part->metal.thickness_mm, cut = 0.0, force;
  double length = bf_vec2_distance (bend->line[0], bend->line[1]);
  guint n = 0;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    if (bf_fold_ring_is_slot (fold, i))
      {
        BfBox box = bf_box_empty ();

        bf_ring_extend_box (bf_blank_ring (&fold->blank, i), &box);
        cut += box.max.x - box.min.x;
        n++;
        g_assert_cmpfloat (box.min.y, <, bend->line[0].y);
        g_assert_cmpfloat (box.max.y, >, bend->line[0].y);
      }
  g_assert_cmpuint (n, ==, bend->slots->len);
  g_assert_cmpfloat_with_epsilon (bend->kept, (length - cut) / length, 1e-7);
  force = MILD_FLOW_MPA * (length - cut) * t * t / 4.0 / bend->lever_mm;
  g_assert_cmpfloat_with_epsilon (bend->force_n, force, 1e-4);
}

/* Bends of 90 to 400 mm in 0.9 to 2 mm, by discs and by a machine: either the push is what is aimed
 * at, half of 200 N, or a check says so. */
static void
test_planned (void)
{
  static const double discs[] = { 100.0, 115.0, 125.0, 180.0, 230.0, NAN };
  static const double thicknesses[] = { 0.9, 1.2, 1.5, 2.0 };
  guint met = 0;

  for (guint d = 0; d < G_N_ELEMENTS (discs); d++)
    for (guint k = 0; k < G_N_ELEMENTS (thicknesses); k++)
      for (double width = 90.0; width <= 400.0; width += 31.0)
        {
          BfPart *part = slotted_wall (width, thicknesses[k]);
          g_autoptr (BfFold) fold = NULL;

          if (isnan (discs[d]))
            part->cutting.by = BF_CUTTING_TABLE;
          else
            part->cutting.disc_diameter_mm = discs[d];
          fold = fold_and_drop (part);
          judge_drawn (fold);
          if (bf_fold_bend (fold, 0)->force_n <= 100.0 + NEAR)
            met++;
          else if (bf_fold_bend (fold, 0)->force_n > 120.0)
            g_assert_nonnull (find_check (fold, "force-too-high", NULL));
        }
  g_assert_cmpuint (met, >, 100);
}

static void
test_cannot_be_met (void)
{
  BfPart *part = slotted_wall (300.0, 1.5);
  g_autoptr (BfFold) fold = NULL;
  const BfCheck *check;

  part->bend.hand_limit_n = 15.0;
  fold = fold_and_drop (part);
  check = find_check (fold, "force-too-high", NULL);
  g_assert_nonnull (check);
  g_assert_cmpint (check->severity, ==, BF_SEVERITY_MUST_FIX);
  g_assert_cmpfloat (check->found, >, 15.0);
  g_assert_cmpfloat_with_epsilon (check->needed, 15.0, NEAR);
  g_assert_nonnull (strstr (check->message, "board"));
}

/* A push just under and just over 0.6 of 200 N: 120 N over a 300 mm board bends 232.727 mm. */
static void
test_hard_push (void)
{
  static const struct
  {
    double width_mm;
    gboolean looked_at;
  } rows[] = { { 232.7, FALSE }, { 232.8, TRUE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfPart *part = make_rectangle (rows[i].width_mm, 80.0);
      g_autoptr (BfFold) fold = NULL;

      add_flange (part, "wall", 0, 40.0, 90.0);
      fold = fold_and_drop (part);
      g_assert_cmpint (find_check (fold, "force-too-high", NULL) != NULL, ==, rows[i].looked_at);
    }
}

static void
test_slots_given (void)
{
  static const struct
  {
    const char *what, *code;
    BfCuttingWay by;
    double slot_mm, bridge_mm;
  } rows[] = {
    { "fine", NULL, BF_CUTTING_DISC, 50.0, 10.0 },
    { "short bridges", "bridge-too-small", BF_CUTTING_DISC, 50.0, 9.9 },
    { "short bridges by machine", "bridge-too-small", BF_CUTTING_TABLE, 50.0, 2.9 },
    { "fine by machine", NULL, BF_CUTTING_TABLE, 50.0, 3.0 },
    { "too short for the disc", "slot-not-cuttable", BF_CUTTING_DISC, 20.0, 12.0 },
    { "too long for the disc", "slot-not-cuttable", BF_CUTTING_DISC, 118.0, 12.0 },
    { "snips", "slot-not-cuttable", BF_CUTTING_SNIPS, 50.0, 12.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfPart *part = slotted_wall (300.0, 1.5);
      g_autoptr (BfFold) fold = NULL;

      g_test_message ("%s", rows[i].what);
      part->cutting.by = rows[i].by;
      part->bend.slot_mm = rows[i].slot_mm;
      part->bend.bridge_mm = rows[i].bridge_mm;
      fold = fold_and_drop (part);
      judge_drawn (fold);
      if (rows[i].code != NULL)
        g_assert_nonnull (find_check (fold, rows[i].code, NULL));
      else
        g_assert_true (find_check (fold, "bridge-too-small", NULL) == NULL &&
                       find_check (fold, "slot-not-cuttable", NULL) == NULL);
    }
}

/* The slots' metal is gone from the blank: mean length times width each. */
static void
test_area (void)
{
  g_autoptr (BfFold) fold = fold_and_drop (slotted_wall (300.0, 1.5));
  double slots = 0.0;

  for (guint i = 0; i < bf_fold_bend (fold, 0)->slots->len; i++)
    {
      const BfBendSlot *slot = bf_bend_slot (bf_fold_bend (fold, 0), i);

      slots += (slot->near_mm + slot->far_mm) / 2.0 * slot->width_mm;
    }
  g_assert_cmpfloat (slots, >, 100.0);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, fold->blank.area_before_cuts_mm2 - slots,
                                  1e-5);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/bends/unslotted", test_unslotted);
  g_test_add_func ("/fold/bends/hole-in-bend", test_hole_in_bend);
  g_test_add_func ("/fold/bends/unknown-metal", test_unknown_metal);
  g_test_add_func ("/fold/bends/planned", test_planned);
  g_test_add_func ("/fold/bends/cannot-be-met", test_cannot_be_met);
  g_test_add_func ("/fold/bends/hard-push", test_hard_push);
  g_test_add_func ("/fold/bends/slots-given", test_slots_given);
  g_test_add_func ("/fold/bends/area", test_area);
  return g_test_run ();
}
