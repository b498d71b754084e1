/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/surface-scene.h"
#include "app/surface-view.h"

G_BEGIN_DECLS

/* The bench top: the blank lying flat at the left, the formed part standing at the right. */

#define BF_TYPE_SURFACE (bf_surface_get_type ())
G_DECLARE_FINAL_TYPE (BfSurface, bf_surface, BF, SURFACE, GtkWidget)

/* Called once: what lies on the bench, and how one looks at it. */
void bf_surface_set_document (BfSurface *self, BfDocument *document, BfSurfaceView *view);

/* Flies to a point of the blank and marks it for a moment. */
void bf_surface_show_place (BfSurface *self, BfVec2 blank_mm);

BfSurfaceScene *bf_surface_get_scene (BfSurface *self);
BfSurfaceView *bf_surface_get_view (BfSurface *self);

G_END_DECLS
