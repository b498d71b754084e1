/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The formed part: where its metal stands, against numbers worked out by hand. The marking side of
 * the base lies at z = 0, its other face at −t. */

#include "look-up.h"
#include "make-any.h"
#include "make-part.h"

#define T_MM 1.5
#define R_MM 1.5
#define EXACT_MM 1e-9

/* ---- box ----------------------------------------------------------------------------------- */

typedef struct
{
  const char *what;
  double angle_deg, length_mm, radius_mm;
  BfTurn turn;
  BfMeasure measure;
  BfVec3 min, max;
} Box;

#define SQRT_HALF 0.70710678118654752

/* A base of 200 × 120 with one flange on its first edge, y = 0, turned away from y. */
static const Box boxes[] = {
  { "square up", 90, 40, 1.5, BF_TURN_UP, BF_MEASURE_OUTSIDE, { 0, 0, -1.5 }, { 200, 120, 38.5 } },
  { "square down", 90, 40, 1.5, BF_TURN_DOWN, BF_MEASURE_OUTSIDE, { 0, 0, -40 }, { 200, 120, 0 } },
  { "up, inside", 90, 40, 1.5, BF_TURN_UP, BF_MEASURE_INSIDE, { 0, -1.5, -1.5 }, { 200, 120, 40 } },
  { "down, inside",
    90,
    40,
    1.5,
    BF_TURN_DOWN,
    BF_MEASURE_INSIDE,
    { 0, -1.5, -41.5 },
    { 200, 120, 0 } },
  { "large radius", 90, 40, 9, BF_TURN_UP, BF_MEASURE_OUTSIDE, { 0, 0, -1.5 }, { 200, 120, 38.5 } },
  /* The outer face meets the base's at y = 0; its tip is 40 along, and t thick across. */
  { "half up",
    45,
    40,
    1.5,
    BF_TURN_UP,
    BF_MEASURE_OUTSIDE,
    { 0, -40 * SQRT_HALF, -1.5 },
    { 200, 120, -1.5 + (40 + T_MM) * SQRT_HALF } },
  { "half down",
    45,
    40,
    1.5,
    BF_TURN_DOWN,
    BF_MEASURE_OUTSIDE,
    { 0, -40 * SQRT_HALF, -(40 + T_MM) * SQRT_HALF },
    { 200, 120, 0 } },
  /* The outermost tangent lies at y = 0. The leaf is 2R up, and reaches 10 from there. */
  { "open hem", 180, 10, 1, BF_TURN_UP, BF_MEASURE_OUTSIDE, { 0, 0, -1.5 }, { 200, 120, 3.5 } },
  { "closed hem", 180, 10, 0, BF_TURN_UP, BF_MEASURE_OUTSIDE, { 0, 0, -1.5 }, { 200, 120, 1.5 } },
  { "hem down", 180, 10, 0, BF_TURN_DOWN, BF_MEASURE_OUTSIDE, { 0, 0, -3 }, { 200, 120, 0 } },
  /* Turned on past square: 30° back in from upright, its tip 40 from the outermost tangent
   * measured along it; the farthest out is the bend itself. */
  { "past square",
    120,
    40,
    1.5,
    BF_TURN_UP,
    BF_MEASURE_OUTSIDE,
    { 0, 0, -1.5 },
    { 200, 120, 1.5 + 3 * 0.5 + (40 - 3) * 0.86602540378443865 } },
};

static void
test_boxes (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (boxes); i++)
    {
      const Box *b = &boxes[i];
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;

      add_flange (part, "front", 0, b->length_mm, b->angle_deg)->turn = b->turn;
      part->bend.inside_radius_mm = b->radius_mm;
      part->measure = b->measure;
      fold = bf_fold (part);
      g_test_message ("%s", b->what);
      assert_in_space (fold->formed.min, b->min, EXACT_MM);
      assert_in_space (fold->formed.max, b->max, EXACT_MM);
    }
}

/* A square tray is as wide and deep as drawn, and as high as its walls. */
static void
test_tray (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  assert_in_space (fold->formed.min, bf_vec3 (0.0, 0.0, -T_MM), EXACT_MM);
  assert_in_space (fold->formed.max, bf_vec3 (200.0, 120.0, 40.0 - T_MM), EXACT_MM);
}

/* ---- volume -------------------------------------------------------------------------------- */

/* The base ends at its tangents, S = 3 in; zones are as long as it and hold a quarter ring each;
 * each wall is 40 − 3 high and stands g/√2 back from where the inside faces meet, 1.5 in. */
static void
test_volume (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  double width = 200.0 - 6.0, depth = 120.0 - 6.0;
  double back = 1.5 + 0.5 / G_SQRT2;
  double base = width * depth * T_MM;
  double quarter = G_PI_4 * ((R_MM + T_MM) * (R_MM + T_MM) - R_MM * R_MM);
  double walls = 2.0 * (200.0 - 2.0 * back + 120.0 - 2.0 * back) * 37.0 * T_MM;

  g_assert_cmpfloat_with_epsilon (fold->formed.volume_mm3,
                                  base + 2.0 * (width + depth) * quarter + walls, 1e-6);
}

/* ---- where points go ----------------------------------------------------------------------- */

/* The tip's ends of a wall on the second edge, x = 200, on the marking side: inside of an up bend,
 * outside of a down bend. */
static void
test_place (void)
{
  for (BfTurn turn = BF_TURN_UP; turn <= BF_TURN_DOWN; turn++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      const BfFace *face;
      double x = turn == BF_TURN_UP ? 198.5 : 200.0, z = turn == BF_TURN_UP ? 38.5 : -40.0;
      double low_z = turn == BF_TURN_UP ? 1.5 : -3.0;
      double flat = 200.0 - 3.0 + G_PI_2 * 2.25; /* x of the flange's tangent, at K 0.5 */

      add_flange (part, "side", 1, 40.0, 90.0)->turn = turn;
      part->bend.allowance.k = 0.5;
      fold = bf_fold (part);
      face = find_face (fold, "side");
      assert_in_space (bf_fold_place (fold, 1, bf_vec2 (flat, 0.0)), bf_vec3 (x, 0.0, low_z),
                       EXACT_MM);
      assert_in_space (bf_fold_place (fold, 1, bf_vec2 (flat + 37.0, 120.0)), bf_vec3 (x, 120.0, z),
                       EXACT_MM);
      g_assert_cmpuint (bf_ring_size (face->outline), ==, 4);
    }
}

static void
test_place_base (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  assert_in_space (bf_fold_place (fold, 0, bf_vec2 (7.0, 9.0)), bf_vec3 (7.0, 9.0, 0.0), EXACT_MM);
}

/* A lip on a wall: 90° and 90° up make it lie over the base, its outer face as high as the wall. */
static void
test_lip (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  const BfRing *outline;
  BfVec3 min = { G_MAXDOUBLE, G_MAXDOUBLE, G_MAXDOUBLE }, max = { 0.0, 0.0, 0.0 };

  add_flange (part, "wall", 0, 40.0, 90.0);
  add_lip (part, "lip", "wall", 12.0, 90.0);
  fold = bf_fold (part);
  g_assert_cmpstr (bf_fold_face (fold, 1)->id, ==, "lip");
  g_assert_cmpint (bf_fold_face (fold, 1)->parent, ==, 2);
  outline = bf_fold_face (fold, 1)->outline;
  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      BfVec3 p = bf_fold_place (fold, 1, bf_ring_vertex (outline, i)->p);

      min = bf_vec3 (MIN (min.x, p.x), MIN (min.y, p.y), MIN (min.z, p.z));
      max = bf_vec3 (MAX (max.x, p.x), MAX (max.y, p.y), MAX (max.z, p.z));
    }
  /* Its marking side is below: 40 − 1.5 up to the outer face, less t. */
  assert_in_space (min, bf_vec3 (0.0, 3.0, 37.0), EXACT_MM);
  assert_in_space (max, bf_vec3 (200.0, 12.0, 37.0), EXACT_MM);
  assert_in_space (fold->formed.max, bf_vec3 (200.0, 120.0, 38.5), EXACT_MM);
}

/* ---- solids -------------------------------------------------------------------------------- */

static void
assert_right_handed (const BfFrame *f)
{
  g_assert_cmpfloat_with_epsilon (bf_vec3_length (f->ex), 1.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_vec3_length (f->ey), 1.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_vec3_length (f->ez), 1.0, 1e-12);
  assert_in_space (bf_vec3_cross (f->ex, f->ey), f->ez, 1e-12);
}

/* A point of the blank in space, by a slab's own account of itself. */
static BfVec3
by_slab (const BfSolid *slab, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (p, slab->flat_origin);

  return bf_frame_point (&slab->frame, bf_vec2_dot (d, slab->flat_ex),
                         bf_vec2_dot (d, slab->flat_ey), 0.0);
}

/* A point of a sector on the marking side, at x and at a part of its angle. */
static BfVec3
by_sector (const BfSolid *s, double x, double share, double t)
{
  double a = s->angle_rad * share, r = s->radius_mm;

  if (s->turn == BF_TURN_UP)
    return bf_frame_point (&s->frame, x, r * sin (a), r - r * cos (a));
  r += t;
  return bf_frame_point (&s->frame, x, r * sin (a), r * cos (a) - r);
}

/* Every flange's slab begins where its sector ends, and that where its parent's slab ends. */
static void
check_solids (const BfFold *fold, const BfFormed *formed)
{
  double t = fold->part->metal.thickness_mm;
  const BfSolid *slabs[16] = { NULL };

  for (guint i = 0; i < formed->solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (formed, i);

      assert_right_handed (&solid->frame);
      if (solid->kind == BF_SOLID_SLAB)
        slabs[solid->face] = solid;
    }
  for (guint i = 0; i < formed->solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (formed, i);
      const BfBendResult *bend;
      guint parent;

      if (solid->kind == BF_SOLID_SLAB)
        continue;
      bend = bf_fold_bend (fold, solid->face - 1);
      parent = (guint)bf_fold_face (fold, solid->face)->parent;
      assert_in_space (by_sector (solid, 0.0, 0.0, t), by_slab (slabs[parent], bend->zone[1]),
                       1e-7);
      assert_in_space (by_sector (solid, solid->width_mm, 0.0, t),
                       by_slab (slabs[parent], bend->zone[0]), 1e-7);
      assert_in_space (by_sector (solid, 0.0, 1.0, t), by_slab (slabs[solid->face], bend->zone[2]),
                       1e-7);
      assert_in_space (by_sector (solid, solid->width_mm, 1.0, t),
                       by_slab (slabs[solid->face], bend->zone[3]), 1e-7);
    }
}

static BfPart *
make_mixed (void)
{
  BfPart *part = make_ring (6, 100.0, 30.0, 70.0);

  ((BfFlange *)g_ptr_array_index (part->flanges, 2))->turn = BF_TURN_DOWN;
  add_lip (part, "lip", "f0", 15.0, 100.0);
  add_lip (part, "down", "f2", 15.0, 60.0)->turn = BF_TURN_UP;
  return part;
}

static void
test_solids (void)
{
  g_autoptr (BfPart) part = make_mixed ();
  g_autoptr (BfFold) fold = bf_fold (part);

  g_assert_cmpuint (fold->formed.solids->len, ==, 1 + 2 * 8);
  check_solids (fold, &fold->formed);
  for (guint i = 1; i < 20; i++)
    {
      g_auto (BfFormed) formed = { NULL };

      bf_fold_formed_at (fold, i / 20.0, &formed);
      check_solids (fold, &formed);
    }
}

/* ---- bending step by step ------------------------------------------------------------------- */

/* At 0 every face lies where the blank has it. A bend is never quite flat: 1e-6 of a turn on parts
 * of this size is 2e-4 mm. */
static void
test_flat (void)
{
  g_autoptr (BfPart) part = make_mixed ();
  g_autoptr (BfFold) fold = bf_fold (part);
  g_auto (BfFormed) formed = { NULL };

  bf_fold_formed_at (fold, 0.0, &formed);
  g_assert_cmpuint (formed.solids->len, ==, fold->formed.solids->len);
  for (guint i = 0; i < formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&formed, i);
      const BfRing *outline = bf_fold_face (fold, solid->face)->outline;

      for (guint k = 0; solid->kind == BF_SOLID_SLAB && k < bf_ring_size (outline); k++)
        {
          BfVec2 p = bf_ring_vertex (outline, k)->p;
          assert_in_space (by_slab (solid, p), bf_vec3 (p.x, p.y, 0.0), 2e-4);
        }
    }
}

static double
farthest_move (const BfFold *fold, const BfFormed *a, const BfFormed *b)
{
  double far = 0.0;

  for (guint i = 0; i < a->solids->len; i++)
    {
      const BfSolid *x = bf_formed_solid (a, i), *y = bf_formed_solid (b, i);
      const BfRing *outline = bf_fold_face (fold, x->face)->outline;

      for (guint k = 0; x->kind == BF_SOLID_SLAB && k < bf_ring_size (outline); k++)
        {
          BfVec2 p = bf_ring_vertex (outline, k)->p;
          far = MAX (far, bf_vec3_length (bf_vec3_sub (by_slab (x, p), by_slab (y, p))));
        }
    }
  return far;
}

/* No jump from flat to formed: a small step moves no point far, whether near 0, on the way or into
 * 1, where the true radius takes over. */
static void
test_continuous (void)
{
  g_autoptr (BfPart) part = make_mixed ();
  g_autoptr (BfFold) fold = bf_fold (part);
  const double at[] = { 0.0, 1e-5, 0.1, 0.25, 0.5, 0.75, 0.99, 1.0 - 1e-6 };

  for (guint i = 0; i < G_N_ELEMENTS (at); i++)
    {
      g_auto (BfFormed) from = { NULL }, to = { NULL };

      bf_fold_formed_at (fold, at[i], &from);
      bf_fold_formed_at (fold, at[i] + 1e-6, &to);
      g_assert_cmpfloat (farthest_move (fold, &from, &to), <, 1e-3);
    }
}

/* The same of parts drawn by lot, bent over a bar or scored, folded corners and flanges on sides
 * among them. */
static void
test_continuous_by_lot (void)
{
  static const double at[] = { 0.0, 0.1, 0.37, 0.8, 0.999, 1.0 - 1e-6 };

  for (guint seed = 0; seed < 40; seed++)
    {
      g_autoptr (BfPart) part = seed % 2 == 0 ? make_any (seed / 2) : make_random_deep (seed);
      g_autoptr (BfFold) fold = NULL;

      if (seed % 4 == 1)
        {
          part->bend.way = BF_BEND_WAY_SCORE;
          part->bend.inside_radius_mm = part->bend.allowance.k = NAN;
        }
      fold = bf_fold (part);
      for (guint i = 0; i < G_N_ELEMENTS (at); i++)
        {
          g_auto (BfFormed) from = { NULL }, to = { NULL };

          bf_fold_formed_at (fold, at[i], &from);
          bf_fold_formed_at (fold, at[i] + 1e-6, &to);
          g_test_message ("seed %u at %g", seed, at[i]);
          /* A millionth of three bends of 2 rad each, on a metre of metal, is 6e-3. */
          g_assert_cmpfloat (farthest_move (fold, &from, &to), <, 6e-3);
        }
    }
}

static void
test_whole (void)
{
  g_autoptr (BfPart) part = make_mixed ();
  g_autoptr (BfFold) fold = bf_fold (part);
  g_auto (BfFormed) whole = { NULL }, beyond = { NULL }, below = { NULL }, flat = { NULL };

  bf_fold_formed_at (fold, 1.0, &whole);
  bf_fold_formed_at (fold, 3.0, &beyond);
  bf_fold_formed_at (fold, -1.0, &below);
  bf_fold_formed_at (fold, 0.0, &flat);
  g_assert_cmpfloat (farthest_move (fold, &whole, &fold->formed), <, 1e-12);
  g_assert_cmpfloat (farthest_move (fold, &beyond, &fold->formed), <, 1e-12);
  g_assert_cmpfloat (farthest_move (fold, &below, &flat), <, 1e-12);
  g_assert_cmpfloat (farthest_move (fold, &whole, &flat), >, 10.0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/formed/boxes", test_boxes);
  g_test_add_func ("/formed/tray", test_tray);
  g_test_add_func ("/formed/volume", test_volume);
  g_test_add_func ("/formed/place", test_place);
  g_test_add_func ("/formed/place-base", test_place_base);
  g_test_add_func ("/formed/lip", test_lip);
  g_test_add_func ("/formed/solids", test_solids);
  g_test_add_func ("/formed/flat", test_flat);
  g_test_add_func ("/formed/continuous", test_continuous);
  g_test_add_func ("/formed/continuous-by-lot", test_continuous_by_lot);
  g_test_add_func ("/formed/whole", test_whole);
  return g_test_run ();
}
