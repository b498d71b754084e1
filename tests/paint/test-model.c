/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The card model: the same part in thin paper, with tabs that can be cut and glued. */

#include "paint/model.h"

#include "fold/edge-distance.h"
#include "make-any.h"
#include "make-part.h"
#include "paint/seam-edge.h"

#define N_PARTS 24

/* ---- the part in paper -------------------------------------------------------------------- */

/* The paper's blank is the metal's, but for the metal's own thickness: as large formed, to a few
 * thicknesses, where sizes count outside and nothing must be fixed. */
static void
test_same_part (void)
{
  guint seen = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfModel) model = NULL;
      double t = part->metal.thickness_mm, paper;

      part->measure = BF_MEASURE_OUTSIDE;
      fold = bf_fold (part);
      if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
        continue;
      model = bf_model_new (fold, bf_paper_default ());
      paper = model->model->part->metal.thickness_mm;
      g_test_message ("seed %u at 1 : %g", seed, model->scale);
      g_assert_cmpuint (bf_part_n_flanges (model->model->part), ==, bf_part_n_flanges (part));
      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        g_assert_cmpfloat_with_epsilon (bf_part_flange (model->model->part, i)->length_mm,
                                        bf_part_flange (part, i)->length_mm, 1e-12);
      g_assert_cmpfloat_with_epsilon (model->model->formed.max.x, fold->formed.max.x,
                                      4.0 * MAX (t, paper) + 2.0 * part->bend.inside_radius_mm);
      g_assert_cmpfloat_with_epsilon (model->model->formed.max.y, fold->formed.max.y,
                                      4.0 * MAX (t, paper) + 2.0 * part->bend.inside_radius_mm);
      seen++;
    }
  g_assert_cmpuint (seen, >, N_PARTS / 2);
}

/* A square tray's outside sizes are the same in paper and in metal, to a millionth. */
static void
test_tray_to_the_millionth (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (tray);
  g_autoptr (BfModel) model = bf_model_new (fold, bf_paper_default ());
  const BfFormed *a = &fold->formed, *b = &model->model->formed;

  g_assert_cmpfloat_with_epsilon (a->max.x - a->min.x, b->max.x - b->min.x, 1e-6);
  g_assert_cmpfloat_with_epsilon (a->max.y - a->min.y, b->max.y - b->min.y, 1e-6);
  g_assert_cmpfloat_with_epsilon (a->max.z - a->min.z, b->max.z - b->min.z, 1e-6);
}

/* Nothing that only metal needs: no holes at corners, no slots, no scores, no tabs with holes. */
static void
test_nothing_of_metal (void)
{
  static const BfBendWay ways[] = { BF_BEND_WAY_BAR, BF_BEND_WAY_SLOTS, BF_BEND_WAY_SCORE };
  static const BfJoining joinings[] = { BF_JOINING_RIVETED, BF_JOINING_FOLDED, BF_JOINING_WELDED };

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfModel) model = NULL;

      tray->bend.way = ways[i];
      tray->bend.inside_radius_mm = NAN;
      tray->joining = joinings[i];
      fold = bf_fold (tray);
      model = bf_model_new (fold, bf_paper_default ());
      g_assert_cmpuint (model->model->reliefs->len, ==, 0);
      g_assert_cmpuint (model->model->folded->len, ==, 0);
      g_assert_cmpuint (model->model->bends->len, ==, 4);
      for (guint k = 0; k < 4; k++)
        {
          g_assert_cmpuint (bf_fold_bend (model->model, k)->slots->len, ==, 0);
          g_assert_true (isnan (bf_fold_bend (model->model, k)->score_left_mm));
        }
    }
}

/* ---- the scale ---------------------------------------------------------------------------- */

/* The scale is the first at which it fits: a tray that is flat 277 × 197 in paper stands on A4,
 * whose room is some 186 × 230 with tabs of 8 mm on both sides, at 1 : 1.5 and no larger. */
static void
test_scales (void)
{
  static const struct
  {
    double width_mm, depth_mm, wall_mm, scale;
  } rows[] = {
    { 80.0, 60.0, 20.0, 1.0 }, /* 120 × 100 */
    { 200.0, 120.0, 40.0, 1.5 },
    { 300.0, 200.0, 40.0, 2.0 },  /* 380 × 280: 190 × 140 */
    { 900.0, 600.0, 60.0, 5.0 },  /* 1020 × 720: 204 × 144 */
    { 2000.0, 900.0, 60.0, 10.0 } /* 2120 × 1020: 212 × 102 */
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) tray =
          make_tray (rows[i].width_mm, rows[i].depth_mm, rows[i].wall_mm, 90.0);
      g_autoptr (BfFold) fold = bf_fold (tray);
      g_autoptr (BfModel) model = bf_model_new (fold, bf_paper_default ());

      g_assert_cmpfloat_with_epsilon (model->scale, rows[i].scale, 1e-9);
      g_assert_cmpfloat_with_epsilon (model->model->part->metal.thickness_mm,
                                      BF_MODEL_PAPER_MM * rows[i].scale, 1e-9);
    }
}

/* ---- tabs --------------------------------------------------------------------------------- */

/* TRUE where the two tabs lie over each other: an edge of one crosses one of the other, or one lies
 * in the other. */
static gboolean
lie_over (const BfGlueTab *a, const BfGlueTab *b)
{
  g_autoptr (BfRing) ring_a = bf_ring_new (), ring_b = bf_ring_new ();

  for (guint i = 0; i < 4; i++)
    {
      bf_ring_add (ring_a, a->corners[i], 0.0);
      bf_ring_add (ring_b, b->corners[i], 0.0);
    }
  if (bf_ring_contains (ring_a, b->corners[2]) || bf_ring_contains (ring_b, a->corners[2]))
    return TRUE;
  for (guint i = 1; i < 4; i++) /* all but the edge that it hangs on */
    for (guint k = 1; k < 4; k++)
      {
        BfEdge one = bf_edge_of (ring_a, i), other = bf_edge_of (ring_b, k);
        BfVec2 place;

        if (bf_edge_distance (&one, &other, &place) < 1e-6)
          return TRUE;
      }
  return FALSE;
}

/* No tab lies over another, and its outer edge is clear of the blank. */
static void
test_tabs_apart (void)
{
  guint tabs = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfModel) model = bf_model_new (fold, bf_paper_default ());

      if (model->model->blank.n_outer != 1)
        continue;
      g_test_message ("seed %u", seed);
      tabs += model->tabs->len;
      for (guint i = 0; i < model->tabs->len; i++)
        {
          const BfGlueTab *tab = &g_array_index (model->tabs, BfGlueTab, i);

          for (guint k = 0; k < i; k++)
            g_assert_false (lie_over (tab, &g_array_index (model->tabs, BfGlueTab, k)));
          for (double share = 0.0; share <= 1.0; share += 0.125)
            g_assert_false (bf_ring_contains (
                bf_blank_ring (&model->model->blank, 0),
                bf_vec2_along (tab->corners[2], bf_vec2_sub (tab->corners[3], tab->corners[2]),
                               share)));
        }
    }
  g_assert_cmpuint (tabs, >, N_PARTS / 2);
}

/* No more tabs than seams: what is not joined in metal is not glued in paper. */
static void
test_no_more_than_seams (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfModel) model = bf_model_new (fold, bf_paper_default ());

      g_assert_cmpuint (model->tabs->len, <=, model->model->seams->len);
    }
}

/* ---- where a seam is ---------------------------------------------------------------------- */

/* How near a formed edge comes to an edge of a formed face, looked at point by point. */
static double
nearest_mm (const BfFold *fold, const BfSeamEdge *edge, guint face)
{
  const BfRing *ring = bf_fold_face (fold, face)->outline;
  double least = G_MAXDOUBLE;

  for (int i = 0; i <= 20; i++)
    {
      BfVec3 p = bf_fold_place (fold, edge->face,
                                bf_vec2_along (edge->a, bf_vec2_sub (edge->b, edge->a), i / 20.0));

      for (guint k = 0; k < bf_ring_size (ring); k++)
        for (int n = 0; n <= 20; n++)
          {
            BfVec2 a = bf_ring_vertex (ring, k)->p, b = bf_ring_vertex (ring, k + 1)->p;
            BfVec3 q = bf_fold_place (fold, face, bf_vec2_along (a, bf_vec2_sub (b, a), n / 20.0));

            least = MIN (least, bf_vec3_length (bf_vec3_sub (p, q)));
          }
    }
  return least;
}

/* A tray with one low wall: the edge told of each seam is the side that meets the other wall,
 * however high either is; all along it that wall is no further than the gap and a thickness. */
static void
test_seam_of_two_heights (void)
{
  for (double low = 8.0; low < 100.0; low += 9.0)
    {
      g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 60.0, 90.0);
      g_autoptr (BfFold) fold = NULL;

      ((BfFlange *)g_ptr_array_index (tray->flanges, 0))->length_mm = low;
      fold = bf_fold (tray);
      g_assert_cmpuint (fold->seams->len, ==, 4);
      for (guint i = 0; i < 4; i++)
        {
          const BfSeam *seam = bf_fold_seam (fold, i);
          BfSeamEdge edge;
          BfVec3 a, b;

          g_assert_true (bf_seam_edge_find (fold, seam, &edge));
          a = bf_fold_place (fold, edge.face, edge.a);
          b = bf_fold_place (fold, edge.face, edge.b);
          g_test_message ("%s to %s, %g high", seam->before, seam->after, low);
          g_assert_cmpfloat_with_epsilon (hypot (a.x - b.x, a.y - b.y), 0.0, 1e-6);
          g_assert_cmpfloat (nearest_mm (fold, &edge, (guint)bf_fold_find_face (fold, seam->after)),
                             <, 3.0);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/model/same-part", test_same_part);
  g_test_add_func ("/model/tray-to-the-millionth", test_tray_to_the_millionth);
  g_test_add_func ("/model/nothing-of-metal", test_nothing_of_metal);
  g_test_add_func ("/model/scales", test_scales);
  g_test_add_func ("/model/tabs-apart", test_tabs_apart);
  g_test_add_func ("/model/no-more-than-seams", test_no_more_than_seams);
  g_test_add_func ("/model/seam-of-two-heights", test_seam_of_two_heights);
  return g_test_run ();
}
