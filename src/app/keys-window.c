/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/keys-window.h"

#include <glib/gi18n.h>

#include "app/escape.h"
#include "app/keys.h"

#define HEIGHT_PX 620

/* "Ctrl+Z or Ctrl+Y". Returns: (transfer full). */
static char *
describe_keys (const BfKey *key)
{
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (key->accels) && key->accels[i] != NULL; i++)
    {
      guint value;
      GdkModifierType state;
      gtk_accelerator_parse (key->accels[i], &value, &state);
      g_autofree char *label = gtk_accelerator_get_label (value, state);
      if (i > 0)
        g_string_append (words, "   ");
      g_string_append (words, label);
    }
  return g_string_free (words, FALSE);
}

static void
add_key (GtkGrid *grid, int row, const BfKey *key)
{
  g_autofree char *words = describe_keys (key);
  GtkWidget *keys_label = gtk_label_new (words);
  GtkWidget *what_label = gtk_label_new (bf_key_words (key));

  gtk_label_set_xalign (GTK_LABEL (keys_label), 0.0F);
  gtk_label_set_xalign (GTK_LABEL (what_label), 0.0F);
  gtk_label_set_wrap (GTK_LABEL (what_label), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (what_label), 26);
  gtk_label_set_max_width_chars (GTK_LABEL (what_label), 34);
  gtk_widget_add_css_class (keys_label, "keys");
  gtk_grid_attach (grid, keys_label, 0, row, 1, 1);
  gtk_grid_attach (grid, what_label, 1, row, 1, 1);
}

static GtkWidget *
group_new (BfKeyGroup group)
{
  GtkWidget *grid = gtk_grid_new ();
  GtkWidget *title = gtk_label_new (bf_key_group_words (group));
  guint n;
  const BfKey *keys = bf_keys (&n);

  gtk_label_set_xalign (GTK_LABEL (title), 0.0F);
  gtk_widget_add_css_class (title, "message-title");
  gtk_grid_set_row_spacing (GTK_GRID (grid), 7);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 18);
  gtk_grid_attach (GTK_GRID (grid), title, 0, 0, 2, 1);
  for (guint i = 0; i < n; i++)
    if (keys[i].group == group)
      add_key (GTK_GRID (grid), (int)i + 1, &keys[i]);
  return grid;
}

/* The long group beside the short ones. */
static GtkWidget *
columns_new (void)
{
  GtkWidget *columns = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 40);
  GtkWidget *right = gtk_box_new (GTK_ORIENTATION_VERTICAL, 22);

  gtk_widget_add_css_class (columns, "keys-list");
  gtk_box_append (GTK_BOX (columns), group_new (BF_KEYS_EVERYWHERE));
  for (BfKeyGroup group = BF_KEYS_BEGIN; group < BF_N_KEY_GROUPS; group++)
    gtk_box_append (GTK_BOX (right), group_new (group));
  gtk_box_append (GTK_BOX (columns), right);
  return columns;
}

void
bf_keys_window_show (GtkWindow *parent)
{
  GtkWidget *window =
      g_object_new (GTK_TYPE_WINDOW, "title", _ ("Keys"), "transient-for", parent, "modal", TRUE,
                    "destroy-with-parent", TRUE, "default-height", HEIGHT_PX, NULL);
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_AUTOMATIC,
                                  GTK_POLICY_AUTOMATIC);
  /* As wide as the words of the language are. */
  gtk_scrolled_window_set_propagate_natural_width (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), columns_new ());
  gtk_window_set_child (GTK_WINDOW (window), scrolled);
  bf_close_at_escape (GTK_WINDOW (window));
  gtk_window_present (GTK_WINDOW (window));
}
