/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/outline-draft.h"
#include "core/first-part.h"

/* An outline as it is drawn: what the next corner is drawn to, what is refused, what comes out. */

#define GRID_MM 5.0
#define REACH_MM 4.0

static BfOutlineDraft *
draft_of (const BfVec2 *points, guint n)
{
  BfOutlineDraft *draft = bf_outline_draft_new (GRID_MM);

  for (guint i = 0; i < n; i++)
    {
      bf_outline_draft_aim (draft, points[i], REACH_MM, TRUE);
      g_assert_cmpint (bf_outline_draft_put (draft), ==, BF_DRAFT_ADDED);
    }
  return draft;
}

static void
assert_next (BfOutlineDraft *draft, double x, double y, guint wanted)
{
  BfVec2 next;
  guint snaps;

  g_assert_true (bf_outline_draft_next (draft, &next, &snaps));
  g_assert_cmpfloat_with_epsilon (next.x, x, 1e-9);
  g_assert_cmpfloat_with_epsilon (next.y, y, 1e-9);
  g_assert_cmphex (snaps, ==, wanted);
}

typedef struct
{
  const char *what;
  BfVec2 aimed, next;
  guint snaps;
  gboolean freely;
} AimCase;

/* Drawn so far: (0, 0) to (100, 0) to (130, 40), an edge that leans 3:4. */
static const AimCase aim_cases[] = {
  { "the grid", { 171.2, 83.9 }, { 170.0, 85.0 }, 0, FALSE },
  { "nothing", { 171.2, 83.9 }, { 171.2, 83.9 }, 0, TRUE },
  { "level with a corner", { 171.2, 38.0 }, { 170.0, 40.0 }, BF_SNAP_Y, FALSE },
  { "above a corner", { 102.0, 81.0 }, { 100.0, 80.0 }, BF_SNAP_X, FALSE },
  { "above one, level with one", { -3.0, 42.0 }, { 0.0, 40.0 }, BF_SNAP_X | BF_SNAP_Y, FALSE },
  { "straight on", { 160.5, 80.5 }, { 160.0, 80.0 }, BF_SNAP_SQUARE, FALSE },
  { "square to the last edge", { 90.4, 70.2 }, { 90.0, 70.0 }, BF_SNAP_SQUARE, FALSE },
  { "the first corner", { 4.0, 3.0 }, { 0.0, 0.0 }, BF_SNAP_FIRST, FALSE },
  { "the first corner, freely", { 4.0, 3.0 }, { 0.0, 0.0 }, BF_SNAP_FIRST, TRUE },
};

static void
test_is_drawn_to (void)
{
  static const BfVec2 points[] = { { 0.0, 0.0 }, { 100.0, 0.0 }, { 130.0, 40.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (aim_cases); i++)
    {
      const AimCase *c = &aim_cases[i];
      g_autoptr (BfOutlineDraft) draft = draft_of (points, G_N_ELEMENTS (points));
      g_test_message ("%s", c->what);
      bf_outline_draft_aim (draft, c->aimed, REACH_MM, c->freely);
      assert_next (draft, c->next.x, c->next.y, c->snaps);
    }
}

static void
test_typed_length (void)
{
  static const BfVec2 points[] = { { 10.0, 10.0 }, { 110.0, 10.0 } };
  g_autoptr (BfOutlineDraft) draft = draft_of (points, 2);

  g_assert_false (bf_outline_draft_set_length (draft, 50.0));
  bf_outline_draft_aim (draft, bf_vec2 (140.0, 50.0), REACH_MM, TRUE);
  g_assert_true (bf_outline_draft_set_length (draft, 12.5));
  assert_next (draft, 117.5, 20.0, 0);
}

static void
test_directions_by_keys (void)
{
  static const BfVec2 points[] = { { 10.0, 10.0 } };
  g_autoptr (BfOutlineDraft) draft = draft_of (points, 1);

  bf_outline_draft_aim_along (draft, bf_vec2 (0.0, 1.0));
  assert_next (draft, 10.0, 35.0, BF_SNAP_SQUARE);
  bf_outline_draft_aim_along (draft, bf_vec2 (0.0, 1.0));
  assert_next (draft, 10.0, 60.0, BF_SNAP_SQUARE);
  bf_outline_draft_aim_along (draft, bf_vec2 (-1.0, 0.0));
  assert_next (draft, -15.0, 10.0, BF_SNAP_SQUARE);
}

typedef struct
{
  const char *what;
  BfVec2 aimed;
  BfDraftAnswer answer;
} PutCase;

static const PutCase put_cases[] = {
  { "clear of all", { 200.0, 50.0 }, BF_DRAFT_ADDED },
  { "across the first edge", { 50.0, -20.0 }, BF_DRAFT_CROSSES },
  { "onto the first edge", { 50.0, 0.0 }, BF_DRAFT_CROSSES },
  { "back along the last edge", { 100.0, 30.0 }, BF_DRAFT_CROSSES },
  { "through a corner", { -100.0, -80.0 }, BF_DRAFT_CROSSES },
  { "no edge", { 100.0, 80.0 }, BF_DRAFT_NOTHING },
  { "beyond all measure", { 2e5, 80.0 }, BF_DRAFT_NOTHING },
};

static void
test_what_is_refused (void)
{
  static const BfVec2 points[] = { { 0.0, 0.0 }, { 100.0, 0.0 }, { 100.0, 80.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (put_cases); i++)
    {
      const PutCase *c = &put_cases[i];
      g_autoptr (BfOutlineDraft) draft = draft_of (points, G_N_ELEMENTS (points));
      g_test_message ("%s", c->what);
      bf_outline_draft_aim (draft, c->aimed, 1e-6, TRUE);
      g_assert_cmpint (bf_outline_draft_put (draft), ==, c->answer);
      g_assert_cmpuint (bf_outline_draft_n_points (draft), ==, c->answer == BF_DRAFT_ADDED ? 4 : 3);
    }
}

/* The edge that closes it may cross, too. */
static void
test_closing_may_cross (void)
{
  static const BfVec2 points[] = { { 0.0, 0.0 },   { 100.0, 0.0 }, { 100.0, 80.0 },
                                   { 50.0, 80.0 }, { 50.0, 20.0 }, { 120.0, 10.0 } };
  g_autoptr (BfOutlineDraft) two = draft_of (points, 2);
  g_autoptr (BfOutlineDraft) five = draft_of (points, 5);

  g_assert_cmpint (bf_outline_draft_close (two), ==, BF_DRAFT_NOTHING);
  g_assert_cmpint (bf_outline_draft_close (five), ==, BF_DRAFT_CLOSED);
  bf_outline_draft_aim (five, bf_vec2 (90.0, 20.0), 1e-6, TRUE);
  g_assert_cmpint (bf_outline_draft_put (five), ==, BF_DRAFT_ADDED);
  bf_outline_draft_aim (five, bf_vec2 (90.0, 70.0), 1e-6, TRUE);
  g_assert_cmpint (bf_outline_draft_put (five), ==, BF_DRAFT_ADDED);
  g_assert_cmpint (bf_outline_draft_close (five), ==, BF_DRAFT_CROSSES);
  g_assert_true (bf_outline_draft_take_back (five));
  g_assert_true (bf_outline_draft_take_back (five));
  g_assert_cmpint (bf_outline_draft_close (five), ==, BF_DRAFT_CLOSED);
}

static void
test_part_counts_from_its_first_corner (void)
{
  static const BfVec2 clockwise[] = { { 30.0, 20.0 }, { 30.0, 60.0 }, { 90.0, 20.0 } };
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_IN);
  g_autoptr (BfOutlineDraft) draft = draft_of (clockwise, 3);
  g_autoptr (BfPart) part = bf_outline_draft_make (draft, setup, "Own");

  g_assert_cmpstr (part->name, ==, "Own");
  g_assert_cmpint (part->units, ==, BF_UNITS_IN);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 0).x, 0.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 1).x, 60.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_part_point (part, 2).y, 40.0, 1e-12);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/outline-draft/is-drawn-to", test_is_drawn_to);
  g_test_add_func ("/outline-draft/typed-length", test_typed_length);
  g_test_add_func ("/outline-draft/directions-by-keys", test_directions_by_keys);
  g_test_add_func ("/outline-draft/what-is-refused", test_what_is_refused);
  g_test_add_func ("/outline-draft/closing-may-cross", test_closing_may_cross);
  g_test_add_func ("/outline-draft/part-from-first-corner", test_part_counts_from_its_first_corner);
  return g_test_run ();
}
