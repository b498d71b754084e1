/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/surface-view.h"
#include "core/edit.h"
#include "fold/fold.h"

/* The edges of a fold that a person can point at or walk along: those of the base, the tips and
 * sides of flanges, corners of both, and holes and cut-outs. */

typedef struct
{
  BfSelection selection;
  BfVec2 blank[2];  /* where it lies in the blank, from start to end; of an edge that carries a
                     * flange, the bend line; of a point, twice the point; of an opening, two corners
                     * of its box */
  BfVec2 formed[2]; /* where its metal ends, in the flat of its face: for the formed part */
  BfVec2 outward;   /* in the blank, a unit vector; zero for a point and an opening */
  double length_mm; /* of a base edge as it is drawn; of a tip, how far it is from its bend; of a
                     * side, of its metal; 0 for a point */
} BfSurfaceEdge;

/* All of them, as one walks round: each base edge, then what hangs on it (a flange's start, its
 * tip with what that carries, its end), then the point where the base edge ends. Before and after a
 * tip stand the flange's corners, where anything can be asked there. A hem has no sides: nothing
 * can hang there. Openings of a flange come after its tip, those of the base at the end. Returns:
 * (transfer full) (element-type BfSurfaceEdge). */
GArray *bf_surface_edges (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* The place in that list of a selection, −1 where it is none of them. */
int bf_surface_edges_find (const GArray *edges, BfSelection selection);

static inline const BfSurfaceEdge *
bf_surface_edge (const GArray *edges, guint i)
{
  return &g_array_index (edges, BfSurfaceEdge, i);
}

/* What it is called: "Base edge 2, 200 mm, front wall", "Tip of front, 40 mm", "Start side of
 * front, 38 mm", "Start corner of front", "Base point 3".
 * Returns: (transfer full). */
char *bf_surface_edge_name (const BfFold *fold,
                            const BfSurfaceEdge *edge) G_GNUC_WARN_UNUSED_RESULT;

/* The edge as flanges name it; for a flange's face, its tip. FALSE for a corner and for nothing.
 * The strings are the fold's. */
gboolean bf_selection_to_edge (const BfFold *fold, BfSelection selection, BfEdge *edge);

/* The flange that a selection is about: the one selected, or the one on the selected edge of the
 * base or side of a flange. NULL where there is none. */
const BfFlange *bf_selection_flange (const BfFold *fold, BfSelection selection);

/* Faces are counted anew in each fold: what was selected before, as it counts in this one, where id
 * is its face's; BF_SELECTION_NONE where it is no more. fold and id may be NULL. */
BfSelection bf_selection_in (const BfFold *fold, const char *id, BfSelection before);

/* The edge that a flange hangs on; BF_SELECTION_NONE where that is no edge of the fold. */
BfSelection bf_selection_under (const BfFold *fold, const BfFlange *flange);

/* TRUE where the base is a rectangle: four square corners. */
gboolean bf_part_is_rectangle (const BfPart *part);
