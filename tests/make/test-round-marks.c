/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/units.h"
#include "make-part.h"
#include "make/round-marks.h"

#define HALF_MM 0.5
#define SIXTEENTH_MM (BF_MM_PER_INCH / 16.0)

static double
off_mm (BfPart *part, double step_mm)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  return bf_marks_off_mm (fold, step_mm);
}

static const BfRoundSize *
size_of (const GArray *sizes, BfPinKind kind, guint at)
{
  for (guint i = 0; i < sizes->len; i++)
    {
      const BfRoundSize *size = &g_array_index (sizes, BfRoundSize, i);

      if (size->kind == kind && size->at == at)
        return size;
    }
  g_assert_not_reached ();
}

static gboolean
moved (const GArray *sizes, BfPinKind kind, guint at)
{
  return bf_round_size_moved (size_of (sizes, kind, at));
}

static guint
n_moved (const GArray *sizes)
{
  guint n = 0;

  for (guint i = 0; i < sizes->len; i++)
    n += bf_round_size_moved (&g_array_index (sizes, BfRoundSize, i)) ? 1 : 0;
  return n;
}

static BfPart *
pin (BfPart *part, BfPinKind kind, guint at)
{
  BfPart *pinned = bf_edit_pin (part, kind, at, TRUE);

  bf_part_unref (part);
  return pinned;
}

/* One wall, 1.5 mm thick, R 1.5, K 0.42, reckoned by hand: BA = π/2 · 2.13 = 3.3458 and S = 3, so
 * that the bend line is 40 − 3 + BA/2 = 38.6729 from the bottom edge: 38.5 needs a wall of 39.8271.
 * Of the whole height, 97.1729 with that wall, the base then takes off what is past 97. */
static void
test_one_wall (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);
  g_autoptr (BfPart) rounded = NULL;
  g_autoptr (GArray) sizes = NULL;
  const BfRoundSize *front;

  add_flange (part, "front", 0, 40.0, 90.0);
  rounded = bf_round_marks (part, HALF_MM, &sizes);
  g_assert_cmpfloat (off_mm (rounded, HALF_MM), <, 1e-5);
  front = size_of (sizes, BF_PIN_FLANGE, 0);
  g_assert_cmpfloat_with_epsilon (front->before_mm, 40.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (front->after_mm, 39.8271, 1e-4);
  g_assert_false (moved (sizes, BF_PIN_EDGE, 0)); /* 100 is whole as it is */
  g_assert_cmpfloat_with_epsilon (size_of (sizes, BF_PIN_EDGE, 1)->after_mm, 59.8271, 1e-4);
}

/* What is pinned stays, and the rest still goes as far as it can. */
static void
test_pinned (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) rounded = NULL;
  g_autoptr (GArray) sizes = NULL;

  g_free (((BfFlange *)g_ptr_array_index (part->flanges, 0))->id);
  ((BfFlange *)g_ptr_array_index (part->flanges, 0))->id = g_strdup ("front");
  part = pin (pin (part, BF_PIN_EDGE, 1), BF_PIN_FLANGE, 0);
  rounded = bf_round_marks (part, HALF_MM, &sizes);
  g_assert_false (moved (sizes, BF_PIN_EDGE, 1));
  g_assert_false (moved (sizes, BF_PIN_EDGE, 3)); /* it is as long as edge 1 */
  g_assert_false (moved (sizes, BF_PIN_FLANGE, 0));
  g_assert_cmpfloat_with_epsilon (bf_part_edge_length_mm (rounded, 1), 120.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_part_find_flange (rounded, "front")->length_mm, 40.0, 1e-9);
  g_assert_cmpuint (n_moved (sizes), >, 0);
  g_assert_cmpfloat (off_mm (rounded, HALF_MM), <, off_mm (part, HALF_MM));
}

/* All pinned: the part as it was. */
static void
test_all_pinned (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) rounded = NULL;
  g_autoptr (GArray) sizes = NULL;

  for (guint i = 0; i < 4; i++)
    part = pin (pin (part, BF_PIN_EDGE, i), BF_PIN_FLANGE, i);
  rounded = bf_round_marks (part, HALF_MM, &sizes);
  g_assert_cmpuint (n_moved (sizes), ==, 0);
  g_assert_cmpfloat_with_epsilon (off_mm (rounded, HALF_MM), off_mm (part, HALF_MM), 1e-9);
}

/* Of a tray, the walls' ends and the drilled corners stand off the bend lines by what the corners
 * need, so that not all can be whole; walls that were alike stay alike. */
static void
test_tray (void)
{
  const double steps[] = { HALF_MM, 1.0, SIXTEENTH_MM };

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfPart) rounded = NULL;
      g_autoptr (GArray) sizes = NULL;

      rounded = bf_round_marks (part, steps[i], &sizes);
      g_assert_cmpfloat (off_mm (rounded, steps[i]), <, 0.8 * off_mm (part, steps[i]));
      g_assert_cmpfloat_with_epsilon (bf_part_find_flange (rounded, "f0")->length_mm,
                                      bf_part_find_flange (rounded, "f2")->length_mm, 1e-6);
    }
}

/* Whatever the part: never worse, nothing moves by more than a mark, and what was told is what
 * changed. */
static void
test_never_worse (void)
{
  for (guint seed = 0; seed < 12; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfPart) rounded = NULL;
      g_autoptr (GArray) sizes = NULL;

      rounded = bf_round_marks (part, 1.0, &sizes);
      g_assert_cmpfloat (off_mm (rounded, 1.0), <=, off_mm (part, 1.0) + 1e-6);
      for (guint i = 0; i < sizes->len; i++)
        {
          const BfRoundSize *size = &g_array_index (sizes, BfRoundSize, i);

          g_assert_cmpfloat (fabs (size->after_mm - size->before_mm), <=, 1.0 + 1e-5);
        }
      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        {
          const BfFlange *before = bf_part_flange (part, i), *after = bf_part_flange (rounded, i);

          g_assert_true ((fabs (before->length_mm - after->length_mm) > 1e-6) ==
                         moved (sizes, BF_PIN_FLANGE, i));
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/round-marks/one-wall", test_one_wall);
  g_test_add_func ("/round-marks/pinned", test_pinned);
  g_test_add_func ("/round-marks/all-pinned", test_all_pinned);
  g_test_add_func ("/round-marks/tray", test_tray);
  g_test_add_func ("/round-marks/never-worse", test_never_worse);
  return g_test_run ();
}
