/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Limits of a flap's side. */

/* A limit in the inside surface: the zone heeds it at the inside mould line too. */
void bf_side_add (BfSide *side, double at_mm, double lean);

/* A limit of the flat alone. */
void bf_side_add_flat (BfSide *side, double at_mm, double lean);

/* q of the side at w: the most inward of its limits (the edge's end where it has none). */
double bf_side_at (const BfSide *side, double w_mm);

/* The side as points (q, w) from w = 0 to w = to_mm, corner by corner; appends BfVec2. */
void bf_side_trace (const BfSide *side, double to_mm, GArray *points);

/* Keeps every point of the flap's flat, of its zone, or of both, on both faces, at N · x >= c in
 * space. */
void bf_side_keep_flat_beyond_plane (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec3 normal, double c_mm);
void bf_side_keep_zone_beyond_plane (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec3 normal, double c_mm);
void bf_side_keep_beyond_plane (
    const BfLayout *layout, BfFlap *flap, BfSideName name, BfVec3 normal, double c_mm);

/* A line of the blank, and the side of it that is kept: k · (x − through) >= c. */
typedef struct
{
  BfVec2 k, through;
  double c_mm;
} BfFlatLine;

/* Keeps the flat, the zone, or both of them beyond a line of the blank. */
void bf_side_keep_flat_beyond_line (BfFlap *flap, BfSideName name, BfFlatLine line);
void bf_side_keep_zone_beyond_line (BfFlap *flap, BfSideName name, BfFlatLine line);
void bf_side_keep_beyond_line (BfFlap *flap, BfSideName name, BfFlatLine line);

/* w of the inside mould line: where the inside faces of the flap and of its parent would meet. The
 * tangent's, 0, for a hem, whose faces do not meet. */
double bf_side_mould_w (const BfFlap *flap);

/* Works out where the zone ends, once all limits are in. */
void bf_side_settle (BfFlap *flap, BfSideName name);
