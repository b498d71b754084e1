/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/children.h"

void
bf_widget_drop_children (GtkWidget *widget)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (widget)) != NULL)
    gtk_widget_unparent (child);
}

void
bf_widget_natural_size (GtkWidget *widget, int *width, int *height)
{
  gtk_widget_measure (widget, GTK_ORIENTATION_HORIZONTAL, -1, NULL, width, NULL, NULL);
  gtk_widget_measure (widget, GTK_ORIENTATION_VERTICAL, *width, NULL, height, NULL, NULL);
}
