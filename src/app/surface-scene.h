/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "app/surface-edges.h"
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

BfFold *bf_surface_scene_get_fold (BfSurfaceScene *scene);
BfSurfaceView *bf_surface_scene_get_view (BfSurfaceScene *scene);

/* The edges of what is shown (BfSurfaceEdge), or NULL where nothing is. Owned by the scene, until
 * it shows another fold. */
const GArray *bf_surface_scene_get_edges (BfSurfaceScene *scene);

/* While it is held, another fold does not move what is on the surface: something is being
 * dragged. */
void bf_surface_scene_set_held (BfSurfaceScene *scene, gboolean held);

/* What the caller puts on the bench itself: words of the blank keep off it. px: BfBox, in pixels;
 * copied. */
void bf_surface_scene_set_covered (BfSurfaceScene *scene, const GArray *px);

/* The two pictures. */
typedef enum
{
  BF_PICTURE_BLANK,
  BF_PICTURE_FORMED,
} BfPicture;

/* Where a point of a face's flat is seen, in pixels. FALSE where it is not there. */
gboolean bf_surface_scene_point_px (
    BfSurfaceScene *scene, guint face, BfVec2 blank_mm, BfPicture picture, BfVec2 *px);

/* Where an edge is seen, in pixels. FALSE where it is not there. */
gboolean bf_surface_scene_edge_px (BfSurfaceScene *scene,
                                   const BfSurfaceEdge *edge,
                                   BfPicture picture,
                                   BfVec2 px[2]);

/* By how many pixels the edge moves where the metal there gets 1 mm longer outward. */
BfVec2
bf_surface_scene_outward_px (BfSurfaceScene *scene, const BfSurfaceEdge *edge, BfPicture picture);

/* The box of a picture, in pixels, lines and words beside it not counted; min beyond max where
 * there is none. */
BfBox bf_surface_scene_box (BfSurfaceScene *scene, BfPicture picture);

/* The outline of the formed part, in pixels. */
#define BF_SURFACE_LINE_PX 1.4

/* Paints a picture; cr in pixels from the surface's upper left corner. dark: on a dark ground. */
void bf_surface_scene_paint_blank (BfSurfaceScene *scene, cairo_t *cr, gboolean dark);
void bf_surface_scene_paint_formed (BfSurfaceScene *scene, cairo_t *cr, gboolean dark);

/* So far to the right of the blank is still at the blank, in pixels. */
#define BF_SURFACE_BESIDE_PX 20.0

/* TRUE where a drag that begins there turns the formed part. */
gboolean bf_surface_scene_is_formed_side (BfSurfaceScene *scene, BfVec2 px);

/* Corners lie within what is bent or cut away; they count only where the person is busy with them,
 * that is, where they or an edge beside them, or a flange as a whole, are selected. */
gboolean bf_surface_scene_offers_corner (BfSurfaceScene *scene, BfSelection corner);

/* The corner that is offered, else the edge, else the face at a point of either picture;
 * BF_SELECTION_NONE beside them. */
BfSelection bf_surface_scene_pick (BfSurfaceScene *scene, BfVec2 px);

/* The face of the formed picture at a point, or −1. */
int bf_surface_scene_pick_formed (BfSurfaceScene *scene, BfVec2 px);
