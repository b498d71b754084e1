/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "make-part.h"
#include "make/pack-check.h"

static BfOpening *
add_opening (BfPart *part, BfOpeningShape shape, double x_mm, double y_mm)
{
  BfOpening *opening = bf_opening_new ("base", shape);

  opening->at_mm = bf_vec2 (x_mm, y_mm);
  opening->angle_deg = 0.0;
  g_ptr_array_add (part->openings, opening);
  return opening;
}

static void
check_of (BfPart *part, BfPackCheck *check)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  bf_pack_check (fold, check);
}

static void
test_nothing (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);
  BfPackCheck check;

  check_of (part, &check);
  g_assert_true (isinf (check.hole_mm));
  g_assert_true (isinf (check.bridge_mm));
  g_assert_cmpfloat_with_epsilon (check.hole_needed_mm, 1.5, 1e-9);
  g_assert_cmpfloat_with_epsilon (check.bridge_needed_mm, 3.0, 1e-9);
}

/* Each by its narrowest way across: a diameter, a slot's width, a turned rectangle's shorter side,
 * a triangle's least height. */
static void
test_holes (void)
{
  g_autoptr (BfPart) part = make_rectangle (300.0, 200.0);
  BfPackCheck check;
  BfOpening *opening = add_opening (part, BF_OPENING_ROUND, 40.0, 50.0);

  opening->diameter_mm = 9.0;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.hole_mm, 9.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (check.bridge_mm, 35.5, 1e-5);

  opening = add_opening (part, BF_OPENING_SLOT, 100.0, 100.0);
  opening->length_mm = 30.0;
  opening->width_mm = 8.0;
  opening->angle_deg = 33.0;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.hole_mm, 8.0, 0.02);

  opening = add_opening (part, BF_OPENING_RECTANGLE, 180.0, 100.0);
  opening->length_mm = 7.0;
  opening->width_mm = 20.0;
  opening->angle_deg = 20.0;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.hole_mm, 7.0, 1e-6);

  opening = add_opening (part, BF_OPENING_OUTLINE, 0.0, 0.0);
  opening->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  for (guint i = 0; i < 3; i++)
    {
      /* 20 wide and 5 high: the least height is the one on the longest side. */
      BfVec2 p = bf_vec2 (240.0 + 10.0 * i, i == 1 ? 105.0 : 100.0);
      g_array_append_val (opening->points, p);
    }
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.hole_mm, 5.0, 1e-6);
}

/* A keyhole is as narrow as the narrow part that a screw's neck runs in, not as its round. */
static void
test_keyhole (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);
  BfOpening *keyhole = add_opening (part, BF_OPENING_KEYHOLE, 50.0, 30.0);
  BfPackCheck check;

  keyhole->diameter_mm = 9.0;
  keyhole->length_mm = 15.0;
  keyhole->width_mm = 1.2;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.hole_mm, 1.2, 1e-6);
}

/* Slots that are cut to bend along are cuts like others: they stand a bridge apart. */
static void
test_bend_slots (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfFlange *front = add_flange (part, "front", 0, 60.0, 90.0);
  BfPackCheck check;

  part->cutting.by = BF_CUTTING_SERVICE;
  front->bend.way = BF_BEND_WAY_SLOTS;
  front->bend.slot_mm = 40.0;
  front->bend.bridge_mm = 5.0;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.bridge_mm, 5.0, 1e-6);
}

/* What the least numbers ask for goes with the thickness: the thickness itself, and twice that, but
 * never under 3 mm. */
static void
test_needed (void)
{
  static const struct
  {
    double thickness_mm, hole_mm, bridge_mm;
  } rows[] = { { 0.5, 0.5, 3.0 }, { 1.5, 1.5, 3.0 }, { 1.6, 1.6, 3.2 }, { 3.0, 3.0, 6.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);
      BfPackCheck check;

      part->metal.thickness_mm = rows[i].thickness_mm;
      check_of (part, &check);
      g_assert_cmpfloat_with_epsilon (check.hole_needed_mm, rows[i].hole_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (check.bridge_needed_mm, rows[i].bridge_mm, 1e-9);
    }
}

/* Between two holes, and between a hole and the edge. */
static void
test_bridges (void)
{
  g_autoptr (BfPart) part = make_rectangle (300.0, 200.0);
  BfPackCheck check;

  add_opening (part, BF_OPENING_ROUND, 50.0, 50.0)->diameter_mm = 10.0;
  add_opening (part, BF_OPENING_ROUND, 62.0, 50.0)->diameter_mm = 10.0;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.bridge_mm, 2.0, 1e-6);
  add_opening (part, BF_OPENING_ROUND, 294.0, 100.0)->diameter_mm = 10.0;
  check_of (part, &check);
  g_assert_cmpfloat_with_epsilon (check.bridge_mm, 1.0, 1e-6);
}

static void
test_names (void)
{
  static const struct
  {
    const char *name, *material;
    double thickness_mm;
    BfUnits units;
    guint quantity;
    const char *wanted;
  } rows[] = {
    { "Spoke tray", "mild-steel", 1.5, BF_UNITS_MM, 2, "Spoke tray, 2 off, mild steel 1.5 mm" },
    { "Tray", "stainless-304", 2.0, BF_UNITS_MM, 1, "Tray, 1 off, stainless 304 2 mm" },
    { "Tray", "mild-steel", 1.51892, BF_UNITS_IN, 1, "Tray, 1 off, mild steel 0.0598 in" },
    { "a/b:c", "zinc", 0.7, BF_UNITS_MM, 1, "a-b-c, 1 off, zinc 0.7 mm" },
    { " . ", "zinc", 0.7, BF_UNITS_MM, 1, "Part, 1 off, zinc 0.7 mm" },
    { NULL, "zinc", 0.7, BF_UNITS_MM, 1, "Part, 1 off, zinc 0.7 mm" },
    { "two\nlines", "zinc", 0.7, BF_UNITS_MM, 1, "two lines, 1 off, zinc 0.7 mm" },
    { "ends. ", "zinc", 0.7, BF_UNITS_MM, 12, "ends, 12 off, zinc 0.7 mm" },
    { "..hidden", "zinc", 0.7, BF_UNITS_MM, 1, "hidden, 1 off, zinc 0.7 mm" },
    { "C:\\*?\"<>|", "zinc", 0.7, BF_UNITS_MM, 1, "C--------, 1 off, zinc 0.7 mm" },
    { "Tray", NULL, 3.0, BF_UNITS_MM, 1, "Tray, 1 off, metal 3 mm" },
    { "Größe", "own/metal", 0.7, BF_UNITS_MM, 1, "Größe, 1 off, own metal 0.7 mm" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);
      g_autofree char *name = NULL;

      g_free (part->name);
      g_free (part->metal.material);
      part->name = g_strdup (rows[i].name);
      part->metal.material = g_strdup (rows[i].material);
      part->metal.thickness_mm = rows[i].thickness_mm;
      part->units = rows[i].units;
      part->quantity = rows[i].quantity;
      name = bf_pack_name (part);
      g_assert_cmpstr (name, ==, rows[i].wanted);
    }
}

/* A long name is cut where a letter ends, and leaves room for the rest: file systems take 255
 * bytes. */
static void
test_long_name (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);
  g_autoptr (GString) long_name = g_string_new (NULL);
  g_autofree char *name = NULL;

  for (guint i = 0; i < 300; i++)
    g_string_append (long_name, i % 2 == 0 ? "ü" : "長");
  g_free (part->name);
  part->name = g_strdup (long_name->str);
  part->quantity = 9999;
  name = bf_pack_name (part);
  g_assert_true (g_utf8_validate (name, -1, NULL));
  g_assert_cmpuint (strlen (name), <, 200);
  g_assert_nonnull (strstr (name, ", 9999 off, mild steel 1.5 mm"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/pack-check/nothing", test_nothing);
  g_test_add_func ("/pack-check/holes", test_holes);
  g_test_add_func ("/pack-check/keyhole", test_keyhole);
  g_test_add_func ("/pack-check/bend-slots", test_bend_slots);
  g_test_add_func ("/pack-check/needed", test_needed);
  g_test_add_func ("/pack-check/bridges", test_bridges);
  g_test_add_func ("/pack-check/names", test_names);
  g_test_add_func ("/pack-check/long-name", test_long_name);
  return g_test_run ();
}
