/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/length-row.h"

#include <glib/gi18n.h>

#include "core/compare.h"
#include "core/length-entry.h"
#include "core/tolerance.h"
#include "core/units.h"

typedef struct
{
  BfLengthGiven given;
  gpointer user_data;
  BfUnits units;
  double shown_mm; /* what was last handed over */
} LengthRow;

gboolean
bf_length_entry_read (GtkEntry *entry, BfUnits units, double *length_mm)
{
  g_autofree char *words = g_strdup (gtk_editable_get_text (GTK_EDITABLE (entry)));
  BfLengthContext context = { units, NULL };
  g_autoptr (GError) error = NULL;
  gboolean fine = TRUE;

  *length_mm = NAN;
  if (*g_strstrip (words) != '\0')
    fine = bf_length_parse (words, &context, length_mm, &error);
  if (fine && *length_mm < 0.0)
    {
      fine = FALSE;
      *length_mm = NAN;
    }
  if (fine)
    gtk_widget_remove_css_class (GTK_WIDGET (entry), "error");
  else
    gtk_widget_add_css_class (GTK_WIDGET (entry), "error");
  gtk_widget_set_tooltip_text (GTK_WIDGET (entry), fine ? NULL
                                                   : error != NULL
                                                       ? error->message
                                                       : _ ("A length is more than nothing."));
  return fine;
}

static void
take (GtkEntry *entry)
{
  LengthRow *row = g_object_get_data (G_OBJECT (entry), "length-row");
  double length_mm;

  if (!bf_length_entry_read (entry, row->units, &length_mm) ||
      bf_is_same_size (length_mm, row->shown_mm))
    return;
  row->shown_mm = length_mm;
  row->given (length_mm, row->user_data);
}

static void
leave_cb (GtkEntry *entry)
{
  take (entry);
}

GtkWidget *
bf_length_row_new (double length_mm,
                   BfUnits units,
                   const char *placeholder,
                   BfLengthGiven given,
                   gpointer user_data)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();
  LengthRow *row = g_new0 (LengthRow, 1);
  double shown = units == BF_UNITS_IN ? length_mm / BF_MM_PER_INCH : length_mm;
  g_autofree char *words = isnan (length_mm) ? g_strdup ("") : bf_format_decimal (shown, 3);

  *row = (LengthRow){ given, user_data, units, length_mm };
  g_object_set_data_full (G_OBJECT (entry), "length-row", row, g_free);
  gtk_entry_set_placeholder_text (GTK_ENTRY (entry), placeholder);
  gtk_editable_set_text (GTK_EDITABLE (entry), words);
  g_signal_connect (entry, "activate", G_CALLBACK (take), NULL);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (leave_cb), entry);
  gtk_widget_add_controller (entry, focus);
  return entry;
}
