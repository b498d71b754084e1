/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/page-picture.h"

#include <glib/gi18n.h>

/* The page as lines and words, so that it is sharp on a dense screen too. */
static GdkPaintable *
draw_page (const BfTemplate *template, guint page, int width_px)
{
  BfTemplatePage place = bf_template_page (template, page);
  double scale = width_px / place.width_mm;
  graphene_size_t size =
      GRAPHENE_SIZE_INIT ((float)width_px, (float)ceil (place.height_mm * scale));
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, size.width, size.height));

  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_paint (cr);
  cairo_scale (cr, scale, scale);
  bf_template_draw_page (template, page, cr);
  cairo_destroy (cr);
  return gtk_snapshot_free_to_paintable (snapshot, &size);
}

GtkWidget *
bf_page_picture_new (const BfTemplate *template, guint page, int width_px)
{
  g_return_val_if_fail (template != NULL && page < bf_template_n_pages (template), NULL);

  BfTemplatePage place = bf_template_page (template, page);
  g_autoptr (GdkPaintable) drawn = draw_page (template, page, width_px);
  GtkWidget *picture = gtk_picture_new_for_paintable (drawn);
  /* Translators: a page of the template; %s is its label, such as A1 */
  g_autofree char *words = g_strdup_printf (_ ("Page %s"), place.label);

  gtk_picture_set_alternative_text (GTK_PICTURE (picture), words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (picture), GTK_ACCESSIBLE_PROPERTY_LABEL, words,
                                  -1);
  gtk_picture_set_can_shrink (GTK_PICTURE (picture), TRUE);
  gtk_widget_set_size_request (picture, width_px,
                               (int)(width_px * place.height_mm / place.width_mm));
  gtk_widget_set_halign (picture, GTK_ALIGN_CENTER);
  gtk_widget_set_valign (picture, GTK_ALIGN_START);
  gtk_widget_add_css_class (picture, "paper");
  return picture;
}
