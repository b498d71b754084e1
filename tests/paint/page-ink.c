/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "page-ink.h"

/* A surface counts in whole units here and there: so many to a millimetre. */
#define UNITS_PER_MM 10.0

BfBox
page_ink (PageFunc draw, gconstpointer pages, guint page)
{
  cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (surface);
  double x, y, width, height;

  cairo_scale (cr, UNITS_PER_MM, UNITS_PER_MM);
  draw (pages, page, cr);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  cairo_recording_surface_ink_extents (surface, &x, &y, &width, &height);
  cairo_surface_destroy (surface);
  if (width <= 0.0 || height <= 0.0)
    return bf_box_empty ();
  return (BfBox){ { x / UNITS_PER_MM, y / UNITS_PER_MM },
                  { (x + width) / UNITS_PER_MM, (y + height) / UNITS_PER_MM } };
}

void
assert_on_paper (const BfBox *ink, const BfPaper *paper, double margin_mm)
{
  g_test_message ("ink from %.1f, %.1f to %.1f, %.1f on %s", ink->min.x, ink->min.y, ink->max.x,
                  ink->max.y, paper->name);
  g_assert_cmpfloat (ink->min.x, <, ink->max.x);
  g_assert_cmpfloat (ink->min.x, >=, margin_mm);
  g_assert_cmpfloat (ink->min.y, >=, margin_mm);
  g_assert_cmpfloat (ink->max.x, <=, paper->width_mm - margin_mm);
  g_assert_cmpfloat (ink->max.y, <=, paper->height_mm - margin_mm);
}
