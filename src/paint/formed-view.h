/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/formed-stack.h"

/* A picture of the formed metal in parallel projection, hidden faces hidden, drawn as cairo paths
 * so that it prints sharp.
 *
 * Positions in the picture are mm of metal at full size: x to the right, y down, the base's
 * origin at (0, 0). Painting multiplies them by the style's scale. */

/* Where the eye is: azimuth from +x toward +y of the base, elevation above its marking side. */
typedef struct
{
  double azimuth_rad, elevation_rad;
} BfFormedLook;

/* Colours are 0xRRGGBB. Widths are in cr's units, as positions times scale are. */
typedef struct
{
  guint32 metal;     /* the marking side where light falls square on it */
  guint32 line;      /* edges */
  guint32 tint;      /* what a face that is highlighted is coloured with */
  double dark;       /* how bright, of 1, metal is that turns away from the light */
  double other_side; /* how bright the other side is beside the marking side */
  double rim;        /* how bright the thickness is beside the marking side */
  double line_width; /* of an outline; inner edges are thinner; 0 for no lines */
  double scale;      /* cr's units that 1 mm of metal takes */
  int highlight;     /* index of the face that is highlighted, −1 for none */
} BfFormedStyle;

typedef struct BfFormedView BfFormedView;

/* Bench-top greys for white paper, or for a dark window; scale 1, nothing highlighted. */
BfFormedStyle bf_formed_style (gboolean dark);

/* The picture of formed (fold->formed, or one bent less far) from there. Neither is kept. Draws
 * whatever there is, metal that passes through metal too. Returns: (transfer full). */
BfFormedView *bf_formed_view_prepare (const BfFold *fold,
                                      const BfFormed *formed,
                                      BfFormedLook look) G_GNUC_WARN_UNUSED_RESULT;

/* The same after an earlier picture, which it takes over (and may be NULL): made the faster the
 * more of the metal is as it was. Returns: (transfer full). */
BfFormedView *bf_formed_view_prepare_after (BfFormedView *before,
                                            const BfFold *fold,
                                            const BfFormed *formed,
                                            BfFormedLook look) G_GNUC_WARN_UNUSED_RESULT;

/* Looks at the same metal from elsewhere. */
void bf_formed_view_look (BfFormedView *view, BfFormedLook look);

/* The picture of a scene made elsewhere, which the view takes over. Returns: (transfer full). */
BfFormedView *bf_formed_view_new (BfFormedScene *scene,
                                  BfFormedLook look) G_GNUC_WARN_UNUSED_RESULT;
void bf_formed_view_free (BfFormedView *view);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfFormedView, bf_formed_view_free)

/* The box of the metal in the picture, lines' width not counted; all 0 where there is none. */
BfBox bf_formed_view_box (const BfFormedView *view);

/* Where a point of space, in the base's frame, is in the picture. */
BfVec2 bf_formed_view_project (const BfFormedView *view, BfVec3 p);

/* Paints the picture; cr's state is left as it was. */
void bf_formed_view_paint (const BfFormedView *view, cairo_t *cr, const BfFormedStyle *style);

/* The face that is seen at a place of the picture, a bend counting as the flange it bends up;
 * −1 where there is no metal. */
int bf_formed_view_pick (const BfFormedView *view, BfVec2 at);

/* The pieces in the order they are painted in, owned by the view; and the picture's directions. */
const BfFormedStack *bf_formed_view_stack (const BfFormedView *view);
BfFrame bf_formed_view_eye (const BfFormedView *view);
