/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/recent-list.h"

#include <glib/gi18n.h>

#include "core/part-file.h"

#define MOST_SHOWN 4

struct _BfRecentList
{
  GtkWidget parent_instance;
  GtkWidget *title;
  GtkWidget *list;
};

G_DEFINE_FINAL_TYPE (BfRecentList, bf_recent_list, GTK_TYPE_WIDGET)

enum
{
  SIGNAL_CHOSEN,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static void
row_activated_cb (BfRecentList *self, GtkListBoxRow *row)
{
  g_signal_emit (self, signals[SIGNAL_CHOSEN], 0, g_object_get_data (G_OBJECT (row), "file"));
}

static GtkWidget *
row_new (GtkRecentInfo *info)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *row = gtk_list_box_row_new ();
  GFile *file = g_file_new_for_uri (gtk_recent_info_get_uri (info));
  g_autoptr (GFile) folder = g_file_get_parent (file);
  g_autofree char *where = folder != NULL ? g_file_get_parse_name (folder) : g_strdup ("");
  g_autofree char *name = g_strdup (gtk_recent_info_get_display_name (info));
  GtkWidget *where_label = gtk_label_new (where);

  if (g_str_has_suffix (name, BF_PART_FILE_SUFFIX))
    name[strlen (name) - strlen (BF_PART_FILE_SUFFIX)] = '\0';
  gtk_box_append (GTK_BOX (box), gtk_label_new (name));
  gtk_widget_add_css_class (where_label, "quiet");
  gtk_label_set_ellipsize (GTK_LABEL (where_label), PANGO_ELLIPSIZE_START);
  gtk_widget_set_hexpand (where_label, TRUE);
  gtk_label_set_xalign (GTK_LABEL (where_label), 1.0F);
  gtk_box_append (GTK_BOX (box), where_label);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  g_object_set_data_full (G_OBJECT (row), "file", file, g_object_unref);
  return row;
}

static gboolean
is_part (GtkRecentInfo *info)
{
  return g_str_has_suffix (gtk_recent_info_get_uri (info), BF_PART_FILE_SUFFIX) &&
         gtk_recent_info_exists (info);
}

static int
compare_by_age (gconstpointer a, gconstpointer b)
{
  GDateTime *x = gtk_recent_info_get_modified ((GtkRecentInfo *)a);
  GDateTime *y = gtk_recent_info_get_modified ((GtkRecentInfo *)b);
  return g_date_time_compare (y, x);
}

static void
fill (BfRecentList *self)
{
  GtkWidget *row;
  guint n = 0;
  GList *items = gtk_recent_manager_get_items (gtk_recent_manager_get_default ());

  while ((row = gtk_widget_get_first_child (self->list)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), row);
  items = g_list_sort (items, compare_by_age);
  for (GList *l = items; l != NULL && n < MOST_SHOWN; l = l->next)
    if (is_part (l->data))
      {
        gtk_list_box_append (GTK_LIST_BOX (self->list), row_new (l->data));
        n++;
      }
  g_list_free_full (items, (GDestroyNotify)gtk_recent_info_unref);
  gtk_widget_set_visible (self->title, n > 0);
  gtk_widget_set_visible (self->list, n > 0);
}

static void
bf_recent_list_dispose (GObject *object)
{
  BfRecentList *self = BF_RECENT_LIST (object);

  g_clear_pointer (&self->title, gtk_widget_unparent);
  g_clear_pointer (&self->list, gtk_widget_unparent);
  G_OBJECT_CLASS (bf_recent_list_parent_class)->dispose (object);
}

static void
bf_recent_list_class_init (BfRecentListClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_recent_list_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "recentlist");
  signals[SIGNAL_CHOSEN] = g_signal_new ("chosen", BF_TYPE_RECENT_LIST, G_SIGNAL_RUN_LAST, 0, NULL,
                                         NULL, NULL, G_TYPE_NONE, 1, G_TYPE_FILE);
}

static void
bf_recent_list_init (BfRecentList *self)
{
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));

  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 6);
  self->title = gtk_label_new (_ ("Or go on with"));
  gtk_widget_add_css_class (self->title, "quiet");
  gtk_widget_set_halign (self->title, GTK_ALIGN_START);
  gtk_widget_set_parent (self->title, GTK_WIDGET (self));
  self->list = gtk_list_box_new ();
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_NONE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Recent parts"), -1);
  gtk_widget_set_parent (self->list, GTK_WIDGET (self));
  g_signal_connect_object (self->list, "row-activated", G_CALLBACK (row_activated_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (gtk_recent_manager_get_default (), "changed", G_CALLBACK (fill), self,
                           G_CONNECT_SWAPPED);
  fill (self);
}

void
bf_recent_note (GFile *file)
{
  g_return_if_fail (G_IS_FILE (file));

  g_autofree char *uri = g_file_get_uri (file);
  gtk_recent_manager_add_item (gtk_recent_manager_get_default (), uri);
}
