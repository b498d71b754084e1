/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/corner-box.h"

#include <glib/gi18n.h>

#include "app/size-field.h"
#include "core/edit.h"
#include "fold/free-corners.h"

#define N_JOINS (BF_JOIN_FOLDED + 1)
#define N_FINISHES (BF_FINISH_CHAMFER + 1)

struct _BfCornerBox
{
  GtkBox parent_instance;
  BfDocument *document;
  guint point;
  gboolean is_setting; /* choices are ticked by us, not by the person */

  GtkLabel *heading;
  GtkCheckButton *joins[N_JOINS];
  GtkCheckButton *finishes[N_FINISHES]; /* none for the unset one: it is sharp */
  GtkWidget *size;
};

G_DEFINE_FINAL_TYPE (BfCornerBox, bf_corner_box, GTK_TYPE_BOX)

/* ---- the part ----------------------------------------------------------------------------- */

static const BfFlange *
wall_on (const BfPart *part, guint edge)
{
  BfEdge at = { "base", BF_EDGE_INDEX, edge % bf_part_n_points (part) };

  return bf_part_flange_at (part, &at);
}

static gboolean
is_convex (const BfPart *part, guint point)
{
  guint n = bf_part_n_points (part);
  BfVec2 p = bf_part_point (part, point);

  return bf_vec2_cross (bf_vec2_sub (p, bf_part_point (part, point + n - 1)),
                        bf_vec2_sub (bf_part_point (part, point + 1), p)) > 0.0;
}

/* walls: the one that ends at the point and the one that begins there, NULL for none. */
static gboolean
can_join (const BfPart *part, guint point, const BfFlange *walls[2])
{
  walls[0] = wall_on (part, point + bf_part_n_points (part) - 1);
  walls[1] = wall_on (part, point);
  return walls[0] != NULL && walls[1] != NULL && walls[0]->turn == walls[1]->turn &&
         is_convex (part, point);
}

/* part: (transfer full). */
static void
apply (BfCornerBox *self, BfPart *part, const char *name, const char *row)
{
  bf_document_apply (self->document, part, name, row);
  bf_part_unref (part);
}

/* ---- the person's choices ----------------------------------------------------------------- */

static void
join_cb (BfCornerBox *self, GtkCheckButton *button)
{
  const BfPart *part;

  if (self->is_setting || !gtk_check_button_get_active (button))
    return;
  part = bf_document_get_part (self->document);
  for (guint join = 0; join < N_JOINS; join++)
    if (self->joins[join] == button)
      {
        apply (self, bf_edit_corner_join (part, "base", self->point, (BfJoin)join),
               _ ("Close a corner"), NULL);
        return;
      }
}

static void
finish_cb (BfCornerBox *self, GtkCheckButton *button)
{
  const BfPart *part;

  if (self->is_setting || !gtk_check_button_get_active (button))
    return;
  part = bf_document_get_part (self->document);
  for (guint finish = BF_FINISH_SHARP; finish < N_FINISHES; finish++)
    if (self->finishes[finish] == button)
      {
        apply (self, bf_edit_corner_finish (part, "base", self->point, (BfFinish)finish, NAN),
               _ ("Finish a corner"), NULL);
        return;
      }
}

static void
size_set_cb (BfCornerBox *self, double size_mm, gboolean stepped)
{
  const BfPart *part = bf_document_get_part (self->document);
  const BfCorner *asked = bf_part_find_finish (part, "base", self->point);

  if (asked != NULL && size_mm > 0.0)
    apply (self, bf_edit_corner_finish (part, "base", self->point, asked->finish, size_mm),
           _ ("Size of a corner"), stepped ? "corner-size" : NULL);
}

/* ---- what is seen ------------------------------------------------------------------------- */

static void
show_joins (BfCornerBox *self, const BfPart *part, const BfFlange *walls[2])
{
  const BfCorner *asked = bf_part_find_corner (part, "base", self->point);
  /* Translators: names of two walls */
  g_autofree char *before = g_strdup_printf (_ ("%s covers %s"), walls[0]->id, walls[1]->id);
  g_autofree char *after = g_strdup_printf (_ ("%s covers %s"), walls[1]->id, walls[0]->id);

  gtk_label_set_label (self->heading, _ ("How the corner closes"));
  gtk_check_button_set_label (self->joins[BF_JOIN_COVERS_BEFORE], before);
  gtk_check_button_set_label (self->joins[BF_JOIN_COVERS_AFTER], after);
  gtk_check_button_set_active (self->joins[asked != NULL ? asked->join : BF_JOIN_UNSET], TRUE);
}

static void
show_finish (BfCornerBox *self, const BfPart *part)
{
  const BfCorner *asked = bf_part_find_finish (part, "base", self->point);
  BfFinish finish = asked != NULL ? asked->finish : BF_FINISH_SHARP;

  gtk_label_set_label (self->heading, _ ("How the corner is finished"));
  gtk_check_button_set_active (self->finishes[MAX (finish, BF_FINISH_SHARP)], TRUE);
  gtk_widget_set_visible (self->size, finish > BF_FINISH_SHARP);
  if (finish > BF_FINISH_SHARP)
    bf_size_field_show (BF_SIZE_FIELD (self->size), bf_finish_size_mm (part, asked), part->units,
                        NULL);
}

gboolean
bf_corner_box_show (BfCornerBox *self, BfDocument *document, BfSelection selection)
{
  const BfPart *part = bf_document_get_part (document);
  const BfFlange *walls[2] = { NULL, NULL };
  gboolean is_point = bf_selection_is_point (selection), joins, is_free;

  g_return_val_if_fail (BF_IS_CORNER_BOX (self), FALSE);

  g_set_object (&self->document, document);
  self->point = is_point ? bf_selection_point_index (selection) : 0;
  joins = is_point && can_join (part, self->point, walls);
  is_free = is_point && walls[0] == NULL && walls[1] == NULL;
  gtk_widget_set_visible (GTK_WIDGET (self), joins || is_free);
  for (guint i = 0; i < N_JOINS; i++)
    gtk_widget_set_visible (GTK_WIDGET (self->joins[i]), joins);
  for (guint i = BF_FINISH_SHARP; i < N_FINISHES; i++)
    gtk_widget_set_visible (GTK_WIDGET (self->finishes[i]), is_free);
  gtk_widget_set_visible (self->size, FALSE);
  self->is_setting = TRUE;
  if (joins)
    show_joins (self, part, walls);
  else if (is_free)
    show_finish (self, part);
  self->is_setting = FALSE;
  return joins || is_free;
}

/* ---- the widget --------------------------------------------------------------------------- */

static void
bf_corner_box_dispose (GObject *object)
{
  g_clear_object (&BF_CORNER_BOX (object)->document);
  G_OBJECT_CLASS (bf_corner_box_parent_class)->dispose (object);
}

static void
bf_corner_box_class_init (BfCornerBoxClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_corner_box_dispose;
}

static GtkCheckButton *
add_choice (BfCornerBox *self, GtkCheckButton *group, const char *words, GCallback chosen_cb)
{
  GtkWidget *choice = gtk_check_button_new_with_label (words);

  if (group != NULL)
    gtk_check_button_set_group (GTK_CHECK_BUTTON (choice), group);
  g_signal_connect_swapped (choice, "toggled", chosen_cb, self);
  gtk_box_append (GTK_BOX (self), choice);
  return GTK_CHECK_BUTTON (choice);
}

static void
bf_corner_box_init (BfCornerBox *self)
{
  const char *const joins[N_JOINS] = {
    [BF_JOIN_UNSET] = _ ("Like all corners"),
    [BF_JOIN_OPEN] = _ ("Open, by the gap"),
    [BF_JOIN_COVERS_BEFORE] = "",
    [BF_JOIN_COVERS_AFTER] = "",
    [BF_JOIN_UNTRIMMED] = _ ("Untrimmed"),
    [BF_JOIN_TAB] = _ ("With a tab"),
    [BF_JOIN_FOLDED] = _ ("Folded double"),
  };
  const char *const finishes[N_FINISHES] = { [BF_FINISH_SHARP] = _ ("Sharp"),
                                             [BF_FINISH_ROUND] = _ ("Rounded"),
                                             [BF_FINISH_CHAMFER] = _ ("Cut off") };

  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  self->heading = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_xalign (self->heading, 0.0F);
  gtk_widget_add_css_class (GTK_WIDGET (self->heading), "quiet");
  gtk_box_append (GTK_BOX (self), GTK_WIDGET (self->heading));
  for (guint i = 0; i < N_JOINS; i++)
    self->joins[i] = add_choice (self, self->joins[0], joins[i], G_CALLBACK (join_cb));
  for (guint i = BF_FINISH_SHARP; i < N_FINISHES; i++)
    self->finishes[i] =
        add_choice (self, self->finishes[BF_FINISH_SHARP], finishes[i], G_CALLBACK (finish_cb));
  self->size = bf_size_field_new (BF_SIZE_FIELD_LENGTH, _ ("Size of the corner"));
  gtk_widget_set_halign (self->size, GTK_ALIGN_START);
  g_signal_connect_swapped (self->size, "size-set", G_CALLBACK (size_set_cb), self);
  gtk_box_append (GTK_BOX (self), self->size);
}
