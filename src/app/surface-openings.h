/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/surface-scene.h"

/* Holes and cut-outs on the bench top: where they are seen, and from where their place is
 * measured. Those that a corner's tab brings along are not the person's, and are left out. */

/* Appends those of a face to a list of BfSurfaceEdge, each with the points of its outline. */
void bf_surface_openings_add (GArray *edges, const BfFold *fold, guint face);

/* What is selected, or what a selected point belongs to, as the fold has it; NULL where that is no
 * opening of that face any more, or no point of it. */
const BfOpeningResult *bf_surface_opening_result (const BfFold *fold, BfSelection selection);

/* Its place as people measure it (bf_opening_place_mm), or that of the selected point. */
BfVec2 bf_surface_opening_place (const BfOpening *opening, BfSelection selection);

/* TRUE where it is that opening or one of its points that is selected: its points are seen. */
gboolean bf_surface_offers_points (BfSurfaceScene *scene, BfSelection opening);

/* "Hole in front, 6 mm", "Slot in the base, 40 mm", "Point 2 of the cut-out in front".
 * Returns: (transfer full). */
char *bf_surface_opening_name (const BfFold *fold, BfSelection selection) G_GNUC_WARN_UNUSED_RESULT;

/* The directions in the blank, unit vectors, that the two numbers of its place run along. */
void bf_surface_opening_axes (const BfFold *fold, BfSelection selection, BfVec2 axes[2]);

/* From where its place is measured: on the base from its outline's least x and y, on a flange from
 * 0, the edge's start and the drawn line. */
BfVec2 bf_surface_opening_datum (const BfFold *fold, BfSelection selection);

/* Lines in the blank along which its two distances are measured, from the datum to the opening. */
void bf_surface_opening_lines (const BfFold *fold, BfSelection selection, BfVec2 lines[2][2]);

/* Its outline as it is seen in a picture: appends BfVec2, in pixels. FALSE where it is not seen. */
gboolean
bf_surface_opening_px (BfSurfaceScene *scene, BfSelection selection, BfPicture picture, GArray *px);

/* The opening seen at a point of that picture, or BF_SELECTION_NONE. */
BfSelection bf_surface_openings_pick (BfSurfaceScene *scene, BfVec2 px, BfPicture picture);
