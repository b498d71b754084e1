/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/part-file.h"

/* Holes and cut-outs added, sized, moved and taken away: each leaves the old part as it was, and
 * what comes out is read back from its file alike. */

#define CLOSE 1e-9

static const char text[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1.5},"
    "\"base\": {\"outline\": [[0,0],[200,0],[200,120],[0,120]]},"
    "\"openings\": ["
    "{\"on\": \"base\", \"shape\": \"round\", \"at\": [30, 20], \"diameter\": 6, \"mine\": 1},"
    "{\"on\": \"base\", \"shape\": \"slot\", \"at\": [60, 60], \"length\": 40, \"width\": 8,"
    " \"angle\": 90},"
    "{\"on\": \"base\", \"shape\": \"keyhole\", \"at\": [30, 60], \"diameter\": 10, \"length\": 12,"
    " \"width\": 5, \"angle\": 90},"
    "{\"on\": \"base\", \"shape\": \"outline\", \"points\": [[150,40],[170,40],[160,60]]}]}";

static BfPart *
part_new (void)
{
  GError *error = NULL;
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return part;
}

static const BfOpening *
opening (const BfPart *part, guint i)
{
  return g_ptr_array_index (part->openings, i);
}

/* A place is what a person measures: of an outline the middle of its box, not its first point. */
static void
test_places (void)
{
  static const BfVec2 places[] = {
    { 30.0, 20.0 }, { 60.0, 60.0 }, { 30.0, 60.0 }, { 160.0, 50.0 }
  };
  g_autoptr (BfPart) part = part_new ();

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    g_assert_cmpfloat (bf_vec2_distance (bf_opening_place_mm (opening (part, i)), places[i]), <,
                       CLOSE);
}

static void
test_all_go_where_they_are_put (void)
{
  const BfVec2 to = { 77.5, -3.25 };
  g_autoptr (BfPart) part = part_new ();

  for (guint i = 0; i < part->openings->len; i++)
    {
      BfVec2 before = bf_opening_place_mm (opening (part, i));
      g_autoptr (BfPart) moved = bf_edit_place_opening (part, i, to);
      g_assert_cmpfloat (bf_vec2_distance (bf_opening_place_mm (opening (moved, i)), to), <, CLOSE);
      g_assert_cmpfloat (bf_vec2_distance (bf_opening_place_mm (opening (part, i)), before), <,
                         CLOSE);
      for (guint k = 0; k < part->openings->len; k++)
        g_assert_true (k == i ||
                       bf_vec2_distance (bf_opening_place_mm (opening (moved, k)),
                                         bf_opening_place_mm (opening (part, k))) < CLOSE);
    }
}

/* An outline keeps its shape on the way. */
static void
test_an_outline_keeps_its_shape (void)
{
  g_autoptr (BfPart) part = part_new ();
  g_autoptr (BfPart) moved = bf_edit_place_opening (part, 3, bf_vec2 (60.0, 60.0));

  for (guint i = 0; i < 3; i++)
    {
      BfVec2 by = bf_vec2_sub (g_array_index (opening (moved, 3)->points, BfVec2, i),
                               g_array_index (opening (part, 3)->points, BfVec2, i));
      g_assert_cmpfloat (bf_vec2_distance (by, bf_vec2 (-100.0, 10.0)), <, CLOSE);
    }
}

typedef struct
{
  guint opening;
  gboolean has[BF_N_OPENING_SIZES]; /* diameter, length, width, angle */
} HasCase;

static const HasCase has_cases[] = {
  { 0, { TRUE, FALSE, FALSE, FALSE } },
  { 1, { FALSE, TRUE, TRUE, TRUE } },
  { 2, { TRUE, TRUE, TRUE, TRUE } },
  { 3, { FALSE, FALSE, FALSE, FALSE } },
};

/* Each size that a shape has is given alone: the others stay, in the file too. */
static void
test_sizes_are_given_one_at_a_time (void)
{
  g_autoptr (BfPart) part = part_new ();

  for (guint i = 0; i < G_N_ELEMENTS (has_cases); i++)
    for (guint size = 0; size < BF_N_OPENING_SIZES; size++)
      {
        guint at = has_cases[i].opening;
        g_assert_cmpint (isfinite (bf_opening_size (opening (part, at), size)), ==,
                         has_cases[i].has[size]);
        if (!has_cases[i].has[size])
          continue;
        g_autoptr (BfPart) given = bf_edit_opening_give (part, at, size, 7.25);
        g_autofree char *words = bf_part_to_text (given);
        g_autoptr (BfPart) again = bf_part_from_text (words, -1, NULL);
        g_assert_nonnull (again);
        for (guint other = 0; other < BF_N_OPENING_SIZES; other++)
          if (has_cases[i].has[other])
            g_assert_cmpfloat_with_epsilon (
                bf_opening_size (opening (again, at), other),
                other == size ? 7.25 : bf_opening_size (opening (part, at), other), CLOSE);
      }
}

static void
test_an_angle_may_be_none (void)
{
  g_autoptr (BfPart) part = part_new ();
  g_autoptr (BfPart) turned = bf_edit_opening_give (part, 1, BF_OPENING_ANGLE, 0.0);
  g_autoptr (BfPart) back = bf_edit_opening_give (part, 1, BF_OPENING_ANGLE, -30.0);

  g_assert_cmpfloat_with_epsilon (opening (turned, 1)->angle_deg, 0.0, CLOSE);
  g_assert_cmpfloat_with_epsilon (opening (back, 1)->angle_deg, -30.0, CLOSE);
}

static void
test_one_is_added_last (void)
{
  g_autoptr (BfPart) part = part_new ();
  g_autoptr (BfOpening) made = bf_opening_new ("base", BF_OPENING_ROUND);
  made->at_mm = bf_vec2 (5.0, 6.0);
  made->diameter_mm = 3.0;
  g_autoptr (BfPart) more = bf_edit_add_opening (part, made);

  g_assert_cmpuint (part->openings->len, ==, 4);
  g_assert_cmpuint (more->openings->len, ==, 5);
  g_assert_true (opening (more, 4) != made);
  g_assert_cmpfloat_with_epsilon (opening (more, 4)->diameter_mm, 3.0, CLOSE);
}

static void
test_any_is_taken_away (void)
{
  g_autoptr (BfPart) part = part_new ();

  for (guint i = 0; i < part->openings->len; i++)
    {
      g_autoptr (BfPart) fewer = bf_edit_remove_opening (part, i);
      g_assert_cmpuint (fewer->openings->len, ==, 3);
      for (guint k = 0; k < 3; k++)
        g_assert_cmpint (opening (fewer, k)->shape, ==, opening (part, k < i ? k : k + 1)->shape);
    }
  g_assert_cmpuint (part->openings->len, ==, 4);
}

/* What we do not know of an opening stays with it. */
static void
test_unknown_members_stay (void)
{
  g_autoptr (BfPart) part = part_new ();
  g_autoptr (BfPart) moved = bf_edit_place_opening (part, 0, bf_vec2 (40.0, 40.0));
  g_autoptr (BfPart) given = bf_edit_opening_give (moved, 0, BF_OPENING_DIAMETER, 9.0);
  g_autofree char *words = bf_part_to_text (given);

  g_assert_nonnull (strstr (words, "\"mine\""));
}

static BfVec2
point (const BfPart *part, guint i)
{
  return g_array_index (opening (part, 3)->points, BfVec2, i);
}

/* An outline's points are moved, added in the middle of a side, also of the last, and left out as
 * long as three are left; other openings have none. */
static void
test_points_of_an_outline (void)
{
  g_autoptr (BfPart) part = part_new ();
  g_autoptr (BfPart) moved = bf_edit_opening_move_point (part, 3, 1, bf_vec2 (175.0, 38.0));
  g_autoptr (BfPart) more = bf_edit_opening_add_point (part, 3, 2);
  g_autoptr (BfPart) fewer = bf_edit_opening_remove_point (more, 3, 0);

  g_assert_cmpuint (bf_opening_n_points (opening (part, 3)), ==, 3);
  g_assert_cmpuint (bf_opening_n_points (opening (part, 0)), ==, 0);
  g_assert_cmpfloat (bf_vec2_distance (point (moved, 1), bf_vec2 (175.0, 38.0)), <, CLOSE);
  g_assert_cmpfloat (bf_vec2_distance (point (part, 1), bf_vec2 (170.0, 40.0)), <, CLOSE);
  g_assert_cmpuint (bf_opening_n_points (opening (more, 3)), ==, 4);
  g_assert_cmpfloat (bf_vec2_distance (point (more, 3), bf_vec2 (155.0, 50.0)), <, CLOSE);
  g_assert_cmpuint (bf_opening_n_points (opening (fewer, 3)), ==, 3);
  g_assert_cmpfloat (bf_vec2_distance (point (fewer, 0), bf_vec2 (170.0, 40.0)), <, CLOSE);
  g_assert_null (bf_edit_opening_remove_point (part, 3, 0));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-opening/places", test_places);
  g_test_add_func ("/edit-opening/moved", test_all_go_where_they_are_put);
  g_test_add_func ("/edit-opening/outline-keeps-its-shape", test_an_outline_keeps_its_shape);
  g_test_add_func ("/edit-opening/one-size-at-a-time", test_sizes_are_given_one_at_a_time);
  g_test_add_func ("/edit-opening/angle-of-none", test_an_angle_may_be_none);
  g_test_add_func ("/edit-opening/added", test_one_is_added_last);
  g_test_add_func ("/edit-opening/removed", test_any_is_taken_away);
  g_test_add_func ("/edit-opening/unknown-members", test_unknown_members_stay);
  g_test_add_func ("/edit-opening/points", test_points_of_an_outline);
  return g_test_run ();
}
