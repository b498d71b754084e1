/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/jaw-picture.h"

#include <glib/gi18n.h>

#include "app/theme-colours.h"

struct _BfJawPicture
{
  GtkWidget parent_instance;
  BfSizeKind kind;
};

G_DEFINE_FINAL_TYPE (BfJawPicture, bf_jaw_picture, GTK_TYPE_WIDGET)

#define WIDTH_PX 34
#define HEIGHT_PX 20

/* The metal, cut through: two walls on a floor, from x = 7 to 27. */
static void
draw_metal (cairo_t *cr)
{
  cairo_set_line_width (cr, 2.0);
  cairo_move_to (cr, 8.0, 6.0);
  cairo_line_to (cr, 8.0, 17.0);
  cairo_line_to (cr, 26.0, 17.0);
  cairo_line_to (cr, 26.0, 6.0);
  cairo_stroke (cr);
}

/* Jaws that hang from a beam, their tips pointing at what they measure. */
static void
draw_jaws (cairo_t *cr, double left, double right)
{
  cairo_set_line_width (cr, 1.0);
  cairo_move_to (cr, left, 13.5);
  cairo_line_to (cr, left, 2.5);
  cairo_line_to (cr, right, 2.5);
  cairo_line_to (cr, right, 13.5);
  cairo_stroke (cr);
}

static void
draw_held (cairo_t *cr)
{
  cairo_set_line_width (cr, 1.0);
  cairo_rectangle (cr, 11.5, 4.5, 11.0, 10.0);
  cairo_stroke (cr);
  cairo_move_to (cr, 11.5, 14.5);
  cairo_line_to (cr, 22.5, 4.5);
  cairo_stroke (cr);
}

static void
bf_jaw_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfJawPicture *self = BF_JAW_PICTURE (widget);
  GdkRGBA ink = bf_theme_words_colour (widget);
  cairo_t *cr =
      gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, WIDTH_PX, HEIGHT_PX));

  gdk_cairo_set_source_rgba (cr, &ink);
  draw_metal (cr);
  if (self->kind == BF_SIZE_OUTSIDE)
    draw_jaws (cr, 5.5, 28.5);
  else if (self->kind == BF_SIZE_INSIDE)
    draw_jaws (cr, 10.5, 23.5);
  else
    draw_held (cr);
  cairo_destroy (cr);
}

static void
bf_jaw_picture_class_init (BfJawPictureClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->snapshot = bf_jaw_picture_snapshot;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
bf_jaw_picture_init (BfJawPicture *self)
{
  gtk_widget_set_size_request (GTK_WIDGET (self), WIDTH_PX, HEIGHT_PX);
}

GtkWidget *
bf_jaw_picture_new (BfSizeKind kind)
{
  BfJawPicture *self = g_object_new (BF_TYPE_JAW_PICTURE, NULL);
  self->kind = kind;
  return GTK_WIDGET (self);
}

const char *
bf_size_kind_name (BfSizeKind kind)
{
  switch (kind)
    {
    case BF_SIZE_INSIDE:
      return _ ("inside");
    case BF_SIZE_MUST_HOLD:
      return _ ("must hold");
    case BF_SIZE_OUTSIDE:
    default:
      return _ ("outside");
    }
}
