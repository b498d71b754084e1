/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-any.h"
#include "make-part.h"
#include "make/join-plan.h"

#define N_PARTS 80

static GArray *
order_of (const BfFold *fold)
{
  GArray *order = g_array_new (FALSE, FALSE, sizeof (guint));

  bf_join_order (fold, order);
  return order;
}

/* Where the flanges of a tray's seam meet: their names are of the edges before and after it. */
static guint
corner_of (const BfFold *fold, guint seam)
{
  const BfFlange *after = bf_part_find_flange (fold->part, bf_fold_seam (fold, seam)->after);

  return after->edge_index;
}

/* Every seam once, whatever the part. */
static void
test_each_once (void)
{
  guint seams = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) order = order_of (fold);
      g_autofree gboolean *taken = g_new0 (gboolean, fold->seams->len + 1);

      g_assert_cmpuint (order->len, ==, fold->seams->len);
      for (guint i = 0; i < order->len; i++, seams++)
        {
          guint seam = g_array_index (order, guint, i);

          g_assert_cmpuint (seam, <, fold->seams->len);
          g_assert_false (taken[seam]);
          taken[seam] = TRUE;
        }
    }
  g_assert_cmpuint (seams, >, 2 * N_PARTS);
}

/* The seams' flanges are the fold's, and no seam joins what the part folds double. */
static void
test_seams_are_of_flanges (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      for (guint i = 0; i < fold->seams->len; i++)
        {
          const BfSeam *seam = bf_fold_seam (fold, i);

          g_assert_cmpint (bf_fold_find_face (fold, seam->before), >, 0);
          g_assert_cmpint (bf_fold_find_face (fold, seam->after), >, 0);
          g_assert_cmpstr (seam->before, !=, seam->after);
          for (guint k = 0; k < fold->folded->len; k++)
            {
              const BfFoldedCorner *corner = bf_fold_folded_corner (fold, k);
              const char *along = bf_fold_face (fold, corner->along)->id;
              const char *end = bf_fold_face (fold, corner->end)->id;

              g_assert_false (g_str_equal (seam->before, along) && g_str_equal (seam->after, end));
              g_assert_false (g_str_equal (seam->before, end) && g_str_equal (seam->after, along));
            }
        }
    }
}

/* Round a ring of n walls the second seam stands across from the first, and the third midway
 * between on one of both sides, so that heat spreads. */
static void
test_across (void)
{
  static const guint rows[] = { 4, 6, 8, 12 };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      guint n = rows[i], corners[3];
      g_autoptr (BfPart) part = make_ring (n, 200.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) order = order_of (fold);

      g_assert_cmpuint (order->len, ==, n);
      for (guint k = 0; k < 3; k++)
        corners[k] = corner_of (fold, g_array_index (order, guint, k));
      g_assert_cmpuint ((corners[1] + n - corners[0]) % n, ==, n / 2);
      /* Of 6, none is midway: a third of the way round is as far as it gets. */
      g_assert_cmpuint (MIN ((corners[2] + n - corners[0]) % n, (corners[0] + n - corners[2]) % n),
                        >=, n / 4);
      g_assert_cmpuint (MIN ((corners[2] + n - corners[1]) % n, (corners[1] + n - corners[2]) % n),
                        >=, n / 4);
    }
}

/* Tacks are no further apart than the pitch, and one fewer would be. */
static void
test_tacks (void)
{
  for (double length = 5.0; length < 400.0; length += 3.7)
    {
      guint n = bf_join_n_tacks (length);

      g_assert_cmpuint (n, >=, 2);
      g_assert_cmpfloat (length / (n - 1), <=, BF_TACK_PITCH_MM + 1e-6);
      if (n > 2)
        g_assert_cmpfloat (length / (n - 2), >, BF_TACK_PITCH_MM);
    }
  g_assert_cmpuint (bf_join_n_tacks (0.0), ==, 1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/join-plan/each-once", test_each_once);
  g_test_add_func ("/make/join-plan/seams-are-of-flanges", test_seams_are_of_flanges);
  g_test_add_func ("/make/join-plan/across", test_across);
  g_test_add_func ("/make/join-plan/tacks", test_tacks);
  return g_test_run ();
}
