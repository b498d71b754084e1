/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/page-picture.h"

#include <glib/gi18n.h>

/* Drawn larger than shown, so that it is sharp on a dense screen too. */
#define OVERSAMPLE 2

static GdkTexture *
texture_of (cairo_surface_t *surface)
{
  int width = cairo_image_surface_get_width (surface);
  int height = cairo_image_surface_get_height (surface);
  int stride = cairo_image_surface_get_stride (surface);

  cairo_surface_flush (surface);
  g_autoptr (GBytes) bytes = g_bytes_new_with_free_func (
      cairo_image_surface_get_data (surface), (gsize)height * (gsize)stride,
      (GDestroyNotify)cairo_surface_destroy, cairo_surface_reference (surface));
  return gdk_memory_texture_new (width, height, GDK_MEMORY_DEFAULT, bytes, (gsize)stride);
}

static GdkTexture *
draw_page (const BfTemplate *template, guint page, int width_px)
{
  BfTemplatePage place = bf_template_page (template, page);
  double scale = width_px / place.width_mm;
  int height_px = (int)ceil (place.height_mm * scale);
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width_px, height_px);
  cairo_t *cr = cairo_create (surface);

  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_paint (cr);
  cairo_scale (cr, scale, scale);
  bf_template_draw_page (template, page, cr);
  cairo_destroy (cr);
  GdkTexture *texture = texture_of (surface);
  cairo_surface_destroy (surface);
  return texture;
}

GtkWidget *
bf_page_picture_new (const BfTemplate *template, guint page, int width_px)
{
  g_return_val_if_fail (template != NULL && page < bf_template_n_pages (template), NULL);

  BfTemplatePage place = bf_template_page (template, page);
  g_autoptr (GdkTexture) texture = draw_page (template, page, width_px * OVERSAMPLE);
  GtkWidget *picture = gtk_picture_new_for_paintable (GDK_PAINTABLE (texture));
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
