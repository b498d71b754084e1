/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The steps of bending: what they say of each bend, against the formed metal itself. */

#include <string.h>

#include "make-any.h"
#include "core/units.h"
#include "fold/bend-order.h"
#include "look-up.h"
#include "make-part.h"
#include "read-work.h"

#define N_PARTS 60

/* The step of the bend that is the nth to be made. */
static const BfWorkStep *
step_of_bend (const BfWork *work, guint nth)
{
  guint crease = work->fold->folded->len > 0 ? 1 : 0;

  return bf_work_stage_step (work, BF_STAGE_BEND, nth + crease);
}

/* ---- every bend --------------------------------------------------------------------------- */

/* What hangs on the bend's tangent goes over to the side that is told, seen from what it hangs on;
 * past square it comes back over it. Measured on the formed faces. */
static void
check_way_it_goes (const BfFold *fold, const BfBendResult *bend, const char *words)
{
  guint parent = (guint)bf_fold_face (fold, bend->face)->parent;
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
  BfVec2 out = { along.y, -along.x }; /* counter-clockwise round the blank, out is to the right */
  BfVec2 root = bend->zone[3], beyond = bf_vec2_along (root, out, 1.0);
  BfVec2 before = bf_vec2_along (bend->zone[0], out, -1.0);
  BfVec3 flat = bf_vec3_unit (bf_vec3_sub (bf_fold_place (fold, parent, bend->zone[0]),
                                           bf_fold_place (fold, parent, before)));
  BfVec3 side =
      bf_vec3_unit (bf_vec3_sub (bf_fold_place (fold, parent, bf_vec2_add (bend->zone[0], along)),
                                 bf_fold_place (fold, parent, bend->zone[0])));
  BfVec3 up = bf_vec3_cross (flat, side);
  BfVec3 leaf = bf_vec3_sub (bf_fold_place (fold, bend->face, beyond),
                             bf_fold_place (fold, bend->face, root));
  double rise = bf_vec3_dot (leaf, up), run = bf_vec3_dot (leaf, flat);

  g_assert_cmpfloat_with_epsilon (bf_vec3_length (leaf), 1.0, 1e-6);
  if (strstr (words, "fold it over") != NULL)
    g_assert_cmpfloat_with_epsilon (run, -1.0, 1e-6);
  else
    g_assert_true ((rise > 0.0) == (strstr (words, ": bend it up") != NULL));
  if (strstr (words, "leans out") != NULL)
    g_assert_cmpfloat (run, >, 0.0);
  else if (strstr (words, "leans in") != NULL)
    g_assert_cmpfloat (run, <, 0.0);
  else if (strstr (words, "square.") != NULL)
    g_assert_cmpfloat_with_epsilon (run, 0.0, 1e-3);
}

/* "Clamp f1 …" names the bend's own flange or what it hangs on. */
static void
check_hold (const BfFold *fold, const BfBendStep *turn, const char *words)
{
  const BfBendResult *bend = bf_fold_bend (fold, turn->bend);
  int parent = bf_fold_face (fold, bend->face)->parent;
  const char *clamp = strstr (words, "Clamp ");
  const char *held = turn->reach.held == BF_HELD_FLANGE ? bend->flange
                     : parent == 0                      ? "the base"
                                                        : bf_fold_face (fold, (guint)parent)->id;

  g_assert_true ((clamp == NULL) ==
                 (bend->way == BF_BEND_WAY_SLOTS || bend->way == BF_BEND_WAY_SCORE));
  g_assert_true (clamp == NULL || g_str_has_prefix (clamp + strlen ("Clamp "), held));
}

static void
check_angle (const BfWorkStep *step, const BfBendResult *bend)
{
  double deg = bf_rad_to_deg (bend->angle_rad);
  const BfWorkNumber *opening = number_of (step, "opening");
  gboolean plain = fabs (deg - 90.0) < 0.05 || fabs (deg - 180.0) < 0.05;

  g_assert_true ((opening == NULL) == plain);
  if (opening != NULL)
    g_assert_cmpfloat_with_epsilon (nth_number (opening->value, 0), 180.0 - deg, 0.051);
}

/* Newtons as kilograms that would weigh as much (standard gravity, CGPM 1901: 9.80665 m/s²). */
static void
check_push (const BfWork *work, const BfWorkStep *step, const BfBendResult *bend)
{
  const BfWorkNumber *push = number_of (step, "push");

  g_assert_true ((push == NULL) == isnan (bend->force_n));
  if (push == NULL)
    return;
  g_assert_cmpfloat_with_epsilon (nth_number (push->value, 0), bend->force_n / 9.80665, 0.501);
  g_assert_true (g_str_has_prefix (push->value, "too hard") == (bend->force_n > bend->limit_n));
  g_assert_nonnull (strstr (push->value, " kg"));
  g_assert_cmpint (work->fold->part->units, ==, BF_UNITS_MM);
}

static void
check_every_bend (const BfWork *work)
{
  const BfFold *fold = work->fold;
  g_autofree gboolean *told = g_new0 (gboolean, fold->bends->len);

  for (guint i = 0; i < fold->order->len; i++)
    {
      const BfBendStep *turn = bf_fold_bend_step (fold, i);
      const BfBendResult *bend = bf_fold_bend (fold, turn->bend);
      const BfWorkStep *step = step_of_bend (work, i);
      g_autofree char *start = g_strconcat (bend->flange, ": ", NULL);

      g_assert_false (told[turn->bend]);
      told[turn->bend] = TRUE;
      g_assert_true (g_str_has_prefix (step->words, start));
      if (find_check (fold, "flange-off-edge", bend->flange) == NULL)
        check_way_it_goes (fold, bend, step->words);
      check_hold (fold, turn, step->words);
      check_angle (step, bend);
      check_push (work, step, bend);
      g_assert_nonnull (step->caution);
    }
  g_assert_cmpuint (fold->order->len, ==, fold->bends->len);
}

static void
test_every_bend (void)
{
  static const BfBendWay ways[] = { BF_BEND_WAY_BAR, BF_BEND_WAY_SLOTS, BF_BEND_WAY_BRAKE };

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfWork) work = NULL;

      part->bend.way = ways[seed / 6 % G_N_ELEMENTS (ways)];
      work = work_of (part);
      g_test_message ("seed %u", seed);
      check_every_bend (work);
    }
}

/* ---- single numbers ----------------------------------------------------------------------- */

/* A push is said in words first: up to half of what the person can, 0.6 and all of it (EN 1005-3
 * asks to stay at half and warns from 0.7 on; the rest is common practice). */
static void
test_push_words (void)
{
  static const struct
  {
    double share;
    const char *word;
  } rows[] = { { 0.2, "easy, " },
               { 0.499, "easy, " },
               { 0.501, "firm, " },
               { 0.599, "firm, " },
               { 0.61, "hard, take a longer board, " },
               { 0.999, "hard, take a longer board, " },
               { 1.001, "too hard, needs a longer board or a brake, " } };
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  double force;

  add_flange (part, "front", 0, 60.0, 90.0);
  fold = bf_fold (part);
  force = bf_fold_bend (fold, 0)->force_n;
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) one = bf_part_copy (part);
      g_autoptr (BfWork) work = NULL;

      one->bend.hand_limit_n = force / rows[i].share;
      work = work_of (one);
      g_assert_true (
          g_str_has_prefix (number_of (step_of_bend (work, 0), "push")->value, rows[i].word));
    }
}

/* The same push in pounds, 0.45359237 kg each by the agreement of 1959. */
static void
test_push_in_pounds (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfWork) work = NULL;
  const char *push;

  add_flange (part, "front", 0, 60.0, 90.0);
  part->units = BF_UNITS_IN;
  work = work_of (part);
  push = number_of (step_of_bend (work, 0), "push")->value;
  g_assert_nonnull (strstr (push, " lb"));
  g_assert_cmpfloat_with_epsilon (
      nth_number (push, 0), bf_fold_bend (work->fold, 0)->force_n / 9.80665 / 0.45359237, 0.501);
}

/* Overbend in whole degrees, rounded up, and two more: Ri 6, t 2 of 6061-T6 takes 92.88° to end at
 * 90° by Kalpakjian & Schmid's sums, reckoned by hand. A hem does not spring anywhere. */
static void
test_past (void)
{
  static const struct
  {
    const char *material;
    double thickness_mm, radius_mm, angle_deg;
    const char *past;
  } rows[] = {
    { "aluminium-6061-t6", 2.0, 6.0, 90.0, "3 to 5°" },
    { "mild-steel", 1.5, 1.5, 90.0, "1 to 3°" },
    { "mild-steel", 1.5, 0.0, 180.0, NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfWork) work = NULL;
      const BfWorkNumber *past;

      g_free (part->metal.material);
      part->metal.material = g_strdup (rows[i].material);
      part->metal.thickness_mm = rows[i].thickness_mm;
      add_flange (part, "front", 0, 60.0, rows[i].angle_deg)->bend.inside_radius_mm =
          rows[i].radius_mm;
      work = work_of (part);
      past = number_of (step_of_bend (work, 0), "go past by");
      g_assert_cmpstr (past != NULL ? past->value : NULL, ==, rows[i].past);
    }
}

/* Of a metal that nobody knows no push and no overbend are said. */
static void
test_unknown_metal (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfWork) work = NULL;

  g_free (part->metal.material);
  part->metal.material = g_strdup ("unobtainium");
  add_flange (part, "front", 0, 60.0, 90.0);
  work = work_of (part);
  g_assert_null (number_of (step_of_bend (work, 0), "push"));
  g_assert_null (number_of (step_of_bend (work, 0), "go past by"));
  assert_number (step_of_bend (work, 0), "inside radius", "1.5 mm");
}

/* A slotted bend that is not square has more to tell than there is room for: the push stays. */
static void
test_room_for_the_push (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfFlange *front = add_flange (part, "front", 0, 60.0, 60.0);
  g_autoptr (BfWork) work = NULL;
  const BfWorkStep *step;

  part->cutting.by = BF_CUTTING_DISC;
  front->bend.way = BF_BEND_WAY_SLOTS;
  front->bend.slot_mm = 40.0;
  front->bend.bridge_mm = 15.0;
  work = work_of (part);
  step = step_of_bend (work, 0);
  g_assert_nonnull (number_of (step, "joint"));
  g_assert_nonnull (number_of (step, "opening"));
  g_assert_nonnull (number_of (step, "go past by"));
  g_assert_nonnull (number_of (step, "push"));
}

/* Cautions by what is done. */
static void
test_cautions (void)
{
  static const struct
  {
    BfBendWay way;
    double angle_deg;
    const char *caution;
  } rows[] = {
    { BF_BEND_WAY_BAR, 90.0, "Fingers off the closing side." },
    { BF_BEND_WAY_BRAKE, 120.0, "Fingers off the closing side." },
    { BF_BEND_WAY_BAR, 180.0, "Take the bar out at about 135°" },
    { BF_BEND_WAY_SLOTS, 90.0, "Bend this line once" },
    { BF_BEND_WAY_SCORE, 90.0, "Bend this line once" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfFlange *front = add_flange (part, "front", 0, 60.0, rows[i].angle_deg);
      g_autoptr (BfWork) work = NULL;

      front->bend.way = rows[i].way;
      front->bend.inside_radius_mm = NAN;
      front->bend.score_left_mm = 0.6;
      work = work_of (part);
      g_assert_true (g_str_has_prefix (step_of_bend (work, 0)->caution, rows[i].caution));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/work-bend/every-bend", test_every_bend);
  g_test_add_func ("/make/work-bend/push-words", test_push_words);
  g_test_add_func ("/make/work-bend/push-in-pounds", test_push_in_pounds);
  g_test_add_func ("/make/work-bend/past", test_past);
  g_test_add_func ("/make/work-bend/unknown-metal", test_unknown_metal);
  g_test_add_func ("/make/work-bend/room-for-the-push", test_room_for_the_push);
  g_test_add_func ("/make/work-bend/cautions", test_cautions);
  return g_test_run ();
}
