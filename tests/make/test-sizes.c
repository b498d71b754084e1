/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The main sizes of a finished part, against the formed metal and the asked part. */

#include "make-any.h"
#include "make-part.h"
#include "make/sizes.h"

#define N_PARTS 80

/* The size of that flange, or of the base (NULL) along x or y; fails the test unless there is one.
 */
static const BfMainSize *
size_of (const GArray *sizes, const char *flange, gboolean across)
{
  const BfMainSize *found = NULL;

  for (guint i = 0; i < sizes->len; i++)
    {
      const BfMainSize *size = bf_main_size (sizes, i);

      if (g_strcmp0 (size->name, flange) != 0 || (flange == NULL && size->across != across))
        continue;
      g_assert_null (found);
      found = size;
    }
  g_assert_nonnull (found);
  return found;
}

/* A tray with square walls, measured over all of its formed metal: outside sizes are those, inside
 * sizes are a thickness less at every wall. */
static void
test_as_formed (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (7);

  for (guint i = 0; i < 40; i++)
    {
      double t = g_rand_double_range (rand, 0.5, 3.0);
      g_autoptr (BfPart) part = make_tray (g_rand_double_range (rand, 80.0, 300.0),
                                           g_rand_double_range (rand, 80.0, 300.0),
                                           g_rand_double_range (rand, 20.0, 60.0), 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) sizes = NULL;
      double off;

      part->metal.thickness_mm = t;
      part->bend.inside_radius_mm = t * g_rand_double_range (rand, 0.5, 2.0);
      part->measure = i % 2 == 0 ? BF_MEASURE_OUTSIDE : BF_MEASURE_INSIDE;
      off = part->measure == BF_MEASURE_OUTSIDE ? 0.0 : t;
      fold = bf_fold (part);
      sizes = bf_main_sizes (fold);
      g_assert_cmpfloat_with_epsilon (size_of (sizes, NULL, FALSE)->size_mm,
                                      fold->formed.max.x - fold->formed.min.x - 2.0 * off, 1e-6);
      g_assert_cmpfloat_with_epsilon (size_of (sizes, NULL, TRUE)->size_mm,
                                      fold->formed.max.y - fold->formed.min.y - 2.0 * off, 1e-6);
      g_assert_cmpfloat_with_epsilon (size_of (sizes, "f0", FALSE)->size_mm,
                                      fold->formed.max.z - fold->formed.min.z - off, 1e-6);
    }
}

/* The base's two, then every flange that was asked for, once, as long as asked; none of the tabs
 * that its corners were given. */
static void
test_all_asked (void)
{
  guint tabs = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GArray) sizes = bf_main_sizes (fold);

      g_assert_cmpuint (sizes->len, ==, 2 + bf_part_n_flanges (fold->asked));
      for (guint i = 0; i < bf_part_n_flanges (fold->asked); i++)
        {
          const BfFlange *flange = bf_part_flange (fold->asked, i);

          g_assert_cmpfloat_with_epsilon (size_of (sizes, flange->id, FALSE)->size_mm,
                                          flange->length_mm, 1e-12);
        }
      for (guint i = 0; i < sizes->len; i++)
        g_assert_cmpfloat (bf_main_size (sizes, i)->error.total_mm, >, 0.0);
      tabs += bf_part_n_flanges (fold->part) - bf_part_n_flanges (fold->asked);
    }
  g_assert_cmpuint (tabs, >, 0);
}

/* What ends a size: a cut edge is off by how it is marked and cut (0.3 and 0.7 with a disc), a bend
 * over a bar by how it is marked and bent (0.3 and 0.5), and by 0.06 of K: half of 0.06 · θ · t,
 * θ = π/2, t = 1.5, at each. All common practice; summed as squares, reckoned by hand. */
static void
test_errors (void)
{
  static const struct
  {
    guint edges[2], n_edges;
    double width_mm, depth_mm;
    BfErrorSource width_blame;
  } rows[] = {
    { { 0, 0 }, 0, 1.0770, 1.0770, BF_ERROR_CUTTING },
    { { 1, 0 }, 1, 0.9618, 1.0770, BF_ERROR_CUTTING },
    { { 1, 3 }, 2, 0.8307, 1.0770, BF_ERROR_BENDING },
    { { 0, 2 }, 2, 1.0770, 0.8307, BF_ERROR_CUTTING },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GArray) sizes = NULL;

      for (guint k = 0; k < rows[i].n_edges; k++)
        add_flange (part, k == 0 ? "one" : "two", rows[i].edges[k], 40.0, 90.0);
      part->cutting.by = BF_CUTTING_DISC;
      fold = bf_fold (part);
      sizes = bf_main_sizes (fold);
      g_assert_cmpfloat_with_epsilon (size_of (sizes, NULL, FALSE)->error.total_mm,
                                      rows[i].width_mm, 1e-3);
      g_assert_cmpfloat_with_epsilon (size_of (sizes, NULL, TRUE)->error.total_mm, rows[i].depth_mm,
                                      1e-3);
      g_assert_cmpint (size_of (sizes, NULL, FALSE)->error.biggest, ==, rows[i].width_blame);
    }
}

/* A flange that carries a lip ends in a bend, not in a cut. */
static void
test_carries (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GArray) sizes = NULL;

  add_flange (part, "front", 0, 40.0, 90.0);
  add_lip (part, "lip", "front", 12.0, 90.0);
  part->cutting.by = BF_CUTTING_DISC;
  fold = bf_fold (part);
  sizes = bf_main_sizes (fold);
  g_assert_cmpfloat (size_of (sizes, "front", FALSE)->error.parts_mm[BF_ERROR_CUTTING], <=, 0.0);
  g_assert_cmpfloat (size_of (sizes, "lip", FALSE)->error.parts_mm[BF_ERROR_CUTTING], >, 0.0);
}

/* A base that is no rectangle: as far as its points reach. */
static void
test_ring (void)
{
  g_autoptr (BfPart) part = make_ring (6, 100.0, 30.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (GArray) sizes = bf_main_sizes (fold);
  double over[] = { size_of (sizes, NULL, FALSE)->size_mm, size_of (sizes, NULL, TRUE)->size_mm };

  /* A hexagon in a circle of 200: 200 over the corners, 173.2 over the flats. */
  g_assert_cmpfloat_with_epsilon (MAX (over[0], over[1]), 200.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (MIN (over[0], over[1]), 100.0 * sqrt (3.0), 1e-6);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/sizes/as-formed", test_as_formed);
  g_test_add_func ("/make/sizes/all-asked", test_all_asked);
  g_test_add_func ("/make/sizes/errors", test_errors);
  g_test_add_func ("/make/sizes/carries", test_carries);
  g_test_add_func ("/make/sizes/ring", test_ring);
  return g_test_run ();
}
