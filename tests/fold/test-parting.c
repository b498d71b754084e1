/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Flanges that want the same metal of the blank, and have half of it each. Sizes by hand: the
 * shared metal is halved at the line as far from one bend line as from the other. */

#include <stdlib.h>
#include <string.h>

#include "clip-areas.h"
#include "core/edit.h"
#include "core/part-file.h"
#include "fold/fold.h"
#include "fold/outline.h"
#include "look-up.h"
#include "make-any.h"
#include "make-crowded.h"
#include "make-part.h"
#include "ring-valid.h"

#define GAP_MM 0.5
#define AREA_MM2 1e-6

/* A cut beside the other flange's own edge stops this short of a whole gap. */
#define SHORT_MM 1e-3

/* Places are rounded to 1e-8 mm along some metres of edges. */
#define ROUNDING_MM2 1e-4

G_DEFINE_AUTOPTR_CLEANUP_FUNC (ClipPieces, clip_pieces_free)

/* ---- what they are ------------------------------------------------------------------------ */

/* Two walls that meet at a corner, and on each an ear across the corner. */
static BfPart *
two_ears (double length_mm)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, 60.0, 90.0);
  add_flange (part, "right", 1, 60.0, 90.0);
  add_ear (part, "a", "front", BF_EDGE_END, length_mm)->turn = BF_TURN_DOWN;
  add_ear (part, "b", "right", BF_EDGE_START, length_mm)->turn = BF_TURN_DOWN;
  return part;
}

/* The part with the fix of the first blank-overlaps-itself that is such a fix, or NULL. */
static BfPart *
with_fix (BfPart *part, BfFixKind kind, BfCheck *cured)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint i = 0; i < fold->checks->len; i++)
    {
      const BfCheck *check = bf_fold_check (fold, i);

      if (strcmp (check->code, "blank-overlaps-itself") != 0 || check->fix.kind != kind)
        continue;
      if (cured != NULL)
        *cured = *check;
      return bf_fix_apply (part, &check->fix, NULL);
    }
  return NULL;
}

static double
area_of (const BfFold *fold, const char *face)
{
  return bf_ring_area (find_face (fold, face)->outline);
}

/* ---- by hand ------------------------------------------------------------------------------ */

/* Both walls end half a gap before the middle of the bay, which is as far from either bend. */
static void
test_bay (void)
{
  g_autoptr (BfPart) part = make_bay ();
  g_autoptr (BfPart) shared = with_fix (part, BF_FIX_SHARE_METAL, NULL);
  g_autoptr (BfFold) fold = bf_fold (shared), before = bf_fold (part);
  BfBox left = bf_box_empty (), right = bf_box_empty ();

  bf_ring_extend_box (find_face (fold, "left")->outline, &left);
  bf_ring_extend_box (find_face (fold, "right")->outline, &right);
  g_assert_cmpfloat_with_epsilon (left.max.x, 150.0 - GAP_MM / 2.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (right.min.x, 150.0 + GAP_MM / 2.0, 1e-9);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_cmpuint (fold->blank.n_outer, ==, 1);
  /* Of 60 asked: half the bay of 100, less half a gap, and the deduction 2·3 − π/2·2.13 of a bend.
   */
  g_assert_cmpfloat_with_epsilon (find_check (fold, "metal-shared", "left")->found,
                                  50.0 - GAP_MM / 2.0 + 6.0 - G_PI_2 * 2.13, 1e-9);
  g_assert_cmpfloat_with_epsilon (find_check (fold, "metal-shared", "right")->needed, 60.0, 1e-9);
  g_assert_null (find_check (before, "metal-shared", NULL));
}

/* The ears share a square along its diagonal: of its side s, less half a gap at the diagonal and a
 * gap at the two sides that lie in the other one, each gives up a triangle and a strip. */
static void
test_ears (void)
{
  g_autoptr (BfPart) part = two_ears (30.0);
  g_autoptr (BfFold) before = bf_fold (part);
  g_autoptr (BfPart) shared = with_fix (part, BF_FIX_SHARE_METAL, NULL);
  g_autoptr (BfFold) fold = bf_fold (shared);
  BfBox a = bf_box_empty (), b = bf_box_empty ();
  double s, leg;

  bf_ring_extend_box (find_face (before, "a")->outline, &a);
  bf_ring_extend_box (find_face (before, "b")->outline, &b);
  s = a.max.x - b.min.x;
  /* A triangle with two square legs: the one at the tip, from the diagonal to the other ear's edge.
   */
  leg = s + GAP_MM - SHORT_MM - 0.0;
  g_assert_cmpfloat (s, >, 20.0);
  g_assert_cmpfloat_with_epsilon (a.max.y - b.min.y, s, 1e-9);
  g_assert_cmpfloat (area_of (before, "a") - area_of (fold, "a"), >, s * s / 2.0);
  g_assert_cmpfloat (area_of (before, "a") - area_of (fold, "a"), <, leg * leg / 2.0 + s * GAP_MM);
  g_assert_cmpfloat_with_epsilon (area_of (fold, "a"), area_of (fold, "b"), AREA_MM2);
  g_assert_cmpfloat_with_epsilon (area_of (fold, "front"), area_of (before, "front"), AREA_MM2);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
}

/* Everything that is drawn from the fold has less metal, by what was given up. */
static void
test_all_follow (void)
{
  g_autoptr (BfPart) part = two_ears (30.0);
  g_autoptr (BfPart) shared = with_fix (part, BF_FIX_SHARE_METAL, NULL);
  g_autoptr (BfPart) middle = bf_part_copy (shared);
  g_autoptr (BfFold) before = bf_fold (part), fold = bf_fold (shared), other;
  double given =
      area_of (before, "a") - area_of (fold, "a") + area_of (before, "b") - area_of (fold, "b");

  g_assert_cmpfloat_with_epsilon (
      before->blank.area_before_cuts_mm2 - fold->blank.area_before_cuts_mm2, given, AREA_MM2);
  g_assert_cmpfloat_with_epsilon (before->formed.volume_mm3 - fold->formed.volume_mm3, given * 1.5,
                                  1e-5);
  middle->bend.allowance.k = 0.5;
  other = bf_fold (middle);
  g_assert_cmpfloat_with_epsilon (
      other->formed.volume_mm3 / (other->blank.area_before_cuts_mm2 * 1.5), 1.0, 1e-9);
}

/* The seam at the bay's corner ends where the wall does: 7.6 mm of its side, which runs aslant, is
 * gone, and with it as much of the seam as its length was measured by. */
static void
test_seam_ends (void)
{
  g_autoptr (BfPart) part = make_bay ();
  g_autoptr (BfPart) shared = NULL;
  g_autoptr (BfFold) before = NULL, fold = NULL;

  add_flange (part, "bottom", 4, 40.0, 90.0);
  before = bf_fold (part);
  shared = with_fix (part, BF_FIX_SHARE_METAL, NULL);
  g_assert_nonnull (shared);
  fold = bf_fold (shared);
  g_assert_cmpuint (fold->seams->len, ==, 2);
  for (guint i = 0; i < 2; i++)
    {
      const BfSeam *seam = bf_fold_seam (fold, i), *old = bf_fold_seam (before, i);

      g_assert_cmpstr (seam->before, ==, old->before);
      if (strcmp (seam->after, "left") == 0)
        g_assert_cmpfloat (seam->length_mm, <, old->length_mm - 5.0);
      g_assert_cmpfloat (seam->length_mm, >, 20.0);
    }
}

/* ---- where it is not ---------------------------------------------------------------------- */

/* Ears that reach past each other would each be parted in two: nothing of that is offered. */
static void
test_not_clean (void)
{
  g_autoptr (BfPart) part = two_ears (80.0);
  g_autoptr (BfPart) shared = with_fix (part, BF_FIX_SHARE_METAL, NULL);
  g_autoptr (BfPart) asked = bf_edit_share_metal (part, "a", "b");
  g_autoptr (BfFold) fold = bf_fold (part), same = bf_fold (asked);

  g_assert_nonnull (find_check (fold, "blank-overlaps-itself", NULL));
  g_assert_null (shared);
  g_assert_nonnull (find_check (same, "blank-overlaps-itself", NULL));
  g_assert_cmpfloat_with_epsilon (area_of (fold, "a"), area_of (same, "a"), 1e-12);
}

/* A lip on one wall reaches into the other: the wall's tip is a bend, and no cut goes there. The
 * wall is shortened instead, to what the sentence says. */
static void
test_shortened (void)
{
  g_autoptr (BfPart) part = make_bay ();
  BfFlange *left = g_ptr_array_index (part->flanges, 0);
  g_autoptr (BfPart) shorter = NULL;
  g_autoptr (BfFold) fold = NULL;
  BfCheck check;

  left->length_mm = 50.0;
  add_lip (part, "lip", "left", 10.0, 90.0);
  shorter = with_fix (part, BF_FIX_FLANGE_LENGTH, &check);
  g_assert_nonnull (shorter);
  fold = bf_fold (shorter);
  g_assert_null (find_check (fold, "blank-overlaps-itself", NULL));
}

/* A pair that shares nothing changes nothing. */
static void
test_nothing_shared (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) asked = bf_edit_share_metal (part, "f0", "f1");
  g_autoptr (BfFold) fold = bf_fold (part), same = bf_fold (asked);
  const BfRing *a = bf_blank_ring (&fold->blank, 0), *b = bf_blank_ring (&same->blank, 0);

  g_assert_cmpuint (fold->checks->len, ==, same->checks->len);
  g_assert_cmpuint (bf_ring_size (a), ==, bf_ring_size (b));
  g_assert_true (
      memcmp (a->vertices->data, b->vertices->data, bf_ring_size (a) * sizeof (BfVertex)) == 0);
}

/* An opening in what would be given up keeps the metal where it is. */
static void
test_opening_kept (void)
{
  g_autoptr (BfPart) part = make_bay ();
  BfOpening *hole = bf_opening_new ("left", BF_OPENING_ROUND);
  g_autoptr (BfPart) shared = NULL;

  hole->at_mm = bf_vec2 (30.0, 52.0);
  hole->diameter_mm = 5.0;
  g_ptr_array_add (part->openings, hole);
  shared = with_fix (part, BF_FIX_SHARE_METAL, NULL);
  g_assert_null (shared);
}

/* Walls that no corner trims lie on each other at its foot; where its relief takes all of that,
 * no metal is wanted twice, and without the relief it is. Seeds that were found so, with 0.002 to
 * 0.16 mm² in the relief. */
static void
test_relief_takes_it (void)
{
  static const guint seeds[] = { 995, 1049, 1223, 1169, 401 };

  for (guint i = 0; i < G_N_ELEMENTS (seeds); i++)
    {
      g_autoptr (BfPart) part = make_any (seeds[i]), bare = bf_part_copy (part);
      g_autoptr (BfFold) fold = bf_fold (part), other = NULL;
      g_autofree char *fault = why_not_valid (fold->blank.rings, fold->blank.n_outer);

      g_assert_null (find_check (fold, "blank-overlaps-itself", NULL));
      g_assert_cmpstr (fault, ==, NULL);
      for (guint k = 0; k < bare->corners->len; k++)
        ((BfCorner *)g_ptr_array_index (bare->corners, k))->relief = BF_RELIEF_NONE;
      other = bf_fold (bare);
      g_assert_nonnull (find_check (other, "blank-overlaps-itself", NULL));
    }
}

/* ---- any ---------------------------------------------------------------------------------- */

static void
add_ring (ClipPieces *pieces, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_flatten (ring, 1e-4, points);
  if (points->len >= 3)
    clip_pieces_add (pieces, &((const BfVec2 *)(gpointer)points->data)->x, points->len);
}

/* The flat and the zone of a flange. */
static ClipPieces *
pieces_of (const BfFold *fold, const char *flange)
{
  ClipPieces *pieces = clip_pieces_new ();
  g_autoptr (BfRing) zone = bf_outline_zone_ring (find_bend (fold, flange));

  add_ring (pieces, find_face (fold, flange)->outline);
  add_ring (pieces, zone);
  return pieces;
}

/* What two flanges both want, by another polygon library: what their areas are more than their
 * union. */
static double
shared_mm2 (const BfFold *fold, const char *a, const char *b)
{
  g_autoptr (ClipPieces) first = pieces_of (fold, a), second = pieces_of (fold, b);
  g_autoptr (ClipPieces) both = pieces_of (fold, a);
  g_autoptr (BfRing) zone = bf_outline_zone_ring (find_bend (fold, b));

  add_ring (both, find_face (fold, b)->outline);
  add_ring (both, zone);
  return clip_union_area (first) + clip_union_area (second) - clip_union_area (both);
}

static gboolean
same_ring (const BfRing *a, const BfRing *b)
{
  return bf_ring_size (a) == bf_ring_size (b) &&
         memcmp (a->vertices->data, b->vertices->data, bf_ring_size (a) * sizeof (BfVertex)) == 0;
}

/* Only the two give metal up: all that both wanted, and no more than a gap round it. */
static void
check_given (const BfFold *before, const BfFold *after, const char *a, const char *b)
{
  double shared = shared_mm2 (before, a, b), given = 0.0, around = 0.0;
  double gap = before->part->cutting.by >= BF_CUTTING_TABLE ? 0.2 : 0.5;

  for (guint i = 0; i < before->faces->len; i++)
    {
      const BfFace *old = bf_fold_face (before, i), *new = bf_fold_face (after, i);

      if (strcmp (old->id, a) == 0 || strcmp (old->id, b) == 0)
        {
          given += bf_ring_area (old->outline) - bf_ring_area (new->outline);
          around += bf_ring_length (old->outline);
        }
      else
        g_assert_true (same_ring (old->outline, new->outline));
    }
  g_assert_cmpfloat (shared, >, 0.0);
  g_assert_cmpfloat_with_epsilon (shared_mm2 (after, a, b), 0.0, ROUNDING_MM2);
  g_assert_cmpfloat (given, >, shared - ROUNDING_MM2);
  g_assert_cmpfloat (given, <, shared + gap * around);
}

/* A file, a mirror and another order change nothing. */
static void
check_stays (const BfPart *part, const BfFold *fold)
{
  g_autofree char *text = bf_part_to_text (part);
  g_autoptr (BfPart) read = bf_part_from_text (text, -1, NULL), mirrored = bf_part_mirror (part);
  g_autoptr (BfPart) turned = bf_part_copy (part);
  g_autoptr (BfFold) again = bf_fold (read), other = bf_fold (mirrored), swapped = NULL;

  for (guint i = 0; i < turned->parted->len; i++)
    {
      BfParted *parted = g_ptr_array_index (turned->parted, turned->parted->len - 1 - i);
      char *kept = parted->ids[0];

      parted->ids[0] = parted->ids[1];
      parted->ids[1] = kept;
    }
  swapped = bf_fold (turned);
  g_assert_cmpuint (again->blank.rings->len, ==, fold->blank.rings->len);
  for (guint i = 0; i < fold->blank.rings->len; i++)
    {
      g_assert_true (same_ring (bf_blank_ring (&fold->blank, i), bf_blank_ring (&again->blank, i)));
      g_assert_true (
          same_ring (bf_blank_ring (&fold->blank, i), bf_blank_ring (&swapped->blank, i)));
    }
  g_assert_cmpfloat_with_epsilon (other->blank.area_before_cuts_mm2,
                                  fold->blank.area_before_cuts_mm2, 1e-5);
}

/* Makes such fixes until there is none left. Returns how many. */
static guint
share_all (BfPart *asked)
{
  g_autoptr (BfPart) part = bf_part_ref (asked);
  g_autoptr (BfFold) fold = bf_fold (part);
  guint n = 0;

  for (;; n++)
    {
      guint n_must = bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX);
      g_autoptr (BfPart) next = with_fix (part, BF_FIX_SHARE_METAL, NULL);
      g_autofree char *fault = NULL;
      BfFold *shared;
      const BfParted *pair;

      if (next == NULL)
        break;
      shared = bf_fold (next);
      pair = g_ptr_array_index (next->parted, next->parted->len - 1);
      fault = why_not_valid (shared->blank.rings, shared->blank.n_outer);
      g_assert_cmpstr (fault, ==, NULL);
      g_assert_cmpuint (bf_fold_count_checks (shared, BF_SEVERITY_MUST_FIX), <, n_must);
      check_given (fold, shared, pair->ids[0], pair->ids[1]);
      bf_fold_unref (fold);
      fold = shared;
      bf_part_unref (part);
      part = bf_part_ref (next);
    }
  if (n > 0)
    check_stays (part, fold);
  return n;
}

static void
test_random (void)
{
  guint n_parts = g_test_thorough () ? 300 : 6, n = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_crowded (seed);

      g_test_message ("seed %u", seed);
      n += share_all (part);
    }
  g_test_message ("%u shared of %u parts", n, n_parts);
  g_assert_cmpuint (n, >, n_parts / 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/parting/bay", test_bay);
  g_test_add_func ("/parting/ears", test_ears);
  g_test_add_func ("/parting/all-follow", test_all_follow);
  g_test_add_func ("/parting/seam-ends", test_seam_ends);
  g_test_add_func ("/parting/not-clean", test_not_clean);
  g_test_add_func ("/parting/shortened", test_shortened);
  g_test_add_func ("/parting/nothing-shared", test_nothing_shared);
  g_test_add_func ("/parting/opening-kept", test_opening_kept);
  g_test_add_func ("/parting/relief-takes-it", test_relief_takes_it);
  g_test_add_func ("/parting/random", test_random);
  return g_test_run ();
}
