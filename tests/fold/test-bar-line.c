/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Where the front edge of a bar sits, by hand. */

#include "fold/bar-line.h"
#include "fold/bend-order.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"

/* A base of 200 × 120 with one wall on edge 0, whose drawn line is y = 0, t 1.5. Outside setback
 * (R + t) tan (θ/2); the base's tangent lies at y = S, the wall's BA further down. Clamped on the
 * base the bar's front stands R below that tangent; clamped on the wall, R above the wall's. BA
 * with K 0.42: π/2 (R + 0.63).
 *   R 1.5, 90°: S 3, base: y = 3 − 1.5; BA 3.3458, bend line 3 − 1.6729 = 1.3271
 *   R 0, 90°: S 1.5, base: y = 1.5
 *   R 3, 60°: S 4.5 · 0.5774 = 2.5981, base: −0.4019; BA π/3 · 3.63 = 3.8013, bend line 0.6974
 *   R 1.5, 90°, wall 150 long (area 200 · 147 over 200 · 117): 3 − 3.3458 + 1.5 = 1.1542 */
static const struct
{
  double radius_mm, angle_deg, wall_mm;
  BfBendWay way;
  gboolean on_wall;
  double y_mm, from_bend_mm;
} by_hand[] = {
  { 1.5, 90.0, 40.0, BF_BEND_WAY_BAR, FALSE, 1.5, 0.1729 },
  { 1.5, 90.0, 40.0, BF_BEND_WAY_BRAKE, FALSE, 1.5, 0.1729 },
  { 0.0, 90.0, 40.0, BF_BEND_WAY_BAR, FALSE, 1.5, 0.4948 },
  { 3.0, 60.0, 40.0, BF_BEND_WAY_BAR, FALSE, -0.4019, 1.0993 },
  { 1.5, 90.0, 150.0, BF_BEND_WAY_BAR, TRUE, 1.1542, 0.1729 },
};

static BfPart *
one_wall (double wall_mm, double angle_deg)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, wall_mm, angle_deg);
  return part;
}

static void
test_by_hand (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (by_hand); i++)
    for (BfTurn turn = BF_TURN_UP; turn <= BF_TURN_DOWN; turn++)
      {
        g_autoptr (BfPart) part = one_wall (by_hand[i].wall_mm, by_hand[i].angle_deg);
        g_autoptr (BfFold) fold = NULL;
        BfBarLine bar;

        part->bend.way = by_hand[i].way;
        part->bend.inside_radius_mm = by_hand[i].radius_mm;
        ((BfFlange *)part->flanges->pdata[0])->turn = turn;
        fold = bf_fold (part);
        g_assert_true (bf_bend_bar_line (fold, find_bend (fold, "front"), &bar));
        assert_at (bar.line[0], bf_vec2 (0.0, by_hand[i].y_mm), 1e-4);
        assert_at (bar.line[1], bf_vec2 (200.0, by_hand[i].y_mm), 1e-4);
        assert_at (bar.clamped, bf_vec2 (0.0, by_hand[i].on_wall ? -1.0 : 1.0), 1e-9);
        g_assert_cmpuint (bar.face, ==, by_hand[i].on_wall ? 1 : 0);
        g_assert_cmpint (bar.on_other_side, ==, turn == BF_TURN_DOWN);
        g_assert_cmpfloat_with_epsilon (bar.from_bend_line_mm, by_hand[i].from_bend_mm, 1e-4);
      }
}

/* What hangs on the wall counts to it: 200 · 57 of wall and 200 · 77 of lip outweigh the base. */
static void
test_all_that_hangs_on_it (void)
{
  g_autoptr (BfPart) part = one_wall (60.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  BfBarLine bar;

  add_lip (part, "lip", "front", 80.0, 90.0);
  fold = bf_fold (part);
  g_assert_true (bf_bend_bar_line (fold, find_bend (fold, "front"), &bar));
  g_assert_cmpuint (bar.face, ==, find_bend (fold, "front")->face);
  g_assert_true (bf_bend_bar_line (fold, find_bend (fold, "lip"), &bar));
  g_assert_cmpstr (bf_fold_face (fold, bar.face)->id, ==, "front");
}

/* A tray's corners are drilled: the line is drawn on metal alone, and ends at the holes' edges. */
static void
test_reliefs (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  BfBarLine bar;

  g_assert_true (bf_bend_bar_line (fold, find_bend (fold, "f0"), &bar));
  for (guint i = 0; i < 2; i++)
    {
      const BfRelief *hole = find_relief (fold, i == 0 ? "base:0" : "base:1", 0);

      g_assert_cmpfloat_with_epsilon (bf_vec2_distance (bar.line[i], hole->at),
                                      hole->diameter_mm / 2.0, 1e-3);
    }
}

/* Slots and scores need no bar. */
static void
test_no_bar (void)
{
  g_autoptr (BfPart) part = one_wall (40.0, 90.0);
  BfBarLine bar;

  for (BfBendWay way = BF_BEND_WAY_SLOTS; way <= BF_BEND_WAY_SCORE; way++)
    {
      g_autoptr (BfFold) fold = NULL;

      part->bend.way = way;
      fold = bf_fold (part);
      g_assert_false (bf_bend_bar_line (fold, find_bend (fold, "front"), &bar));
    }
}

/* Folded, the bar stands where the wall's inside face is at a square bend: the nose touches it. */
static void
test_folded (void)
{
  for (double radius = 0.0; radius < 5.0; radius += 0.7)
    {
      g_autoptr (BfPart) part = one_wall (40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      const BfSolid *wall;
      BfBarLine bar;

      part->bend.inside_radius_mm = radius;
      fold = bf_fold (part);
      wall = bf_formed_solid (&fold->formed, 2);
      g_assert_true (bf_bend_bar_line (fold, find_bend (fold, "front"), &bar));
      g_assert_cmpfloat_with_epsilon (wall->frame.origin.y, bar.line[0].y, 1e-9);
    }
}

static double
area_mm2 (const BfFold *fold, guint flange)
{
  double sum = 0.0;

  for (guint i = 0; i < fold->faces->len; i++)
    {
      int at = (int)i;

      while (at > 0 && (guint)at != flange)
        at = bf_fold_face (fold, (guint)at)->parent;
      if (at > 0 || flange == 0)
        sum += bf_ring_area (bf_fold_face (fold, i)->outline);
    }
  return sum;
}

/* The bar's line, on paper and on metal, is on the side that the work's steps say to clamp: on all
 * parts, and on some of them that is the side with less metal. */
static void
test_as_the_order_has_it (void)
{
  guint n_bars = 0, n_lighter = 0;

  for (guint seed = 0; seed < 300; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      for (guint i = 0; i < fold->order->len; i++)
        {
          const BfBendStep *step = bf_fold_bend_step (fold, i);
          const BfBendResult *bend = bf_fold_bend (fold, step->bend);
          gboolean on_flange = step->reach.held == BF_HELD_FLANGE;
          BfBarLine bar;

          if (!bf_bend_bar_line (fold, bend, &bar))
            continue;
          n_bars++;
          g_test_message ("seed %u bend %s", seed, bend->flange);
          g_assert_true ((bar.face == bend->face) == on_flange);
          n_lighter +=
              (area_mm2 (fold, bend->face) > area_mm2 (fold, 0) / 2.0) != on_flange ? 1 : 0;
        }
    }
  g_test_message ("%u bars, %u on the lighter side", n_bars, n_lighter);
  g_assert_cmpuint (n_bars, >, 300);
  g_assert_cmpuint (n_lighter, >, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bar-line/by-hand", test_by_hand);
  g_test_add_func ("/bar-line/all-that-hangs-on-it", test_all_that_hangs_on_it);
  g_test_add_func ("/bar-line/reliefs", test_reliefs);
  g_test_add_func ("/bar-line/no-bar", test_no_bar);
  g_test_add_func ("/bar-line/folded", test_folded);
  g_test_add_func ("/bar-line/as-the-order-has-it", test_as_the_order_has_it);
  return g_test_run ();
}
