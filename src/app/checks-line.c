/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/checks-line.h"

#include <glib/gi18n.h>

#include "app/check-row.h"
#include "fold/fix-find.h"

#define LIST_WIDTH_PX 560
#define LIST_MAX_HEIGHT_PX 340

struct _BfChecksLine
{
  GtkWidget parent_instance;
  BfDocument *document;
  BfFold *shown; /* whose checks stand in the list; NULL while it is closed */
  int last_row;  /* the row that was left last */
  GtkWidget *button;
  GtkWidget *popover;
  GtkWidget *list;
};

G_DEFINE_FINAL_TYPE (BfChecksLine, bf_checks_line, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_PLACE,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

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

/* ---- the list ----------------------------------------------------------------------------- */

static const BfCheck *
check_of (BfChecksLine *self, GtkListBoxRow *row)
{
  int i = gtk_list_box_row_get_index (row);

  if (self->shown == NULL || i < 0 || (guint)i >= self->shown->checks->len)
    return NULL;
  return bf_fold_check (self->shown, (guint)i);
}

static void
row_activated_cb (BfChecksLine *self, GtkListBoxRow *row)
{
  const BfCheck *check = check_of (self, row);

  if (check == NULL)
    return;
  BfVec2 place = check->place;
  self->last_row = gtk_list_box_row_get_index (row);
  gtk_popover_popdown (GTK_POPOVER (self->popover));
  g_signal_emit (self, signals[SIGNAL_PLACE], 0, &place);
}

/* The list is filled anew by the change that this makes. */
static void
fix_clicked_cb (BfChecksLine *self, GtkWidget *button)
{
  GtkWidget *row = gtk_widget_get_ancestor (button, GTK_TYPE_LIST_BOX_ROW);
  const BfCheck *check = check_of (self, GTK_LIST_BOX_ROW (row));

  g_return_if_fail (check != NULL);
  g_autoptr (BfFold) fold = bf_fold_ref (self->shown);
  BfFix fix = bf_fix_find (fold, check);
  g_autoptr (BfPart) fixed = bf_fix_apply (fold->asked, &fix, NULL);
  g_autofree char *words = bf_fix_words (&fix, fold->part->units);
  self->last_row = gtk_list_box_row_get_index (GTK_LIST_BOX_ROW (row));
  if (fixed != NULL)
    bf_document_apply (self->document, fixed, words, NULL);
}

static void
fix_cb (GtkWidget *button, gpointer user_data)
{
  fix_clicked_cb (user_data, button);
}

/* The row left last, or the one that has come to its place. */
static void
focus_last_row (BfChecksLine *self)
{
  int n = self->shown != NULL ? (int)self->shown->checks->len : 0;
  GtkListBoxRow *row =
      gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), CLAMP (self->last_row, 0, n - 1));

  if (row != NULL)
    gtk_widget_grab_focus (GTK_WIDGET (row));
}

static void
empty_list (BfChecksLine *self)
{
  GtkWidget *row;

  while ((row = GTK_WIDGET (gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), 0))) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), row);
  g_clear_pointer (&self->shown, bf_fold_unref);
}

static void
add_row (BfChecksLine *self, const BfCheck *check)
{
  BfFix fix = bf_fix_find (self->shown, check);
  g_autofree char *words = bf_fix_words (&fix, self->shown->part->units);

  gtk_list_box_append (GTK_LIST_BOX (self->list),
                       bf_check_row_new (check, words, G_CALLBACK (fix_cb), self));
}

/* Lines that wrap are higher than the scroller believes: it is told how high the list is. */
static void
fit_height (BfChecksLine *self)
{
  GtkWidget *scroller = gtk_widget_get_ancestor (self->list, GTK_TYPE_SCROLLED_WINDOW);
  int height;

  gtk_widget_measure (self->list, GTK_ORIENTATION_VERTICAL, LIST_WIDTH_PX, NULL, &height, NULL,
                      NULL);
  gtk_scrolled_window_set_min_content_height (GTK_SCROLLED_WINDOW (scroller),
                                              MIN (height, LIST_MAX_HEIGHT_PX));
}

/* Only an open list is filled: while a size is dragged there is a new fold at every frame. */
static void
fill_list (BfChecksLine *self)
{
  BfFold *fold = bf_document_get_fold (self->document);

  empty_list (self);
  if (fold == NULL)
    return;
  self->shown = bf_fold_ref (fold);
  for (guint i = 0; i < fold->checks->len; i++)
    add_row (self, bf_fold_check (fold, i));
  fit_height (self);
}

static void
popover_shown_cb (BfChecksLine *self)
{
  fill_list (self);
  focus_last_row (self);
}

/* The last fix leaves nothing for the list to show, nor anything in it for the keys to go to. */
static void
show_change (BfChecksLine *self, const BfFold *fold)
{
  if (fold->checks->len > 0)
    popover_shown_cb (self);
  else
    gtk_popover_popdown (GTK_POPOVER (self->popover));
}

/* A menu button makes all that is in it anew when its label is set. */
static void
set_sentence (BfChecksLine *self, const char *sentence)
{
  if (g_strcmp0 (gtk_menu_button_get_label (GTK_MENU_BUTTON (self->button)), sentence) == 0)
    return;
  gtk_menu_button_set_label (GTK_MENU_BUTTON (self->button), sentence);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  sentence, -1);
}

static void
changed_cb (BfChecksLine *self)
{
  const BfFold *fold = bf_document_get_fold (self->document);

  if (fold == NULL)
    return;
  g_autofree char *sentence = bf_checks_line_sentence (fold);
  set_sentence (self, sentence);
  if (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX) > 0)
    gtk_widget_add_css_class (self->button, "must-fix");
  else
    gtk_widget_remove_css_class (self->button, "must-fix");
  if (gtk_widget_get_visible (self->popover))
    show_change (self, fold);
}

/* ---- the widget --------------------------------------------------------------------------- */

static void
bf_checks_line_dispose (GObject *object)
{
  BfChecksLine *self = BF_CHECKS_LINE (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->shown, bf_fold_unref);
  g_clear_pointer (&self->button, gtk_widget_unparent);
  G_OBJECT_CLASS (bf_checks_line_parent_class)->dispose (object);
}

static void
bf_checks_line_class_init (BfChecksLineClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_checks_line_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "checksline");
  signals[SIGNAL_PLACE] = g_signal_new ("place", BF_TYPE_CHECKS_LINE, G_SIGNAL_RUN_LAST, 0, NULL,
                                        NULL, NULL, G_TYPE_NONE, 1, G_TYPE_POINTER);
}

static GtkWidget *
list_new (void)
{
  GtkWidget *list = gtk_list_box_new ();
  GtkWidget *nothing = gtk_label_new (_ ("Nothing to fix, and nothing to look at."));

  gtk_widget_add_css_class (nothing, "nothing");
  gtk_list_box_set_placeholder (GTK_LIST_BOX (list), nothing);
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Before you cut"), -1);
  return list;
}

static GtkWidget *
popover_new (GtkWidget *list)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), LIST_MAX_HEIGHT_PX);
  gtk_widget_set_size_request (scroller, LIST_WIDTH_PX, -1);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), list);

  GtkWidget *popover = gtk_popover_new ();
  gtk_popover_set_child (GTK_POPOVER (popover), scroller);
  gtk_widget_set_halign (popover, GTK_ALIGN_START);
  return popover;
}

static void
bf_checks_line_init (BfChecksLine *self)
{
  self->list = list_new ();
  self->popover = popover_new (self->list);
  self->button = gtk_menu_button_new ();
  gtk_menu_button_set_direction (GTK_MENU_BUTTON (self->button), GTK_ARROW_UP);
  gtk_menu_button_set_has_frame (GTK_MENU_BUTTON (self->button), FALSE);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (self->button), self->popover);
  gtk_widget_set_halign (self->button, GTK_ALIGN_START);
  gtk_widget_set_parent (self->button, GTK_WIDGET (self));
  g_signal_connect_object (self->popover, "show", G_CALLBACK (popover_shown_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->list, "row-activated", G_CALLBACK (row_activated_cb), self,
                           G_CONNECT_SWAPPED);
}

void
bf_checks_line_set_document (BfChecksLine *self, BfDocument *document)
{
  g_return_if_fail (BF_IS_CHECKS_LINE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  changed_cb (self);
}

void
bf_checks_line_open (BfChecksLine *self)
{
  g_return_if_fail (BF_IS_CHECKS_LINE (self));
  gtk_menu_button_popup (GTK_MENU_BUTTON (self->button));
}
