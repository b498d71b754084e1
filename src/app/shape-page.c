/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/shape-page.h"

#include "app/checks-line.h"
#include "app/children.h"
#include "app/setup-bar.h"
#include "app/setup-edit.h"
#include "app/surface.h"

struct _BfShapePage
{
  GtkWidget parent_instance;
  BfSurfaceView *view;

  BfSetupBar *setup_bar;
  GtkLabel *told_label;
  BfSurface *surface;
  BfChecksLine *checks_line;
  GtkAdjustment *fold_adjustment;
};

G_DEFINE_FINAL_TYPE (BfShapePage, bf_shape_page, GTK_TYPE_WIDGET)

static void
fold_changed_cb (BfShapePage *self)
{
  bf_surface_view_set_fraction (self->view, gtk_adjustment_get_value (self->fold_adjustment));
}

static void
place_cb (BfShapePage *self, const BfVec2 *place)
{
  gtk_widget_grab_focus (GTK_WIDGET (self->surface));
  bf_surface_show_place (self->surface, *place);
}

static void
bf_shape_page_dispose (GObject *object)
{
  BfShapePage *self = BF_SHAPE_PAGE (object);

  g_clear_object (&self->view);
  bf_widget_drop_children (GTK_WIDGET (self));
  G_OBJECT_CLASS (bf_shape_page_parent_class)->dispose (object);
}

static void
bf_shape_page_class_init (BfShapePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_shape_page_dispose;
  g_type_ensure (BF_TYPE_SETUP_BAR);
  g_type_ensure (BF_TYPE_SURFACE);
  g_type_ensure (BF_TYPE_CHECKS_LINE);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/shape-page.ui");
  gtk_widget_class_bind_template_child (widget_class, BfShapePage, setup_bar);
  gtk_widget_class_bind_template_child (widget_class, BfShapePage, told_label);
  gtk_widget_class_bind_template_child (widget_class, BfShapePage, surface);
  gtk_widget_class_bind_template_child (widget_class, BfShapePage, checks_line);
  gtk_widget_class_bind_template_child (widget_class, BfShapePage, fold_adjustment);
}

static void
bf_shape_page_init (BfShapePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
bf_shape_page_take_focus (BfShapePage *self)
{
  g_return_if_fail (BF_IS_SHAPE_PAGE (self));
  gtk_widget_grab_focus (GTK_WIDGET (self->surface));
}

void
bf_shape_page_open_checks (BfShapePage *self)
{
  g_return_if_fail (BF_IS_SHAPE_PAGE (self));
  bf_checks_line_open (self->checks_line);
}

void
bf_shape_page_set_document (BfShapePage *self, BfDocument *document, BfSurfaceView *view)
{
  g_return_if_fail (BF_IS_SHAPE_PAGE (self) && self->view == NULL);

  self->view = g_object_ref (view);
  bf_setup_bar_set_document (self->setup_bar, document);
  bf_setup_tell_changes (self->told_label, document);
  bf_surface_set_document (self->surface, document, view);
  bf_checks_line_set_document (self->checks_line, document);
  g_signal_connect_object (self->checks_line, "place", G_CALLBACK (place_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->fold_adjustment, "value-changed", G_CALLBACK (fold_changed_cb),
                           self, G_CONNECT_SWAPPED);
}
