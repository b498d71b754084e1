/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/palette.h"

/* Okabe and Ito, "Color Universal Design" (2002, revised 2008), as reprinted by B. Wong, Nature
 * Methods 8:441 (2011): red, green and blue from 0 to 255. */
static void
test_colours (void)
{
  static const guint8 published[BF_N_OKABE_ITO][3] = {
    { 0, 0, 0 },      { 230, 159, 0 }, { 86, 180, 233 }, { 0, 158, 115 },
    { 240, 228, 66 }, { 0, 114, 178 }, { 213, 94, 0 },   { 204, 121, 167 },
  };

  for (int i = 0; i < BF_N_OKABE_ITO; i++)
    {
      guint32 rgb = bf_okabe_ito ((BfOkabeIto)i);
      for (int c = 0; c < 3; c++)
        g_assert_cmpuint (rgb >> (16 - 8 * c) & 0xFF, ==, published[i][c]);
    }
}

static void
test_bends_have_their_colours (void)
{
  g_assert_cmphex (bf_okabe_ito (bf_pen (BF_PURPOSE_BEND_UP)->colour), ==, 0x009E73);
  g_assert_cmphex (bf_okabe_ito (bf_pen (BF_PURPOSE_BEND_DOWN)->colour), ==, 0xCC79A7);
  g_assert_cmphex (bf_okabe_ito (bf_pen (BF_PURPOSE_CUT_OUTSIDE)->colour), ==, 0x000000);
  g_assert_cmphex (bf_okabe_ito (bf_pen (BF_PURPOSE_CUT_INSIDE)->colour), ==, 0x000000);
}

/* ISO 128: wide to narrow 2:1, widths from the series 0.13, 0.18, 0.25, 0.35, 0.5 …; and a line
 * can be followed along either edge to less than 0.2 mm. */
static void
test_widths (void)
{
  g_assert_cmpfloat (BF_WIDE_LINE_MM / 2.0, <, 0.2);
  g_assert_cmpfloat_with_epsilon (BF_WIDE_LINE_MM / BF_NARROW_LINE_MM, 2.0, 0.1);
  for (int i = 0; i < BF_N_PURPOSES; i++)
    {
      double width = bf_pen ((BfPurpose)i)->width_mm;
      gboolean is_one =
          ABS (width - BF_WIDE_LINE_MM) < 1e-9 || ABS (width - BF_NARROW_LINE_MM) < 1e-9;
      g_assert_true (is_one);
    }
}

/* Without colour: what is cut has no gaps, the two bends have, and not the same; scores are
 * dotted, and a bar's edge is thin with short dashes. */
static void
test_told_apart_in_grey (void)
{
  const BfPen *up = bf_pen (BF_PURPOSE_BEND_UP), *down = bf_pen (BF_PURPOSE_BEND_DOWN);
  const BfPen *score = bf_pen (BF_PURPOSE_SCORE), *bar = bf_pen (BF_PURPOSE_BAR);

  g_assert_cmpint (bf_pen (BF_PURPOSE_CUT_OUTSIDE)->n_dashes, ==, 0);
  g_assert_cmpint (up->n_dashes, ==, 2);
  g_assert_cmpint (down->n_dashes, ==, 6);
  g_assert_cmpfloat (up->dash_mm[0], >, down->dash_mm[0]);
  g_assert_cmpfloat (down->dash_mm[2], <, down->dash_mm[0] / 4.0);
  g_assert_cmpfloat (score->dash_mm[0], <, bar->dash_mm[0] / 3.0);
  g_assert_cmpfloat (bar->dash_mm[0], <, down->dash_mm[0] / 2.0);
  g_assert_cmpfloat (bar->width_mm, <, down->width_mm);
}

static void
test_names (void)
{
  static const char *const names[BF_N_PURPOSES] = { "cut-outside", "cut-inside", "bend-up",
                                                    "bend-down",   "slot",       "drill",
                                                    "note",        "score",      "bar" };

  for (int i = 0; i < BF_N_PURPOSES; i++)
    g_assert_cmpstr (bf_pen ((BfPurpose)i)->name, ==, names[i]);
}

/* At a scale of 5 the same pen takes five times the width and the dash; black turns light. */
static void
test_apply (void)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, 4, 4);
  cairo_t *cr = cairo_create (surface);
  double dash[BF_PEN_MAX_DASHES], red, green, blue, alpha;

  bf_pen_apply (bf_pen (BF_PURPOSE_BEND_UP), cr, 5.0, FALSE);
  g_assert_cmpfloat_with_epsilon (cairo_get_line_width (cr), 5.0 * BF_WIDE_LINE_MM, 1e-9);
  g_assert_cmpint (cairo_get_dash_count (cr), ==, 2);
  cairo_get_dash (cr, dash, NULL);
  g_assert_cmpfloat_with_epsilon (dash[0], 5.0 * bf_pen (BF_PURPOSE_BEND_UP)->dash_mm[0], 1e-9);

  bf_pen_apply (bf_pen (BF_PURPOSE_CUT_OUTSIDE), cr, 1.0, TRUE);
  g_assert_cmpint (cairo_get_dash_count (cr), ==, 0);
  cairo_pattern_get_rgba (cairo_get_source (cr), &red, &green, &blue, &alpha);
  g_assert_cmpfloat (MIN (red, MIN (green, blue)), >, 0.8);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/palette/colours", test_colours);
  g_test_add_func ("/palette/bends-have-their-colours", test_bends_have_their_colours);
  g_test_add_func ("/palette/widths", test_widths);
  g_test_add_func ("/palette/told-apart-in-grey", test_told_apart_in_grey);
  g_test_add_func ("/palette/names", test_names);
  g_test_add_func ("/palette/apply", test_apply);
  return g_test_run ();
}
