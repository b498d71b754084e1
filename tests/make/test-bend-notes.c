/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/bend-notes.h"

#include <string.h>

#include "core/units.h"
#include "look-up.h"
#include "make-part.h"
#include "read-work.h"

static BfFold *
fold_slotted_tray (void)
{
  g_autoptr (BfPart) part = make_tray (300.0, 180.0, 60.0, 90.0);

  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.inside_radius_mm = NAN;
  part->cutting.by = BF_CUTTING_DISC;
  part->cutting.disc_diameter_mm = 125.0;
  return bf_fold (part);
}

/* ---- rows --------------------------------------------------------------------------------- */

/* What is bent over a bar, in a brake, or hemmed loses nothing: not a word. */
static void
test_nothing_lost (void)
{
  static const BfBendWay ways[] = { BF_BEND_WAY_BAR, BF_BEND_WAY_BRAKE };

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GPtrArray) notes = NULL;

      part->bend.way = ways[i];
      fold = bf_fold (part);
      notes = bf_bend_notes (fold, BF_UNITS_MM);
      g_assert_cmpuint (notes->len, ==, 0);
    }
}

/* Each slotted bend is named in one row, and its row tells of its slots: how many, and how long on
 * either face. */
static void
test_slots (void)
{
  g_autoptr (BfFold) fold = fold_slotted_tray ();
  g_autoptr (GPtrArray) notes = bf_bend_notes (fold, BF_UNITS_MM);
  guint told = 0;

  g_assert_cmpuint (notes->len, >, 0);
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      const BfBendSlot *slot = bf_bend_slot (bend, 0);

      for (guint k = 0; k < notes->len; k++)
        {
          const char *note = g_ptr_array_index (notes, k);
          const char *rest = strchr (note, ':');
          g_autofree char *names = g_strndup (note, (gsize)(rest - note));

          if (strstr (names, bend->flange) == NULL)
            continue;
          told++;
          g_assert_cmpfloat_with_epsilon (nth_number (rest, 0), bend->slots->len, 1e-9);
          g_assert_cmpfloat_with_epsilon (nth_number (rest, 1), slot->near_mm, 0.051);
          g_assert_cmpfloat_with_epsilon (nth_number (rest, 2), slot->far_mm, 0.051);
          g_assert_nonnull (strstr (rest, "metal left."));
        }
    }
  g_assert_cmpuint (told, ==, fold->bends->len);
}

/* Walls of one length are slotted alike and share a row; the other two have theirs. */
static void
test_shared (void)
{
  g_autoptr (BfFold) fold = fold_slotted_tray ();
  g_autoptr (GPtrArray) notes = bf_bend_notes (fold, BF_UNITS_MM);

  g_assert_cmpuint (notes->len, ==, 2);
  g_assert_true (g_str_has_prefix (g_ptr_array_index (notes, 0), "f0, f2: "));
  g_assert_true (g_str_has_prefix (g_ptr_array_index (notes, 1), "f1, f3: "));
}

/* However many are alike, their row fits on a line: it names two at most. */
static void
test_many (void)
{
  g_autoptr (BfPart) part = make_rectangle (300.0, 300.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GPtrArray) notes = NULL;

  for (guint edge = 0; edge < 4; edge++)
    {
      g_autofree char *id = g_strdup_printf ("wall-%u", edge);

      add_flange (part, id, edge, 40.0, 90.0);
    }
  part->bend.way = BF_BEND_WAY_SLOTS;
  part->bend.inside_radius_mm = NAN;
  fold = bf_fold (part);
  notes = bf_bend_notes (fold, BF_UNITS_MM);
  g_assert_cmpuint (notes->len, ==, 1);
  g_assert_true (g_str_has_prefix (g_ptr_array_index (notes, 0), "wall-0 and 3 more: "));
}

/* A machine's slots have two like faces: one length is said. */
static void
test_machine (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfFlange *front = add_flange (part, "front", 0, 60.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GPtrArray) notes = NULL;
  const char *note;

  part->cutting.by = BF_CUTTING_SERVICE;
  front->bend.way = BF_BEND_WAY_SLOTS;
  front->bend.slot_mm = 40.0;
  front->bend.bridge_mm = 10.0;
  fold = bf_fold (part);
  notes = bf_bend_notes (fold, BF_UNITS_MM);
  g_assert_cmpuint (notes->len, ==, 1);
  note = g_ptr_array_index (notes, 0);
  g_assert_nonnull (strstr (note, "slots, 40 mm long; "));
  g_assert_null (strstr (note, "behind"));
}

/* ---- scores ------------------------------------------------------------------------------- */

/* While the person chooses: all slots and the hardest push first, then each bend's own, with its
 * bridges, which are taken from the drawn slots here. */
static void
test_plan (void)
{
  g_autoptr (BfFold) fold = fold_slotted_tray ();
  g_autoptr (GPtrArray) rows = bf_bend_plan (fold, BF_UNITS_MM);
  const BfBendResult *hardest = NULL;
  guint n = 0;

  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);

      n += bend->slots->len;
      if (hardest == NULL || bend->force_n > hardest->force_n)
        hardest = bend;
    }
  g_assert_cmpuint (rows->len, ==, 3);
  g_assert_cmpfloat_with_epsilon (nth_number (g_ptr_array_index (rows, 0), 0), n, 1e-9);
  g_assert_cmpfloat_with_epsilon (nth_number (g_ptr_array_index (rows, 0), 1),
                                  hardest->force_n / 9.80665, 0.51);
  g_assert_nonnull (strstr (g_ptr_array_index (rows, 0), "of the 20 kg you have"));
  for (guint i = 0; i < 2; i++)
    {
      const BfBendResult *bend = find_bend (fold, i == 0 ? "f0" : "f1");
      const BfBendSlot *one = bf_bend_slot (bend, 0), *two = bf_bend_slot (bend, 1);
      const char *row = g_ptr_array_index (rows, i + 1), *bridges = strstr (row, "bridges of ");

      g_test_message ("%s", row);
      g_assert_nonnull (bridges);
      g_assert_cmpfloat_with_epsilon (nth_number (bridges, 0),
                                      bf_vec2_distance (one->at, two->at) - one->near_mm, 0.051);
      g_assert_nonnull (strstr (row, "metal left; push "));
      g_assert_true (g_str_has_suffix (row, " kg at 45 mm."));
    }
}

/* Without slots the push alone is told, by its board; in a brake nothing is pushed. */
static void
test_plan_without_slots (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) bar = bf_fold (part), brake = NULL, inch = NULL;
  g_autoptr (GPtrArray) pushed = bf_bend_plan (bar, BF_UNITS_MM), none = NULL, pounds = NULL;

  g_assert_cmpuint (pushed->len, ==, 3);
  g_assert_true (g_str_has_prefix (g_ptr_array_index (pushed, 0), "The hardest push: "));
  g_assert_true (g_str_has_prefix (g_ptr_array_index (pushed, 1), "f0, f2: push "));
  g_assert_true (g_str_has_suffix (g_ptr_array_index (pushed, 1), " kg at 300 mm."));
  part->units = BF_UNITS_IN;
  inch = bf_fold (part);
  pounds = bf_bend_plan (inch, BF_UNITS_IN);
  g_assert_nonnull (strstr (g_ptr_array_index (pounds, 0), "of the 45 lb you have"));
  part->bend.way = BF_BEND_WAY_BRAKE;
  brake = bf_fold (part);
  none = bf_bend_plan (brake, BF_UNITS_MM);
  g_assert_cmpuint (none->len, ==, 0);
}

/* A groove opens toward the side that it is bent to. Its walls close on each other: 2 (t − left)
 * tan(θ/2) and the skin's own allowance, θ K left. A square bend that leaves 0.6 of 1.5 mm at K
 * 0.42 takes 1.8 + 0.396; reckoned by hand. */
static void
test_score (void)
{
  static const struct
  {
    BfTurn turn;
    double angle_deg, left_mm;
    BfUnits units;
    const char *words;
  } rows[] = {
    { BF_TURN_UP, 90.0, 0.6, BF_UNITS_MM, "score this face 2.2 mm wide, leave 0.6 mm" },
    { BF_TURN_DOWN, 90.0, 0.6, BF_UNITS_MM, "score the other face 2.2 mm wide, leave 0.6 mm" },
    { BF_TURN_UP, 60.0, 0.5, BF_UNITS_MM, "score this face 1.4 mm wide, leave 0.5 mm" },
    { BF_TURN_UP, 90.0, 0.635, BF_UNITS_IN, "score this face 0.085 in wide, leave 0.025 in" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfFlange *front = add_flange (part, "front", 0, 60.0, rows[i].angle_deg);
      g_autoptr (BfFold) fold = NULL;
      g_autofree char *words = NULL;

      front->turn = rows[i].turn;
      front->bend.way = BF_BEND_WAY_SCORE;
      front->bend.inside_radius_mm = NAN;
      front->bend.score_left_mm = rows[i].left_mm;
      fold = bf_fold (part);
      words = bf_score_words (bf_fold_bend (fold, 0), rows[i].units);
      g_assert_cmpstr (words, ==, rows[i].words);
    }
}

static void
test_no_score (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "front", 0, 60.0, 90.0);
  fold = bf_fold (part);
  g_assert_null (bf_score_words (bf_fold_bend (fold, 0), BF_UNITS_MM));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/bend-notes/nothing-lost", test_nothing_lost);
  g_test_add_func ("/make/bend-notes/slots", test_slots);
  g_test_add_func ("/make/bend-notes/shared", test_shared);
  g_test_add_func ("/make/bend-notes/many", test_many);
  g_test_add_func ("/make/bend-notes/machine", test_machine);
  g_test_add_func ("/make/bend-notes/score", test_score);
  g_test_add_func ("/make/bend-notes/no-score", test_no_score);
  g_test_add_func ("/make/bend-notes/plan", test_plan);
  g_test_add_func ("/make/bend-notes/plan-without-slots", test_plan_without_slots);
  return g_test_run ();
}
