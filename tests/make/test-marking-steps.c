/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include <string.h>

#include "make/marking-points.h"

#include "make-part.h"

static BfMarking *
mark (BfPart *part)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  bf_part_unref (part);
  return bf_marking_new (fold, 0.5);
}

static const BfMarkingStep *
nth (const GArray *steps, guint i)
{
  return &g_array_index (steps, BfMarkingStep, i);
}

/* Steps come in the order in which hands do them, and distances from the nearest on. */
static void
test_order (void)
{
  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfMarking) marking = mark (make_random (seed));
      g_autoptr (GArray) steps = bf_marking_steps (marking);

      g_assert_cmpint (nth (steps, 0)->kind, ==, BF_STEP_CORNER);
      g_assert_cmpint (nth (steps, steps->len - 1)->kind, ==, BF_STEP_CHECK);
      for (guint i = 1; i < steps->len; i++)
        {
          g_assert_cmpint (nth (steps, i)->kind, >=, nth (steps, i - 1)->kind);
          if (nth (steps, i)->kind == nth (steps, i - 1)->kind)
            g_assert_cmpfloat (nth (steps, i)->size_mm, >, nth (steps, i - 1)->size_mm);
        }
    }
}

/* Nothing is marked twice, and nothing is left out but the metal's own two edges. */
static void
test_each_once (void)
{
  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfMarking) marking = mark (make_random (seed));
      g_autoptr (GArray) steps = bf_marking_steps (marking);
      guint n[BF_STEP_CHECK + 1] = { 0 }, edges = 0;

      for (guint i = 0; i < steps->len; i++)
        n[nth (steps, i)->kind] += nth (steps, i)->items->len;
      for (guint i = 0; i < marking->strikes->len; i++)
        edges += bf_marking_strike (marking, i)->marked_mm <= 1e-6;
      g_assert_cmpuint (n[BF_STEP_STRIKE] + edges, ==, marking->strikes->len);
      g_assert_cmpuint (n[BF_STEP_JOIN], ==, marking->joins->len);
      g_assert_cmpuint (n[BF_STEP_PUNCH], ==, marking->holes->len);
      g_assert_cmpuint (n[BF_STEP_DRILL], ==, marking->holes->len);
    }
}

/* A square tray's walls are as far from the left edge as from the bottom: one setting each. */
static void
test_one_setting (void)
{
  g_autoptr (BfMarking) marking = mark (make_tray (200.0, 200.0, 40.0, 90.0));
  g_autoptr (GArray) steps = bf_marking_steps (marking);

  for (guint i = 0; i < steps->len; i++)
    if (nth (steps, i)->kind == BF_STEP_STRIKE)
      g_assert_cmpuint (nth (steps, i)->items->len, ==, 2);
}

static void
test_words (void)
{
  g_autoptr (BfMarking) marking = mark (make_tray (200.0, 120.0, 40.0, 90.0));
  g_autoptr (GArray) steps = bf_marking_steps (marking);
  g_autofree char *first = bf_marking_step_words (marking, nth (steps, 0), BF_UNITS_MM);
  g_autofree char *last = bf_marking_step_words (marking, nth (steps, steps->len - 1), BF_UNITS_MM);

  g_assert_nonnull (strstr (first, "274.5 mm by 194.5 mm"));
  /* √(274.5² + 194.5²) = 336.42, to the nearest half. */
  g_assert_nonnull (strstr (last, "diagonals: 336.5 mm"));
  for (guint i = 0; i < steps->len; i++)
    if (nth (steps, i)->kind == BF_STEP_DRILL)
      g_assert_nonnull (bf_marking_step_caution (nth (steps, i)));
}

/* Points that a step tells are those of what it does, each once: of a tray the four reliefs; of a
 * diamond, whose sides meet, four points and not eight. */
static void
test_points (void)
{
  static const BfVec2 diamond[] = {
    { 50.0, 0.0 }, { 100.0, 60.0 }, { 50.0, 120.0 }, { 0.0, 60.0 }
  };
  BfMarking *markings[] = { mark (make_tray (200.0, 120.0, 40.0, 90.0)),
                            mark (make_part (diamond, G_N_ELEMENTS (diamond))) };

  for (guint k = 0; k < G_N_ELEMENTS (markings); k++)
    {
      g_autoptr (BfMarking) marking = markings[k];
      g_autoptr (GArray) steps = bf_marking_steps (marking);
      guint n = 0;

      for (guint i = 0; i < steps->len; i++)
        {
          BfStepKind kind = nth (steps, i)->kind;
          g_autoptr (GArray) points = bf_marking_step_points (marking, nth (steps, i));

          if (points->len == 0)
            continue;
          n++;
          g_assert_cmpint (kind, ==, k == 0 ? BF_STEP_PUNCH : BF_STEP_JOIN);
          g_assert_cmpuint (points->len, ==, 4);
        }
      g_assert_cmpuint (n, ==, 1);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/marking-steps/order", test_order);
  g_test_add_func ("/make/marking-steps/each-once", test_each_once);
  g_test_add_func ("/make/marking-steps/one-setting", test_one_setting);
  g_test_add_func ("/make/marking-steps/points", test_points);
  g_test_add_func ("/make/marking-steps/words", test_words);
  return g_test_run ();
}
