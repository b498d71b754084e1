/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/first-part.h"
#include "core/part-file.h"

/* The base's outline, point by point: what counts edges and points has to follow. */

/* 200 × 120 with a flange "0" to "3" on each edge, a corner and a finish at each point, a hole at
 * u = 30 of each flange. */
static BfPart *
walled (void)
{
  static const BfVec2 points[] = { { 0.0, 0.0 }, { 200.0, 0.0 }, { 200.0, 120.0 }, { 0.0, 120.0 } };
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  BfPart *part = bf_edit_outline (setup, points, G_N_ELEMENTS (points));

  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    {
      g_autofree char *id = g_strdup_printf ("%u", i);
      BfFlange *flange = bf_flange_new (id);
      BfCorner *corner = bf_corner_new ("base", i);
      BfCorner *finish = bf_corner_new ("base", i);
      BfOpening *hole = bf_opening_new (id, BF_OPENING_ROUND);
      flange->edge_index = i;
      corner->gap_mm = i;
      finish->finish_size_mm = i;
      hole->at_mm = bf_vec2 (30.0, 10.0);
      hole->diameter_mm = 5.0;
      g_ptr_array_add (part->flanges, flange);
      g_ptr_array_add (part->corners, corner);
      g_ptr_array_add (part->base_corners, finish);
      g_ptr_array_add (part->openings, hole);
    }
  return part;
}

static void
assert_point (const BfPart *part, guint i, double x, double y)
{
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, i).x, x, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, i).y, y, 1e-9);
}

static void
assert_flange (const BfPart *part, const char *id, guint edge, double hole_mm)
{
  const BfFlange *flange = bf_part_find_flange (part, id);

  g_assert_nonnull (flange);
  g_assert_cmpuint (flange->edge_index, ==, edge);
  for (guint i = 0; i < part->openings->len; i++)
    {
      const BfOpening *hole = g_ptr_array_index (part->openings, i);
      if (g_str_equal (hole->on, id))
        g_assert_cmpfloat_with_epsilon (hole->at_mm.x, hole_mm, 1e-9);
    }
}

/* at: the points where what was asked at points 0 to 3 stands now; −1 for gone. */
static void
assert_corners (const BfPart *part, const int at[4])
{
  guint n = 0;
  for (int i = 0; i < 4; i++)
    if (at[i] >= 0)
      {
        const BfCorner *corner = bf_part_find_corner (part, "base", (guint)at[i]);
        const BfCorner *finish = g_ptr_array_index (part->base_corners, n);
        g_assert_nonnull (corner);
        g_assert_cmpfloat_with_epsilon (corner->gap_mm, i, 1e-12);
        g_assert_cmpuint (finish->at, ==, (guint)at[i]);
        n++;
      }
  g_assert_cmpuint (part->corners->len, ==, n);
  g_assert_cmpuint (part->base_corners->len, ==, n);
}

static void
test_outline_is_turned_round (void)
{
  static const BfVec2 clockwise[] = { { 0.0, 0.0 }, { 0.0, 50.0 }, { 80.0, 0.0 } };
  g_autoptr (BfPart) old = walled ();
  g_autoptr (BfPart) part = bf_edit_outline (old, clockwise, 3);

  g_assert_cmpuint (bf_part_n_points (old), ==, 4);
  g_assert_cmpuint (bf_part_n_points (part), ==, 3);
  g_assert_cmpuint (bf_part_n_flanges (part) + part->openings->len + part->corners->len, ==, 0);
  assert_point (part, 0, 0.0, 0.0);
  assert_point (part, 1, 80.0, 0.0);
}

static void
test_point_moves_alone (void)
{
  g_autoptr (BfPart) old = walled ();
  g_autoptr (BfPart) part = bf_edit_move_point (old, 2, bf_vec2 (220.0, 130.0));

  assert_point (old, 2, 200.0, 120.0);
  assert_point (part, 2, 220.0, 130.0);
  assert_point (part, 1, 200.0, 0.0);
  assert_point (part, 3, 0.0, 120.0);
}

typedef struct
{
  guint edge;
  double out_mm;
  BfVec2 ends[2];
} EdgeCase;

/* The base is a trapezium: its right side leans by 3:4. */
static const EdgeCase edge_cases[] = {
  { 0, 8.0, { { 0.0, -8.0 }, { 206.0, -8.0 } } },
  { 1, 8.0, { { 210.0, 0.0 }, { 150.0, 80.0 } } },
  { 2, 8.0, { { 134.0, 88.0 }, { 0.0, 88.0 } } },
  { 3, -20.0, { { 20.0, 80.0 }, { 20.0, 0.0 } } },
};

static void
test_edge_moves_along_its_neighbours (void)
{
  static const BfVec2 points[] = { { 0.0, 0.0 }, { 200.0, 0.0 }, { 140.0, 80.0 }, { 0.0, 80.0 } };
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfPart) old = bf_edit_outline (setup, points, 4);

  for (guint i = 0; i < G_N_ELEMENTS (edge_cases); i++)
    {
      const EdgeCase *c = &edge_cases[i];
      g_autoptr (BfPart) part = bf_edit_move_edge (old, c->edge, c->out_mm);
      assert_point (part, c->edge, c->ends[0].x, c->ends[0].y);
      assert_point (part, c->edge + 1, c->ends[1].x, c->ends[1].y);
    }
  g_assert_cmpfloat_with_epsilon (bf_part_edge_depth_mm (old, 0), 80.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_part_edge_depth_mm (old, 3), 200.0, 1e-9);
}

static void
test_straight_on_edge_moves_square (void)
{
  static const BfVec2 points[] = {
    { 0.0, 0.0 }, { 90.0, 0.0 }, { 200.0, 0.0 }, { 200.0, 80.0 }, { 0.0, 80.0 }
  };
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfPart) old = bf_edit_outline (setup, points, 5);
  g_autoptr (BfPart) part = bf_edit_move_edge (old, 0, 10.0);

  assert_point (part, 0, 0.0, -10.0);
  assert_point (part, 1, 90.0, -10.0);
  assert_point (part, 2, 200.0, 0.0);
}

static void
test_new_point_moves_counts_on (void)
{
  static const int at[] = { 0, 1, 3, 4 };
  g_autoptr (BfPart) old = walled ();
  g_autoptr (BfPart) early = bf_edit_add_point (old, 1, bf_vec2 (200.0, 40.0));
  g_autoptr (BfPart) late = bf_edit_add_point (old, 1, bf_vec2 (200.0, 90.0));

  g_assert_cmpuint (bf_part_n_points (early), ==, 5);
  assert_point (early, 2, 200.0, 40.0);
  assert_flange (early, "0", 0, 30.0);
  assert_flange (early, "1", 2, -10.0);
  assert_flange (early, "2", 3, 30.0);
  assert_flange (early, "3", 4, 30.0);
  assert_corners (early, at);
  assert_flange (late, "1", 1, 30.0);
  assert_flange (late, "2", 3, 30.0);
}

typedef struct
{
  guint point;
  const char *stays; /* on the two edges made one */
  guint edge;
  const char *gone;
  int at[4];
} RemoveCase;

static const RemoveCase remove_cases[] = {
  { 0, "3", 2, "0", { -1, 0, 1, 2 } },
  { 1, "0", 0, "1", { 0, -1, 1, 2 } },
  { 3, "2", 2, "3", { 0, 1, 2, -1 } },
};

static void
test_removed_point_moves_counts_back (void)
{
  g_autoptr (BfPart) old = walled ();

  for (guint i = 0; i < G_N_ELEMENTS (remove_cases); i++)
    {
      const RemoveCase *c = &remove_cases[i];
      g_autoptr (BfPart) part = bf_edit_remove_point (old, c->point);
      g_assert_cmpuint (bf_part_n_points (part), ==, 3);
      g_assert_cmpuint (bf_part_n_flanges (part), ==, 3);
      assert_flange (part, c->stays, c->edge, 30.0);
      g_assert_null (bf_part_find_flange (part, c->gone));
      assert_corners (part, c->at);
      g_assert_null (bf_edit_remove_point (part, 0));
    }
}

/* A flange after the point goes over to the whole edge, and its hole stays where it was on it. */
static void
test_flange_after_goes_over (void)
{
  g_autoptr (BfPart) old = walled ();
  g_autoptr (BfPart) bare = bf_edit_remove_flange (old, "1");
  g_autoptr (BfPart) part = bf_edit_remove_point (bare, 2);

  assert_flange (part, "2", 1, 150.0);
  assert_flange (part, "3", 2, 30.0);
}

/* A point put in and taken out again leaves all as it was. */
static void
test_point_in_and_out (void)
{
  g_autoptr (BfPart) old = walled ();
  g_autofree char *before = bf_part_to_text (old);

  for (guint edge = 0; edge < 4; edge++)
    for (double share = 0.25; share < 1.0; share += 0.5)
      {
        BfVec2 a = bf_part_point (old, edge);
        BfVec2 at = bf_vec2_along (a, bf_vec2_sub (bf_part_point (old, edge + 1), a), share);
        g_autoptr (BfPart) more = bf_edit_add_point (old, edge, at);
        g_autoptr (BfPart) again = bf_edit_remove_point (more, edge + 1);
        g_autofree char *after = bf_part_to_text (again);
        g_assert_cmpstr (after, ==, before);
      }
}

static void
test_hem (void)
{
  g_autoptr (BfPart) old = walled ();
  BfEdge tip = { "2", BF_EDGE_TIP, 0 };
  g_autofree char *id = NULL;
  g_autoptr (BfPart) hemmed = bf_edit_add_hem (old, &tip, BF_TURN_DOWN, &id);
  const BfFlange *hem = bf_part_find_flange (hemmed, id);

  g_assert_cmpfloat_with_epsilon (hem->angle_deg, 180.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (hem->length_mm, 9.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (hem->bend.inside_radius_mm, 0.0, 1e-12);
  g_assert_cmpint (hem->turn, ==, BF_TURN_DOWN);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-outline/is-turned-round", test_outline_is_turned_round);
  g_test_add_func ("/edit-outline/point-moves-alone", test_point_moves_alone);
  g_test_add_func ("/edit-outline/edge-along-neighbours", test_edge_moves_along_its_neighbours);
  g_test_add_func ("/edit-outline/straight-on-edge", test_straight_on_edge_moves_square);
  g_test_add_func ("/edit-outline/new-point", test_new_point_moves_counts_on);
  g_test_add_func ("/edit-outline/removed-point", test_removed_point_moves_counts_back);
  g_test_add_func ("/edit-outline/flange-after-goes-over", test_flange_after_goes_over);
  g_test_add_func ("/edit-outline/point-in-and-out", test_point_in_and_out);
  g_test_add_func ("/edit-outline/hem", test_hem);
  return g_test_run ();
}
