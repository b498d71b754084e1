/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/button-names.h"

/* The label without its mnemonic's mark; two marks stand for one. Returns: (transfer full). */
static char *
strip_mark (const char *label)
{
  GString *plain = g_string_new (NULL);

  for (const char *c = label; *c != '\0'; c++)
    if (*c != '_' || *++c != '\0')
      g_string_append_c (plain, *c);
    else
      break;
  return g_string_free (plain, FALSE);
}

/* label: NULL of a button that has something else within. */
static void
name_by (GtkWidget *button, const char *label, gboolean has_mark)
{
  g_autofree char *plain = NULL;

  if (label == NULL)
    return;
  plain = has_mark ? strip_mark (label) : g_strdup (label);
  gtk_accessible_reset_relation (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_RELATION_LABELLED_BY);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, plain,
                                  -1);
}

void
bf_name_buttons (GtkWidget *widget)
{
  g_return_if_fail (GTK_IS_WIDGET (widget));

  if (GTK_IS_BUTTON (widget))
    name_by (widget, gtk_button_get_label (GTK_BUTTON (widget)),
             gtk_button_get_use_underline (GTK_BUTTON (widget)));
  if (GTK_IS_CHECK_BUTTON (widget))
    name_by (widget, gtk_check_button_get_label (GTK_CHECK_BUTTON (widget)),
             gtk_check_button_get_use_underline (GTK_CHECK_BUTTON (widget)));
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    bf_name_buttons (child);
}
