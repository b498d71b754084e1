/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-bar.h"

#include <glib/gi18n.h>

#include "app/bending-window.h"
#include "app/children.h"
#include "app/drill-box-window.h"
#include "app/line-layout.h"
#include "app/own-metal-window.h"
#include "app/own-things-window.h"
#include "app/setup-actions.h"
#include "app/setup-menu.h"
#include "app/setup-segments.h"
#include "app/thickness-box.h"
#include "app/trial-bend-window.h"
#include "app/window.h"
#include "core/own-drills.h"
#include "core/own-metals.h"
#include "core/own-trials.h"

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

static void
tell_first (BfSetupBar *self, const char *const *faults)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));

  if (faults[0] == NULL || !BF_IS_WINDOW (root))
    return;
  /* Translators: a file's path and what is wrong in it. */
  g_autofree char *words = g_strdup_printf (_ ("A file of your own was left out. %s"), faults[0]);
  bf_window_notify (BF_WINDOW (root), words);
}

/* What the person keeps for themselves is read when a menu first shows it; a broken file leaves the
 * rest as it is, and is named. */
static void
tell_faults (BfSetupBar *self)
{
  tell_first (self, bf_own_trial_faults ());
  tell_first (self, bf_own_drill_faults ());
  tell_first (self, bf_own_metal_faults ());
}

/* From within a menu of a menu the toolkit gives the keyboard back to nobody. */
static void
take_keyboard_back (GtkMenuButton *button)
{
  g_signal_connect_object (gtk_menu_button_get_popover (button), "closed",
                           G_CALLBACK (gtk_widget_grab_focus), button, G_CONNECT_SWAPPED);
}

/* Menus are made when they are opened, so that an edit need not make five. */
static void
open_phrase_cb (GtkMenuButton *button, gpointer user_data)
{
  BfSetupBar *self = user_data;
  const BfPart *part = bf_document_get_part (self->document);
  tell_faults (self);
  g_autoptr (GMenuModel) menu = bf_setup_menu_new (part, phrase_of (button));
  if (phrase_of (button) != BF_SETUP_METAL)
    {
      gtk_menu_button_set_menu_model (button, menu);
      take_keyboard_back (button);
      return;
    }
  GtkWidget *popover = gtk_popover_menu_new_from_model (menu);
  gtk_popover_menu_add_child (GTK_POPOVER_MENU (popover), bf_thickness_box_new (part),
                              BF_SETUP_MENU_THICKNESS);
  gtk_menu_button_set_popover (button, popover);
  take_keyboard_back (button);
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

static void
ask_cb (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  BfSetupBar *self = user_data;
  const char *name = g_action_get_name (G_ACTION (action));
  (void)value;

  if (g_str_equal (name, "metal"))
    bf_own_metal_window_open (GTK_WIDGET (self), self->document, NULL);
  else if (g_str_equal (name, "drills"))
    bf_drill_box_window_open (GTK_WIDGET (self), self->document, NULL);
  else if (g_str_equal (name, "cutting"))
    bf_cutting_window_open (GTK_WIDGET (self), self->document);
  else if (g_str_equal (name, "bending"))
    bf_bending_window_open (GTK_WIDGET (self), self->document);
  else
    bf_trial_bend_window_open (GTK_WIDGET (self), self->document, NULL);
}

static void
own_cb (GSimpleAction *action, GVariant *value, gpointer user_data)
{
  BfSetupBar *self = user_data;
  const char *name = g_action_get_name (G_ACTION (action));
  (void)value;

  bf_own_things_window_open (GTK_WIDGET (self), self->document,
                             g_str_equal (name, "own-metals")   ? BF_OWN_METAL
                             : g_str_equal (name, "own-drills") ? BF_OWN_DRILLS
                                                                : BF_OWN_TRIAL);
}

static const GActionEntry questions[] = {
  { .name = "metal", .activate = ask_cb },      { .name = "cutting", .activate = ask_cb },
  { .name = "bending", .activate = ask_cb },    { .name = "drills", .activate = ask_cb },
  { .name = "trial", .activate = ask_cb },      { .name = "own-metals", .activate = own_cb },
  { .name = "own-drills", .activate = own_cb }, { .name = "own-trials", .activate = own_cb },
};

/* What the menus ask in windows of their own. */
static void
insert_questions (BfSetupBar *self)
{
  g_autoptr (GSimpleActionGroup) group = g_simple_action_group_new ();

  g_action_map_add_action_entries (G_ACTION_MAP (group), questions, G_N_ELEMENTS (questions), self);
  gtk_widget_insert_action_group (GTK_WIDGET (self), "ask", G_ACTION_GROUP (group));
}

void
bf_setup_bar_set_document (BfSetupBar *self, BfDocument *document)
{
  g_return_if_fail (BF_IS_SETUP_BAR (self) && self->document == NULL);

  g_autoptr (GSimpleActionGroup) actions = bf_setup_actions_new (document);

  self->document = g_object_ref (document);
  gtk_widget_insert_action_group (GTK_WIDGET (self), "setup", G_ACTION_GROUP (actions));
  insert_questions (self);
  g_signal_connect_object (document, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  changed_cb (self);
}
