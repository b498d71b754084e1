/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* One cut with its guide and its waste. */

#include "paint/cut-picture.h"

#include "make-any.h"
#include "make-part.h"
#include "page-ink.h"
#include "paint/figure.h"

#define NEAR 1e-6

static const BfVec2 box = { 160.0, 110.0 };

static BfWork *
tray_work (BfCuttingWay by, double offset_mm)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  BfWorkOptions options = { .guide_offset_mm = offset_mm };
  g_autoptr (BfFold) fold = NULL;

  part->cutting.by = by;
  fold = bf_fold (part);
  return bf_work_new (fold, &options);
}

/* How far p lies from the line through a and b, positive at the right of the way as paper has it
 * (y down). */
static double
off_line (BfVec2 p, BfVec2 a, BfVec2 b)
{
  return bf_vec2_cross (bf_vec2_unit (bf_vec2_sub (b, a)), bf_vec2_sub (p, a));
}

/* The guide's edge is as far from the cut as asked, in the picture's scale, and on the side of the
 * blank, where it hides nothing that is cut away; the waste begins at the cut, on the other side.
 */
static void
test_sides (void)
{
  static const double offsets[] = { 0.0, 22.5 };

  for (guint i = 0; i < G_N_ELEMENTS (offsets); i++)
    {
      g_autoptr (BfWork) work = tray_work (BF_CUTTING_DISC, offsets[i]);
      double scale = bf_figure_place (work->fold, bf_vec2 (box.x - 14.0, box.y - 14.0)).scale;

      g_assert_cmpuint (work->cuts->len, ==, 10);
      for (guint k = 0; k < work->cuts->len; k++)
        {
          const BfCut *cut = bf_cut (work->cuts, k);
          BfCutStrip guide, waste;
          BfVec2 a, b;

          g_assert_true (bf_cut_picture_guide (work, k, box, &guide));
          g_assert_true (bf_cut_picture_waste (work, k, box, &waste));
          a = waste.at[0];
          b = waste.at[1];
          g_assert_cmpfloat_with_epsilon (bf_vec2_distance (a, b), scale * cut->length_mm, NEAR);
          /* The blank is at the left of a cut, as the metal lies: at the left on paper, too. */
          g_assert_cmpfloat (off_line (waste.at[2], a, b), >, 1.0);
          g_assert_cmpfloat (off_line (waste.at[3], a, b), >, 1.0);
          for (guint j = 0; j < 2; j++)
            g_assert_cmpfloat_with_epsilon (off_line (guide.at[j], a, b), -scale * offsets[i],
                                            NEAR);
          for (guint j = 2; j < 4; j++)
            g_assert_cmpfloat (off_line (guide.at[j], a, b), <, -scale * offsets[i] - 1.0);
          g_assert_cmpfloat (bf_vec2_distance (guide.at[0], guide.at[1]), >,
                             bf_vec2_distance (a, b) + 5.0);
        }
    }
}

/* Snips follow the line by eye. */
static void
test_no_guide (void)
{
  g_autoptr (BfWork) work = tray_work (BF_CUTTING_SNIPS, 10.0);
  BfCutStrip strip;

  g_assert_false (bf_cut_picture_guide (work, 0, box, &strip));
  g_assert_true (bf_cut_picture_waste (work, 0, box, &strip));
}

static void
draw (gconstpointer work, guint page, cairo_t *cr)
{
  bf_cut_picture_draw (work, (int)page, box, cr);
}

/* Whatever the part, each cut's picture has ink, and none outside its box. */
static void
test_in_its_box (void)
{
  for (guint seed = 0; seed < 30; seed++)
    {
      g_autoptr (BfPart) part = make_any (seed);
      BfWorkOptions options = { .guide_offset_mm = 10.0 * (seed % 5) };
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfWork) work = NULL;

      part->cutting.by = BF_CUTTING_DISC;
      fold = bf_fold (part);
      work = bf_work_new (fold, &options);
      for (guint k = 0; k < MIN (work->cuts->len, 6); k++)
        {
          BfBox ink = page_ink (draw, work, k);

          g_assert_cmpfloat (ink.max.x - ink.min.x, >, 20.0);
          g_assert_cmpfloat (MIN (ink.min.x, ink.min.y), >=, -0.01);
          g_assert_cmpfloat (ink.max.x, <=, box.x + 0.01);
          g_assert_cmpfloat (ink.max.y, <=, box.y + 0.01);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paint/cut-picture/sides", test_sides);
  g_test_add_func ("/paint/cut-picture/no-guide", test_no_guide);
  g_test_add_func ("/paint/cut-picture/in-its-box", test_in_its_box);
  return g_test_run ();
}
