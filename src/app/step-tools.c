/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/step-tools.h"

#include <glib/gi18n.h>

#include "app/button-names.h"
#include "app/children.h"
#include "app/length-row.h"
#include "app/round-window.h"
#include "app/settings.h"
#include "core/edit.h"
#include "core/units.h"

#define SPACING 10
#define MARKS_KEY "benchfold-marks" /* what a button stands for */

struct _BfStepTools
{
  GtkWidget parent_instance;
  BfDocument *document;
  GSettings *settings; /* or NULL */
  GtkWidget *quantity_box, *marks_box, *guide_box;
  GtkSpinButton *quantity;
  GtkWidget *rule;     /* a button for each way that rules in these units are marked */
  GtkWidget *guide;    /* the entry, or NULL */
  BfUnits guide_units; /* of it */
  double mark_step_mm; /* of the work shown */
  gboolean is_setting; /* what changes now was not the person's doing */
};

G_DEFINE_FINAL_TYPE (BfStepTools, bf_step_tools, GTK_TYPE_WIDGET)

/* ---- how many ----------------------------------------------------------------------------- */

/* Behind the words, which are its name, and whose key leads to it. */
static void
add_field (GtkWidget *box, GtkWidget *field)
{
  GtkWidget *words = gtk_widget_get_first_child (box);

  gtk_box_insert_child_after (GTK_BOX (box), field, words);
  gtk_label_set_mnemonic_widget (GTK_LABEL (words), field);
}

static void
quantity_cb (BfStepTools *self)
{
  int quantity = gtk_spin_button_get_value_as_int (self->quantity);
  BfPart *part = bf_document_get_part (self->document);

  if (self->is_setting || part == NULL || quantity < 1)
    return;
  bf_document_take (self->document, bf_edit_quantity (part, (guint)quantity), _ ("How many"), TRUE);
}

/* ---- marks -------------------------------------------------------------------------------- */

static void
marks_cb (BfStepTools *self, GtkToggleButton *button)
{
  if (!self->is_setting && gtk_toggle_button_get_active (button))
    bf_settings_note_marks (self->settings, g_object_get_data (G_OBJECT (button), MARKS_KEY));
}

static void
add_rule_button (BfStepTools *self, const BfRuleMarks *marks)
{
  g_autofree char *label = bf_format_length (marks->step_mm, marks->units);
  /* Translators: how far apart the marks of a rule are: "1/32 in" */
  g_autofree char *name = g_strdup_printf (_ ("Marks every %s"), label);
  GtkWidget *first = gtk_widget_get_first_child (self->rule);
  GtkWidget *button = gtk_toggle_button_new_with_label (label);

  gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (button), (GtkToggleButton *)first);
  gtk_accessible_reset_relation (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_RELATION_LABELLED_BY);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_object_set_data (G_OBJECT (button), MARKS_KEY, (gpointer)marks);
  gtk_box_append (GTK_BOX (self->rule), button);
  g_signal_connect_object (button, "toggled", G_CALLBACK (marks_cb), self, G_CONNECT_SWAPPED);
}

static void
fill_rule (BfStepTools *self, BfUnits units)
{
  const BfRuleMarks *marks;

  bf_widget_drop_children (self->rule);
  for (guint i = 0; (marks = bf_rule_marks_at (i)) != NULL; i++)
    if (marks->units == units)
      add_rule_button (self, marks);
}

/* The button of the marks that the work shown is rounded to is pressed. */
static void
show_rule (BfStepTools *self, BfUnits units)
{
  GtkWidget *first = gtk_widget_get_first_child (self->rule);
  const BfRuleMarks *marks = first != NULL ? g_object_get_data (G_OBJECT (first), MARKS_KEY) : NULL;

  self->is_setting = TRUE;
  if (marks == NULL || marks->units != units)
    fill_rule (self, units);
  for (GtkWidget *child = gtk_widget_get_first_child (self->rule); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      marks = g_object_get_data (G_OBJECT (child), MARKS_KEY);
      if (bf_settings_marks (self->settings, units) == marks)
        gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (child), TRUE);
    }
  self->is_setting = FALSE;
}

static void
round_cb (BfStepTools *self)
{
  bf_round_window_open (GTK_WIDGET (self), self->document, self->mark_step_mm);
}

/* ---- where the guide sits ----------------------------------------------------------------- */

static void
guide_given (double offset_mm, gpointer user_data)
{
  BfStepTools *self = user_data;

  bf_settings_set_guide_offset_mm (self->settings, isnan (offset_mm) ? 0.0 : offset_mm);
}

/* Anew where the units are others: the entry keeps those that it was made with. */
static void
show_guide (BfStepTools *self, BfUnits units)
{
  double offset_mm = bf_settings_guide_offset_mm (self->settings);

  if (self->guide != NULL && self->guide_units == units)
    return;
  if (self->guide != NULL)
    gtk_box_remove (GTK_BOX (self->guide_box), self->guide);
  self->guide = bf_length_row_new (offset_mm, units, "0", guide_given, self);
  self->guide_units = units;
  gtk_editable_set_width_chars (GTK_EDITABLE (self->guide), 8);
  add_field (self->guide_box, self->guide);
}

/* ---- all ---------------------------------------------------------------------------------- */

void
bf_step_tools_show (BfStepTools *self, const BfWork *work, guint step)
{
  const BfPart *part;
  BfStage stage;

  g_return_if_fail (BF_IS_STEP_TOOLS (self) && work != NULL && step < work->steps->len);

  part = work->fold->part;
  stage = bf_work_step (work, step)->stage;
  self->mark_step_mm = work->marking->step_mm;
  self->is_setting = TRUE;
  gtk_spin_button_set_value (self->quantity, part->quantity);
  self->is_setting = FALSE;
  gtk_widget_set_visible (self->quantity_box, stage == BF_STAGE_METAL);
  gtk_widget_set_visible (self->marks_box, stage == BF_STAGE_MARK && bf_work_is_by_hand (work));
  gtk_widget_set_visible (self->guide_box,
                          stage == BF_STAGE_CUT && part->cutting.by == BF_CUTTING_DISC);
  if (gtk_widget_get_visible (self->marks_box))
    show_rule (self, part->units);
  if (gtk_widget_get_visible (self->guide_box))
    show_guide (self, part->units);
  gtk_widget_set_visible (GTK_WIDGET (self),
                          self->document != NULL && (gtk_widget_get_visible (self->quantity_box) ||
                                                     gtk_widget_get_visible (self->marks_box) ||
                                                     gtk_widget_get_visible (self->guide_box)));
}

void
bf_step_tools_set_document (BfStepTools *self, BfDocument *document, GSettings *settings)
{
  g_return_if_fail (BF_IS_STEP_TOOLS (self) && self->document == NULL);

  self->document = g_object_ref (document);
  g_set_object (&self->settings, settings);
}

static GtkWidget *
box_new (BfStepTools *self, const char *words)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, SPACING);

  gtk_box_append (GTK_BOX (box), gtk_label_new_with_mnemonic (words));
  gtk_widget_set_parent (box, GTK_WIDGET (self));
  return box;
}

static void
add_quantity (BfStepTools *self)
{
  GtkWidget *spin = gtk_spin_button_new_with_range (1.0, BF_QUANTITY_MAX, 1.0);

  self->quantity = GTK_SPIN_BUTTON (spin);
  self->quantity_box = box_new (self, _ ("Ho_w many alike"));
  add_field (self->quantity_box, spin);
  g_signal_connect_object (spin, "value-changed", G_CALLBACK (quantity_cb), self,
                           G_CONNECT_SWAPPED);
}

static void
add_marks (BfStepTools *self)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (_ ("_Round marks…"));

  gtk_widget_set_tooltip_text (
      button, _ ("Nudges sizes that do not matter, so that marks land on whole ones."));
  self->marks_box = box_new (self, _ ("Marks of your rule"));
  self->rule = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  gtk_widget_add_css_class (self->rule, "linked");
  gtk_box_append (GTK_BOX (self->marks_box), self->rule);
  gtk_box_append (GTK_BOX (self->marks_box), button);
  bf_name_buttons (button);
  g_signal_connect_object (button, "clicked", G_CALLBACK (round_cb), self, G_CONNECT_SWAPPED);
}

static void
add_guide (BfStepTools *self)
{
  GtkWidget *hint = gtk_label_new (_ ("0: the disc just touches the guide. Yours, for all parts."));

  gtk_widget_add_css_class (hint, "quiet");
  self->guide_box = box_new (self, _ ("From the _guide to the cut"));
  gtk_box_append (GTK_BOX (self->guide_box), hint);
}

static void
bf_step_tools_dispose (GObject *object)
{
  BfStepTools *self = BF_STEP_TOOLS (object);

  bf_widget_drop_children (GTK_WIDGET (self));
  g_clear_object (&self->document);
  g_clear_object (&self->settings);
  G_OBJECT_CLASS (bf_step_tools_parent_class)->dispose (object);
}

static void
bf_step_tools_class_init (BfStepToolsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_step_tools_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
}

static void
bf_step_tools_init (BfStepTools *self)
{
  add_quantity (self);
  add_marks (self);
  add_guide (self);
}
