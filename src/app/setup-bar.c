/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-bar.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/line-layout.h"
#include "app/setup-actions.h"
#include "app/setup-menu.h"
#include "app/setup-segments.h"
#include "app/thickness-box.h"

struct _BfSetupBar
{
  GtkWidget parent_instance;
  BfDocument *document;
  const char *format; /* of the sentence that stands there now */
};

G_DEFINE_FINAL_TYPE (BfSetupBar, bf_setup_bar, GTK_TYPE_WIDGET)

/* What a screen reader calls a phrase, whatever stands there. */
static const char *
phrase_title (BfSetupPhrase phrase)
{
  switch (phrase)
    {
    case BF_SETUP_METAL:
      return _ ("Metal");
    case BF_SETUP_CUTTING:
      return _ ("Cutting");
    case BF_SETUP_BENDING:
      return _ ("Bending");
    case BF_SETUP_JOINING:
      return _ ("Corners");
    case BF_SETUP_MEASURE:
      return _ ("Sizes");
    case BF_N_SETUP:
    default:
      return "";
    }
}

static BfSetupPhrase
phrase_of (gpointer button)
{
  int number = GPOINTER_TO_INT (g_object_get_data (button, "phrase"));
  return number > 0 ? (BfSetupPhrase)(number - 1) : BF_N_SETUP;
}

/* Menus are made when they are opened, so that an edit need not make five. */
static void
open_phrase_cb (GtkMenuButton *button, gpointer user_data)
{
  BfSetupBar *self = user_data;
  const BfPart *part = bf_document_get_part (self->document);
  g_autoptr (GMenuModel) menu = bf_setup_menu_new (part, phrase_of (button));
  if (phrase_of (button) != BF_SETUP_METAL)
    {
      gtk_menu_button_set_menu_model (button, menu);
      return;
    }
  GtkWidget *popover = gtk_popover_menu_new_from_model (menu);
  gtk_popover_menu_add_child (GTK_POPOVER_MENU (popover), bf_thickness_box_new (part),
                              BF_SETUP_MENU_THICKNESS);
  gtk_menu_button_set_popover (button, popover);
}

static GtkWidget *
phrase_new (BfSetupBar *self, BfSetupPhrase phrase)
{
  GtkWidget *button = gtk_menu_button_new ();
  GtkWidget *label = gtk_label_new (NULL);

  gtk_menu_button_set_has_frame (GTK_MENU_BUTTON (button), FALSE);
  gtk_menu_button_set_child (GTK_MENU_BUTTON (button), label);
  gtk_widget_add_css_class (button, "phrase");
  g_object_set_data (G_OBJECT (button), "phrase", GINT_TO_POINTER ((int)phrase + 1));
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), open_phrase_cb, self, NULL);
  return button;
}

static void
build (BfSetupBar *self, const char *format)
{
  GtkWidget *child;
  g_autoptr (GArray) segments = bf_setup_segments (format);

  bf_widget_drop_children (GTK_WIDGET (self));
  for (guint i = 0; i < segments->len; i++)
    {
      const BfSetupSegment *segment = &g_array_index (segments, BfSetupSegment, i);
      child = segment->words != NULL ? gtk_label_new (segment->words)
                                     : phrase_new (self, segment->phrase);
      gtk_widget_set_parent (child, GTK_WIDGET (self));
    }
  self->format = format;
}

static void
show_phrase (GtkWidget *button, const BfPart *part, BfSetupPhrase phrase)
{
  GtkLabel *label = GTK_LABEL (gtk_menu_button_get_child (GTK_MENU_BUTTON (button)));
  g_autofree char *words = bf_setup_phrase (part, phrase);
  g_autofree char *name = g_strdup_printf ("%s: %s", phrase_title (phrase), words);

  if (g_str_equal (gtk_label_get_label (label), words))
    return;
  gtk_label_set_label (label, words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static void
changed_cb (BfSetupBar *self)
{
  const BfPart *part = bf_document_get_part (self->document);

  if (part == NULL)
    return;
  if (g_strcmp0 (self->format, bf_setup_format (part)) != 0)
    build (self, bf_setup_format (part));
  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self)); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      BfSetupPhrase phrase = phrase_of (child);
      if (phrase != BF_N_SETUP)
        show_phrase (child, part, phrase);
    }
}

static void
bf_setup_bar_dispose (GObject *object)
{
  BfSetupBar *self = BF_SETUP_BAR (object);
  bf_widget_drop_children (GTK_WIDGET (self));
  g_clear_object (&self->document);
  G_OBJECT_CLASS (bf_setup_bar_parent_class)->dispose (object);
}

static void
bf_setup_bar_class_init (BfSetupBarClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_setup_bar_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), BF_TYPE_LINE_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "setupbar");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
bf_setup_bar_init (BfSetupBar *self)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Set-up"), -1);
}

void
bf_setup_bar_set_document (BfSetupBar *self, BfDocument *document)
{
  g_return_if_fail (BF_IS_SETUP_BAR (self) && self->document == NULL);

  g_autoptr (GSimpleActionGroup) actions = bf_setup_actions_new (document);

  self->document = g_object_ref (document);
  gtk_widget_insert_action_group (GTK_WIDGET (self), "setup", G_ACTION_GROUP (actions));
  g_signal_connect_object (document, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  changed_cb (self);
}
