/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/pens-window.h"

#include <glib/gi18n.h>

#include "app/small-window.h"
#include "core/own-pens.h"
#include "paint/palette.h"

#define LEAST_MM 0.05
#define MOST_MM 1.0
#define STEP_MM 0.05
#define SPACING 8

/* The palette without yellow, which no one sees on paper. */
static const struct
{
  BfOkabeIto colour;
  const char *name;
} inks[] = {
  { BF_OKABE_ITO_BLACK, N_ ("black") },           { BF_OKABE_ITO_BLUE, N_ ("blue") },
  { BF_OKABE_ITO_SKY_BLUE, N_ ("sky blue") },     { BF_OKABE_ITO_BLUISH_GREEN, N_ ("green") },
  { BF_OKABE_ITO_ORANGE, N_ ("orange") },         { BF_OKABE_ITO_VERMILLION, N_ ("red") },
  { BF_OKABE_ITO_REDDISH_PURPLE, N_ ("purple") },
};

#define N_INKS G_N_ELEMENTS (inks)

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  BfPenSet pens; /* a colour of none of the inks stays as it is */
  GtkDropDown *colours[BF_N_PENS];
  GtkSpinButton *widths[BF_N_PENS];
  GtkLabel *words;
} PensWindow;

static const char *
line_name (BfPenKind pen)
{
  static const char *const names[BF_N_PENS] = {
    [BF_PEN_CUT] = N_ ("cuts"),
    [BF_PEN_BEND_UP] = N_ ("bends up"),
    [BF_PEN_BEND_DOWN] = N_ ("bends down"),
    [BF_PEN_SLOT] = N_ ("slots"),
    [BF_PEN_SCORE] = N_ ("scores"),
    [BF_PEN_BAR_LINE] = N_ ("bar lines"),
    [BF_PEN_DRILL] = N_ ("drill centres"),
  };

  return _ (names[pen]);
}

/* The row of the list; the one after the last for a colour of a file that is none of them. */
static guint
ink_of (guint32 rgb)
{
  guint row = 0;

  while (row < N_INKS && bf_okabe_ito (inks[row].colour) != rgb)
    row++;
  return row;
}

static void
show (PensWindow *self)
{
  for (guint i = 0; i < BF_N_PENS; i++)
    {
      gtk_drop_down_set_selected (self->colours[i], ink_of (self->pens.pens[i].rgb));
      gtk_spin_button_set_value (self->widths[i], self->pens.pens[i].width_mm);
    }
}

static void
usual_cb (PensWindow *self)
{
  self->pens = *bf_pens_default ();
  show (self);
}

static void
keep_cb (PensWindow *self)
{
  g_autoptr (GError) error = NULL;

  for (guint i = 0; i < BF_N_PENS; i++)
    {
      guint row = gtk_drop_down_get_selected (self->colours[i]);

      if (row < N_INKS)
        self->pens.pens[i].rgb = bf_okabe_ito (inks[row].colour);
      gtk_spin_button_update (self->widths[i]);
      self->pens.pens[i].width_mm = gtk_spin_button_get_value (self->widths[i]);
    }
  if (!bf_own_pens_keep (&self->pens, &error))
    {
      gtk_label_set_label (self->words, error->message);
      return;
    }
  bf_document_fold_again (self->document);
  gtk_window_destroy (self->frame->window);
}

static void
pens_window_free (gpointer data)
{
  PensWindow *self = data;

  g_object_unref (self->document);
  g_free (self);
}

static GtkWidget *
colours_new (guint32 rgb)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);
  g_autofree char *own = g_strdup_printf ("#%06X", rgb);

  for (guint i = 0; i < N_INKS; i++)
    gtk_string_list_append (names, _ (inks[i].name));
  if (ink_of (rgb) == N_INKS)
    gtk_string_list_append (names, own);
  return gtk_drop_down_new (G_LIST_MODEL (g_steal_pointer (&names)), NULL);
}

static void
add_pen (PensWindow *self, BfPenKind pen)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, SPACING);
  GtkWidget *colour = colours_new (self->pens.pens[pen].rgb);
  GtkWidget *width = gtk_spin_button_new_with_range (LEAST_MM, MOST_MM, STEP_MM);
  /* Translators: a kind of line, "bends up" */
  g_autofree char *colour_name = g_strdup_printf (_ ("colour of %s"), line_name (pen));
  /* Translators: a kind of line, "bends up" */
  g_autofree char *width_name = g_strdup_printf (_ ("width of %s in mm"), line_name (pen));

  self->colours[pen] = GTK_DROP_DOWN (colour);
  self->widths[pen] = GTK_SPIN_BUTTON (width);
  gtk_spin_button_set_digits (self->widths[pen], 2);
  gtk_widget_set_hexpand (colour, TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (colour), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  colour_name, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (width), GTK_ACCESSIBLE_PROPERTY_LABEL, width_name,
                                  -1);
  gtk_box_append (GTK_BOX (box), colour);
  gtk_box_append (GTK_BOX (box), width);
  bf_small_window_add (self->frame, line_name (pen), box);
}

void
bf_pens_window_open (GtkWidget *anchor, BfDocument *document)
{
  PensWindow *self;
  GtkWidget *keep, *usual;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && BF_IS_DOCUMENT (document));

  self = g_new0 (PensWindow, 1);
  self->document = g_object_ref (document);
  self->pens = *bf_own_pens ();
  self->frame = bf_small_window_new (anchor, _ ("Pens of the template"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "pens", self, pens_window_free);
  for (BfPenKind pen = 0; pen < BF_N_PENS; pen++)
    add_pen (self, pen);
  self->words = bf_small_window_add_words (
      self->frame, _ ("Colour, and width in mm. Dashes stay as they are: they tell lines apart on "
                      "a printer without colours."));
  usual = bf_small_window_add_button (self->frame, _ ("The _usual ones"), FALSE);
  keep = bf_small_window_add_button (self->frame, _ ("_Keep"), TRUE);
  show (self);
  if (bf_own_pens_fault () != NULL)
    gtk_label_set_label (self->words, bf_own_pens_fault ());
  g_signal_connect_swapped (usual, "clicked", G_CALLBACK (usual_cb), self);
  g_signal_connect_swapped (keep, "clicked", G_CALLBACK (keep_cb), self);
  bf_small_window_present (self->frame, _ ("_Cancel"));
}
