/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What is whole of a line, against points of it looked at one by one. */

#include "fold/line-stretches.h"

static BfRing *
make_box (double x0, double y0, double x1, double y1)
{
  BfRing *ring = bf_ring_new ();

  bf_ring_add (ring, bf_vec2 (x0, y0), 0.0);
  bf_ring_add (ring, bf_vec2 (x1, y0), 0.0);
  bf_ring_add (ring, bf_vec2 (x1, y1), 0.0);
  bf_ring_add (ring, bf_vec2 (x0, y1), 0.0);
  return ring;
}

static BfRing *
make_circle (BfVec2 at, double radius)
{
  BfRing *ring = bf_ring_new ();

  bf_ring_add (ring, bf_vec2 (at.x + radius, at.y), 1.0);
  bf_ring_add (ring, bf_vec2 (at.x - radius, at.y), 1.0);
  return ring;
}

static GPtrArray *
no_rings (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
}

/* ---- by hand ------------------------------------------------------------------------------ */

/* A line of 100 mm along x, and a box or two on it. */
static void
test_boxes (void)
{
  static const struct
  {
    double boxes[2][4]; /* x0, y0, x1, y1 */
    guint n_boxes;
    double clear_mm;
    guint n;
    BfRun runs[3];
  } rows[] = {
    { { { 0 } }, 0, 0, 1, { { 0, 100 } } },
    { { { 40, -5, 60, 5 } }, 1, 0, 2, { { 0, 40 }, { 60, 100 } } },
    { { { 40, 3, 60, 9 } }, 1, 0, 1, { { 0, 100 } } },
    { { { 40, 3, 60, 9 } }, 1, 2.9, 1, { { 0, 100 } } },
    { { { 40, 3, 60, 9 } }, 1, 3.1, 2, { { 0, 40 }, { 60, 100 } } },
    { { { 40, -9, 60, -3 } }, 1, 3.1, 2, { { 0, 40 }, { 60, 100 } } },
    { { { -10, -5, 20, 5 } }, 1, 0, 1, { { 20, 100 } } }, /* over the line's start */
    { { { 80, -5, 120, 5 } }, 1, 0, 1, { { 0, 80 } } },   /* over its end */
    { { { -10, -5, 110, 5 } }, 1, 0, 0, { { 0, 0 } } },   /* all of it */
    { { { -30, -5, -10, 5 } }, 1, 9, 1, { { 0, 100 } } }, /* before it */
    { { { 120, -5, 140, 5 } }, 1, 9, 1, { { 0, 100 } } }, /* past it */
    { { { 40, -5, 60, 5 }, { 20, -5, 30, 5 } }, 2, 0, 3, { { 0, 20 }, { 30, 40 }, { 60, 100 } } },
    { { { 40, -5, 60, 5 }, { 50, -5, 70, 5 } }, 2, 0, 2, { { 0, 40 }, { 70, 100 } } },
    { { { 40, -5, 60, 5 }, { 45, -5, 50, 5 } }, 2, 0, 2, { { 0, 40 }, { 60, 100 } } },
    { { { 40, -5, 60, 5 }, { 60, -5, 70, 5 } }, 2, 0, 2, { { 0, 40 }, { 70, 100 } } },
  };
  const BfLine line = { { 0, 0 }, { 100, 0 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GPtrArray) rings = no_rings ();
      g_autoptr (GArray) runs = NULL;

      for (guint k = 0; k < rows[i].n_boxes; k++)
        g_ptr_array_add (rings, make_box (rows[i].boxes[k][0], rows[i].boxes[k][1],
                                          rows[i].boxes[k][2], rows[i].boxes[k][3]));
      runs = bf_line_stretches (&line, rings, rows[i].clear_mm);
      g_test_message ("row %u", i);
      g_assert_cmpuint (runs->len, ==, rows[i].n);
      for (guint k = 0; k < runs->len; k++)
        {
          const BfRun *run = &g_array_index (runs, BfRun, k);

          g_assert_cmpfloat_with_epsilon (run->from_mm, rows[i].runs[k].from_mm, 1e-9);
          g_assert_cmpfloat_with_epsilon (run->to_mm, rows[i].runs[k].to_mm, 1e-9);
        }
    }
}

/* A hole of radius 13 whose middle lies 5 off the line takes a chord of 24 of it: 5, 12, 13. */
static void
test_chord (void)
{
  static const double offs[] = { 5.0, -5.0 };

  for (guint i = 0; i < G_N_ELEMENTS (offs); i++)
    {
      const BfLine line = { { 0, 0 }, { 100, 0 } };
      g_autoptr (GPtrArray) rings = no_rings ();
      g_autoptr (GArray) runs = NULL;

      g_ptr_array_add (rings, make_circle (bf_vec2 (40.0, offs[i]), 13.0));
      runs = bf_line_stretches (&line, rings, 0.0);
      g_assert_cmpuint (runs->len, ==, 2);
      g_assert_cmpfloat_with_epsilon (g_array_index (runs, BfRun, 0).to_mm, 28.0, 1e-3);
      g_assert_cmpfloat_with_epsilon (g_array_index (runs, BfRun, 1).from_mm, 52.0, 1e-3);
    }
}

/* ---- drawn by lot ------------------------------------------------------------------------- */

/* TRUE where a ring lies within clear of the line, straight across it at u. */
static gboolean
is_taken (const BfLine *line, const GPtrArray *rings, double clear_mm, double u)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line->to, line->from));
  BfVec2 p = bf_vec2_along (line->from, along, u);
  BfVec2 left = { -along.y, along.x };

  for (guint i = 0; i < rings->len; i++)
    for (int k = -20; k <= 20; k++)
      if (bf_ring_contains (g_ptr_array_index (rings, i),
                            bf_vec2_along (p, left, clear_mm * k / 20.0)))
        return TRUE;
  return FALSE;
}

static gboolean
is_in_run (const GArray *runs, double u, double margin)
{
  for (guint i = 0; i < runs->len; i++)
    if (u > g_array_index (runs, BfRun, i).from_mm + margin &&
        u < g_array_index (runs, BfRun, i).to_mm - margin)
      return TRUE;
  return FALSE;
}

/* Round and square holes about a line that runs anyhow. All are convex, so that none comes near
 * twice. Points just at an end of a run are left out: the sampled width misses slivers there. */
static void
test_drawn (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (21);
  guint inside = 0, outside = 0;

  for (guint i = 0; i < 200; i++)
    {
      BfLine line = { { g_rand_double_range (rand, -50, 50), g_rand_double_range (rand, -50, 50) },
                      { g_rand_double_range (rand, -50, 50),
                        g_rand_double_range (rand, -50, 50) } };
      double clear = g_rand_double_range (rand, 0.0, 6.0);
      double length = bf_vec2_distance (line.from, line.to);
      g_autoptr (GPtrArray) rings = no_rings ();
      g_autoptr (GArray) runs = NULL;

      for (guint k = 0; k < 4; k++)
        {
          double x = g_rand_double_range (rand, -50, 50), y = g_rand_double_range (rand, -50, 50);
          double size = g_rand_double_range (rand, 2.0, 15.0);

          g_ptr_array_add (rings, k % 2 == 0 ? make_circle (bf_vec2 (x, y), size)
                                             : make_box (x, y, x + size, y + 2.0 * size));
        }
      runs = bf_line_stretches (&line, rings, clear);
      for (double u = 0.0; u < length; u += 0.37)
        {
          if (is_in_run (runs, u, 1e-3))
            {
              g_assert_false (is_taken (&line, rings, clear, u));
              inside++;
            }
          else if (!is_in_run (runs, u, -0.6))
            {
              g_assert_true (is_taken (&line, rings, clear, u));
              outside++;
            }
        }
    }
  g_assert_cmpuint (inside, >, 1000);
  g_assert_cmpuint (outside, >, 1000);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/line-stretches/boxes", test_boxes);
  g_test_add_func ("/line-stretches/chord", test_chord);
  g_test_add_func ("/line-stretches/drawn", test_drawn);
  return g_test_run ();
}
