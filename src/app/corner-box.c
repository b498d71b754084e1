/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/corner-box.h"

#include <glib/gi18n.h>

#include "app/relief-box.h"
#include "app/size-field.h"
#include "core/edit.h"
#include "fold/corner-here.h"
#include "fold/free-corners.h"

#define N_JOINS (BF_JOIN_FOLDED + 1)
#define N_FINISHES (BF_FINISH_CHAMFER + 1)

struct _BfCornerBox
{
  GtkBox parent_instance;
  BfDocument *document;
  char *on; /* whose corner it is, and which */
  guint at;
  gboolean is_setting; /* choices are ticked by us, not by the person */

  GtkLabel *join_heading, *finish_heading;
  GtkCheckButton *joins[N_JOINS];
  BfReliefBox *relief;
  GtkCheckButton *finishes[N_FINISHES]; /* none for the unset one: it is sharp */
  GtkWidget *size;
};

G_DEFINE_FINAL_TYPE (BfCornerBox, bf_corner_box, GTK_TYPE_BOX)

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
        bf_document_take (self->document,
                          bf_edit_corner_join (part, self->on, self->at, (BfJoin)join),
                          _ ("Close a corner"), FALSE);
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
        bf_document_take (self->document,
                          bf_edit_corner_finish (part, self->on, self->at, (BfFinish)finish, NAN),
                          _ ("Finish a corner"), FALSE);
        return;
      }
}

static void
size_set_cb (BfCornerBox *self, double size_mm, gboolean stepped)
{
  const BfPart *part = bf_document_get_part (self->document);
  const BfCorner *asked = bf_part_find_finish (part, self->on, self->at);

  if (asked != NULL)
    bf_document_take (self->document,
                      bf_edit_corner_finish (part, self->on, self->at, asked->finish, size_mm),
                      _ ("Size of a corner"), stepped);
}

/* ---- what is seen ------------------------------------------------------------------------- */

/* A join that cannot be made there is not offered, but shown where it is asked. */
static void
show_joins (BfCornerBox *self, const BfPart *part, const BfCornerHere *here)
{
  const BfCorner *asked = bf_part_find_corner (part, self->on, self->at);
  guint now = asked != NULL ? asked->join : BF_JOIN_UNSET;

  gtk_widget_set_visible (GTK_WIDGET (self->join_heading), here->joins != 0);
  for (guint i = 0; i < N_JOINS; i++)
    gtk_widget_set_visible (GTK_WIDGET (self->joins[i]),
                            here->joins != 0 && ((here->joins & (1U << i)) != 0 || i == now));
  if (here->joins == 0)
    return;
  /* Translators: names of two walls */
  g_autofree char *before = g_strdup_printf (_ ("%s covers %s"), here->before, here->after);
  g_autofree char *after = g_strdup_printf (_ ("%s covers %s"), here->after, here->before);
  gtk_check_button_set_label (self->joins[BF_JOIN_COVERS_BEFORE], before);
  gtk_check_button_set_label (self->joins[BF_JOIN_COVERS_AFTER], after);
  gtk_check_button_set_active (self->joins[now], TRUE);
}

static void
show_finish (BfCornerBox *self, const BfPart *part, const BfCornerHere *here)
{
  const BfCorner *asked = bf_part_find_finish (part, self->on, self->at);
  BfFinish finish = asked != NULL ? MAX (asked->finish, BF_FINISH_SHARP) : BF_FINISH_SHARP;
  gboolean has_size = here->is_free && finish > BF_FINISH_SHARP;
  BfSizeField *size = BF_SIZE_FIELD (self->size);

  gtk_widget_set_visible (GTK_WIDGET (self->finish_heading), here->is_free);
  for (guint i = BF_FINISH_SHARP; i < N_FINISHES; i++)
    gtk_widget_set_visible (GTK_WIDGET (self->finishes[i]), here->is_free);
  gtk_widget_set_visible (self->size, has_size);
  if (here->is_free)
    gtk_check_button_set_active (self->finishes[finish], TRUE);
  if (!has_size)
    return;
  bf_size_field_set_usual (size, bf_usual_finish_mm (part), part->units);
  bf_size_field_show (size, asked->finish_size_mm, part->units, NULL);
}

gboolean
bf_corner_box_show (BfCornerBox *self, BfDocument *document, BfSelection selection)
{
  g_return_val_if_fail (BF_IS_CORNER_BOX (self), FALSE);

  const BfFold *fold = bf_document_get_fold (document);
  BfCornerHere here;
  gboolean any = fold != NULL && bf_selection_is_corner (selection) &&
                 bf_corner_here (fold, bf_fold_face (fold, (guint)selection.face)->id,
                                 bf_selection_corner_at (selection), &here);

  gtk_widget_set_visible (GTK_WIDGET (self), any);
  if (!any)
    return FALSE;
  g_set_object (&self->document, document);
  g_free (self->on);
  self->on = g_strdup (bf_fold_face (fold, (guint)selection.face)->id);
  self->at = bf_selection_corner_at (selection);
  self->is_setting = TRUE;
  show_joins (self, fold->asked, &here);
  show_finish (self, fold->asked, &here);
  self->is_setting = FALSE;
  gtk_widget_set_visible (GTK_WIDGET (self->relief), here.before != NULL);
  if (here.before != NULL)
    bf_relief_box_show (self->relief, document, self->on, self->at, &here);
  return TRUE;
}

/* ---- the widget --------------------------------------------------------------------------- */

static void
bf_corner_box_dispose (GObject *object)
{
  BfCornerBox *self = BF_CORNER_BOX (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->on, g_free);
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

static GtkLabel *
add_heading (BfCornerBox *self, const char *words)
{
  GtkWidget *heading = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (heading), 0.0F);
  gtk_widget_add_css_class (heading, "quiet");
  gtk_box_append (GTK_BOX (self), heading);
  return GTK_LABEL (heading);
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
  self->join_heading = add_heading (self, _ ("How the corner closes"));
  for (guint i = 0; i < N_JOINS; i++)
    self->joins[i] = add_choice (self, self->joins[0], joins[i], G_CALLBACK (join_cb));
  self->relief = g_object_new (BF_TYPE_RELIEF_BOX, NULL);
  gtk_box_append (GTK_BOX (self), GTK_WIDGET (self->relief));
  self->finish_heading = add_heading (self, _ ("How the corner is finished"));
  for (guint i = BF_FINISH_SHARP; i < N_FINISHES; i++)
    self->finishes[i] =
        add_choice (self, self->finishes[BF_FINISH_SHARP], finishes[i], G_CALLBACK (finish_cb));
  self->size = bf_size_field_new (BF_SIZE_FIELD_FINE, _ ("Size of the corner"));
  gtk_widget_set_halign (self->size, GTK_ALIGN_START);
  g_signal_connect_swapped (self->size, "size-set", G_CALLBACK (size_set_cb), self);
  gtk_box_append (GTK_BOX (self), self->size);
}
