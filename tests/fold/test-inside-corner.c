/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Corners that are no outside corner of two walls alike: inside corners, one flange up and one
 * down, bare edges beside a flange, and lips that meet above a corner. */

#include "look-up.h"
#include "make-part.h"

#define GAP_MM 0.5
#define EXACT_MM 1e-9

/* The tangent of a square bend lies S = 3 inside the drawn edge, and its zone is BA wide. */
#define BA_MM 3.345796
#define HAND_MM 5e-4

/* ---- distances ----------------------------------------------------------------------------- */

/* A plane or, for z = 0, a line of the blank: n · p counts from it, n a unit vector. */
typedef struct
{
  BfVec3 n, through;
} Plane;

static double
beyond (const Plane *plane, BfVec3 p)
{
  return bf_vec3_dot (plane->n, bf_vec3_sub (p, plane->through));
}

static double
least_of_outline (const BfFold *fold, const char *id, const Plane *plane)
{
  const BfRing *outline = find_face (fold, id)->outline;
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      BfVec2 p = bf_ring_vertex (outline, i)->p;
      least = MIN (least, beyond (plane, bf_vec3 (p.x, p.y, 0.0)));
    }
  return least;
}

/* The least distance of a flange's flat and zone, as they lie in the blank. */
static double
least_in_flat (const BfFold *fold, const char *id, const Plane *plane)
{
  const BfBendResult *bend = find_bend (fold, id);
  double least = least_of_outline (fold, id, plane);

  for (int i = 0; i < 4; i++)
    least = MIN (least, beyond (plane, bf_vec3 (bend->zone[i].x, bend->zone[i].y, 0.0)));
  return least;
}

static const BfSolid *
find_solid (const BfFold *fold, const char *id, BfSolidKind kind)
{
  for (guint i = 0; i < fold->formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&fold->formed, i);

      if (solid->kind == kind && strcmp (bf_fold_face (fold, solid->face)->id, id) == 0)
        return solid;
    }
  g_assert_not_reached ();
}

static double
least_of_slab (const BfFold *fold, const char *id, const Plane *plane)
{
  const BfSolid *slab = find_solid (fold, id, BF_SOLID_SLAB);
  const BfRing *outline = find_face (fold, id)->outline;
  double least = G_MAXDOUBLE, depths[] = { 0.0, -fold->part->metal.thickness_mm };

  for (guint i = 0; i < bf_ring_size (outline); i++)
    for (int face = 0; face < 2; face++)
      {
        BfVec2 d = bf_vec2_sub (bf_ring_vertex (outline, i)->p, slab->flat_origin);
        BfVec3 p = bf_frame_point (&slab->frame, bf_vec2_dot (d, slab->flat_ex),
                                   bf_vec2_dot (d, slab->flat_ey), depths[face]);
        least = MIN (least, beyond (plane, p));
      }
  return least;
}

/* Over points all along the bend, on both faces, at both ends. */
static double
least_of_sector (const BfFold *fold, const char *id, const Plane *plane)
{
  const BfSolid *s = find_solid (fold, id, BF_SOLID_SECTOR);
  double t = fold->part->metal.thickness_mm, least = G_MAXDOUBLE;

  for (int i = 0; i <= 1000; i++)
    for (int corner = 0; corner < 4; corner++)
      {
        double a = s->angle_rad * i / 1000.0, r = s->radius_mm + (corner < 2 ? 0.0 : t);
        double x = corner % 2 == 0 ? 0.0 : s->width_mm;
        double z =
            s->turn == BF_TURN_UP ? s->radius_mm - r * cos (a) : r * cos (a) - t - s->radius_mm;

        least = MIN (least, beyond (plane, bf_frame_point (&s->frame, x, r * sin (a), z)));
      }
  return least;
}

static void
assert_sound (const BfFold *fold)
{
  for (guint i = 0; i < fold->checks->len; i++)
    g_test_message ("%s", bf_fold_check (fold, i)->message);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
}

/* ---- an L with walls all round -------------------------------------------------------------- */

/* Point 3, (100, 80), is the inside corner: edge 2 leads to it, edge 3 away from it. */
static BfPart *
make_ell (void)
{
  const BfVec2 outline[] = { { 0, 0 },    { 200, 0 },   { 200, 80 },
                             { 100, 80 }, { 100, 160 }, { 0, 160 } };
  return make_part (outline, G_N_ELEMENTS (outline));
}

static BfPart *
make_walled_ell (double angle_deg)
{
  BfPart *part = make_ell ();

  for (guint i = 0; i < 6; i++)
    {
      g_autofree char *id = g_strdup_printf ("f%u", i);
      add_flange (part, id, i, 30.0, angle_deg);
    }
  return part;
}

/* The bisector of the inside corner, from edge 2's side (x > y + 20) or from edge 3's. */
static Plane
bisector (guint edge)
{
  double sign = edge == 2 ? 1.0 : -1.0;

  return (Plane){ { sign / G_SQRT2, -sign / G_SQRT2, 0.0 }, { 100.0, 80.0, 0.0 } };
}

/* In the blank each keeps half the gap from the bisector, and comes that near. */
static void
test_share_flat (void)
{
  for (double angle = 20.0; angle <= 125.0; angle += 35.0)
    {
      g_autoptr (BfPart) part = make_walled_ell (angle);
      g_autoptr (BfFold) fold = bf_fold (part);
      Plane from_2 = bisector (2), from_3 = bisector (3);

      assert_sound (fold);
      g_assert_cmpfloat_with_epsilon (least_in_flat (fold, "f2", &from_2), GAP_MM / 2.0, EXACT_MM);
      g_assert_cmpfloat_with_epsilon (least_in_flat (fold, "f3", &from_3), GAP_MM / 2.0, EXACT_MM);
    }
}

/* And, folded up or down and leaning either way, from the plane over it on both faces. */
static void
test_share_space (void)
{
  static const char *const ids[] = { "f2", "f3" };

  for (double angle = 20.0; angle <= 125.0; angle += 15.0)
    for (BfTurn turn = BF_TURN_UP; turn <= BF_TURN_DOWN; turn++)
      {
        g_autoptr (BfPart) part = make_walled_ell (angle);
        g_autoptr (BfFold) fold = NULL;

        for (guint i = 0; i < 6; i++)
          ((BfFlange *)g_ptr_array_index (part->flanges, i))->turn = turn;
        fold = bf_fold (part);
        assert_sound (fold);
        for (guint i = 0; i < 2; i++)
          {
            Plane plane = bisector (i + 2);

            g_assert_cmpfloat (least_of_slab (fold, ids[i], &plane), >=, GAP_MM / 2.0 - EXACT_MM);
            g_assert_cmpfloat (least_of_sector (fold, ids[i], &plane), >=, GAP_MM / 2.0 - EXACT_MM);
          }
      }
}

/* The square walls by hand: in the flat the side leans at 45° off the bisector, g/√2 back from the
 * vertex at v = 0; the zone is parted from the vertex's by the same at its outer edge, v = 0.3458,
 * and by the plane in space: the outer face, at the vertex's own edge, keeps g/2. */
static void
test_ell_by_hand (void)
{
  g_autoptr (BfPart) part = make_walled_ell (90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfBendResult *bend = find_bend (fold, "f2");
  double back = GAP_MM / G_SQRT2;

  g_assert_cmpfloat_with_epsilon (bend->zone[1].x, 100.0 + back + (BA_MM - 3.0), HAND_MM);
  g_assert_cmpfloat_with_epsilon (bend->zone[0].x, 200.0 - 3.0, HAND_MM);
  g_assert_cmpuint (fold->reliefs->len, ==, 6);
  g_assert_cmpuint (fold->blank.n_outer, ==, 1);
}

/* Lips on both walls of the inside corner go on along the bisector in the flat, which has made the
 * walls narrower towards their tips; so in space they stay well clear. */
static void
test_ell_lips (void)
{
  g_autoptr (BfPart) part = make_walled_ell (90.0);
  g_autoptr (BfFold) fold = NULL;
  static const char *const ids[] = { "l2", "l3" };

  add_lip (part, "l2", "f2", 12.0, 90.0)->turn = BF_TURN_DOWN;
  add_lip (part, "l3", "f3", 12.0, 90.0)->turn = BF_TURN_DOWN;
  fold = bf_fold (part);
  assert_sound (fold);
  for (guint i = 0; i < 2; i++)
    {
      Plane plane = bisector (i + 2);

      g_assert_cmpfloat_with_epsilon (least_of_outline (fold, ids[i], &plane), GAP_MM / 2.0,
                                      EXACT_MM);
      g_assert_cmpfloat (least_in_flat (fold, ids[i], &plane), >=, GAP_MM / 2.0 - EXACT_MM);
      g_assert_cmpfloat (least_of_slab (fold, ids[i], &plane), >=, GAP_MM / 2.0 - EXACT_MM);
      g_assert_cmpfloat (least_of_sector (fold, ids[i], &plane), >=, GAP_MM / 2.0 - EXACT_MM);
    }
}

/* ---- an inside corner with one bare edge ------------------------------------------------------
 */

/* Beside the flange on edge 2 the base's own metal goes on along x = 100: the cut between them
 * needs the room of a tool, 0.5, and the bend ends there with a relief. */
static void
test_bare_inside_corner (void)
{
  g_autoptr (BfPart) part = make_ell ();
  g_autoptr (BfFold) fold = NULL;
  Plane bare = { { 1.0, 0.0, 0.0 }, { 100.0, 80.0, 0.0 } };

  add_flange (part, "step", 2, 30.0, 90.0);
  fold = bf_fold (part);
  assert_sound (fold);
  g_assert_cmpfloat_with_epsilon (least_in_flat (fold, "step", &bare), 0.5, EXACT_MM);
  g_assert_cmpuint (fold->reliefs->len, ==, 1);
  assert_at (find_relief (fold, "step", 0)->at, bf_vec2 (100.5, 80.0 - (3.0 - BA_MM / 2.0)),
             HAND_MM);
}

/* The same from the other side, and with a wider gap asked of nobody: machine or hand. */
static void
test_bare_inside_corner_start (void)
{
  g_autoptr (BfPart) part = make_ell ();
  g_autoptr (BfFold) fold = NULL;
  Plane bare = { { 0.0, 1.0, 0.0 }, { 100.0, 80.0, 0.0 } };

  part->cutting.by = BF_CUTTING_SERVICE;
  add_flange (part, "step", 3, 30.0, 90.0);
  fold = bf_fold (part);
  assert_sound (fold);
  g_assert_cmpfloat_with_epsilon (least_in_flat (fold, "step", &bare), 0.5, EXACT_MM);
  g_assert_cmpint (find_relief (fold, "step", 0)->shape, ==, BF_RELIEF_SQUARE);
}

/* ---- one up, one down ------------------------------------------------------------------------ */

/* At a square corner the bend lines cross on the corner's own bisector, x + y = 200: there the
 * flats share the metal, and no wall is wider than its edge. The zones end at P, 3 in. */
static void
test_opposite_turns (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  double d = 1.0 / G_SQRT2;
  Plane front = { { -d, -d, 0.0 }, { 200.0, 0.0, 0.0 } };
  Plane side = { { d, d, 0.0 }, { 200.0, 0.0, 0.0 } };
  Plane front_end = { { -1.0, 0.0, 0.0 }, { 200.0, 0.0, 0.0 } };
  Plane side_end = { { 0.0, 1.0, 0.0 }, { 200.0, 0.0, 0.0 } };
  double zone = 3.0;

  ((BfFlange *)g_ptr_array_index (part->flanges, 1))->turn = BF_TURN_DOWN;
  ((BfFlange *)g_ptr_array_index (part->flanges, 3))->turn = BF_TURN_DOWN;
  fold = bf_fold (part);
  assert_sound (fold);
  g_assert_cmpfloat_with_epsilon (find_bend (fold, "f0")->zone[1].x, 200.0 - zone, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (find_bend (fold, "f1")->zone[0].y, zone, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (least_of_outline (fold, "f0", &front), GAP_MM / 2.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (least_of_outline (fold, "f1", &side), GAP_MM / 2.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (least_in_flat (fold, "f0", &front_end), 0.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (least_in_flat (fold, "f1", &side_end), 0.0, EXACT_MM);
}

/* ---- bare edges at skew corners ---------------------------------------------------------------
 */

/* A base that leans at 60°, a wall on its first edge. At the start the bare edge leans over the
 * bend: the zone ends where the tangent meets it, 3·cot 60° in, the flat goes on. At the end it
 * leans away: the base beyond stays, and a relief parts it from the bend. */
static void
test_bare_skew_corners (void)
{
  const double up = 60.0 * sqrt (3.0), over = 3.0 / sqrt (3.0);
  const BfVec2 outline[] = { { 0, 0 }, { 200, 0 }, { 260, up }, { 60, up } };
  g_autoptr (BfPart) part = make_part (outline, G_N_ELEMENTS (outline));
  g_autoptr (BfFold) fold = NULL;
  Plane start = { { 1.0, 0.0, 0.0 }, { 0.0, 0.0, 0.0 } };
  Plane end = { { -1.0, 0.0, 0.0 }, { 200.0, 0.0, 0.0 } };
  const BfBendResult *bend;

  add_flange (part, "front", 0, 40.0, 90.0);
  fold = bf_fold (part);
  assert_sound (fold);
  bend = find_bend (fold, "front");
  assert_at (bend->zone[0], bf_vec2 (over, 3.0), EXACT_MM);
  assert_at (bend->zone[1], bf_vec2 (200.0, 3.0), EXACT_MM);
  g_assert_cmpfloat_with_epsilon (least_of_outline (fold, "front", &start), 0.0, EXACT_MM);
  g_assert_cmpfloat_with_epsilon (least_of_outline (fold, "front", &end), 0.0, EXACT_MM);
  g_assert_cmpuint (fold->reliefs->len, ==, 1);
  assert_at (find_relief (fold, "front", 0)->at, bf_vec2 (200.0, 3.0 - BA_MM / 2.0), HAND_MM);
  /* The base ends at the tangent, but for the corner beyond x = 200. */
  g_assert_cmpfloat_with_epsilon (bf_ring_area (find_face (fold, "base")->outline),
                                  200.0 * (up - 3.0) + 3.0 * over / 2.0, 1e-6);
}

/* ---- insets -------------------------------------------------------------------------------- */

/* Far enough from the corner each wall is made by itself: the inset one with an end relief, the
 * other as long as its edge. */
static void
test_inset_clear (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "front", 0, 40.0, 90.0)->start_mm = 20.0;
  add_flange (part, "side", 3, 40.0, 90.0);
  fold = bf_fold (part);
  assert_sound (fold);
  g_assert_cmpuint (fold->reliefs->len, ==, 1);
  assert_at (find_relief (fold, "front", 0)->at, bf_vec2 (20.0, 3.0 - BA_MM / 2.0), HAND_MM);
  assert_at (find_bend (fold, "side")->zone[1], bf_vec2 (3.0, 0.0), EXACT_MM);
  g_assert_cmpuint (fold->seams->len, ==, 0);
}

/* A little off the corner the two still meet there: the more inward of inset and corner holds. */
static void
test_inset_near (void)
{
  static const double table[][2] = { { 1.0, 1.5 + GAP_MM / G_SQRT2 }, { 2.5, 2.5 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      Plane start = { { 1.0, 0.0, 0.0 }, { 0.0, 0.0, 0.0 } };

      add_flange (part, "front", 0, 40.0, 90.0)->start_mm = table[i][0];
      add_flange (part, "side", 3, 40.0, 90.0);
      fold = bf_fold (part);
      assert_sound (fold);
      g_assert_cmpfloat_with_epsilon (least_of_outline (fold, "front", &start), table[i][1],
                                      EXACT_MM);
      g_assert_cmpfloat_with_epsilon (find_bend (fold, "front")->zone[0].x, 3.0, EXACT_MM);
      g_assert_nonnull (find_relief (fold, "base:0", 0));
    }
}

/* Two flanges on one edge: each end within it has a relief. */
static void
test_two_on_an_edge (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "left", 0, 40.0, 90.0)->end_mm = 120.0;
  add_flange (part, "right", 0, 40.0, 90.0)->start_mm = 110.0;
  fold = bf_fold (part);
  assert_sound (fold);
  g_assert_cmpuint (fold->reliefs->len, ==, 2);
  assert_at (find_relief (fold, "left", 0)->at, bf_vec2 (80.0, 3.0 - BA_MM / 2.0), HAND_MM);
  assert_at (find_relief (fold, "right", 0)->at, bf_vec2 (110.0, 3.0 - BA_MM / 2.0), HAND_MM);
}

/* ---- lips over a corner ---------------------------------------------------------------------- */

/* The inside face of a wall as a plane that counts inward, by its slab. */
static Plane
inside_face (const BfFold *fold, const char *id, BfTurn turn)
{
  const BfFrame *f = &find_solid (fold, id, BF_SOLID_SLAB)->frame;
  double t = fold->part->metal.thickness_mm;

  if (turn == BF_TURN_UP)
    return (Plane){ f->ez, f->origin };
  return (Plane){ bf_vec3_scale (f->ez, -1.0), bf_vec3_along (f->origin, f->ez, -t) };
}

/* Where two planes and z = 0 meet (Cramer's rule). */
static BfVec3
meet_at_base (const Plane *a, const Plane *b)
{
  double c = bf_vec3_dot (a->n, a->through), d = bf_vec3_dot (b->n, b->through);
  double det = a->n.x * b->n.y - a->n.y * b->n.x;

  return bf_vec3 ((c * b->n.y - d * a->n.y) / det, (a->n.x * d - b->n.x * c) / det, 0.0);
}

/* The mitre between two walls, from the side of the first. */
static Plane
mitre (const BfFold *fold, const char *own, const char *other, BfTurn turn)
{
  Plane a = inside_face (fold, own, turn), b = inside_face (fold, other, turn);

  return (Plane){ bf_vec3_unit (bf_vec3_sub (b.n, a.n)), meet_at_base (&a, &b) };
}

typedef struct
{
  guint n_sides;
  double wall_deg, lip_deg;
  BfTurn turn;
} Pan;

static const Pan pans[] = {
  { 4, 90, 90, BF_TURN_UP },    { 4, 90, 90, BF_TURN_DOWN },  { 4, 60, 60, BF_TURN_UP },
  { 4, 105, 45, BF_TURN_UP },   { 4, 105, 45, BF_TURN_DOWN }, { 6, 90, 90, BF_TURN_UP },
  { 6, 70, 110, BF_TURN_DOWN }, { 3, 90, 60, BF_TURN_UP },    { 8, 45, 90, BF_TURN_UP },
};

/* Both lips of every corner come within half the gap of the mitre plane, on one face, and no
 * nearer on either, nor anywhere round their bends. */
static void
test_lips (void)
{
  for (guint k = 0; k < G_N_ELEMENTS (pans); k++)
    {
      const Pan *pan = &pans[k];
      g_autoptr (BfPart) part = make_ring (pan->n_sides, 150.0, 40.0, pan->wall_deg);
      g_autoptr (BfFold) fold = NULL;

      for (guint i = 0; i < pan->n_sides; i++)
        {
          g_autofree char *wall = g_strdup_printf ("f%u", i), *lip = g_strdup_printf ("l%u", i);

          ((BfFlange *)g_ptr_array_index (part->flanges, i))->turn = pan->turn;
          add_lip (part, lip, wall, 14.0, pan->lip_deg)->turn = pan->turn;
        }
      fold = bf_fold (part);
      g_test_message ("%u sides, %g and %g", pan->n_sides, pan->wall_deg, pan->lip_deg);
      assert_sound (fold);
      for (guint i = 0; i < 2 * pan->n_sides; i++)
        {
          guint own = i / 2, step = i % 2 == 0 ? 1 : pan->n_sides - 1;
          g_autofree char *wall = g_strdup_printf ("f%u", own);
          g_autofree char *next = g_strdup_printf ("f%u", (own + step) % pan->n_sides);
          g_autofree char *lip = g_strdup_printf ("l%u", own);
          Plane plane = mitre (fold, wall, next, pan->turn);

          g_assert_cmpfloat_with_epsilon (least_of_slab (fold, lip, &plane), GAP_MM / 2.0,
                                          EXACT_MM);
          g_assert_cmpfloat (least_of_sector (fold, lip, &plane), >=, GAP_MM / 2.0 - EXACT_MM);
        }
    }
}

/* The drip pan by hand: square walls and lips, their inside faces 1.5 in. The mitre is the plane
 * x = y over the first corner; the lip's outer face, 12 from the wall's, reaches to x = 12 + g/√2
 * there. */
static void
test_drip_pan (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  const BfRing *outline;
  guint corner = 0;

  for (guint i = 0; i < 4; i++)
    {
      g_autofree char *wall = g_strdup_printf ("f%u", i), *lip = g_strdup_printf ("l%u", i);
      add_lip (part, lip, wall, 12.0, 90.0);
    }
  fold = bf_fold (part);
  assert_sound (fold);
  outline = find_face (fold, "l0")->outline;
  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      guint face = (guint)(find_face (fold, "l0") - bf_fold_face (fold, 0));
      BfVec3 p = bf_fold_place (fold, face, bf_ring_vertex (outline, i)->p);

      if (p.y > 12.0 - EXACT_MM && p.x < 100.0)
        {
          assert_in_space (p, bf_vec3 (12.0 + GAP_MM / G_SQRT2, 12.0, 37.0), EXACT_MM);
          corner++;
        }
    }
  g_assert_cmpuint (corner, ==, 1);
  g_assert_cmpuint (fold->seams->len, ==, 8);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/inside-corner/walls/flat", test_share_flat);
  g_test_add_func ("/inside-corner/walls/space", test_share_space);
  g_test_add_func ("/inside-corner/walls/by-hand", test_ell_by_hand);
  g_test_add_func ("/inside-corner/walls/lips", test_ell_lips);
  g_test_add_func ("/inside-corner/bare/end", test_bare_inside_corner);
  g_test_add_func ("/inside-corner/bare/start", test_bare_inside_corner_start);
  g_test_add_func ("/corner/opposite-turns", test_opposite_turns);
  g_test_add_func ("/corner/bare-skew", test_bare_skew_corners);
  g_test_add_func ("/corner/inset-clear", test_inset_clear);
  g_test_add_func ("/corner/inset-near", test_inset_near);
  g_test_add_func ("/corner/two-on-an-edge", test_two_on_an_edge);
  g_test_add_func ("/corner/lips", test_lips);
  g_test_add_func ("/corner/drip-pan", test_drip_pan);
  return g_test_run ();
}
