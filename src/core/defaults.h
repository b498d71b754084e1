/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* What holds where a part leaves something out. The same everywhere; no locale enters here.
 * The figures are common practice unless the .c file names a source. */

double bf_default_slack_mm (BfCuttingWay by);
double bf_default_kerf_mm (BfCuttingWay by);
double bf_default_gap_mm (BfCuttingWay by);
BfEndRelief bf_default_end_relief (BfCuttingWay by);
BfJoin bf_default_join (BfJoining joining);

/* Radius and K that a way of bending gives by itself; a 180° bend (a hem) has 0 and 0.50. */
double bf_default_radius_mm (BfBendWay way, double thickness_mm, double angle_deg);
double bf_default_k (BfBendWay way, double angle_deg);

/* The skin that a score leaves where nobody says: two fifths of the metal (common practice: thin
 * enough for hands, thick enough to be milled and to hold together). */
double bf_default_score_left_mm (double thickness_mm);

/* What holds in this part. */
double bf_part_slack_mm (const BfPart *part);
double bf_part_kerf_mm (const BfPart *part);
/* TRUE where reliefs are drilled by hand, not cut by a machine. */
gboolean bf_part_drills_reliefs (const BfPart *part);
double bf_part_disc_diameter_mm (const BfPart *part);

/* The bend of a flange (NULL: of the part, at 90°), every member filled in: the flange's own, else
 * the part's, else the way's default. slot, bridge and hand stay NAN where nobody gave them, and
 * score where the bend is not scored either. The strings are the part's; do not free the result. */
BfBend bf_part_resolve_bend (const BfPart *part, const BfFlange *flange);

/* How two flanges that meet at a corner are joined, and the gap left between them. `corner` is
 * what was asked there, or NULL. BF_JOIN_FOLDED is returned as asked, foldable or not. */
BfJoin bf_part_resolve_join (const BfPart *part, const BfCorner *corner);
double bf_part_resolve_gap_mm (const BfPart *part, const BfCorner *corner);

BfEndRelief bf_part_resolve_end_relief (const BfPart *part, BfEndRelief asked);
