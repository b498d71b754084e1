/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/sums-window.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/length-row.h"
#include "app/settings.h"
#include "app/small-window.h"
#include "core/units.h"
#include "fold/shown-sums.h"

#define MOST_HEIGHT 400
#define WIDTH_CHARS 58
#define FULL_PERCENT 100.0

typedef struct
{
  BfSmallWindow *frame;
  BfFold *fold; /* what is looked at; it does not change under a modal window */
  GSettings *settings;
  GtkDropDown *bend;
  GtkBox *sums;
  double die_mm; /* NAN: as wide as is usual */
  BfBrakePlate plate;
} SumsWindow;

static void
add_label (SumsWindow *self, const char *words, const char *css_class)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (label), WIDTH_CHARS);
  gtk_label_set_selectable (GTK_LABEL (label), css_class == NULL);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  gtk_box_append (self->sums, label);
}

/* Whether a hand brake with that plate takes the bend. */
static void
add_verdict (SumsWindow *self, double share)
{
  g_autofree char *words =
      g_strdup_printf (share <= 1.0
                           /* Translators: a share in percent */
                           ? _ ("This brake takes it: %.0f %% of what its plate allows.")
                           : _ ("Too much for this brake: %.0f %% of what its plate allows."),
                       share * FULL_PERCENT);

  add_label (self, words, "quiet");
}

static void
add_sum (SumsWindow *self, BfSumKind kind, const BfSumNumbers *numbers)
{
  double thickness_mm = self->fold->part->metal.thickness_mm;
  BfBrakeAsked brake = { isnan (self->die_mm) ? bf_sum_die_mm (thickness_mm) : self->die_mm,
                         self->plate.width_mm > 0.0 ? &self->plate : NULL };
  g_auto (BfShownSum) shown = { .words = NULL };

  if (!bf_sum_show (kind, numbers, &brake, &shown))
    return;
  add_label (self, bf_sum_name (kind), "here-title");
  add_label (self, shown.words, NULL);
  if (kind == BF_SUM_HAND_BRAKE)
    add_verdict (self, shown.result);
  add_label (self, shown.source, "source");
}

static void
show (SumsWindow *self)
{
  guint bend = gtk_drop_down_get_selected (self->bend);
  BfSumNumbers numbers;

  bf_widget_drop_children (GTK_WIDGET (self->sums));
  if (bend >= self->fold->bends->len)
    return;
  numbers = bf_sum_numbers (self->fold, bf_fold_bend (self->fold, bend));
  for (BfSumKind kind = BF_SUM_K; kind < BF_N_SUMS; kind++)
    add_sum (self, kind, &numbers);
}

static void
die_given (double die_mm, gpointer user_data)
{
  SumsWindow *self = user_data;

  self->die_mm = die_mm > 0.0 ? die_mm : NAN;
  show (self);
}

static void
note_plate (SumsWindow *self)
{
  bf_settings_note_brake (self->settings, &self->plate);
  show (self);
}

static void
plate_thickness_given (double thickness_mm, gpointer user_data)
{
  SumsWindow *self = user_data;

  self->plate.thickness_mm = isnan (thickness_mm) ? 0.0 : thickness_mm;
  note_plate (self);
}

static void
plate_width_given (double width_mm, gpointer user_data)
{
  SumsWindow *self = user_data;

  self->plate.width_mm = isnan (width_mm) ? 0.0 : width_mm;
  note_plate (self);
}

static void
sums_window_free (gpointer data)
{
  SumsWindow *self = data;

  g_clear_object (&self->settings);
  bf_fold_unref (self->fold);
  g_free (self);
}

static void
add_bend (SumsWindow *self, const char *flange)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);
  guint chosen = 0;

  for (guint i = 0; i < self->fold->bends->len; i++)
    {
      const char *name = bf_fold_bend (self->fold, i)->flange;

      gtk_string_list_append (names, name);
      chosen = g_str_equal (name, flange) ? i : chosen;
    }
  self->bend = GTK_DROP_DOWN (gtk_drop_down_new (G_LIST_MODEL (g_steal_pointer (&names)), NULL));
  gtk_drop_down_set_selected (self->bend, chosen);
  bf_small_window_add (self->frame, _ ("Bend of"), GTK_WIDGET (self->bend));
  g_signal_connect_swapped (self->bend, "notify::selected", G_CALLBACK (show), self);
}

static void
add_sums (SumsWindow *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  self->sums = GTK_BOX (gtk_box_new (GTK_ORIENTATION_VERTICAL, 2));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_widget_set_size_request (scroller, -1, MOST_HEIGHT);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), GTK_WIDGET (self->sums));
  bf_small_window_add_wide (self->frame, scroller);
}

static void
add_length (
    SumsWindow *self, const char *label, double length_mm, const char *none, BfLengthGiven given)
{
  BfUnits units = self->fold->part->units;

  bf_small_window_add (
      self->frame, label,
      bf_length_row_new (length_mm > 0.0 ? length_mm : NAN, units, none, given, self));
}

static void
add_brakes (SumsWindow *self)
{
  double die_mm = bf_sum_die_mm (self->fold->part->metal.thickness_mm);
  g_autofree char *die = bf_format_length (die_mm, self->fold->part->units);

  add_length (self, _ ("Opening of the V die"), NAN, die, die_given);
  add_length (self, _ ("Hand brake’s plate: thickness"), self->plate.thickness_mm,
              _ ("of mild steel"), plate_thickness_given);
  add_length (self, _ ("Hand brake’s plate: width"), self->plate.width_mm, _ ("of mild steel"),
              plate_width_given);
}

void
bf_sums_window_open (GtkWidget *anchor,
                     BfDocument *document,
                     GSettings *settings,
                     const char *flange)
{
  BfFold *fold = bf_document_get_fold (document);
  SumsWindow *self;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && flange != NULL);

  if (fold == NULL || fold->bends->len == 0)
    return;
  self = g_new0 (SumsWindow, 1);
  self->fold = bf_fold_ref (fold);
  self->settings = settings != NULL ? g_object_ref (settings) : NULL;
  self->die_mm = NAN;
  self->plate = bf_settings_brake (settings);
  self->frame = bf_small_window_new (anchor, _ ("The sums"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "sums", self, sums_window_free);
  add_bend (self, flange);
  add_sums (self);
  add_brakes (self);
  show (self);
  bf_small_window_present (self->frame, _ ("_Close"));
}
