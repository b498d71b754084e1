/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/work-list.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "make/work-ticks.h"

struct _BfWorkList
{
  GtkWidget parent_instance;
  GtkListBox *list;
  GPtrArray *rows;               /* GtkListBoxRow of each step */
  GPtrArray *ticks;              /* GtkCheckButton of each step */
  GtkLabel *counts[BF_N_STAGES]; /* "2 of 5"; NULL for a stage without steps */
  gboolean is_filling;           /* what changes now was not the person's doing */
};

G_DEFINE_FINAL_TYPE (BfWorkList, bf_work_list, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_STEP_CHOSEN,
  SIGNAL_STEP_TICKED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

/* A step's number, from 1, on its row and its box; 0 on a heading. */
#define STEP_KEY "step"

static guint
step_of (gpointer widget)
{
  return GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (widget), STEP_KEY)) - 1;
}

static void
row_selected_cb (BfWorkList *self, GtkListBoxRow *row)
{
  if (row != NULL && !self->is_filling)
    g_signal_emit (self, signals[SIGNAL_STEP_CHOSEN], 0, step_of (row));
}

static void
tick_cb (GtkCheckButton *tick, BfWorkList *self)
{
  if (!self->is_filling)
    g_signal_emit (self, signals[SIGNAL_STEP_TICKED], 0, step_of (tick),
                   gtk_check_button_get_active (tick));
}

/* "Bend", and room for how much of it is done. */
static GtkWidget *
heading_new (BfWorkList *self, BfStage stage)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *name = gtk_label_new (bf_stage_name (stage));
  GtkWidget *count = gtk_label_new (NULL);

  gtk_widget_add_css_class (name, "stage");
  gtk_widget_add_css_class (count, "quiet");
  gtk_widget_set_hexpand (name, TRUE);
  gtk_label_set_xalign (GTK_LABEL (name), 0.0f);
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), count);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_list_box_row_set_selectable (GTK_LIST_BOX_ROW (row), FALSE);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (row), FALSE);
  gtk_widget_set_focusable (row, FALSE);
  gtk_widget_add_css_class (row, "stage-row");
  self->counts[stage] = GTK_LABEL (count);
  return row;
}

static GtkWidget *
tick_new (BfWorkList *self, const BfWork *work, guint step)
{
  GtkWidget *tick = gtk_check_button_new ();
  /* Translators: names the box to tick at a step of the work; %s is what to do there */
  g_autofree char *name = g_strdup_printf (_ ("Done: %s"), bf_work_step (work, step)->words);

  gtk_widget_set_valign (tick, GTK_ALIGN_START);
  gtk_accessible_update_property (GTK_ACCESSIBLE (tick), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_object_set_data (G_OBJECT (tick), STEP_KEY, GUINT_TO_POINTER (step + 1));
  g_signal_connect_object (tick, "toggled", G_CALLBACK (tick_cb), self, 0);
  g_ptr_array_add (self->ticks, tick);
  return tick;
}

static GtkWidget *
row_new (BfWorkList *self, const BfWork *work, guint step)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *words = gtk_label_new (bf_work_step (work, step)->words);

  gtk_label_set_xalign (GTK_LABEL (words), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_lines (GTK_LABEL (words), 2);
  gtk_label_set_ellipsize (GTK_LABEL (words), PANGO_ELLIPSIZE_END);
  gtk_label_set_width_chars (GTK_LABEL (words), 20);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_box_append (GTK_BOX (box), tick_new (self, work, step));
  gtk_box_append (GTK_BOX (box), words);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  g_object_set_data (G_OBJECT (row), STEP_KEY, GUINT_TO_POINTER (step + 1));
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  bf_work_step (work, step)->words, -1);
  return row;
}

static void
empty (BfWorkList *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->list))) != NULL)
    gtk_list_box_remove (self->list, child);
  g_ptr_array_set_size (self->rows, 0);
  g_ptr_array_set_size (self->ticks, 0);
  for (BfStage stage = BF_STAGE_METAL; stage < BF_N_STAGES; stage++)
    self->counts[stage] = NULL;
}

static void
fill (BfWorkList *self, const BfWork *work)
{
  for (BfStage stage = BF_STAGE_METAL; stage < BF_N_STAGES; stage++)
    {
      if (bf_work_n_steps (work, stage) == 0)
        continue;
      gtk_list_box_append (self->list, heading_new (self, stage));
      for (guint i = work->first[stage]; i < work->first[stage + 1]; i++)
        {
          g_ptr_array_add (self->rows, row_new (self, work, i));
          gtk_list_box_append (self->list, g_ptr_array_index (self->rows, i));
        }
    }
}

/* Whether the rows are those of this work already: then a tick does not cost a person the place
 * where they are. */
static gboolean
shows (const BfWorkList *self, const BfWork *work)
{
  if (self->rows->len != work->steps->len)
    return FALSE;
  for (guint i = 0; i < self->rows->len; i++)
    {
      GtkWidget *box = gtk_list_box_row_get_child (g_ptr_array_index (self->rows, i));
      GtkLabel *words = GTK_LABEL (gtk_widget_get_last_child (box));

      if (!g_str_equal (gtk_label_get_label (words), bf_work_step (work, i)->words))
        return FALSE;
    }
  return TRUE;
}

static void
show_ticks (BfWorkList *self, const BfWork *work)
{
  g_autofree char *blank = bf_work_blank_word (work->fold);

  for (guint i = 0; i < self->ticks->len; i++)
    {
      g_autofree char *word = bf_work_step_word (work, i);

      gtk_check_button_set_active (g_ptr_array_index (self->ticks, i),
                                   bf_made_has (work->fold->part->made, blank, word));
    }
  for (BfStage stage = BF_STAGE_METAL; stage < BF_N_STAGES; stage++)
    if (self->counts[stage] != NULL)
      {
        /* Translators: how many steps of a stage of the work are done, such as 2 of 5 */
        g_autofree char *words = g_strdup_printf (
            _ ("%u of %u"), bf_work_n_ticked (work, stage, blank), bf_work_n_steps (work, stage));

        gtk_label_set_label (self->counts[stage], words);
      }
}

void
bf_work_list_show (BfWorkList *self, const BfWork *work)
{
  g_return_if_fail (BF_IS_WORK_LIST (self) && work != NULL);

  self->is_filling = TRUE;
  if (!shows (self, work))
    {
      empty (self);
      fill (self, work);
    }
  show_ticks (self, work);
  self->is_filling = FALSE;
}

/* The toolkit scrolls to what gets the focus; the focus itself stays where it is. */
static void
scroll_to (BfWorkList *self, GtkWidget *row)
{
  GtkAdjustment *adjustment = gtk_list_box_get_adjustment (self->list);
  graphene_rect_t place;

  if (adjustment == NULL || !gtk_widget_compute_bounds (row, GTK_WIDGET (self->list), &place))
    return;
  gtk_adjustment_clamp_page (adjustment, place.origin.y, place.origin.y + place.size.height);
}

void
bf_work_list_choose (BfWorkList *self, int step)
{
  GtkListBoxRow *row;

  g_return_if_fail (BF_IS_WORK_LIST (self) && step < (int)self->rows->len);

  self->is_filling = TRUE;
  row = step >= 0 ? g_ptr_array_index (self->rows, (guint)step) : NULL;
  gtk_list_box_select_row (self->list, row);
  if (row != NULL)
    scroll_to (self, GTK_WIDGET (row));
  self->is_filling = FALSE;
}

static void
bf_work_list_dispose (GObject *object)
{
  BfWorkList *self = BF_WORK_LIST (object);

  g_clear_pointer (&self->rows, g_ptr_array_unref);
  g_clear_pointer (&self->ticks, g_ptr_array_unref);
  bf_widget_drop_children (GTK_WIDGET (self));
  G_OBJECT_CLASS (bf_work_list_parent_class)->dispose (object);
}

static void
bf_work_list_class_init (BfWorkListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_work_list_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "worklist");
  signals[SIGNAL_STEP_CHOSEN] = g_signal_new ("step-chosen", BF_TYPE_WORK_LIST, G_SIGNAL_RUN_LAST,
                                              0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_UINT);
  signals[SIGNAL_STEP_TICKED] =
      g_signal_new ("step-ticked", BF_TYPE_WORK_LIST, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                    G_TYPE_NONE, 2, G_TYPE_UINT, G_TYPE_BOOLEAN);
}

static void
bf_work_list_init (BfWorkList *self)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  self->rows = g_ptr_array_new ();
  self->ticks = g_ptr_array_new ();
  self->list = GTK_LIST_BOX (gtk_list_box_new ());
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("The work, step by step"), -1);
  g_signal_connect_object (self->list, "row-selected", G_CALLBACK (row_selected_cb), self,
                           G_CONNECT_SWAPPED);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), GTK_WIDGET (self->list));
  gtk_widget_set_vexpand (scrolled, TRUE);
  gtk_widget_set_parent (scrolled, GTK_WIDGET (self));
}
