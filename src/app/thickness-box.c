/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/thickness-box.h"

#include <glib/gi18n.h>

#include "app/size-field.h"
#include "core/gauges.h"
#include "core/length-entry.h"

static const char *
material_of (const BfPart *part)
{
  return part->metal.material != NULL ? part->metal.material : "mild-steel";
}

char *
bf_thickness_gauges (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, NULL);

  g_autoptr (GString) words = g_string_new (NULL);
  int first, last, nearest;

  if (!bf_gauge_range (material_of (part), &first, &last) ||
      !bf_gauge_nearest (material_of (part), part->metal.thickness_mm, &nearest))
    return NULL;
  for (int gauge = MAX (nearest - 1, first); gauge <= MIN (nearest + 1, last); gauge++)
    {
      g_autofree char *length =
          bf_length_understood (bf_gauge_mm (material_of (part), gauge), part->units);
      if (words->len > 0)
        g_string_append_c (words, '\n');
      /* Translators: a gauge number and the thickness that it stands for: "16 ga = 1.519 mm" */
      g_string_append_printf (words, _ ("%d ga %s"), gauge, length);
    }
  g_string_append_printf (words, "\n%s", bf_gauge_name (material_of (part)));
  return g_string_free (g_steal_pointer (&words), FALSE);
}

static void
close_menu (GtkWidget *field)
{
  GtkWidget *popover = gtk_widget_get_ancestor (field, GTK_TYPE_POPOVER_MENU);
  if (popover != NULL)
    gtk_popover_popdown (GTK_POPOVER (popover));
}

static void
size_set_cb (GtkWidget *field, double size_mm, gboolean stepped)
{
  (void)stepped;
  gtk_widget_activate_action (field, "setup.thickness", "d", size_mm);
}

/* Words that are no thickness keep the menu open, with what is wrong below them. */
static void
activate_cb (BfSizeField *field)
{
  if (bf_size_field_commit (field))
    close_menu (GTK_WIDGET (field));
}

GtkWidget *
bf_thickness_box_new (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, NULL);

  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *field = bf_size_field_new (BF_SIZE_FIELD_THICKNESS, _ ("Thickness"));
  g_autofree char *gauges = bf_thickness_gauges (part);

  bf_size_field_show (BF_SIZE_FIELD (field), part->metal.thickness_mm, part->units,
                      material_of (part));
  g_signal_connect (field, "size-set", G_CALLBACK (size_set_cb), NULL);
  g_signal_connect_after (field, "activate", G_CALLBACK (activate_cb), NULL);
  gtk_box_append (GTK_BOX (row), gtk_label_new (_ ("Thickness")));
  gtk_widget_set_hexpand (field, TRUE);
  gtk_box_append (GTK_BOX (row), field);
  gtk_box_append (GTK_BOX (box), row);
  if (gauges != NULL)
    {
      GtkWidget *label = gtk_label_new (gauges);
      gtk_widget_add_css_class (label, "quiet");
      gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
      gtk_box_append (GTK_BOX (box), label);
    }
  gtk_widget_add_css_class (box, "thickness");
  return box;
}
