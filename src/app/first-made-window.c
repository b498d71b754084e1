/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/first-made-window.h"

#include <glib/gi18n.h>

#include "app/length-row.h"
#include "app/setup-changes.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "app/window.h"
#include "core/defaults.h"
#include "core/own-trials.h"
#include "core/today.h"
#include "core/units.h"
#include "make/sizes.h"

/* What is still off by less reads as nothing. */
#define LEAST_TOLD_MM 0.05

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  BfFold *fold;      /* what was made */
  GArray *sizes;     /* BfMainSize */
  GPtrArray *fields; /* GtkEntry, one a size */
  GtkEntry *radius;
  GtkLabel *cause, *change;
  GtkWidget *correct, *keep;
  BfPart *next;        /* what the next blank is of, or NULL */
  BfTrialRecord trial; /* what it is as a trial bend; no sizes: it is none */
} FirstMadeWindow;

/* The sizes that were measured, each over what it reaches. FALSE where one is no length.
 * measured: (element-type BfMadeSize). */
static gboolean
read_sizes (FirstMadeWindow *self, GArray *measured, double *radius_mm)
{
  BfUnits units = self->fold->part->units;
  gboolean fine = bf_length_entry_read (self->radius, units, radius_mm);

  for (guint i = 0; i < self->sizes->len; i++)
    {
      BfMadeSize size = bf_main_size (self->sizes, i)->made;

      fine &= bf_length_entry_read (g_ptr_array_index (self->fields, i), units, &size.measured_mm);
      if (!isnan (size.measured_mm))
        g_array_append_val (measured, size);
    }
  return fine;
}

/* What the next blank would be like, against this one. */
static char *
change_words (FirstMadeWindow *self, const BfSecondMake *second)
{
  g_autofree char *left = bf_format_length (second->left_mm, self->fold->part->units);
  g_autofree char *changes = NULL;
  g_autoptr (BfFold) fold = NULL;

  if (self->next == NULL)
    return g_strdup ("");
  fold = bf_fold (self->next);
  changes = bf_setup_changes (self->fold, fold);
  if (second->left_mm < LEAST_TOLD_MM)
    /* Translators: what would change, "K 0.42 → 0.395, blank …". */
    return g_strdup_printf (_ ("The next one: %s."), changes != NULL ? changes : "");
  /* Translators: what would change, "K 0.42 → 0.395, blank …"; and a length with its unit. */
  return g_strdup_printf (_ ("The next one: %s. Sizes like these would then be off by %s at most."),
                          changes != NULL ? changes : "", left);
}

static void
clear_trial (FirstMadeWindow *self)
{
  g_clear_pointer (&self->trial.strips, g_array_unref);
  g_clear_pointer (&self->trial.sizes, g_array_unref);
}

static void
show (FirstMadeWindow *self, const char *cause, const char *change)
{
  gtk_label_set_label (self->cause, cause);
  gtk_label_set_label (self->change, change);
  gtk_widget_set_visible (GTK_WIDGET (self->change), change[0] != '\0');
  gtk_widget_set_sensitive (self->correct, self->next != NULL);
  gtk_widget_set_visible (self->keep, self->trial.sizes != NULL);
}

static void
changed_cb (FirstMadeWindow *self)
{
  g_autoptr (GArray) measured = g_array_new (FALSE, FALSE, sizeof (BfMadeSize));
  g_autofree char *cause = NULL, *change = NULL, *today = bf_today ();
  double radius_mm = NAN;
  BfSecondMake second;

  g_clear_pointer (&self->next, bf_part_unref);
  clear_trial (self);
  if (!read_sizes (self, measured, &radius_mm) ||
      !bf_second_make (self->fold, (const BfMadeSize *)(gpointer)measured->data, measured->len,
                       radius_mm, &second))
    {
      show (self,
            _ ("Type what you measured; the more sizes, the surer. What you leave out counts for "
               "nothing."),
            "");
      return;
    }
  self->next = bf_second_make_part (self->fold, &second, today);
  (void)bf_second_make_trial (self->fold, &second, measured, today, &self->trial);
  cause = bf_second_make_words (self->fold, &second);
  change = change_words (self, &second);
  show (self, cause, change);
}

static void
tell (FirstMadeWindow *self)
{
  GtkWindow *below = gtk_window_get_transient_for (self->frame->window);
  g_autofree char *changes = bf_setup_changes (self->fold, bf_document_get_fold (self->document));
  g_autofree char *words = NULL;

  /* Translators: what is different now, "K 0.42 → 0.395, blank …". */
  words = g_strdup_printf (_ ("The next blank is corrected: %s."), changes != NULL ? changes : "");
  if (BF_IS_WINDOW (below))
    bf_window_notify (BF_WINDOW (below), words);
}

/* FALSE where it could not be kept, which is told. */
static gboolean
keep_trial (FirstMadeWindow *self)
{
  g_autoptr (GError) error = NULL;
  const BfTrialRecord *kept = bf_own_trial_keep (&self->trial, &error);

  if (kept == NULL)
    {
      gtk_label_set_label (self->change, error->message);
      return FALSE;
    }
  bf_part_unref (self->next);
  self->next = bf_second_make_part_tried (self->fold, kept);
  return TRUE;
}

static void
correct_cb (FirstMadeWindow *self)
{
  gboolean keeps =
      self->trial.sizes != NULL && gtk_check_button_get_active (GTK_CHECK_BUTTON (self->keep));

  if (keeps && !keep_trial (self))
    return;
  bf_setup_edit (self->document, g_steal_pointer (&self->next), _ ("Corrected by the first one"),
                 NULL);
  tell (self);
  gtk_window_destroy (self->frame->window);
}

static void
first_made_window_free (gpointer data)
{
  FirstMadeWindow *self = data;

  g_clear_pointer (&self->next, bf_part_unref);
  clear_trial (self);
  g_ptr_array_unref (self->fields);
  g_array_unref (self->sizes);
  bf_fold_unref (self->fold);
  g_object_unref (self->document);
  g_free (self);
}

static GtkEntry *
entry_new (FirstMadeWindow *self, const char *placeholder)
{
  GtkEntry *entry = GTK_ENTRY (gtk_entry_new ());

  gtk_entry_set_placeholder_text (entry, placeholder);
  gtk_entry_set_activates_default (entry, TRUE);
  g_signal_connect_swapped (entry, "changed", G_CALLBACK (changed_cb), self);
  return entry;
}

static void
add_sizes (FirstMadeWindow *self, BfSmallWindow *rows)
{
  for (guint i = 0; i < self->sizes->len; i++)
    {
      const BfMainSize *size = bf_main_size (self->sizes, i);
      g_autofree char *expected = bf_expected_size (self->fold, &size->error, size->size_mm);
      GtkEntry *entry = entry_new (self, expected);

      bf_small_window_add (rows, bf_main_size_name (size), GTK_WIDGET (entry));
      g_ptr_array_add (self->fields, entry);
    }
}

static void
add_rows (FirstMadeWindow *self)
{
  BfBend bend = bf_part_resolve_bend (self->fold->part, NULL);
  g_autofree char *radius = bf_format_thin (bend.inside_radius_mm, self->fold->part->units);

  bf_small_window_add_words (
      self->frame, _ ("Measure the finished part, outside or inside as the set-up says. What each "
                      "size may be off by itself stands in its field."));
  add_sizes (self, self->frame);
  self->radius = entry_new (self, radius);
  bf_small_window_add (self->frame, _ ("inside radius, by a gauge or a coin"),
                       GTK_WIDGET (self->radius));
  self->cause = bf_small_window_add_words (self->frame, "");
  self->change = bf_small_window_add_words (self->frame, "");
  self->keep = gtk_check_button_new_with_mnemonic (
      _ ("_Keep this K as a trial bend, for other parts bent like it"));
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->keep), TRUE);
  bf_small_window_add_wide (self->frame, self->keep);
}

void
bf_first_made_window_open (GtkWidget *anchor, BfDocument *document)
{
  BfFold *fold = bf_document_get_fold (document);
  FirstMadeWindow *self;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && fold != NULL);

  self = g_new0 (FirstMadeWindow, 1);
  self->document = g_object_ref (document);
  self->fold = bf_fold_ref (fold);
  self->sizes = bf_main_sizes (fold);
  self->fields = g_ptr_array_new ();
  self->frame = bf_small_window_new (anchor, _ ("The first one made"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "first-made", self,
                          first_made_window_free);
  add_rows (self);
  self->correct = bf_small_window_add_button (self->frame, _ ("Co_rrect the next blank"), TRUE);
  g_signal_connect_swapped (self->correct, "clicked", G_CALLBACK (correct_cb), self);
  changed_cb (self);
  bf_small_window_present (self->frame, _ ("_Close"));
  gtk_widget_grab_focus (GTK_WIDGET (g_ptr_array_index (self->fields, 0)));
}
