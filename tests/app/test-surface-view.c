/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface-view.h"

#include "app/place-mark.h"

/* A 300 × 200 mm blank and a part 240 mm across, on a surface of 1000 × 600 pixels. */

static const BfBox blank = { { -20.0, -40.0 }, { 280.0, 160.0 } };

static BfSurfaceView *
make (void)
{
  BfSurfaceView *view = bf_surface_view_new ();
  bf_surface_view_set_size (view, 1000.0, 600.0);
  bf_surface_view_set_content (view, &blank, 120.0);
  return view;
}

static void
count_cb (guint *count)
{
  (*count)++;
}

static void
assert_near (BfVec2 a, BfVec2 b)
{
  g_assert_cmpfloat_with_epsilon (a.x, b.x, 1e-9);
  g_assert_cmpfloat_with_epsilon (a.y, b.y, 1e-9);
}

static void
test_all_fits (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  double radius_px = 120.0 * bf_surface_view_get_scale (view);
  BfVec2 low = bf_surface_view_from_blank (view, blank.min);
  BfVec2 high = bf_surface_view_from_blank (view, blank.max);
  BfVec2 centre = bf_surface_view_get_formed_centre (view);

  g_assert_cmpfloat (low.x, >, 0.0);
  g_assert_cmpfloat (low.y, <, 600.0);
  g_assert_cmpfloat (high.y, >, 0.0);
  g_assert_cmpfloat (high.x, <, centre.x - radius_px);
  g_assert_cmpfloat (centre.x + radius_px, <, 1000.0);
  g_assert_cmpfloat (centre.y - radius_px, >, 0.0);
  g_assert_cmpfloat (centre.y + radius_px, <, 600.0);
}

/* Larger words get more room beside the pictures; of no window too small for them is made less than
 * a picture. */
static void
test_large_words_get_room (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  double left = bf_surface_view_from_blank (view, blank.min).x;
  guint changes = 0;

  g_signal_connect_swapped (view, "changed", G_CALLBACK (count_cb), &changes);
  bf_surface_view_set_text (view, 1.5);
  bf_surface_view_set_text (view, 1.5);
  g_assert_cmpuint (changes, ==, 1);
  g_assert_cmpfloat (bf_surface_view_from_blank (view, blank.min).x, >, 1.4 * left);
  bf_surface_view_set_text (view, 100.0);
  g_assert_cmpfloat (bf_surface_view_get_text (view), <=, 4.0);
  g_assert_cmpfloat (bf_surface_view_get_scale (view), >, 0.0);
}

/* y runs up on the blank and down on the surface. */
static void
test_points_go_and_come_back (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  BfVec2 p = bf_vec2 (12.5, 99.0);

  bf_surface_view_zoom_at (view, 1.7, bf_vec2 (100.0, 50.0));
  bf_surface_view_pan (view, bf_vec2 (13.0, -8.0));
  assert_near (bf_surface_view_to_blank (view, bf_surface_view_from_blank (view, p)), p);
  BfVec2 above = bf_surface_view_from_blank (view, bf_vec2 (12.5, 109.0));
  g_assert_cmpfloat (above.y, <, bf_surface_view_from_blank (view, p).y);
}

static void
test_zoom_leaves_its_point (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  BfVec2 px = bf_vec2 (333.0, 222.0);
  BfVec2 before = bf_surface_view_to_blank (view, px);

  bf_surface_view_zoom_at (view, 2.5, px);
  assert_near (bf_surface_view_to_blank (view, px), before);
  bf_surface_view_zoom_at (view, 0.2, px);
  assert_near (bf_surface_view_to_blank (view, px), before);
}

static void
test_zoom_ends (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  double fits = bf_surface_view_get_scale (view);

  for (int i = 0; i < 100; i++)
    bf_surface_view_zoom_at (view, 2.0, bf_vec2 (0.0, 0.0));
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_scale (view), 40.0 * fits, 1e-9);
  for (int i = 0; i < 100; i++)
    bf_surface_view_zoom_at (view, 0.5, bf_vec2 (0.0, 0.0));
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_scale (view), 0.1 * fits, 1e-9);
  bf_surface_view_fit (view);
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_scale (view), fits, 1e-9);
}

static void
test_turning_stops_above_and_below (void)
{
  g_autoptr (BfSurfaceView) view = make ();

  bf_surface_view_turn (view, 0.0, 10.0);
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_elevation (view), G_PI_2, 1e-12);
  bf_surface_view_turn (view, 0.0, -10.0);
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_elevation (view), -G_PI_2, 1e-12);
}

static void
test_turning_goes_round (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  double start = bf_surface_view_get_azimuth (view);

  for (int i = 0; i < 36; i++)
    bf_surface_view_turn (view, bf_deg_to_rad (10.0), 0.0);
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_azimuth (view), start, 1e-9);
}

static void
test_fraction_is_clamped (void)
{
  g_autoptr (BfSurfaceView) view = make ();

  bf_surface_view_set_fraction (view, 1.4);
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_fraction (view), 1.0, 1e-12);
  bf_surface_view_set_fraction (view, -0.1);
  g_assert_cmpfloat_with_epsilon (bf_surface_view_get_fraction (view), 0.0, 1e-12);
}

static void
test_selecting_the_same_is_no_change (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  guint count = 0;

  g_signal_connect_swapped (view, "changed", G_CALLBACK (count_cb), &count);
  bf_surface_view_select (view, (BfSelection){ 2, 1 });
  g_assert_cmpuint (count, ==, 1);
  bf_surface_view_select (view, (BfSelection){ 2, 1 });
  g_assert_cmpuint (count, ==, 1);
  bf_surface_view_select (view, (BfSelection){ 2, -1 });
  g_assert_cmpuint (count, ==, 2);
}

/* Half way to a place and then all the way: the place stands where it is wanted, at that scale. */
static void
test_a_place_is_brought (void)
{
  g_autoptr (BfSurfaceView) view = make ();
  BfVec2 place = bf_vec2 (250.0, 10.0), there = bf_vec2 (500.0, 300.0);

  for (double scale = 2.0; scale <= 4.0; scale += 1.0)
    {
      bf_surface_view_bring (view, place, there, scale);
      assert_near (bf_surface_view_from_blank (view, place), there);
      g_assert_cmpfloat_with_epsilon (bf_surface_view_get_scale (view), scale, 1e-9);
    }
}

static void
test_no_room_is_survived (void)
{
  g_autoptr (BfSurfaceView) view = make ();

  bf_surface_view_set_size (view, 0.0, 0.0);
  g_assert_cmpfloat (bf_surface_view_get_scale (view), >, 0.0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/surface-view/large-words", test_large_words_get_room);
  g_test_add_func ("/surface-view/all-fits", test_all_fits);
  g_test_add_func ("/surface-view/points-go-and-come-back", test_points_go_and_come_back);
  g_test_add_func ("/surface-view/zoom-leaves-its-point", test_zoom_leaves_its_point);
  g_test_add_func ("/surface-view/zoom-ends", test_zoom_ends);
  g_test_add_func ("/surface-view/turning-stops", test_turning_stops_above_and_below);
  g_test_add_func ("/surface-view/turning-goes-round", test_turning_goes_round);
  g_test_add_func ("/surface-view/fraction-is-clamped", test_fraction_is_clamped);
  g_test_add_func ("/surface-view/same-selection", test_selecting_the_same_is_no_change);
  g_test_add_func ("/surface-view/a-place-is-brought", test_a_place_is_brought);
  g_test_add_func ("/surface-view/no-room", test_no_room_is_survived);
  return g_test_run ();
}
