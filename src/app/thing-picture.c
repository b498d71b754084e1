/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/thing-picture.h"

#include <glib/gi18n.h>

#include "app/pencil.h"
#include "app/theme-colours.h"
#include "core/first-part.h"
#include "fold/fold.h"

struct _BfThingPicture
{
  GtkWidget parent_instance;
  BfThing thing;
  BfFormedView *formed; /* NULL for an outline of one's own */
};

G_DEFINE_FINAL_TYPE (BfThingPicture, bf_thing_picture, GTK_TYPE_WIDGET)

#define WIDTH_PX 190
#define HEIGHT_PX 130

static void
paint_formed (BfThingPicture *self, cairo_t *cr, BfVec2 size)
{
  BfFormedStyle style = bf_pencil_style (bf_theme_is_dark (GTK_WIDGET (self)));
  BfBox box = bf_formed_view_box (self->formed);
  BfVec2 high = bf_vec2_sub (box.max, box.min);
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);

  style.scale = MIN ((size.x - 16.0) / high.x, (size.y - 16.0) / high.y);
  cairo_translate (cr, size.x / 2.0 - middle.x * style.scale,
                   size.y / 2.0 - middle.y * style.scale);
  bf_formed_view_paint (self->formed, cr, &style);
}

/* An outline half drawn, with its points, and the next line still to come. */
static void
paint_outline (BfThingPicture *self, cairo_t *cr, BfVec2 size)
{
  static const BfVec2 points[] = { { -58, 34 }, { 46, 34 }, { 46, -6 },
                                   { 4, -6 },   { 4, -36 }, { -58, -36 } };
  GdkRGBA ink = bf_theme_words_colour (GTK_WIDGET (self));

  cairo_translate (cr, size.x / 2.0 + 6.0, size.y / 2.0);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, BF_PENCIL_LINE_PX);
  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    cairo_line_to (cr, points[i].x, points[i].y);
  cairo_stroke (cr);
  cairo_set_dash (cr, (const double[]){ 5.0, 4.0 }, 2, 0.0);
  cairo_move_to (cr, points[5].x, points[5].y);
  cairo_line_to (cr, points[0].x, points[0].y);
  cairo_stroke (cr);
  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    {
      cairo_arc (cr, points[i].x, points[i].y, 2.6, 0.0, 2.0 * G_PI);
      cairo_fill (cr);
    }
}

static void
bf_thing_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfThingPicture *self = BF_THING_PICTURE (widget);
  BfVec2 size = { gtk_widget_get_width (widget), gtk_widget_get_height (widget) };
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0, 0, (float)size.x, (float)size.y));

  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  if (self->formed != NULL)
    paint_formed (self, cr, size);
  else
    paint_outline (self, cr, size);
  cairo_destroy (cr);
}

static void
bf_thing_picture_finalize (GObject *object)
{
  g_clear_pointer (&BF_THING_PICTURE (object)->formed, bf_formed_view_free);
  G_OBJECT_CLASS (bf_thing_picture_parent_class)->finalize (object);
}

static void
bf_thing_picture_class_init (BfThingPictureClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = bf_thing_picture_finalize;
  widget_class->snapshot = bf_thing_picture_snapshot;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
bf_thing_picture_init (BfThingPicture *self)
{
  gtk_widget_set_size_request (GTK_WIDGET (self), WIDTH_PX, HEIGHT_PX);
}

/* A pencil line has no room for reliefs, and cutting them takes longer than all the rest. */
static void
leave_reliefs_out (BfPart *part)
{
  for (guint i = 0; i < bf_part_n_points (part); i++)
    {
      BfCorner *corner = bf_corner_new ("base", i);
      corner->relief = BF_RELIEF_NONE;
      g_ptr_array_add (part->corners, corner);
    }
}

GtkWidget *
bf_thing_picture_new (BfThing thing)
{
  BfThingPicture *self = g_object_new (BF_TYPE_THING_PICTURE, NULL);
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  BfThingSizes sizes;

  self->thing = thing;
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  bf_thing_name (thing), -1);
  if (thing >= BF_N_THINGS)
    return GTK_WIDGET (self);
  bf_thing_sizes_init (&sizes, thing, BF_UNITS_MM);
  g_autoptr (BfPart) part = bf_thing_make (thing, &sizes, setup, "");
  leave_reliefs_out (part);
  g_autoptr (BfFold) fold = bf_fold (part);
  self->formed = bf_formed_view_prepare (fold, &fold->formed, bf_pencil_look);
  return GTK_WIDGET (self);
}

const char *
bf_thing_name (BfThing thing)
{
  switch (thing)
    {
    case BF_THING_TRAY:
      return _ ("Tray");
    case BF_THING_BRACKET:
      return _ ("Bracket");
    case BF_THING_CHANNEL:
      return _ ("Channel");
    case BF_THING_SHELF:
      return _ ("Shelf");
    case BF_THING_BOX:
      return _ ("Box");
    case BF_N_THINGS:
    default:
      return _ ("My own outline");
    }
}
