/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-handle.h"

struct _BfEdgeHandle
{
  GtkWidget parent_instance;
  BfSelection selection;
  char *name;
};

G_DEFINE_FINAL_TYPE (BfEdgeHandle, bf_edge_handle, GTK_TYPE_WIDGET)

static void
bf_edge_handle_finalize (GObject *object)
{
  g_free (BF_EDGE_HANDLE (object)->name);
  G_OBJECT_CLASS (bf_edge_handle_parent_class)->finalize (object);
}

static void
bf_edge_handle_class_init (BfEdgeHandleClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = bf_edge_handle_finalize;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_BUTTON);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "edgehandle");
}

static void
bf_edge_handle_init (BfEdgeHandle *self)
{
  self->selection = BF_SELECTION_NONE;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
}

GtkWidget *
bf_edge_handle_new (void)
{
  return g_object_new (BF_TYPE_EDGE_HANDLE, NULL);
}

void
bf_edge_handle_show (BfEdgeHandle *self, BfSelection selection, const char *name)
{
  g_return_if_fail (BF_IS_EDGE_HANDLE (self) && name != NULL);

  self->selection = selection;
  if (g_strcmp0 (self->name, name) == 0)
    return;
  g_free (self->name);
  self->name = g_strdup (name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

BfSelection
bf_edge_handle_get_selection (BfEdgeHandle *self)
{
  g_return_val_if_fail (BF_IS_EDGE_HANDLE (self), BF_SELECTION_NONE);
  return self->selection;
}
