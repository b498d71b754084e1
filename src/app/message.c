/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/message.h"

#include <glib/gi18n.h>

#include "app/button-names.h"

#define BF_TYPE_MESSAGE (bf_message_get_type ())
G_DECLARE_FINAL_TYPE (BfMessage, bf_message, BF, MESSAGE, GtkWindow)

struct _BfMessage
{
  GtkWindow parent_instance;
  GtkLabel *title_label;
  GtkLabel *detail_label;
  GtkBox *buttons_box;
  BfMessageAnswered answered; /* NULL once it was called */
  gpointer user_data;
};

G_DEFINE_FINAL_TYPE (BfMessage, bf_message, GTK_TYPE_WINDOW)

static void
answer (BfMessage *self, int number)
{
  BfMessageAnswered answered = self->answered;
  self->answered = NULL;
  if (answered != NULL)
    answered (number, self->user_data);
}

static void
clicked_cb (BfMessage *self, GtkButton *button)
{
  int number = GPOINTER_TO_INT (g_object_get_data (G_OBJECT (button), "number"));
  g_object_ref (self);
  gtk_window_destroy (GTK_WINDOW (self));
  answer (self, number);
  g_object_unref (self);
}

static gboolean
bf_message_close_request (GtkWindow *window)
{
  answer (BF_MESSAGE (window), -1);
  return GTK_WINDOW_CLASS (bf_message_parent_class)->close_request (window);
}

static void
bf_message_class_init (BfMessageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  GTK_WINDOW_CLASS (klass)->close_request = bf_message_close_request;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/benchfold/Benchfold/message.ui");
  gtk_widget_class_bind_template_child (widget_class, BfMessage, title_label);
  gtk_widget_class_bind_template_child (widget_class, BfMessage, detail_label);
  gtk_widget_class_bind_template_child (widget_class, BfMessage, buttons_box);
}

static void
bf_message_init (BfMessage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
add_button (BfMessage *self, const char *label, int number, gboolean suggested)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);

  g_object_set_data (G_OBJECT (button), "number", GINT_TO_POINTER (number));
  g_signal_connect_object (button, "clicked", G_CALLBACK (clicked_cb), self, G_CONNECT_SWAPPED);
  gtk_box_append (self->buttons_box, button);
  if (!suggested)
    return;
  gtk_widget_add_css_class (button, "suggested-action");
  gtk_window_set_default_widget (GTK_WINDOW (self), button);
  gtk_window_set_focus (GTK_WINDOW (self), button);
}

void
bf_message_ask (GtkWindow *parent,
                const BfQuestion *question,
                BfMessageAnswered answered,
                gpointer user_data)
{
  g_return_if_fail (question != NULL && question->title != NULL && question->buttons != NULL);

  BfMessage *self =
      g_object_new (BF_TYPE_MESSAGE, "transient-for", parent, "title", question->title, NULL);
  const char *detail = question->detail;

  self->answered = answered;
  self->user_data = user_data;
  gtk_label_set_label (self->title_label, question->title);
  gtk_label_set_label (self->detail_label, detail != NULL ? detail : "");
  gtk_widget_set_visible (GTK_WIDGET (self->detail_label), detail != NULL);
  for (int i = 0; question->buttons[i] != NULL; i++)
    add_button (self, question->buttons[i], i, question->buttons[i + 1] == NULL);
  bf_name_buttons (GTK_WIDGET (self->buttons_box));
  gtk_window_present (GTK_WINDOW (self));
}

void
bf_message_show (GtkWindow *parent, const char *title, const char *detail)
{
  const char *const buttons[] = { _ ("_OK"), NULL };
  BfQuestion question = { title, detail, buttons };
  bf_message_ask (parent, &question, NULL, NULL);
}
