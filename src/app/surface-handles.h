/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/surface-scene.h"

/* A handle for each edge and point of what lies on the bench top, where it is seen. */

typedef struct _BfSurfaceHandles BfSurfaceHandles;

/* parent: the bench top, whose children they become; neither it nor the scene is kept alive. */
BfSurfaceHandles *bf_surface_handles_new (GtkWidget *parent,
                                          BfSurfaceScene *scene) G_GNUC_WARN_UNUSED_RESULT;
void bf_surface_handles_free (BfSurfaceHandles *handles);

/* Shows the edges of the scene's fold now. */
void bf_surface_handles_update (BfSurfaceHandles *handles);

/* Gives them their places, in the parent's size_allocate. */
void bf_surface_handles_allocate (BfSurfaceHandles *handles);

/* The handle of a selection, or NULL. */
GtkWidget *bf_surface_handles_find (BfSurfaceHandles *handles, BfSelection selection);

/* Appends the handle of a selection to what Tab walks: of corners the one that has the keyboard, of
 * points of a cut-out those of the one that is selected, of all others each. */
void
bf_surface_handles_add_stop (BfSurfaceHandles *handles, BfSelection selection, GPtrArray *stops);

/* What the handle with the keyboard stands for; BF_SELECTION_NONE where none has it. */
BfSelection bf_surface_handles_get_focused (BfSurfaceHandles *handles);
