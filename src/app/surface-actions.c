/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/edge-edits.h"
#include "app/opening-edits.h"
#include "app/surface-private.h"
#include "core/names.h"

typedef struct
{
  const char *name;
  BfOffers what;
} Action;

/* What makes something that has sizes goes on with them. */
#define GOES_ON (BF_OFFER_TURN_UP | BF_OFFER_TURN_DOWN | BF_OFFER_LIP | BF_OFFER_HEM)

static const Action actions[] = {
  { "here.turn-up", BF_OFFER_TURN_UP }, { "here.turn-down", BF_OFFER_TURN_DOWN },
  { "here.hem", BF_OFFER_HEM },         { "here.lip", BF_OFFER_LIP },
  { "here.copy", BF_OFFER_COPY },       { "here.point", BF_OFFER_POINT },
  { "here.remove", BF_OFFER_REMOVE },
};

static void
here_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  BfSurface *self = BF_SURFACE (widget);
  BfSelection now = bf_surface_view_get_selection (bf_surface_get_view (self));
  (void)parameter;

  for (guint i = 0; i < G_N_ELEMENTS (actions); i++)
    if (g_str_equal (actions[i].name, name))
      {
        BfOffers what = actions[i].what;
        BfSelection then = bf_edge_do (bf_surface_get_document (self), now, what);
        if ((what & GOES_ON) != 0)
          {
            bf_surface_view_select (bf_surface_get_view (self), then);
            bf_surface_popup (self, BF_PICTURE_BLANK, TRUE);
            return;
          }
        bf_surface_popdown (self);
        bf_surface_choose (self, then);
      }
}

/* parameter: the shape, by its word in a file. */
static void
cut_out_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  BfSurface *self = BF_SURFACE (widget);
  BfSelection now = bf_surface_view_get_selection (bf_surface_get_view (self));
  const char *word = g_variant_get_string (parameter, NULL);
  (void)name;

  for (BfOpeningShape shape = BF_OPENING_ROUND; shape <= BF_OPENING_OUTLINE; shape++)
    if (g_strcmp0 (bf_opening_shape_name (shape), word) == 0)
      {
        BfSelection then = bf_opening_add (bf_surface_get_document (self), now, shape);
        bf_surface_popdown (self);
        bf_surface_choose (self, then);
        return;
      }
}

void
bf_surface_class_install_actions (GtkWidgetClass *widget_class)
{
  for (guint i = 0; i < G_N_ELEMENTS (actions); i++)
    gtk_widget_class_install_action (widget_class, actions[i].name, NULL, here_action);
  gtk_widget_class_install_action (widget_class, "here.cut-out", "s", cut_out_action);
}
