/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-any.h"
#include "make-part.h"
#include "make/cuts.h"

static GArray *
cuts_of (BfPart *part, gboolean keep_datum)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  return bf_cuts (fold, keep_datum);
}

/* A bare rectangle: two sides are there already, the shorter of the others comes first. */
static void
test_rectangle (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (GArray) hand = cuts_of (part, FALSE), machine = cuts_of (part, TRUE);

  g_assert_cmpuint (machine->len, ==, 4);
  g_assert_cmpuint (hand->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (bf_cut (hand, 0)->length_mm, 120.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (bf_cut (hand, 0)->waste.x, 1.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_cut (hand, 1)->length_mm, 200.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (bf_cut (hand, 1)->waste.y, 1.0, 1e-9);
}

/* A point on the blank's side of a cut is metal, and one on the waste's side is not. */
static void
test_waste (void)
{
  for (guint seed = 0; seed < 40; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) cuts = bf_cuts (fold, TRUE);

      for (guint i = 0; i < cuts->len && fold->blank.n_outer == 1; i++)
        {
          const BfCut *cut = bf_cut (cuts, i);
          BfVec2 middle = bf_vec2_scale (bf_vec2_add (cut->from, cut->to), 0.5);
          const BfRing *outer = bf_blank_ring (&fold->blank, 0);

          if (cut->inside)
            continue;
          g_assert_true (bf_ring_contains (outer, bf_vec2_along (middle, cut->waste, -1e-3)));
          g_assert_false (bf_ring_contains (outer, bf_vec2_along (middle, cut->waste, 1e-3)));
        }
    }
}

/* All straight edges of the outline are cut, once: their lengths and the arcs' make it up. */
static void
test_all_of_it (void)
{
  for (guint seed = 0; seed < 40; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) cuts = bf_cuts (fold, TRUE);
      double straight = 0.0, cut = 0.0, crumbs = 0.0;

      for (guint i = 0; i < fold->blank.rings->len; i++)
        for (guint k = 0; k < bf_ring_size (bf_blank_ring (&fold->blank, i)); k++)
          {
            const BfRing *ring = bf_blank_ring (&fold->blank, i);
            double length =
                bf_vec2_distance (bf_ring_vertex (ring, k)->p, bf_ring_vertex (ring, k + 1)->p);
            BfArc arc;

            if (bf_ring_arc (ring, k, &arc))
              continue;
            straight += length;
            crumbs += length < 3.0 ? length : 0.0;
          }
      for (guint i = 0; i < cuts->len; i++)
        cut += bf_cut (cuts, i)->length_mm;
      g_assert_cmpfloat (cut, <=, straight + 1e-6);
      g_assert_cmpfloat (cut, >=, straight - crumbs - 1e-6);
    }
}

/* How many cuts run along that edge of the blank. */
static guint
count_along (const GArray *cuts, BfVec2 a, BfVec2 b)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (a, b), 0.5);
  guint n = 0;

  for (guint i = 0; i < cuts->len; i++)
    {
      const BfCut *cut = bf_cut (cuts, i);
      double rest = bf_vec2_distance (cut->from, middle) + bf_vec2_distance (middle, cut->to) -
                    cut->length_mm;

      n += rest < 1e-6 ? 1 : 0;
    }
  return n;
}

/* Each straight edge of the blank, its slots left out, lies in exactly one cut or is too short for
 * one; and what is cut, what is too short, what is arcs and what is slots makes up the length that
 * the report calls cut. */
static void
test_once_and_to_the_full (void)
{
  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) cuts = NULL;
      double sum = 0.0;

      part->bend.way = seed % 2 == 0 ? BF_BEND_WAY_SLOTS : BF_BEND_WAY_BAR;
      part->cutting.by = BF_CUTTING_TABLE; /* no edge is too short for it */
      fold = bf_fold (part);
      cuts = bf_cuts (fold, TRUE);
      g_test_message ("seed %u", seed);
      for (guint i = 0; i < cuts->len; i++)
        sum += bf_cut (cuts, i)->length_mm;
      for (guint i = 0; i < fold->blank.rings->len; i++)
        {
          const BfRing *ring = bf_blank_ring (&fold->blank, i);
          gboolean slot = bf_fold_ring_is_slot (fold, i);

          for (guint k = 0; k < bf_ring_size (ring); k++)
            {
              BfVec2 a = bf_ring_vertex (ring, k)->p, b = bf_ring_vertex (ring, k + 1)->p;
              BfArc arc;
              gboolean is_arc = bf_ring_arc (ring, k, &arc);
              guint n = is_arc || slot ? 0 : count_along (cuts, a, b);

              g_assert_cmpuint (n, <=, 1);
              g_assert_true (n == 1 || is_arc || slot || bf_vec2_distance (a, b) < 3.0);
              if (n == 0)
                sum += is_arc ? arc.radius * fabs (arc.sweep) : bf_vec2_distance (a, b);
            }
        }
      g_assert_cmpfloat_with_epsilon (sum, fold->blank.cut_length_mm, 1e-5);
    }
}

/* Cut by hand out of metal that has a square corner: what lies on its two edges is there already,
 * and nothing else is left out. */
static void
test_datum_left_out (void)
{
  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) all = bf_cuts (fold, TRUE), hand = bf_cuts (fold, FALSE);
      BfVec2 corner = fold->blank.box.min;
      guint on_edge = 0;

      for (guint i = 0; i < all->len; i++)
        {
          const BfCut *cut = bf_cut (all, i);

          on_edge += MAX (cut->from.x, cut->to.x) < corner.x + 1e-6 ||
                             MAX (cut->from.y, cut->to.y) < corner.y + 1e-6
                         ? 1
                         : 0;
        }
      g_assert_cmpuint (hand->len + on_edge, ==, all->len);
    }
}

/* Openings first, then from short to long; a tray's notches end in the drilled corner holes. */
static void
test_order (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  BfOpening *window = bf_opening_new ("base", BF_OPENING_RECTANGLE);
  g_autoptr (GArray) cuts = NULL;
  guint ends = 0;

  window->at_mm = bf_vec2 (100.0, 60.0);
  window->length_mm = 100.0;
  window->width_mm = 40.0;
  window->angle_deg = 0.0;
  g_ptr_array_add (part->openings, window);
  cuts = cuts_of (part, FALSE);
  g_assert_cmpuint (cuts->len, ==, 4 + 8 + 2);
  for (guint i = 0; i < cuts->len; i++)
    {
      const BfCut *cut = bf_cut (cuts, i);

      g_assert_true (cut->inside == (i < 4));
      if (i > 0 && bf_cut (cuts, i - 1)->inside == cut->inside)
        g_assert_cmpfloat (cut->length_mm, >=, bf_cut (cuts, i - 1)->length_mm - 0.02);
      ends += (cut->from_hole ? 1u : 0u) + (cut->to_hole ? 1u : 0u);
    }
  g_assert_cmpuint (ends, ==, 8);
}

/* D = 125, t = 1.5: d = 6.5, √(6.5 · 118.5) = 27.753, √(5 · 120) = 24.495. Reckoned by hand. */
static void
test_lag (void)
{
  g_assert_cmpfloat_with_epsilon (bf_cut_lag_mm (125.0, 1.5), 3.2583, 1e-3);
  g_assert_cmpfloat_with_epsilon (bf_cut_lag_mm (115.0, 3.0), 5.8054, 1e-3);
  g_assert_cmpfloat (bf_cut_lag_mm (230.0, 1.5), >, bf_cut_lag_mm (125.0, 1.5));
  g_assert_true (isnan (bf_cut_lag_mm (10.0, 1.5)));
}

static void
test_guide (void)
{
  BfCut cut = { .from = { 0.0, 10.0 }, .to = { 50.0, 10.0 }, .waste = { 0.0, -1.0 } };
  BfVec2 ends[2];

  bf_cut_guide (&cut, 0.0, ends);
  g_assert_cmpfloat_with_epsilon (ends[0].y, 10.0, 1e-12);
  bf_cut_guide (&cut, 3.0, ends);
  g_assert_cmpfloat_with_epsilon (ends[0].y, 13.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (ends[1].x, 50.0, 1e-12);
}

/* 2 √((t + 1)(D − t − 1)) for D = 125, t = 1.5: 2 √(2.5 · 122.5) = 35.0. Reckoned by hand. */
static const struct
{
  const char *what;
  BfOpeningShape shape;
  double diameter_mm, length_mm, width_mm;
  BfCuttingWay by;
  guint cuts, filed;
} inside[] = {
  { "all sides long", BF_OPENING_RECTANGLE, 0, 100, 35.1, BF_CUTTING_DISC, 4, 0 },
  { "two sides too short", BF_OPENING_RECTANGLE, 0, 100, 34.9, BF_CUTTING_DISC, 2, 1 },
  { "all sides too short", BF_OPENING_RECTANGLE, 0, 30, 20, BF_CUTTING_DISC, 0, 1 },
  { "snips have room", BF_OPENING_RECTANGLE, 0, 30, 25, BF_CUTTING_SNIPS, 4, 0 },
  { "snips have none", BF_OPENING_RECTANGLE, 0, 24.9, 24.9, BF_CUTTING_SNIPS, 0, 1 },
  { "a machine cuts all", BF_OPENING_RECTANGLE, 0, 30, 20, BF_CUTTING_TABLE, 4, 0 },
  { "short slot, drilled ends", BF_OPENING_SLOT, 0, 18, 6, BF_CUTTING_DISC, 0, 1 },
  { "long slot, drilled ends", BF_OPENING_SLOT, 0, 42, 6, BF_CUTTING_DISC, 2, 0 },
  { "long slot, wider than a drill", BF_OPENING_SLOT, 0, 60, 20, BF_CUTTING_DISC, 2, 1 },
  { "hole for a drill", BF_OPENING_ROUND, 13, 0, 0, BF_CUTTING_DISC, 0, 0 },
  { "hole for no drill", BF_OPENING_ROUND, 14, 0, 0, BF_CUTTING_DISC, 0, 1 },
};

static void
test_inside (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (inside); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfOpening *opening = bf_opening_new ("base", inside[i].shape);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) cuts = NULL;
      guint n = 0;

      opening->at_mm = bf_vec2 (100.0, 60.0);
      opening->diameter_mm = inside[i].diameter_mm;
      opening->length_mm = inside[i].length_mm;
      opening->width_mm = inside[i].width_mm;
      g_ptr_array_add (part->openings, opening);
      part->cutting.by = inside[i].by;
      fold = bf_fold (part);
      cuts = bf_cuts (fold, TRUE);
      for (guint k = 0; k < cuts->len; k++)
        n += bf_cut (cuts, k)->inside ? 1 : 0;
      g_test_message ("%s", inside[i].what);
      g_assert_cmpuint (n, ==, inside[i].cuts);
      if (inside[i].by != BF_CUTTING_TABLE)
        g_assert_cmpuint (bf_count_filed_openings (fold), ==, inside[i].filed);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/cuts/rectangle", test_rectangle);
  g_test_add_func ("/cuts/inside", test_inside);
  g_test_add_func ("/cuts/waste", test_waste);
  g_test_add_func ("/cuts/all-of-it", test_all_of_it);
  g_test_add_func ("/cuts/once-and-to-the-full", test_once_and_to_the_full);
  g_test_add_func ("/cuts/datum-left-out", test_datum_left_out);
  g_test_add_func ("/cuts/order", test_order);
  g_test_add_func ("/cuts/lag", test_lag);
  g_test_add_func ("/cuts/guide", test_guide);
  return g_test_run ();
}
