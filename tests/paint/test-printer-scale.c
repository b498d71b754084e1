/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/printer-scale.h"

#include <math.h>

static const struct
{
  double bar_mm, across_mm, down_mm;
  gboolean is_sane;
  double x, y;
} bars[] = {
  { 100.0, 100.0, 100.0, TRUE, 1.0, 1.0 },    { 100.0, 99.2, 100.4, TRUE, 0.992, 1.004 },
  { 101.6, 101.6, 100.584, TRUE, 1.0, 0.99 }, { 100.0, 95.0, 105.0, TRUE, 0.95, 1.05 },
  { 100.0, 94.9, 100.0, FALSE, 0.0, 0.0 },    { 100.0, 100.0, 105.1, FALSE, 0.0, 0.0 },
  { 100.0, 101.6, 94.0, FALSE, 0.0, 0.0 }, /* fitted to the page, as drivers like to */
  { 100.0, 3.9, 3.9, FALSE, 0.0, 0.0 },    /* typed in inches */
  { 100.0, 0.0, 100.0, FALSE, 0.0, 0.0 },     { 100.0, -100.0, 100.0, FALSE, 0.0, 0.0 },
  { 100.0, NAN, 100.0, FALSE, 0.0, 0.0 },     { 100.0, 100.0, INFINITY, FALSE, 0.0, 0.0 },
};

static void
test_bars (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bars); i++)
    {
      g_autoptr (GError) error = NULL;
      BfPrinterScale scale = { 7.0, 7.0 };
      gboolean is_sane = bf_printer_scale_from_bars (bars[i].bar_mm, bars[i].across_mm,
                                                     bars[i].down_mm, &scale, &error);

      g_assert_cmpint (is_sane, ==, bars[i].is_sane);
      if (is_sane)
        {
          g_assert_no_error (error);
          g_assert_cmpfloat_with_epsilon (scale.x, bars[i].x, 1e-12);
          g_assert_cmpfloat_with_epsilon (scale.y, bars[i].y, 1e-12);
          continue;
        }
      g_assert_error (error, BF_PRINTER_SCALE_ERROR, BF_PRINTER_SCALE_ERROR_TOO_FAR_OFF);
      g_assert_cmpfloat_with_epsilon (scale.x, 7.0, 1e-12);
    }
}

static void
test_none (void)
{
  BfPrinterScale none = bf_printer_scale_none (), off = { 1.0, 1.001 };

  g_assert_true (bf_printer_scale_is_none (&none));
  g_assert_false (bf_printer_scale_is_none (&off));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/printer-scale/bars", test_bars);
  g_test_add_func ("/printer-scale/none", test_none);
  return g_test_run ();
}
