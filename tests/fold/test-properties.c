/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What must hold for every part, tried on random ones of fixed seeds. */

#include "core/edit.h"
#include "core/tolerance.h"
#include "fold/fold.h"
#include "make-any.h"
#include "ring-valid.h"

/* With -m thorough many more. Every sixth part is one of many sides, three flanges deep; every
 * other sixth a box whose corners can be folded double. */
#define N_PARTS 240
#define N_THOROUGH 6000

static guint
n_parts (void)
{
  return g_test_thorough () ? N_THOROUGH : N_PARTS;
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

/* Most random parts must be foldable, else the rest proves little. */
static void
test_most_are_sound (void)
{
  guint sound = 0;

  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      if (g_test_verbose ())
        for (guint i = 0; i < fold->checks->len; i++)
          g_test_message ("%u: %s %s %s", seed, bf_fold_check (fold, i)->code,
                          bf_fold_check (fold, i)->where, bf_fold_check (fold, i)->message);
      sound += is_sound (fold) ? 1 : 0;
    }
  g_test_message ("%u of %u parts are sound", sound, n_parts ());
  g_assert_cmpuint (sound, >, n_parts () * 6 / 10);
}

/* A flange's tip, drawn again in space from the folded metal, stands at its asked length from the
 * drawn line: for a bend up to square that is where the two outer (or inner) surfaces meet. */
static void
check_lengths (guint seed, const BfFold *fold)
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
      g_test_message ("seed %u flange %s", seed, bend->flange);
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

static void
test_sizes (void)
{
  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      if (!is_sound (fold))
        continue;
      check_lengths (seed, fold);
      check_joined (fold);
    }
}

/* With the neutral line in the middle, bending neither makes nor loses metal. */
static void
test_volume (void)
{
  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = NULL;
      double flat;

      part->bend.allowance.k = 0.5;
      fold = bf_fold (part);
      flat = fold->blank.area_before_cuts_mm2 * part->metal.thickness_mm;
      if (is_sound (fold))
        g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3 / flat, 1.0, 1e-9);
    }
}

/* The rings' own area, arcs exact, is what the blank claims, and less than before the cuts. The
 * blank is one polygon with holes, valid as GEOS has it. */
static void
test_areas (void)
{
  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autofree char *fault = NULL;

      if (!is_sound (fold))
        continue;
      g_assert_cmpfloat_with_epsilon (ring_areas (fold), fold->blank.area_mm2, 1e-9);
      g_assert_cmpfloat (fold->blank.area_mm2, <=, fold->blank.area_before_cuts_mm2 + 1e-3);
      g_assert_cmpuint (fold->blank.n_outer, ==, 1);
      fault = why_not_valid (fold->blank.rings, fold->blank.n_outer);
      if (fault != NULL)
        g_test_message ("seed %u", seed);
      g_assert_cmpstr (fault, ==, NULL);
    }
}

static void
test_mirror (void)
{
  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfPart) mirrored = bf_part_mirror (part);
      g_autoptr (BfFold) fold = bf_fold (part), other = bf_fold (mirrored);
      const BfBox *a = &fold->blank.box, *b = &other->blank.box;

      /* Overlays snap to a grid, along a metre or two of edges. */
      g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, other->blank.area_mm2,
                                      BF_TOLERANCE_SNAP_MM * fold->blank.cut_length_mm);
      g_assert_cmpfloat_with_epsilon (a->min.x, -b->max.x, BF_TOLERANCE_SIZE_MM);
      g_assert_cmpfloat_with_epsilon (a->max.x, -b->min.x, BF_TOLERANCE_SIZE_MM);
      g_assert_cmpfloat_with_epsilon (a->min.y, b->min.y, BF_TOLERANCE_SIZE_MM);
      g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, other->formed.volume_mm3, 1e-5);
    }
}

static void
leave_open (BfPart *part)
{
  for (guint i = 0; i < part->corners->len; i++)
    {
      BfCorner *corner = g_ptr_array_index (part->corners, i);

      if (corner->join == BF_JOIN_TAB)
        corner->join = BF_JOIN_OPEN;
    }
}

/* A wall on every edge, and no side with a line of its own: an inset counts from the drawn point,
 * which no inset can bring back once it has moved past it. NULL where an edge is bare. */
static BfPart *
walled_all_round (guint seed)
{
  g_autoptr (BfPart) part = make_any (seed);
  guint n_walls = 0;

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      BfFlange *flange = g_ptr_array_index (part->flanges, i);

      flange->start_mm = flange->end_mm = 0.0;
      flange->start_taper_deg = flange->end_taper_deg = 0.0;
      n_walls += flange->edge == BF_EDGE_INDEX ? 1 : 0;
    }
  return n_walls == bf_part_n_points (part) ? g_steal_pointer (&part) : NULL;
}

/* Counted inside or outside, it is the same metal. */
static void
test_measure (void)
{
  guint n_tried = 0;

  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = walled_all_round (seed);
      g_autoptr (BfPart) other = NULL;
      g_autoptr (BfFold) fold = NULL, again = NULL;

      if (part == NULL)
        continue;
      if (seed % 6 == 5)
        leave_open (part); /* beside a tab, a wall that carries a lip is not quite the same metal */
      other = bf_edit_measure (part, part->measure == BF_MEASURE_INSIDE ? BF_MEASURE_OUTSIDE
                                                                        : BF_MEASURE_INSIDE);
      fold = bf_fold (part);
      if (!is_sound (fold))
        continue;
      again = bf_fold (other);
      g_test_message ("seed %u", seed);
      g_assert_cmpfloat_with_epsilon (fold->blank.area_before_cuts_mm2,
                                      again->blank.area_before_cuts_mm2, 1e-6);
      g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3, again->formed.volume_mm3, 1e-6);
      n_tried++;
    }
  g_assert_cmpuint (n_tried, >, n_parts () / 10);
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

static void
test_order (void)
{
  for (guint seed = 0; seed < n_parts (); seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfPart) reversed = bf_part_copy (part);
      g_autoptr (BfFold) fold = NULL, other = NULL;

      reverse (reversed->flanges);
      fold = bf_fold (part);
      other = bf_fold (reversed);
      g_assert_cmpuint (fold->checks->len, ==, other->checks->len);
      g_assert_cmpuint (fold->blank.rings->len, ==, other->blank.rings->len);
      for (guint i = 0; i < fold->blank.rings->len; i++)
        {
          const BfRing *a = bf_blank_ring (&fold->blank, i), *b = bf_blank_ring (&other->blank, i);

          g_assert_cmpuint (bf_ring_size (a), ==, bf_ring_size (b));
          g_assert_true (memcmp (a->vertices->data, b->vertices->data,
                                 bf_ring_size (a) * sizeof (BfVertex)) == 0);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/properties/most-are-sound", test_most_are_sound);
  g_test_add_func ("/properties/sizes", test_sizes);
  g_test_add_func ("/properties/volume", test_volume);
  g_test_add_func ("/properties/areas", test_areas);
  g_test_add_func ("/properties/mirror", test_mirror);
  g_test_add_func ("/properties/measure", test_measure);
  g_test_add_func ("/properties/order", test_order);
  return g_test_run ();
}
