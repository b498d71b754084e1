/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The blank of random parts, gone over by a polygon library of another make. */

#include <stdlib.h>

#include "clip-areas.h"
#include "fold/outline.h"
#include "look-up.h"
#include "make-any.h"
#include "make-part.h"

/* A run tries this many parts from the seed that it is given on; with -m thorough more. */
#define N_PARTS 500
#define N_THOROUGH 6000

static guint first_seed;

/* Places are rounded to 1e-8 mm along some metres of edges. */
#define ROUNDING_MM2 1e-4

/* Where two rings run along one circle, only the chords at their arcs' ends differ. */
#define CHORDS_MM2 1e-4

/* Arcs are taken as chords that stray no further than this. */
#define SAGITTA_MM 1e-4

G_DEFINE_AUTOPTR_CLEANUP_FUNC (ClipPieces, clip_pieces_free)

static void
add_point (GArray *xy, BfVec2 p)
{
  g_array_append_val (xy, p.x);
  g_array_append_val (xy, p.y);
}

/* The points of an arc between its ends at which chords of its circle end: always the same ones for
 * one circle. */
static void
add_chords (GArray *xy, const BfArc *arc)
{
  double step = 2.0 * G_PI / ceil (G_PI / acos (1.0 - MIN (SAGITTA_MM / arc->radius, 0.5)));
  double way = arc->sweep > 0.0 ? 1.0 : -1.0;
  double from = way * arc->from / step, to = from + fabs (arc->sweep) / step;

  for (double i = floor (from) + 1.0; i < to; i++)
    {
      double angle = way * i * step;
      add_point (xy, bf_vec2_along (arc->centre, bf_vec2 (cos (angle), sin (angle)), arc->radius));
    }
}

static void
add_ring (ClipPieces *pieces, const BfRing *ring)
{
  g_autoptr (GArray) xy = g_array_new (FALSE, FALSE, sizeof (double));
  BfArc arc;

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      add_point (xy, bf_ring_vertex (ring, i)->p);
      if (bf_ring_arc (ring, i, &arc))
        add_chords (xy, &arc);
    }
  if (xy->len >= 6)
    clip_pieces_add (pieces, (const double *)(gpointer)xy->data, xy->len / 2);
}

/* Counter-clockwise: a flange's u runs so that its zone's corners come the other way round. */
static void
add_zone (ClipPieces *pieces, const BfBendResult *bend)
{
  double xy[8];

  for (int i = 0; i < 4; i++)
    {
      xy[2 * i] = bend->zone[3 - i].x;
      xy[2 * i + 1] = bend->zone[3 - i].y;
    }
  clip_pieces_add (pieces, xy, 4);
}

static void
add_crease (ClipPieces *pieces, const BfCrease *crease)
{
  g_autoptr (BfRing) ring = bf_ring_new ();

  for (guint i = 0; i < 4; i++)
    bf_ring_add (ring, crease->zone[i], 0.0);
  bf_ring_make_counter_clockwise (ring);
  add_ring (pieces, ring);
}

/* All of a folded corner, and some of the walls beside it. */
static void
add_whole_corner (ClipPieces *pieces, const BfFoldedCorner *corner)
{
  g_autoptr (BfRing) ring = bf_ring_new ();
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (corner->creases[0].line[1], corner->creases[0].line[0]));
  BfVec2 across = bf_vec2_sub (corner->tip, corner->foot);
  BfVec2 side = bf_vec2_scale (out, bf_vec2_dot (across, out));

  bf_ring_add (ring, corner->foot, 0.0);
  bf_ring_add (ring, bf_vec2_add (corner->foot, side), 0.0);
  bf_ring_add (ring, corner->tip, 0.0);
  bf_ring_add (ring, bf_vec2_sub (corner->tip, side), 0.0);
  bf_ring_make_counter_clockwise (ring);
  add_ring (pieces, ring);
}

static double
crushed_mm2 (const BfFold *fold)
{
  double area = 0.0;

  for (guint i = 0; i < fold->folded->len; i++)
    area += bf_fold_folded_corner (fold, i)->rest_mm2;
  return area;
}

/* Faces first, then zones, then what corners are folded of. */
static ClipPieces *
pieces_of (const BfFold *fold)
{
  ClipPieces *pieces = clip_pieces_new ();

  for (guint i = 0; i < fold->faces->len; i++)
    add_ring (pieces, bf_fold_face (fold, i)->outline);
  for (guint i = 0; i < fold->bends->len; i++)
    add_zone (pieces, bf_fold_bend (fold, i));
  for (guint i = 0; i < bf_fold_n_creases (fold); i++)
    add_crease (pieces, bf_fold_crease (fold, i));
  for (guint i = 0; i < 2 * fold->folded->len; i++)
    add_ring (pieces, bf_fold_folded_corner (fold, i / 2)->ears[i % 2]);
  return pieces;
}

/* Beside a bend that ends within an edge the blank's outline is open, from the bend's tangent to
 * the drawn edge, before the end relief is cut. */
static void
add_slit (ClipPieces *tools, const BfRelief *relief, const BfBendResult *bend)
{
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (bend->zone[1], bend->zone[0])), n = { e.y, -e.x };
  double u = bf_vec2_dot (bf_vec2_sub (relief->at, bend->zone[0]), e);
  gboolean at_end = u > bf_vec2_distance (bend->zone[1], bend->zone[0]) / 2.0;
  BfVec2 from = bend->zone[at_end ? 1 : 0];
  BfVec2 to = bf_vec2_along (from, e, at_end ? BF_OUTLINE_SLIT_MM : -BF_OUTLINE_SLIT_MM);
  BfVec2 left = at_end ? from : to, right = at_end ? to : from;
  BfVec2 low_left = bf_vec2_along (left, n, bend->setback_mm);
  BfVec2 low_right = bf_vec2_along (right, n, bend->setback_mm);
  const double xy[] = { left.x,      left.y,      low_left.x, low_left.y,
                        low_right.x, low_right.y, right.x,    right.y };

  clip_pieces_add (tools, xy, 4);
}

static ClipPieces *
tools_of (const BfFold *fold)
{
  ClipPieces *tools = clip_pieces_new ();

  for (guint i = 0; i < fold->openings->len; i++) /* a tab's holes */
    add_ring (tools, bf_fold_opening (fold, i)->ring);
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      const BfRelief *relief = bf_fold_relief (fold, i);

      add_ring (tools, relief->ring);
      if (relief->kind == BF_RELIEF_KIND_END)
        add_slit (tools, relief, find_bend (fold, relief->where));
    }
  return tools;
}

static ClipPieces *
blank_of (const BfFold *fold)
{
  ClipPieces *blank = clip_pieces_new ();

  for (guint i = 0; i < fold->blank.rings->len; i++)
    add_ring (blank, bf_blank_ring (&fold->blank, i));
  return blank;
}

/* The pieces cover what they add up to: none lies on another but where reliefs take both. */
static void
check_pieces (guint seed, const BfFold *fold)
{
  g_autoptr (ClipPieces) pieces = pieces_of (fold), tools = tools_of (fold);
  unsigned a = 0, b = 0;
  double before = clip_worst_overlap (pieces, NULL, &a, &b);
  double overlap = clip_worst_overlap (pieces, tools, &a, &b);

  if (overlap > ROUNDING_MM2)
    g_test_message ("seed %u: pieces %u and %u share %g mm²", seed, a, b, overlap);
  g_assert_cmpfloat (overlap, <, ROUNDING_MM2);
  if (before < ROUNDING_MM2)
    g_assert_cmpfloat_with_epsilon (clip_union_area (pieces) + crushed_mm2 (fold),
                                    fold->blank.area_before_cuts_mm2, ROUNDING_MM2);
}

/* And less its reliefs it is the blank: none gained, none lost but a few splinters that reliefs
 * part from the metal beside them, smaller than a square as wide as it is thick. */
static void
check_blank (guint seed, const BfFold *fold, guint *n_scraps)
{
  g_autoptr (ClipPieces) pieces = pieces_of (fold), tools = tools_of (fold);
  g_autoptr (ClipPieces) blank = blank_of (fold);
  double lost, gained, t = fold->part->metal.thickness_mm;

  for (guint i = 0; i < fold->folded->len; i++)
    add_whole_corner (pieces, bf_fold_folded_corner (fold, i));
  clip_compare (pieces, tools, blank, &lost, &gained);
  if (MAX (lost, gained) > CHORDS_MM2)
    g_test_message ("seed %u: %g mm² lost, %g gained", seed, lost, gained);
  g_assert_cmpfloat (gained, <, CHORDS_MM2);
  g_assert_cmpfloat (lost, <, t * t);
  *n_scraps += lost > CHORDS_MM2 ? 1 : 0;
}

static gboolean
is_sound (const BfFold *fold)
{
  return bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) == 0;
}

static void
test_random (void)
{
  guint n_parts = g_test_thorough () ? N_THOROUGH : N_PARTS, n = 0, n_scraps = 0;

  for (guint seed = first_seed; seed < first_seed + n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      if (!is_sound (fold))
        continue;
      check_pieces (seed, fold);
      check_blank (seed, fold, &n_scraps);
      n++;
    }
  g_assert_cmpuint (n, >, n_parts / 2);
  g_assert_cmpuint (n_scraps, <=, n / 100);
}

/* Parts whose flange, inset at an acute corner, reached with its bend or its relief into that of
 * the flange beside it. */
static void
test_acute_insets (void)
{
  static const guint seeds[] = { 978, 14376, 22968, 53474 };
  guint n_scraps = 0;

  for (guint i = 0; i < G_N_ELEMENTS (seeds); i++)
    {
      g_autoptr (BfPart) part = make_random (seeds[i]);
      g_autoptr (BfFold) fold = bf_fold (part);

      g_assert_true (is_sound (fold));
      check_pieces (seeds[i], fold);
      check_blank (seeds[i], fold, &n_scraps);
    }
}

/* The second opinion itself: two squares that overlap, and a bite out of them,
 * against one square whole. */
static void
test_by_hand (void)
{
  const double square[] = { 0, 0, 10, 0, 10, 10, 0, 10 }, other[] = { 8, 8, 18, 8, 18, 18, 8, 18 };
  const double bite[] = { -5, -5, 5, -5, 5, 5, -5, 5 };
  g_autoptr (ClipPieces) pieces = clip_pieces_new (), tools = clip_pieces_new ();
  g_autoptr (ClipPieces) outlines = clip_pieces_new ();
  unsigned a = 9, b = 9;
  double lost, gained;

  clip_pieces_add (pieces, square, 4);
  clip_pieces_add (pieces, other, 4);
  clip_pieces_add (tools, bite, 4);
  clip_pieces_add (outlines, square, 4);
  g_assert_cmpfloat_with_epsilon (clip_union_area (pieces), 196.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (clip_worst_overlap (pieces, NULL, &a, &b), 4.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (clip_worst_overlap (pieces, outlines, &a, &b), 0.0, 1e-9);
  g_assert_cmpuint (a + b, ==, 1);
  clip_compare (pieces, tools, outlines, &lost, &gained);
  g_assert_cmpfloat_with_epsilon (lost, 196.0 - 25.0 - 75.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (gained, 25.0, 1e-9);
}

/* The first seed may be told. */
int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  first_seed = argc > 1 ? (guint)strtoul (argv[1], NULL, 10) : 0;
  g_test_add_func ("/clipper/by-hand", test_by_hand);
  g_test_add_func ("/clipper/random", test_random);
  g_test_add_func ("/clipper/acute-insets", test_acute_insets);
  return g_test_run ();
}
