/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/side-box.h"

#include <glib/gi18n.h>

#include "app/size-field.h"
#include "core/defaults.h"
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
  N_ROWS,
  ROW_RELIEF = N_ROWS
};

#define N_RELIEFS (BF_END_RELIEF_NOTCH + 1)

struct _BfSideBox
{
  GtkGrid parent_instance;
  BfDocument *document;
  char *flange;
  gboolean is_setting; /* choices are ticked by us, not by the person */
  GtkWidget *headings[N_SIDES];
  GtkWidget *fields[N_ROWS][N_SIDES];
  GtkWidget *relief_label, *relief_boxes[N_SIDES];
  GtkCheckButton *reliefs[N_SIDES][N_RELIEFS]; /* none for the unset one: it is one of the others */
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

/* ---- end reliefs -------------------------------------------------------------------------- */

static BfEndRelief
relief_of (const BfFlange *flange, guint side)
{
  return side == SIDE_START ? flange->start_relief : flange->end_relief;
}

static void
relief_cb (BfSideBox *self, GtkCheckButton *button)
{
  const BfPart *part = bf_document_get_part (self->document);
  const BfFlange *flange = bf_part_find_flange (part, self->flange);

  if (self->is_setting || !gtk_check_button_get_active (button) || flange == NULL)
    return;
  BfEndRelief reliefs[N_SIDES] = { flange->start_relief, flange->end_relief };
  for (guint side = 0; side < N_SIDES; side++)
    for (guint relief = BF_END_RELIEF_HOLE; relief < N_RELIEFS; relief++)
      if (self->reliefs[side][relief] == button)
        reliefs[side] = (BfEndRelief)relief;
  bf_document_take (
      self->document,
      bf_edit_flange_end_reliefs (part, self->flange, reliefs[SIDE_START], reliefs[SIDE_END]),
      _ ("End relief"), FALSE);
}

/* "Hole" alone does not say whose. */
static void
name_reliefs (BfSideBox *self, guint side)
{
  static const char *const names[N_SIDES][N_RELIEFS] = {
    { [BF_END_RELIEF_HOLE] = N_ ("Hole at the start"),
      [BF_END_RELIEF_NOTCH] = N_ ("Notch at the start") },
    { [BF_END_RELIEF_HOLE] = N_ ("Hole at the end"),
      [BF_END_RELIEF_NOTCH] = N_ ("Notch at the end") },
  };

  for (guint relief = BF_END_RELIEF_HOLE; relief < N_RELIEFS; relief++)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->reliefs[side][relief]),
                                    GTK_ACCESSIBLE_PROPERTY_LABEL, _ (names[side][relief]), -1);
}

/* They matter where a side is set in, and are shown where they are asked. */
static void
show_reliefs (BfSideBox *self, const BfFlange *flange, guint sides)
{
  const BfPart *part = bf_document_get_part (self->document);
  gboolean any = FALSE;

  self->is_setting = TRUE;
  for (guint side = 0; side < N_SIDES; side++)
    {
      BfEndRelief asked = relief_of (flange, side);
      gboolean shown = (sides & (1U << side)) != 0 &&
                       (asked != BF_END_RELIEF_UNSET || size_of (flange, ROW_INSET, side) > 0.0);
      gtk_widget_set_visible (self->relief_boxes[side], shown);
      any |= shown;
      name_reliefs (self, side);
      gtk_check_button_set_active (self->reliefs[side][bf_part_resolve_end_relief (part, asked)],
                                   TRUE);
    }
  gtk_widget_set_visible (self->relief_label, any);
  self->is_setting = FALSE;
}

/* ---- what is seen ------------------------------------------------------------------------- */

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
  show_reliefs (self, shown, sides);
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
add_reliefs (BfSideBox *self, guint side)
{
  static const char *const words[N_RELIEFS] = {
    [BF_END_RELIEF_HOLE] = N_ ("Hole"), [BF_END_RELIEF_NOTCH] = N_ ("Notch")
  };

  self->relief_boxes[side] = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_grid_attach (GTK_GRID (self), self->relief_boxes[side], 1 + (int)side, 1 + ROW_RELIEF, 1, 1);
  for (guint relief = BF_END_RELIEF_HOLE; relief < N_RELIEFS; relief++)
    {
      GtkWidget *choice = gtk_check_button_new_with_label (_ (words[relief]));
      if (relief > BF_END_RELIEF_HOLE)
        gtk_check_button_set_group (GTK_CHECK_BUTTON (choice),
                                    self->reliefs[side][BF_END_RELIEF_HOLE]);
      g_signal_connect_swapped (choice, "toggled", G_CALLBACK (relief_cb), self);
      gtk_box_append (GTK_BOX (self->relief_boxes[side]), choice);
      self->reliefs[side][relief] = GTK_CHECK_BUTTON (choice);
    }
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
  self->relief_label = add_words (self, _ ("Relief"), 0, 1 + ROW_RELIEF);
  gtk_widget_set_valign (self->relief_label, GTK_ALIGN_START);
  gtk_widget_set_margin_top (self->relief_label, 4);
  for (guint side = 0; side < N_SIDES; side++)
    add_reliefs (self, side);
}
