/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Sizes counted outside, and the same part counted inside: the numbers change, the metal stays. */

#include "core/edit.h"
#include "core/tolerance.h"
#include "fold/metal-moved.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"

/* With -m thorough many more. */
#define N_PARTS 240
#define N_THOROUGH 6000

static BfPart *
other_way (const BfPart *part)
{
  return bf_edit_measure (part, part->measure == BF_MEASURE_INSIDE ? BF_MEASURE_OUTSIDE
                                                                   : BF_MEASURE_INSIDE);
}

/* How far the metal moves when the part is counted the other way. */
static double
moved_mm (BfPart *part)
{
  g_autoptr (BfPart) other = other_way (part);
  g_autoptr (BfFold) fold = bf_fold (part), again = bf_fold (other);

  return bf_fold_metal_moved_mm (fold, again, NULL);
}

/* ---- how far metal has moved --------------------------------------------------------------- */

static void
test_distance (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 60.0), longer = NULL;
  g_autoptr (BfFold) fold = NULL, more = NULL;
  guint face = 9;

  add_flange (part, "a", 0, 20.0, 90.0);
  add_flange (part, "b", 2, 20.0, 90.0);
  longer = bf_edit_flange_length (part, "b", 23.5);
  fold = bf_fold (part);
  more = bf_fold (longer);
  g_assert_cmpfloat_with_epsilon (bf_fold_metal_moved_mm (fold, more, &face), 3.5, 1e-9);
  g_assert_cmpstr (bf_fold_face (more, face)->id, ==, "b");
  g_assert_cmpfloat_with_epsilon (bf_fold_metal_moved_mm (more, fold, NULL), 3.5, 1e-9);
  g_assert_cmpfloat (bf_fold_metal_moved_mm (fold, fold, NULL), <=, 0.0);
}

/* ---- what can be said exactly --------------------------------------------------------------- */

/* A base whose corners at edge 0 have that interior angle. */
static BfPart *
make_skew (double interior_deg)
{
  double lean = 60.0 / tan (bf_deg_to_rad (interior_deg));
  const BfVec2 outline[] = { { 0, 0 }, { 160, 0 }, { 160 - lean, 60 }, { lean, 60 } };
  BfPart *part = make_part (outline, G_N_ELEMENTS (outline));

  add_flange (part, "front", 0, 30.0, 70.0);
  return part;
}

static void
test_bare_corners (void)
{
  static const double interiors[] = { 50.0, 70.0, 90.0 };

  for (guint i = 0; i < 4 * G_N_ELEMENTS (interiors); i++)
    {
      g_autoptr (BfPart) part = make_skew (interiors[i / 4]);

      part->measure = i % 2 == 0 ? BF_MEASURE_OUTSIDE : BF_MEASURE_INSIDE;
      if (i / 2 % 2 == 1)
        ((BfFlange *)part->flanges->pdata[0])->start_taper_deg = 20.0;
      g_assert_cmpfloat (moved_mm (part), <, BF_TOLERANCE_SIZE_MM);
    }
}

/* Tapers of walls that meet, none with an inset. */
static void
test_tapers (void)
{
  for (guint i = 0; i < 12; i++)
    {
      g_autoptr (BfPart) part = i % 3 == 2 ? make_ring (6, 90.0, 30.0, 60.0 + 10.0 * (i / 3))
                                           : make_tray (140.0, 100.0, 30.0, 60.0 + 10.0 * (i / 3));
      BfFlange *wall = part->flanges->pdata[1];

      part->measure = i % 2 == 0 ? BF_MEASURE_OUTSIDE : BF_MEASURE_INSIDE;
      wall->start_taper_deg = 25.0;
      wall->end_taper_deg = i < 6 ? 40.0 : -10.0;
      g_assert_cmpfloat (moved_mm (part), <, BF_TOLERANCE_SIZE_MM);
    }
}

/* An inset stays where it was; a bare strip beside it is all that moves, by the thickness that the
 * drawn line moves by (at 90°, t), and with it the hole at the strip's end is cut open further. */
static void
test_insets (void)
{
  g_autoptr (BfPart) part = make_rectangle (160.0, 60.0);
  g_autoptr (BfPart) inside = NULL;

  add_flange (part, "front", 0, 30.0, 90.0)->start_mm = 20.0;
  g_assert_cmpfloat (moved_mm (part), >=, 1.5 - 1e-9);
  g_assert_cmpfloat (moved_mm (part), <, 1.6);
  inside = other_way (part);
  g_assert_cmpfloat_with_epsilon (bf_part_flange (inside, 0)->start_mm, 20.0, 1e-9);
}

/* A flange that is all metal is left a length that can be drawn. */
static void
test_too_short (void)
{
  g_autoptr (BfPart) part = make_rectangle (160.0, 60.0), inside = NULL;

  add_flange (part, "front", 0, 1.0, 90.0);
  inside = other_way (part);
  g_assert_cmpfloat (bf_part_flange (inside, 0)->length_mm, >, 0.0);
  g_assert_cmpfloat (bf_part_flange (inside, 0)->length_mm, <, 0.1);
}

/* ---- openings ------------------------------------------------------------------------------- */

/* A small triangle and a round hole on every face, each well within it. */
static BfPart *
holed (void)
{
  static const BfVec2 triangle[] = { { 60, 8 }, { 66, 8 }, { 63, 13 } };
  static const char *const on[] = { "base", "f0", "f1", "f2", "f3", "lip" };
  BfPart *part = make_tray (140.0, 100.0, 30.0, 75.0);

  add_lip (part, "lip", "f1", 20.0, 60.0);
  for (guint i = 0; i < G_N_ELEMENTS (on); i++)
    {
      BfOpening *hole = bf_opening_new (on[i], BF_OPENING_ROUND);
      BfOpening *drawn = bf_opening_new (on[i], BF_OPENING_OUTLINE);

      hole->at_mm = bf_vec2 (50.0, 9.0 + i);
      hole->diameter_mm = 5.0;
      drawn->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      g_array_append_vals (drawn->points, triangle, G_N_ELEMENTS (triangle));
      g_ptr_array_add (part->openings, hole);
      g_ptr_array_add (part->openings, drawn);
    }
  return part;
}

/* Openings stay where they are in the metal: on the base, walls and a lip. */
static void
test_openings (void)
{
  for (guint way = 0; way < 2; way++)
    {
      g_autoptr (BfPart) part = holed (), other = NULL;
      g_autoptr (BfFold) fold = NULL, again = NULL;

      part->measure = way == 0 ? BF_MEASURE_OUTSIDE : BF_MEASURE_INSIDE;
      other = other_way (part);
      fold = bf_fold (part);
      again = bf_fold (other);
      g_assert_cmpuint (fold->openings->len, ==, 12);
      for (guint i = 0; i < fold->openings->len; i++)
        {
          const BfOpeningResult *was = bf_fold_opening (fold, i), *is = bf_fold_opening (again, i);

          g_test_message ("way %u opening %u", way, i);
          g_assert_cmpuint (bf_ring_size (was->ring), ==, bf_ring_size (is->ring));
          for (guint k = 0; k < bf_ring_size (was->ring); k++)
            assert_at (bf_ring_vertex (is->ring, k)->p, bf_ring_vertex (was->ring, k)->p, 1e-9);
        }
    }
}

/* ---- whatever the part ---------------------------------------------------------------------- */

/* The interior angle at a base point is more than a right one. */
static gboolean
is_obtuse (const BfPart *part, guint at)
{
  guint n = bf_part_n_points (part);
  BfVec2 p = bf_part_point (part, at);
  BfVec2 before = bf_vec2_sub (bf_part_point (part, at + n - 1), p);
  BfVec2 after = bf_vec2_sub (bf_part_point (part, at + 1), p);

  return bf_vec2_cross (after, before) < 0.0 || bf_vec2_dot (before, after) < -1e-9;
}

/* A wall of the base beside a bare edge that leans away from it. */
static gboolean
leans_away (const BfPart *part, const BfFlange *wall)
{
  guint n = bf_part_n_points (part);

  for (guint end = 0; end < 2; end++)
    {
      BfEdge beside = { "base", BF_EDGE_INDEX, (wall->edge_index + (end == 0 ? n - 1 : 1)) % n };

      if (bf_part_flange_at (part, &beside) == NULL &&
          is_obtuse (part, (wall->edge_index + end) % n))
        return TRUE;
    }
  return FALSE;
}

/* What no number can say: flanges on sides, ends within an edge, obtuse corners with a bare edge.
 */
static gboolean
cannot_be_said (const BfPart *part)
{
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      const BfFlange *flange = bf_part_flange (part, i);

      if (flange->edge == BF_EDGE_START || flange->edge == BF_EDGE_END || flange->start_mm > 0.0 ||
          flange->end_mm > 0.0)
        return TRUE;
      if (flange->edge == BF_EDGE_INDEX && leans_away (part, flange))
        return TRUE;
    }
  return FALSE;
}

static void
test_any (void)
{
  guint n_parts = g_test_thorough () ? N_THOROUGH : N_PARTS, n_exact = 0, n_moved = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      double moved;

      if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      moved = moved_mm (part);
      g_test_message ("seed %u: %g mm", seed, moved);
      if (cannot_be_said (part))
        g_assert_cmpfloat (moved, <, 4.0 * part->metal.thickness_mm);
      else
        g_assert_cmpfloat (moved, <, BF_TOLERANCE_SIZE_MM);
      n_moved += cannot_be_said (part) ? 1 : 0;
      n_exact += cannot_be_said (part) ? 0 : 1;
    }
  g_assert_cmpuint (n_exact, >, n_parts / 5);
  g_assert_cmpuint (n_moved, >, n_parts / 5);
}

/* There and back again the numbers are what they were, where the metal stayed. */
static void
test_and_back (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed), other = NULL, again = NULL;

      if (cannot_be_said (part))
        continue;
      other = other_way (part);
      again = other_way (other);
      for (guint i = 0; i < bf_part_n_points (part); i++)
        g_assert_cmpfloat (bf_vec2_distance (bf_part_point (part, i), bf_part_point (again, i)), <,
                           1e-9);
      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        {
          const BfFlange *was = bf_part_flange (part, i), *is = bf_part_flange (again, i);

          g_assert_cmpfloat_with_epsilon (was->length_mm, is->length_mm, 1e-9);
          g_assert_cmpfloat (is->start_mm + is->end_mm, <=, 0.0);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/measure/distance", test_distance);
  g_test_add_func ("/measure/bare-corners", test_bare_corners);
  g_test_add_func ("/measure/tapers", test_tapers);
  g_test_add_func ("/measure/insets", test_insets);
  g_test_add_func ("/measure/too-short", test_too_short);
  g_test_add_func ("/measure/openings", test_openings);
  g_test_add_func ("/measure/any", test_any);
  g_test_add_func ("/measure/and-back", test_and_back);
  return g_test_run ();
}
