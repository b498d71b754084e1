/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib-object.h>

#include "core/ring.h"

G_BEGIN_DECLS

/* How one looks at the bench top: where the blank lies, where the formed part stands, at what
 * scale, from which side, how far folded, and what is selected. It knows no widget, so that it can
 * be tried without a display.
 *
 * Pixels count from the surface's upper left corner, y down. Blank points are in mm, y up.
 *
 * Signal changed: something that is drawn is another. */

#define BF_TYPE_SURFACE_VIEW (bf_surface_view_get_type ())
G_DECLARE_FINAL_TYPE (BfSurfaceView, bf_surface_view, BF, SURFACE_VIEW, GObject)

/* What is selected: a face, and perhaps one of its edges. */
typedef struct
{
  int face; /* index in the fold's faces, or −1 */
  int edge; /* of the base: its number; of a flange: one of BfFlangeSide; −1: the face itself */
} BfSelection;

/* The edges of a flange, counter-clockwise from its bend. */
typedef enum
{
  BF_FLANGE_START = 1,
  BF_FLANGE_TIP = 2,
  BF_FLANGE_END = 3,
} BfFlangeSide;

#define BF_SELECTION_NONE ((BfSelection){ -1, -1 })

/* A corner of a face, as BfCorner counts them, is selected as an edge that counts down from −2. */
static inline BfSelection
bf_selection_corner (int face, guint at)
{
  return (BfSelection){ face, -2 - (int)at };
}

static inline gboolean
bf_selection_is_corner (BfSelection selection)
{
  return selection.face >= 0 && selection.edge <= -2;
}

static inline guint
bf_selection_corner_at (BfSelection selection)
{
  return (guint)(-2 - selection.edge);
}

/* Those of the base are the points of its outline, which can be moved. */
static inline BfSelection
bf_selection_point (guint point)
{
  return bf_selection_corner (0, point);
}

static inline gboolean
bf_selection_is_point (BfSelection selection)
{
  return selection.face == 0 && bf_selection_is_corner (selection);
}

/* A hole or cut-out of a face counts up from here, by its place in the part's list; the points of
 * its outline, if it has one, in steps as large above that. */
#define BF_SELECTION_OPENINGS (1 << 20)

/* An outline of more points than this comes from a drawing, not from a hand that moves them one by
 * one: those beyond can't be selected. */
#define BF_SELECTION_POINTS_MAX 200

static inline BfSelection
bf_selection_opening (int face, guint opening)
{
  return (BfSelection){ face, BF_SELECTION_OPENINGS + (int)opening };
}

static inline BfSelection
bf_selection_opening_point (int face, guint opening, guint point)
{
  return (BfSelection){ face, BF_SELECTION_OPENINGS * (2 + (int)point) + (int)opening };
}

/* TRUE for a point of an opening's outline, too. */
static inline gboolean
bf_selection_is_opening (BfSelection selection)
{
  return selection.face >= 0 && selection.edge >= BF_SELECTION_OPENINGS;
}

static inline guint
bf_selection_opening_index (BfSelection selection)
{
  return (guint)(selection.edge % BF_SELECTION_OPENINGS);
}

/* The point of the opening's outline; −1 for the opening as a whole. */
static inline int
bf_selection_point_of_opening (BfSelection selection)
{
  return selection.edge / BF_SELECTION_OPENINGS - 2;
}

/* The whole that a point of an opening belongs to. */
static inline BfSelection
bf_selection_whole_opening (BfSelection selection)
{
  return bf_selection_opening (selection.face, bf_selection_opening_index (selection));
}

static inline gboolean
bf_selection_is_same (BfSelection a, BfSelection b)
{
  return a.face == b.face && a.edge == b.edge;
}

BfSurfaceView *bf_surface_view_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* The room there is, in pixels. */
void bf_surface_view_set_size (BfSurfaceView *self, double width_px, double height_px);

/* How large words are against the usual (10 points at 96 dots an inch): larger ones get more room
 * beside the pictures. Kept between a half and four times. */
void bf_surface_view_set_text (BfSurfaceView *self, double times);
double bf_surface_view_get_text (BfSurfaceView *self);

/* What has to find room: the blank's box, and the radius in mm that the formed part needs round
 * its middle. */
void bf_surface_view_set_content (BfSurfaceView *self, const BfBox *blank, double radius_mm);

/* Pixels a millimetre, for both pictures alike. */
double bf_surface_view_get_scale (BfSurfaceView *self);

/* Where a point of the blank lies on the surface, and back. */
BfVec2 bf_surface_view_from_blank (BfSurfaceView *self, BfVec2 blank_mm);
BfVec2 bf_surface_view_to_blank (BfSurfaceView *self, BfVec2 px);

/* Where the middle of the formed part stands on the surface. */
BfVec2 bf_surface_view_get_formed_centre (BfSurfaceView *self);

/* Brings everything into sight again. */
void bf_surface_view_fit (BfSurfaceView *self);

/* Makes everything that many times as large, leaving the point px where it is. The scale stays
 * between a tenth of what fits and 40 times that. */
void bf_surface_view_zoom_at (BfSurfaceView *self, double factor, BfVec2 px);
void bf_surface_view_pan (BfSurfaceView *self, BfVec2 by_px);

/* Turns the formed part. elevation is kept between straight from below and straight from above. */
void bf_surface_view_turn (BfSurfaceView *self, double azimuth_rad, double elevation_rad);
double bf_surface_view_get_azimuth (BfSurfaceView *self);
double bf_surface_view_get_elevation (BfSurfaceView *self);
void bf_surface_view_set_direction (BfSurfaceView *self, double azimuth_rad, double elevation_rad);

/* How far it is folded: 0 lies flat, 1 is done; clamped. */
double bf_surface_view_get_fraction (BfSurfaceView *self);
void bf_surface_view_set_fraction (BfSurfaceView *self, double fraction);

BfSelection bf_surface_view_get_selection (BfSurfaceView *self);
void bf_surface_view_select (BfSurfaceView *self, BfSelection selection);

G_END_DECLS
