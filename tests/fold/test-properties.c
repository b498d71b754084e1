/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What must hold for every part, tried on random ones of fixed seeds. */

#include <stdlib.h>

#include "core/tolerance.h"
#include "fold/fold.h"
#include "make-any.h"
#include "ring-valid.h"

/* A run tries this many parts from the seed that it is given on, so that several can share the
 * work; with -m thorough more. Every sixth part is one of many sides, three flanges deep; every
 * other sixth a box whose corners can be folded double. */
#define N_PARTS 500
#define N_THOROUGH 6000

static guint first_seed;

static guint
end_seed (void)
{
  return first_seed + (g_test_thorough () ? N_THOROUGH : N_PARTS);
}

static gboolean
is_sound (const BfFold *fold)
{
  return bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) == 0;
}

static double
ring_areas (const BfFold *fold)
{
  double area = 0.0;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    area += bf_ring_area (bf_blank_ring (&fold->blank, i));
  return area;
}

/* A flange's tip, drawn again in space from the folded metal, stands at its asked length from the
 * drawn line: for a bend up to square that is where the two outer (or inner) surfaces meet. */
static void
check_lengths (const BfFold *fold)
{
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      const BfFlange *flange = bf_part_find_flange (fold->part, bend->flange);
      const BfFace *face = bf_fold_face (fold, bend->face);
      BfVec2 e = bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
      BfVec2 n = { e.y, -e.x };
      double tip = 0.0, carried = 0.0;

      for (guint k = 0; k < bf_ring_size (face->outline); k++)
        tip = MAX (tip, bf_vec2_dot (
                            n, bf_vec2_sub (bf_ring_vertex (face->outline, k)->p, bend->zone[3])));
      for (guint k = 0; k < fold->bends->len; k++)
        if (bf_fold_face (fold, k + 1)->parent == (int)bend->face &&
            bf_part_find_flange (fold->part, bf_fold_bend (fold, k)->flange)->edge == BF_EDGE_TIP)
          carried = bf_fold_bend (fold, k)->setback_mm;
      g_assert_cmpfloat_with_epsilon (bend->setback_mm + tip + carried, flange->length_mm,
                                      BF_TOLERANCE_SIZE_MM);
    }
}

/* Folding keeps every face rigid and joins it to its bend: the tangent of the flange, placed by
 * the face, is the end of the arc that starts on its parent. */
static void
check_joined (const BfFold *fold)
{
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      guint parent = (guint)bf_fold_face (fold, bend->face)->parent;
      BfVec3 from = bf_fold_place (fold, parent, bend->zone[0]);
      BfVec3 to = bf_fold_place (fold, bend->face, bend->zone[3]);
      double t = fold->part->metal.thickness_mm;
      double r = bend->inside_radius_mm + (bend->turn == BF_TURN_UP ? 0.0 : t);

      /* The chord of the arc that the marking side makes. */
      g_assert_cmpfloat_with_epsilon (bf_vec3_length (bf_vec3_sub (to, from)),
                                      2.0 * r * sin (bend->angle_rad / 2.0), BF_TOLERANCE_SIZE_MM);
    }
}

/* With the neutral line in the middle, bending neither makes nor loses metal. */
static void
check_volume (BfPart *part)
{
  g_autoptr (BfPart) middle = bf_part_copy (part);
  g_autoptr (BfFold) fold = NULL;
  double flat;

  middle->bend.allowance.k = 0.5;
  fold = bf_fold (middle);
  flat = fold->blank.area_before_cuts_mm2 * part->metal.thickness_mm;
  if (is_sound (fold))
    g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3 / flat, 1.0, 1e-9);
}

/* The rings' own area, arcs exact, is what the blank claims, and less than before the cuts. The
 * blank is one polygon with holes, valid as GEOS has it. */
static void
check_blank (const BfFold *fold)
{
  g_autofree char *fault = why_not_valid (fold->blank.rings, fold->blank.n_outer);

  g_assert_cmpfloat_with_epsilon (ring_areas (fold), fold->blank.area_mm2, 1e-9);
  g_assert_cmpfloat (fold->blank.area_mm2, <=, fold->blank.area_before_cuts_mm2 + 1e-3);
  g_assert_cmpuint (fold->blank.n_outer, ==, 1);
  g_assert_cmpstr (fault, ==, NULL);
}

static void
check_mirror (const BfPart *part, const BfFold *fold)
{
  g_autoptr (BfPart) mirrored = bf_part_mirror (part);
  g_autoptr (BfFold) other = bf_fold (mirrored);
  const BfBox *a = &fold->blank.box, *b = &other->blank.box;

  /* Overlays snap to a grid, along a metre or two of edges. */
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2,
                                  BF_TOLERANCE_SNAP_MM * fold->blank.cut_length_mm);
  g_assert_cmpfloat_with_epsilon (a->min.x, -b->max.x, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (a->max.x, -b->min.x, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (a->min.y, b->min.y, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, other->formed.volume_mm3, 1e-5);
}

static void
reverse (GPtrArray *flanges)
{
  for (guint i = 0; i < flanges->len / 2; i++)
    {
      gpointer other = flanges->pdata[flanges->len - 1 - i];

      flanges->pdata[flanges->len - 1 - i] = flanges->pdata[i];
      flanges->pdata[i] = other;
    }
}

/* The order of flanges in the file does not matter. */
static void
check_order (const BfPart *part, const BfFold *fold)
{
  g_autoptr (BfPart) reversed = bf_part_copy (part);
  g_autoptr (BfFold) other = NULL;

  reverse (reversed->flanges);
  other = bf_fold (reversed);
  g_assert_cmpuint (fold->checks->len, ==, other->checks->len);
  g_assert_cmpuint (fold->blank.rings->len, ==, other->blank.rings->len);
  for (guint i = 0; i < fold->blank.rings->len; i++)
    {
      const BfRing *a = bf_blank_ring (&fold->blank, i), *b = bf_blank_ring (&other->blank, i);

      g_assert_cmpuint (bf_ring_size (a), ==, bf_ring_size (b));
      g_assert_true (
          memcmp (a->vertices->data, b->vertices->data, bf_ring_size (a) * sizeof (BfVertex)) == 0);
    }
}

static void
show_checks (guint seed, const BfFold *fold)
{
  for (guint i = 0; i < fold->checks->len; i++)
    g_test_message ("%u: %s %s %s", seed, bf_fold_check (fold, i)->code,
                    bf_fold_check (fold, i)->where, bf_fold_check (fold, i)->message);
}

/* All of it on every part, which is folded once for all. Most random parts must be foldable, else
 * the rest proves little. */
static void
test_random (void)
{
  guint n_parts = end_seed () - first_seed, n_sound = 0;

  for (guint seed = first_seed; seed < end_seed (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      g_test_message ("seed %u", seed);
      if (g_test_verbose ())
        show_checks (seed, fold);
      check_volume (part);
      check_mirror (part, fold);
      check_order (part, fold);
      if (!is_sound (fold))
        continue;
      check_lengths (fold);
      check_joined (fold);
      check_blank (fold);
      n_sound++;
    }
  g_test_message ("%u of %u parts are sound", n_sound, n_parts);
  g_assert_cmpuint (n_sound, >, n_parts * 6 / 10);
}

/* The first seed may be told. */
int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  first_seed = argc > 1 ? (guint)strtoul (argv[1], NULL, 10) : 0;
  g_test_add_func ("/properties/random", test_random);
  return g_test_run ();
}
