/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/size-field.h"

#include <glib/gi18n.h>

#include "core/compare.h"
#include "core/units.h"

struct _BfSizeField
{
  GtkEntry parent_instance;
  BfSizeReading reading;
  char *material;  /* the reading's */
  double size;     /* NAN: the usual one */
  double usual;    /* NAN: it may not be empty */
  gboolean shown;  /* a size has been shown since */
  gboolean typing; /* the words are the person's, not the size's */
  GtkWidget *hint; /* a popover with a label; NULL until there is something to say */
  GtkWidget *hint_label;
};

G_DEFINE_FINAL_TYPE (BfSizeField, bf_size_field, GTK_TYPE_ENTRY)

enum
{
  SIGNAL_SIZE_SET,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

#define STEP_MM 1.0
#define STEP_IN (BF_MM_PER_INCH / 16.0)
#define STEP_DEG 1.0

static void
hide_hint (BfSizeField *self)
{
  if (self->hint != NULL)
    gtk_popover_popdown (GTK_POPOVER (self->hint));
}

static void
show_size (BfSizeField *self)
{
  g_autofree char *words =
      isnan (self->size) ? g_strdup ("") : bf_size_words (self->size, &self->reading);

  if (!g_str_equal (gtk_editable_get_text (GTK_EDITABLE (self)), words))
    gtk_editable_set_text (GTK_EDITABLE (self), words);
  self->typing = FALSE;
  gtk_widget_remove_css_class (GTK_WIDGET (self), "error");
  hide_hint (self);
}

static gboolean
parse (BfSizeField *self, double *size, GError **error)
{
  g_autofree char *words = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self)));

  if (*g_strstrip (words) != '\0' || isnan (self->usual))
    return bf_size_read (words, &self->reading, size, error);
  *size = NAN;
  return TRUE;
}

static void
add_hint (BfSizeField *self)
{
  self->hint_label = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->hint_label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->hint_label), 36);
  self->hint = gtk_popover_new ();
  gtk_popover_set_child (GTK_POPOVER (self->hint), self->hint_label);
  gtk_popover_set_autohide (GTK_POPOVER (self->hint), FALSE);
  gtk_popover_set_position (GTK_POPOVER (self->hint), GTK_POS_BOTTOM);
  gtk_widget_set_can_focus (self->hint, FALSE);
  gtk_widget_set_parent (self->hint, GTK_WIDGET (self));
}

static void
show_hint (BfSizeField *self, const char *words)
{
  if (words == NULL)
    {
      hide_hint (self);
      return;
    }
  if (self->hint == NULL)
    add_hint (self);
  gtk_label_set_label (GTK_LABEL (self->hint_label), words);
  gtk_popover_popup (GTK_POPOVER (self->hint));
}

/* While a person types, a fault is said only when it can't become a size any more; so it is said
 * when they are done. */
static void
typed_cb (BfSizeField *self)
{
  double size;

  if (!gtk_widget_has_focus (GTK_WIDGET (gtk_editable_get_delegate (GTK_EDITABLE (self)))))
    return;
  self->typing = TRUE;
  gtk_widget_remove_css_class (GTK_WIDGET (self), "error");
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self));
  g_autofree char *words = parse (self, &size, NULL) && !isnan (size)
                               ? bf_size_understood (text, size, &self->reading)
                               : NULL;
  show_hint (self, words);
}

static void
set_size (BfSizeField *self, double size, gboolean stepped)
{
  gboolean same = bf_is_same_size (size, self->size);

  self->size = size;
  show_size (self);
  if (!same)
    g_signal_emit (self, signals[SIGNAL_SIZE_SET], 0, size, stepped);
}

gboolean
bf_size_field_commit (BfSizeField *self)
{
  g_return_val_if_fail (BF_IS_SIZE_FIELD (self), FALSE);

  g_autoptr (GError) error = NULL;
  double size;

  if (!self->typing)
    return TRUE;
  if (parse (self, &size, &error))
    {
      set_size (self, size, FALSE);
      return TRUE;
    }
  gtk_widget_add_css_class (GTK_WIDGET (self), "error");
  show_hint (self, error->message);
  return FALSE;
}

static void
activate_cb (BfSizeField *self)
{
  if (bf_size_field_commit (self))
    gtk_editable_select_region (GTK_EDITABLE (self), 0, -1);
}

/* A field that is left with words that are no size shows the old size again. */
static void
leave_cb (BfSizeField *self)
{
  double size;

  if (self->typing && parse (self, &size, NULL))
    set_size (self, size, FALSE);
  else
    show_size (self);
  gtk_editable_select_region (GTK_EDITABLE (self), 0, 0);
}

static double
step_of (const BfSizeField *self, GdkModifierType state)
{
  BfSizeFieldKind kind = self->reading.kind;
  double step = bf_size_is_angle (kind)              ? STEP_DEG
                : self->reading.units == BF_UNITS_IN ? STEP_IN
                                                     : STEP_MM;
  if (kind == BF_SIZE_FIELD_THICKNESS || bf_size_is_fine (kind))
    step /= 10.0;
  return (state & GDK_SHIFT_MASK) != 0 ? 10.0 * step : step;
}

static void
step (BfSizeField *self, double by)
{
  double size;

  if (!parse (self, &size, NULL))
    size = self->size;
  size = bf_size_within ((isnan (size) ? self->usual : size) + by, self->reading.kind);
  if (!isnan (size))
    set_size (self, size, TRUE);
  gtk_editable_select_region (GTK_EDITABLE (self), 0, -1);
}

static gboolean
key_pressed_cb (GtkEventControllerKey *controller,
                guint key,
                guint code,
                GdkModifierType state,
                gpointer user_data)
{
  BfSizeField *self = user_data;
  (void)controller;
  (void)code;

  if (key == GDK_KEY_Up || key == GDK_KEY_KP_Up)
    step (self, step_of (self, state));
  else if (key == GDK_KEY_Down || key == GDK_KEY_KP_Down)
    step (self, -step_of (self, state));
  else if (key == GDK_KEY_Escape && self->typing)
    show_size (self);
  else
    return GDK_EVENT_PROPAGATE;
  return GDK_EVENT_STOP;
}

static void
bf_size_field_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  GTK_WIDGET_CLASS (bf_size_field_parent_class)->size_allocate (widget, width, height, baseline);
  if (BF_SIZE_FIELD (widget)->hint != NULL)
    gtk_popover_present (GTK_POPOVER (BF_SIZE_FIELD (widget)->hint));
}

static void
bf_size_field_dispose (GObject *object)
{
  BfSizeField *self = BF_SIZE_FIELD (object);

  g_clear_pointer (&self->hint, gtk_widget_unparent);
  g_clear_pointer (&self->material, g_free);
  G_OBJECT_CLASS (bf_size_field_parent_class)->dispose (object);
}

static void
bf_size_field_class_init (BfSizeFieldClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_size_field_dispose;
  GTK_WIDGET_CLASS (klass)->size_allocate = bf_size_field_size_allocate;
  signals[SIGNAL_SIZE_SET] =
      g_signal_new ("size-set", BF_TYPE_SIZE_FIELD, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                    G_TYPE_NONE, 2, G_TYPE_DOUBLE, G_TYPE_BOOLEAN);
}

static void
bf_size_field_init (BfSizeField *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  self->size = 1.0;
  self->usual = NAN;
  gtk_editable_set_width_chars (GTK_EDITABLE (self), 6);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self), 8);
  gtk_editable_set_alignment (GTK_EDITABLE (self), 0.5F);
  gtk_widget_add_css_class (GTK_WIDGET (self), "size");
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect (keys, "key-pressed", G_CALLBACK (key_pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (leave_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
  g_signal_connect (self, "changed", G_CALLBACK (typed_cb), NULL);
  g_signal_connect (self, "activate", G_CALLBACK (activate_cb), NULL);
}

GtkWidget *
bf_size_field_new (BfSizeFieldKind kind, const char *name)
{
  BfSizeField *self = g_object_new (BF_TYPE_SIZE_FIELD, NULL);

  self->reading.kind = kind;
  bf_size_field_set_name (self, name);
  return GTK_WIDGET (self);
}

void
bf_size_field_set_name (BfSizeField *self, const char *name)
{
  g_return_if_fail (BF_IS_SIZE_FIELD (self));

  if (g_strcmp0 (gtk_widget_get_tooltip_text (GTK_WIDGET (self)), name) == 0)
    return;
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), name);
}

void
bf_size_field_show (BfSizeField *self, double size, BfUnits units, const char *material)
{
  g_return_if_fail (BF_IS_SIZE_FIELD (self));

  gboolean same = bf_is_same_size (size, self->size) && units == self->reading.units &&
                  g_strcmp0 (material, self->material) == 0;

  if (same && self->shown)
    return;
  self->size = size;
  self->shown = TRUE;
  self->reading.units = units;
  g_free (self->material);
  self->material = g_strdup (material);
  self->reading.material = self->material;
  if (!self->typing)
    show_size (self);
}

void
bf_size_field_set_usual (BfSizeField *self, double usual, BfUnits units)
{
  g_return_if_fail (BF_IS_SIZE_FIELD (self));

  BfSizeReading reading = { self->reading.kind, units, self->material };
  g_autofree char *words = isnan (usual) ? NULL : bf_size_words (usual, &reading);

  self->usual = usual;
  if (g_strcmp0 (words, gtk_entry_get_placeholder_text (GTK_ENTRY (self))) != 0)
    gtk_entry_set_placeholder_text (GTK_ENTRY (self), words);
}

double
bf_size_field_get_size (BfSizeField *self)
{
  g_return_val_if_fail (BF_IS_SIZE_FIELD (self), NAN);
  return self->size;
}
