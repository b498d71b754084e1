/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/score-trial-window.h"

#include <glib/gi18n.h>

#include "app/length-row.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "core/units.h"
#include "make/bend-notes.h"

static void
left_given (double left_mm, gpointer user_data)
{
  BfDocument *document = user_data;

  bf_setup_edit (
      document, bf_edit_score_left (bf_document_get_part (document), left_mm > 0.0 ? left_mm : NAN),
      _ ("Score"), "score");
}

/* What bends along such a skin take. */
static void
show_score_cb (GtkLabel *label, BfDocument *document)
{
  BfFold *fold = bf_document_get_fold (document);
  g_autofree char *plan = bf_bend_plan_text (fold, fold->part->units);

  gtk_label_set_label (label, plan);
}

GtkWindow *
bf_score_trial_window_open (GtkWidget *anchor, BfDocument *document)
{
  const BfPart *part = bf_document_get_part (document);
  BfSmallWindow *frame = bf_small_window_new (anchor, _ ("Trial bend"));
  GtkLabel *plan;
  GtkWidget *row;
  g_autofree char *usual =
      bf_format_thin_number (bf_default_score_left_mm (part->metal.thickness_mm), part->units);

  bf_small_window_add_words (
      frame, _ ("A scored bend folds as the skin under its groove, so K says nothing here. Score a "
                "piece of scrap as you will score the part, measure at its edge what is left under "
                "the groove, and type that."));
  row = bf_length_row_new (part->bend.score_left_mm, part->units, usual, left_given, document);
  bf_length_row_make_live (row, bf_default_score_left_mm (part->metal.thickness_mm));
  bf_small_window_add (frame, _ ("Skin left under the groove"), row);
  plan = bf_small_window_add_words (frame, "");
  g_signal_connect_object (document, "changed", G_CALLBACK (show_score_cb), plan,
                           G_CONNECT_SWAPPED);
  show_score_cb (plan, document);
  bf_small_window_present (frame, _ ("_Close"));
  return frame->window;
}
