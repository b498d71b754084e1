/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/thing-size-box.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/jaw-picture.h"

#define N_KINDS 3

struct _BfThingSizeBox
{
  GtkWidget parent_instance;
  GtkWidget *title;
  GtkWidget *field;
  GtkWidget *kinds_box;
  GtkWidget *kinds[N_KINDS];
  gboolean showing;
};

G_DEFINE_FINAL_TYPE (BfThingSizeBox, bf_thing_size_box, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_SIZE_SET,
  SIGNAL_KIND_SET,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static void
size_set_cb (BfThingSizeBox *self, double size_mm)
{
  g_signal_emit (self, signals[SIGNAL_SIZE_SET], 0, size_mm);
}

static void
kind_toggled_cb (BfThingSizeBox *self, GtkToggleButton *button)
{
  if (self->showing || !gtk_toggle_button_get_active (button))
    return;
  for (int i = 0; i < N_KINDS; i++)
    if (self->kinds[i] == GTK_WIDGET (button))
      g_signal_emit (self, signals[SIGNAL_KIND_SET], 0, i);
}

static void
bf_thing_size_box_dispose (GObject *object)
{
  bf_widget_drop_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (bf_thing_size_box_parent_class)->dispose (object);
}

static void
bf_thing_size_box_class_init (BfThingSizeBoxClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_thing_size_box_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "thingsize");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
  signals[SIGNAL_SIZE_SET] = g_signal_new ("size-set", BF_TYPE_THING_SIZE_BOX, G_SIGNAL_RUN_LAST, 0,
                                           NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_DOUBLE);
  signals[SIGNAL_KIND_SET] = g_signal_new ("kind-set", BF_TYPE_THING_SIZE_BOX, G_SIGNAL_RUN_LAST, 0,
                                           NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_INT);
}

static GtkWidget *
kind_new (BfThingSizeBox *self, BfSizeKind kind)
{
  GtkWidget *button = gtk_toggle_button_new ();
  const char *name = bf_size_kind_name (kind);

  gtk_button_set_child (GTK_BUTTON (button), bf_jaw_picture_new (kind));
  gtk_widget_set_tooltip_text (button, name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  if (kind != BF_SIZE_OUTSIDE)
    gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (button), GTK_TOGGLE_BUTTON (self->kinds[0]));
  g_signal_connect_object (button, "toggled", G_CALLBACK (kind_toggled_cb), self,
                           G_CONNECT_SWAPPED);
  return button;
}

static void
bf_thing_size_box_init (BfThingSizeBox *self)
{
  GtkWidget *widget = GTK_WIDGET (self);
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (widget);

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 4);
  self->title = gtk_label_new (NULL);
  gtk_widget_set_parent (self->title, widget);
  self->field = bf_size_field_new (BF_SIZE_FIELD_LENGTH, "");
  gtk_widget_set_halign (self->field, GTK_ALIGN_CENTER);
  gtk_entry_set_activates_default (GTK_ENTRY (self->field), TRUE);
  gtk_widget_set_parent (self->field, widget);
  self->kinds_box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  gtk_widget_add_css_class (self->kinds_box, "linked");
  gtk_widget_set_halign (self->kinds_box, GTK_ALIGN_CENTER);
  gtk_widget_set_parent (self->kinds_box, widget);
  for (int i = 0; i < N_KINDS; i++)
    {
      self->kinds[i] = kind_new (self, (BfSizeKind)i);
      gtk_box_append (GTK_BOX (self->kinds_box), self->kinds[i]);
    }
  g_signal_connect_object (self->field, "size-set", G_CALLBACK (size_set_cb), self,
                           G_CONNECT_SWAPPED);
}

GtkWidget *
bf_thing_size_box_new (void)
{
  return g_object_new (BF_TYPE_THING_SIZE_BOX, NULL);
}

void
bf_thing_size_box_show (BfThingSizeBox *self, double size_mm, BfSizeKind kind, BfUnits units)
{
  g_return_if_fail (BF_IS_THING_SIZE_BOX (self));

  self->showing = TRUE;
  bf_size_field_show (BF_SIZE_FIELD (self->field), size_mm, units, NULL);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->kinds[kind]), TRUE);
  self->showing = FALSE;
}

void
bf_thing_size_box_set_name (BfThingSizeBox *self, const char *name, gboolean counts)
{
  g_return_if_fail (BF_IS_THING_SIZE_BOX (self));

  gtk_label_set_label (GTK_LABEL (self->title), name);
  bf_size_field_set_name (BF_SIZE_FIELD (self->field), name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_set_visible (self->kinds_box, counts);
}

BfSizeField *
bf_thing_size_box_get_field (BfThingSizeBox *self)
{
  g_return_val_if_fail (BF_IS_THING_SIZE_BOX (self), NULL);
  return BF_SIZE_FIELD (self->field);
}

GtkWidget *
bf_thing_size_box_get_kinds (BfThingSizeBox *self)
{
  g_return_val_if_fail (BF_IS_THING_SIZE_BOX (self), NULL);
  return self->kinds_box;
}
