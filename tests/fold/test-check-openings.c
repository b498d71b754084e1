/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Openings and what is left between cuts, each just in and just out of its threshold; and what is
 * said once of a whole part. */

#include "look-up.h"
#include "make-part.h"

#define FOUND_MM 2e-4

static BfOpening *
add_hole (BfPart *part, const char *on, double x, double y, double diameter_mm)
{
  BfOpening *hole = bf_opening_new (on, BF_OPENING_ROUND);

  hole->at_mm = bf_vec2 (x, y);
  hole->diameter_mm = diameter_mm;
  g_ptr_array_add (part->openings, hole);
  return hole;
}

static BfPart *
with_wall (void)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, 40.0, 90.0);
  return part;
}

/* ---- one hole ------------------------------------------------------------------------------- */

typedef struct
{
  const char *path;
  const char *on;
  double x, y; /* a hole of 10 mm */
  double thickness_mm;
  const char *code; /* NULL: nothing is said */
  double found, needed;
} Hole;

/* A wall 1.5 thick bent to R 1.5: its tangents lie 3 from the drawn line on either side. */
static const Hole holes[] = {
  { "/edge/out", "base", 8.0, 60.0, 1.5, NULL, NAN, NAN },
  { "/edge/in", "base", 7.99, 60.0, 1.5, "opening-near-edge", 2.99, 3.0 },
  { "/edge/touching", "base", 5.0, 60.0, 1.5, "opening-near-edge", 0.0, 3.0 },
  { "/edge/over", "base", 4.9, 60.0, 1.5, "opening-off-face", 0.1, 0.0 },
  { "/edge/outside", "base", -50.0, 60.0, 1.5, "opening-off-face", NAN, NAN },
  { "/strip/out", "base", 8.0, 60.0, 1.0, NULL, NAN, NAN },
  { "/strip/in", "base", 7.99, 60.0, 1.0, "strip-too-thin", 2.99, 3.0 },
  { "/strip/just", "base", 7.0, 60.0, 1.0, "strip-too-thin", 2.0, 3.0 },
  { "/strip/edge", "base", 6.99, 60.0, 1.0, "opening-near-edge", 1.99, 2.0 },
  { "/bend/base/out", "base", 100.0, 11.0, 1.5, NULL, NAN, NAN },
  { "/bend/base/in", "base", 100.0, 10.99, 1.5, "opening-near-bend", 2.99, 3.0 },
  { "/bend/base/across", "base", 100.0, 4.0, 1.5, "opening-near-bend", 0.0, 3.0 },
  { "/bend/flange/out", "front", 100.0, 11.0, 1.5, NULL, NAN, NAN },
  { "/bend/flange/in", "front", 100.0, 10.99, 1.5, "opening-near-bend", 2.99, 3.0 },
  { "/tip/out", "front", 100.0, 32.0, 1.5, NULL, NAN, NAN },
  { "/tip/in", "front", 100.0, 32.01, 1.5, "opening-near-edge", 2.99, 3.0 },
  { "/other-face", "front", 100.0, -60.0, 1.5, "opening-off-face", NAN, NAN },
};

static void
assert_number (double found, double wanted)
{
  if (isnan (wanted))
    g_assert_true (isnan (found));
  else
    g_assert_cmpfloat_with_epsilon (found, wanted, FOUND_MM);
}

static void
test_hole (gconstpointer data)
{
  const Hole *h = data;
  g_autoptr (BfPart) part = with_wall ();
  g_autoptr (BfFold) fold = NULL;
  const BfCheck *check;

  part->metal.thickness_mm = h->thickness_mm;
  add_hole (part, h->on, h->x, h->y, 10.0);
  fold = bf_fold (part);
  for (guint i = 0; i < fold->checks->len; i++)
    g_test_message ("%s: %s", bf_fold_check (fold, i)->code, bf_fold_check (fold, i)->message);
  g_assert_cmpuint (count_to_heed (fold), ==, h->code == NULL ? 0 : 1);
  if (h->code == NULL)
    return;
  check = find_check (fold, h->code, h->on);
  g_assert_nonnull (check);
  g_assert_cmpint (check->severity, ==,
                   strcmp (h->code, "opening-off-face") == 0 ? BF_SEVERITY_MUST_FIX
                                                             : BF_SEVERITY_LOOK_AT);
  assert_number (check->found, h->found);
  assert_number (check->needed, h->needed);
  g_assert_true (isfinite (check->place.x) && isfinite (check->place.y));
}

/* An opening across a bend is cut all the same. */
static void
test_across_is_cut (void)
{
  g_autoptr (BfPart) plain = with_wall (), part = with_wall ();
  g_autoptr (BfFold) without = bf_fold (plain), fold = NULL;

  add_hole (part, "base", 100.0, 2.0, 10.0);
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (without->blank.area_mm2 - fold->blank.area_mm2, 25.0 * G_PI,
                                  1e-6);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_nonnull (strstr (find_check (fold, "opening-near-bend", "base")->message, "front"));
}

static void
test_crossing_outline (void)
{
  static const BfVec2 bow[] = { { 50, 40 }, { 90, 80 }, { 90, 40 }, { 50, 80 } };
  static const BfVec2 box[] = { { 50, 40 }, { 90, 40 }, { 90, 80 }, { 50, 80 } };

  for (int i = 0; i < 2; i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      BfOpening *opening = bf_opening_new ("base", BF_OPENING_OUTLINE);
      const BfCheck *check;

      g_array_append_vals (opening->points, i == 0 ? bow : box, 4);
      g_ptr_array_add (part->openings, opening);
      fold = bf_fold (part);
      check = find_check (fold, "outline-crosses-itself", "base");
      g_assert_true ((check != NULL) == (i == 0));
      if (check != NULL)
        {
          g_assert_cmpint (check->severity, ==, BF_SEVERITY_MUST_FIX);
          assert_at (check->place, bf_vec2 (70.0, 60.0), 1e-6);
        }
    }
}

/* ---- strips --------------------------------------------------------------------------------- */

static void
test_between_holes (void)
{
  static const double apart_mm[] = { 13.0, 12.99, 10.01, 9.0 }; /* the last two cross */

  for (guint i = 0; i < G_N_ELEMENTS (apart_mm); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;

      add_hole (part, "base", 60.0, 60.0, 10.0);
      add_hole (part, "base", 60.0 + apart_mm[i], 60.0, 10.0);
      fold = bf_fold (part);
      check = find_check (fold, "strip-too-thin", "base");
      g_assert_true ((check != NULL) == (apart_mm[i] < 13.0 && apart_mm[i] > 10.0));
      if (check != NULL)
        assert_number (check->found, apart_mm[i] - 10.0);
    }
}

/* A tray's relief of 6.5 stands BA/2 − 3 from either drawn line. */
static void
test_beside_relief (void)
{
  double x = 3.0 - G_PI / 4.0 * 2.13, reach = 3.25 + 5.0;

  for (int i = 0; i < 2; i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      double away = (reach + (i == 0 ? 2.99 : 3.01)) / G_SQRT2;
      const BfCheck *check;

      add_hole (part, "base", x + away, x + away, 10.0);
      fold = bf_fold (part);
      check = find_check (fold, "strip-too-thin", "base");
      g_assert_true ((check != NULL) == (i == 0));
      if (check != NULL)
        assert_number (check->found, 2.99);
    }
}

/* ---- the whole part ------------------------------------------------------------------------- */

static guint
count_code (const BfFold *fold, const char *code)
{
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    n += strcmp (bf_fold_check (fold, i)->code, code) == 0 ? 1 : 0;
  return n;
}

/* Once a part, however many edges; not where every tip is folded over. */
static void
test_sharp_edge (void)
{
  g_autoptr (BfPart) flat = make_rectangle (200.0, 120.0), tray = NULL, hemmed = with_wall ();
  g_autoptr (BfFold) none = bf_fold (flat), raw = NULL, folded = NULL;

  tray = make_tray (200.0, 120.0, 40.0, 90.0);
  raw = bf_fold (tray);
  add_lip (hemmed, "hem", "front", 12.0, 180.0)->bend.inside_radius_mm = 0.0;
  folded = bf_fold (hemmed);
  g_assert_cmpuint (count_code (none, "sharp-edge"), ==, 0);
  g_assert_cmpuint (count_code (raw, "sharp-edge"), ==, 1);
  g_assert_cmpint (find_check (raw, "sharp-edge", NULL)->severity, ==, BF_SEVERITY_GOOD_TO_KNOW);
  g_assert_cmpuint (count_code (folded, "sharp-edge"), ==, 0);
}

static void
add_corner (BfPart *part, guint at, BfJoin join, BfReliefShape relief)
{
  BfCorner *corner = bf_corner_new ("base", at);

  corner->join = join;
  corner->relief = relief;
  g_ptr_array_add (part->corners, corner);
}

/* A tray might be filled; three walls hold nothing. A corner that is folded double is tight, one
 * without a relief hole is not. */
static void
test_will_leak (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) open = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) mixed = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) vessel = bf_fold (tray), scoop = NULL, partly = NULL;

  g_ptr_array_remove_index (open->flanges, 3);
  scoop = bf_fold (open);
  add_corner (mixed, 0, BF_JOIN_FOLDED, BF_RELIEF_UNSET);
  add_corner (mixed, 1, BF_JOIN_FOLDED, BF_RELIEF_UNSET);
  for (guint i = 2; i < 4; i++)
    add_corner (mixed, i, BF_JOIN_OPEN, BF_RELIEF_NONE);
  partly = bf_fold (mixed);
  g_assert_cmpuint (partly->folded->len, ==, 2);
  g_assert_nonnull (strstr (find_check (partly, "will-leak", NULL)->message, "2 corners are open"));
  g_assert_cmpuint (count_code (vessel, "will-leak"), ==, 1);
  g_assert_cmpint (find_check (vessel, "will-leak", NULL)->severity, ==, BF_SEVERITY_GOOD_TO_KNOW);
  g_assert_nonnull (strstr (find_check (vessel, "will-leak", NULL)->message, "4"));
  g_assert_cmpuint (count_code (scoop, "will-leak"), ==, 0);
}

typedef struct
{
  double lid_mm;
  BfJoining joining;
  gboolean hole, sealed;
} Lid;

/* A lid over a welded tray, all of it or half; riveted, or with a hole in it, it breathes. */
static void
test_sealed_volume (void)
{
  static const Lid lids[] = { { 119.5, BF_JOINING_WELDED, FALSE, TRUE },
                              { 100.0, BF_JOINING_WELDED, FALSE, FALSE },
                              { 119.5, BF_JOINING_RIVETED, FALSE, FALSE },
                              { 119.5, BF_JOINING_WELDED, TRUE, FALSE } };

  for (guint i = 0; i < G_N_ELEMENTS (lids); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;

      add_lip (part, "lid", "f0", lids[i].lid_mm, 90.0);
      part->joining = lids[i].joining;
      if (lids[i].hole)
        add_hole (part, "base", 100.0, 60.0, 5.0);
      fold = bf_fold (part);
      g_assert_cmpuint (count_code (fold, "sealed-volume"), ==, lids[i].sealed ? 1 : 0);
      if (lids[i].sealed)
        g_assert_cmpint (find_check (fold, "sealed-volume", NULL)->severity, ==,
                         BF_SEVERITY_LOOK_AT);
    }
}

/* A box 40 × 30 whose lid lies between its walls is closed as well as a big one; a rim that goes
 * outward covers nothing; walls that lean out by 60° leave a mouth 2 · 20 · cot 60° = 23 wider than
 * the base, which a lid of the base's size does not close. */
static void
test_small_and_flared (void)
{
  g_autoptr (BfPart) box = make_tray (40.0, 30.0, 20.0, 90.0);
  g_autoptr (BfPart) rims = make_tray (40.0, 30.0, 20.0, 90.0);
  g_autoptr (BfPart) flared = make_tray (100.0, 60.0, 24.0, 60.0);
  g_autoptr (BfFold) closed = NULL, rimmed = NULL, open = NULL;

  add_lip (box, "lid", "f0", 28.0, 90.0);
  for (guint i = 0; i < 4; i++)
    {
      g_autofree char *wall = g_strdup_printf ("f%u", i), *rim = g_strdup_printf ("rim%u", i);

      add_lip (rims, rim, wall, 12.0, 90.0)->turn = BF_TURN_DOWN;
    }
  add_lip (flared, "lid", "f0", 58.0, 120.0);
  closed = bf_fold (box);
  rimmed = bf_fold (rims);
  open = bf_fold (flared);
  g_assert_cmpuint (count_code (closed, "sealed-volume"), ==, 1);
  g_assert_cmpuint (count_code (rimmed, "sealed-volume"), ==, 0);
  g_assert_cmpuint (count_code (open, "sealed-volume"), ==, 0);
  g_assert_cmpuint (count_code (closed, "faces-collide"), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (holes); i++)
    {
      g_autofree char *path = g_strconcat ("/check-openings", holes[i].path, NULL);
      g_test_add_data_func (path, &holes[i], test_hole);
    }
  g_test_add_func ("/check-openings/across-is-cut", test_across_is_cut);
  g_test_add_func ("/check-openings/crossing-outline", test_crossing_outline);
  g_test_add_func ("/check-openings/between-holes", test_between_holes);
  g_test_add_func ("/check-openings/beside-relief", test_beside_relief);
  g_test_add_func ("/check-part/sharp-edge", test_sharp_edge);
  g_test_add_func ("/check-part/will-leak", test_will_leak);
  g_test_add_func ("/check-part/sealed-volume", test_sealed_volume);
  g_test_add_func ("/check-part/small-and-flared", test_small_and_flared);
  return g_test_run ();
}
