/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/small-window.h"

#include "app/button-names.h"

#define MARGIN 18
#define SPACING 8
#define WORDS_CHARS 52

static void
set_margins (GtkWidget *widget)
{
  gtk_widget_set_margin_top (widget, MARGIN);
  gtk_widget_set_margin_bottom (widget, MARGIN);
  gtk_widget_set_margin_start (widget, MARGIN);
  gtk_widget_set_margin_end (widget, MARGIN);
}

static void
add_escape (GtkWidget *window)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys), gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Escape, 0),
                                                        gtk_named_action_new ("window.close")));
  gtk_widget_add_controller (window, keys);
}

BfSmallWindow *
bf_small_window_new (GtkWidget *anchor, const char *title)
{
  BfSmallWindow *self = g_new0 (BfSmallWindow, 1);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, MARGIN);
  GtkRoot *root = gtk_widget_get_root (anchor);

  self->window = GTK_WINDOW (gtk_window_new ());
  self->grid = GTK_GRID (gtk_grid_new ());
  self->buttons = GTK_BOX (gtk_box_new (GTK_ORIENTATION_HORIZONTAL, SPACING));
  gtk_window_set_title (self->window, title);
  gtk_window_set_modal (self->window, TRUE);
  gtk_window_set_resizable (self->window, FALSE);
  gtk_window_set_destroy_with_parent (self->window, TRUE);
  if (GTK_IS_WINDOW (root))
    gtk_window_set_transient_for (self->window, GTK_WINDOW (root));
  gtk_grid_set_row_spacing (self->grid, SPACING);
  gtk_grid_set_column_spacing (self->grid, MARGIN);
  gtk_widget_set_halign (GTK_WIDGET (self->buttons), GTK_ALIGN_END);
  set_margins (box);
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->grid));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->buttons));
  gtk_window_set_child (self->window, box);
  add_escape (GTK_WIDGET (self->window));
  g_object_set_data_full (G_OBJECT (self->window), "small-window", self, g_free);
  return self;
}

void
bf_small_window_add (BfSmallWindow *self, const char *label, GtkWidget *field)
{
  GtkWidget *name = gtk_label_new (label);

  gtk_label_set_xalign (GTK_LABEL (name), 0.0F);
  gtk_widget_set_hexpand (field, TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (field), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  gtk_grid_attach (self->grid, name, 0, self->n_rows, 1, 1);
  gtk_grid_attach (self->grid, field, 1, self->n_rows, 1, 1);
  self->n_rows++;
}

GtkLabel *
bf_small_window_add_words (BfSmallWindow *self, const char *words)
{
  /* As wide at least as at most: the window is as high as its words are at their narrowest. */
  GtkWidget *label = g_object_new (GTK_TYPE_LABEL, "accessible-role", GTK_ACCESSIBLE_ROLE_STATUS,
                                   "label", words, "xalign", 0.0, "wrap", TRUE, "width-chars",
                                   WORDS_CHARS, "max-width-chars", WORDS_CHARS, NULL);

  gtk_widget_add_css_class (label, "quiet");
  bf_small_window_add_wide (self, label);
  return GTK_LABEL (label);
}

void
bf_small_window_add_wide (BfSmallWindow *self, GtkWidget *widget)
{
  gtk_grid_attach (self->grid, widget, 0, self->n_rows++, 2, 1);
}

GtkWidget *
bf_small_window_add_button (BfSmallWindow *self, const char *label, gboolean suggested)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);

  gtk_box_append (self->buttons, button);
  if (suggested)
    {
      gtk_widget_add_css_class (button, "suggested-action");
      gtk_window_set_default_widget (self->window, button);
    }
  return button;
}

void
bf_small_window_present (BfSmallWindow *self, const char *close_label)
{
  GtkWidget *close = gtk_button_new_with_mnemonic (close_label);

  gtk_actionable_set_action_name (GTK_ACTIONABLE (close), "window.close");
  gtk_box_prepend (self->buttons, close);
  bf_name_buttons (GTK_WIDGET (self->window));
  gtk_window_present (self->window);
}
