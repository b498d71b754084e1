/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/check-row.h"

#include <glib/gi18n.h>

static const char *
severity_words (BfSeverity severity)
{
  switch (severity)
    {
    case BF_SEVERITY_MUST_FIX:
      return _ ("Must fix");
    case BF_SEVERITY_LOOK_AT:
      return _ ("Look at");
    case BF_SEVERITY_GOOD_TO_KNOW:
    default:
      return _ ("Good to know");
    }
}

static GtkWidget *
words_new (const BfCheck *check)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkWidget *severity = gtk_label_new (severity_words (check->severity));
  GtkWidget *sentence = gtk_label_new (check->message);

  gtk_label_set_xalign (GTK_LABEL (severity), 0.0F);
  gtk_widget_add_css_class (severity, "severity");
  if (check->severity == BF_SEVERITY_MUST_FIX)
    gtk_widget_add_css_class (severity, "must-fix");
  gtk_label_set_wrap (GTK_LABEL (sentence), TRUE);
  gtk_label_set_xalign (GTK_LABEL (sentence), 0.0F);
  gtk_box_append (GTK_BOX (box), severity);
  gtk_box_append (GTK_BOX (box), sentence);
  gtk_widget_set_hexpand (box, TRUE);
  return box;
}

static GtkWidget *
fix_button_new (const char *words)
{
  GtkWidget *button = gtk_button_new_with_label (words);
  GtkWidget *label = gtk_button_get_child (GTK_BUTTON (button));

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 22);
  gtk_label_set_justify (GTK_LABEL (label), GTK_JUSTIFY_CENTER);
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  return button;
}

GtkWidget *
bf_check_row_new (const BfCheck *check, const char *fix_words, GCallback fix_cb, gpointer user_data)
{
  g_return_val_if_fail (check != NULL, NULL);

  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  g_autofree char *name =
      g_strdup_printf ("%s: %s", severity_words (check->severity), check->message);

  gtk_box_append (GTK_BOX (box), words_new (check));
  if (fix_words != NULL)
    {
      GtkWidget *button = fix_button_new (fix_words);
      g_signal_connect (button, "clicked", fix_cb, user_data);
      gtk_box_append (GTK_BOX (box), button);
    }
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  return row;
}
