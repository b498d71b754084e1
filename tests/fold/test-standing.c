/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Faces stood one bend at a time: where they would be if all were stood at once, and what is near
 * what. */

#include "fold/standing.h"

#include "fold/formed.h"
#include "make-any.h"

#define N_PARTS 60
#define N_TURNS 12
#define GIVE_MM 0.1

static double
any_fraction (GRand *rand)
{
  return g_rand_int_range (rand, 0, 5) / 4.0;
}

static void
assert_point (BfVec3 a, BfVec3 b)
{
  g_assert_cmpfloat (bf_vec3_length (bf_vec3_sub (a, b)), <, 1e-9);
}

/* Against the metal built anew with the same fractions. */
static void
assert_stands (const BfFold *fold, const BfStanding *standing, const double *fractions)
{
  g_auto (BfFormed) formed = { .solids = NULL };

  bf_formed_build_each (fold->layout, fold->faces, fractions, &formed);
  for (guint i = 0; i < formed.solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (&formed, i), *stood;

      if (solid->kind != BF_SOLID_SLAB ||
          solid->outline != bf_fold_face (fold, solid->face)->outline)
        continue;
      stood = bf_standing_slab (standing, solid->face);
      assert_point (stood->frame.origin, solid->frame.origin);
      assert_point (stood->frame.ex, solid->frame.ex);
      assert_point (stood->frame.ey, solid->frame.ey);
    }
}

static void
test_turn (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfStanding) standing = bf_standing_new (fold);
      g_autofree double *fractions = g_new0 (double, fold->bends->len + 1);

      g_test_message ("seed %u", seed);
      assert_stands (fold, standing, fractions);
      for (guint i = 0; i < N_TURNS && fold->bends->len > 0; i++)
        {
          guint bend = (guint)g_rand_int_range (rand, 0, (gint32)fold->bends->len);

          fractions[bend] = any_fraction (rand);
          bf_standing_turn (standing, bend, fractions[bend]);
          assert_stands (fold, standing, fractions);
        }
    }
}

static gboolean
holds (const GArray *faces, guint face)
{
  for (guint i = 0; i < faces->len; i++)
    if (g_array_index (faces, guint, i) == face)
      return TRUE;
  return FALSE;
}

/* Turns a bend, and all that hangs on it somehow; whatever a swinging face then runs into was told
 * to be near. Returns how many were told that do not hang on it. */
static guint
check_near (const BfFold *fold, BfStanding *standing, guint bend, GRand *rand)
{
  g_autoptr (GArray) near = bf_standing_near (standing, bend, 0.0);
  guint n_still = 0;

  for (guint i = 0; i < near->len; i++)
    n_still += bf_standing_hangs_on (standing, g_array_index (near, guint, i), bend) ? 0 : 1;
  for (guint k = 0; k < N_TURNS; k++)
    {
      for (guint i = 0; i < fold->bends->len; i++)
        if (bf_standing_hangs_on (standing, i + 1, bend))
          bf_standing_turn (standing, i, any_fraction (rand));
      for (guint a = 0; a < fold->faces->len; a++)
        for (guint b = 0; b < fold->faces->len; b++)
          if (bf_standing_hangs_on (standing, a, bend) && !holds (near, b))
            g_assert_false (bf_standing_faces_hit (standing, a, b, GIVE_MM));
    }
  return n_still;
}

static void
test_near (void)
{
  guint n_told = 0, n_all = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfStanding) standing = bf_standing_new (fold);

      g_test_message ("seed %u", seed);
      for (guint bend = 0; bend < fold->bends->len; bend++)
        {
          for (guint i = 0; i < fold->bends->len; i++)
            bf_standing_turn (standing, i, any_fraction (rand));
          n_told += check_near (fold, standing, bend, rand);
          n_all += fold->faces->len;
        }
    }
  g_test_message ("%u of %u faces told", n_told, n_all);
  g_assert_cmpuint (n_told, <, n_all);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/standing/turn", test_turn);
  g_test_add_func ("/standing/near", test_near);
  return g_test_run ();
}
