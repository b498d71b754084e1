/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Corners that are folded double instead of cut. */

#include <string.h>

#include "core/edit.h"
#include "core/tolerance.h"
#include "look-up.h"
#include "make-part.h"
#include "slab-overlap.h"

#define DEEPEST_MM 1e-3

static BfPart *
make_folded (double width_mm, double depth_mm, double wall_mm)
{
  BfPart *part = make_tray (width_mm, depth_mm, wall_mm, 90.0);

  part->joining = BF_JOINING_FOLDED;
  return part;
}

/* A tray of 200 × 120 × 40 in 1.5, R 1.5, K 0.42: deduction 2·3 − π/2·(1.5 + 0.63) = 2.654 mm, so
 * that its blank is a plain rectangle of (200 + 80 − 2·2.654) × (120 + 80 − 2·2.654). */
static void
test_by_hand (void)
{
  g_autoptr (BfPart) part = make_folded (200.0, 120.0, 40.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  double deduction = 6.0 - G_PI_2 * 2.13;
  double width = 280.0 - 2.0 * deduction, depth = 200.0 - 2.0 * deduction;

  for (guint i = 0; i < fold->checks->len; i++)
    g_test_message ("%s %s", bf_fold_check (fold, i)->code, bf_fold_check (fold, i)->message);
  g_assert_cmpuint (count_to_heed (fold), ==, 0);
  g_assert_cmpuint (fold->folded->len, ==, 4);
  g_assert_cmpuint (fold->reliefs->len, ==, 0);
  g_assert_cmpuint (fold->seams->len, ==, 0);
  g_assert_cmpuint (fold->bends->len, ==, 4);
  g_assert_null (find_check (fold, "will-leak", NULL));
  g_assert_cmpuint (fold->blank.rings->len, ==, 1);
  g_assert_cmpuint (bf_ring_size (bf_blank_ring (&fold->blank, 0)), ==, 4);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, width * depth, 1e-6);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_before_cuts_mm2, width * depth, 1e-6);
  g_assert_cmpfloat_with_epsilon (fold->formed.max.x - fold->formed.min.x, 200.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (fold->formed.max.y - fold->formed.min.y, 120.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (fold->formed.max.z - fold->formed.min.z, 40.0, 1e-9);
}

/* Its folds are told by the walls that they stand between. */
static void
test_names (void)
{
  g_autoptr (BfPart) part = make_folded (200.0, 120.0, 40.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint i = 0; i < fold->folded->len; i++)
    {
      static const char *const names[] = { "f3/f0 fold", "f0/f1 fold", "f1/f2 fold", "f2/f3 fold" };

      g_assert_cmpstr (bf_fold_folded_corner (fold, i)->name, ==, names[i]);
      for (guint k = 0; k < 3; k++)
        g_assert_cmpstr (bf_fold_crease_as_bend (fold, 3 * i + k).flange, ==, names[i]);
    }
}

/* ---- it closes ----------------------------------------------------------------------------- */

/* Where a sector's marking side has got to at its tip, x along it. */
static BfVec3
sector_tip (const BfSolid *s, double t, double x)
{
  double r = s->turn == BF_TURN_UP ? s->radius_mm : s->radius_mm + t;
  double sign = s->turn == BF_TURN_UP ? 1.0 : -1.0;

  return bf_frame_point (&s->frame, x, r * sin (s->angle_rad),
                         sign * r * (1.0 - cos (s->angle_rad)));
}

static BfVec3
slab_point (const BfSolid *s, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (p, s->flat_origin);

  return bf_frame_point (&s->frame, bf_vec2_dot (d, s->flat_ex), bf_vec2_dot (d, s->flat_ey), 0.0);
}

static const BfSolid *
find_solid (const BfFormed *formed, const BfRing *outline, const BfVec2 *zone)
{
  for (guint i = 0; i < formed->solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (formed, i);

      if (zone == NULL ? solid->outline == outline
                       : memcmp (solid->zone, zone, sizeof solid->zone) == 0)
        return solid;
    }
  g_assert_not_reached ();
}

/* How far the bisector's fold misses the end wall's triangle. */
static double
miss_mm (const BfFold *fold, const BfFoldedCorner *corner, const BfFormed *formed)
{
  const BfSolid *fold_on = find_solid (formed, NULL, corner->creases[1].zone);
  const BfSolid *ear = find_solid (formed, corner->ears[1], NULL);
  double t = fold->part->metal.thickness_mm, worst = 0.0;

  for (guint i = 0; i < 2; i++)
    {
      BfVec3 at = sector_tip (fold_on, t, i == 0 ? 0.0 : fold_on->width_mm);
      BfVec3 wanted = slab_point (ear, corner->creases[1].zone[2 + i]);

      worst = MAX (worst, bf_vec3_length (bf_vec3_sub (at, wanted)));
    }
  return worst;
}

/* Any metal, bends of two radii, sizes inside and outside, up and down: the folds meet, nothing
 * collides, and with the neutral line in the middle the volume is the blank's. */
static BfPart *
make_any (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  BfPart *part = make_rectangle (g_rand_double_range (rand, 120.0, 300.0),
                                 g_rand_double_range (rand, 120.0, 300.0));
  double height = g_rand_double_range (rand, 20.0, 50.0);
  BfTurn turn = g_rand_boolean (rand) ? BF_TURN_UP : BF_TURN_DOWN;

  part->joining = BF_JOINING_FOLDED;
  part->metal.thickness_mm = g_rand_double_range (rand, 0.5, 1.5);
  part->bend.inside_radius_mm = part->metal.thickness_mm * g_rand_double_range (rand, 0.0, 3.0);
  part->bend.allowance.k = g_rand_double_range (rand, 0.3, 0.5);
  part->measure = g_rand_boolean (rand) ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
  for (guint i = 0; i < 4; i++)
    {
      g_autofree char *id = g_strdup_printf ("f%u", i);
      BfFlange *wall = add_flange (part, id, i, height, 90.0);

      wall->turn = turn;
      if (g_rand_int_range (rand, 0, 3) == 0)
        wall->bend.inside_radius_mm =
            part->metal.thickness_mm * g_rand_double_range (rand, 0.0, 3.0);
    }
  return part;
}

static void
test_closes (void)
{
  guint n = 0;

  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = NULL;
      guint a = 0, b = 0;
      double overlap;

      fold = bf_fold (part);
      n += fold->folded->len;
      for (guint i = 0; i < fold->folded->len; i++)
        {
          const BfFoldedCorner *corner = bf_fold_folded_corner (fold, i);

          g_test_message ("seed %u corner %s rest %g", seed, corner->where, corner->rest_mm2);
          g_assert_cmpfloat (miss_mm (fold, corner, &fold->formed), <, 1e-9);
          g_assert_cmpfloat (corner->rest_mm2, >, 0.0);
        }
      overlap = slab_worst_overlap (fold, &a, &b);
      g_test_message ("seed %u: %u and %u overlap %g", seed, a, b, overlap);
      g_assert_cmpfloat (overlap, <=, DEEPEST_MM);
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
    }
  g_assert_cmpuint (n, >, 150);
}

/* ---- on the way ---------------------------------------------------------------------------- */

/* At no place of the thumb is anything torn apart by more than a few thicknesses, and from one
 * place to the next nothing moves by more than its share. */
static void
test_on_the_way (void)
{
  g_autoptr (BfPart) part = make_folded (200.0, 120.0, 40.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfFoldedCorner *corner = bf_fold_folded_corner (fold, 1);
  BfVec3 last = { 0, 0, 0 };
  double worst = 0.0, fastest = 0.0;

  for (guint i = 0; i <= 200; i++)
    {
      g_auto (BfFormed) formed = { 0 };
      BfVec3 at;

      bf_fold_formed_at (fold, i / 200.0, &formed);
      worst = MAX (worst, miss_mm (fold, corner, &formed));
      at = slab_point (find_solid (&formed, corner->ears[1], NULL), corner->creases[1].zone[2]);
      if (i > 0)
        fastest = MAX (fastest, bf_vec3_length (bf_vec3_sub (at, last)));
      last = at;
    }
  g_test_message ("misses %g, moves %g a step", worst, fastest);
  g_assert_cmpfloat (worst, <, 4.0 * 1.5);
  g_assert_cmpfloat (fastest, <, 4.0);
}

/* ---- scored walls -------------------------------------------------------------------------- */

/* A wall that is scored has a thin skin for a bend, which the folds would tear off: a corner with
 * one is left open, and says why. A part that is scored but for the corner's two walls is folded,
 * its folds as over a bar. */
static const struct
{
  BfBendWay part, before, after; /* of the walls at corner 1 */
  gboolean folds;
} scored[] = {
  { BF_BEND_WAY_BAR, BF_BEND_WAY_UNSET, BF_BEND_WAY_UNSET, TRUE },
  { BF_BEND_WAY_SCORE, BF_BEND_WAY_UNSET, BF_BEND_WAY_UNSET, FALSE },
  { BF_BEND_WAY_BAR, BF_BEND_WAY_SCORE, BF_BEND_WAY_UNSET, FALSE },
  { BF_BEND_WAY_BAR, BF_BEND_WAY_UNSET, BF_BEND_WAY_SCORE, FALSE },
  { BF_BEND_WAY_SCORE, BF_BEND_WAY_BAR, BF_BEND_WAY_BAR, TRUE },
};

static void
test_scored (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (scored); i++)
    {
      g_autoptr (BfPart) part = make_folded (200.0, 120.0, 40.0);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;

      part->bend.way = scored[i].part;
      part->bend.inside_radius_mm = part->bend.allowance.k = NAN;
      ((BfFlange *)part->flanges->pdata[0])->bend.way = scored[i].before;
      ((BfFlange *)part->flanges->pdata[1])->bend.way = scored[i].after;
      fold = bf_fold (part);
      check = find_check (fold, "fold-not-made", "base:1");
      g_assert_true ((check == NULL) == scored[i].folds);
      if (check != NULL)
        {
          g_assert_cmpint (check->severity, ==, BF_SEVERITY_LOOK_AT);
          g_assert_nonnull (strstr (check->message, "no score"));
        }
      g_assert_null (find_check (fold, "faces-collide", NULL));
      g_assert_null (find_check (fold, "blank-overlaps-itself", NULL));
      for (guint k = 0; k < fold->folded->len; k++)
        g_assert_cmpfloat (miss_mm (fold, bf_fold_folded_corner (fold, k), &fold->formed), <, 1e-9);
    }
}

/* ---- it can't be folded -------------------------------------------------------------------- */

static BfPart *
make_leaning (void)
{
  BfPart *part = make_tray (200.0, 120.0, 40.0, 80.0);

  part->joining = BF_JOINING_FOLDED;
  return part;
}

static BfPart *
make_tapered (void)
{
  BfPart *part = make_folded (200.0, 120.0, 40.0);

  ((BfFlange *)part->flanges->pdata[0])->end_taper_deg = 10.0;
  return part;
}

static BfPart *
make_unlike (void)
{
  BfPart *part = make_folded (200.0, 120.0, 40.0);

  ((BfFlange *)part->flanges->pdata[0])->length_mm = 35.0;
  return part;
}

static BfPart *
make_low (void)
{
  return make_folded (200.0, 120.0, 7.0);
}

static BfPart *
make_narrow (void)
{
  return make_folded (70.0, 69.0, 40.0);
}

static BfPart *
make_scored (void)
{
  BfPart *part = make_folded (200.0, 120.0, 40.0);

  part->bend.way = BF_BEND_WAY_SCORE;
  return part;
}

static BfPart *
make_round (void)
{
  BfPart *part = make_folded (200.0, 200.0, 80.0);

  part->bend.inside_radius_mm = 35.0;
  part->bend.allowance.k = 1.0;
  return part;
}

/* Words that tell why, at the corner of front and right (base point 1); what was found and needed,
 * where it is a size: NAN for none, 0 for any. */
static const struct
{
  BfPart *(*make) (void);
  const char *words;
  double found_mm, needed_mm;
} refused[] = {
  { make_leaning, "a square corner of the base, and two walls bent square", NAN, NAN },
  { make_tapered, "no inset or taper", NAN, NAN },
  { make_unlike, "one wall is 35 mm high and the other 40 mm", 35.0, 40.0 },
  { make_low, "needs walls 10.1 mm high, and these are 7 mm", 7.0, 0.0 },
  { make_narrow, "long, and this one is 70 mm", 70.0, 0.0 },
  { make_scored, "without cracking, and no score", NAN, NAN },
  { make_round, "so round that", NAN, NAN },
};

static void
assert_number (double found, double wanted)
{
  if (isnan (wanted))
    g_assert_true (isnan (found));
  else if (wanted > 0.0)
    g_assert_cmpfloat_with_epsilon (found, wanted, 1e-9);
  else
    g_assert_true (isfinite (found));
}

static void
test_refused (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++)
    {
      g_autoptr (BfPart) part = refused[i].make ();
      g_autoptr (BfFold) fold = bf_fold (part);
      const BfCheck *check = find_check (fold, "fold-not-made", "base:1");

      g_assert_nonnull (check);
      g_test_message ("%s", check->message);
      g_assert_nonnull (strstr (check->message, refused[i].words));
      assert_number (check->found, refused[i].found_mm);
      assert_number (check->needed, refused[i].needed_mm);
    }
}

/* A wall as high, or an edge as long, as was needed does fold; a hair less does not. */
static void
test_as_needed (void)
{
  g_autoptr (BfPart) low = make_low (), narrow = make_narrow ();
  g_autoptr (BfFold) low_fold = bf_fold (low), narrow_fold = bf_fold (narrow);
  double wall_mm = find_check (low_fold, "fold-not-made", "base:1")->needed;
  double edge_mm = find_check (narrow_fold, "fold-not-made", "base:1")->needed;

  for (int i = 0; i < 2; i++)
    {
      double by_mm = i == 0 ? -0.01 : 0.01;
      g_autoptr (BfPart) tray = make_folded (200.0, 120.0, wall_mm + by_mm);
      g_autoptr (BfPart) wide = make_folded (edge_mm + by_mm, 69.0, 40.0);
      g_autoptr (BfFold) tray_fold = bf_fold (tray), wide_fold = bf_fold (wide);

      g_assert_cmpint (find_check (tray_fold, "fold-not-made", NULL) == NULL, ==, i);
      g_assert_cmpint (find_check (wide_fold, "fold-not-made", NULL) == NULL, ==, i);
    }
}

/* Nothing is cut there, so that a relief asked is not heeded. */
static void
test_relief_asked (void)
{
  g_autoptr (BfPart) part = make_folded (200.0, 120.0, 40.0);
  g_autoptr (BfPart) asked = bf_edit_corner_relief (part, "base", 1, BF_RELIEF_ROUND, 6.0);
  g_autoptr (BfFold) fold = bf_fold (asked);

  g_assert_nonnull (find_check (fold, "corner-not-heeded", "base:1"));
  g_assert_null (find_check (fold, "corner-not-heeded", "base:2"));
  g_assert_cmpuint (fold->reliefs->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/folded-corner/by-hand", test_by_hand);
  g_test_add_func ("/folded-corner/names", test_names);
  g_test_add_func ("/folded-corner/closes", test_closes);
  g_test_add_func ("/folded-corner/on-the-way", test_on_the_way);
  g_test_add_func ("/folded-corner/scored", test_scored);
  g_test_add_func ("/folded-corner/refused", test_refused);
  g_test_add_func ("/folded-corner/as-needed", test_as_needed);
  g_test_add_func ("/folded-corner/relief-asked", test_relief_asked);
  return g_test_run ();
}
