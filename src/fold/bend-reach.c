/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-reach.h"

#include "fold/bend-groups.h"
#include "fold/standing.h"

/* A swing is looked at in so many places. */
#define SWING_STEPS 8

/* Metal gives way by this much without harm; less for thin metal. */
#define GIVE_MM 0.1

/* A bar may end short of the bend's ends by so much, and no more than this
 * share of its length; its back is bevelled at either end by this share of its
 * width, so that it fits into sharp corners and beside walls that lean in
 * (common practice). */
#define BAR_SHORT_MM 10.0
#define BAR_SHORT_SHARE 0.1
#define BAR_BEVEL 0.6
#define BAR_BEVEL_SHARE 0.25

struct BfReachTest
{
  const BfFold *fold;
  BfStanding *standing;
  double *areas_mm2; /* of each face */
  double all_mm2;
  guint *groups; /* of each bend: see fold/bend-groups.h */
  double give_mm;
};

/* One bend being tried, one side of it held. */
typedef struct
{
  BfReachTest *test;
  guint bend;
  const GArray *near; /* guint: the faces that could be in the way, and those that swing */
  BfHeldSide held;
  guint held_face;
} Trial;

BfReachTest *
bf_reach_test_new (const BfFold *fold)
{
  BfReachTest *test = g_new0 (BfReachTest, 1);

  test->fold = fold;
  test->standing = bf_standing_new (fold);
  test->areas_mm2 = g_new0 (double, fold->faces->len);
  test->groups = g_new0 (guint, fold->bends->len + 1);
  bf_bend_groups (fold, test->groups);
  test->give_mm = MIN (GIVE_MM, fold->part->metal.thickness_mm / 4.0);
  for (guint i = 0; i < fold->faces->len; i++)
    {
      test->areas_mm2[i] = bf_ring_area (bf_fold_face (fold, i)->outline);
      test->all_mm2 += test->areas_mm2[i];
    }
  return test;
}

void
bf_reach_test_free (BfReachTest *test)
{
  bf_standing_free (test->standing);
  g_free (test->areas_mm2);
  g_free (test->groups);
  g_free (test);
}

static guint
near_face (const Trial *trial, guint i)
{
  return g_array_index (trial->near, guint, i);
}

/* ---- the bars -------------------------------------------------------------------------------- */

static gboolean
needs_bar (const BfBendResult *bend)
{
  return bend->way == BF_BEND_WAY_BAR || bend->way == BF_BEND_WAY_BRAKE;
}

/* The tangent on the held side, as it runs, and the way from it into the held
 * face. */
static void
find_tangent (const Trial *trial, BfVec2 line[2], BfVec2 *inward)
{
  const BfBendResult *bend = bf_fold_bend (trial->test->fold, trial->bend);
  gboolean parent = trial->held == BF_HELD_PARENT;
  BfVec2 along;

  line[0] = parent ? bend->zone[0] : bend->zone[3];
  line[1] = parent ? bend->zone[1] : bend->zone[2];
  along = bf_vec2_unit (bf_vec2_sub (line[1], line[0]));
  *inward = bf_vec2 (-along.y, along.x);
  if (bf_vec2_dot (*inward, bf_vec2_sub (bend->line[0], line[0])) > 0.0)
    *inward = bf_vec2_scale (*inward, -1.0);
}

/* A bar in the blank, its front on the tangent. */
static void
find_bar (const Trial *trial, double width_mm, BfVec2 corners[4])
{
  BfVec2 line[2], inward, along;
  double length, shorter, bevel;

  find_tangent (trial, line, &inward);
  length = bf_vec2_distance (line[0], line[1]);
  along = bf_vec2_unit (bf_vec2_sub (line[1], line[0]));
  shorter = MIN (BAR_SHORT_MM, BAR_SHORT_SHARE * length);
  bevel = shorter + MIN (BAR_BEVEL * width_mm, BAR_BEVEL_SHARE * length);
  corners[0] = bf_vec2_along (line[0], along, shorter);
  corners[1] = bf_vec2_along (line[1], along, -shorter);
  corners[2] = bf_vec2_along (bf_vec2_along (line[1], along, -bevel), inward, width_mm);
  corners[3] = bf_vec2_along (bf_vec2_along (line[0], along, bevel), inward, width_mm);
}

/* The two bars, that wide, on both faces of what is held. */
static void
place_bars (const Trial *trial, double width_mm, GArray *bars)
{
  const BfSolid *slab = bf_standing_slab (trial->test->standing, trial->held_face);
  const double tops[] = { BF_BAR_HEIGHT_MM, -trial->test->fold->part->metal.thickness_mm };
  BfConvexPart part = { .n = 4 };

  find_bar (trial, width_mm, part.corners);
  for (guint i = 0; i < part.n; i++)
    part.corners[i] = bf_solid_local (slab, part.corners[i]);
  for (guint i = 0; i < G_N_ELEMENTS (tops); i++)
    {
      BfFrame frame = slab->frame;
      BfConvex bar;

      frame.origin = bf_vec3_along (frame.origin, frame.ez, tops[i]);
      bf_convex_from_slab (&frame, &part, BF_BAR_HEIGHT_MM, &bar);
      g_array_append_val (bars, bar);
    }
}

/* The first face that bars so wide would run into, or −1. The two that meet at
 * the bend do not count: a bar's nose is bevelled for what leans over it. */
static int
find_bar_blocker (const Trial *trial, double width_mm)
{
  const BfReachTest *test = trial->test;
  guint flange = bf_fold_bend (test->fold, trial->bend)->face;
  int parent = bf_fold_face (test->fold, flange)->parent;
  g_autoptr (GArray) bars = g_array_new (FALSE, FALSE, sizeof (BfConvex));

  place_bars (trial, width_mm, bars);
  for (guint i = 0; i < trial->near->len; i++)
    if (near_face (trial, i) != flange && (int)near_face (trial, i) != parent &&
        bf_standing_face_hits (test->standing, near_face (trial, i), bars, test->give_mm))
      return (int)near_face (trial, i);
  return -1;
}

/* How wide a bar there is room for, by whole millimetres. */
static double
clear_width_mm (const Trial *trial)
{
  double width = BF_BAR_WIDTH_MM - 1.0;

  while (width > 0.0 && find_bar_blocker (trial, width) >= 0)
    width -= 1.0;
  return MAX (width, 0.0);
}

/* How far the held face reaches from the tangent. */
static double
hold_mm (const Trial *trial)
{
  const GArray *parts = bf_standing_parts (trial->test->standing, trial->held_face);
  BfVec2 line[2], inward;
  double far_mm = 0.0;

  find_tangent (trial, line, &inward);
  for (guint i = 0; i < parts->len; i++)
    {
      const BfConvexPart *part = &g_array_index (parts, BfConvexPart, i);

      for (guint k = 0; k < part->n; k++)
        far_mm = MAX (far_mm, bf_vec2_dot (bf_vec2_sub (part->corners[k], line[0]), inward));
    }
  return far_mm;
}

/* ---- one bend -------------------------------------------------------------------------------- */

/* The first of the near faces that a face which swings runs into, or −1. */
static int
find_hit (const Trial *trial, guint swinging)
{
  const BfReachTest *test = trial->test;
  guint flange = bf_fold_bend (test->fold, trial->bend)->face;
  int parent = bf_fold_face (test->fold, flange)->parent;

  for (guint i = 0; i < trial->near->len; i++)
    {
      guint face = near_face (trial, i);

      if (!(swinging == flange && (int)face == parent) &&
          !bf_standing_hangs_on (test->standing, face, trial->bend) &&
          bf_standing_faces_hit (test->standing, swinging, face, test->give_mm))
        return (int)face;
    }
  return -1;
}

/* The first face that swings into one that is held, or −1; where it hits in the
 * end is not for here to say. */
static int
find_swing_blocker (const Trial *trial)
{
  const BfReachTest *test = trial->test;
  guint flange = bf_fold_bend (test->fold, trial->bend)->face;

  for (guint i = 0; i < trial->near->len; i++)
    if (bf_standing_hangs_on (test->standing, near_face (trial, i), trial->bend))
      {
        int hit = find_hit (trial, near_face (trial, i));

        if (hit >= 0)
          return near_face (trial, i) == flange ? hit : (int)near_face (trial, i);
      }
  return -1;
}

static BfReach
fault (const Trial *trial, BfReachFault what, int blocker, double clear_mm)
{
  return (BfReach){ trial->held, what, (guint)MAX (blocker, 0), clear_mm };
}

static gboolean
rises_with (const BfReachTest *test, guint bend, guint other)
{
  return other == bend || (test->groups[bend] > 0 && test->groups[other] == test->groups[bend]);
}

/* Turns the bend, and what rises in step with it. */
static void
turn_bend (BfReachTest *test, guint bend, double fraction)
{
  if (test->groups[bend] == 0)
    {
      bf_standing_turn (test->standing, bend, fraction);
      return;
    }
  for (guint i = 0; i < test->fold->bends->len; i++)
    if (rises_with (test, bend, i))
      bf_standing_turn (test->standing, i, fraction);
}

/* As it stands at one place of its swing. */
static BfReach
look (const Trial *trial, double fraction)
{
  BfReachTest *test = trial->test;
  const BfBendResult *bend = bf_fold_bend (test->fold, trial->bend);
  int blocker = -1;

  turn_bend (test, trial->bend, fraction);
  if (needs_bar (bend) && bend->angle_rad * fraction <= bf_deg_to_rad (BF_BAR_MOST_DEG))
    blocker = find_bar_blocker (trial, BF_BAR_WIDTH_MM);
  if (blocker >= 0)
    return fault (trial, BF_REACH_BAR, blocker, clear_width_mm (trial));
  if (fraction > 0.0 && fraction < 1.0)
    blocker = find_swing_blocker (trial);
  return fault (trial, blocker >= 0 ? BF_REACH_SWING : BF_REACH_FREE, blocker, NAN);
}

static BfReach
try_side (BfReachTest *test, guint bend, const GArray *near, BfHeldSide held)
{
  guint flange = bf_fold_bend (test->fold, bend)->face;
  int parent = bf_fold_face (test->fold, flange)->parent;
  Trial trial = { test, bend, near, held,
                  held == BF_HELD_FLANGE ? flange : (guint)MAX (parent, 0) };
  BfReach reach = fault (&trial, BF_REACH_FREE, -1, NAN);
  double hold = hold_mm (&trial);

  if (needs_bar (bf_fold_bend (test->fold, bend)) && hold < BF_BAR_HOLD_MM)
    return fault (&trial, BF_REACH_HOLD, -1, hold);
  for (guint i = 0; i <= SWING_STEPS && reach.fault == BF_REACH_FREE; i++)
    reach = look (&trial, (double)i / SWING_STEPS);
  return reach;
}

/* The side with more metal is the easier one to hold. near: what swings is among it. */
static BfHeldSide
heavier_side (const BfReachTest *test, guint bend, const GArray *near)
{
  double moving = 0.0;

  for (guint i = 0; i < near->len; i++)
    if (bf_standing_hangs_on (test->standing, g_array_index (near, guint, i), bend))
      moving += test->areas_mm2[g_array_index (near, guint, i)];
  return moving > test->all_mm2 / 2.0 ? BF_HELD_FLANGE : BF_HELD_PARENT;
}

/* All faces, where more than this bend moves. */
static GArray *
near_faces (const BfReachTest *test, guint bend)
{
  GArray *all;

  if (test->groups[bend] == 0)
    return bf_standing_near (test->standing, bend, BF_BAR_WIDTH_MM + BF_BAR_HEIGHT_MM);
  all = g_array_new (FALSE, FALSE, sizeof (guint));
  for (guint i = 0; i < test->fold->faces->len; i++)
    g_array_append_val (all, i);
  return all;
}

BfReach
bf_reach_try (BfReachTest *test, guint bend, const gboolean *made)
{
  g_autoptr (GArray) near = NULL;
  BfHeldSide first, second;
  BfReach one, other;

  for (guint i = 0; i < test->fold->bends->len; i++)
    if (!rises_with (test, bend, i))
      bf_standing_turn (test->standing, i, made[i] ? 1.0 : 0.0);
  near = near_faces (test, bend);
  first = heavier_side (test, bend, near);
  second = first == BF_HELD_PARENT ? BF_HELD_FLANGE : BF_HELD_PARENT;
  one = try_side (test, bend, near, first);
  if (one.fault == BF_REACH_FREE || !needs_bar (bf_fold_bend (test->fold, bend)))
    return one;
  other = try_side (test, bend, near, second);
  if (one.fault == BF_REACH_HOLD && other.fault == BF_REACH_HOLD)
    return other.clear_mm > one.clear_mm ? other : one;
  return other.fault == BF_REACH_FREE || one.fault == BF_REACH_HOLD ? other : one;
}
