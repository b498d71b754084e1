/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Rounded and chamfered corners, by closed formulas. */

#include "look-up.h"
#include "make-part.h"

#define EXACT_MM 1e-9
#define AREA_MM2 1e-6

/* What rounding a square corner takes of the metal. */
#define ROUND_SHARE (1.0 - G_PI / 4.0)

static BfCorner *
add_finish (BfPart *part, const char *on, guint at, BfFinish finish, double size_mm)
{
  BfCorner *corner = bf_corner_new (on, at);

  corner->finish = finish;
  corner->finish_size_mm = size_mm;
  g_ptr_array_add (part->corners, corner);
  return corner;
}

static BfPart *
part_finished (guint at, BfFinish finish, double size_mm)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_finish (part, "base", at, finish, size_mm);
  return part;
}

/* The arc nearest to a place among the blank's outlines; its radius, or NAN where there is none. */
static double
radius_at (const BfFold *fold, BfVec2 centre)
{
  for (guint i = 0; i < fold->blank.rings->len; i++)
    for (guint k = 0; k < bf_ring_size (bf_blank_ring (&fold->blank, i)); k++)
      {
        BfArc arc;

        if (bf_ring_arc (bf_blank_ring (&fold->blank, i), k, &arc) &&
            bf_vec2_distance (arc.centre, centre) < 1e-6)
          return arc.radius;
      }
  return NAN;
}

/* ---- the base ------------------------------------------------------------------------------ */

static void
test_base_round (void)
{
  g_autoptr (BfPart) part = part_finished (2, BF_FINISH_ROUND, 5.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  g_assert_cmpuint (count_to_heed (fold), ==, 0);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, 24000.0 - 25.0 * ROUND_SHARE, AREA_MM2);
  g_assert_cmpfloat_with_epsilon (fold->blank.cut_length_mm, 640.0 - 10.0 + 2.5 * G_PI, 1e-9);
  g_assert_cmpfloat_with_epsilon (radius_at (fold, bf_vec2 (195.0, 115.0)), 5.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, 1.5 * fold->blank.area_mm2, AREA_MM2);
  g_assert_cmpfloat_with_epsilon (fold->formed.max.x, 200.0, EXACT_MM);
}

static void
test_base_chamfer (void)
{
  g_autoptr (BfPart) part = part_finished (2, BF_FINISH_CHAMFER, 5.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfRing *ring = bf_blank_ring (&fold->blank, 0);

  g_assert_cmpuint (count_to_heed (fold), ==, 0);
  g_assert_cmpuint (bf_ring_size (ring), ==, 5);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, 24000.0 - 12.5, AREA_MM2);
}

/* Four quarters are a circle, from entries of the base's own as from the part's. */
static void
test_base_all_round (void)
{
  g_autoptr (BfPart) part = make_rectangle (80.0, 80.0);
  g_autoptr (BfFold) fold = NULL;

  for (guint i = 0; i < 4; i++)
    {
      BfCorner *corner = add_finish (part, "base", i, BF_FINISH_ROUND, 40.0);

      if (i % 2 == 0)
        g_ptr_array_add (part->base_corners, g_ptr_array_steal_index (part->corners, 0));
      g_assert_cmpstr (corner->on, ==, "base");
    }
  fold = bf_fold (part);
  g_assert_cmpuint (count_to_heed (fold), ==, 0);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, G_PI * 1600.0, AREA_MM2);
  g_assert_cmpfloat_with_epsilon (fold->formed.min.x, 0.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (fold->formed.max.y, 80.0, EXACT_MM);
}

/* At an inside corner a round leaves metal. */
static void
test_inside_corner (void)
{
  const BfVec2 ell[] = { { 0, 0 }, { 100, 0 }, { 100, 60 }, { 40, 60 }, { 40, 100 }, { 0, 100 } };
  g_autoptr (BfPart) part = make_part (ell, G_N_ELEMENTS (ell));
  g_autoptr (BfFold) fold = NULL;

  add_finish (part, "base", 3, BF_FINISH_ROUND, 8.0);
  fold = bf_fold (part);
  g_assert_cmpuint (count_to_heed (fold), ==, 0);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, 7600.0 + 64.0 * ROUND_SHARE, AREA_MM2);
  g_assert_cmpfloat_with_epsilon (radius_at (fold, bf_vec2 (48.0, 68.0)), 8.0, EXACT_MM);
}

/* A sharp corner of 60°: a round of r touches r / tan 30° from it, and what stands out of the box
 * is no longer the corner but the arc. */
static void
test_sharp_angle (void)
{
  const BfVec2 triangle[] = { { 0, 0 }, { 100, 0 }, { 50, 50.0 * sqrt (3.0) } };
  g_autoptr (BfPart) part = make_part (triangle, G_N_ELEMENTS (triangle));
  g_autoptr (BfFold) fold = NULL;

  add_finish (part, "base", 2, BF_FINISH_ROUND, 10.0);
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (
      fold->blank.area_mm2, 2500.0 * sqrt (3.0) - 100.0 * (sqrt (3.0) - G_PI / 3.0), AREA_MM2);
  g_assert_cmpfloat_with_epsilon (fold->formed.max.y, 50.0 * sqrt (3.0) - 10.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (fold->blank.box.max.y, fold->formed.max.y, EXACT_MM);
}

/* ---- flanges ------------------------------------------------------------------------------- */

/* The tip's corner on the start side is corner 0, on the end side 1. */
static void
test_flange (void)
{
  for (guint at = 0; at < 2; at++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) sharp = NULL, fold = NULL;
      double tip;

      add_flange (part, "front", 0, 40.0, 90.0);
      sharp = bf_fold (part);
      tip = sharp->blank.box.min.y;
      add_finish (part, "front", at, BF_FINISH_ROUND, 6.0);
      fold = bf_fold (part);
      g_assert_cmpuint (count_to_heed (fold), ==, 0);
      g_assert_cmpfloat_with_epsilon (radius_at (fold, bf_vec2 (at == 0 ? 6.0 : 194.0, tip + 6.0)),
                                      6.0, EXACT_MM);
      g_assert_cmpfloat_with_epsilon (sharp->blank.area_mm2 - fold->blank.area_mm2,
                                      36.0 * ROUND_SHARE, AREA_MM2);
      g_assert_cmpfloat_with_epsilon (sharp->formed.volume_mm3 - fold->formed.volume_mm3,
                                      1.5 * 36.0 * ROUND_SHARE, AREA_MM2);
      g_assert_cmpfloat_with_epsilon (fold->formed.max.z, sharp->formed.max.z, EXACT_MM);
    }
}

/* ---- room ---------------------------------------------------------------------------------- */

typedef struct
{
  double first_mm, second_mm; /* asked at points 1 and 2, 120 mm apart */
  double drawn_mm;            /* at point 1; NAN: what is asked */
} Room;

static const Room rooms[] = {
  { 60.0, 60.0, NAN },   { 60.1, 60.1, 60.0 }, { 120.0, 0.0, NAN },
  { 121.0, 0.0, 120.0 }, { 90.0, 45.0, 80.0 },
};

/* Two corners share the edge between them in proportion. */
static void
test_room (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rooms); i++)
    {
      g_autoptr (BfPart) part = part_finished (1, BF_FINISH_ROUND, rooms[i].first_mm);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;
      double drawn = isnan (rooms[i].drawn_mm) ? rooms[i].first_mm : rooms[i].drawn_mm;

      if (rooms[i].second_mm > 0.0)
        add_finish (part, "base", 2, BF_FINISH_ROUND, rooms[i].second_mm);
      fold = bf_fold (part);
      check = find_check (fold, "corner-too-large", "base:1");
      g_assert_true ((check == NULL) == isnan (rooms[i].drawn_mm));
      g_assert_cmpfloat_with_epsilon (radius_at (fold, bf_vec2 (200.0 - drawn, drawn)), drawn,
                                      EXACT_MM);
      if (check == NULL)
        continue;
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_LOOK_AT);
      g_assert_cmpfloat_with_epsilon (check->found, rooms[i].first_mm, EXACT_MM);
      g_assert_cmpfloat_with_epsilon (check->needed, drawn, EXACT_MM);
    }
}

/* Beside a flange inset by 20 there is room as far as the notch that its end takes, 1.5 wide. */
static void
test_room_beside_flange (void)
{
  g_autoptr (BfPart) part = part_finished (0, BF_FINISH_CHAMFER, 30.0);
  g_autoptr (BfFold) fold = NULL;
  const BfCheck *check;
  BfFlange *front = add_flange (part, "front", 0, 40.0, 90.0);

  front->start_mm = 20.0;
  front->start_relief = BF_END_RELIEF_NOTCH;
  part->cutting.by = BF_CUTTING_TABLE;
  fold = bf_fold (part);
  check = find_check (fold, "corner-too-large", "base:0");
  g_assert_nonnull (check);
  g_assert_cmpfloat_with_epsilon (check->needed, 18.5, EXACT_MM);
  g_assert_cmpuint (fold->blank.n_outer, ==, 1);
}

/* ---- what is not heeded -------------------------------------------------------------------- */

/* Taken at its word the check is gone, and what is heeded at that corner is asked still. */
static void
assert_forgotten (const BfFold *fold, const char *where)
{
  const BfCheck *check = find_check (fold, "corner-not-heeded", where);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_fix_apply (fold->asked, &check->fix, &error);
  g_autoptr (BfFold) then = NULL;

  g_assert_no_error (error);
  then = bf_fold (part);
  g_assert_null (find_check (then, "corner-not-heeded", where));
  g_assert_cmpfloat_with_epsilon (then->blank.area_mm2, fold->blank.area_mm2, EXACT_MM);
}

static void
test_bent (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) bracket = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) met = NULL, flush = NULL, plain = bf_fold (tray);

  add_finish (tray, "base", 1, BF_FINISH_ROUND, 5.0);
  met = bf_fold (tray);
  g_assert_nonnull (find_check (met, "corner-not-heeded", "base:1"));
  g_assert_cmpfloat_with_epsilon (met->blank.area_mm2, plain->blank.area_mm2, EXACT_MM);

  add_flange (bracket, "front", 0, 40.0, 90.0);
  add_finish (bracket, "base", 1, BF_FINISH_ROUND, 5.0);
  flush = bf_fold (bracket);
  g_assert_nonnull (find_check (flush, "corner-not-heeded", "base:1"));
  assert_forgotten (met, "base:1");
  assert_forgotten (flush, "base:1");
}

static void
test_nothing_to_join (void)
{
  g_autoptr (BfPart) part = part_finished (2, BF_FINISH_ROUND, 5.0);
  g_autoptr (BfFold) fold = NULL;

  ((BfCorner *)g_ptr_array_index (part->corners, 0))->gap_mm = 0.2;
  fold = bf_fold (part);
  g_assert_nonnull (find_check (fold, "corner-not-heeded", "base:2"));
  assert_forgotten (fold, "base:2");
  g_assert_cmpfloat_with_epsilon (radius_at (fold, bf_vec2 (195.0, 115.0)), 5.0, EXACT_MM);
}

/* Left out, a size is 3 mm, or an eighth of an inch. */
static void
test_default_size (void)
{
  g_autoptr (BfPart) part = part_finished (2, BF_FINISH_CHAMFER, NAN);
  g_autoptr (BfFold) mm = bf_fold (part), in = NULL;

  g_assert_cmpfloat_with_epsilon (mm->blank.area_mm2, 24000.0 - 4.5, AREA_MM2);
  part->units = BF_UNITS_IN;
  in = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (in->blank.area_mm2, 24000.0 - 3.175 * 3.175 / 2.0, AREA_MM2);
}

/* ---- whatever the part --------------------------------------------------------------------- */

/* Every corner of a random part asked round: what can't be is said, and the rest holds together. */
static BfPart *
random_rounded (guint seed)
{
  BfPart *part = make_random (seed);
  guint n = bf_part_n_points (part);

  for (guint i = 0; i < n; i++)
    add_finish (part, "base", i, i % 3 == 0 ? BF_FINISH_CHAMFER : BF_FINISH_ROUND, 2.0 + i);
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    for (guint at = 0; at < 2; at++)
      add_finish (part, bf_part_flange (part, i)->id, at, BF_FINISH_ROUND, 5.0);
  part->bend.allowance.k = 0.5;
  return part;
}

static void
test_random (void)
{
  for (guint seed = 0; seed < 200; seed++)
    {
      g_autoptr (BfPart) part = random_rounded (seed);
      g_autoptr (BfPart) mirrored = bf_part_mirror (part);
      g_autoptr (BfFold) fold = bf_fold (part), other = bf_fold (mirrored);
      double flat = fold->blank.area_before_cuts_mm2 * part->metal.thickness_mm, sum = 0.0;

      g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2, 1e-5);
      if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      for (guint i = 0; i < fold->blank.rings->len; i++)
        sum += bf_ring_area (bf_blank_ring (&fold->blank, i));
      g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3 / flat, 1.0, 1e-9);
      g_assert_cmpfloat_with_epsilon (sum, fold->blank.area_mm2, 1e-9);
      g_assert_cmpfloat (fold->blank.area_mm2, <=, fold->blank.area_before_cuts_mm2 + 1e-3);
      g_assert_cmpuint (fold->blank.n_outer, ==, 1);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/free-corners/base/round", test_base_round);
  g_test_add_func ("/free-corners/base/chamfer", test_base_chamfer);
  g_test_add_func ("/free-corners/base/all-round", test_base_all_round);
  g_test_add_func ("/free-corners/base/inside", test_inside_corner);
  g_test_add_func ("/free-corners/base/sharp-angle", test_sharp_angle);
  g_test_add_func ("/free-corners/flange", test_flange);
  g_test_add_func ("/free-corners/room", test_room);
  g_test_add_func ("/free-corners/room-beside-flange", test_room_beside_flange);
  g_test_add_func ("/free-corners/bent", test_bent);
  g_test_add_func ("/free-corners/nothing-to-join", test_nothing_to_join);
  g_test_add_func ("/free-corners/default-size", test_default_size);
  g_test_add_func ("/free-corners/random", test_random);
  return g_test_run ();
}
