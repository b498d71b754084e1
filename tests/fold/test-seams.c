/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Seams, against distances measured on the formed faces. */

#include "fold/fold.h"
#include "make-any.h"
#include "make-part.h"

#define N_PARTS 120

typedef struct
{
  BfVec3 from, to;
} Line;

/* ---- measuring ---------------------------------------------------------------------------- */

/* A point of a face's outline on the face that is inside: the marking side of what is turned up,
 * the other of what is turned down. */
static BfVec3
on_inside (const BfFold *fold, guint face, BfVec2 p)
{
  const BfBendResult *bend = bf_fold_bend (fold, (guint)bf_fold_face (fold, face)->bend);
  BfVec3 place = bf_fold_place (fold, face, p);

  for (guint i = 0; i < fold->formed.solids->len && bend->turn == BF_TURN_DOWN; i++)
    {
      const BfSolid *solid = bf_formed_solid (&fold->formed, i);

      if (solid->kind == BF_SOLID_SLAB && solid->face == face)
        return bf_vec3_along (place, solid->frame.ez, -fold->part->metal.thickness_mm);
    }
  return place;
}

static Line
edge_in_space (const BfFold *fold, guint face, guint edge)
{
  const BfRing *ring = bf_fold_face (fold, face)->outline;

  return (Line){ on_inside (fold, face, bf_ring_vertex (ring, edge)->p),
                 on_inside (fold, face, bf_ring_vertex (ring, edge + 1)->p) };
}

static double
point_to_line (BfVec3 p, const Line *line)
{
  BfVec3 along = bf_vec3_sub (line->to, line->from);
  double square = bf_vec3_dot (along, along);
  double share = square > 0.0 ? bf_vec3_dot (bf_vec3_sub (p, line->from), along) / square : 0.0;

  return bf_vec3_length (
      bf_vec3_sub (p, bf_vec3_along (line->from, along, CLAMP (share, 0.0, 1.0))));
}

/* The nearest of ends to the other line, and, where they are skew, of the two feet of the line that
 * is square to both. */
static double
distance_mm (const Line *a, const Line *b)
{
  BfVec3 u = bf_vec3_sub (a->to, a->from), w = bf_vec3_sub (b->to, b->from);
  BfVec3 between = bf_vec3_sub (b->from, a->from), n = bf_vec3_cross (u, w);
  double square = bf_vec3_dot (n, n);
  double least = MIN (MIN (point_to_line (a->from, b), point_to_line (a->to, b)),
                      MIN (point_to_line (b->from, a), point_to_line (b->to, a)));

  if (square > 1e-12 * bf_vec3_dot (u, u) * bf_vec3_dot (w, w))
    {
      double s = bf_vec3_dot (bf_vec3_cross (between, w), n) / square;
      double r = bf_vec3_dot (bf_vec3_cross (between, u), n) / square;

      if (s >= 0.0 && s <= 1.0 && r >= 0.0 && r <= 1.0)
        least = MIN (least, fabs (bf_vec3_dot (between, n)) / sqrt (square));
    }
  return least;
}

/* How near the edges of two formed faces come to each other on their insides. */
static double
nearest_mm (const BfFold *fold, guint a, guint b)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < bf_ring_size (bf_fold_face (fold, a)->outline); i++)
    for (guint k = 0; k < bf_ring_size (bf_fold_face (fold, b)->outline); k++)
      {
        Line one = edge_in_space (fold, a, i), other = edge_in_space (fold, b, k);

        least = MIN (least, distance_mm (&one, &other));
      }
  return least;
}

/* ---- open corners ------------------------------------------------------------------------- */

/* A random part, every corner of its base open. */
static BfPart *
make_open (guint seed)
{
  BfPart *part = make_any (seed);

  part->joining = BF_JOINING_WELDED;
  g_ptr_array_set_size (part->corners, 0);
  return part;
}

/* The gap told is real: no edges of the two formed faces come nearer than that on their insides,
 * and they do come so near. Of walls that are welded it is the gap that was asked for. */
static void
test_gap_is_real (void)
{
  guint seams = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_open (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      for (guint i = 0; i < fold->seams->len; i++)
        {
          const BfSeam *seam = bf_fold_seam (fold, i);
          guint before = (guint)bf_fold_find_face (fold, seam->before);
          guint after = (guint)bf_fold_find_face (fold, seam->after);

          g_test_message ("seed %u: %s to %s", seed, seam->before, seam->after);
          if (isnan (seam->gap_mm))
            continue;
          g_assert_cmpfloat_with_epsilon (nearest_mm (fold, before, after), seam->gap_mm, 1e-6);
          g_assert_cmpfloat (seam->length_mm, >, 0.0);
          seams++;
        }
    }
  g_assert_cmpuint (seams, >, N_PARTS);
}

/* Of walls that are equally high and lean alike the seam is as long as the side of either: from the
 * flange's tangent up the flat, 40 − (R + t) tan (θ/2) = 40 − 3 tan (θ/2), and by the corner's
 * slope longer. Up the slope by 1 the corner of two such walls goes outward by cos θ: √(1 + cos²
 * θ). */
static void
test_lengths (void)
{
  static const double angles[] = { 30.0, 45.0, 60.0, 75.0, 90.0 };

  for (guint i = 0; i < G_N_ELEMENTS (angles); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, angles[i]);
      g_autoptr (BfFold) fold = bf_fold (part);
      double angle = bf_deg_to_rad (angles[i]);
      double flat = 40.0 - 3.0 * tan (angle / 2.0);

      g_assert_cmpuint (fold->seams->len, ==, 4);
      for (guint k = 0; k < 4; k++)
        g_assert_cmpfloat_with_epsilon (bf_fold_seam (fold, k)->length_mm,
                                        flat * sqrt (1.0 + cos (angle) * cos (angle)), 1e-6);
    }
}

/* Of two heights the seam is as long as the lower wall's inside edge. */
static void
test_lower_wall_counts (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;

  ((BfFlange *)g_ptr_array_index (part->flanges, 0))->length_mm = 25.0;
  fold = bf_fold (part);
  for (guint i = 0; i < fold->seams->len; i++)
    {
      const BfSeam *seam = bf_fold_seam (fold, i);
      gboolean low = g_str_equal (seam->before, "f0") || g_str_equal (seam->after, "f0");

      g_assert_cmpfloat_with_epsilon (seam->length_mm, low ? 22.0 : 37.0, 1e-6);
    }
}

/* The gap of one corner is that corner's. */
static void
test_asked_gap (void)
{
  static const double gaps[] = { 0.0, 0.2, 1.25, 3.0 };

  for (guint i = 0; i < G_N_ELEMENTS (gaps); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      BfCorner *corner = bf_corner_new ("base", 1); /* between f0 and f1 */
      g_autoptr (BfFold) fold = NULL;

      corner->join = BF_JOIN_OPEN;
      corner->gap_mm = gaps[i];
      g_ptr_array_add (part->corners, corner);
      fold = bf_fold (part);
      for (guint k = 0; k < fold->seams->len; k++)
        {
          const BfSeam *seam = bf_fold_seam (fold, k);

          g_assert_cmpfloat_with_epsilon (seam->gap_mm,
                                          g_str_equal (seam->before, "f0") ? gaps[i] : 0.5, 1e-6);
        }
    }
}

/* Walls that turn opposite ways meet at a point: a seam of no length, and no gap to speak of. */
static void
test_opposite_turns (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;

  ((BfFlange *)g_ptr_array_index (part->flanges, 1))->turn = BF_TURN_DOWN;
  fold = bf_fold (part);
  for (guint i = 0; i < fold->seams->len; i++)
    {
      const BfSeam *seam = bf_fold_seam (fold, i);
      gboolean crossed = g_str_equal (seam->before, "f1") || g_str_equal (seam->after, "f1");

      g_assert_true (isnan (seam->gap_mm) == crossed);
      g_assert_true ((seam->length_mm > 0.0) != crossed);
    }
}

/* Lips that stand 20 mm in from both ends meet nobody: the walls' seams are all there are. Whole
 * lips have seams too. */
static void
test_short_lips (void)
{
  for (guint inset = 0; inset < 2; inset++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;

      for (guint i = 0; i < 4; i++)
        {
          g_autofree char *id = g_strdup_printf ("l%u", i), *on = g_strdup_printf ("f%u", i);
          BfFlange *lip = add_lip (part, id, on, 15.0, 90.0);

          lip->start_mm = lip->end_mm = 20.0 * inset;
        }
      fold = bf_fold (part);
      g_assert_cmpuint (fold->seams->len, ==, inset ? 4 : 8);
      for (guint i = 0; i < fold->seams->len; i++)
        g_assert_cmpfloat (bf_fold_seam (fold, i)->length_mm, >, 1.0);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/seams/gap-is-real", test_gap_is_real);
  g_test_add_func ("/seams/lengths", test_lengths);
  g_test_add_func ("/seams/lower-wall-counts", test_lower_wall_counts);
  g_test_add_func ("/seams/asked-gap", test_asked_gap);
  g_test_add_func ("/seams/opposite-turns", test_opposite_turns);
  g_test_add_func ("/seams/short-lips", test_short_lips);
  return g_test_run ();
}
