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

/* Every seam that has a length once, whatever the part, and none of those that have not. */
static void
test_each_once (void)
{
  guint seams = 0, points = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) order = order_of (fold);
      g_autofree gboolean *taken = g_new0 (gboolean, fold->seams->len + 1);

      for (guint i = 0; i < order->len; i++, seams++)
        {
          guint seam = g_array_index (order, guint, i);

          g_assert_cmpuint (seam, <, fold->seams->len);
          g_assert_false (taken[seam]);
          taken[seam] = TRUE;
        }
      for (guint i = 0; i < fold->seams->len; i++)
        {
          g_assert_true (taken[i] == (bf_fold_seam (fold, i)->length_mm > 1e-6));
          points += taken[i] ? 0 : 1;
        }
    }
  g_assert_cmpuint (seams, >, 2 * N_PARTS);
  g_assert_cmpuint (points, >, 0);
}

/* Lips that stop 30 mm short of the corners do not meet, nor do walls that turn opposite ways:
 * there is nothing to weld. Lips that run to the corners are welded along their mitres. */
static void
test_what_meets (void)
{
  static const struct
  {
    double inset_mm; /* of the lips; NAN: no lips, and two of the walls turned down */
    guint n;
  } rows[] = { { 0.0, 8 }, { 30.0, 4 }, { NAN, 0 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) order = NULL;

      for (guint k = 0; k < 4; k++)
        {
          BfFlange *wall = g_ptr_array_index (part->flanges, k);
          g_autofree char *id = g_strdup_printf ("lip-%u", k);
          BfFlange *lip =
              isnan (rows[i].inset_mm) ? NULL : add_lip (part, id, wall->id, 12.0, 90.0);

          if (lip != NULL)
            lip->start_mm = lip->end_mm = rows[i].inset_mm;
          else
            wall->turn = k % 2 == 0 ? BF_TURN_DOWN : BF_TURN_UP;
        }
      fold = bf_fold (part);
      order = order_of (fold);
      g_assert_cmpuint (order->len, ==, rows[i].n);
    }
}

/* Rivets and screws go through tabs: lips, which have none, are not riveted at their mitres. */
static void
test_only_tabs_are_riveted (void)
{
  static const BfJoining joinings[] = { BF_JOINING_RIVETED, BF_JOINING_SCREWED };

  for (guint i = 0; i < G_N_ELEMENTS (joinings); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 60.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) order = NULL;

      for (guint k = 0; k < 4; k++)
        {
          g_autofree char *id = g_strdup_printf ("lip-%u", k), *on = g_strdup_printf ("f%u", k);

          add_lip (part, id, on, 12.0, 90.0);
        }
      part->joining = joinings[i];
      fold = bf_fold (part);
      order = order_of (fold);
      g_assert_cmpuint (order->len, >, 0);
      g_assert_cmpuint (order->len, ==,
                        bf_part_n_flanges (fold->part) - bf_part_n_flanges (fold->asked));
      for (guint k = 0; k < order->len; k++)
        g_assert_true (
            g_str_has_prefix (bf_fold_seam (fold, g_array_index (order, guint, k))->before, "f"));
    }
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
  g_test_add_func ("/make/join-plan/what-meets", test_what_meets);
  g_test_add_func ("/make/join-plan/only-tabs-are-riveted", test_only_tabs_are_riveted);
  g_test_add_func ("/make/join-plan/seams-are-of-flanges", test_seams_are_of_flanges);
  g_test_add_func ("/make/join-plan/across", test_across);
  g_test_add_func ("/make/join-plan/tacks", test_tacks);
  return g_test_run ();
}
