/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* Parts for tests. All are mild steel 1.5 mm, bent over a bar to R 1.5 at K 0.42, sizes outside,
 * gap 0.5. */

/* A part of no flanges on that outline. */
BfPart *make_part (const BfVec2 *outline, guint n_points);

/* A rectangle, its first corner at (0, 0). */
BfPart *make_rectangle (double width_mm, double depth_mm);

/* Adds a flange and returns it, to be changed while the part is not shared. */
BfFlange *add_flange (BfPart *part, const char *id, guint edge, double length_mm, double angle_deg);
BfFlange *
add_lip (BfPart *part, const char *id, const char *on, double length_mm, double angle_deg);

/* A flange on a flange's start side or end side. */
BfFlange *add_ear (BfPart *part, const char *id, const char *on, BfEdgeKind edge, double length_mm);

/* A tray of w × d with walls all round, ids "f0" … */
BfPart *make_tray (double width_mm, double depth_mm, double wall_mm, double angle_deg);

/* A base with a bay 100 mm wide in one edge, and walls "left" and "right" of 60 mm into it, which
 * want the same metal. */
BfPart *make_bay (void);

/* A regular base of n sides with walls all round. */
BfPart *make_ring (guint n_sides, double circumradius_mm, double wall_mm, double angle_deg);

/* A random part: base of 3 to 8 corners, or an L, walls on some edges, lips on some walls; sizes
 * such as people make. Any part of one seed is the same everywhere. */
BfPart *make_random (guint seed);

/* The random part of that seed with flanges on the sides of some of its walls, and on those again.
 */
BfPart *make_random_deep (guint seed);
