/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* A face's drawn outline as a chain of straight stretches, counter-clockwise in the blank: the
 * edges of the base, or a flap's start side, tip and end side. A stretch may carry flaps, and then
 * the face's metal ends at their tangents. */
typedef struct
{
  BfVec2 origin, e, n;    /* in the blank: a point is origin + u e + v n */
  double from_u, to_u;    /* where it starts and ends */
  int corner;             /* the corner at its start, as a file names it; −1 for none of those */
  const GPtrArray *flaps; /* BfFlap by start; NULL for none */
} BfStretch;

/* The chain of a face: the base for −1, else that flap's flat without its root line.
 * Returns: (transfer full): BfStretch. */
GArray *bf_stretches_new (const BfLayout *layout, int flap) G_GNUC_WARN_UNUSED_RESULT;

/* The line on which a flap's flat begins, taken the way the outline runs along it. */
BfStretch bf_stretch_root (const BfFlap *flap);

static inline BfVec2
bf_stretch_point (const BfStretch *stretch, double u, double v)
{
  return bf_vec2_along (bf_vec2_along (stretch->origin, stretch->e, u), stretch->n, v);
}

/* How many flaps it carries that have a place. */
guint bf_stretch_n_flaps (const BfStretch *stretch);

/* Its flap nearest that end, or NULL. */
const BfFlap *bf_stretch_outermost (const BfStretch *stretch, BfSideName name);

/* u on the stretch of where the flap's zone starts or ends. */
double bf_stretch_zone_u (const BfFlap *flap, BfSideName name);

/* How far the metal stands in from the drawn stretch at its start or end. */
double bf_stretch_offset (const BfStretch *stretch, BfSideName name);

/* Where the metal of one stretch meets that of the next, each moved in by its offset. FALSE where
 * they run on in one line. */
gboolean bf_stretch_corner (const BfStretch *before, const BfStretch *after, BfVec2 *corner);
