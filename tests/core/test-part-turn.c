/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-file.h"
#include "core/ring.h"
#include "random-part.h"

#define N_RANDOM 300

static BfPart *
read_part (const char *text)
{
  g_autoptr (GError) error = NULL;
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return part;
}

static void
assert_number (double value, double expected)
{
  g_assert_cmpfloat_with_epsilon (value, expected, 1e-9);
}

static double
area (const BfPart *part)
{
  return bf_polygon_area ((const BfVec2 *)(gconstpointer)part->outline->data,
                          bf_part_n_points (part));
}

/* Two mirrors face to face show the thing itself. */
static void
test_twice (void)
{
  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) once = bf_part_mirror (part);
      g_autoptr (BfPart) twice = bf_part_mirror (once);

      g_assert_cmpfloat (area (once), >, 0);
      g_assert_cmpfloat_with_epsilon (area (once), area (part), 1e-9 * area (part));
      assert_same_part (part, twice, 1e-9);
    }
}

/* The part of the clockwise tests: 100 by 60, drawn clockwise from (0, 0), so that edge 0 is the
 * left side, 1 the back, 2 the right side and 3 the front; start and end as that runs. */
static const char clockwise[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1,"
    "  \"grain\": 30},"
    " \"base\": {\"outline\": [[0,0],[0,60],[100,60],[100,0]],"
    "  \"corners\": [{\"at\": 1, \"finish\": \"round\", \"size\": 4},"
    "   {\"at\": 0, \"finish\": \"chamfer\", \"size\": 2}]},"
    " \"flanges\": ["
    "  {\"id\": \"back\", \"edge\": 1, \"length\": 20, \"start\": 5, \"end\": 7,"
    "   \"start_taper\": 10, \"start_relief\": \"notch\"},"
    "  {\"id\": \"ear\", \"on\": \"back\", \"edge\": \"start\", \"length\": 9, \"start\": 3},"
    "  {\"id\": \"lip\", \"on\": \"back\", \"edge\": \"tip\", \"length\": 8, \"end\": 6},"
    "  {\"id\": \"left\", \"edge\": 0, \"length\": 20}],"
    " \"corners\": [{\"at\": 1, \"join\": \"covers-before\"},"
    "  {\"at\": 3, \"join\": \"tab\"},"
    "  {\"on\": \"left\", \"at\": 0, \"join\": \"covers-after\"}],"
    " \"openings\": ["
    "  {\"on\": \"back\", \"shape\": \"keyhole\", \"at\": [30, 10], \"diameter\": 5,"
    "   \"length\": 7, \"width\": 2, \"angle\": 20},"
    "  {\"on\": \"back\", \"shape\": \"outline\", \"points\": [[40,5],[50,5],[50,9]]},"
    "  {\"on\": \"base\", \"shape\": \"slot\", \"at\": [30, 10], \"length\": 9, \"width\": 3,"
    "   \"angle\": 20}]}";

static void
test_clockwise_outline (void)
{
  static const BfVec2 expected[] = { { 0, 0 }, { 100, 0 }, { 100, 60 }, { 0, 60 } };
  g_autoptr (BfPart) part = read_part (clockwise);

  g_assert_cmpuint (bf_part_n_points (part), ==, 4);
  for (guint i = 0; i < 4; i++)
    {
      assert_number (bf_part_point (part, i).x, expected[i].x);
      assert_number (bf_part_point (part, i).y, expected[i].y);
    }
  assert_number (part->metal.grain_deg, 30);
}

static void
test_clockwise_flanges (void)
{
  g_autoptr (BfPart) part = read_part (clockwise);
  const BfFlange *back = bf_part_find_flange (part, "back");
  const BfFlange *ear = bf_part_find_flange (part, "ear");
  const BfFlange *lip = bf_part_find_flange (part, "lip");
  const BfFlange *left = bf_part_find_flange (part, "left");

  g_assert_cmpuint (back->edge_index, ==, 2); /* from (100, 60) to (0, 60) */
  g_assert_cmpuint (left->edge_index, ==, 3);
  assert_number (back->start_mm, 7);
  assert_number (back->end_mm, 5);
  assert_number (back->start_taper_deg, 0);
  assert_number (back->end_taper_deg, 10);
  g_assert_cmpint (back->start_relief, ==, BF_END_RELIEF_UNSET);
  g_assert_cmpint (back->end_relief, ==, BF_END_RELIEF_NOTCH);
  g_assert_cmpint (ear->edge, ==, BF_EDGE_END);
  assert_number (ear->end_mm, 3);
  g_assert_cmpint (lip->edge, ==, BF_EDGE_TIP);
  assert_number (lip->start_mm, 6);
  assert_number (lip->end_mm, 0);
}

static void
test_clockwise_corners (void)
{
  g_autoptr (BfPart) part = read_part (clockwise);
  const BfCorner *round = g_ptr_array_index (part->base_corners, 0);
  const BfCorner *chamfer = g_ptr_array_index (part->base_corners, 1);

  g_assert_cmpuint (round->at, ==, 3); /* (0, 60) */
  g_assert_cmpuint (chamfer->at, ==, 0);
  g_assert_cmpint (bf_part_find_corner (part, "base", 3)->join, ==, BF_JOIN_COVERS_AFTER);
  g_assert_cmpint (bf_part_find_corner (part, "base", 1)->join, ==, BF_JOIN_TAB);
  g_assert_cmpint (bf_part_find_corner (part, "left", 1)->join, ==, BF_JOIN_COVERS_BEFORE);
}

static void
test_clockwise_openings (void)
{
  g_autoptr (BfPart) part = read_part (clockwise);
  const BfOpening *keyhole = g_ptr_array_index (part->openings, 0);
  const BfOpening *outline = g_ptr_array_index (part->openings, 1);
  const BfOpening *slot = g_ptr_array_index (part->openings, 2);

  assert_number (keyhole->at_mm.x, 70);
  assert_number (keyhole->at_mm.y, 10);
  assert_number (keyhole->angle_deg, 200);
  assert_number (g_array_index (outline->points, BfVec2, 0).x, 60);
  assert_number (g_array_index (outline->points, BfVec2, 1).x, 50);
  assert_number (g_array_index (outline->points, BfVec2, 1).y, 9);
  assert_number (g_array_index (outline->points, BfVec2, 2).x, 50);
  assert_number (g_array_index (outline->points, BfVec2, 2).y, 5);
  assert_number (slot->at_mm.x, 30); /* on the base, as drawn */
  assert_number (slot->angle_deg, 20);
}

/* Where a point of a flange's opening lies in the plane of the base, were the flange laid flat
 * about its drawn line. Written anew here, from what the file format says. */
static BfVec2
lay_flat (const BfPart *part, const BfFlange *flange, BfVec2 p)
{
  BfVec2 from = bf_part_point (part, flange->edge_index);
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (bf_part_point (part, flange->edge_index + 1), from));

  return bf_vec2_along (bf_vec2_along (from, e, p.x), bf_vec2 (e.y, -e.x), p.y);
}

/* The way a keyhole points, laid flat. */
static double
lay_angle (const BfPart *part, const BfFlange *flange, double angle_deg)
{
  BfVec2 e = bf_vec2_sub (bf_part_point (part, flange->edge_index + 1),
                          bf_part_point (part, flange->edge_index));

  return atan2 (e.y, e.x) + bf_deg_to_rad (angle_deg);
}

/* The mirror image of every opening on a flange of the base lies where the mirror shows it. */
static void
test_mirrored_openings (void)
{
  guint n = 0;

  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) mirrored = bf_part_mirror (part);
      const BfOpening *was = g_ptr_array_index (part->openings, 0);
      const BfOpening *is = g_ptr_array_index (mirrored->openings, 0);
      const BfFlange *flange = bf_part_find_flange (part, was->on);
      BfVec2 a, b;
      double turn;

      if (flange == NULL || flange->edge != BF_EDGE_INDEX || was->points != NULL)
        continue;
      n++;
      a = lay_flat (part, flange, was->at_mm);
      b = lay_flat (mirrored, bf_part_find_flange (mirrored, was->on), is->at_mm);
      assert_number (b.x, -a.x);
      assert_number (b.y, a.y);
      if (isnan (was->angle_deg))
        continue;
      turn = lay_angle (part, flange, was->angle_deg) +
             lay_angle (mirrored, bf_part_find_flange (mirrored, was->on), is->angle_deg);
      assert_number (cos (turn), -1); /* a and 180° − a */
      assert_number (sin (turn), 0);
    }
  g_assert_cmpuint (n, >, 50);
}

/* Each flange's start in the mirror is its end, and lies where the mirror shows it. */
static void
test_mirrored_flanges (void)
{
  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) mirrored = bf_part_mirror (part);

      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        {
          const BfFlange *was = bf_part_flange (part, i), *is = bf_part_flange (mirrored, i);
          BfVec2 start, end;

          g_assert_cmpstr (was->id, ==, is->id);
          g_assert_cmpint (was->turn, ==, is->turn);
          assert_number (was->start_taper_deg, is->end_taper_deg);
          if (was->edge != BF_EDGE_INDEX)
            continue;
          start = lay_flat (part, was, bf_vec2 (was->start_mm, 0));
          end = lay_flat (mirrored, is, bf_vec2 (-is->end_mm, 0));
          end = bf_vec2_add (end, bf_vec2_sub (bf_part_point (mirrored, is->edge_index + 1),
                                               bf_part_point (mirrored, is->edge_index)));
          assert_number (end.x, -start.x);
          assert_number (end.y, start.y);
        }
    }
}

static void
test_mirrored_corners (void)
{
  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) mirrored = bf_part_mirror (part);

      for (guint i = 0; i < part->corners->len; i++)
        {
          const BfCorner *was = g_ptr_array_index (part->corners, i);
          const BfCorner *is = g_ptr_array_index (mirrored->corners, i);
          gboolean covers = was->join == BF_JOIN_COVERS_BEFORE || was->join == BF_JOIN_COVERS_AFTER;

          if (covers)
            g_assert_cmpint (was->join + is->join, ==,
                             BF_JOIN_COVERS_BEFORE + BF_JOIN_COVERS_AFTER);
          else
            g_assert_cmpint (was->join, ==, is->join);
          if (!g_str_equal (was->on, "base"))
            {
              g_assert_cmpuint (was->at + is->at, ==, 1);
              continue;
            }
          assert_number (bf_part_point (mirrored, is->at).x, -bf_part_point (part, was->at).x);
          assert_number (bf_part_point (mirrored, is->at).y, bf_part_point (part, was->at).y);
        }
    }
}

/* A part that already runs counter-clockwise is left as it is, and so is one of no area. */
static void
test_left_alone (void)
{
  g_autoptr (BfPart) part = random_part (3);
  g_autoptr (BfPart) copy = bf_part_copy (part);
  g_autoptr (BfPart) empty = bf_part_new ();
  g_autoptr (BfPart) mirrored = NULL;

  bf_part_make_counter_clockwise (part);
  assert_same_part (part, copy, 1e-15);
  bf_part_make_counter_clockwise (empty);
  mirrored = bf_part_mirror (empty);
  g_assert_cmpuint (bf_part_n_points (mirrored), ==, 0);
}

/* A mirrored part is as good a file as any. */
static void
test_mirror_is_valid (void)
{
  for (guint32 seed = 1; seed <= 60; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) mirrored = bf_part_mirror (part);
      g_autofree char *text = bf_part_to_text (mirrored);
      g_autoptr (BfPart) read = read_part (text);

      g_assert_cmpuint (bf_part_n_flanges (read), ==, bf_part_n_flanges (part));
      assert_number (area (read), area (part));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part-turn/twice", test_twice);
  g_test_add_func ("/part-turn/clockwise-outline", test_clockwise_outline);
  g_test_add_func ("/part-turn/clockwise-flanges", test_clockwise_flanges);
  g_test_add_func ("/part-turn/clockwise-corners", test_clockwise_corners);
  g_test_add_func ("/part-turn/clockwise-openings", test_clockwise_openings);
  g_test_add_func ("/part-turn/mirrored-openings", test_mirrored_openings);
  g_test_add_func ("/part-turn/mirrored-flanges", test_mirrored_flanges);
  g_test_add_func ("/part-turn/mirrored-corners", test_mirrored_corners);
  g_test_add_func ("/part-turn/left-alone", test_left_alone);
  g_test_add_func ("/part-turn/mirror-is-valid", test_mirror_is_valid);
  return g_test_run ();
}
