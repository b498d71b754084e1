/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "app/bending-window.h"
#include "app/length-row.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "core/units.h"

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
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

  bf_setup_edit (self->document, bf_edit_kerf (part_of (self), kerf_mm), _ ("Kerf"), "kerf");
}

static void
slack_given (double slack_mm, gpointer user_data)
{
  CuttingWindow *self = user_data;

  bf_setup_edit (self->document, bf_edit_slack (part_of (self), slack_mm), _ ("Slack"), "slack");
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
  g_autofree char *kerf =
      bf_format_thin_number (bf_default_kerf_mm (part->cutting.by), part->units);
  g_autofree char *slack =
      bf_format_thin_number (bf_default_slack_mm (part->cutting.by), part->units);

  bf_small_window_add (
      self->frame, _ ("Kerf: how wide the cut is"),
      bf_length_row_new (part->cutting.kerf_mm, part->units, kerf, kerf_given, self));
  bf_small_window_add (
      self->frame, _ ("Slack: how far off a drilled hole may be"),
      bf_length_row_new (part->cutting.slack_mm, part->units, slack, slack_given, self));
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
  bf_small_window_present (self->frame, _ ("_Close"));
}
