/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-part.h"
#include "paint/card-rows.h"
#include "paint/card.h"
#include "paint/figure.h"
#include "paint/gauges.h"
#include "paint/model.h"
#include "paint/seam-edge.h"
#include "paint/work-picture.h"

/* ---- gauges ------------------------------------------------------------------------------- */

static double
angle_between (BfVec2 a, BfVec2 b)
{
  return bf_rad_to_deg (acos (bf_vec2_dot (bf_vec2_unit (a), bf_vec2_unit (b))));
}

static void
test_gauge_outline (void)
{
  static const double turned_deg[] = { 1.0, 20.0, 60.0, 89.0, 91.0, 135.0, 160.0, 179.0 };

  for (guint i = 0; i < G_N_ELEMENTS (turned_deg); i++)
    {
      BfGauge gauge = { bf_deg_to_rad (turned_deg[i]), 3.0, NULL };
      BfVec2 c[4];

      bf_gauge_outline (&gauge, c);
      g_assert_cmpfloat_with_epsilon (
          angle_between (bf_vec2_sub (c[1], c[0]), bf_vec2_sub (c[2], c[3])), 180.0 - turned_deg[i],
          1e-6);
      g_assert_cmpfloat_with_epsilon (bf_vec2_length (c[0]), 3.0, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_vec2_length (c[3]), 3.0, 1e-9);
    }
}

/* One for each angle that is neither square nor a hem, the tip off past the radius. */
static void
test_gauges_of_part (void)
{
  g_autoptr (BfPart) part = make_rectangle (100.0, 100.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (BfGauges) gauges = NULL;
  const BfGauge *gauge;

  add_flange (part, "a", 0, 30.0, 60.0);
  add_flange (part, "b", 1, 30.0, 90.0);
  add_flange (part, "c", 2, 30.0, 60.02);
  add_flange (part, "d", 3, 30.0, 180.0);
  fold = bf_fold (part);
  gauges = bf_gauges_new (fold, bf_paper_default ());
  g_assert_cmpuint (gauges->gauges->len, ==, 1);
  gauge = &g_array_index (gauges->gauges, BfGauge, 0);
  g_assert_cmpstr (gauge->names, ==, "a, c");
  /* R·tan 30° = 1.5 · 0.57735, and a millimetre. */
  g_assert_cmpfloat_with_epsilon (gauge->tip_mm, 1.866, 1e-2);
  g_assert_cmpuint (bf_gauges_n_pages (gauges), ==, 1);
}

/* ---- model -------------------------------------------------------------------------------- */

static void
test_model_fits (void)
{
  for (guint seed = 0; seed < 25; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      const BfPaper *paper = bf_paper_find (seed % 2 == 0 ? "A4" : "Letter");
      g_autoptr (BfModel) model = bf_model_new (fold, paper);
      BfVec2 size = bf_vec2_sub (model->model->blank.box.max, model->model->blank.box.min);

      g_assert_cmpfloat (model->scale, >=, 1.0);
      g_assert_cmpfloat ((model->turn ? size.y : size.x) / model->scale, <, paper->width_mm - 20.0);
      g_assert_cmpfloat ((model->turn ? size.x : size.y) / model->scale, <,
                         paper->height_mm - 40.0);
      g_assert_cmpfloat_with_epsilon (model->model->part->metal.thickness_mm,
                                      BF_MODEL_PAPER_MM * model->scale, 1e-9);
      for (guint i = 0; i < model->model->reliefs->len; i++)
        g_assert_cmpint (bf_fold_relief (model->model, i)->kind, ==, BF_RELIEF_KIND_END);
    }
}

/* A tab hangs on the blank's edge, and nowhere lies on it. */
static void
check_tab (const BfFold *fold, const BfGlueTab *tab)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (tab->corners[0], tab->corners[1]), 0.5);
  BfVec2 outer = bf_vec2_scale (bf_vec2_add (tab->corners[2], tab->corners[3]), 0.5);
  BfVec2 in = bf_vec2_unit (bf_vec2_sub (middle, outer));
  const BfRing *ring = bf_blank_ring (&fold->blank, 0);

  g_assert_true (bf_ring_contains (ring, bf_vec2_along (middle, in, 1e-3)));
  g_assert_false (bf_ring_contains (ring, bf_vec2_along (middle, in, -1e-3)));
  for (guint i = 2; i < 4; i++)
    g_assert_false (bf_ring_contains (ring, tab->corners[i]));
}

static void
test_model_tabs (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) flared = make_tray (200.0, 120.0, 40.0, 60.0);
  BfPart *parts[] = { tray, flared };

  for (guint k = 0; k < G_N_ELEMENTS (parts); k++)
    {
      g_autoptr (BfFold) fold = bf_fold (parts[k]);
      g_autoptr (BfModel) model = bf_model_new (fold, bf_paper_default ());

      g_assert_cmpuint (model->tabs->len, ==, 4);
      for (guint i = 0; i < model->tabs->len; i++)
        check_tab (model->model, &g_array_index (model->tabs, BfGlueTab, i));
    }
}

/* ---- seams, pictures, card ---------------------------------------------------------------- */

/* The edge found at a tray's corner stands on end once it is formed, within the gap of the other
 * wall. */
static void
test_seam_edge (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (tray);

  for (guint i = 0; i < fold->seams->len; i++)
    {
      BfSeamEdge edge;
      BfVec3 a, b;

      g_assert_true (bf_seam_edge_find (fold, bf_fold_seam (fold, i), &edge));
      a = bf_fold_place (fold, edge.face, edge.a);
      b = bf_fold_place (fold, edge.face, edge.b);
      g_assert_cmpfloat_with_epsilon (hypot (a.x - b.x, a.y - b.y), 0.0, 1e-6);
      g_assert_cmpfloat (fabs (a.z - b.z), >, 30.0);
      g_assert_cmpfloat (MIN (fabs (a.x), fabs (a.x - 200.0)), <, 3.0);
      g_assert_cmpfloat (MIN (fabs (a.y), fabs (a.y - 120.0)), <, 3.0);
    }
}

/* How many pixels of a picture are not white: nothing outside of the box, something in it. */
static guint
count_ink (const BfWork *work, guint i, gboolean outside)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 140, 120);
  cairo_t *cr = cairo_create (surface);
  guint n = 0;

  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_paint (cr);
  cairo_translate (cr, 10.0, 10.0);
  bf_work_picture_draw (work, i, bf_vec2 (120.0, 100.0), cr);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_surface_flush (surface);
  for (int y = 0; y < 120; y++)
    for (int x = 0; x < 140; x++)
      {
        const guint32 *row =
            (const guint32 *)(gconstpointer)(cairo_image_surface_get_data (surface) +
                                             y * cairo_image_surface_get_stride (surface));
        gboolean inside = x >= 9 && x < 131 && y >= 9 && y < 111;

        n += (row[x] & 0xffffff) != 0xffffff && inside != outside ? 1 : 0;
      }
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return n;
}

static void
test_pictures (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (tray);
  g_autoptr (BfWork) work = bf_work_new (fold, NULL);

  for (guint i = 0; i < work->steps->len; i++)
    {
      g_assert_cmpuint (count_ink (work, i, FALSE), >, 100);
      if (bf_work_step (work, i)->shows != BF_SHOWS_MARKING) /* has a test of its own */
        g_assert_cmpuint (count_ink (work, i, TRUE), ==, 0);
    }
}

/* Every row stands on a page, whole, below the one before it. */
static void
test_rows (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (tray);
  g_autoptr (BfWork) work = bf_work_new (fold, NULL);
  g_autoptr (GArray) rows = bf_card_rows (work, 186.0);
  g_autoptr (BfCard) card = bf_card_new (work, bf_paper_default ());
  guint steps = 0, wanted = 0;

  for (guint i = 0; i < rows->len; i++)
    {
      const BfCardRow *row = &g_array_index (rows, BfCardRow, i);

      g_assert_cmpfloat (row->height_mm, >, 3.0);
      g_assert_cmpfloat (row->height_mm, <, 80.0);
      steps += row->kind == BF_CARD_STEP ? 1 : 0;
    }
  for (guint i = 0; i < work->steps->len; i++)
    wanted += bf_work_step (work, i)->detail ? 0 : 1;
  g_assert_cmpuint (steps, ==, wanted);
  g_assert_cmpuint (bf_card_n_pages (card), ==, 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bench-pages/gauge-outline", test_gauge_outline);
  g_test_add_func ("/bench-pages/gauges-of-part", test_gauges_of_part);
  g_test_add_func ("/bench-pages/model-fits", test_model_fits);
  g_test_add_func ("/bench-pages/model-tabs", test_model_tabs);
  g_test_add_func ("/bench-pages/seam-edge", test_seam_edge);
  g_test_add_func ("/bench-pages/pictures", test_pictures);
  g_test_add_func ("/bench-pages/rows", test_rows);
  return g_test_run ();
}
