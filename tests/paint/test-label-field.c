/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/label-field.h"

/* A plate of 20 × 4 against one line or plate, clearance 1. */
static const struct
{
  const char *what;
  BfVec2 centre;
  double angle_deg;
  BfVec2 a, b;
  gboolean is_free;
} lines[] = {
  { "line through", { 0, 0 }, 0, { -30, 0 }, { 30, 0 }, FALSE },
  { "line ends inside", { 0, 0 }, 0, { 0, 0 }, { 0, 50 }, FALSE },
  { "short line inside", { 0, 0 }, 0, { -1, 0 }, { 1, 0 }, FALSE },
  { "above, farther than the clearance", { 0, 0 }, 0, { -30, 3.1 }, { 30, 3.1 }, TRUE },
  { "above, nearer than the clearance", { 0, 0 }, 0, { -30, 2.9 }, { 30, 2.9 }, FALSE },
  { "beyond its end", { 0, 0 }, 0, { 11.1, -9 }, { 11.1, 9 }, TRUE },
  { "just at its end", { 0, 0 }, 0, { 10.9, -9 }, { 10.9, 9 }, FALSE },
  { "turned upright, the line passes beside", { 0, 0 }, 90, { 3.1, -30 }, { 3.1, 30 }, TRUE },
  { "turned upright, the line passes through", { 0, 0 }, 90, { -30, 9 }, { 30, 9 }, FALSE },
  { "at 45°, the corner of its box is free", { 0, 0 }, 45, { 6, -6 }, { 7, -7 }, TRUE },
  { "moved away", { 100, 50 }, 0, { -30, 0 }, { 30, 0 }, TRUE },
};

static BfPlate
plate_at (BfVec2 centre, double angle_deg)
{
  double angle = bf_deg_to_rad (angle_deg);

  return (BfPlate){ centre, bf_vec2 (cos (angle), sin (angle)), 20.0, 4.0 };
}

static void
test_lines (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      g_autoptr (BfLabelField) field = bf_label_field_new (NULL, 1.0);
      BfPlate plate = plate_at (lines[i].centre, lines[i].angle_deg);
      g_test_message ("%s", lines[i].what);
      g_assert_true (bf_label_field_is_free (field, &plate));
      bf_label_field_add_line (field, lines[i].a, lines[i].b);
      g_assert_true (bf_label_field_is_free (field, &plate) == lines[i].is_free);
    }
}

static const struct
{
  const char *what;
  BfVec2 centre;
  double angle_deg;
  gboolean is_free;
} plates[] = {
  { "the same place", { 0, 0 }, 0, FALSE },
  { "above", { 0, 4.1 }, 0, TRUE },
  { "half covered", { 0, 3.9 }, 0, FALSE },
  { "beside", { 20.1, 0 }, 0, TRUE },
  { "crossing", { 0, 0 }, 90, FALSE },
  { "upright beside", { 12.1, 0 }, 90, TRUE },
  { "slanted: boxes meet, plates do not", { 17.5, 7 }, -45, TRUE },
};

static void
test_plates (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (plates); i++)
    {
      g_autoptr (BfLabelField) field = bf_label_field_new (NULL, 1.0);
      BfPlate taken = plate_at (bf_vec2 (0.0, 0.0), 0.0);
      BfPlate plate = plate_at (plates[i].centre, plates[i].angle_deg);
      g_test_message ("%s", plates[i].what);
      bf_label_field_add_plate (field, &taken);
      g_assert_true (bf_label_field_is_free (field, &plate) == plates[i].is_free);
    }
}

static void
test_view (void)
{
  BfBox view = { { 0.0, 0.0 }, { 30.0, 10.0 } };
  g_autoptr (BfLabelField) field = bf_label_field_new (&view, 1.0);
  BfPlate plate = plate_at (bf_vec2 (15.0, 5.0), 0.0);

  g_assert_true (bf_label_field_is_free (field, &plate));
  plate.centre.x = 21.0;
  g_assert_false (bf_label_field_is_free (field, &plate));
  plate = plate_at (bf_vec2 (15.0, 5.0), 90.0);
  g_assert_false (bf_label_field_is_free (field, &plate));
}

/* Inside a circle there is room where its chords do not come. */
static void
test_ring (void)
{
  g_autoptr (BfLabelField) field = bf_label_field_new (NULL, 1.0);
  g_autoptr (BfRing) circle = bf_ring_new ();
  BfPlate plate = plate_at (bf_vec2 (0.0, 0.0), 30.0);

  bf_ring_add (circle, bf_vec2 (15.0, 0.0), 1.0);
  bf_ring_add (circle, bf_vec2 (-15.0, 0.0), 1.0);
  bf_label_field_add_ring (field, circle);
  g_assert_true (bf_label_field_is_free (field, &plate));
  plate.centre = bf_vec2 (0.0, 15.0);
  g_assert_false (bf_label_field_is_free (field, &plate));
}

static void
test_clip (void)
{
  BfBox box = { { 0.0, 0.0 }, { 10.0, 5.0 } };
  BfVec2 a = { -5.0, 2.5 }, b = { 5.0, 2.5 };

  g_assert_true (bf_box_clip_line (&box, &a, &b));
  g_assert_cmpfloat_with_epsilon (a.x, 0.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (b.x, 5.0, 1e-12);
  a = bf_vec2 (-5.0, 6.0);
  b = bf_vec2 (5.0, 6.0);
  g_assert_false (bf_box_clip_line (&box, &a, &b));
  a = bf_vec2 (-1.0, 4.5);
  b = bf_vec2 (1.0, 6.5);
  g_assert_false (bf_box_clip_line (&box, &a, &b));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/label-field/lines", test_lines);
  g_test_add_func ("/label-field/plates", test_plates);
  g_test_add_func ("/label-field/view", test_view);
  g_test_add_func ("/label-field/ring", test_ring);
  g_test_add_func ("/label-field/clip", test_clip);
  return g_test_run ();
}
