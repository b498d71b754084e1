/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/surface.h"

#include <glib/gi18n.h>

#include "app/theme-colours.h"

struct _BfSurface
{
  GtkWidget parent_instance;
  BfDocument *document;
  BfSurfaceView *view;
  BfSurfaceScene *scene;
};

G_DEFINE_FINAL_TYPE (BfSurface, bf_surface, GTK_TYPE_WIDGET)

static void
bf_surface_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  BfSurface *self = BF_SURFACE (widget);
  float width = (float)gtk_widget_get_width (widget);
  float height = (float)gtk_widget_get_height (widget);
  gboolean dark = bf_theme_is_dark (widget);

  if (self->scene == NULL)
    return;
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  bf_surface_scene_paint_blank (self->scene, cr, dark);
  bf_surface_scene_paint_formed (self->scene, cr, dark);
  cairo_destroy (cr);
}

static void
bf_surface_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  (void)baseline;
  BfSurface *self = BF_SURFACE (widget);

  if (self->view != NULL)
    bf_surface_view_set_size (self->view, width, height);
}

static void
bf_surface_measure (GtkWidget *widget,
                    GtkOrientation orientation,
                    int for_size,
                    int *minimum,
                    int *natural,
                    int *minimum_baseline,
                    int *natural_baseline)
{
  (void)widget;
  (void)for_size;
  *minimum = orientation == GTK_ORIENTATION_HORIZONTAL ? 360 : 240;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 900 : 560;
  *minimum_baseline = -1;
  *natural_baseline = -1;
}

static void
bf_surface_dispose (GObject *object)
{
  BfSurface *self = BF_SURFACE (object);

  g_clear_pointer (&self->scene, bf_surface_scene_free);
  g_clear_object (&self->view);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (bf_surface_parent_class)->dispose (object);
}

static void
bf_surface_class_init (BfSurfaceClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_surface_dispose;
  widget_class->snapshot = bf_surface_snapshot;
  widget_class->size_allocate = bf_surface_size_allocate;
  widget_class->measure = bf_surface_measure;
  gtk_widget_class_set_css_name (widget_class, "benchtop");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
bf_surface_init (BfSurface *self)
{
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Blank and formed part"), -1);
  bf_surface_add_gestures (self);
}

static void
view_changed_cb (BfSurface *self)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
document_changed_cb (BfSurface *self)
{
  bf_surface_scene_set_fold (self->scene, bf_document_get_fold (self->document));
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
bf_surface_set_document (BfSurface *self, BfDocument *document, BfSurfaceView *view)
{
  g_return_if_fail (BF_IS_SURFACE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  self->view = g_object_ref (view);
  self->scene = bf_surface_scene_new (view);
  g_signal_connect_object (view, "changed", G_CALLBACK (view_changed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_changed_cb), self,
                           G_CONNECT_SWAPPED);
  document_changed_cb (self);
}

BfSurfaceScene *
bf_surface_get_scene (BfSurface *self)
{
  g_return_val_if_fail (BF_IS_SURFACE (self), NULL);
  return self->scene;
}

BfSurfaceView *
bf_surface_get_view (BfSurface *self)
{
  g_return_val_if_fail (BF_IS_SURFACE (self), NULL);
  return self->view;
}
