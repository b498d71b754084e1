/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part.h"
#include "random-part.h"

static void
assert_number (double value, double expected)
{
  g_assert_cmpfloat_with_epsilon (value, expected, 1e-12);
}

/* A new part asks for nothing: every choice is left to the defaults. */
static void
test_new_part (void)
{
  g_autoptr (BfPart) part = bf_part_new ();

  g_assert_cmpstr (part->name, ==, "");
  g_assert_cmpstr (part->notes, ==, "");
  g_assert_cmpint (part->units, ==, BF_UNITS_MM);
  g_assert_cmpint (part->measure, ==, BF_MEASURE_OUTSIDE);
  g_assert_cmpstr (part->metal.material, ==, "mild-steel");
  assert_number (part->metal.thickness_mm, 1.5);
  g_assert_true (isnan (part->metal.grain_deg));
  g_assert_cmpint (part->cutting.by, ==, BF_CUTTING_DISC);
  g_assert_true (isnan (part->cutting.disc_diameter_mm));
  g_assert_null (part->cutting.drill_list_mm);
  g_assert_cmpint (part->bend.way, ==, BF_BEND_WAY_UNSET);
  g_assert_true (isnan (part->bend.allowance.k));
  g_assert_cmpuint (bf_part_n_points (part), ==, 0);
  g_assert_cmpuint (bf_part_n_flanges (part), ==, 0);
  g_assert_cmpuint (part->corners->len + part->base_corners->len + part->openings->len, ==, 0);
  g_assert_null (part->source);
}

static void
test_new_flange (void)
{
  g_autofree char *id = g_strdup ("front");
  g_autoptr (BfFlange) flange = bf_flange_new (id);

  g_assert_cmpstr (flange->id, ==, "front");
  g_assert_true (flange->id != id);
  g_assert_cmpstr (flange->on, ==, "base");
  g_assert_cmpint (flange->edge, ==, BF_EDGE_INDEX);
  g_assert_cmpuint (flange->edge_index, ==, 0);
  assert_number (flange->length_mm, 20);
  assert_number (flange->angle_deg, 90);
  g_assert_cmpint (flange->turn, ==, BF_TURN_UP);
  assert_number (flange->start_mm + flange->end_mm, 0);
  g_assert_cmpint (flange->start_relief, ==, BF_END_RELIEF_UNSET);
  g_assert_true (isnan (flange->bend.inside_radius_mm));
  g_assert_cmpint (flange->bend.allowance.rule, ==, BF_ALLOWANCE_UNSET);
}

static void
test_new_corner (void)
{
  g_autoptr (BfCorner) corner = bf_corner_new ("front", 1);

  g_assert_cmpstr (corner->on, ==, "front");
  g_assert_cmpuint (corner->at, ==, 1);
  g_assert_cmpint (corner->join, ==, BF_JOIN_UNSET);
  g_assert_cmpint (corner->relief, ==, BF_RELIEF_UNSET);
  g_assert_cmpint (corner->finish, ==, BF_FINISH_UNSET);
  g_assert_true (isnan (corner->gap_mm));
  g_assert_true (isnan (corner->relief_size_mm));
  g_assert_true (isnan (corner->finish_size_mm));
}

/* Those sizes that a shape does not have are never numbers. */
static void
test_new_openings (void)
{
  static const struct
  {
    BfOpeningShape shape;
    gboolean turned, points;
  } cases[] = {
    { BF_OPENING_ROUND, FALSE, FALSE },    { BF_OPENING_SLOT, TRUE, FALSE },
    { BF_OPENING_RECTANGLE, TRUE, FALSE }, { BF_OPENING_KEYHOLE, TRUE, FALSE },
    { BF_OPENING_OUTLINE, FALSE, TRUE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfOpening) opening = bf_opening_new ("base", cases[i].shape);

      g_assert_cmpint (opening->shape, ==, cases[i].shape);
      g_assert_cmpint (isnan (opening->angle_deg) == 0, ==, cases[i].turned);
      g_assert_cmpint (opening->points != NULL, ==, cases[i].points);
      g_assert_true (isnan (opening->diameter_mm));
      g_assert_true (isnan (opening->length_mm));
      g_assert_true (isnan (opening->width_mm));
    }
}

static void
test_references (void)
{
  BfPart *part = bf_part_new ();
  BfPart *second = bf_part_ref (part);
  g_autoptr (BfPart) copy = NULL;

  g_assert_true (second == part);
  bf_part_unref (part);
  g_assert_cmpstr (second->name, ==, ""); /* still there */
  copy = bf_part_copy (second);
  bf_part_unref (second);
  g_assert_cmpstr (copy->name, ==, "");
  bf_part_unref (NULL);
  bf_flange_free (NULL);
  bf_corner_free (NULL);
  bf_opening_free (NULL);
}

/* Whatever is done to a copy, the part it was made from stays as it was. */
static void
change_everything (BfPart *part)
{
  BfCorner *corner;
  BfFlange *flange;

  g_free (part->name);
  part->name = g_strdup ("changed");
  g_free (part->notes);
  part->notes = g_strdup ("changed");
  g_free (part->metal.material);
  part->metal.material = g_strdup ("zinc");
  part->metal.thickness_mm = 9;
  part->bend.inside_radius_mm = 9;
  g_free (part->bend.allowance.trial_id);
  part->bend.allowance.trial_id = g_strdup ("changed");
  g_array_set_size (part->outline, 3);
  g_array_index (part->outline, BfVec2, 0).x = 99;
  g_clear_pointer (&part->cutting.drill_list_mm, g_array_unref);
  g_ptr_array_set_size (part->openings, 0);
  g_ptr_array_set_size (part->base_corners, 0);
  for (guint i = 0; i < part->corners->len; i++)
    {
      corner = g_ptr_array_index (part->corners, i);
      g_free (corner->on);
      corner->on = g_strdup ("changed");
    }
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      flange = g_ptr_array_index (part->flanges, i);
      g_free (flange->id);
      flange->id = g_strdup ("changed");
      flange->bend.allowance.k = 0.99;
    }
}

static void
test_copy_is_apart (void)
{
  for (guint32 seed = 1; seed <= 60; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) same = random_part (seed);
      g_autoptr (BfPart) copy = bf_part_copy (part);

      assert_same_part (part, copy, 1e-15);
      change_everything (copy);
      assert_same_part (part, same, 1e-15);
    }
}

static void
test_find (void)
{
  g_autoptr (BfPart) part = bf_part_new ();
  const char *const ids[] = { "front", "back", "front-lip" };

  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    g_ptr_array_add (part->flanges, bf_flange_new (ids[i]));
  g_ptr_array_add (part->corners, bf_corner_new ("base", 1));
  g_ptr_array_add (part->corners, bf_corner_new ("front", 1));
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    g_assert_true (bf_part_find_flange (part, ids[i]) == bf_part_flange (part, i));
  g_assert_null (bf_part_find_flange (part, "base"));
  g_assert_null (bf_part_find_flange (part, "Front"));
  g_assert_true (bf_part_find_corner (part, "front", 1) == g_ptr_array_index (part->corners, 1));
  g_assert_null (bf_part_find_corner (part, "front", 0));
  g_assert_null (bf_part_find_corner (part, "back", 1));
}

/* Points are counted round. */
static void
test_points (void)
{
  static const BfVec2 points[] = { { 0, 0 }, { 7, 0 }, { 0, 5 } };
  g_autoptr (BfPart) part = bf_part_new ();

  g_array_append_vals (part->outline, points, G_N_ELEMENTS (points));
  g_assert_cmpuint (bf_part_n_points (part), ==, 3);
  assert_number (bf_part_point (part, 1).x, 7);
  assert_number (bf_part_point (part, 3).x, 0);
  assert_number (bf_part_point (part, 5).y, 5);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part/new-part", test_new_part);
  g_test_add_func ("/part/new-flange", test_new_flange);
  g_test_add_func ("/part/new-corner", test_new_corner);
  g_test_add_func ("/part/new-openings", test_new_openings);
  g_test_add_func ("/part/references", test_references);
  g_test_add_func ("/part/copy-is-apart", test_copy_is_apart);
  g_test_add_func ("/part/find", test_find);
  g_test_add_func ("/part/points", test_points);
  return g_test_run ();
}
