/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-words.h"

#include "make-part.h"

/* Fractions as people say them, each where it is nearest: the borders lie midway between two. */
static void
test_fractions (void)
{
  static const struct
  {
    double share;
    const char *words;
  } rows[] = {
    { 0.0, "hardly any metal left" },
    { 0.05, "hardly any metal left" },
    { 0.074, "hardly any metal left" },
    { 0.076, "a tenth of the metal left" },
    { 0.149, "a tenth of the metal left" },
    { 0.151, "a fifth of the metal left" },
    { 0.224, "a fifth of the metal left" },
    { 0.226, "a quarter of the metal left" },
    { 0.29, "a quarter of the metal left" },
    { 0.3, "a third of the metal left" },
    { 0.36, "a third of the metal left" },
    { 0.37, "two fifths of the metal left" },
    { 0.46, "half of the metal left" },
    { 0.54, "half of the metal left" },
    { 0.56, "three fifths of the metal left" },
    { 0.65, "two thirds of the metal left" },
    { 0.75, "three quarters of the metal left" },
    { 0.8, "four fifths of the metal left" },
    { 0.86, "nine tenths of the metal left" },
    { 1.0, "nine tenths of the metal left" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpstr (bf_metal_left_words (rows[i].share), ==, rows[i].words);
}

static BfFold *
fold_one (BfBendWay way, double score_left_mm)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfFlange *front = add_flange (part, "front", 0, 60.0, 90.0);

  part->cutting.by = BF_CUTTING_SERVICE;
  front->bend.way = way;
  front->bend.inside_radius_mm = NAN;
  front->bend.score_left_mm = score_left_mm;
  front->bend.slot_mm = 40.0;
  front->bend.bridge_mm = 10.0;
  return bf_fold (part);
}

/* A bend that loses nothing is not spoken of. */
static void
test_whole (void)
{
  static const BfBendWay ways[] = { BF_BEND_WAY_BAR, BF_BEND_WAY_BRAKE };

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autoptr (BfFold) fold = fold_one (ways[i], NAN);

      g_assert_null (bf_bend_lost_words (fold, bf_fold_bend (fold, 0)));
      g_assert_cmpfloat_with_epsilon (bf_bend_metal_left (fold, bf_fold_bend (fold, 0)), 1.0, 1e-9);
    }
}

/* A score leaves a share of the thickness. */
static void
test_scored (void)
{
  static const struct
  {
    double left_mm, share;
    const char *words;
  } rows[] = {
    { 0.3, 0.2, "a fifth of the metal left" },
    { 0.5, 1.0 / 3.0, "a third of the metal left" },
    { 0.75, 0.5, "half of the metal left" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfFold) fold = fold_one (BF_BEND_WAY_SCORE, rows[i].left_mm);
      const BfBendResult *bend = bf_fold_bend (fold, 0);

      g_assert_cmpfloat_with_epsilon (bf_bend_metal_left (fold, bend), rows[i].share, 1e-9);
      g_assert_cmpstr (bf_bend_lost_words (fold, bend), ==, rows[i].words);
    }
}

/* Slots leave a share of the length: what is not slot, measured on the slots themselves. */
static void
test_slotted (void)
{
  g_autoptr (BfFold) fold = fold_one (BF_BEND_WAY_SLOTS, NAN);
  const BfBendResult *bend = bf_fold_bend (fold, 0);
  double cut = 0.0, length = bf_vec2_distance (bend->line[0], bend->line[1]);

  g_assert_cmpuint (bend->slots->len, >, 1);
  for (guint i = 0; i < bend->slots->len; i++)
    cut += bf_bend_slot (bend, i)->length_mm;
  g_assert_cmpfloat_with_epsilon (bf_bend_metal_left (fold, bend), 1.0 - cut / length, 1e-6);
  g_assert_cmpstr (bf_bend_lost_words (fold, bend), ==, bf_metal_left_words (1.0 - cut / length));
}

/* A hole on the line is lost metal too, where the line is slotted; by itself it weakens no joint
 * more than any hole does, and is not spoken of. */
static void
test_hole_on_line (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "front", 0, 60.0, 90.0);
  hole->at_mm = bf_vec2 (100.0, 2.0);
  hole->diameter_mm = 30.0;
  g_ptr_array_add (part->openings, hole);
  fold = bf_fold (part);
  g_assert_null (bf_bend_lost_words (fold, bf_fold_bend (fold, 0)));
  g_assert_cmpfloat (bf_bend_metal_left (fold, bf_fold_bend (fold, 0)), <, 0.9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bend-words/fractions", test_fractions);
  g_test_add_func ("/bend-words/whole", test_whole);
  g_test_add_func ("/bend-words/scored", test_scored);
  g_test_add_func ("/bend-words/slotted", test_slotted);
  g_test_add_func ("/bend-words/hole-on-line", test_hole_on_line);
  return g_test_run ();
}
