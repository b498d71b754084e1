/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/bend-sketch.h"

#include "app/theme-colours.h"
#include "core/vec.h"

struct _BfBendSketch
{
  GtkWidget parent_instance;
  double angle_deg;
  BfTurn turn;
};

G_DEFINE_FINAL_TYPE (BfBendSketch, bf_bend_sketch, GTK_TYPE_WIDGET)

#define WIDTH_PX 46
#define HEIGHT_PX 38
#define LEG_PX 16.0
#define ARC_PX 9.0

static void
bf_bend_sketch_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfBendSketch *self = BF_BEND_SKETCH (widget);
  GdkRGBA ink = bf_theme_words_colour (widget);
  /* Up is against y here. A hem is drawn a little open, or its two lines would be one. */
  double angle = bf_deg_to_rad (MIN (self->angle_deg, 172.0));
  double way = self->turn == BF_TURN_UP ? -angle : angle;
  double x = WIDTH_PX / 2.0;
  double y = HEIGHT_PX / 2.0;
  cairo_t *cr =
      gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, WIDTH_PX, HEIGHT_PX));

  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_line_width (cr, 2.0);
  cairo_move_to (cr, x - LEG_PX, y);
  cairo_line_to (cr, x, y);
  cairo_line_to (cr, x + LEG_PX * cos (way), y + LEG_PX * sin (way));
  cairo_stroke (cr);
  /* How far it is turned, from lying straight on. */
  const double dashes[] = { 2.0, 2.0 };
  cairo_set_line_width (cr, 1.0);
  cairo_set_dash (cr, dashes, 2, 0.0);
  cairo_move_to (cr, x, y);
  cairo_line_to (cr, x + LEG_PX, y);
  cairo_stroke (cr);
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_arc (cr, x, y, ARC_PX, MIN (way, 0.0), MAX (way, 0.0));
  cairo_stroke (cr);
  cairo_destroy (cr);
}

static void
bf_bend_sketch_class_init (BfBendSketchClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->snapshot = bf_bend_sketch_snapshot;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
bf_bend_sketch_init (BfBendSketch *self)
{
  self->angle_deg = 90.0;
  gtk_widget_set_size_request (GTK_WIDGET (self), WIDTH_PX, HEIGHT_PX);
}

void
bf_bend_sketch_show (BfBendSketch *self, double angle_deg, BfTurn turn)
{
  g_return_if_fail (BF_IS_BEND_SKETCH (self));

  self->angle_deg = angle_deg;
  self->turn = turn;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
