/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Scored bends: a skin of metal folds without a radius, and the groove over it closes. */

#include "core/defaults.h"
#include "fold/bend-words.h"
#include "fold/expected-error.h"
#include "fold/score.h"
#include "look-up.h"
#include "make-part.h"

#define T 1.5
#define LEFT 0.6
#define HAND_MM 1e-6 /* numbers worked out by hand have so many places */

static void
score (BfPart *part, double left_mm)
{
  part->bend.way = BF_BEND_WAY_SCORE;
  part->bend.score_left_mm = left_mm;
  part->bend.inside_radius_mm = 1.5; /* of no account */
  part->bend.allowance.k = 0.5;
}

static BfPart *
one_wall (double angle_deg)
{
  BfPart *part = make_rectangle (100.0, 60.0);

  add_flange (part, "front", 0, 25.0, angle_deg);
  score (part, LEFT);
  return part;
}

/* ---- by hand ------------------------------------------------------------------------------ */

/* BA = θ · 0.5 · 0.6. Outside S = 0.6 τ, inside S = −0.9 τ, τ = tan (θ/2) but 1 above 90°. The
 * blank is 60 − S + BA + 25 − S deep; a groove of 0.9 closes where it is BA + 1.8 tan (θ/2) wide.
 *   90°: BA 0.4712389; 60 − 0.6 + 0.4712389 + 24.4 = 84.2712389; groove 0.4712389 + 1.8
 *   90°, inside: 60.9 + 0.4712389 + 25.9 = 87.2712389
 *   60°: BA 0.3141593, tan 30° = 0.5773503, S 0.3464102; 84.6213390; groove 1.3533898
 *   120°: BA 0.6283185, S 0.6; 84.4283185; groove 0.6283185 + 1.8 · 1.7320508 = 3.7460100 */
static const struct
{
  double angle_deg;
  BfMeasure measure;
  double ba_mm, depth_mm, groove_mm;
} by_hand[] = {
  { 90.0, BF_MEASURE_OUTSIDE, 0.4712389, 84.2712389, 2.2712389 },
  { 90.0, BF_MEASURE_INSIDE, 0.4712389, 87.2712389, 2.2712389 },
  { 60.0, BF_MEASURE_OUTSIDE, 0.3141593, 84.6213390, 1.3533898 },
  { 120.0, BF_MEASURE_OUTSIDE, 0.6283185, 84.4283185, 3.7460100 },
};

static void
test_by_hand (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (by_hand); i++)
    {
      g_autoptr (BfPart) part = one_wall (by_hand[i].angle_deg);
      g_autoptr (BfFold) fold = NULL;
      const BfBendResult *bend;
      const BfBox *box;

      part->measure = by_hand[i].measure;
      fold = bf_fold (part);
      bend = find_bend (fold, "front");
      box = &fold->blank.box;
      g_assert_cmpfloat_with_epsilon (bend->allowance_mm, by_hand[i].ba_mm, HAND_MM);
      g_assert_cmpfloat_with_epsilon (bend->groove_mm, by_hand[i].groove_mm, HAND_MM);
      g_assert_cmpfloat_with_epsilon (box->max.y - box->min.y, by_hand[i].depth_mm, HAND_MM);
      g_assert_cmpfloat_with_epsilon (bend->score_left_mm, LEFT, 1e-12);
      g_assert_cmpfloat_with_epsilon (bend->inside_radius_mm, 0.0, 1e-12);
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
    }
}

/* The blank less its groove: a wall of 25 on 100 × 60, the zone over the skin 0.471 wide, the
 * groove 2.271 and 0.9 deep. Mild steel: 7850 kg/m³. */
static void
test_mass (void)
{
  g_autoptr (BfPart) part = one_wall (90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfBox *box = &fold->blank.box;
  double width = box->max.x - box->min.x, depth = box->max.y - box->min.y;
  double t = part->metal.thickness_mm;
  double volume = width * depth * t - width * 2.2712389 * (t - LEFT);

  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, width * depth, 1e-6);
  g_assert_cmpfloat_with_epsilon (fold->blank.mass_kg, volume * 7850e-9, 1e-8);
}

/* What K leaves open is of the skin alone: ±0.06 · π/2 · 0.6 / 2. */
static void
test_expected (void)
{
  g_autoptr (BfPart) part = one_wall (90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const guint bend = 0;
  BfExpectedError error;

  bf_expected_error (fold, &bend, 1, 1, &error);
  g_assert_cmpfloat_with_epsilon (error.parts_mm[BF_ERROR_ALLOWANCE], 0.06 * G_PI_2 * LEFT / 2.0,
                                  1e-12);
}

/* σ = (210 + 340)/2 = 275 MPa over 100 mm of a skin of 0.6: 275 · 100 · 0.36 / 4 = 2475 N·mm, on
 * the least lever of 25 mm 99 N. Twice the skin takes four times that. */
static void
test_push (void)
{
  g_autoptr (BfPart) part = one_wall (90.0);
  g_autoptr (BfFold) thin = bf_fold (part);
  g_autoptr (BfFold) thick = NULL;

  part->bend.score_left_mm = 2.0 * LEFT;
  thick = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (find_bend (thin, "front")->moment_nm, 2.475, 1e-9);
  g_assert_cmpfloat_with_epsilon (find_bend (thin, "front")->force_n, 99.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (find_bend (thick, "front")->moment_nm, 9.9, 1e-9);
  g_assert_null (find_check (thin, "force-too-high", NULL));
  g_assert_cmpint (find_check (thick, "force-too-high", "front")->severity, ==,
                   BF_SEVERITY_MUST_FIX);
}

static void
test_default_skin (void)
{
  g_autoptr (BfPart) part = one_wall (90.0);
  g_autoptr (BfFold) fold = NULL;

  part->bend.score_left_mm = NAN;
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (bf_default_score_left_mm (T), 0.6, 1e-12);
  g_assert_cmpfloat_with_epsilon (find_bend (fold, "front")->score_left_mm, 0.6, 1e-12);
}

/* ---- folded back -------------------------------------------------------------------------- */

static const BfSolid *
slab_of (const BfFold *fold, guint face)
{
  for (guint i = 0; i < fold->formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&fold->formed, i);

      if (solid->kind == BF_SOLID_SLAB && solid->face == face)
        return solid;
    }
  g_assert_not_reached ();
}

/* The flange's tip as it is folded, on the marking side (0) or the other (1). */
static BfVec3
tip (const BfFold *fold, gboolean other_side)
{
  const BfSolid *slab = slab_of (fold, 1);
  BfVec2 d = bf_vec2_sub (bf_vec2 (50.0, fold->blank.box.min.y), slab->flat_origin);

  return bf_frame_point (&slab->frame, bf_vec2_dot (d, slab->flat_ex),
                         bf_vec2_dot (d, slab->flat_ey), other_side ? -T : 0.0);
}

/* The length asked runs from the line where the outer faces (or the inner ones) would meet. */
static void
test_sizes_fold_back (void)
{
  for (guint i = 0; i < 60; i++)
    {
      double angle_deg = 5.0 + i * 1.5, angle = bf_deg_to_rad (MIN (angle_deg, 90.0));
      gboolean inside = i % 2 == 1, up = i % 4 < 2;
      g_autoptr (BfPart) part = one_wall (MIN (angle_deg, 90.0));
      g_autoptr (BfFold) fold = NULL;
      double face_z = inside == up ? 0.0 : -T; /* of the base, where the length is measured */
      BfVec3 found;

      part->measure = inside ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
      part->bend.score_left_mm = 0.2 + 0.02 * i;
      ((BfFlange *)part->flanges->pdata[0])->turn = up ? BF_TURN_UP : BF_TURN_DOWN;
      fold = bf_fold (part);
      found = tip (fold, inside != up);
      assert_in_space (
          found,
          bf_vec3 (50.0, -25.0 * cos (angle), face_z + (up ? 1.0 : -1.0) * 25.0 * sin (angle)),
          1e-6);
    }
}

/* Above a square bend the drawn line is the outermost tangent of the skin. */
static void
test_acute (void)
{
  for (double angle = 91.0; angle <= 135.0; angle += 4.0)
    {
      g_autoptr (BfPart) part = one_wall (angle);
      g_autoptr (BfFold) fold = bf_fold (part);

      g_assert_cmpfloat_with_epsilon (fold->formed.min.y, 0.0, 1e-9);
      g_assert_null (find_check (fold, "score-too-far", NULL));
    }
}

/* With the neutral line in the skin's middle nothing grows or shrinks; but the metal over the skin,
 * which is milled away, is not bent. */
static void
test_volume (void)
{
  g_autoptr (BfPart) part = make_tray (100.0, 60.0, 25.0, 75.0);
  g_autoptr (BfFold) fold = NULL;
  double volume = 0.0;

  score (part, LEFT);
  fold = bf_fold (part);
  for (guint i = 0; i < fold->faces->len; i++)
    volume += bf_ring_area (bf_fold_face (fold, i)->outline) * T;
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      volume += bend->allowance_mm * bf_vec2_distance (bend->line[0], bend->line[1]) * LEFT;
    }
  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, volume, 1e-6);
}

/* ---- the metal does not collide with itself ----------------------------------------------- */

static void
assert_no_collision (BfPart *part)
{
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfCheck *check = find_check (fold, "faces-collide", NULL);

  if (check != NULL)
    g_test_message ("%s", check->message);
  g_assert_null (check);
}

static void
test_trays (void)
{
  static const double skins[] = { 0.15, 0.6, 1.2, 1.45 };

  for (guint i = 0; i < 48; i++)
    {
      g_autoptr (BfPart) part = i % 3 == 2 ? make_ring (3 + i % 4, 80.0, 25.0, 20.0 + i * 2.4)
                                           : make_tray (100.0, 60.0, 25.0, 20.0 + i * 2.4);

      score (part, skins[i % 4]);
      part->measure = i % 5 < 2 ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
      part->cutting.by = i % 2 == 0 ? BF_CUTTING_SERVICE : BF_CUTTING_DISC;
      for (guint k = 0; k < part->flanges->len; k++)
        ((BfFlange *)part->flanges->pdata[k])->turn = i % 7 < 4 ? BF_TURN_UP : BF_TURN_DOWN;
      assert_no_collision (part);
    }
}

/* Lips, a flange that stands within its edge, one up and one down, and an ordinary bend beside a
 * scored one. */
static void
test_mixed (void)
{
  for (guint i = 0; i < 8; i++)
    {
      g_autoptr (BfPart) part = make_tray (100.0, 60.0, 25.0, i % 2 == 0 ? 90.0 : 70.0);
      BfFlange *wall = part->flanges->pdata[0];

      score (part, 0.4);
      add_lip (part, "lip", "f1", 12.0, 90.0)->turn = i & 2 ? BF_TURN_UP : BF_TURN_DOWN;
      add_lip (part, "lip2", "f2", 12.0, 60.0);
      wall->start_mm = i & 4 ? 10.0 : 0.0;
      ((BfFlange *)part->flanges->pdata[3])->bend.way = BF_BEND_WAY_BAR;
      assert_no_collision (part);
    }
}

/* Ears on a scored wall begin above the mitre in which it stands, clear of the base. */
static void
test_ears (void)
{
  for (guint i = 0; i < 8; i++)
    {
      g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);

      score (part, i % 2 == 0 ? 0.3 : 0.9);
      part->measure = i & 2 ? BF_MEASURE_INSIDE : BF_MEASURE_OUTSIDE;
      add_flange (part, "wall", 0, 40.0, i & 4 ? 75.0 : 90.0);
      add_ear (part, "before", "wall", BF_EDGE_START, 20.0);
      add_ear (part, "after", "wall", BF_EDGE_END, 20.0);
      assert_no_collision (part);
    }
}

/* Two flanges at an inside corner of the base. */
static void
test_inside_corner (void)
{
  static const BfVec2 ell[] = {
    { 0, 0 }, { 100, 0 }, { 100, 50 }, { 50, 50 }, { 50, 90 }, { 0, 90 }
  };
  g_autoptr (BfPart) part = make_part (ell, G_N_ELEMENTS (ell));

  score (part, LEFT);
  add_flange (part, "a", 2, 15.0, 90.0);
  add_flange (part, "b", 3, 15.0, 90.0);
  assert_no_collision (part);
}

/* A groove is no hole: walls that lean into each other are found as ever. */
static void
test_still_collides (void)
{
  g_autoptr (BfPart) part = make_rectangle (20.0, 60.0);
  g_autoptr (BfFold) fold = NULL;

  score (part, LEFT);
  add_flange (part, "left", 3, 30.0, 120.0);
  add_flange (part, "right", 1, 30.0, 120.0);
  fold = bf_fold (part);
  g_assert_nonnull (find_check (fold, "faces-collide", NULL));
}

/* The groove that the collision test takes out: as wide as the bend says, in the inside face. */
static void
test_grooves (void)
{
  g_autoptr (BfPart) part = one_wall (90.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint face = 0; face < 2; face++)
    {
      g_autoptr (GArray) grooves = g_array_new (FALSE, FALSE, sizeof (BfGroove));
      const BfGroove *groove;

      bf_score_grooves (fold->layout, face, grooves);
      g_assert_cmpuint (grooves->len, ==, 1);
      groove = &g_array_index (grooves, BfGroove, 0);
      g_assert_true (groove->in_marking_side);
      g_assert_cmpfloat_with_epsilon (groove->depth_mm, T - LEFT, 1e-12);
      g_assert_cmpfloat_with_epsilon (bf_polygon_area (groove->strip.corners, 4),
                                      100.0 * find_bend (fold, "front")->groove_mm, 1e-9);
    }
}

/* ---- what cannot be scored, and who can cut it --------------------------------------------- */

static void
test_refused (void)
{
  static const struct
  {
    double angle_deg, left_mm;
    const char *code;
    double found, needed;
  } table[] = {
    { 135.0, LEFT, NULL, NAN, NAN },
    { 136.0, LEFT, "score-too-far", 136.0, 135.0 },
    { 180.0, LEFT, "score-too-far", 180.0, 135.0 },
    { 90.0, 1.49, NULL, NAN, NAN },
    { 90.0, 1.5, "score-too-shallow", 1.5, 0.6 },
    { 90.0, 3.0, "score-too-shallow", 3.0, 0.6 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autoptr (BfPart) part = one_wall (table[i].angle_deg);
      g_autoptr (BfFold) fold = NULL;
      const BfBendResult *bend;
      const BfCheck *check;

      part->bend.score_left_mm = table[i].left_mm;
      part->bend.inside_radius_mm = NAN;
      part->bend.allowance.k = NAN;
      fold = bf_fold (part);
      bend = find_bend (fold, "front");
      g_assert_cmpint (bend->way, ==, table[i].code == NULL ? BF_BEND_WAY_SCORE : BF_BEND_WAY_BAR);
      if (table[i].code == NULL)
        {
          g_assert_null (find_check (fold, "score-too-far", NULL));
          g_assert_null (find_check (fold, "score-too-shallow", NULL));
          continue;
        }
      check = find_check (fold, table[i].code, "front");
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_MUST_FIX);
      g_assert_cmpfloat_with_epsilon (check->found, table[i].found, 1e-9);
      g_assert_cmpfloat_with_epsilon (check->needed, table[i].needed, 1e-9);
      g_assert_true (isnan (bend->score_left_mm));
      g_assert_cmpfloat_with_epsilon (bend->inside_radius_mm, table[i].angle_deg > 179.0 ? 0.0 : T,
                                      1e-12);
    }
}

/* ±0.2 on a skin of 0.6: (0.8/0.6)² = 1.78 times the push. */
static void
test_cut_by (void)
{
  for (BfCuttingWay by = BF_CUTTING_DISC; by <= BF_CUTTING_SERVICE; by++)
    {
      g_autoptr (BfPart) part = one_wall (90.0);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;

      part->cutting.by = by;
      fold = bf_fold (part);
      check = find_check (fold, "score-by-hand", "front");
      g_assert_true ((check != NULL) == (by == BF_CUTTING_DISC || by == BF_CUTTING_SNIPS));
      if (check != NULL)
        {
          g_assert_nonnull (strstr (check->message, "±0.2 mm"));
          g_assert_nonnull (strstr (check->message, "1.8 times"));
        }
    }
}

static void
test_words (void)
{
  static const struct
  {
    double share;
    const char *words;
  } table[] = {
    { 0.25, "a quarter of the metal left" },   { 0.28, "a quarter of the metal left" },
    { 0.3, "a third of the metal left" },      { 0.4, "two fifths of the metal left" },
    { 0.54, "half of the metal left" },        { 0.01, "hardly any metal left" },
    { 0.97, "nine tenths of the metal left" },
  };
  g_autoptr (BfPart) part = one_wall (90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfFold) bar = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    g_assert_cmpstr (bf_metal_left_words (table[i].share), ==, table[i].words);
  g_assert_cmpstr (bf_bend_lost_words (fold, find_bend (fold, "front")), ==,
                   "two fifths of the metal left");
  g_assert_nonnull (find_check (fold, "joint-weakened", "front"));
  part->bend.way = BF_BEND_WAY_BAR;
  bar = bf_fold (part);
  g_assert_null (bf_bend_lost_words (bar, find_bend (bar, "front")));
  g_assert_null (find_check (bar, "joint-weakened", NULL));
}

static void
test_mirror (void)
{
  g_autoptr (BfPart) part = make_tray (100.0, 60.0, 25.0, 75.0);
  g_autoptr (BfPart) mirrored = NULL;
  g_autoptr (BfFold) fold = NULL, other = NULL;

  score (part, LEFT);
  ((BfFlange *)part->flanges->pdata[1])->angle_deg = 40.0;
  mirrored = bf_part_mirror (part);
  fold = bf_fold (part);
  other = bf_fold (mirrored);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2, 1e-6);
  g_assert_cmpfloat_with_epsilon (fold->blank.box.min.x, -other->blank.box.max.x, 1e-9);
  g_assert_cmpfloat_with_epsilon (fold->blank.box.max.x, -other->blank.box.min.x, 1e-9);
}

/* Parts drawn by lot, scored: whatever their bends over a bar did not collide with, these do not.
 */
static void
test_random (void)
{
  guint n_scored = 0;

  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) ordinary = bf_fold (part);
      g_autoptr (BfFold) scored = NULL;

      score (part, part->metal.thickness_mm * (0.15 + 0.7 * (seed % 10) / 10.0));
      scored = bf_fold (part);
      if (bf_fold_count_checks (ordinary, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      n_scored++;
      if (find_check (scored, "faces-collide", NULL) != NULL)
        g_test_message ("seed %u: %s", seed, find_check (scored, "faces-collide", NULL)->message);
      g_assert_null (find_check (scored, "faces-collide", NULL));
      g_assert_null (find_check (scored, "blank-overlaps-itself", NULL));
    }
  g_assert_cmpuint (n_scored, >, 20);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/score/by-hand", test_by_hand);
  g_test_add_func ("/score/push", test_push);
  g_test_add_func ("/score/default-skin", test_default_skin);
  g_test_add_func ("/score/sizes-fold-back", test_sizes_fold_back);
  g_test_add_func ("/score/acute", test_acute);
  g_test_add_func ("/score/volume", test_volume);
  g_test_add_func ("/score/trays", test_trays);
  g_test_add_func ("/score/mixed", test_mixed);
  g_test_add_func ("/score/ears", test_ears);
  g_test_add_func ("/score/inside-corner", test_inside_corner);
  g_test_add_func ("/score/still-collides", test_still_collides);
  g_test_add_func ("/score/grooves", test_grooves);
  g_test_add_func ("/score/refused", test_refused);
  g_test_add_func ("/score/cut-by", test_cut_by);
  g_test_add_func ("/score/words", test_words);
  g_test_add_func ("/score/mirror", test_mirror);
  g_test_add_func ("/score/random", test_random);
  g_test_add_func ("/score/mass", test_mass);
  g_test_add_func ("/score/expected", test_expected);
  return g_test_run ();
}
