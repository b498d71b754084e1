/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/own-metal-window.h"

#include <glib/gi18n.h>

#include "app/setup-edit.h"
#include "app/small-window.h"
#include "core/edit.h"
#include "core/own-metals.h"

/* One figure of a metal: where it stands, and what a hand may type. */
typedef struct
{
  const char *label;
  gsize offset;
  double least, most, step;
  guint decimals;
} Figure;

static const Figure figures[] = {
  { N_ ("Density, kg/m³"), G_STRUCT_OFFSET (BfMaterial, density_kg_m3), 100, 30000, 10, 0 },
  { N_ ("Yield strength, MPa"), G_STRUCT_OFFSET (BfMaterial, yield_mpa), 1, 10000, 5, 0 },
  { N_ ("Tensile strength, MPa"), G_STRUCT_OFFSET (BfMaterial, tensile_mpa), 1, 10000, 5, 0 },
  { N_ ("Modulus, GPa"), G_STRUCT_OFFSET (BfMaterial, elastic_gpa), 0.1, 2000, 1, 1 },
  { N_ ("Least inside radius, × thickness"), G_STRUCT_OFFSET (BfMaterial, least_radius), 0, 100,
    0.1, 1 },
};

#define N_FIGURES G_N_ELEMENTS (figures)

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  GtkEntry *name;
  GtkSpinButton *fields[N_FIGURES];
  GtkLabel *words;
  GtkWidget *keep;
  BfMaterial like;
  const char *id; /* of the own metal that is changed; NULL for a new one */
} MetalWindow;

static double *
figure_of (BfMaterial *metal, guint i)
{
  return (double *)G_STRUCT_MEMBER_P (metal, figures[i].offset);
}

static void
name_cb (MetalWindow *self)
{
  g_autofree char *name = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->name)));

  gtk_widget_set_sensitive (self->keep, *g_strstrip (name) != '\0');
}

/* A new metal is made to be used; another one that is changed may be the part's. */
static void
use (MetalWindow *self, const BfMaterial *kept)
{
  if (self->id != NULL)
    bf_document_fold_again (self->document);
  else
    bf_setup_edit (self->document,
                   bf_edit_material (bf_document_get_part (self->document), kept->id), _ ("Metal"),
                   NULL);
}

static void
keep_cb (MetalWindow *self)
{
  g_autofree char *name = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->name)));
  g_autoptr (GError) error = NULL;
  BfMaterial metal = self->like;
  const BfMaterial *kept;

  metal.name = g_strstrip (name);
  for (guint i = 0; i < N_FIGURES; i++)
    {
      gtk_spin_button_update (self->fields[i]);
      *figure_of (&metal, i) = gtk_spin_button_get_value (self->fields[i]);
    }
  kept = bf_own_metal_keep (self->id, &metal, &error);
  if (kept == NULL)
    {
      gtk_label_set_label (self->words, error->message);
      return;
    }
  use (self, kept);
  gtk_window_destroy (self->frame->window);
}

static void
metal_window_free (gpointer data)
{
  MetalWindow *self = data;

  g_object_unref (self->document);
  g_free (self);
}

static void
add_fields (MetalWindow *self)
{
  self->name = GTK_ENTRY (gtk_entry_new ());
  gtk_entry_set_activates_default (self->name, TRUE);
  bf_small_window_add (self->frame, _ ("Name"), GTK_WIDGET (self->name));
  g_signal_connect_swapped (self->name, "changed", G_CALLBACK (name_cb), self);
  for (guint i = 0; i < N_FIGURES; i++)
    {
      const Figure *figure = &figures[i];
      GtkWidget *field = gtk_spin_button_new_with_range (figure->least, figure->most, figure->step);

      gtk_spin_button_set_digits (GTK_SPIN_BUTTON (field), figure->decimals);
      gtk_spin_button_set_value (GTK_SPIN_BUTTON (field), *figure_of (&self->like, i));
      self->fields[i] = GTK_SPIN_BUTTON (field);
      bf_small_window_add (self->frame, _ (figure->label), field);
    }
}

/* The metal to begin with: the part's, or mild steel for one that is not known here. */
static BfMaterial
metal_of (const BfPart *part)
{
  const BfMaterial *metal = bf_material_find (part->metal.material);
  BfMaterial copy = metal != NULL ? *metal : *bf_material_find ("mild-steel");

  if (bf_material_in_table (copy.id) != NULL)
    copy.like = copy.id;
  return copy;
}

static void
say_where_from (MetalWindow *self)
{
  g_autofree char *words = NULL;

  if (self->id == NULL)
    /* Translators: a metal, "mild steel". */
    words = g_strdup_printf (_ ("The figures to begin with are those of %s. Take them from the "
                                "supplier's papers where you have them."),
                             self->like.name);
  self->words = bf_small_window_add_words (
      self->frame, words != NULL ? words
                                 : _ ("Parts of this metal are worked out with these figures from "
                                      "now on."));
}

GtkWindow *
bf_own_metal_window_open (GtkWidget *anchor, BfDocument *document, const char *id)
{
  const BfPart *part = bf_document_get_part (document);
  MetalWindow *self;

  g_return_val_if_fail (GTK_IS_WIDGET (anchor) && part != NULL, NULL);
  g_return_val_if_fail (id == NULL || bf_material_find (id) != NULL, NULL);

  self = g_new0 (MetalWindow, 1);
  self->document = g_object_ref (document);
  self->like = id != NULL ? *bf_material_find (id) : metal_of (part);
  self->id = id != NULL ? self->like.id : NULL;
  self->frame = bf_small_window_new (anchor, _ ("A metal of your own"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "own-metal", self, metal_window_free);
  self->keep = bf_small_window_add_button (self->frame,
                                           id == NULL ? _ ("_Keep and use") : _ ("_Keep"), TRUE);
  say_where_from (self);
  add_fields (self);
  if (id != NULL)
    gtk_editable_set_text (GTK_EDITABLE (self->name), self->like.name);
  g_signal_connect_swapped (self->keep, "clicked", G_CALLBACK (keep_cb), self);
  name_cb (self);
  bf_small_window_present (self->frame, _ ("_Cancel"));
  gtk_widget_grab_focus (GTK_WIDGET (self->name));
  return self->frame->window;
}
