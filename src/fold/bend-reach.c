/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-reach.h"

#include "fold/bend-groups.h"
#include "fold/convex.h"
#include "fold/formed.h"
#include "fold/layout.h"

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

#define ROUND_SAGITTA_MM 0.05

struct BfReachTest
{
  const BfFold *fold;
  GArray **parts;    /* of each face: BfConvexPart in the blank */
  double *areas_mm2; /* of each face */
  double *fractions; /* of each bend */
  guint *groups;     /* of each bend: see fold/bend-groups.h */
  GArray **pieces;   /* of each face, as it stands now: BfConvex */
  BfSolid *slabs;    /* of each face, as it stands now */
  double give_mm;
};

/* One bend being tried, one side of it held. */
typedef struct
{
  BfReachTest *test;
  guint bend;
  BfHeldSide held;
  guint held_face;
} Trial;

/* ---- the metal ---------------------------------------------------------------------------- */

static GArray *
parts_of_face (const BfRing *outline)
{
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  if (bf_ring_size (outline) < 3)
    return parts;
  bf_ring_flatten (outline, ROUND_SAGITTA_MM, points);
  bf_convex_parts (points, parts);
  return parts;
}

BfReachTest *
bf_reach_test_new (const BfFold *fold)
{
  BfReachTest *test = g_new0 (BfReachTest, 1);
  guint n = fold->faces->len;

  test->fold = fold;
  test->parts = g_new0 (GArray *, n);
  test->pieces = g_new0 (GArray *, n);
  test->areas_mm2 = g_new0 (double, n);
  test->fractions = g_new0 (double, fold->bends->len + 1);
  test->slabs = g_new0 (BfSolid, n);
  test->groups = g_new0 (guint, fold->bends->len + 1);
  bf_bend_groups (fold, test->groups);
  test->give_mm = MIN (GIVE_MM, fold->part->metal.thickness_mm / 4.0);
  for (guint i = 0; i < n; i++)
    {
      test->parts[i] = parts_of_face (bf_fold_face (fold, i)->outline);
      test->pieces[i] = g_array_new (FALSE, FALSE, sizeof (BfConvex));
      test->areas_mm2[i] = bf_ring_area (bf_fold_face (fold, i)->outline);
    }
  return test;
}

void
bf_reach_test_free (BfReachTest *test)
{
  for (guint i = 0; i < test->fold->faces->len; i++)
    {
      g_array_unref (test->parts[i]);
      g_array_unref (test->pieces[i]);
    }
  g_free (test->parts);
  g_free (test->pieces);
  g_free (test->areas_mm2);
  g_free (test->fractions);
  g_free (test->groups);
  g_free (test->slabs);
  g_free (test);
}

static void
stand_face (BfReachTest *test, const BfSolid *slab)
{
  GArray *pieces = test->pieces[slab->face];

  test->slabs[slab->face] = *slab;
  for (guint i = 0; i < test->parts[slab->face]->len; i++)
    {
      BfConvexPart part = g_array_index (test->parts[slab->face], BfConvexPart, i);
      BfConvex piece;

      for (guint k = 0; k < part.n; k++)
        part.corners[k] = bf_solid_local (slab, part.corners[k]);
      bf_convex_from_slab (&slab->frame, &part, test->fold->part->metal.thickness_mm, &piece);
      g_array_append_val (pieces, piece);
    }
}

/* What is folded double at a corner stands in no bar's way: it is closed by hand. */
static gboolean
is_face (const BfFold *fold, const BfSolid *solid)
{
  return solid->kind == BF_SOLID_SLAB &&
         solid->outline == bf_fold_face (fold, solid->face)->outline;
}

/* Puts every face where it stands by test->fractions. */
static void
stand (BfReachTest *test)
{
  g_auto (BfFormed) formed = { .solids = NULL };

  for (guint i = 0; i < test->fold->faces->len; i++)
    g_array_set_size (test->pieces[i], 0);
  bf_formed_build_each (test->fold->layout, test->fold->faces, test->fractions, &formed);
  for (guint i = 0; i < formed.solids->len; i++)
    if (is_face (test->fold, bf_formed_solid (&formed, i)))
      stand_face (test, bf_formed_solid (&formed, i));
}

static gboolean
pieces_hit (const GArray *a, const GArray *b, double give_mm)
{
  for (guint i = 0; i < a->len; i++)
    for (guint k = 0; k < b->len; k++)
      if (bf_convex_depth (&g_array_index (a, BfConvex, i), &g_array_index (b, BfConvex, k),
                           give_mm) > give_mm)
        return TRUE;
  return FALSE;
}

/* TRUE where the face hangs on that bend, itself or by others. */
static gboolean
hangs_on (const BfFold *fold, guint face, guint bend)
{
  for (int i = (int)face; i >= 0; i = bf_fold_face (fold, (guint)i)->parent)
    if (bf_fold_face (fold, (guint)i)->bend == (int)bend)
      return TRUE;
  return FALSE;
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
  const BfSolid *slab = &trial->test->slabs[trial->held_face];
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
  for (guint i = 0; i < test->fold->faces->len; i++)
    if (i != flange && (int)i != parent && pieces_hit (bars, test->pieces[i], test->give_mm))
      return (int)i;
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
  const GArray *parts = trial->test->parts[trial->held_face];
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

/* The first face that swings into one that is held, or −1; where it hits in the
 * end is not for here to say. */
static int
find_swing_blocker (const Trial *trial)
{
  const BfReachTest *test = trial->test;
  guint flange = bf_fold_bend (test->fold, trial->bend)->face;
  int parent = bf_fold_face (test->fold, flange)->parent;

  for (guint a = 0; a < test->fold->faces->len; a++)
    for (guint b = 0; hangs_on (test->fold, a, trial->bend) && b < test->fold->faces->len; b++)
      if (!hangs_on (test->fold, b, trial->bend) && !(a == flange && (int)b == parent) &&
          pieces_hit (test->pieces[a], test->pieces[b], test->give_mm))
        return a == flange ? (int)b : (int)a;
  return -1;
}

static BfReach
fault (const Trial *trial, BfReachFault what, int blocker, double clear_mm)
{
  return (BfReach){ trial->held, what, (guint)MAX (blocker, 0), clear_mm };
}

/* Turns the bend, and what rises in step with it. */
static void
turn_bend (BfReachTest *test, guint bend, double fraction)
{
  for (guint i = 0; i < test->fold->bends->len; i++)
    if (i == bend || (test->groups[bend] > 0 && test->groups[i] == test->groups[bend]))
      test->fractions[i] = fraction;
}

/* As it stands at one place of its swing. */
static BfReach
look (const Trial *trial, double fraction)
{
  BfReachTest *test = trial->test;
  const BfBendResult *bend = bf_fold_bend (test->fold, trial->bend);
  int blocker = -1;

  turn_bend (test, trial->bend, fraction);
  stand (test);
  if (needs_bar (bend) && bend->angle_rad * fraction <= bf_deg_to_rad (BF_BAR_MOST_DEG))
    blocker = find_bar_blocker (trial, BF_BAR_WIDTH_MM);
  if (blocker >= 0)
    return fault (trial, BF_REACH_BAR, blocker, clear_width_mm (trial));
  if (fraction > 0.0 && fraction < 1.0)
    blocker = find_swing_blocker (trial);
  return fault (trial, blocker >= 0 ? BF_REACH_SWING : BF_REACH_FREE, blocker, NAN);
}

static BfReach
try_side (BfReachTest *test, guint bend, BfHeldSide held)
{
  guint flange = bf_fold_bend (test->fold, bend)->face;
  int parent = bf_fold_face (test->fold, flange)->parent;
  Trial trial = { test, bend, held, held == BF_HELD_FLANGE ? flange : (guint)MAX (parent, 0) };
  BfReach reach = fault (&trial, BF_REACH_FREE, -1, NAN);
  double hold = hold_mm (&trial);

  if (needs_bar (bf_fold_bend (test->fold, bend)) && hold < BF_BAR_HOLD_MM)
    return fault (&trial, BF_REACH_HOLD, -1, hold);
  for (guint i = 0; i <= SWING_STEPS && reach.fault == BF_REACH_FREE; i++)
    reach = look (&trial, (double)i / SWING_STEPS);
  return reach;
}

/* The side with more metal is the easier one to hold. */
static BfHeldSide
heavier_side (const BfReachTest *test, guint bend)
{
  double moving = 0.0, all = 0.0;

  for (guint i = 0; i < test->fold->faces->len; i++)
    {
      all += test->areas_mm2[i];
      if (hangs_on (test->fold, i, bend))
        moving += test->areas_mm2[i];
    }
  return moving > all / 2.0 ? BF_HELD_FLANGE : BF_HELD_PARENT;
}

BfReach
bf_reach_try (BfReachTest *test, guint bend, const gboolean *made)
{
  BfHeldSide first = heavier_side (test, bend);
  BfHeldSide second = first == BF_HELD_PARENT ? BF_HELD_FLANGE : BF_HELD_PARENT;
  BfReach one, other;

  for (guint i = 0; i < test->fold->bends->len; i++)
    test->fractions[i] = made[i] ? 1.0 : 0.0;
  one = try_side (test, bend, first);
  if (one.fault == BF_REACH_FREE || !needs_bar (bf_fold_bend (test->fold, bend)))
    return one;
  other = try_side (test, bend, second);
  if (one.fault == BF_REACH_HOLD && other.fault == BF_REACH_HOLD)
    return other.clear_mm > one.clear_mm ? other : one;
  return other.fault == BF_REACH_FREE || one.fault == BF_REACH_HOLD ? other : one;
}
