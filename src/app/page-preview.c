/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/page-preview.h"

#include <glib/gi18n.h>

#include "app/escape.h"
#include "app/page-picture.h"

#define PICTURE_WIDTH_PX 300
#define WIDTH_PX 760
#define HEIGHT_PX 640

static GtkWidget *
pages_new (const BfTemplate *template)
{
  GtkWidget *box = gtk_flow_box_new ();

  gtk_flow_box_set_selection_mode (GTK_FLOW_BOX (box), GTK_SELECTION_NONE);
  gtk_flow_box_set_homogeneous (GTK_FLOW_BOX (box), TRUE);
  gtk_flow_box_set_row_spacing (GTK_FLOW_BOX (box), 16);
  gtk_flow_box_set_column_spacing (GTK_FLOW_BOX (box), 16);
  gtk_widget_set_valign (box, GTK_ALIGN_START);
  gtk_widget_add_css_class (box, "keys-list");
  for (guint i = 0; i < bf_template_n_pages (template); i++)
    gtk_flow_box_append (GTK_FLOW_BOX (box), bf_page_picture_new (template, i, PICTURE_WIDTH_PX));
  gtk_accessible_update_property (GTK_ACCESSIBLE (box), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Pages of the template"), -1);
  return box;
}

GtkWindow *
bf_page_preview_show (GtkWindow *parent, const BfTemplate *template)
{
  g_return_val_if_fail (template != NULL, NULL);

  GtkWidget *window = g_object_new (GTK_TYPE_WINDOW, "title", _ ("Pages as they will come out"),
                                    "transient-for", parent, "modal", TRUE, "default-width",
                                    WIDTH_PX, "default-height", HEIGHT_PX, NULL);
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), pages_new (template));
  gtk_window_set_child (GTK_WINDOW (window), scrolled);
  bf_close_at_escape (GTK_WINDOW (window));
  gtk_window_present (GTK_WINDOW (window));
  return GTK_WINDOW (window);
}
