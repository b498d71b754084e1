/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/trial-bend-window.h"

#include <glib/gi18n.h>

#include "app/length-row.h"
#include "app/score-trial-window.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "core/own-trials.h"
#include "core/setup-sentence.h"
#include "core/today.h"
#include "core/units.h"
#include "fold/trial-strip.h"

#define N_STRIPS 3 /* asked for */
#define MAX_STRIPS 12
#define SQUARE_DEG 90.0
#define N_LENGTHS 3 /* the strip's, and its two legs */

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  GtkEntry *entries[MAX_STRIPS][N_LENGTHS];
  guint n_rows;
  GtkLabel *found;
  GtkWidget *keep;
  BfTrialRecord trial;
} TrialWindow;

/* How many lengths of a row are given; −1 where one is none. */
static int
read_row (TrialWindow *self, guint row, double *lengths_mm)
{
  BfUnits units = bf_document_get_part (self->document)->units;
  int given = 0;

  for (guint i = 0; i < N_LENGTHS; i++)
    {
      if (!bf_length_entry_read (self->entries[row][i], units, &lengths_mm[i]))
        return -1;
      given += isnan (lengths_mm[i]) ? 0 : 1;
    }
  return given;
}

/* What is typed is bent square; a file may say otherwise. */
static double
angle_of (TrialWindow *self, guint row)
{
  const BfTrialRecord *was = bf_own_trial_find (self->trial.id);

  if (was == NULL || row >= was->strips->len)
    return SQUARE_DEG;
  return g_array_index (was->strips, BfTrialStrip, row).angle_deg;
}

/* Takes the whole rows. FALSE where a row with a leg in it is not whole. */
static gboolean
read_strips (TrialWindow *self)
{
  double lengths_mm[N_LENGTHS];

  g_array_set_size (self->trial.strips, 0);
  for (guint row = 0; row < self->n_rows; row++)
    {
      int given = read_row (self, row, lengths_mm);
      BfTrialStrip strip = { lengths_mm[0],
                             { lengths_mm[1], lengths_mm[2] },
                             angle_of (self, row) };

      if (given == N_LENGTHS)
        g_array_append_val (self->trial.strips, strip);
      else if (given < 0 || !isnan (lengths_mm[1]) || !isnan (lengths_mm[2]))
        return FALSE;
    }
  return TRUE;
}

static void
show_found (TrialWindow *self, const char *words, gboolean may_be_kept)
{
  gtk_label_set_label (self->found, words);
  gtk_widget_set_sensitive (self->keep, may_be_kept);
}

static void
changed_cb (TrialWindow *self)
{
  gboolean whole = read_strips (self);
  guint n = self->trial.strips->len;
  g_autoptr (GError) error = NULL;
  g_autofree char *k = NULL, *off = NULL, *words = NULL;
  BfTrialK found;

  if (!whole || n == 0)
    {
      show_found (self, _ ("Type the length before, and both legs after, of at least one strip."),
                  FALSE);
      return;
    }
  if (!bf_trial_record_k (&self->trial, &found, &error))
    {
      show_found (self, error->message, FALSE);
      return;
    }
  self->trial.k = found.k;
  self->trial.k_error = MIN (found.k_error, 1.0);
  k = bf_format_decimal (found.k, 3);
  off = bf_format_decimal (found.k_error, 3);
  /* Translators: a K-factor, how far off it may be, and from how many strips it comes. */
  words = g_strdup_printf (ngettext ("K %s ± %s, from %u strip", "K %s ± %s, from %u strips", n), k,
                           off, n);
  show_found (self, words, TRUE);
}

/* A new one is made to be used; one that is changed goes on where it is used. */
static void
use (TrialWindow *self, const BfTrialRecord *kept)
{
  const BfPart *part = bf_document_get_part (self->document);
  g_autoptr (BfPart) changed = NULL;

  if (self->trial.id != NULL && g_strcmp0 (part->bend.allowance.trial_id, kept->id) != 0)
    return;
  changed = bf_edit_trial_bend (part, kept);
  bf_document_apply (self->document, changed, _ ("Trial bend"), NULL);
}

static void
keep_cb (TrialWindow *self)
{
  g_autoptr (GError) error = NULL;
  const BfTrialRecord *kept = bf_own_trial_keep (&self->trial, &error);

  if (kept == NULL)
    {
      show_found (self, error->message, TRUE);
      return;
    }
  use (self, kept);
  gtk_window_destroy (self->frame->window);
}

static void
trial_window_free (gpointer data)
{
  TrialWindow *self = data;

  g_array_unref (self->trial.strips);
  g_object_unref (self->document);
  g_free (self);
}

static void
set_up_trial (TrialWindow *self)
{
  const BfPart *part = bf_document_get_part (self->document);
  BfBend bend = bf_part_resolve_bend (part, NULL);
  g_autofree char *date = bf_today ();

  self->trial.material =
      g_intern_string (part->metal.material != NULL ? part->metal.material : "mild-steel");
  self->trial.date = g_intern_string (date);
  self->trial.thickness_mm = part->metal.thickness_mm;
  self->trial.radius_mm = bend.inside_radius_mm;
  self->trial.way = bend.way;
  self->trial.measured_to_mm = BF_TRIAL_MEASURED_TO_MM;
  self->trial.strips = g_array_new (FALSE, FALSE, sizeof (BfTrialStrip));
  self->n_rows = N_STRIPS;
}

/* Another one's metal, way and radius are its own; its day stays. */
static void
take_up_trial (TrialWindow *self, const BfTrialRecord *was)
{
  g_autoptr (GArray) strips = self->trial.strips;

  self->trial = *was;
  self->trial.strips = g_steal_pointer (&strips);
  self->n_rows = CLAMP (was->strips->len, N_STRIPS, MAX_STRIPS);
}

char *
bf_trial_bend_words (const BfTrialRecord *trial, BfUnits units)
{
  g_autoptr (BfPart) like = NULL;
  g_autofree char *metal = NULL, *way = NULL, *radius = NULL;

  g_return_val_if_fail (trial != NULL, NULL);

  like = bf_part_new ();
  like->units = units;
  g_free (like->metal.material);
  like->metal.material = g_strdup (trial->material);
  like->metal.thickness_mm = trial->thickness_mm;
  like->bend.way = trial->way;
  metal = bf_setup_phrase (like, BF_SETUP_METAL);
  way = bf_setup_phrase (like, BF_SETUP_BENDING);
  radius = bf_format_thin (trial->radius_mm, units);
  /* Translators: a metal with its thickness, a way of bending, an inside radius with its unit:
   * "Mild steel 1.5 mm, bent over a bar, inside radius 1.5 mm". */
  return g_strdup_printf (_ ("%s, bent %s, inside radius %s"), metal, way, radius);
}

/* How large a strip is: for who has no printer. Returns: (transfer full). */
static char *
strip_size (TrialWindow *self)
{
  const BfPart *part = bf_document_get_part (self->document);
  g_autoptr (BfPart) strip = bf_trial_strip_part (part, part->units);
  g_autoptr (BfFold) fold = bf_fold (strip);
  const BfBox *box = &fold->blank.box;
  g_autofree char *width = bf_format_length (box->max.x - box->min.x, part->units);
  g_autofree char *height = bf_format_length (box->max.y - box->min.y, part->units);

  return g_strdup_printf ("%s × %s", width, height);
}

static void
say_what_for (TrialWindow *self)
{
  BfUnits units = bf_document_get_part (self->document)->units;
  g_autofree char *what = bf_trial_bend_words (&self->trial, units);
  g_autofree char *size = strip_size (self);
  /* Translators: what a trial bend is of: "Mild steel 1.5 mm, bent over a bar, inside radius 1.5
   * mm"; and the size of a strip. */
  g_autofree char *words =
      g_strdup_printf (_ ("%s. Print the strips, or mark them out, %s, the bend line across the "
                          "middle. Bend them square, and measure them outside with a caliper."),
                       what, size);

  bf_small_window_add_words (self->frame, words);
}

static GtkWidget *
entry_new (TrialWindow *self, guint row, guint i)
{
  static const char *const names[] = {
    /* Translators: the number of a strip. */
    N_ ("length of strip %u"),
    /* Translators: the number of a strip. */
    N_ ("leg 1 of strip %u"),
    /* Translators: the number of a strip. */
    N_ ("leg 2 of strip %u"),
  };
  static const char *const shown[] = { N_ ("length before"), N_ ("leg 1"), N_ ("leg 2") };
  GtkWidget *entry = gtk_entry_new ();
  g_autofree char *number = g_strdup_printf ("%u", row + 1);
  g_auto (GStrv) parts = g_strsplit (_ (names[i]), "%u", 2);
  g_autofree char *name = g_strjoinv (number, parts);

  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 11);
  gtk_entry_set_placeholder_text (GTK_ENTRY (entry), _ (shown[i]));
  gtk_entry_set_activates_default (GTK_ENTRY (entry), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (entry, "changed", G_CALLBACK (changed_cb), self);
  return entry;
}

static void
add_strips (TrialWindow *self)
{
  for (guint row = 0; row < self->n_rows; row++)
    {
      GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
      /* Translators: the number of a strip. */
      g_autofree char *label = g_strdup_printf (_ ("Strip %u"), row + 1);

      for (guint i = 0; i < N_LENGTHS; i++)
        {
          GtkWidget *entry = entry_new (self, row, i);

          self->entries[row][i] = GTK_ENTRY (entry);
          gtk_box_append (GTK_BOX (box), entry);
        }
      bf_small_window_add (self->frame, label, box);
    }
}

static void
show_length (TrialWindow *self, guint row, guint i, double length_mm)
{
  BfUnits units = bf_document_get_part (self->document)->units;
  double shown = units == BF_UNITS_IN ? length_mm / BF_MM_PER_INCH : length_mm;
  g_autofree char *words = bf_format_decimal (shown, units == BF_UNITS_IN ? 4 : 3);

  gtk_editable_set_text (GTK_EDITABLE (self->entries[row][i]), words);
}

static void
show_strips (TrialWindow *self, const BfTrialRecord *was)
{
  g_autoptr (GArray) strips = g_array_ref (was->strips);

  for (guint row = 0; row < MIN (strips->len, self->n_rows); row++)
    {
      const BfTrialStrip *strip = &g_array_index (strips, BfTrialStrip, row);

      show_length (self, row, 0, strip->length_mm);
      show_length (self, row, 1, strip->legs_mm[0]);
      show_length (self, row, 2, strip->legs_mm[1]);
    }
}

static void
add_size (BfSmallWindow *frame, const BfTrialSize *size, BfUnits units)
{
  g_autofree char *asked = bf_format_length (size->asked_mm, units);
  g_autofree char *measured = bf_format_length (size->measured_mm, units);
  /* Translators: what a size was asked to be, and what it measured, each with its unit. */
  g_autofree char *words = g_strdup_printf (_ ("asked %s, measured %s"), asked, measured);

  bf_small_window_add_words (frame, words);
}

/* What a finished part measured is looked at, not typed again: the part that it came from may be
 * another one by now. */
static GtkWindow *
open_for_finished (GtkWidget *anchor, BfDocument *document, const BfTrialRecord *was)
{
  BfUnits units = bf_document_get_part (document)->units;
  BfSmallWindow *frame = bf_small_window_new (anchor, _ ("Trial bend"));
  g_autofree char *what = bf_trial_bend_words (was, units);
  /* Translators: what a trial bend is of, and the name of a finished part. */
  g_autofree char *words =
      g_strdup_printf (_ ("%s. It comes from the finished “%s”; measure another one at “What came "
                          "out of the first one…”, or bend strips, to have a newer one."),
                       what, was->part);

  bf_small_window_add_words (frame, words);
  for (guint i = 0; i < was->sizes->len; i++)
    add_size (frame, &g_array_index (was->sizes, BfTrialSize, i), units);
  bf_small_window_present (frame, _ ("_Close"));
  return frame->window;
}

GtkWindow *
bf_trial_bend_window_open (GtkWidget *anchor, BfDocument *document, const char *id)
{
  const BfTrialRecord *was = bf_own_trial_find (id);
  TrialWindow *self;

  g_return_val_if_fail (GTK_IS_WIDGET (anchor) && bf_document_get_part (document) != NULL, NULL);

  if (was == NULL &&
      bf_part_resolve_bend (bf_document_get_part (document), NULL).way == BF_BEND_WAY_SCORE)
    return bf_score_trial_window_open (anchor, document);
  if (was != NULL && was->sizes != NULL)
    return open_for_finished (anchor, document, was);
  self = g_new0 (TrialWindow, 1);
  self->document = g_object_ref (document);
  self->frame = bf_small_window_new (anchor, _ ("Trial bend"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "trial-bend", self, trial_window_free);
  set_up_trial (self);
  if (was != NULL)
    take_up_trial (self, was);
  say_what_for (self);
  self->keep = bf_small_window_add_button (self->frame,
                                           was == NULL ? _ ("_Keep and use") : _ ("_Keep"), TRUE);
  self->found = bf_small_window_add_words (self->frame, "");
  add_strips (self);
  if (was != NULL)
    show_strips (self, was);
  g_signal_connect_swapped (self->keep, "clicked", G_CALLBACK (keep_cb), self);
  changed_cb (self);
  bf_small_window_present (self->frame, _ ("_Cancel"));
  gtk_widget_grab_focus (GTK_WIDGET (self->entries[0][0]));
  return self->frame->window;
}
