/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/checks-line.h"

#include <glib/gi18n.h>

struct _BfChecksLine
{
  GtkWidget parent_instance;
  BfDocument *document;
  GtkWidget *button;
  GtkWidget *list;
};

G_DEFINE_FINAL_TYPE (BfChecksLine, bf_checks_line, GTK_TYPE_WIDGET)

static void
add_count (GString *text, guint n, const char *words)
{
  if (n == 0)
    return;
  g_string_append (text, text->len > 0 ? ", " : "");
  g_string_append_printf (text, "%u %s", n, words);
}

char *
bf_checks_line_sentence (const BfFold *fold)
{
  g_return_val_if_fail (fold != NULL, NULL);

  g_autoptr (GString) counts = g_string_new (NULL);
  guint must = bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX);
  guint look = bf_fold_count_checks (fold, BF_SEVERITY_LOOK_AT);
  guint good = bf_fold_count_checks (fold, BF_SEVERITY_GOOD_TO_KNOW);

  /* Translators: after a number: "2 to fix" */
  add_count (counts, must, ngettext ("to fix", "to fix", must));
  /* Translators: after a number: "1 to look at" */
  add_count (counts, look, ngettext ("to look at", "to look at", look));
  /* Translators: after a number: "1 good to know" */
  add_count (counts, good, ngettext ("good to know", "good to know", good));
  if (counts->len == 0)
    return g_strdup (_ ("Before you cut: nothing to look at"));
  /* Translators: %s is a list such as "1 to fix, 2 to look at" */
  return g_strdup_printf (_ ("Before you cut: %s"), counts->str);
}

static const char *
severity_class (BfSeverity severity)
{
  switch (severity)
    {
    case BF_SEVERITY_MUST_FIX:
      return "must-fix";
    case BF_SEVERITY_LOOK_AT:
      return "look-at";
    case BF_SEVERITY_GOOD_TO_KNOW:
    default:
      return "good-to-know";
    }
}

static GtkWidget *
row_new (const BfCheck *check)
{
  GtkWidget *label = gtk_label_new (check->message);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_widget_add_css_class (label, severity_class (check->severity));
  return label;
}

static void
fill_list (GtkListBox *list, const BfFold *fold)
{
  GtkWidget *row;
  while ((row = gtk_widget_get_first_child (GTK_WIDGET (list))) != NULL)
    gtk_list_box_remove (list, row);
  for (guint i = 0; fold != NULL && i < fold->checks->len; i++)
    gtk_list_box_append (list, row_new (bf_fold_check (fold, i)));
}

static void
changed_cb (BfChecksLine *self)
{
  const BfFold *fold = bf_document_get_fold (self->document);

  fill_list (GTK_LIST_BOX (self->list), fold);
  if (fold == NULL)
    return;
  g_autofree char *sentence = bf_checks_line_sentence (fold);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (self->button), sentence);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  sentence, -1);
  gtk_widget_set_sensitive (self->button, fold->checks->len > 0);
  gboolean must = bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0;
  if (must)
    gtk_widget_add_css_class (self->button, "must-fix");
  else
    gtk_widget_remove_css_class (self->button, "must-fix");
}

static void
bf_checks_line_dispose (GObject *object)
{
  BfChecksLine *self = BF_CHECKS_LINE (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->button, gtk_widget_unparent);
  G_OBJECT_CLASS (bf_checks_line_parent_class)->dispose (object);
}

static void
bf_checks_line_class_init (BfChecksLineClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_checks_line_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "checksline");
}

static GtkWidget *
popover_new (GtkWidget *list)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), 320);
  gtk_widget_set_size_request (scroller, 460, -1);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), list);

  GtkWidget *popover = gtk_popover_new ();
  gtk_popover_set_child (GTK_POPOVER (popover), scroller);
  return popover;
}

static void
bf_checks_line_init (BfChecksLine *self)
{
  self->list = gtk_list_box_new ();
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_NONE);
  self->button = gtk_menu_button_new ();
  gtk_menu_button_set_direction (GTK_MENU_BUTTON (self->button), GTK_ARROW_UP);
  gtk_menu_button_set_has_frame (GTK_MENU_BUTTON (self->button), FALSE);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (self->button), popover_new (self->list));
  gtk_widget_set_halign (self->button, GTK_ALIGN_START);
  gtk_widget_set_parent (self->button, GTK_WIDGET (self));
}

void
bf_checks_line_set_document (BfChecksLine *self, BfDocument *document)
{
  g_return_if_fail (BF_IS_CHECKS_LINE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  changed_cb (self);
}
