/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The bars that a printer is checked by, measured in the ink itself. */

#include "paint/check-bars.h"

#include "core/vec.h"

#define PX_PER_MM 20
#define LEFT_MM 5
#define CAP_MM 2.0
#define BAR_Y_MM 10.0

typedef struct
{
  cairo_surface_t *surface;
  cairo_t *cr;
} Picture;

/* A white picture of 150 × 30 mm; the bars' (0, 0) lies LEFT_MM in from the left. */
static Picture
begin (void)
{
  Picture picture;

  picture.surface =
      cairo_image_surface_create (CAIRO_FORMAT_RGB24, 150 * PX_PER_MM, 30 * PX_PER_MM);
  picture.cr = cairo_create (picture.surface);
  cairo_set_source_rgb (picture.cr, 1.0, 1.0, 1.0);
  cairo_paint (picture.cr);
  cairo_scale (picture.cr, PX_PER_MM, PX_PER_MM);
  cairo_translate (picture.cr, LEFT_MM, 0.0);
  return picture;
}

static void
end (Picture *picture)
{
  cairo_destroy (picture->cr);
  cairo_surface_destroy (picture->surface);
}

static gboolean
is_inked (const Picture *picture, int x, int y)
{
  const unsigned char *data = cairo_image_surface_get_data (picture->surface);
  const guint32 *row = (const guint32 *)(gconstpointer)(data + y * cairo_image_surface_get_stride (
                                                                       picture->surface));

  return (row[x] & 0xff) < 0x80;
}

/* How long the unbroken run of ink along y is that begins nearest the left, in mm; from: (out)
 * where it begins, from the bars' own 0. */
static double
run_mm (Picture *picture, double y_mm, double *from)
{
  int y = (int)(y_mm * PX_PER_MM), first = 0, last;

  cairo_surface_flush (picture->surface);
  while (first < 150 * PX_PER_MM && !is_inked (picture, first, y))
    first++;
  last = first;
  while (last < 150 * PX_PER_MM && is_inked (picture, last, y))
    last++;
  *from = (double)first / PX_PER_MM - LEFT_MM;
  return (double)(last - first) / PX_PER_MM;
}

/* How many upright strokes cross a level just off the bar. */
static guint
count_ticks (Picture *picture, double y_mm, double to_mm)
{
  guint n = 0;

  for (int x = 1; x < (to_mm + LEFT_MM) * PX_PER_MM; x++)
    n += is_inked (picture, x, (int)(y_mm * PX_PER_MM)) &&
                 !is_inked (picture, x - 1, (int)(y_mm * PX_PER_MM))
             ? 1
             : 0;
  return n;
}

/* 100 mm, and 4 in below it: 101.6 mm, an inch being 25.4 mm by the agreement of 1959. The ticks'
 * own width adds a hair at both ends; a bar that were off by a quarter of a millimetre in 100 would
 * be found. */
static void
test_lengths (void)
{
  static const struct
  {
    double y_mm, length_mm;
    guint n_ticks;
  } rows[] = { { BAR_Y_MM, 100.0, 11 }, { BAR_Y_MM + 5.0, 101.6, 5 } };
  Picture picture = begin ();

  bf_check_bars_draw (picture.cr, BAR_Y_MM, CAP_MM);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double from, length = run_mm (&picture, rows[i].y_mm, &from);

      g_assert_cmpfloat_with_epsilon (length, rows[i].length_mm, 0.25);
      g_assert_cmpfloat_with_epsilon (from, 0.0, 0.15);
      g_assert_cmpuint (count_ticks (&picture, rows[i].y_mm + 0.4, rows[i].length_mm + 0.5), ==,
                        rows[i].n_ticks);
      /* The outer two are longer than the others. */
      g_assert_cmpuint (count_ticks (&picture, rows[i].y_mm + 1.0, rows[i].length_mm + 0.5), ==, 2);
    }
  end (&picture);
}

static void
test_alone (void)
{
  Picture picture = begin ();
  double from;

  bf_check_bar_draw (picture.cr, BAR_Y_MM, CAP_MM, 3.0);
  g_assert_cmpfloat_with_epsilon (run_mm (&picture, BAR_Y_MM, &from), 100.0, 0.25);
  end (&picture);
}

/* Words stand beside the bars, never on them, and within the room that the header tells of. */
static void
test_room (void)
{
  cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (surface);
  double x, y, width, height;

  cairo_scale (cr, PX_PER_MM, PX_PER_MM);
  bf_check_bars_draw (cr, BAR_Y_MM, CAP_MM);
  cairo_destroy (cr);
  cairo_recording_surface_ink_extents (surface, &x, &y, &width, &height);
  cairo_surface_destroy (surface);
  g_assert_cmpfloat (width / PX_PER_MM, >, 104.0);
  g_assert_cmpfloat (width / PX_PER_MM, <, 127.0);
  g_assert_cmpfloat (y / PX_PER_MM, >, BAR_Y_MM - BF_CHECK_BAR_TICK_MM - 0.3);
  g_assert_cmpfloat ((y + height) / PX_PER_MM, <, BAR_Y_MM + BF_CHECK_BARS_MM + 0.3);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/check-bars/lengths", test_lengths);
  g_test_add_func ("/check-bars/alone", test_alone);
  g_test_add_func ("/check-bars/room", test_room);
  return g_test_run ();
}
