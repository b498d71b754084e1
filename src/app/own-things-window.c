/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/own-things-window.h"

#include <string.h>

#include <glib/gi18n.h>

#include "app/button-names.h"
#include "app/children.h"
#include "app/drill-box-window.h"
#include "app/own-metal-window.h"
#include "app/setup-drills.h"
#include "app/small-window.h"
#include "app/trial-bend-window.h"
#include "core/own-drills.h"
#include "core/own-metals.h"
#include "core/units.h"

#define MOST_HEIGHT 360
#define SPACING 8
#define WIDTH_CHARS 40

/* One thing of the list. What was taken away stays there until the window is closed. */
typedef struct
{
  char *id, *words;
  gboolean fixed;  /* can be looked at, but not changed */
  GBytes *removed; /* NULL where it is there */
} Item;

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  BfOwnThing what;
  GPtrArray *items; /* Item, by id */
  char *at;         /* of which the buttons have the keyboard next, or NULL */
  GtkGrid *rows;
  GtkLabel *words;
} OwnThingsWindow;

static const struct
{
  const char *title, *none;
  GtkWindow *(*open) (GtkWidget *anchor, BfDocument *document, const char *id);
} kinds[] = {
  [BF_OWN_METAL] = { N_ ("Your metals"), N_ ("There is no metal of your own."),
                     bf_own_metal_window_open },
  [BF_OWN_DRILLS] = { N_ ("Your boxes of drills"), N_ ("There is no box of your own."),
                      bf_drill_box_window_open },
  [BF_OWN_TRIAL] = { N_ ("Your trial bends"), N_ ("There is no trial bend of your own."),
                     bf_trial_bend_window_open },
};

static void
item_free (gpointer data)
{
  Item *item = data;

  g_free (item->id);
  g_free (item->words);
  g_clear_pointer (&item->removed, g_bytes_unref);
  g_free (item);
}

/* ---- what there is ------------------------------------------------------------------------- */

static Item *
add_item (OwnThingsWindow *self, const char *id, char *words)
{
  Item *item = g_new0 (Item, 1);

  item->id = g_strdup (id);
  item->words = words;
  g_ptr_array_add (self->items, item);
  return item;
}

static void
add_metals (OwnThingsWindow *self)
{
  guint n;
  const BfMaterial *const *all = bf_own_metals (&n);

  for (guint i = 0; i < n; i++)
    (void)add_item (self, all[i]->id, g_strdup (all[i]->name));
}

static void
add_boxes (OwnThingsWindow *self)
{
  guint n;
  const BfDrillBox *all = bf_own_drills (&n);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *drills = bf_setup_drills_words (all[i].sizes_mm);

      (void)add_item (self, all[i].id, g_strdup_printf ("%s: %s", all[i].name, drills));
    }
}

static void
add_trials (OwnThingsWindow *self)
{
  BfUnits units = bf_document_get_part (self->document)->units;
  guint n;
  const BfTrialRecord *all = bf_own_trials (&n);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *what = bf_trial_bend_words (&all[i], units);
      g_autofree char *k = bf_format_decimal (all[i].k, 3);
      g_autofree char *off = bf_format_decimal (all[i].k_error, 3);
      g_autofree char *words = g_strdup_printf ("%s: K %s ± %s, %s", what, k, off, all[i].date);

      add_item (self, all[i].id,
                all[i].part == NULL
                    ? g_steal_pointer (&words)
                    /* Translators: a trial bend with its K and day, and a part's name. */
                    : g_strdup_printf (_ ("%s, from the finished “%s”"), words, all[i].part))
          ->fixed = all[i].part != NULL;
    }
}

static int
compare_items (gconstpointer a, gconstpointer b)
{
  return strcmp ((*(const Item *const *)a)->id, (*(const Item *const *)b)->id);
}

/* Reads what there is; what was taken away goes on standing in its place. */
static void
list_again (OwnThingsWindow *self)
{
  static void (*const adders[]) (OwnThingsWindow *) = {
    [BF_OWN_METAL] = add_metals, [BF_OWN_DRILLS] = add_boxes, [BF_OWN_TRIAL] = add_trials
  };
  g_autoptr (GPtrArray) before = self->items;

  self->items = g_ptr_array_new_with_free_func (item_free);
  adders[self->what](self);
  for (guint i = 0; before != NULL && i < before->len; i++)
    {
      Item *item = g_ptr_array_index (before, i);

      if (item->removed == NULL)
        continue;
      add_item (self, item->id, g_strdup (item->words))->removed = g_bytes_ref (item->removed);
    }
  g_ptr_array_sort (self->items, compare_items);
}

/* ---- what is done with it ------------------------------------------------------------------ */

static void show (OwnThingsWindow *self);

static Item *
item_of (GtkWidget *button)
{
  return g_object_get_data (G_OBJECT (button), "item");
}

/* The list is made anew by what is done; the keyboard stays with the thing. */
static Item *
begin (OwnThingsWindow *self, GtkWidget *button)
{
  Item *item = item_of (button);

  g_free (self->at);
  self->at = g_strdup (item->id);
  return item;
}

/* The window that changed one is closed. */
static void
changed_cb (GtkWindow *window)
{
  show (g_object_get_data (G_OBJECT (window), "own-things"));
}

static void
change_cb (OwnThingsWindow *self, GtkWidget *button)
{
  GtkWindow *window = kinds[self->what].open (GTK_WIDGET (self->frame->window), self->document,
                                              begin (self, button)->id);

  g_signal_connect_object (window, "destroy", G_CALLBACK (changed_cb), self->frame->window,
                           G_CONNECT_SWAPPED);
}

/* The part may be of a metal whose figures went or came. */
static void
done (OwnThingsWindow *self, gboolean fine, const GError *error)
{
  if (fine && self->what == BF_OWN_METAL)
    bf_document_fold_again (self->document);
  show (self);
  if (!fine)
    gtk_label_set_label (self->words, error->message);
}

static void
remove_cb (OwnThingsWindow *self, GtkWidget *button)
{
  Item *item = begin (self, button);
  g_autoptr (GError) error = NULL;
  gboolean fine = bf_own_thing_remove (self->what, item->id, &item->removed, &error);

  done (self, fine, error);
}

static void
put_back_cb (OwnThingsWindow *self, GtkWidget *button)
{
  Item *item = begin (self, button);
  g_autoptr (GError) error = NULL;
  gboolean fine = bf_own_thing_put_back (self->what, item->id, item->removed, &error);

  if (fine)
    g_clear_pointer (&item->removed, g_bytes_unref);
  done (self, fine, error);
}

/* ---- how it is shown ----------------------------------------------------------------------- */

static GtkWidget *
button_new (OwnThingsWindow *self, Item *item, const char *label, GCallback clicked_cb)
{
  GtkWidget *button = gtk_button_new_with_label (label);
  g_autofree char *name = g_strdup_printf ("%s: %s", label, item->words);

  g_object_set_data (G_OBJECT (button), "item", item);
  bf_name_buttons (button);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (button, "clicked", clicked_cb, self);
  return button;
}

static void
add_label (OwnThingsWindow *self, const Item *item, int at)
{
  GtkWidget *label = gtk_label_new (item->words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (label), WIDTH_CHARS);
  gtk_label_set_max_width_chars (GTK_LABEL (label), WIDTH_CHARS);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_set_sensitive (label, item->removed == NULL);
  gtk_grid_attach (self->rows, label, 0, at, 1, 1);
}

static void
add_row (OwnThingsWindow *self, Item *item, int at)
{
  add_label (self, item, at);
  if (item->removed != NULL)
    {
      gtk_grid_attach (self->rows,
                       button_new (self, item, _ ("Put back"), G_CALLBACK (put_back_cb)), 1, at, 2,
                       1);
      return;
    }
  gtk_grid_attach (
      self->rows,
      button_new (self, item, item->fixed ? _ ("Look at…") : _ ("Change…"), G_CALLBACK (change_cb)),
      1, at, 1, 1);
  gtk_grid_attach (self->rows, button_new (self, item, _ ("Remove"), G_CALLBACK (remove_cb)), 2, at,
                   1, 1);
}

static gboolean
has_removed (const OwnThingsWindow *self)
{
  for (guint i = 0; i < self->items->len; i++)
    if (((const Item *)g_ptr_array_index (self->items, i))->removed != NULL)
      return TRUE;
  return FALSE;
}

static void
show (OwnThingsWindow *self)
{
  list_again (self);
  bf_widget_drop_children (GTK_WIDGET (self->rows));
  for (guint i = 0; i < self->items->len; i++)
    {
      Item *item = g_ptr_array_index (self->items, i);

      add_row (self, item, (int)i);
      if (g_strcmp0 (item->id, self->at) == 0)
        gtk_widget_grab_focus (gtk_grid_get_child_at (self->rows, 1, (int)i));
    }
  gtk_label_set_label (self->words,
                       self->items->len == 0 ? _ (kinds[self->what].none)
                       : has_removed (self)
                           ? _ ("What was removed can be put back until this is closed.")
                           : _ ("Parts that were made with one keep what they have."));
}

static void
own_things_window_free (gpointer data)
{
  OwnThingsWindow *self = data;

  g_clear_pointer (&self->items, g_ptr_array_unref);
  g_free (self->at);
  g_object_unref (self->document);
  g_free (self);
}

static void
add_rows (OwnThingsWindow *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  self->rows = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_row_spacing (self->rows, SPACING);
  gtk_grid_set_column_spacing (self->rows, SPACING);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), MOST_HEIGHT);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), GTK_WIDGET (self->rows));
  bf_small_window_add_wide (self->frame, scroller);
  self->words = bf_small_window_add_words (self->frame, "");
}

void
bf_own_things_window_open (GtkWidget *anchor, BfDocument *document, BfOwnThing what)
{
  OwnThingsWindow *self;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && bf_document_get_part (document) != NULL);
  g_return_if_fail (what < BF_N_OWN_THINGS);

  self = g_new0 (OwnThingsWindow, 1);
  self->document = g_object_ref (document);
  self->what = what;
  self->frame = bf_small_window_new (anchor, _ (kinds[what].title));
  g_object_set_data_full (G_OBJECT (self->frame->window), "own-things", self,
                          own_things_window_free);
  add_rows (self);
  bf_small_window_present (self->frame, _ ("_Close"));
  show (self);
  gtk_widget_child_focus (GTK_WIDGET (self->rows), GTK_DIR_TAB_FORWARD);
}
