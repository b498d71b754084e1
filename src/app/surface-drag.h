/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "app/surface-scene.h"

/* An edge or a point that is being dragged: the part follows, and all of it is one step. It knows
 * no widget. */

typedef struct _BfSurfaceDrag BfSurfaceDrag;

/* Takes hold of what is selected, at a point of the surface; the picture that it lies in counts.
 * Returns: (transfer full), or NULL where nothing there can be dragged. */
BfSurfaceDrag *bf_surface_drag_begin (BfDocument *document,
                                      BfSurfaceScene *scene,
                                      BfSelection selection,
                                      BfVec2 px) G_GNUC_WARN_UNUSED_RESULT;

/* Where the pointer is now. finely: sizes need not be whole ones. Only remembers it. */
void bf_surface_drag_to (BfSurfaceDrag *drag, BfVec2 px, gboolean finely);

/* Changes the part to where the pointer was last, once a frame. FALSE where that was nothing
 * new. */
gboolean bf_surface_drag_follow (BfSurfaceDrag *drag);

/* Lets go; back: as if nothing had been. Frees the drag. */
void bf_surface_drag_end (BfSurfaceDrag *drag, gboolean back);
