/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/step-pane.h"

#include <glib/gi18n.h>

#include "app/button-names.h"
#include "app/children.h"
#include "app/step-picture.h"
#include "app/step-tools.h"
#include "fold/bend-order.h"

struct _BfStepPane
{
  GtkWidget parent_instance;
  GtkLabel *place_label, *words_label, *caution_label;
  BfStepPicture *picture;
  BfStepTools *tools;
  GtkFlowBox *numbers_box;
  GtkWidget *caution_box, *back_button, *enlarge_button;
  GtkButton *more_button;
  gboolean is_for_reading;
};

G_DEFINE_FINAL_TYPE (BfStepPane, bf_step_pane, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_DONE,
  SIGNAL_BACK,
  SIGNAL_ENLARGE,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static void
done_cb (BfStepPane *self)
{
  g_signal_emit (self, signals[SIGNAL_DONE], 0);
}

static void
back_cb (BfStepPane *self)
{
  g_signal_emit (self, signals[SIGNAL_BACK], 0);
}

static void
enlarge_cb (BfStepPane *self)
{
  g_signal_emit (self, signals[SIGNAL_ENLARGE], 0);
}

/* "width" small above "276.2 mm". */
static GtkWidget *
number_new (const BfWorkNumber *number)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *label = gtk_label_new (number->label), *value = gtk_label_new (number->value);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_xalign (GTK_LABEL (value), 0.0f);
  gtk_widget_add_css_class (label, "quiet");
  gtk_widget_add_css_class (value, "step-number");
  gtk_box_append (GTK_BOX (box), label);
  gtk_box_append (GTK_BOX (box), value);
  return box;
}

static void
show_numbers (BfStepPane *self, const BfWorkStep *step)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->numbers_box))) != NULL)
    gtk_flow_box_remove (self->numbers_box, child);
  for (guint i = 0; i < step->n_numbers; i++)
    {
      gtk_flow_box_append (self->numbers_box, number_new (&step->numbers[i]));
      gtk_widget_set_focusable (
          GTK_WIDGET (gtk_flow_box_get_child_at_index (self->numbers_box, (int)i)), FALSE);
    }
  gtk_widget_set_visible (GTK_WIDGET (self->numbers_box), step->n_numbers > 0);
}

static void
show_place (BfStepPane *self, const BfWork *work, guint at)
{
  BfStage stage = bf_work_step (work, at)->stage;
  /* Translators: where one is in the work: the stage, which of its steps, of how many */
  g_autofree char *words =
      g_strdup_printf (_ ("%s, step %u of %u"), bf_stage_name (stage), at - work->first[stage] + 1,
                       bf_work_n_steps (work, stage));

  gtk_label_set_label (self->place_label, words);
}

/* The name of the flange whose bend a step shows. */
static const char *
flange_of (const BfWork *work, const BfWorkStep *step)
{
  const BfBendStep *turn = bf_fold_bend_step (work->fold, (guint)step->at);

  return bf_fold_bend (work->fold, turn->bend)->flange;
}

/* target: NULL for none. Name and target are never seen apart: half of the old and half of the new
 * would be an action asked for what it does not take. */
static void
set_action (GtkActionable *button, const char *name, GVariant *target)
{
  gtk_actionable_set_action_name (button, NULL);
  gtk_actionable_set_action_target_value (button, target);
  gtk_actionable_set_action_name (button, name);
}

static void
show_more (BfStepPane *self, const BfWork *work, const BfWorkStep *step)
{
  GtkActionable *button = GTK_ACTIONABLE (self->more_button);

  gtk_widget_set_visible (GTK_WIDGET (button),
                          step->more != BF_MORE_NOTHING && !self->is_for_reading);
  if (step->more == BF_MORE_SUMS)
    {
      gtk_button_set_label (self->more_button, _ ("Show the s_um…"));
      set_action (button, "win.sums", g_variant_new_string (flange_of (work, step)));
    }
  else if (step->more == BF_MORE_MEASURED)
    {
      gtk_button_set_label (self->more_button, _ ("What came o_ut…"));
      set_action (button, "win.first-made", NULL);
    }
  bf_name_buttons (GTK_WIDGET (button));
}

void
bf_step_pane_show (BfStepPane *self, const BfWork *work, guint at)
{
  const BfWorkStep *step;

  g_return_if_fail (BF_IS_STEP_PANE (self) && work != NULL && at < work->steps->len);

  step = bf_work_step (work, at);
  show_place (self, work, at);
  gtk_label_set_label (self->words_label, step->words);
  bf_step_picture_show (self->picture, work, at);
  show_numbers (self, step);
  bf_step_tools_show (self->tools, work, at);
  gtk_label_set_label (self->caution_label, step->caution != NULL ? step->caution : "");
  gtk_widget_set_visible (self->caution_box, step->caution != NULL);
  gtk_widget_set_sensitive (self->back_button, at > 0);
  show_more (self, work, step);
}

void
bf_step_pane_set_document (BfStepPane *self, BfDocument *document, GSettings *settings)
{
  g_return_if_fail (BF_IS_STEP_PANE (self));

  bf_step_tools_set_document (self->tools, document, settings);
}

void
bf_step_pane_set_for_reading (BfStepPane *self)
{
  g_return_if_fail (BF_IS_STEP_PANE (self));

  gtk_widget_set_visible (self->enlarge_button, FALSE);
  self->is_for_reading = TRUE;
}

static void
bf_step_pane_dispose (GObject *object)
{
  bf_widget_drop_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (bf_step_pane_parent_class)->dispose (object);
}

static void
bf_step_pane_class_init (BfStepPaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_step_pane_dispose;
  signals[SIGNAL_DONE] = g_signal_new ("done", BF_TYPE_STEP_PANE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                       NULL, G_TYPE_NONE, 0);
  signals[SIGNAL_BACK] = g_signal_new ("back", BF_TYPE_STEP_PANE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                       NULL, G_TYPE_NONE, 0);
  signals[SIGNAL_ENLARGE] = g_signal_new ("enlarge", BF_TYPE_STEP_PANE, G_SIGNAL_RUN_LAST, 0, NULL,
                                          NULL, NULL, G_TYPE_NONE, 0);
  g_type_ensure (BF_TYPE_STEP_PICTURE);
  g_type_ensure (BF_TYPE_STEP_TOOLS);
  gtk_widget_class_set_css_name (widget_class, "steppane");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/step-pane.ui");
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, place_label);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, words_label);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, caution_label);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, caution_box);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, picture);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, numbers_box);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, tools);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, back_button);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, enlarge_button);
  gtk_widget_class_bind_template_child (widget_class, BfStepPane, more_button);
  gtk_widget_class_bind_template_callback (widget_class, done_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_cb);
  gtk_widget_class_bind_template_callback (widget_class, enlarge_cb);
}

static void
bf_step_pane_init (BfStepPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
