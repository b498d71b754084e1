/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/relief-box.h"

#include <glib/gi18n.h>

#include "app/size-field.h"
#include "core/edit.h"
#include "core/units.h"

#define N_SHAPES (BF_RELIEF_NONE + 1)

enum
{
  ROW_GAP,
  ROW_SHAPE,
  ROW_SIZE,
  ROW_NEED,
  N_ROWS
};

struct _BfReliefBox
{
  GtkGrid parent_instance;
  BfDocument *document;
  char *on;
  guint at;
  gboolean is_setting; /* choices are ticked by us, not by the person */

  GtkWidget *labels[N_ROWS];
  GtkWidget *gap, *size, *need;
  GtkWidget *shapes_box;
  GtkCheckButton *shapes[N_SHAPES]; /* none for the unset one: it is round */
};

G_DEFINE_FINAL_TYPE (BfReliefBox, bf_relief_box, GTK_TYPE_GRID)

/* ---- the person's choices ----------------------------------------------------------------- */

static const BfCorner *
asked_here (BfReliefBox *self)
{
  return bf_part_find_corner (bf_document_get_part (self->document), self->on, self->at);
}

static void
relief_chosen (BfReliefBox *self, BfReliefShape shape, double size_mm, gboolean stepped)
{
  BfPart *part = bf_edit_corner_relief (bf_document_get_part (self->document), self->on, self->at,
                                        shape, size_mm);

  bf_document_take (self->document, part, _ ("Relief of a corner"), stepped);
}

static void
gap_set_cb (BfReliefBox *self, double gap_mm, gboolean stepped)
{
  BfPart *part =
      bf_edit_corner_gap (bf_document_get_part (self->document), self->on, self->at, gap_mm);

  bf_document_take (self->document, part, _ ("Gap of a corner"), stepped);
}

static void
shape_cb (BfReliefBox *self, GtkCheckButton *button)
{
  if (self->is_setting || !gtk_check_button_get_active (button))
    return;
  const BfCorner *asked = asked_here (self);
  double size_mm = asked != NULL ? asked->relief_size_mm : NAN;
  for (guint shape = BF_RELIEF_ROUND; shape < N_SHAPES; shape++)
    if (self->shapes[shape] == button)
      {
        relief_chosen (self, (BfReliefShape)shape, shape == BF_RELIEF_NONE ? NAN : size_mm, FALSE);
        return;
      }
}

static void
size_set_cb (BfReliefBox *self, double size_mm, gboolean stepped)
{
  const BfCorner *asked = asked_here (self);
  BfReliefShape shape = asked != NULL ? asked->relief : BF_RELIEF_UNSET;

  relief_chosen (self, MAX (shape, BF_RELIEF_ROUND), size_mm, stepped);
}

/* ---- what is seen ------------------------------------------------------------------------- */

static char *
need_words (const BfCornerHere *here, BfUnits units)
{
  g_autofree char *need = bf_format_thin (here->need_mm, units);
  g_autofree char *wander = bf_format_thin (here->wander_mm, units);

  if (here->wander_mm > 0.0)
    /* Translators: two lengths with their units */
    return g_strdup_printf (_ ("Needs %s, and %s more for a drill that wanders."), need, wander);
  /* Translators: a length with its unit */
  return g_strdup_printf (_ ("Needs %s."), need);
}

/* "Round" alone says nothing to who does not see the word before it. */
static void
name_shapes (BfReliefBox *self)
{
  static const char *const names[N_SHAPES] = { [BF_RELIEF_ROUND] = N_ ("Round relief"),
                                               [BF_RELIEF_SQUARE] = N_ ("Square relief"),
                                               [BF_RELIEF_NONE] = N_ ("No relief") };

  for (guint shape = BF_RELIEF_ROUND; shape < N_SHAPES; shape++)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->shapes[shape]),
                                    GTK_ACCESSIBLE_PROPERTY_LABEL, _ (names[shape]), -1);
}

static void
show_row (BfReliefBox *self, guint row, GtkWidget *widget, gboolean shown)
{
  if (self->labels[row] != NULL)
    gtk_widget_set_visible (self->labels[row], shown);
  gtk_widget_set_visible (widget, shown);
}

static void
show_size (BfReliefBox *self, const BfCornerHere *here, const BfCorner *asked)
{
  BfUnits units = bf_document_get_part (self->document)->units;
  gboolean square = here->shape == BF_RELIEF_SQUARE;
  g_autofree char *words = need_words (here, units);

  gtk_label_set_label (GTK_LABEL (self->labels[ROW_SIZE]), square ? _ ("Side") : _ ("Diameter"));
  bf_size_field_set_name (BF_SIZE_FIELD (self->size),
                          square ? _ ("Side of the relief") : _ ("Diameter of the relief"));
  bf_size_field_set_usual (BF_SIZE_FIELD (self->size), here->usual_size_mm, units);
  bf_size_field_show (BF_SIZE_FIELD (self->size), asked != NULL ? asked->relief_size_mm : NAN,
                      units, NULL);
  gtk_label_set_label (GTK_LABEL (self->need), words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->size), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  words, -1);
}

void
bf_relief_box_show (
    BfReliefBox *self, BfDocument *document, const char *on, guint at, const BfCornerHere *here)
{
  g_return_if_fail (BF_IS_RELIEF_BOX (self) && here != NULL);

  g_set_object (&self->document, document);
  if (g_strcmp0 (self->on, on) != 0)
    {
      g_free (self->on);
      self->on = g_strdup (on);
    }
  self->at = at;
  const BfCorner *asked = asked_here (self);
  BfUnits units = bf_document_get_part (document)->units;
  gboolean has_gap = !isnan (here->usual_gap_mm), has_size = !isnan (here->usual_size_mm);
  show_row (self, ROW_GAP, self->gap, has_gap);
  show_row (self, ROW_SHAPE, self->shapes_box, here->has_relief);
  show_row (self, ROW_SIZE, self->size, has_size);
  show_row (self, ROW_NEED, self->need, has_size);
  if (has_gap)
    {
      bf_size_field_set_usual (BF_SIZE_FIELD (self->gap), here->usual_gap_mm, units);
      bf_size_field_show (BF_SIZE_FIELD (self->gap), asked != NULL ? asked->gap_mm : NAN, units,
                          NULL);
    }
  name_shapes (self);
  self->is_setting = TRUE;
  gtk_check_button_set_active (self->shapes[MAX (here->shape, BF_RELIEF_ROUND)], TRUE);
  self->is_setting = FALSE;
  if (has_size)
    show_size (self, here, asked);
}

/* ---- the widget --------------------------------------------------------------------------- */

static void
bf_relief_box_dispose (GObject *object)
{
  BfReliefBox *self = BF_RELIEF_BOX (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->on, g_free);
  G_OBJECT_CLASS (bf_relief_box_parent_class)->dispose (object);
}

static void
bf_relief_box_class_init (BfReliefBoxClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_relief_box_dispose;
}

static void
add_row (BfReliefBox *self, guint row, const char *words, GtkWidget *widget)
{
  self->labels[row] = gtk_label_new (words);
  gtk_label_set_xalign (GTK_LABEL (self->labels[row]), 0.0F);
  gtk_widget_set_halign (widget, GTK_ALIGN_START);
  gtk_grid_attach (GTK_GRID (self), self->labels[row], 0, (int)row, 1, 1);
  gtk_grid_attach (GTK_GRID (self), widget, 1, (int)row, 1, 1);
}

static void
add_shapes (BfReliefBox *self)
{
  static const char *const words[N_SHAPES] = { [BF_RELIEF_ROUND] = N_ ("Round"),
                                               [BF_RELIEF_SQUARE] = N_ ("Square"),
                                               [BF_RELIEF_NONE] = N_ ("None") };

  self->shapes_box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  for (guint shape = BF_RELIEF_ROUND; shape < N_SHAPES; shape++)
    {
      GtkWidget *choice = gtk_check_button_new_with_label (_ (words[shape]));
      if (shape > BF_RELIEF_ROUND)
        gtk_check_button_set_group (GTK_CHECK_BUTTON (choice), self->shapes[BF_RELIEF_ROUND]);
      g_signal_connect_swapped (choice, "toggled", G_CALLBACK (shape_cb), self);
      gtk_box_append (GTK_BOX (self->shapes_box), choice);
      self->shapes[shape] = GTK_CHECK_BUTTON (choice);
    }
  add_row (self, ROW_SHAPE, _ ("Relief"), self->shapes_box);
}

static void
bf_relief_box_init (BfReliefBox *self)
{
  gtk_grid_set_column_spacing (GTK_GRID (self), 10);
  gtk_grid_set_row_spacing (GTK_GRID (self), 6);
  gtk_widget_set_margin_top (GTK_WIDGET (self), 6);
  self->gap = bf_size_field_new (BF_SIZE_FIELD_GAP, _ ("Gap of the corner"));
  g_signal_connect_swapped (self->gap, "size-set", G_CALLBACK (gap_set_cb), self);
  add_row (self, ROW_GAP, _ ("Gap"), self->gap);
  add_shapes (self);
  self->size = bf_size_field_new (BF_SIZE_FIELD_FINE, "");
  g_signal_connect_swapped (self->size, "size-set", G_CALLBACK (size_set_cb), self);
  add_row (self, ROW_SIZE, "", self->size);
  self->need = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->need), 0.0F);
  gtk_label_set_wrap (GTK_LABEL (self->need), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->need), 30);
  gtk_widget_add_css_class (self->need, "quiet");
  gtk_widget_add_css_class (self->need, "here-words");
  gtk_grid_attach (GTK_GRID (self), self->need, 0, ROW_NEED, 2, 1);
}
