/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Whole parts whose blanks were worked out by hand. */

#include "fold/fold.h"
#include "make-part.h"

/* Each number by hand from BA = θ(R + K t), S = (R + t)τ: a tray's blank is as wide as the base
 * between its tangents and twice (BA + wall − S); the relief reaches from the bend lines' crossing
 * to the tangents' crossing P, BA/2 along each edge's normal. */
typedef struct
{
  const char *path;
  double wall_mm, angle_deg;
  guint n_sides;
  double width_mm, height_mm, need_mm;
} Case;

static const Case cases[] = {
  { "/acceptance/tray/square", 40.0, 90.0, 4, 274.692, 194.692, 4.732 },
  { "/acceptance/tray/flared", 40.0, 60.0, 4, 277.533, 197.533, 3.154 },
  { "/acceptance/tray/leaning", 40.0, 105.0, 4, 275.807, 195.807, 5.520 },
  { "/acceptance/six-sided", 60.0, 90.0, 6, 298.171, 287.897, 3.863 },
};

static BfPart *
make_case (const Case *c)
{
  if (c->n_sides == 6)
    return make_ring (6, 100.0, c->wall_mm, c->angle_deg);
  return make_tray (200.0, 120.0, c->wall_mm, c->angle_deg);
}

static void
test_case (gconstpointer data)
{
  const Case *c = data;
  g_autoptr (BfPart) part = make_case (c);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfBox *box = &fold->blank.box;

  g_assert_cmpfloat_with_epsilon (box->max.x - box->min.x, c->width_mm, 5e-4);
  g_assert_cmpfloat_with_epsilon (box->max.y - box->min.y, c->height_mm, 5e-4);
  g_assert_cmpuint (fold->reliefs->len, ==, c->n_sides);
  for (guint i = 0; i < fold->reliefs->len; i++)
    g_assert_cmpfloat_with_epsilon (bf_fold_relief (fold, i)->need_mm, c->need_mm, 5e-4);
  for (guint i = 0; i < fold->seams->len; i++)
    g_assert_cmpfloat_with_epsilon (bf_fold_seam (fold, i)->gap_mm, 0.5, 1e-6);
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
}

static void
test_drill (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) metric = bf_fold (part);
  g_autoptr (BfFold) fraction = NULL;

  part->cutting.drills = BF_DRILLS_FRACTION;
  fraction = bf_fold (part);
  g_assert_cmpstr (bf_fold_relief (metric, 0)->drill, ==, "6.5 mm");
  g_assert_cmpstr (bf_fold_relief (fraction, 0)->drill, ==, "1/4 in");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    g_test_add_data_func (cases[i].path, &cases[i], test_case);
  g_test_add_func ("/acceptance/drill", test_drill);
  return g_test_run ();
}
