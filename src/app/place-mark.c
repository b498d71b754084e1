/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/place-mark.h"

#include "paint/palette.h"

/* Long enough to be followed with the eye, and to be found where one looked away. */
#define FLIGHT_US (350 * G_TIME_SPAN_MILLISECOND)
#define MARK_US (2200 * G_TIME_SPAN_MILLISECOND)

/* How close the eye wants to be: a relief of 6 mm is then seen at a glance. */
#define NEAR_PX_PER_MM 4.0

#define RING_PX 17.0
#define RING_FROM_PX 60.0
#define RING_LINE_PX 3.0

struct _BfPlaceMark
{
  GtkWidget *widget;
  BfSurfaceView *view;
  guint tick; /* 0 while there is no mark */
  gint64 start_us;
  gboolean arrived;
  BfVec2 place_mm, from_px;
  double from_scale;
};

BfPlaceMark *
bf_place_mark_new (GtkWidget *widget, BfSurfaceView *view)
{
  g_return_val_if_fail (GTK_IS_WIDGET (widget) && BF_IS_SURFACE_VIEW (view), NULL);

  BfPlaceMark *mark = g_new0 (BfPlaceMark, 1);
  mark->widget = widget;
  mark->view = g_object_ref (view);
  return mark;
}

static void
stop (BfPlaceMark *mark)
{
  if (mark->tick != 0)
    gtk_widget_remove_tick_callback (mark->widget, mark->tick);
  mark->tick = 0;
}

void
bf_place_mark_free (BfPlaceMark *mark)
{
  stop (mark);
  g_object_unref (mark->view);
  g_free (mark);
}

/* ---- the flight --------------------------------------------------------------------------- */

void
bf_surface_view_bring (BfSurfaceView *view, BfVec2 blank_mm, BfVec2 px, double scale)
{
  BfVec2 now = bf_surface_view_from_blank (view, blank_mm);

  bf_surface_view_zoom_at (view, scale / bf_surface_view_get_scale (view), now);
  bf_surface_view_pan (view, bf_vec2_sub (px, bf_surface_view_from_blank (view, blank_mm)));
}

/* Slow at both ends. */
static double
eased (double share)
{
  return share * share * (3.0 - 2.0 * share);
}

static double
share_of (gint64 passed_us, gint64 whole_us)
{
  return CLAMP ((double)passed_us / (double)whole_us, 0.0, 1.0);
}

static void
fly (BfPlaceMark *mark, double share)
{
  double scale = MAX (mark->from_scale, NEAR_PX_PER_MM);
  BfVec2 middle = { gtk_widget_get_width (mark->widget) / 2.0,
                    gtk_widget_get_height (mark->widget) / 2.0 };
  BfVec2 way = bf_vec2_sub (middle, mark->from_px);

  bf_surface_view_bring (mark->view, mark->place_mm, bf_vec2_along (mark->from_px, way, share),
                         mark->from_scale * pow (scale / mark->from_scale, share));
}

static gboolean
is_animated (GtkWidget *widget)
{
  gboolean animated = TRUE;

  g_object_get (gtk_widget_get_settings (widget), "gtk-enable-animations", &animated, NULL);
  return animated;
}

static gint64
passed_us (const BfPlaceMark *mark)
{
  GdkFrameClock *clock = gtk_widget_get_frame_clock (mark->widget);

  return clock != NULL ? gdk_frame_clock_get_frame_time (clock) - mark->start_us : 0;
}

static gboolean
tick_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer user_data)
{
  (void)clock;
  BfPlaceMark *mark = user_data;
  gint64 passed = passed_us (mark);

  if (!mark->arrived)
    {
      double share = is_animated (widget) ? share_of (passed, FLIGHT_US) : 1.0;
      fly (mark, eased (share));
      mark->arrived = share >= 1.0;
    }
  gtk_widget_queue_draw (widget);
  if (passed < MARK_US)
    return G_SOURCE_CONTINUE;
  mark->tick = 0;
  return G_SOURCE_REMOVE;
}

void
bf_place_mark_show (BfPlaceMark *mark, BfVec2 blank_mm)
{
  g_return_if_fail (mark != NULL);

  stop (mark);
  mark->place_mm = blank_mm;
  mark->from_px = bf_surface_view_from_blank (mark->view, blank_mm);
  mark->from_scale = bf_surface_view_get_scale (mark->view);
  mark->arrived = FALSE;
  mark->start_us = g_get_monotonic_time ();
  mark->tick = gtk_widget_add_tick_callback (mark->widget, tick_cb, mark, NULL);
}

/* ---- the ring ----------------------------------------------------------------------------- */

static void
stroke_ring (cairo_t *cr, BfVec2 px, double radius_px, double alpha)
{
  guint32 rgb = bf_okabe_ito (BF_OKABE_ITO_ORANGE);

  cairo_new_path (cr);
  cairo_arc (cr, px.x, px.y, radius_px, 0.0, 2.0 * G_PI);
  /* White beneath, so that it is seen on metal of any tone. */
  cairo_set_line_width (cr, RING_LINE_PX + 3.0);
  cairo_set_source_rgba (cr, 1.0, 1.0, 1.0, 0.8 * alpha);
  cairo_stroke_preserve (cr);
  cairo_set_line_width (cr, RING_LINE_PX);
  cairo_set_source_rgba (cr, ((rgb >> 16) & 0xff) / 255.0, ((rgb >> 8) & 0xff) / 255.0,
                         (rgb & 0xff) / 255.0, alpha);
  cairo_stroke (cr);
}

void
bf_place_mark_paint (BfPlaceMark *mark, cairo_t *cr)
{
  if (mark == NULL || mark->tick == 0)
    return;
  double drawn_in = 1.0, alpha = 1.0;
  if (is_animated (mark->widget))
    {
      drawn_in = eased (share_of (passed_us (mark), FLIGHT_US));
      alpha = 1.0 - eased (share_of (passed_us (mark) - MARK_US / 2, MARK_US / 2));
    }
  stroke_ring (cr, bf_surface_view_from_blank (mark->view, mark->place_mm),
               RING_FROM_PX + (RING_PX - RING_FROM_PX) * drawn_in, alpha);
}
