/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/corner-here.h"
#include "core/edit.h"
#include "look-up.h"
#include "make-part.h"

#define SEEDS 8
#define FEW 3
#define EXACT_MM 1e-9

/* ---- one part, by hand --------------------------------------------------------------------- */

/* A rectangle with two walls that meet at point 1, a lip on the first and one on its end side. */
static BfPart *
two_walls (void)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, 40.0, 90.0);
  add_flange (part, "right", 1, 40.0, 90.0);
  add_lip (part, "lip", "front", 12.0, 90.0);
  add_ear (part, "ear", "front", BF_EDGE_START, 15.0);
  return part;
}

static void
test_by_hand (void)
{
  static const struct
  {
    const char *on;
    guint at;
    const char *before, *after;
    gboolean joins, folds, is_free;
  } corners[] = {
    { "base", 0, NULL, NULL, FALSE, FALSE, FALSE }, /* a wall begins there, bare beside */
    { "base", 1, "front", "right", TRUE, TRUE, FALSE },
    { "base", 2, NULL, NULL, FALSE, FALSE, FALSE },
    { "base", 3, NULL, NULL, FALSE, FALSE, TRUE },
    { "front", 0, "ear", "lip", TRUE, FALSE, FALSE },
    { "front", 1, NULL, NULL, FALSE, FALSE, FALSE },
    { "right", 0, NULL, NULL, FALSE, FALSE, TRUE },
    { "right", 1, NULL, NULL, FALSE, FALSE, TRUE },
    { "lip", 1, NULL, NULL, FALSE, FALSE, TRUE },
    { "ear", 0, NULL, NULL, FALSE, FALSE, TRUE },
    { "nothing", 0, NULL, NULL, FALSE, FALSE, FALSE },
    { "right", 7, NULL, NULL, FALSE, FALSE, FALSE },
  };
  g_autoptr (BfPart) part = two_walls ();
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      BfCornerHere here;
      gboolean any = bf_corner_here (fold, corners[i].on, corners[i].at, &here);
      g_test_message ("%s:%u", corners[i].on, corners[i].at);
      g_assert_cmpint (any, ==, corners[i].before != NULL || corners[i].is_free);
      g_assert_cmpstr (here.before, ==, corners[i].before);
      g_assert_cmpstr (here.after, ==, corners[i].after);
      g_assert_cmpint (here.joins != 0, ==, corners[i].joins);
      g_assert_cmpint ((here.joins & (1U << BF_JOIN_FOLDED)) != 0, ==, corners[i].folds);
      g_assert_cmpint (here.is_free, ==, corners[i].is_free);
      g_assert_cmpint (isnan (here.usual_gap_mm), ==, corners[i].before == NULL);
    }
}

/* At a square corner of R = t = 1.5, K 0.42 the bend lines lie BA/2 − 3 from the drawn edges. The
 * furthest point that a round relief must reach is P, 3 in from both. Slack 0.75 either way, then
 * the next drill up in half millimetres. A square reaches as far along both, and is a kerf wider.
 */
static void
test_sizes (void)
{
  double allowance = G_PI / 2.0 * (1.5 + 0.42 * 1.5);
  double need = 2.0 * G_SQRT2 * allowance / 2.0;
  g_autoptr (BfPart) part = two_walls ();
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfPart) square = bf_edit_corner_relief (part, "base", 1, BF_RELIEF_SQUARE, NAN);
  g_autoptr (BfFold) square_fold = bf_fold (square);
  g_autoptr (BfPart) none = bf_edit_corner_relief (part, "base", 1, BF_RELIEF_NONE, NAN);
  g_autoptr (BfFold) none_fold = bf_fold (none);
  BfCornerHere here;

  g_assert_true (bf_corner_here (fold, "base", 1, &here));
  g_assert_cmpint (here.shape, ==, BF_RELIEF_ROUND);
  g_assert_cmpfloat_with_epsilon (here.need_mm, need, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (here.wander_mm, 1.5, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (here.usual_size_mm, ceil (2.0 * (need + 1.5)) / 2.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (here.usual_gap_mm, 0.5, EXACT_MM);
  assert_at (here.place, bf_vec2 (200.0, 0.0), EXACT_MM);
  g_assert_true (bf_corner_here (square_fold, "base", 1, &here));
  g_assert_cmpint (here.shape, ==, BF_RELIEF_SQUARE);
  g_assert_cmpfloat_with_epsilon (here.need_mm, allowance, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (here.usual_size_mm, allowance + 1.3, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (here.wander_mm, 0.0, EXACT_MM);
  g_assert_true (bf_corner_here (none_fold, "base", 1, &here));
  g_assert_true (here.has_relief);
  g_assert_cmpint (here.shape, ==, BF_RELIEF_NONE);
  g_assert_true (isnan (here.need_mm) && isnan (here.usual_size_mm));
}

/* A folded corner is not cut: neither gap nor relief mean anything. A tab lies against its wall. */
static void
test_joins (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) folded = bf_edit_corner_join (part, "base", 1, BF_JOIN_FOLDED);
  g_autoptr (BfFold) fold = bf_fold (folded);
  g_autoptr (BfPart) tabbed = bf_edit_corner_join (part, "base", 1, BF_JOIN_TAB);
  g_autoptr (BfFold) tab_fold = bf_fold (tabbed);
  BfCornerHere here;

  g_assert_true (bf_corner_here (fold, "base", 1, &here));
  g_assert_false (here.has_relief);
  g_assert_true (isnan (here.usual_gap_mm));
  g_assert_cmpuint (here.joins & (1U << BF_JOIN_FOLDED), !=, 0);
  g_assert_true (bf_corner_here (tab_fold, "base", 1, &here));
  g_assert_cmpfloat_with_epsilon (here.usual_gap_mm, 0.0, EXACT_MM);
  for (guint i = 0; i < tab_fold->part->flanges->len; i++)
    if (bf_part_flange (tab_fold->part, i)->is_tab)
      g_assert_false (bf_corner_here (tab_fold, bf_part_flange (tab_fold->part, i)->id, 0, &here));
}

/* ---- what is offered is heeded, and nothing else ------------------------------------------- */

/* TRUE where the part unfolds with nothing to say about that corner being in vain. */
static gboolean
is_heeded (BfPart *part, const char *on, guint at)
{
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autofree char *where = g_strdup_printf ("%s:%u", on, at);

  return find_check (fold, "corner-not-heeded", where) == NULL;
}

static void
assert_corner (const BfPart *part, const BfFold *fold, const char *on, guint at)
{
  BfCornerHere here;
  gboolean any = bf_corner_here (fold, on, at, &here);
  g_autoptr (BfPart) gap = bf_edit_corner_gap (part, on, at, 0.7);
  g_autoptr (BfPart) round = bf_edit_corner_finish (part, on, at, BF_FINISH_ROUND, 1.0);

  g_test_message ("%s:%u", on, at);
  g_assert_cmpint (any, ==, here.before != NULL || here.is_free);
  g_assert_cmpint (is_heeded (gap, on, at), ==, here.before != NULL);
  g_assert_cmpint (is_heeded (round, on, at), ==, here.is_free);
  if (isnan (here.usual_size_mm))
    return;
  g_autoptr (BfPart) sized =
      bf_edit_corner_relief (part, on, at, BF_RELIEF_ROUND, here.usual_size_mm);
  g_autoptr (BfFold) as_usual = bf_fold (sized);
  g_autofree char *where = g_strdup_printf ("%s:%u", on, at);
  g_assert_cmpfloat_with_epsilon (as_usual->blank.area_mm2, fold->blank.area_mm2, 1e-6);
  g_assert_null (find_check (as_usual, "relief-too-small", where));
  g_assert_cmpfloat_with_epsilon (find_relief (fold, where, 0)->need_mm, here.need_mm, EXACT_MM);
}

/* Of each part the base's corners, those of flanges where flanges meet, and a few that are free. */
static void
test_heeded (void)
{
  guint n_met = 0, n_free = 0;

  for (guint seed = 0; seed < SEEDS; seed++)
    {
      g_autoptr (BfPart) part = make_random_deep (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      guint n_tried = 0;
      for (guint i = 0; i < bf_part_n_points (fold->asked); i++)
        assert_corner (fold->asked, fold, "base", i);
      for (guint i = 0; i < 2 * bf_part_n_flanges (fold->asked); i++)
        {
          const char *id = bf_part_flange (fold->asked, i / 2)->id;
          BfCornerHere here;
          if (find_face (fold, id)->bend < 0 || find_face (fold, id)->outline == NULL)
            continue;
          bf_corner_here (fold, id, i % 2, &here);
          n_met += here.before != NULL ? 1 : 0;
          n_free += here.is_free ? 1 : 0;
          if (here.before != NULL || n_tried++ < FEW)
            assert_corner (fold->asked, fold, id, i % 2);
        }
    }
  g_test_message ("%u met, %u free", n_met, n_free);
  g_assert_cmpuint (n_met, >, 2);
  g_assert_cmpuint (n_free, >, 5);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/corner-here/by-hand", test_by_hand);
  g_test_add_func ("/corner-here/sizes", test_sizes);
  g_test_add_func ("/corner-here/joins", test_joins);
  g_test_add_func ("/corner-here/heeded", test_heeded);
  return g_test_run ();
}
