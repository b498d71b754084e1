/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* Edits: each a function from a part to a new part, which leaves the old one as it was. All return
 * (transfer full). A size that is no size (not finite, not positive where it has to be) is the
 * caller's fault; whether what comes out can be made is for the fold's checks to say. */

/* An edge that a flange hangs on or may hang on. */
typedef struct
{
  const char *on; /* "base" or a flange's id */
  BfEdgeKind kind;
  guint index; /* for BF_EDGE_INDEX */
} BfEdge;

/* The edge that a flange hangs on. The strings are the flange's. */
BfEdge bf_flange_edge (const BfFlange *flange);

/* The first flange on that edge, or NULL. */
const BfFlange *bf_part_flange_at (const BfPart *part, const BfEdge *edge);

/* --- flanges (core/edit-flange.c) --- */

/* A new flange of 20 mm, square, on the whole of that edge. id: (out) (transfer full): its name, a
 * plain one that is not taken yet ("front", "front 2"). */
BfPart *bf_edit_add_flange (const BfPart *part, const BfEdge *edge, BfTurn turn, char **id)
    G_GNUC_WARN_UNUSED_RESULT;

/* Takes a flange away with all that hangs on it: flanges, corners and openings. */
BfPart *bf_edit_remove_flange (const BfPart *part, const char *id) G_GNUC_WARN_UNUSED_RESULT;

BfPart *bf_edit_flange_length (const BfPart *part,
                               const char *id,
                               double length_mm) G_GNUC_WARN_UNUSED_RESULT;

/* angle: the angle turned, 1 to 180 degrees. */
BfPart *bf_edit_flange_angle (const BfPart *part,
                              const char *id,
                              double angle_deg) G_GNUC_WARN_UNUSED_RESULT;
BfPart *
bf_edit_flange_turn (const BfPart *part, const char *id, BfTurn turn) G_GNUC_WARN_UNUSED_RESULT;

/* Every base edge without a flange gets one like that flange (which hangs on the base). Where every
 * base edge has one, they all become like it. */
BfPart *bf_edit_copy_all_round (const BfPart *part, const char *id) G_GNUC_WARN_UNUSED_RESULT;

/* --- the base (core/edit-base.c) --- */

/* Length of a base edge in mm. */
double bf_part_edge_length_mm (const BfPart *part, guint edge);

/* Makes a base edge that long: everything beyond its end moves along its direction, so that a
 * rectangle stays one. Openings beyond move along. */
BfPart *
bf_edit_edge_length (const BfPart *part, guint edge, double length_mm) G_GNUC_WARN_UNUSED_RESULT;

/* --- the set-up (core/edit-setup.c) --- */

BfPart *bf_edit_name (const BfPart *part, const char *name) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_material (const BfPart *part, const char *material) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_thickness (const BfPart *part, double thickness_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Who cuts, and with what. disc_diameter_mm counts for BF_CUTTING_DISC alone; NAN leaves it.
 * Kerf and slack become the way's own again. */
BfPart *bf_edit_cutting (const BfPart *part,
                         BfCuttingWay by,
                         double disc_diameter_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The part's way of bending. Radius and allowance become the way's own again. */
BfPart *bf_edit_bend_way (const BfPart *part, BfBendWay way) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_joining (const BfPart *part, BfJoining joining) G_GNUC_WARN_UNUSED_RESULT;

/* Counts every size outside or inside (core/edit-measure.c): the numbers change, the metal does
 * not. Flanges on the sides of sloping flanges are taken as if those were square. Returns NULL
 * where a flange is too short to be counted that way. */
BfPart *bf_edit_measure (const BfPart *part, BfMeasure measure) G_GNUC_WARN_UNUSED_RESULT;

/* In what lengths are shown; nothing else changes. */
BfPart *bf_edit_units (const BfPart *part, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
