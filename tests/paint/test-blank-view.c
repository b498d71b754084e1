/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make-part.h"
#include "paint/blank-view.h"
#include "paint/palette.h"
#include "paint/ring-path.h"
#include "paint/text.h"

/* Pictures are made at ten pixels a millimetre and asked for their pixels. */

#define PX_PER_MM 10.0

typedef struct
{
  cairo_surface_t *surface;
  cairo_t *cr;
  BfVec2 upper_left; /* of the picture, in the blank */
} Picture;

static Picture
new_picture (const BfFold *fold)
{
  const BfBox *box = &fold->blank.box;
  Picture picture = { .upper_left = bf_vec2 (box->min.x - 2.0, box->max.y + 2.0) };
  int width = (int)((box->max.x - box->min.x + 4.0) * PX_PER_MM);
  int height = (int)((box->max.y - box->min.y + 4.0) * PX_PER_MM);

  picture.surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width, height);
  picture.cr = cairo_create (picture.surface);
  cairo_scale (picture.cr, PX_PER_MM, PX_PER_MM);
  cairo_translate (picture.cr, -picture.upper_left.x, picture.upper_left.y);
  return picture;
}

static guint32
pixel (const Picture *picture, int x, int y)
{
  const unsigned char *data = cairo_image_surface_get_data (picture->surface);
  int stride = cairo_image_surface_get_stride (picture->surface);

  return *(const guint32 *)(const void *)(data + y * stride + x * 4);
}

/* The pixel at a point of the blank: 0xAARRGGBB. */
static guint32
pixel_at (const Picture *picture, double x, double y)
{
  return pixel (picture, (int)((x - picture->upper_left.x) * PX_PER_MM),
                (int)((picture->upper_left.y - y) * PX_PER_MM));
}

static double
covered_mm2 (const Picture *picture)
{
  int width = cairo_image_surface_get_width (picture->surface);
  int height = cairo_image_surface_get_height (picture->surface);
  double alpha = 0.0;

  cairo_surface_flush (picture->surface);
  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      alpha += (pixel (picture, x, y) >> 24) / 255.0;
  return alpha / (PX_PER_MM * PX_PER_MM);
}

static void
end_picture (Picture *picture)
{
  cairo_destroy (picture->cr);
  cairo_surface_destroy (picture->surface);
}

static void
draw_layers (Picture *picture, const BfFold *fold, guint layers)
{
  BfBlankStyle style;

  bf_blank_style_init (&style, fold);
  style.layers = layers;
  bf_blank_view_draw (fold, &style, picture->cr);
  cairo_surface_flush (picture->surface);
}

static BfPart *
part_with_hole (void)
{
  BfPart *part = make_tray (60.0, 40.0, 15.0, 90.0);
  BfOpening *opening = bf_opening_new ("base", BF_OPENING_ROUND);

  opening->at_mm = bf_vec2 (15.0, 28.0);
  opening->diameter_mm = 12.0;
  g_ptr_array_add (part->openings, opening);
  return part;
}

/* The metal drawn is the metal there is: arcs are arcs, holes are holes. */
static void
test_metal_area (void)
{
  g_autoptr (BfPart) part = part_with_hole ();
  g_autoptr (BfFold) fold = bf_fold (part);
  Picture picture = new_picture (fold);

  draw_layers (&picture, fold, BF_BLANK_METAL);
  g_assert_cmpfloat_with_epsilon (covered_mm2 (&picture), fold->blank.area_mm2, 1.0);
  g_assert_cmphex (pixel_at (&picture, 15.0, 28.0), ==, 0);
  end_picture (&picture);
}

/* Nothing is mirrored: the hole is at the upper left. */
static void
test_right_way_up (void)
{
  g_autoptr (BfPart) part = part_with_hole ();
  g_autoptr (BfFold) fold = bf_fold (part);
  Picture picture = new_picture (fold);

  draw_layers (&picture, fold, BF_BLANK_CUTS);
  g_assert_cmphex (pixel_at (&picture, 15.0, 34.0), ==, 0xFF000000);
  g_assert_cmphex (pixel_at (&picture, 9.0, 28.0), ==, 0xFF000000);
  g_assert_cmphex (pixel_at (&picture, 45.0, 34.0), ==, 0);
  g_assert_cmphex (pixel_at (&picture, 15.0, 6.0), ==, 0);
  end_picture (&picture);
}

static void
test_bend_colours (void)
{
  g_autoptr (BfPart) part = make_rectangle (60.0, 40.0);
  g_autoptr (BfFold) fold = NULL;
  Picture picture;

  add_flange (part, "a", 0, 15.0, 90.0);
  add_flange (part, "b", 2, 15.0, 90.0)->turn = BF_TURN_DOWN;
  fold = bf_fold (part);
  picture = new_picture (fold);
  draw_layers (&picture, fold, BF_BLANK_BENDS);
  /* Both dashes begin at the line's start; 1 mm in there is ink. */
  for (guint i = 0; i < 2; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
      BfVec2 p = bf_vec2_along (bend->line[0], along, 1.0);
      BfPurpose purpose = bend->turn == BF_TURN_UP ? BF_PURPOSE_BEND_UP : BF_PURPOSE_BEND_DOWN;
      g_assert_cmphex (pixel_at (&picture, p.x, p.y), ==,
                       0xFF000000 | bf_okabe_ito (bf_pen (purpose)->colour));
    }
  end_picture (&picture);
}

static void
test_highlight (void)
{
  g_autoptr (BfPart) part = part_with_hole ();
  g_autoptr (BfFold) fold = bf_fold (part);
  Picture picture = new_picture (fold);
  BfBlankStyle style;

  bf_blank_style_init (&style, fold);
  style.layers = 0;
  style.highlight_face = 1;
  bf_blank_view_draw (fold, &style, picture.cr);
  cairo_surface_flush (picture.surface);
  g_assert_cmphex (pixel_at (&picture, 30.0, -8.0) >> 24, >, 0x40);
  g_assert_cmphex (pixel_at (&picture, 30.0, 20.0), ==, 0);
  end_picture (&picture);
}

/* Where the base is lit, its opening is not: lit all over, less the hole. */
static void
test_highlight_spares_openings (void)
{
  g_autoptr (BfPart) part = part_with_hole ();
  g_autoptr (BfFold) fold = bf_fold (part);
  Picture picture = new_picture (fold);
  BfBlankStyle style;

  bf_blank_style_init (&style, fold);
  style.layers = BF_BLANK_METAL;
  style.highlight_face = 0;
  bf_blank_view_draw (fold, &style, picture.cr);
  cairo_surface_flush (picture.surface);
  g_assert_cmphex (pixel_at (&picture, 15.0, 28.0), ==, 0);
  g_assert_cmpfloat_with_epsilon (covered_mm2 (&picture), fold->blank.area_mm2, 1.0);
  end_picture (&picture);
}

/* A ring of two half circles, run either way round, encloses the circle's area. */
static void
test_ring_path (void)
{
  g_autoptr (BfPart) part = make_rectangle (20.0, 20.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  for (int turn = -1; turn <= 1; turn += 2)
    {
      g_autoptr (BfRing) circle = bf_ring_new ();
      Picture picture = new_picture (fold);
      bf_ring_add (circle, bf_vec2 (18.0, -10.0), turn);
      bf_ring_add (circle, bf_vec2 (2.0, -10.0), turn);
      bf_ring_path (circle, picture.cr);
      cairo_fill (picture.cr);
      g_assert_cmpfloat_with_epsilon (covered_mm2 (&picture), G_PI * 64.0, 0.3);
      end_picture (&picture);
    }
}

/* Capitals are as high as was asked: counted in pixel rows. */
static void
test_cap_height (void)
{
  g_autoptr (BfPart) part = make_rectangle (40.0, 20.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  Picture picture = new_picture (fold);
  int first = -1, last = -1;

  bf_text_show (picture.cr, "HEH", 4.0, 0.5, bf_vec2 (20.0, -5.0));
  cairo_surface_flush (picture.surface);
  for (int y = 0; y < cairo_image_surface_get_height (picture.surface); y++)
    for (int x = 0; x < cairo_image_surface_get_width (picture.surface); x++)
      if (pixel (&picture, x, y) >> 24 > 0x80)
        {
          first = first < 0 ? y : first;
          last = y;
        }
  g_assert_cmpint (last - first + 1, >=, 39);
  g_assert_cmpint (last - first + 1, <=, 41);
  end_picture (&picture);
}

static void
test_wrap (void)
{
  g_autoptr (BfText) text = bf_text_new ("one two three four five six seven", 3.0, FALSE);
  double one_line = bf_text_width (text);

  g_assert_cmpint (bf_text_n_lines (text), ==, 1);
  bf_text_wrap (text, one_line / 2.5, 4);
  g_assert_cmpint (bf_text_n_lines (text), >=, 3);
  g_assert_cmpfloat (bf_text_width (text), <=, one_line / 2.5 + 0.1);
  bf_text_wrap (text, one_line / 2.5, 2);
  g_assert_cmpint (bf_text_n_lines (text), ==, 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/blank-view/metal-area", test_metal_area);
  g_test_add_func ("/blank-view/right-way-up", test_right_way_up);
  g_test_add_func ("/blank-view/bend-colours", test_bend_colours);
  g_test_add_func ("/blank-view/highlight", test_highlight);
  g_test_add_func ("/blank-view/highlight-spares-openings", test_highlight_spares_openings);
  g_test_add_func ("/blank-view/ring-path", test_ring_path);
  g_test_add_func ("/text/cap-height", test_cap_height);
  g_test_add_func ("/text/wrap", test_wrap);
  return g_test_run ();
}
