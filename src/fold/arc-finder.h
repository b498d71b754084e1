/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Remembers rings while an overlay handles them as chords, and gives back exact points and true
 * arcs from what the overlay returns. */
typedef struct _BfArcFinder BfArcFinder;

BfArcFinder *bf_arc_finder_new (void) G_GNUC_WARN_UNUSED_RESULT;
void bf_arc_finder_free (BfArcFinder *finder);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfArcFinder, bf_arc_finder_free)

/* The rings of both lists (nullable) are what is flattened from now on is overlaid with; a ring
 * among them that is flattened itself is no matter. Chords cross and pass them as their arcs do.
 * The rings have to live until nothing more is flattened. */
void bf_arc_finder_set_beside (BfArcFinder *finder, const GPtrArray *rings, const GPtrArray *more);

/* Flattens a ring into points (BfVec2), remembering its vertices and arcs. */
void bf_arc_finder_flatten (BfArcFinder *finder, const BfRing *ring, GArray *points);

/* A ring of the overlay's result, its last point not repeated, with exact points and true arcs. */
BfRing *bf_arc_finder_restore (const BfArcFinder *finder,
                               const BfVec2 *points,
                               guint n_points) G_GNUC_WARN_UNUSED_RESULT;
