/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/make-page.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/page-picture.h"
#include "paint/template.h"

#define PICTURE_WIDTH_PX 220

struct _BfMakePage
{
  GtkWidget parent_instance;
  BfDocument *document;
  BfFold *shown; /* what the pictures are of; NULL for none yet */

  GtkWidget *box;
  GtkLabel *pages_label;
  GtkFlowBox *pages_box;
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
say_pages (BfMakePage *self, const BfTemplate *template)
{
  guint n = bf_template_n_pages (template);
  const BfPaper *paper = bf_paper_of_locale ();
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
  BfTemplateOptions options = { .paper = bf_paper_of_locale (), .units = fold->part->units };
  g_autoptr (BfTemplate) template = bf_template_new (fold, &options);

  say_pages (self, template);
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
}

static void
bf_make_page_init (BfMakePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
bf_make_page_set_document (BfMakePage *self, BfDocument *document)
{
  g_return_if_fail (BF_IS_MAKE_PAGE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (update), self, G_CONNECT_SWAPPED);
  update (self);
}
