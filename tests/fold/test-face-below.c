/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* A flange on a wall's side, where the wall leans in over the base: it keeps off the base. */

#include "look-up.h"
#include "make-part.h"

#define T 1.5

/* A wall on edge 0 of a base whose corners there have that interior angle, with a flange on its
 * start side. */
static BfPart *
wall_with_ear (double interior_deg, double wall_deg, double ear_deg, BfTurn turn)
{
  double lean = 60.0 / tan (bf_deg_to_rad (interior_deg));
  const BfVec2 outline[] = { { 0, 0 }, { 160, 0 }, { 160 - lean, 60 }, { lean, 60 } };
  BfPart *part = make_part (outline, G_N_ELEMENTS (outline));
  BfFlange *ear;

  add_flange (part, "wall", 0, 40.0, wall_deg)->turn = turn;
  ear = add_ear (part, "ear", "wall", BF_EDGE_START, 15.0);
  ear->angle_deg = ear_deg;
  ear->turn = turn;
  return part;
}

/* How high the lowest point of a face stands over the base, on the side to which walls turn. */
static double
lowest_mm (const BfFold *fold, const char *id, BfTurn turn)
{
  guint face = (guint)bf_fold_find_face (fold, id);
  double lowest = G_MAXDOUBLE;

  for (guint i = 0; i < fold->formed.solids->len; i++)
    {
      const BfSolid *slab = bf_formed_solid (&fold->formed, i);

      if (slab->kind != BF_SOLID_SLAB || slab->face != face)
        continue;
      for (guint k = 0; k < bf_ring_size (slab->outline); k++)
        {
          BfVec2 p = bf_solid_local (slab, bf_ring_vertex (slab->outline, k)->p);
          double z = bf_frame_point (&slab->frame, p.x, p.y, 0.0).z;
          double other = bf_frame_point (&slab->frame, p.x, p.y, -T).z;

          lowest = MIN (lowest, turn == BF_TURN_UP ? MIN (z, other) : -T - MAX (z, other));
        }
    }
  return lowest;
}

/* The wall's own flat begins R (1 − cos θ) over the base: as far off, the gap (0.5) at most, its
 * flange stays. At 90° it goes straight out from there and nothing is trimmed. */
static const struct
{
  double wall_deg, radius_mm, lowest_mm;
} heights[] = {
  { 90.0, 1.5, 1.5 },  /* 1.5 · 1 */
  { 110.0, 1.5, 0.5 }, /* 1.5 · 1.3420 = 2.0130, the gap is less */
  { 110.0, 0.0, 0.0 },       { 110.0, 0.2, 0.2684040 }, /* 0.2 · 1.3420201 */
  { 135.0, 0.2, 0.3414214 },                            /* 0.2 · 1.7071068 */
  { 135.0, 4.0, 0.5 },
};

static void
test_heights (void)
{
  for (guint i = 0; i < 2 * G_N_ELEMENTS (heights); i++)
    {
      BfTurn turn = i % 2 == 0 ? BF_TURN_UP : BF_TURN_DOWN;
      g_autoptr (BfPart) part = wall_with_ear (90.0, heights[i / 2].wall_deg, 90.0, turn);
      g_autoptr (BfFold) fold = NULL;

      part->bend.inside_radius_mm = heights[i / 2].radius_mm;
      fold = bf_fold (part);
      g_assert_cmpfloat_with_epsilon (lowest_mm (fold, "ear", turn), heights[i / 2].lowest_mm,
                                      1e-6);
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
    }
}

/* The lip on such a flange's tip stands over the base too. */
static void
test_lip (void)
{
  for (guint i = 0; i < 2; i++)
    {
      BfTurn turn = i == 0 ? BF_TURN_UP : BF_TURN_DOWN;
      g_autoptr (BfPart) part = wall_with_ear (90.0, 115.0, 90.0, turn);
      g_autoptr (BfFold) fold = NULL;

      add_lip (part, "lip", "ear", 10.0, 60.0)->turn = turn;
      fold = bf_fold (part);
      g_assert_cmpfloat_with_epsilon (lowest_mm (fold, "ear", turn), 0.5, 1e-6);
      g_assert_cmpfloat (lowest_mm (fold, "lip", turn), >=, 0.5 - 1e-6);
      g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
    }
}

/* Beside the base a flange may hang as low as it likes; where the corner is obtuse there is base
 * under it. */
static void
test_beside (void)
{
  g_autoptr (BfPart) beside = wall_with_ear (90.0, 110.0, 45.0, BF_TURN_UP);
  g_autoptr (BfPart) over = wall_with_ear (130.0, 110.0, 45.0, BF_TURN_UP);
  g_autoptr (BfFold) free = bf_fold (beside);
  g_autoptr (BfFold) trimmed = bf_fold (over);

  g_assert_cmpfloat (lowest_mm (free, "ear", BF_TURN_UP), <, -1.0);
  g_assert_cmpfloat (lowest_mm (trimmed, "ear", BF_TURN_UP), >=, 0.0);
  g_assert_cmpuint (bf_fold_count_checks (free, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_cmpuint (bf_fold_count_checks (trimmed, BF_SEVERITY_MUST_FIX), ==, 0);
}

/* A flange that turns the other way leaves the base and is not touched. */
static void
test_other_turn (void)
{
  g_autoptr (BfPart) part = wall_with_ear (90.0, 110.0, 90.0, BF_TURN_UP);
  g_autoptr (BfPart) other = bf_part_copy (part);
  g_autoptr (BfFold) fold = NULL, plain = NULL;

  ((BfFlange *)other->flanges->pdata[1])->turn = BF_TURN_DOWN;
  fold = bf_fold (part);
  plain = bf_fold (other);
  g_assert_cmpfloat (bf_ring_area (find_face (fold, "ear")->outline), <,
                     bf_ring_area (find_face (plain, "ear")->outline) - 10.0);
  g_assert_cmpuint (bf_fold_count_checks (plain, BF_SEVERITY_MUST_FIX), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/face-below/heights", test_heights);
  g_test_add_func ("/face-below/lip", test_lip);
  g_test_add_func ("/face-below/beside", test_beside);
  g_test_add_func ("/face-below/other-turn", test_other_turn);
  return g_test_run ();
}
