/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/surface-view.h"

G_BEGIN_DECLS

/* An edge as the keyboard and a screen reader meet it: it has a name and a place and can have the
 * focus. It draws nothing and takes no pointer: the bench top does both. */

#define BF_TYPE_EDGE_HANDLE (bf_edge_handle_get_type ())
G_DECLARE_FINAL_TYPE (BfEdgeHandle, bf_edge_handle, BF, EDGE_HANDLE, GtkWidget)

GtkWidget *bf_edge_handle_new (void);

/* name: translated ("Base edge 2, 200 mm, front wall"). */
void bf_edge_handle_show (BfEdgeHandle *self, BfSelection selection, const char *name);

BfSelection bf_edge_handle_get_selection (BfEdgeHandle *self);

G_END_DECLS
