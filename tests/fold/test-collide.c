/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The formed metal does not pass through itself. */

#include "slab-overlap.h"
#include "look-up.h"
#include "make-part.h"

/* With -m thorough many more. */
#define N_PARTS 400
#define N_THOROUGH 2000

/* Deeper than this is a collision; metal may touch. */
#define DEEPEST_MM 1e-3

static void
assert_apart (guint seed, const BfFold *fold)
{
  guint a = 0, b = 0;
  double worst = slab_worst_overlap (fold, &a, &b);

  if (worst > DEEPEST_MM)
    g_test_message ("seed %u: %s goes %g mm into %s", seed, bf_fold_face (fold, a)->id, worst,
                    bf_fold_face (fold, b)->id);
  g_assert_cmpfloat (worst, <=, DEEPEST_MM);
}

/* Every flange turned as the first one. */
static void
turn_alike (BfPart *part)
{
  for (guint i = 0; i < part->flanges->len; i++)
    ((BfFlange *)g_ptr_array_index (part->flanges, i))->turn = bf_part_flange (part, 0)->turn;
}

static void
test_random (void)
{
  guint n_parts = g_test_thorough () ? N_THOROUGH : N_PARTS, n = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = NULL;

      if (part->flanges->len > 0)
        turn_alike (part);
      fold = bf_fold (part);
      if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      assert_apart (seed, fold);
      n++;
    }
  g_assert_cmpuint (n, >, n_parts / 2);
}

/* A tray of n sides with lips, whose corners are joined one way, for walls that lean every way. */
static void
test_joins (void)
{
  static const BfJoin joins[] = { BF_JOIN_OPEN, BF_JOIN_COVERS_BEFORE, BF_JOIN_COVERS_AFTER };

  for (guint n = 4; n <= 8; n += 2)
    for (double angle = 30.0; angle <= 120.0; angle += 15.0)
      for (guint k = 0; k < 2 * G_N_ELEMENTS (joins); k++)
        {
          g_autoptr (BfPart) part = make_ring (n, 150.0, 30.0, angle);
          g_autoptr (BfFold) fold = NULL;

          for (guint i = 0; i < n; i++)
            {
              BfCorner *corner = bf_corner_new ("base", i);
              g_autofree char *wall = g_strdup_printf ("f%u", i), *lip = NULL;

              corner->join = joins[k / 2];
              g_ptr_array_add (part->corners, corner);
              lip = g_strdup_printf ("l%u", i);
              if (k % 2 == 1 || i % 2 == 0) /* lips all round, or beside bare walls */
                add_lip (part, lip, wall, 12.0, 70.0);
            }
          fold = bf_fold (part);
          g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
          assert_apart (n * 1000 + (guint)angle, fold);
        }
}

/* ---- the check itself ----------------------------------------------------------------------- */

/* Two square walls of a tray, untrimmed, stand in each other by the metal's thickness: each inside
 * face lies 1.5 in from the other's end. */
static void
test_untrimmed (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfCorner *corner = bf_corner_new ("base", 1);
  g_autoptr (BfFold) fold = NULL;
  guint a = 0, b = 0;

  add_flange (part, "front", 0, 40.0, 90.0);
  add_flange (part, "side", 1, 40.0, 90.0);
  corner->join = BF_JOIN_UNTRIMMED;
  g_ptr_array_add (part->corners, corner);
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (slab_worst_overlap (fold, &a, &b), 1.5, 1e-9);
  g_assert_cmpuint (a + b, ==, 3);
}

/* Walls that lean far in over a narrow base go through each other. */
static void
test_across (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 30.0);
  g_autoptr (BfFold) fold = NULL;
  guint a = 0, b = 0;

  add_flange (part, "front", 0, 40.0, 130.0);
  add_flange (part, "back", 2, 40.0, 130.0);
  fold = bf_fold (part);
  g_assert_cmpfloat (slab_worst_overlap (fold, &a, &b), >, 1.0);
  g_assert_cmpuint (a + b, ==, 3);
}

/* A closed hem lies on the base: it touches, and goes no deeper. */
static void
test_hem (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  guint a = 0, b = 0;

  add_flange (part, "hem", 0, 12.0, 180.0);
  part->bend.inside_radius_mm = 0.0;
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (slab_worst_overlap (fold, &a, &b), 0.0, 1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/collide/untrimmed", test_untrimmed);
  g_test_add_func ("/collide/across", test_across);
  g_test_add_func ("/collide/hem", test_hem);
  g_test_add_func ("/collide/joins", test_joins);
  g_test_add_func ("/collide/random", test_random);
  return g_test_run ();
}
