/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/length-row.h"

#include <glib/gi18n.h>

#include "core/compare.h"
#include "core/length-entry.h"
#include "core/tolerance.h"
#include "core/units.h"

/* By how much an arrow key steps: finely what is of the order of the metal. */
#define FINE_BELOW_MM 5.0
#define FINE_MM 0.1
#define COARSE_MM 1.0
#define FINE_BELOW_IN 0.2
#define FINE_IN 0.005
#define COARSE_IN 0.0625

typedef struct
{
  BfLengthGiven given;
  gpointer user_data;
  BfUnits units;
  double shown_mm; /* what was last handed over */
  double usual_mm; /* of one that can be stepped: where it begins */
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

/* The next whole step up or down, and never down to nothing. */
static double
stepped (double shown, int by, gboolean inches)
{
  double below = inches ? FINE_BELOW_IN : FINE_BELOW_MM;
  double fine = inches ? FINE_IN : FINE_MM, coarse = inches ? COARSE_IN : COARSE_MM;
  double step = shown < below || (by < 0 && shown <= below) ? fine : coarse;

  return MAX ((round (shown / step) + by) * step, step);
}

static gboolean
key_cb (GtkEventControllerKey *keys, guint key, guint code, GdkModifierType state, GtkEntry *entry)
{
  LengthRow *row = g_object_get_data (G_OBJECT (entry), "length-row");
  gboolean inches = row->units == BF_UNITS_IN;
  int by = key == GDK_KEY_Up || key == GDK_KEY_KP_Up       ? 1
           : key == GDK_KEY_Down || key == GDK_KEY_KP_Down ? -1
                                                           : 0;
  double length_mm, shown;
  g_autofree char *words = NULL;
  (void)keys;
  (void)code;
  (void)state;

  if (by == 0 || !bf_length_entry_read (entry, row->units, &length_mm))
    return FALSE;
  shown = (isnan (length_mm) ? row->usual_mm : length_mm) / (inches ? BF_MM_PER_INCH : 1.0);
  if (isnan (shown))
    return FALSE;
  words = bf_format_decimal (stepped (shown, by, inches), inches ? 4 : 2);
  gtk_editable_set_text (GTK_EDITABLE (entry), words);
  gtk_editable_set_position (GTK_EDITABLE (entry), -1);
  return TRUE;
}

void
bf_length_row_make_live (GtkWidget *row, double usual_mm)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  LengthRow *made;

  g_return_if_fail (GTK_IS_ENTRY (row));

  made = g_object_get_data (G_OBJECT (row), "length-row");
  made->usual_mm = usual_mm;
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect (keys, "key-pressed", G_CALLBACK (key_cb), row);
  gtk_widget_add_controller (row, keys);
  g_signal_connect (row, "changed", G_CALLBACK (take), NULL);
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

  *row = (LengthRow){ given, user_data, units, length_mm, NAN };
  g_object_set_data_full (G_OBJECT (entry), "length-row", row, g_free);
  gtk_entry_set_placeholder_text (GTK_ENTRY (entry), placeholder);
  gtk_editable_set_text (GTK_EDITABLE (entry), words);
  g_signal_connect (entry, "activate", G_CALLBACK (take), NULL);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (leave_cb), entry);
  gtk_widget_add_controller (entry, focus);
  return entry;
}
