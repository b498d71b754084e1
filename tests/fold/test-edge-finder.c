/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/edge-finder.h"

#include "fold/fold.h"
#include "make-any.h"

#define N_PARTS 60
#define N_BOXES 20

static BfBox
any_box (GRand *rand, const BfBox *around)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < 2; i++)
    bf_box_extend (
        &box, bf_vec2 (g_rand_double_range (rand, around->min.x - 20.0, around->max.x + 20.0),
                       g_rand_double_range (rand, around->min.y - 20.0, around->max.y + 20.0)));
  return box;
}

/* The same edges as by asking every one, in the same order. */
static void
assert_found (const BfEdgeFinder *finder, const GArray *edges, const BfBox *box, double within_mm)
{
  g_autoptr (GArray) found = bf_edge_finder_within (finder, box, within_mm);
  guint n = 0;

  for (guint i = 0; i < edges->len; i++)
    if (bf_box_gap (box, &g_array_index (edges, BfEdge, i).box) <= within_mm)
      {
        g_assert_cmpuint (n, <, found->len);
        g_assert_cmpuint (g_array_index (found, guint, n), ==, i);
        n++;
      }
  g_assert_cmpuint (n, ==, found->len);
}

static void
test_blanks (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) edges = g_array_new (FALSE, FALSE, sizeof (BfEdge));
      g_autoptr (BfEdgeFinder) finder = NULL;

      for (guint i = 0; i < bf_ring_size (bf_blank_ring (&fold->blank, 0)); i++)
        {
          BfEdge edge = bf_edge_of (bf_blank_ring (&fold->blank, 0), i);

          g_array_append_val (edges, edge);
        }
      finder = bf_edge_finder_new (edges);
      g_test_message ("seed %u: %u edges", seed, edges->len);
      for (guint i = 0; i < N_BOXES; i++)
        {
          BfBox box = any_box (rand, &fold->blank.box);

          assert_found (finder, edges, &box, g_rand_double_range (rand, 0.0, 10.0));
        }
    }
}

static void
test_none (void)
{
  g_autoptr (GArray) edges = g_array_new (FALSE, FALSE, sizeof (BfEdge));
  g_autoptr (BfEdgeFinder) finder = bf_edge_finder_new (edges);
  BfBox box = { { 0.0, 0.0 }, { 1.0, 1.0 } };
  g_autoptr (GArray) found = bf_edge_finder_within (finder, &box, 5.0);

  g_assert_cmpuint (found->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edge-finder/blanks", test_blanks);
  g_test_add_func ("/edge-finder/none", test_none);
  return g_test_run ();
}
