/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/start-page.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/document.h"
#include "app/draw-page.h"
#include "app/recent-list.h"
#include "app/setup-bar.h"
#include "app/size-page.h"
#include "app/thing-picture.h"
#include "core/own-trials.h"

struct _BfStartPage
{
  GtkWidget parent_instance;
  BfDocument *setup; /* its part has the set-up; its shape counts for nothing */

  GtkStack *stack;
  GtkFlowBox *things_box;
  BfRecentList *recent_list;
  GtkLabel *size_title;
  BfSizePage *size_page;
  GtkLabel *size_note;
  GtkWidget *make_button;
  BfDrawPage *draw_page;
  GtkLabel *draw_note;
  GtkWidget *draw_button;
  BfSetupBar *setup_bar;
};

G_DEFINE_FINAL_TYPE (BfStartPage, bf_start_page, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_MADE,
  SIGNAL_OPENED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static void
show_choice (BfStartPage *self)
{
  gtk_stack_set_visible_child_name (self->stack, "choose");
  gtk_widget_child_focus (GTK_WIDGET (self->things_box), GTK_DIR_TAB_FORWARD);
}

static void
show_sizes (BfStartPage *self, BfThing thing)
{
  gtk_label_set_label (self->size_title, bf_thing_name (thing));
  gtk_stack_set_visible_child_name (self->stack, "size");
  bf_size_page_begin (self->size_page, thing);
  gtk_window_set_default_widget (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))),
                                 self->make_button);
}

static void
show_drawing (BfStartPage *self)
{
  gtk_stack_set_visible_child_name (self->stack, "draw");
  bf_draw_page_begin (self->draw_page, bf_document_get_part (self->setup)->units);
}

static void
thing_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  BfStartPage *self = BF_START_PAGE (widget);
  int thing = g_variant_get_int32 (parameter);
  (void)name;

  if (thing >= 0 && thing < BF_N_THINGS)
    show_sizes (self, (BfThing)thing);
  else if (thing == BF_N_THINGS)
    show_drawing (self);
}

static void
back_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  (void)name;
  (void)parameter;
  show_choice (BF_START_PAGE (widget));
}

/* A new part has the trial bend that fits it, if there is one. */
static void
emit_made (BfStartPage *self, BfPart *part)
{
  g_autoptr (BfPart) fitted = bf_edit_fit_trial_bend (part);
  g_signal_emit (self, signals[SIGNAL_MADE], 0, fitted != NULL ? fitted : part);
}

static void
make_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  BfStartPage *self = BF_START_PAGE (widget);
  BfPart *part = bf_size_page_get_part (self->size_page);
  (void)name;
  (void)parameter;

  if (part != NULL)
    emit_made (self, part);
}

/* The drawing is closed: by a click on its first corner, by Return, or by the button. */
static void
drawn_cb (BfStartPage *self)
{
  if (!bf_draw_page_can_close (self->draw_page))
    return;
  g_autoptr (BfPart) part = bf_draw_page_make (self->draw_page, bf_document_get_part (self->setup));
  emit_made (self, part);
}

static void
drawing_changed_cb (BfStartPage *self)
{
  gtk_label_set_label (self->draw_note, bf_draw_page_get_words (self->draw_page));
  gtk_widget_set_sensitive (self->draw_button, bf_draw_page_can_close (self->draw_page));
}

static void
sizes_changed_cb (BfStartPage *self)
{
  gboolean made = bf_size_page_get_part (self->size_page) != NULL;

  gtk_label_set_label (self->size_note,
                       made ? "" : _ ("Metal this thick leaves nothing inside. Make it larger."));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "start.make", made);
}

static void
recent_chosen_cb (BfStartPage *self, GFile *file)
{
  g_signal_emit (self, signals[SIGNAL_OPENED], 0, file);
}

static void
bf_start_page_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (bf_start_page_parent_class)->map (widget);
  show_choice (BF_START_PAGE (widget));
}

static void
bf_start_page_dispose (GObject *object)
{
  BfStartPage *self = BF_START_PAGE (object);

  g_clear_object (&self->setup);
  bf_widget_drop_children (GTK_WIDGET (self));
  G_OBJECT_CLASS (bf_start_page_parent_class)->dispose (object);
}

static void
add_signals (void)
{
  signals[SIGNAL_MADE] = g_signal_new ("made", BF_TYPE_START_PAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                       NULL, G_TYPE_NONE, 1, G_TYPE_POINTER);
  signals[SIGNAL_OPENED] = g_signal_new ("opened", BF_TYPE_START_PAGE, G_SIGNAL_RUN_LAST, 0, NULL,
                                         NULL, NULL, G_TYPE_NONE, 1, G_TYPE_FILE);
}

static void
bf_start_page_class_init (BfStartPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_start_page_dispose;
  widget_class->map = bf_start_page_map;
  g_type_ensure (BF_TYPE_DRAW_PAGE);
  g_type_ensure (BF_TYPE_RECENT_LIST);
  g_type_ensure (BF_TYPE_SETUP_BAR);
  g_type_ensure (BF_TYPE_SIZE_PAGE);
  add_signals ();
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/start-page.ui");
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, stack);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, things_box);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, recent_list);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, size_title);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, size_page);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, size_note);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, make_button);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, draw_page);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, draw_note);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, draw_button);
  gtk_widget_class_bind_template_child (widget_class, BfStartPage, setup_bar);
  gtk_widget_class_install_action (widget_class, "start.thing", "i", thing_action);
  gtk_widget_class_install_action (widget_class, "start.back", NULL, back_action);
  gtk_widget_class_install_action (widget_class, "start.make", NULL, make_action);
  for (guint i = 0; i <= BF_N_THINGS; i++)
    {
      gtk_widget_class_add_binding_action (widget_class, GDK_KEY_1 + i, 0, "start.thing", "i", i);
      gtk_widget_class_add_binding_action (widget_class, GDK_KEY_KP_1 + i, 0, "start.thing", "i",
                                           i);
    }
}

static GtkWidget *
thing_button_new (BfThing thing)
{
  GtkWidget *button = gtk_button_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  /* Translators: the key to press, and the thing it starts: "1  Tray" */
  g_autofree char *words = g_strdup_printf (_ ("%u  %s"), (guint)thing + 1, bf_thing_name (thing));

  gtk_box_append (GTK_BOX (box), bf_thing_picture_new (thing));
  gtk_box_append (GTK_BOX (box), gtk_label_new (words));
  gtk_button_set_child (GTK_BUTTON (button), box);
  gtk_button_set_has_frame (GTK_BUTTON (button), FALSE);
  gtk_widget_add_css_class (button, "thing");
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "start.thing");
  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "i", (int)thing);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  bf_thing_name (thing), -1);
  return button;
}

/* The button has the focus, not the cell it stands in. */
static void
add_thing (BfStartPage *self, BfThing thing)
{
  GtkWidget *cell = gtk_flow_box_child_new ();
  gtk_flow_box_child_set_child (GTK_FLOW_BOX_CHILD (cell), thing_button_new (thing));
  gtk_widget_set_focusable (cell, FALSE);
  gtk_flow_box_append (self->things_box, cell);
}

static void
bf_start_page_init (BfStartPage *self)
{
  self->setup = bf_document_new ();
  gtk_widget_init_template (GTK_WIDGET (self));
  for (BfThing thing = BF_THING_TRAY; thing <= BF_N_THINGS; thing++)
    add_thing (self, thing);
  g_signal_connect_object (self->size_page, "changed", G_CALLBACK (sizes_changed_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->draw_page, "changed", G_CALLBACK (drawing_changed_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->draw_page, "closed", G_CALLBACK (drawn_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->draw_button, "clicked", G_CALLBACK (drawn_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->recent_list, "chosen", G_CALLBACK (recent_chosen_cb), self,
                           G_CONNECT_SWAPPED);
}

void
bf_start_page_set_setup (BfStartPage *self, BfPart *part)
{
  g_return_if_fail (BF_IS_START_PAGE (self) && bf_document_get_part (self->setup) == NULL);

  bf_document_set_part (self->setup, part, NULL);
  bf_size_page_set_setup (self->size_page, self->setup);
  bf_setup_bar_set_document (self->setup_bar, self->setup);
}
