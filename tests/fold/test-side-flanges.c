/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Flanges on the sides of flanges, and on those again. */

#include "core/tolerance.h"
#include "look-up.h"
#include "make-part.h"

#define HAND_MM 1e-6

/* R = t = 1.5, K 0.42, 90°. */
#define SETBACK_MM 3.0
#define BA_MM (G_PI / 2.0 * (1.5 + 0.42 * 1.5))

static const BfEdgeKind sides[] = { BF_EDGE_START, BF_EDGE_END };

static BfPart *
bracket (void)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, 40.0, 90.0);
  return part;
}

/* ---- one of them, by hand ------------------------------------------------------------------ */

/* The wall ends at the ear's tangent, 3 in from its drawn side, from its own tangent to its tip;
 * the ear's flat begins BA further out and is its length less the setback wide. */
static void
test_flat (void)
{
  for (guint i = 0; i < 2; i++)
    {
      g_autoptr (BfPart) part = bracket ();
      g_autoptr (BfFold) fold = NULL;
      const BfBendResult *bend;
      double x = i == 0 ? 0.0 : 200.0, out = i == 0 ? -1.0 : 1.0;
      double root = SETBACK_MM - BA_MM, tip = root - 37.0;

      add_ear (part, "ear", "front", sides[i], 20.0);
      fold = bf_fold (part);
      bend = find_bend (fold, "ear");
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
      g_assert_cmpfloat_with_epsilon (bf_ring_area (find_face (fold, "front")->outline),
                                      197.0 * 37.0, HAND_MM);
      g_assert_cmpfloat_with_epsilon (bf_ring_area (find_face (fold, "ear")->outline), 17.0 * 37.0,
                                      HAND_MM);
      assert_at (bend->zone[i == 0 ? 0 : 1], bf_vec2 (x - out * SETBACK_MM, root), HAND_MM);
      assert_at (bend->zone[i == 0 ? 1 : 0], bf_vec2 (x - out * SETBACK_MM, tip), HAND_MM);
      assert_at (bend->zone[i == 0 ? 2 : 3], bf_vec2 (x - out * (SETBACK_MM - BA_MM), tip),
                 HAND_MM);
      g_assert_cmpint (find_face (fold, "ear")->parent, ==, 2); /* by id */
    }
}

/* Bent, the ear stands at the wall's end and reaches its length over the base, or away from it. */
static void
test_formed (void)
{
  for (guint i = 0; i < 4; i++)
    {
      g_autoptr (BfPart) part = bracket ();
      g_autoptr (BfFold) fold = NULL;
      BfFlange *ear = add_ear (part, "ear", "front", sides[i % 2], 20.0);
      const BfBendResult *bend;
      BfVec2 out, tip;
      BfVec3 p;

      ear->turn = i < 2 ? BF_TURN_UP : BF_TURN_DOWN;
      fold = bf_fold (part);
      bend = find_bend (fold, "ear");
      out = bf_vec2_unit (bf_vec2_sub (bend->zone[3], bend->zone[0]));
      tip = bf_vec2_along (bend->zone[3], out, 17.0);
      p = bf_fold_place (fold, find_bend (fold, "ear")->face, tip);
      /* Turned up it stands 20 in from the wall's outer face, y = 0; turned down 20 out from the
       * inner, y = 1.5. Its marking side is t inside the wall's end, or at it. */
      g_assert_cmpfloat_with_epsilon (p.y, i < 2 ? 20.0 : -18.5, HAND_MM);
      g_assert_cmpfloat_with_epsilon (i % 2 == 0 ? p.x : 200.0 - p.x, i < 2 ? 1.5 : 0.0, HAND_MM);
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
    }
}

/* Where the ear's bend begins at the wall's own, a relief parts the two; inset, it is in the wall.
 */
static void
test_root_relief (void)
{
  for (guint i = 0; i < 4; i++)
    {
      g_autoptr (BfPart) part = bracket ();
      g_autoptr (BfFold) fold = NULL;
      BfFlange *ear = add_ear (part, "ear", "front", sides[i % 2], 20.0);
      const BfRelief *relief;
      double inset = i < 2 ? 0.0 : 8.0;

      *(i % 2 == 0 ? &ear->start_mm : &ear->end_mm) = inset;
      part->cutting.by = i < 2 ? BF_CUTTING_TABLE : BF_CUTTING_DISC;
      fold = bf_fold (part);
      relief = find_relief (fold, "ear", 0);
      g_assert_nonnull (relief);
      g_assert_null (find_relief (fold, "ear", 1));
      g_assert_cmpint (relief->kind, ==, BF_RELIEF_KIND_END);
      g_assert_cmpfloat (fold->blank.area_mm2, <, fold->blank.area_before_cuts_mm2 - 1.0);
      g_assert_cmpuint (fold->blank.rings->len, ==, 1);
      if (i >= 2)
        g_assert_cmpfloat_with_epsilon (relief->at.y, SETBACK_MM - BA_MM - inset, HAND_MM);
    }
}

/* ---- depth --------------------------------------------------------------------------------- */

/* A strip wound up of flanges, each on a side or the tip of the last. */
static void
test_depth (void)
{
  static const BfEdgeKind edges[] = { BF_EDGE_END, BF_EDGE_TIP, BF_EDGE_START, BF_EDGE_END };
  g_autoptr (BfPart) part = make_rectangle (60.0, 40.0);
  g_autoptr (BfFold) fold = NULL;
  char on[] = "a", id[] = "b";

  add_flange (part, "a", 0, 60.0, 30.0);
  for (guint i = 0; i < G_N_ELEMENTS (edges); i++, on[0]++, id[0]++)
    {
      BfFlange *flange = add_ear (part, id, on, edges[i], 30.0);

      flange->angle_deg = 30.0;
      flange->turn = i % 2 == 0 ? BF_TURN_UP : BF_TURN_DOWN;
    }
  part->bend.allowance.k = 0.5;
  fold = bf_fold (part);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_cmpuint (fold->faces->len, ==, 6);
  for (guint i = 1; i < 6; i++)
    g_assert_cmpint (bf_fold_face (fold, i)->parent, ==, (int)i - 1);
  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, 1.5 * fold->blank.area_before_cuts_mm2,
                                  1e-6);
}

/* ---- corners of a flange ------------------------------------------------------------------- */

/* The face's nearest edge to where the other's inside plane stands: a wall of 90° on a wall of 90°.
 */
static double
least_gap_mm (const BfFold *fold, const char *id, BfVec3 through, BfVec3 normal)
{
  const BfFace *face = find_face (fold, id);
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < bf_ring_size (face->outline); i++)
    {
      BfVec3 p = bf_fold_place (fold, bf_fold_bend (fold, (guint)face->bend)->face,
                                bf_ring_vertex (face->outline, i)->p);

      least = MIN (least, bf_vec3_dot (normal, bf_vec3_sub (p, through)));
    }
  return least;
}

/* A lip and an ear that meet at the wall's corner close as walls do at a base's: half the gap's
 * share each, a relief where their bends meet, a seam. */
static void
test_meeting (void)
{
  for (guint i = 0; i < 2; i++)
    {
      g_autoptr (BfPart) part = bracket ();
      g_autoptr (BfFold) fold = NULL;
      const char *where = i == 0 ? "front:0" : "front:1";
      const BfSeam *seam;

      add_ear (part, "ear", "front", sides[i], 20.0);
      add_lip (part, "lip", "front", 20.0, 90.0);
      fold = bf_fold (part);
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
      g_assert_nonnull (find_relief (fold, where, 0));
      g_assert_cmpint (find_relief (fold, where, 0)->kind, ==, BF_RELIEF_KIND_CORNER);
      g_assert_cmpuint (fold->seams->len, ==, 1);
      seam = bf_fold_seam (fold, 0);
      g_assert_cmpstr (seam->before, ==, i == 0 ? "ear" : "lip");
      g_assert_cmpfloat_with_epsilon (seam->gap_mm, 0.5, HAND_MM);
      g_assert_cmpfloat_with_epsilon (seam->length_mm, 17.0, HAND_MM);
      /* The lip's inside lies 37 above the base's, the ear's inside 1.5 in: each stays √2/4 off
       * that line (the corner's 0.5 over two, by the sine of half a right angle). */
      g_assert_cmpfloat_with_epsilon (
          least_gap_mm (fold, "ear", bf_vec3 (0.0, 0.0, 37.0), bf_vec3 (0.0, 0.0, -1.0)),
          0.25 * G_SQRT2, HAND_MM);
      g_assert_cmpfloat_with_epsilon (least_gap_mm (fold, "lip",
                                                    bf_vec3 (i == 0 ? 1.5 : 198.5, 0.0, 0.0),
                                                    bf_vec3 (i == 0 ? 1.0 : -1.0, 0.0, 0.0)),
                                      0.25 * G_SQRT2, HAND_MM);
    }
}

/* What is asked at a flange's corner is heeded where two flanges meet there. */
static void
test_meeting_asked (void)
{
  g_autoptr (BfPart) part = bracket ();
  g_autoptr (BfFold) fold = NULL;
  BfCorner *corner = bf_corner_new ("front", 1);

  add_ear (part, "ear", "front", BF_EDGE_END, 20.0);
  add_lip (part, "lip", "front", 20.0, 90.0);
  corner->gap_mm = 1.25;
  corner->relief = BF_RELIEF_NONE;
  g_ptr_array_add (part->corners, corner);
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (bf_fold_seam (fold, 0)->gap_mm, 1.25, HAND_MM);
  g_assert_null (find_relief (fold, "front:1", 0));
  g_assert_nonnull (find_check (fold, "relief-missing", "front:1"));
  g_assert_null (find_check (fold, "corner-not-heeded", NULL));
}

/* ---- leaning sides -------------------------------------------------------------------------- */

/* On a side that leans by 20° the ear's bend lies along it; the zone ends where its tangent meets
 * the root line, S·tan 20° up, and the ear is as long as the side. */
static void
test_taper (void)
{
  g_autoptr (BfPart) part = bracket ();
  g_autoptr (BfFold) fold = NULL;
  const BfBendResult *bend;
  double lean = bf_deg_to_rad (20.0), length;

  ((BfFlange *)g_ptr_array_index (part->flanges, 0))->start_taper_deg = 20.0;
  add_ear (part, "ear", "front", BF_EDGE_START, 20.0);
  fold = bf_fold (part);
  bend = find_bend (fold, "ear");
  length = 37.0 / cos (lean) - SETBACK_MM * tan (lean);
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (bend->line[0], bend->line[1]), length, HAND_MM);
  g_assert_cmpfloat_with_epsilon (fabs (bend->line[1].x - bend->line[0].x) / length, sin (lean),
                                  HAND_MM);
  g_assert_cmpfloat_with_epsilon (bend->zone[0].y, SETBACK_MM - BA_MM, HAND_MM);
}

/* ---- checks -------------------------------------------------------------------------------- */

/* Two bends of 3 leave nothing of a wall 5 wide. */
static void
test_too_narrow (void)
{
  g_autoptr (BfPart) part = make_rectangle (5.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  const BfCheck *check;

  add_flange (part, "front", 0, 40.0, 90.0);
  for (guint i = 0; i < 2; i++)
    add_ear (part, i == 0 ? "left" : "right", "front", sides[i], 20.0);
  fold = bf_fold (part);
  check = find_check (fold, "flange-too-narrow", "front");
  g_assert_nonnull (check);
  g_assert_cmpfloat_with_epsilon (check->found, -1.0, HAND_MM);
}

/* ---- whatever the part ---------------------------------------------------------------------- */

/* With -m thorough many more. */
#define N_PARTS 80
#define N_THOROUGH 800

static gboolean
is_sound (const BfFold *fold)
{
  return bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) == 0;
}

static gboolean
has_ears (const BfPart *part)
{
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    if (bf_part_flange (part, i)->edge == BF_EDGE_START ||
        bf_part_flange (part, i)->edge == BF_EDGE_END)
      return TRUE;
  return FALSE;
}

/* What the bend on a flange's whole tip takes of it; beside one that is inset the tip stands as
 * drawn. */
static double
carried_mm (const BfFold *fold, const char *id)
{
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      const BfFlange *flange = bf_part_find_flange (fold->part, bend->flange);

      if (flange->edge == BF_EDGE_TIP && strcmp (flange->on, id) == 0)
        return MAX (flange->start_mm, flange->end_mm) > 0.0 ? 0.0 : bend->setback_mm;
    }
  return 0.0;
}

/* A tip stands at the asked length from the drawn line, folded back. */
static void
check_lengths (guint seed, const BfFold *fold)
{
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      const BfFlange *flange = bf_part_find_flange (fold->part, bend->flange);
      const BfRing *outline = bf_fold_face (fold, bend->face)->outline;
      BfVec2 out = bf_vec2_unit (bf_vec2_sub (bend->zone[3], bend->zone[0]));
      double tip = 0.0;

      for (guint k = 0; k < bf_ring_size (outline); k++)
        tip = MAX (tip,
                   bf_vec2_dot (out, bf_vec2_sub (bf_ring_vertex (outline, k)->p, bend->zone[3])));
      g_test_message ("seed %u flange %s", seed, bend->flange);
      g_assert_cmpfloat_with_epsilon (bend->setback_mm + tip + carried_mm (fold, flange->id),
                                      flange->length_mm, BF_TOLERANCE_SIZE_MM);
    }
}

static void
check_sums (const BfFold *fold)
{
  double flat = fold->blank.area_before_cuts_mm2 * fold->part->metal.thickness_mm, sum = 0.0;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    sum += bf_ring_area (bf_blank_ring (&fold->blank, i));
  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3 / flat, 1.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (sum, fold->blank.area_mm2, 1e-9);
  g_assert_cmpfloat (fold->blank.area_mm2, <=, fold->blank.area_before_cuts_mm2 + 1e-3);
  g_assert_cmpuint (fold->blank.n_outer, ==, 1);
}

/* Seen in a mirror, or written in another order, it is the same part. */
static void
check_other_ways (const BfPart *part, const BfFold *fold)
{
  g_autoptr (BfPart) mirrored = bf_part_mirror (part), reversed = bf_part_copy (part);
  g_autoptr (BfFold) other = bf_fold (mirrored), again = NULL;
  guint n = reversed->flanges->len;

  if (is_sound (fold)) /* else it is pieced together on a grid */
    g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2, 1e-5);
  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, other->formed.volume_mm3, 1e-5);
  for (guint i = 0; i < n / 2; i++)
    {
      gpointer kept = reversed->flanges->pdata[i];

      reversed->flanges->pdata[i] = reversed->flanges->pdata[n - 1 - i];
      reversed->flanges->pdata[n - 1 - i] = kept;
    }
  again = bf_fold (reversed);
  g_assert_cmpuint (fold->checks->len, ==, again->checks->len);
  g_assert_true (fold->blank.area_mm2 >= again->blank.area_mm2 &&
                 fold->blank.area_mm2 <= again->blank.area_mm2);
}

static void
test_random (void)
{
  guint n_parts = g_test_thorough () ? N_THOROUGH : N_PARTS, n_sound = 0, n_ears = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_random_deep (seed);
      g_autoptr (BfFold) fold = NULL;

      if (!has_ears (part))
        continue;
      part->bend.allowance.k = 0.5;
      fold = bf_fold (part);
      n_ears++;
      check_other_ways (part, fold);
      if (!is_sound (fold))
        continue;
      n_sound++;
      check_lengths (seed, fold);
      check_sums (fold);
    }
  g_test_message ("%u of %u parts are sound", n_sound, n_ears);
  g_assert_cmpuint (n_ears, >, n_parts / 3);
  g_assert_cmpuint (n_sound, >, n_ears / 3);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/side-flanges/flat", test_flat);
  g_test_add_func ("/side-flanges/formed", test_formed);
  g_test_add_func ("/side-flanges/root-relief", test_root_relief);
  g_test_add_func ("/side-flanges/depth", test_depth);
  g_test_add_func ("/side-flanges/meeting", test_meeting);
  g_test_add_func ("/side-flanges/meeting-asked", test_meeting_asked);
  g_test_add_func ("/side-flanges/taper", test_taper);
  g_test_add_func ("/side-flanges/too-narrow", test_too_narrow);
  g_test_add_func ("/side-flanges/random", test_random);
  return g_test_run ();
}
