/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/first-part.h"
#include "core/thing.h"

/* Edits leave the part they are given as it was, and do what they say. */

static BfPart *
thing (BfThing which)
{
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  BfThingSizes sizes;
  bf_thing_sizes_init (&sizes, which, BF_UNITS_MM);
  return bf_thing_make (which, &sizes, setup, "Thing");
}

static void
test_add_names_the_flange (void)
{
  g_autoptr (BfPart) bare = bf_first_part (BF_UNITS_MM);
  BfEdge right = { "base", BF_EDGE_INDEX, 1 };
  g_autofree char *first = NULL;
  g_autofree char *second = NULL;
  g_autoptr (BfPart) one = bf_edit_add_flange (bare, &right, BF_TURN_DOWN, &first);
  g_autoptr (BfPart) two = bf_edit_add_flange (one, &right, BF_TURN_UP, &second);

  g_assert_cmpuint (bf_part_n_flanges (bare), ==, 0);
  g_assert_cmpstr (first, ==, "right");
  g_assert_cmpstr (second, ==, "right 2");
  g_assert_cmpint (bf_part_find_flange (two, "right")->turn, ==, BF_TURN_DOWN);
  g_assert_true (bf_part_flange_at (two, &right) == bf_part_find_flange (two, "right"));
}

static void
test_remove_takes_the_family (void)
{
  g_autoptr (BfPart) box = thing (BF_THING_BOX);
  BfEdge tip = { "lid", BF_EDGE_TIP, 0 };
  g_autofree char *lip = NULL;
  g_autoptr (BfPart) lipped = bf_edit_add_flange (box, &tip, BF_TURN_UP, &lip);
  g_ptr_array_add (lipped->openings, bf_opening_new ("lid", BF_OPENING_ROUND));
  g_ptr_array_add (lipped->openings, bf_opening_new ("front", BF_OPENING_ROUND));
  g_ptr_array_add (lipped->corners, bf_corner_new (lip, 0));
  g_autoptr (BfPart) cut = bf_edit_remove_flange (lipped, "back");

  g_assert_cmpuint (bf_part_n_flanges (lipped), ==, 6);
  g_assert_cmpuint (bf_part_n_flanges (cut), ==, 3);
  g_assert_null (bf_part_find_flange (cut, lip));
  g_assert_cmpuint (cut->openings->len, ==, 1);
  g_assert_cmpuint (cut->corners->len, ==, 0);
}

static void
test_copy_all_round (void)
{
  g_autoptr (BfPart) channel = thing (BF_THING_CHANNEL);
  g_autoptr (BfPart) longer = bf_edit_flange_length (channel, "front", 33.0);
  g_autoptr (BfPart) round = bf_edit_copy_all_round (longer, "front");
  g_autoptr (BfPart) alike = bf_edit_copy_all_round (round, "front");

  g_assert_cmpuint (bf_part_n_flanges (round), ==, 4);
  g_assert_cmpfloat_with_epsilon (bf_part_find_flange (round, "left")->length_mm, 33.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_part_find_flange (round, "back")->length_mm, 30.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_part_find_flange (alike, "back")->length_mm, 33.0, 1e-12);
}

typedef struct
{
  guint edge;
  double length_mm;
  BfVec2 far; /* where point 2 of a 200 × 120 base comes to lie */
} EdgeCase;

static const EdgeCase edge_cases[] = {
  { 0, 250.0, { 250.0, 120.0 } },
  { 1, 100.0, { 200.0, 100.0 } },
  { 2, 180.0, { 180.0, 120.0 } },
  { 3, 121.0, { 200.0, 121.0 } },
};

/* Whichever edge of a rectangle is given a length, it stays one, and its first corner stays. */
static void
test_rectangle_stays_one (void)
{
  g_autoptr (BfPart) tray = thing (BF_THING_TRAY);

  for (guint i = 0; i < G_N_ELEMENTS (edge_cases); i++)
    {
      const EdgeCase *c = &edge_cases[i];
      g_autoptr (BfPart) part = bf_edit_edge_length (tray, c->edge, c->length_mm);
      g_assert_cmpfloat_with_epsilon (bf_part_edge_length_mm (part, c->edge), c->length_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_part_point (part, 0).x, 0.0, 1e-12);
      g_assert_cmpfloat_with_epsilon (bf_part_point (part, 0).y, 0.0, 1e-12);
      g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).x, c->far.x, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).y, c->far.y, 1e-9);
    }
}

static void
test_openings_beyond_move_along (void)
{
  g_autoptr (BfPart) tray = thing (BF_THING_TRAY);
  BfOpening *near = bf_opening_new ("base", BF_OPENING_ROUND);
  BfOpening *far = bf_opening_new ("base", BF_OPENING_ROUND);
  near->at_mm = bf_vec2 (50.0, 60.0);
  far->at_mm = bf_vec2 (200.0, 60.0);
  g_ptr_array_add (tray->openings, near);
  g_ptr_array_add (tray->openings, far);
  g_autoptr (BfPart) part = bf_edit_edge_length (tray, 0, 230.0);

  g_assert_cmpfloat_with_epsilon (((BfOpening *)part->openings->pdata[0])->at_mm.x, 50.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (((BfOpening *)part->openings->pdata[1])->at_mm.x, 230.0, 1e-9);
}

/* An outline goes as a whole, and what is drawn on a wall stays where it is on it. */
static void
test_drawn_openings_move_along (void)
{
  static const BfVec2 corners[] = { { 200, 40 }, { 210, 40 }, { 205, 50 } };
  g_autoptr (BfPart) tray = thing (BF_THING_TRAY);
  BfOpening *drawn = bf_opening_new ("base", BF_OPENING_OUTLINE);
  BfOpening *hole = bf_opening_new ("right", BF_OPENING_ROUND);

  drawn->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  g_array_append_vals (drawn->points, corners, G_N_ELEMENTS (corners));
  hole->at_mm = bf_vec2 (100.0, 20.0);
  g_ptr_array_add (tray->openings, drawn);
  g_ptr_array_add (tray->openings, hole);
  g_autoptr (BfPart) part = bf_edit_edge_length (tray, 0, 170.0);
  drawn = part->openings->pdata[0];
  hole = part->openings->pdata[1];

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      BfVec2 p = g_array_index (drawn->points, BfVec2, i);
      g_assert_cmpfloat_with_epsilon (p.x, corners[i].x - 30.0, 1e-9);
      g_assert_cmpfloat_with_epsilon (p.y, corners[i].y, 1e-9);
    }
  g_assert_cmpfloat_with_epsilon (hole->at_mm.x, 100.0, 1e-12);
}

static void
test_measure_changes_the_numbers (void)
{
  g_autoptr (BfPart) outside = thing (BF_THING_TRAY);
  g_autoptr (BfPart) inside = bf_edit_measure (outside, BF_MEASURE_INSIDE);

  g_assert_cmpfloat_with_epsilon (bf_part_edge_length_mm (inside, 0), 197.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_part_edge_length_mm (inside, 1), 117.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_part_flange (inside, 0)->length_mm, 38.5, 1e-9);
}

/* 16 mm from the outside of a floor is 14.5 mm from its inside. */
static void
test_measure_moves_openings (void)
{
  g_autoptr (BfPart) outside = thing (BF_THING_TRAY);
  BfOpening *hole = bf_opening_new ("front", BF_OPENING_ROUND);
  hole->at_mm = bf_vec2 (30.0, 16.0);
  hole->diameter_mm = 6.0;
  g_ptr_array_add (outside->openings, hole);
  g_autoptr (BfPart) inside = bf_edit_measure (outside, BF_MEASURE_INSIDE);
  const BfOpening *moved = inside->openings->pdata[0];

  g_assert_cmpfloat_with_epsilon (moved->at_mm.x, 28.5, 1e-9);
  g_assert_cmpfloat_with_epsilon (moved->at_mm.y, 14.5, 1e-9);
}

static void
test_ways_bring_their_own_figures (void)
{
  g_autoptr (BfPart) part = thing (BF_THING_TRAY);
  part->cutting.kerf_mm = 3.0;
  part->bend.inside_radius_mm = 9.0;
  g_autoptr (BfPart) cut = bf_edit_cutting (part, BF_CUTTING_SERVICE, NAN);
  g_autoptr (BfPart) bent = bf_edit_bend_way (part, BF_BEND_WAY_SLOTS);

  g_assert_true (isnan (cut->cutting.kerf_mm));
  g_assert_true (isnan (bent->bend.inside_radius_mm));
  g_assert_cmpint (bent->bend.way, ==, BF_BEND_WAY_SLOTS);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit/add-names-the-flange", test_add_names_the_flange);
  g_test_add_func ("/edit/remove-takes-the-family", test_remove_takes_the_family);
  g_test_add_func ("/edit/copy-all-round", test_copy_all_round);
  g_test_add_func ("/edit/rectangle-stays-one", test_rectangle_stays_one);
  g_test_add_func ("/edit/openings-beyond-move-along", test_openings_beyond_move_along);
  g_test_add_func ("/edit/drawn-openings-move-along", test_drawn_openings_move_along);
  g_test_add_func ("/edit/measure-changes-the-numbers", test_measure_changes_the_numbers);
  g_test_add_func ("/edit/measure-moves-openings", test_measure_moves_openings);
  g_test_add_func ("/edit/ways-bring-their-own-figures", test_ways_bring_their_own_figures);
  return g_test_run ();
}
