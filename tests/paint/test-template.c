/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-part.h"
#include "paint/template.h"

/* The template as its callers see it; the plan and the drawing have tests of their own. */

static BfTemplate *
template_of (BfPart *part, const char *paper)
{
  g_autoptr (BfFold) fold = bf_fold (part);
  BfTemplateOptions options = { .paper = bf_paper_find (paper), .units = BF_UNITS_MM };

  return bf_template_new (fold, &options);
}

/* The blank's point p on the page: millimetres from its lower left corner. */
static BfVec2
on_page (const BfTemplatePage *page, BfVec2 p)
{
  BfVec2 away = bf_vec2_sub (p, page->origin);

  return page->turn_deg == 90 ? bf_vec2 (-away.y, away.x) : away;
}

/* Trays by their outside sizes; the blank is 74.692 longer and wider: 2 × (40 − 2.654), where
 * 2.654 is the deduction 2 × 3 − (π/2)(1.5 + 0.42 × 1.5) of R 1.5, t 1.5. */
static const struct
{
  double width_mm, depth_mm;
  const char *paper;
  guint n_pages, turn_deg;
} trays[] = {
  { 200.0, 120.0, "A4", 2, 0 },    { 200.0, 120.0, "Letter", 2, 0 }, { 200.0, 120.0, "A3", 1, 90 },
  { 100.0, 60.0, "A4", 1, 0 },     { 160.0, 100.0, "A4", 1, 90 },    { 300.0, 100.0, "A4", 2, 90 },
  { 110.0, 160.0, "Legal", 1, 0 },
};

static void
test_pages (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (trays); i++)
    {
      g_autoptr (BfPart) part = make_tray (trays[i].width_mm, trays[i].depth_mm, 40.0, 90.0);
      g_autoptr (BfTemplate) template = template_of (part, trays[i].paper);
      const BfPaper *paper = bf_paper_find (trays[i].paper);
      g_test_message ("%g × %g on %s", trays[i].width_mm, trays[i].depth_mm, trays[i].paper);
      g_assert_cmpuint (bf_template_n_pages (template), ==, trays[i].n_pages);
      for (guint k = 0; k < trays[i].n_pages; k++)
        {
          BfTemplatePage page = bf_template_page (template, k);
          g_assert_cmpuint (page.turn_deg, ==, trays[i].turn_deg);
          g_assert_cmpfloat_with_epsilon (page.width_mm, paper->width_mm, 1e-9);
          g_assert_cmpfloat_with_epsilon (page.height_mm, paper->height_mm, 1e-9);
        }
    }
}

/* Every corner of the blank is on some page, inside what a printer can reach. */
static void
test_corners_are_printed (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (trays); i++)
    {
      g_autoptr (BfPart) part = make_tray (trays[i].width_mm, trays[i].depth_mm, 40.0, 90.0);
      g_autoptr (BfTemplate) template = template_of (part, trays[i].paper);
      const BfRing *ring = bf_blank_ring (&bf_template_fold (template)->blank, 0);
      for (guint v = 0; v < bf_ring_size (ring); v++)
        {
          gboolean is_printed = FALSE;
          for (guint k = 0; k < bf_template_n_pages (template); k++)
            {
              BfTemplatePage page = bf_template_page (template, k);
              BfVec2 p = on_page (&page, bf_ring_vertex (ring, v)->p);
              is_printed |= p.x > 10.0 && p.x < page.width_mm - 10.0 && p.y > 10.0 &&
                            p.y < page.height_mm - 10.0;
            }
          g_assert_true (is_printed);
        }
    }
}

static void
test_labels (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfTemplate) template = template_of (part, "A4");

  g_assert_cmpstr (bf_template_page (template, 0).label, ==, "A1");
  g_assert_cmpstr (bf_template_page (template, 1).label, ==, "B1");
}

/* Options left out: A4 and today. A name left out, and a part that is all wrong, still print. */
static void
test_defaults (void)
{
  g_autoptr (BfPart) part = make_tray (50.0, 30.0, 0.5, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (BfTemplate) template = NULL;
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, 210, 297);
  cairo_t *cr = cairo_create (surface);

  g_clear_pointer (&part->name, g_free);
  fold = bf_fold (part);
  template = bf_template_new (fold, NULL);
  g_assert_cmpfloat_with_epsilon (bf_template_page (template, 0).width_mm, 210.0, 1e-9);
  for (guint i = 0; i < bf_template_n_pages (template); i++)
    bf_template_draw_page (template, i, cr);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

/* A page is drawn with no trace left on the context: what the caller set still holds. */
static void
test_leaves_context_alone (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfTemplate) template = template_of (part, "A4");
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, 210, 297);
  cairo_t *cr = cairo_create (surface);
  double x = 3.0, y = 4.0;

  bf_template_draw_page (template, 1, cr);
  cairo_user_to_device (cr, &x, &y);
  g_assert_cmpfloat_with_epsilon (x, 3.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (y, 4.0, 1e-12);
  cairo_clip_extents (cr, &x, &y, &(double){ 0.0 }, &(double){ 0.0 });
  g_assert_cmpfloat_with_epsilon (x, 0.0, 1e-12);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/template/pages", test_pages);
  g_test_add_func ("/template/corners-are-printed", test_corners_are_printed);
  g_test_add_func ("/template/labels", test_labels);
  g_test_add_func ("/template/defaults", test_defaults);
  g_test_add_func ("/template/leaves-context-alone", test_leaves_context_alone);
  return g_test_run ();
}
