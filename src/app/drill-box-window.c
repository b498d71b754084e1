/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/drill-box-window.h"

#include <glib/gi18n.h>

#include "app/setup-drills.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "core/drills.h"
#include "core/edit.h"
#include "core/own-drills.h"

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  char *id;    /* of the box that is changed; NULL for a new one */
  GArray *was; /* its drills before, or NULL */
  GtkEntry *name, *sizes;
  GtkLabel *words;
  GtkWidget *keep;
} DrillBoxWindow;

static const BfPart *
part_of (DrillBoxWindow *self)
{
  return bf_document_get_part (self->document);
}

static GArray *
read_sizes (DrillBoxWindow *self, GError **error)
{
  return bf_drills_parse (gtk_editable_get_text (GTK_EDITABLE (self->sizes)), part_of (self)->units,
                          error);
}

/* What was understood of the box, or what is wrong with it. */
static void
changed_cb (DrillBoxWindow *self)
{
  const char *name = gtk_editable_get_text (GTK_EDITABLE (self->name));
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) sizes = read_sizes (self, &error);
  g_autofree char *words = sizes != NULL ? bf_setup_drills_words (sizes) : NULL;

  gtk_widget_set_sensitive (self->keep, sizes != NULL && name[0] != '\0');
  gtk_label_set_label (self->words, words != NULL ? words : error->message);
}

/* A part has the sizes, not the box: where they were the box's, they become the new ones. */
static void
use (DrillBoxWindow *self, const GArray *sizes)
{
  const GArray *had = part_of (self)->cutting.drill_list_mm;

  if (self->id == NULL || (self->was != NULL && had != NULL && bf_drills_equal (self->was, had)))
    bf_setup_edit (self->document, bf_edit_drills (part_of (self), BF_DRILLS_LIST, sizes),
                   _ ("Drills"), NULL);
}

static void
keep_cb (DrillBoxWindow *self)
{
  const char *name = gtk_editable_get_text (GTK_EDITABLE (self->name));
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) sizes = read_sizes (self, &error);

  if (sizes == NULL || !bf_own_drills_keep (self->id, name, sizes, &error))
    {
      gtk_label_set_label (self->words, error->message);
      return;
    }
  use (self, sizes);
  gtk_window_destroy (self->frame->window);
}

static void
drill_box_window_free (gpointer data)
{
  DrillBoxWindow *self = data;

  g_clear_pointer (&self->was, g_array_unref);
  g_free (self->id);
  g_object_unref (self->document);
  g_free (self);
}

static void
add_rows (DrillBoxWindow *self)
{
  self->name = GTK_ENTRY (gtk_entry_new ());
  self->sizes = GTK_ENTRY (gtk_entry_new ());
  gtk_entry_set_activates_default (self->name, TRUE);
  gtk_entry_set_activates_default (self->sizes, TRUE);
  gtk_entry_set_placeholder_text (self->sizes, "1..10 + 0.5; 12; A..Z");
  bf_small_window_add (self->frame, _ ("Name"), GTK_WIDGET (self->name));
  bf_small_window_add (self->frame, _ ("Its drills, or the steps of a step drill"),
                       GTK_WIDGET (self->sizes));
  self->words = bf_small_window_add_words (self->frame, "");
}

static void
fill_in (DrillBoxWindow *self, const char *id)
{
  const BfDrillBox *box = id != NULL ? bf_own_drills_find (id) : NULL;
  g_autofree char *sizes = NULL;

  if (box == NULL)
    return;
  self->id = g_strdup (box->id);
  self->was = g_array_ref (box->sizes_mm);
  sizes = bf_drills_to_text (box->sizes_mm, part_of (self)->units);
  gtk_editable_set_text (GTK_EDITABLE (self->name), box->name);
  gtk_editable_set_text (GTK_EDITABLE (self->sizes), sizes);
}

GtkWindow *
bf_drill_box_window_open (GtkWidget *anchor, BfDocument *document, const char *id)
{
  DrillBoxWindow *self;

  g_return_val_if_fail (GTK_IS_WIDGET (anchor) && bf_document_get_part (document) != NULL, NULL);

  self = g_new0 (DrillBoxWindow, 1);
  self->document = g_object_ref (document);
  self->frame = bf_small_window_new (anchor, _ ("A box of drills of your own"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "drill-box", self, drill_box_window_free);
  self->keep = bf_small_window_add_button (self->frame,
                                           id == NULL ? _ ("_Keep and use") : _ ("_Keep"), TRUE);
  add_rows (self);
  fill_in (self, id);
  g_signal_connect_swapped (self->sizes, "changed", G_CALLBACK (changed_cb), self);
  g_signal_connect_swapped (self->name, "changed", G_CALLBACK (changed_cb), self);
  g_signal_connect_swapped (self->keep, "clicked", G_CALLBACK (keep_cb), self);
  changed_cb (self);
  bf_small_window_present (self->frame, _ ("_Cancel"));
  gtk_widget_grab_focus (GTK_WIDGET (self->name));
  return self->frame->window;
}
