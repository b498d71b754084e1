/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/kept-bar.h"

#include <glib/gi18n.h>

struct _BfKeptBar
{
  GtkBox parent_instance;
  GPtrArray *left; /* what is still to be offered; the first is offered now. NULL: not looked yet */
  BfKeptWork *thrown; /* what can still be brought back, or NULL */

  GtkLabel *label;
  GtkWidget *open_button;
  GtkWidget *throw_button;
  GtkWidget *back_button;
};

G_DEFINE_FINAL_TYPE (BfKeptBar, bf_kept_bar, GTK_TYPE_BOX)

enum
{
  SIGNAL_TAKEN,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

/* The hour alone for today's work, else the day too. */
static char *
describe_time (BfKeptWork *work)
{
  g_autoptr (GDateTime) time = bf_kept_work_get_time (work);
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();

  if (time == NULL)
    return g_strdup ("?");
  gboolean today = g_date_time_get_year (time) == g_date_time_get_year (now) &&
                   g_date_time_get_day_of_year (time) == g_date_time_get_day_of_year (now);
  return g_date_time_format (time, today ? "%R" : "%x %R");
}

/* NULL where it can't be read: then it is not offered, and left where it is. */
static char *
describe (BfKeptWork *work)
{
  g_autoptr (BfPart) part = bf_kept_work_read (work, NULL);
  g_autofree char *time = describe_time (work);
  const char *name;

  if (part == NULL)
    return NULL;
  name = part->name != NULL && part->name[0] != '\0' ? part->name : _ ("New part");
  /* Translators: a part's name, and the hour (or day and hour) at which it was kept */
  return g_strdup_printf (_ ("Work on “%s” from %s was kept."), name, time);
}

static void
show_buttons (BfKeptBar *self, gboolean thrown)
{
  gtk_widget_set_visible (self->open_button, !thrown);
  gtk_widget_set_visible (self->throw_button, !thrown);
  gtk_widget_set_visible (self->back_button, thrown);
}

static void
show_next (BfKeptBar *self)
{
  g_autofree char *words = NULL;

  while (self->left->len > 0 && (words = describe (g_ptr_array_index (self->left, 0))) == NULL)
    g_ptr_array_remove_index (self->left, 0);
  if (words != NULL)
    gtk_label_set_label (self->label, words);
  show_buttons (self, FALSE);
  gtk_widget_set_visible (GTK_WIDGET (self), words != NULL);
}

static void
drop_thrown (BfKeptBar *self)
{
  if (self->thrown != NULL)
    bf_kept_work_remove (self->thrown);
  g_clear_pointer (&self->thrown, bf_kept_work_unref);
}

static void
open_cb (BfKeptBar *self)
{
  g_autoptr (BfKeptWork) work = bf_kept_work_ref (g_ptr_array_index (self->left, 0));

  g_ptr_array_remove_index (self->left, 0);
  show_next (self);
  g_signal_emit (self, signals[SIGNAL_TAKEN], 0, work);
}

static void
throw_cb (BfKeptBar *self)
{
  self->thrown = bf_kept_work_ref (g_ptr_array_index (self->left, 0));
  g_ptr_array_remove_index (self->left, 0);
  gtk_label_set_label (self->label, _ ("It was thrown away."));
  show_buttons (self, TRUE);
}

static void
back_cb (BfKeptBar *self)
{
  g_ptr_array_insert (self->left, 0, g_steal_pointer (&self->thrown));
  show_next (self);
}

/* Closing the line leaves all that it still offers for the next run. */
static void
close_cb (BfKeptBar *self)
{
  gboolean thrown = self->thrown != NULL;

  drop_thrown (self);
  if (!thrown)
    g_ptr_array_set_size (self->left, 0);
  show_next (self);
}

static void
bf_kept_bar_dispose (GObject *object)
{
  BfKeptBar *self = BF_KEPT_BAR (object);

  drop_thrown (self);
  g_clear_pointer (&self->left, g_ptr_array_unref);
  G_OBJECT_CLASS (bf_kept_bar_parent_class)->dispose (object);
}

static void
bf_kept_bar_class_init (BfKeptBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_kept_bar_dispose;
  signals[SIGNAL_TAKEN] = g_signal_new ("taken", BF_TYPE_KEPT_BAR, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                        NULL, G_TYPE_NONE, 1, G_TYPE_POINTER);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/kept-bar.ui");
  gtk_widget_class_bind_template_child (widget_class, BfKeptBar, label);
  gtk_widget_class_bind_template_child (widget_class, BfKeptBar, open_button);
  gtk_widget_class_bind_template_child (widget_class, BfKeptBar, throw_button);
  gtk_widget_class_bind_template_child (widget_class, BfKeptBar, back_button);
  gtk_widget_class_bind_template_callback (widget_class, open_cb);
  gtk_widget_class_bind_template_callback (widget_class, throw_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_cb);
  gtk_widget_class_bind_template_callback (widget_class, close_cb);
}

static void
bf_kept_bar_init (BfKeptBar *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
bf_kept_bar_look (BfKeptBar *self)
{
  g_return_if_fail (BF_IS_KEPT_BAR (self));

  if (self->left != NULL)
    return;
  self->left = bf_kept_work_find ();
  show_next (self);
}
