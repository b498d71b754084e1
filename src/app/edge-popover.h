/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/surface-view.h"

G_BEGIN_DECLS

/* The small popover at a selected edge, flange or point: its sizes, and what can be done there. Its
 * buttons run the actions here.… of the widget that it is on.
 *
 * Signal left: it was closed by its own key, and the keyboard is to go back. */

#define BF_TYPE_EDGE_POPOVER (bf_edge_popover_get_type ())
G_DECLARE_FINAL_TYPE (BfEdgePopover, bf_edge_popover, BF, EDGE_POPOVER, GtkPopover)

GtkWidget *bf_edge_popover_new (void);

/* Shows what there is at that selection. FALSE where there is nothing. */
gboolean bf_edge_popover_show (BfEdgePopover *self, BfDocument *document, BfSelection selection);

/* Gives the keyboard to the size that one most likely wants: the flange's length, else the
 * edge's. */
void bf_edge_popover_take_focus (BfEdgePopover *self);

G_END_DECLS
