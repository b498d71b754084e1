/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/make-page.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/page-picture.h"
#include "app/settings.h"
#include "paint/template.h"

#define PICTURE_WIDTH_PX 220

struct _BfMakePage
{
  GtkWidget parent_instance;
  BfDocument *document;
  GSettings *settings; /* or NULL */
  BfFold *shown;       /* what the pictures are of; NULL for none yet */

  GtkWidget *box;
  GtkLabel *pages_label;
  GtkFlowBox *pages_box;
  GtkDropDown *paper_list;
};

G_DEFINE_FINAL_TYPE (BfMakePage, bf_make_page, GTK_TYPE_WIDGET)

static void
empty_pages (BfMakePage *self)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->pages_box))) != NULL)
    gtk_flow_box_remove (self->pages_box, child);
}

static void
say_pages (BfMakePage *self, const BfTemplate *template, const BfPaper *paper)
{
  guint n = bf_template_n_pages (template);
  /* Translators: %u is how many pages, %s a paper's name, such as A4 */
  g_autofree char *words =
      g_strdup_printf (ngettext ("The template at full size takes %u page of %s.",
                                 "The template at full size takes %u pages of %s.", n),
                       n, paper->name);
  gtk_label_set_label (self->pages_label, words);
}

static void
show_pages (BfMakePage *self, BfFold *fold)
{
  const BfPaper *paper = bf_settings_paper (self->settings);
  BfTemplateOptions options = { .paper = paper, .units = fold->part->units };
  g_autoptr (BfTemplate) template = bf_template_new (fold, &options);

  say_pages (self, template, paper);
  for (guint i = 0; i < bf_template_n_pages (template); i++)
    gtk_flow_box_append (self->pages_box, bf_page_picture_new (template, i, PICTURE_WIDTH_PX));
}

/* Pages are drawn when they are looked at, not at every edit. */
static void
update (BfMakePage *self)
{
  BfFold *fold = self->document != NULL ? bf_document_get_fold (self->document) : NULL;

  if (fold == self->shown || !gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  empty_pages (self);
  g_clear_pointer (&self->shown, bf_fold_unref);
  if (fold == NULL)
    return;
  self->shown = bf_fold_ref (fold);
  show_pages (self, fold);
}

/* A list of papers; the template is laid out anew on the one that is chosen. */
static void
paper_chosen_cb (BfMakePage *self)
{
  guint n;
  const BfPaper *papers = bf_papers (&n);
  guint chosen = gtk_drop_down_get_selected (self->paper_list);

  if (self->settings == NULL || chosen >= n ||
      &papers[chosen] == bf_settings_paper (self->settings))
    return;
  g_settings_set_string (self->settings, "paper", papers[chosen].name);
  g_clear_pointer (&self->shown, bf_fold_unref);
  update (self);
}

static void
list_papers (BfMakePage *self)
{
  guint n;
  const BfPaper *papers = bf_papers (&n);
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  for (guint i = 0; i < n; i++)
    gtk_string_list_append (names, papers[i].name);
  gtk_drop_down_set_model (self->paper_list, G_LIST_MODEL (names));
  /* What has the focus is a button within, which would be called by its class. */
  gtk_accessible_update_property (
      GTK_ACCESSIBLE (gtk_widget_get_first_child (GTK_WIDGET (self->paper_list))),
      GTK_ACCESSIBLE_PROPERTY_LABEL, _ ("Paper"), -1);
  for (guint i = 0; i < n; i++)
    if (&papers[i] == bf_settings_paper (self->settings))
      gtk_drop_down_set_selected (self->paper_list, i);
  g_signal_connect_object (self->paper_list, "notify::selected", G_CALLBACK (paper_chosen_cb), self,
                           G_CONNECT_SWAPPED);
}

static void
bf_make_page_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (bf_make_page_parent_class)->map (widget);
  update (BF_MAKE_PAGE (widget));
}

static void
bf_make_page_dispose (GObject *object)
{
  BfMakePage *self = BF_MAKE_PAGE (object);

  g_clear_object (&self->document);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->shown, bf_fold_unref);
  bf_widget_drop_children (GTK_WIDGET (self));
  G_OBJECT_CLASS (bf_make_page_parent_class)->dispose (object);
}

static void
bf_make_page_class_init (BfMakePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_make_page_dispose;
  widget_class->map = bf_make_page_map;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/make-page.ui");
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, box);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, pages_label);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, pages_box);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, paper_list);
}

static void
bf_make_page_init (BfMakePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
bf_make_page_set_document (BfMakePage *self, BfDocument *document, GSettings *settings)
{
  g_return_if_fail (BF_IS_MAKE_PAGE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  g_set_object (&self->settings, settings);
  list_papers (self);
  g_signal_connect_object (document, "changed", G_CALLBACK (update), self, G_CONNECT_SWAPPED);
  update (self);
}
