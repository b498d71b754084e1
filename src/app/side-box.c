/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/side-box.h"

#include <glib/gi18n.h>

#include "app/size-field.h"
#include "core/edit.h"
#include "core/tolerance.h"

/* The columns, beside the words for the rows. */
enum
{
  SIDE_START,
  SIDE_END,
  N_SIDES
};

enum
{
  ROW_INSET,
  ROW_TAPER,
  N_ROWS
};

struct _BfSideBox
{
  GtkGrid parent_instance;
  BfDocument *document;
  char *flange;
  GtkWidget *headings[N_SIDES];
  GtkWidget *fields[N_ROWS][N_SIDES];
};

G_DEFINE_FINAL_TYPE (BfSideBox, bf_side_box, GTK_TYPE_GRID)

/* Of the field, and of the step that it makes. */
static char *
name_of (BfSideBox *self, guint row, guint side)
{
  /* Translators: %s is a flange's name */
  static const char *const names[N_ROWS][N_SIDES] = {
    { N_ ("Inset at the start of %s"), N_ ("Inset at the end of %s") },
    { N_ ("Lean of the start side of %s"), N_ ("Lean of the end side of %s") },
  };

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wformat-nonliteral"
  return g_strdup_printf (_ (names[row][side]), self->flange);
#pragma GCC diagnostic pop
}

static double
size_of (const BfFlange *flange, guint row, guint side)
{
  if (row == ROW_INSET)
    return side == SIDE_START ? flange->start_mm : flange->end_mm;
  return side == SIDE_START ? flange->start_taper_deg : flange->end_taper_deg;
}

/* The part with that one size of the flange another one. */
static BfPart *
changed (BfSideBox *self, guint row, guint side, double size)
{
  const BfPart *part = bf_document_get_part (self->document);
  const BfFlange *flange = bf_part_find_flange (part, self->flange);
  double sizes[N_SIDES] = { size_of (flange, row, SIDE_START), size_of (flange, row, SIDE_END) };

  sizes[side] = size;
  if (row == ROW_INSET)
    return bf_edit_flange_insets (part, self->flange, sizes[SIDE_START], sizes[SIDE_END]);
  return bf_edit_flange_tapers (part, self->flange, sizes[SIDE_START], sizes[SIDE_END]);
}

static void
size_set_cb (GtkWidget *field, double size, gboolean stepped, gpointer user_data)
{
  BfSideBox *self = user_data;
  guint i = 0;

  while (i < N_ROWS * N_SIDES && self->fields[i / N_SIDES][i % N_SIDES] != field)
    i++;
  g_return_if_fail (i < N_ROWS * N_SIDES);
  if (bf_part_find_flange (bf_document_get_part (self->document), self->flange) == NULL)
    return;
  g_autofree char *name = name_of (self, i / N_SIDES, i % N_SIDES);
  bf_document_take (self->document, changed (self, i / N_SIDES, i % N_SIDES, size), name, stepped);
}

gboolean
bf_flange_has_own_sides (const BfFlange *flange)
{
  g_return_val_if_fail (flange != NULL, FALSE);

  for (guint i = 0; i < N_ROWS * N_SIDES; i++)
    if (fabs (size_of (flange, i / N_SIDES, i % N_SIDES)) > BF_TOLERANCE_ZERO)
      return TRUE;
  return FALSE;
}

static void
show_field (BfSideBox *self, const BfFlange *flange, guint row, guint side)
{
  BfSizeField *field = BF_SIZE_FIELD (self->fields[row][side]);
  g_autofree char *name = name_of (self, row, side);

  bf_size_field_set_name (field, name);
  bf_size_field_show (field, size_of (flange, row, side),
                      bf_document_get_part (self->document)->units, NULL);
}

void
bf_side_box_show (BfSideBox *self, BfDocument *document, const char *flange, guint sides)
{
  g_return_if_fail (BF_IS_SIDE_BOX (self) && BF_IS_DOCUMENT (document) && flange != NULL);

  const BfFlange *shown = bf_part_find_flange (bf_document_get_part (document), flange);
  g_return_if_fail (shown != NULL);
  g_set_object (&self->document, document);
  if (g_strcmp0 (self->flange, flange) != 0)
    {
      g_free (self->flange);
      self->flange = g_strdup (flange);
    }
  for (guint side = 0; side < N_SIDES; side++)
    {
      gtk_widget_set_visible (self->headings[side], sides == (BF_SIDE_OF_START | BF_SIDE_OF_END));
      for (guint row = 0; row < N_ROWS; row++)
        {
          gtk_widget_set_visible (self->fields[row][side], (sides & (1U << side)) != 0);
          show_field (self, shown, row, side);
        }
    }
}

static void
bf_side_box_dispose (GObject *object)
{
  BfSideBox *self = BF_SIDE_BOX (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->flange, g_free);
  G_OBJECT_CLASS (bf_side_box_parent_class)->dispose (object);
}

static void
bf_side_box_class_init (BfSideBoxClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_side_box_dispose;
}

static GtkWidget *
add_words (BfSideBox *self, const char *words, int column, int row)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_grid_attach (GTK_GRID (self), label, column, row, 1, 1);
  return label;
}

static void
bf_side_box_init (BfSideBox *self)
{
  static const BfSizeFieldKind kinds[N_ROWS] = { BF_SIZE_FIELD_INSET, BF_SIZE_FIELD_TAPER };

  gtk_grid_set_column_spacing (GTK_GRID (self), 10);
  gtk_grid_set_row_spacing (GTK_GRID (self), 6);
  self->headings[SIDE_START] = add_words (self, _ ("At the start"), 1, 0);
  self->headings[SIDE_END] = add_words (self, _ ("At the end"), 2, 0);
  add_words (self, _ ("Set in"), 0, 1 + ROW_INSET);
  add_words (self, _ ("Leans"), 0, 1 + ROW_TAPER);
  for (guint side = 0; side < N_SIDES; side++)
    gtk_widget_add_css_class (self->headings[side], "quiet");
  for (guint i = 0; i < N_ROWS * N_SIDES; i++)
    {
      GtkWidget *field = bf_size_field_new (kinds[i / N_SIDES], "");
      g_signal_connect (field, "size-set", G_CALLBACK (size_set_cb), self);
      gtk_grid_attach (GTK_GRID (self), field, 1 + (int)(i % N_SIDES), 1 + (int)(i / N_SIDES), 1,
                       1);
      self->fields[i / N_SIDES][i % N_SIDES] = field;
    }
}
