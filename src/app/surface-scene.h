/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "app/surface-view.h"
#include "fold/fold.h"

/* What stands on the bench top, drawn and pointed at. It needs no display: the widget lends it a
 * cairo context, and so can a test. */

typedef struct _BfSurfaceScene BfSurfaceScene;

/* view is kept by reference. */
BfSurfaceScene *bf_surface_scene_new (BfSurfaceView *view) G_GNUC_WARN_UNUSED_RESULT;
void bf_surface_scene_free (BfSurfaceScene *scene);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfSurfaceScene, bf_surface_scene_free)

/* What to show, or NULL for an empty bench; kept by reference. Tells the view how much room it
 * needs. */
void bf_surface_scene_set_fold (BfSurfaceScene *scene, BfFold *fold);

/* The outline of the formed part, in pixels. */
#define BF_SURFACE_LINE_PX 1.4

/* Paints a picture; cr in pixels from the surface's upper left corner. dark: on a dark ground. */
void bf_surface_scene_paint_blank (BfSurfaceScene *scene, cairo_t *cr, gboolean dark);
void bf_surface_scene_paint_formed (BfSurfaceScene *scene, cairo_t *cr, gboolean dark);

/* TRUE where a drag that begins there turns the formed part. */
gboolean bf_surface_scene_is_formed_side (BfSurfaceScene *scene, BfVec2 px);

/* The face at a point of either picture, BF_SELECTION_NONE beside them. */
BfSelection bf_surface_scene_pick (BfSurfaceScene *scene, BfVec2 px);
