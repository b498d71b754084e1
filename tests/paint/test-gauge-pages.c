/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Angle gauges: one for every bend that a square does not measure, and it fits into the bend. */

#include "paint/gauges.h"

#include <string.h>

#include "make-any.h"
#include "make-part.h"
#include "page-ink.h"
#include "paint/page-head.h"

#define N_PARTS 60

static const BfGauge *
nth (const BfGauges *gauges, guint i)
{
  return &g_array_index (gauges->gauges, BfGauge, i);
}

/* How many gauges name that flange; gauge: (out) the last of them. */
static guint
count_naming (const BfGauges *gauges, const char *flange, const BfGauge **gauge)
{
  guint n = 0;

  for (guint i = 0; i < gauges->gauges->len; i++)
    {
      g_auto (GStrv) names = g_strsplit (nth (gauges, i)->names, ", ", -1);

      if (!g_strv_contains ((const char *const *)names, flange))
        continue;
      *gauge = nth (gauges, i);
      n++;
    }
  return n;
}

/* ---- which -------------------------------------------------------------------------------- */

/* A bend that is neither square nor a hem is named by one gauge, whose angle is its own to 0.05°;
 * the others by none. */
static void
test_each_bend_once (void)
{
  guint named = 0, shared = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfGauges) gauges = bf_gauges_new (fold, bf_paper_default ());

      for (guint i = 0; i < fold->bends->len; i++)
        {
          const BfBendResult *bend = bf_fold_bend (fold, i);
          double deg = bf_rad_to_deg (bend->angle_rad);
          gboolean plain = fabs (deg - 90.0) < 0.05 || deg > 179.95;
          const BfGauge *gauge = NULL;

          g_assert_cmpuint (count_naming (gauges, bend->flange, &gauge), ==, plain ? 0 : 1);
          if (plain)
            continue;
          g_assert_cmpfloat_with_epsilon (bf_rad_to_deg (gauge->turned_rad), deg, 0.05);
          named++;
        }
      for (guint i = 0; i < gauges->gauges->len; i++)
        {
          shared += strchr (nth (gauges, i)->names, ',') != NULL ? 1 : 0;
          g_assert_true (i == 0 || nth (gauges, i)->turned_rad > nth (gauges, i - 1)->turned_rad);
        }
    }
  g_assert_cmpuint (named, >, N_PARTS);
  g_assert_cmpuint (shared, >, 0);
}

/* ---- whether it fits ---------------------------------------------------------------------- */

/* The inside of a bend, seen from its end: two faces that would meet at (0, 0), one along +x, the
 * other at the opening's angle, and between them an arc of the inside radius that touches both. The
 * wedge lies along both faces, and its cut tip stands clear of the arc. */
static void
test_clears_the_radius (void)
{
  for (double turned = 5.0; turned < 176.0; turned += 8.5)
    for (double radius = 0.0; radius < 7.0; radius += 1.5)
      {
        g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
        g_autoptr (BfFold) fold = NULL;
        g_autoptr (BfGauges) gauges = NULL;
        double opening = G_PI - bf_deg_to_rad (turned);
        double touch = radius * tan (bf_deg_to_rad (turned) / 2.0);
        BfVec2 c[4];

        if (fabs (turned - 90.0) < 0.05 || touch > 20.0)
          continue;
        add_flange (part, "front", 0, 80.0, turned)->bend.inside_radius_mm = radius;
        fold = bf_fold (part);
        gauges = bf_gauges_new (fold, bf_paper_default ());
        g_assert_cmpuint (gauges->gauges->len, ==, 1);
        bf_gauge_outline (nth (gauges, 0), c);
        g_assert_cmpfloat_with_epsilon (c[0].y, 0.0, 1e-9);
        g_assert_cmpfloat_with_epsilon (c[1].y, 0.0, 1e-9);
        g_assert_cmpfloat_with_epsilon (bf_vec2_cross (c[3], c[2]), 0.0, 1e-9);
        g_assert_cmpfloat_with_epsilon (atan2 (c[2].y, c[2].x), opening, 1e-9);
        /* The arc leaves the faces at `touch`: nothing of the wedge lies nearer to the apex. */
        g_assert_cmpfloat (c[0].x, >=, touch + 0.5);
        g_assert_cmpfloat (bf_vec2_length (c[3]), >=, touch + 0.5);
        /* And there is a leg left to hold against the metal. */
        g_assert_cmpfloat (c[1].x - c[0].x, >=, 20.0);
      }
}

/* Bends that share a gauge may have two radii: the larger counts. */
static void
test_larger_radius_counts (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (BfGauges) gauges = NULL;

  add_flange (part, "a", 0, 40.0, 60.0)->bend.inside_radius_mm = 6.0;
  add_flange (part, "b", 2, 40.0, 60.0)->bend.inside_radius_mm = 1.0;
  fold = bf_fold (part);
  gauges = bf_gauges_new (fold, bf_paper_default ());
  g_assert_cmpuint (gauges->gauges->len, ==, 1);
  /* 6 tan 30° = 3.464, and a millimetre of play. */
  g_assert_cmpfloat_with_epsilon (nth (gauges, 0)->tip_mm, 4.464, 1e-3);
}

/* ---- pages -------------------------------------------------------------------------------- */

static void
draw_page (gconstpointer pages, guint page, cairo_t *cr)
{
  bf_gauges_draw (pages, page, cr);
}

/* As many pages as the gauges take, and every page has one at least; a part with none gets a page
 * that says so. */
static void
test_pages (void)
{
  for (guint n = 0; n <= 16; n += 4)
    {
      g_autoptr (BfPart) part = make_ring (MAX (n, 3), 300.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfGauges) gauges = NULL;
      guint pages;

      for (guint i = 0; i < n; i++)
        ((BfFlange *)g_ptr_array_index (part->flanges, i))->angle_deg = 20.0 + 4.0 * i;
      fold = bf_fold (part);
      gauges = bf_gauges_new (fold, bf_paper_default ());
      pages = bf_gauges_n_pages (gauges);
      g_assert_cmpuint (gauges->gauges->len, ==, n);
      g_assert_cmpuint (pages, >=, 1);
      g_assert_cmpuint (pages, <=, MAX (1, (n + 3) / 4)); /* two by two at least */
      for (guint i = 0; i < pages; i++)
        {
          BfBox ink = page_ink (draw_page, gauges, i);

          /* Below the head there is a gauge, or the words that none is needed. */
          g_assert_cmpfloat (ink.max.y, >, n == 0 ? 35.0 : 80.0);
        }
    }
}

/* However many bends share a gauge, their names keep to its cell: two gauges stand in it below each
 * other on a page, 76 mm apart. */
static void
test_many_names (void)
{
  g_autoptr (BfPart) part = make_ring (40, 600.0, 40.0, 60.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (BfGauges) gauges = NULL;
  BfPageHead head = { .paper = bf_paper_default (),
                      .title = "",
                      .note = "Cut from stiff card. The wedge fits into the bend; let the metal "
                              "spring back before you try it." };
  BfBox ink;

  for (guint i = 0; i < 40; i++)
    {
      BfFlange *wall = g_ptr_array_index (part->flanges, i);

      g_free (wall->id);
      wall->id = g_strdup_printf ("shade-blade-%u", i);
    }
  fold = bf_fold (part);
  gauges = bf_gauges_new (fold, bf_paper_default ());
  head.fold = fold;
  ink = page_ink (draw_page, gauges, 0);
  g_assert_cmpuint (gauges->gauges->len, ==, 1);
  g_assert_cmpfloat (ink.max.y, <, bf_page_head_end_mm (&head) + 76.0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/gauge-pages/each-bend-once", test_each_bend_once);
  g_test_add_func ("/gauge-pages/clears-the-radius", test_clears_the_radius);
  g_test_add_func ("/gauge-pages/larger-radius-counts", test_larger_radius_counts);
  g_test_add_func ("/gauge-pages/pages", test_pages);
  g_test_add_func ("/gauge-pages/many-names", test_many_names);
  return g_test_run ();
}
