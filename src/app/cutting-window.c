/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "app/bending-window.h"
#include "app/length-row.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "core/defaults.h"
#include "core/drills.h"
#include "core/edit.h"
#include "core/own-drills.h"
#include "core/units.h"

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  GtkEntry *name, *sizes;
  GtkLabel *words;
  GtkWidget *keep;
} CuttingWindow;

static const BfPart *
part_of (CuttingWindow *self)
{
  return bf_document_get_part (self->document);
}

static void
kerf_given (double kerf_mm, gpointer user_data)
{
  CuttingWindow *self = user_data;

  bf_setup_edit (self->document, bf_edit_kerf (part_of (self), kerf_mm), _ ("Kerf"), NULL);
}

static void
slack_given (double slack_mm, gpointer user_data)
{
  CuttingWindow *self = user_data;

  bf_setup_edit (self->document, bf_edit_slack (part_of (self), slack_mm), _ ("Slack"), NULL);
}

/* What was understood of the box, or what is wrong with it. */
static void
sizes_cb (CuttingWindow *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->sizes));
  const char *name = gtk_editable_get_text (GTK_EDITABLE (self->name));
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) sizes = bf_drills_parse (text, part_of (self)->units, &error);
  g_autofree char *words = NULL;

  gtk_widget_set_sensitive (self->keep, sizes != NULL && name[0] != '\0');
  if (sizes != NULL)
    {
      g_autofree char *least = bf_format_decimal (g_array_index (sizes, double, 0), 3);
      g_autofree char *most = bf_format_decimal (g_array_index (sizes, double, sizes->len - 1), 3);

      /* Translators: how many drills, the thinnest and the thickest in mm. */
      words = g_strdup_printf (
          ngettext ("%u drill, from %s to %s mm", "%u drills, from %s to %s mm", sizes->len),
          sizes->len, least, most);
    }
  gtk_label_set_label (self->words, words != NULL ? words : error->message);
}

static void
keep_cb (CuttingWindow *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->sizes));
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) sizes = bf_drills_parse (text, part_of (self)->units, &error);

  if (sizes == NULL ||
      !bf_own_drills_keep (NULL, gtk_editable_get_text (GTK_EDITABLE (self->name)), sizes, &error))
    {
      gtk_label_set_label (self->words, error->message);
      return;
    }
  bf_setup_edit (self->document, bf_edit_drills (part_of (self), BF_DRILLS_LIST, sizes),
                 _ ("Drills"), NULL);
  gtk_window_destroy (self->frame->window);
}

static void
cutting_window_free (gpointer data)
{
  CuttingWindow *self = data;

  g_object_unref (self->document);
  g_free (self);
}

static void
add_rows (CuttingWindow *self)
{
  const BfPart *part = part_of (self);
  g_autofree char *kerf = bf_format_number (bf_default_kerf_mm (part->cutting.by), part->units);
  g_autofree char *slack = bf_format_number (bf_default_slack_mm (part->cutting.by), part->units);

  bf_small_window_add (
      self->frame, _ ("Kerf: how wide the cut is"),
      bf_length_row_new (part->cutting.kerf_mm, part->units, kerf, kerf_given, self));
  bf_small_window_add (
      self->frame, _ ("Slack: how far off a drilled hole may be"),
      bf_length_row_new (part->cutting.slack_mm, part->units, slack, slack_given, self));
  self->name = GTK_ENTRY (gtk_entry_new ());
  self->sizes = GTK_ENTRY (gtk_entry_new ());
  gtk_entry_set_placeholder_text (self->sizes, "1..10 + 0.5; 12; A..Z");
  bf_small_window_add (self->frame, _ ("A box of drills of your own"), GTK_WIDGET (self->name));
  gtk_entry_set_placeholder_text (self->name, _ ("its name"));
  bf_small_window_add (self->frame, _ ("Its drills, or the steps of a step drill"),
                       GTK_WIDGET (self->sizes));
  self->words = bf_small_window_add_words (self->frame, "");
}

void
bf_cutting_window_open (GtkWidget *anchor, BfDocument *document)
{
  CuttingWindow *self;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && bf_document_get_part (document) != NULL);

  self = g_new0 (CuttingWindow, 1);
  self->document = g_object_ref (document);
  self->frame = bf_small_window_new (anchor, _ ("Cutting, in detail"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "cutting", self, cutting_window_free);
  add_rows (self);
  self->keep = bf_small_window_add_button (self->frame, _ ("_Keep the box and use it"), FALSE);
  gtk_widget_set_sensitive (self->keep, FALSE);
  g_signal_connect_swapped (self->sizes, "changed", G_CALLBACK (sizes_cb), self);
  g_signal_connect_swapped (self->name, "changed", G_CALLBACK (sizes_cb), self);
  g_signal_connect_swapped (self->keep, "clicked", G_CALLBACK (keep_cb), self);
  bf_small_window_present (self->frame, _ ("_Close"));
}
