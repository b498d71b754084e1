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

/* The first flange on that edge, or NULL. */
const BfFlange *bf_part_flange_at (const BfPart *part, const BfEdge *edge);

/* --- flanges (core/edit-flange.c) --- */

/* A new flange of 20 mm, square, on the whole of that edge. id: (out) (transfer full): its name, a
 * plain one that is not taken yet ("front", "front 2"). */
BfPart *bf_edit_add_flange (const BfPart *part, const BfEdge *edge, BfTurn turn, char **id)
    G_GNUC_WARN_UNUSED_RESULT;

/* Takes a flange away with all that hangs on it, flanges, corners and openings, and what metal they
 * shared. */
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

/* A closed hem on the whole of that edge: turned back flat on the metal, as deep as
 * bf_hem_depth_mm(). id: as for bf_edit_add_flange(). */
BfPart *bf_edit_add_hem (const BfPart *part, const BfEdge *edge, BfTurn turn, char **id)
    G_GNUC_WARN_UNUSED_RESULT;

/* How deep a hem is made where nobody says: six times the metal, at least 8 mm (common practice:
 * less is hard to turn by hand). */
double bf_hem_depth_mm (const BfPart *part);

/* Insets from the edge's two ends. */
BfPart *bf_edit_flange_insets (const BfPart *part, const char *id, double start_mm, double end_mm)
    G_GNUC_WARN_UNUSED_RESULT;

/* By how much its two sides lean from square to the bend, in degrees up to BF_TAPER_MAX_DEG either
 * way; more than 0 narrows it towards its tip. */
BfPart *bf_edit_flange_tapers (const BfPart *part, const char *id, double start_deg, double end_deg)
    G_GNUC_WARN_UNUSED_RESULT;

/* What is cut where its bend ends within its edge; BF_END_RELIEF_UNSET: what the tool cuts best. */
BfPart *bf_edit_flange_end_reliefs (const BfPart *part,
                                    const char *id,
                                    BfEndRelief start,
                                    BfEndRelief end) G_GNUC_WARN_UNUSED_RESULT;

/* How one flange is bent (core/edit-bend.c): its own slots planned, those of other flanges staying
 * as they are; its own skin left under a score; its own lever. */
BfPart *bf_edit_flange_plan_slots (const BfPart *part, const char *id) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_flange_score_left (const BfPart *part,
                                   const char *id,
                                   double left_mm) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_flange_lever (const BfPart *part,
                              const char *id,
                              double lever_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The flange's own inside radius; NAN: the part's again. */
BfPart *bf_edit_flange_radius (const BfPart *part,
                               const char *id,
                               double inside_radius_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Every base edge without a flange gets one like that flange (which hangs on the base). Where every
 * base edge has one, they all become like it. */
BfPart *bf_edit_copy_all_round (const BfPart *part, const char *id) G_GNUC_WARN_UNUSED_RESULT;

/* Two flanges that want the same metal of the blank share it from now on: see BfParted. */
BfPart *
bf_edit_share_metal (const BfPart *part, const char *a, const char *b) G_GNUC_WARN_UNUSED_RESULT;

/* --- sizes that matter (core/edit-pins.c) --- */

/* What a person may pin, so that rounding marks leaves it as it is. */
typedef enum
{
  BF_PIN_FLANGE,  /* a flange's length; at: its place in part->flanges */
  BF_PIN_EDGE,    /* the length of a base edge */
  BF_PIN_OPENING, /* where an opening stands; at: its place in part->openings */
} BfPinKind;

gboolean bf_part_is_pinned (const BfPart *part, BfPinKind kind, guint at);
BfPart *bf_edit_pin (const BfPart *part, BfPinKind kind, guint at, gboolean pinned)
    G_GNUC_WARN_UNUSED_RESULT;

/* --- the base (core/edit-base.c) --- */

/* Length of a base edge in mm. */
double bf_part_edge_length_mm (const BfPart *part, guint edge);

/* Makes a base edge that long: everything beyond its end moves along its direction, so that a
 * rectangle stays one. Openings beyond move along. */
BfPart *
bf_edit_edge_length (const BfPart *part, guint edge, double length_mm) G_GNUC_WARN_UNUSED_RESULT;

/* --- the base's outline, point by point (core/edit-outline.c) --- */

/* The base becomes that outline, of at least three points; what hung on the old one is gone. One
 * that runs clockwise is turned round. */
BfPart *bf_edit_outline (const BfPart *part,
                         const BfVec2 *points,
                         guint n_points) G_GNUC_WARN_UNUSED_RESULT;

BfPart *bf_edit_move_point (const BfPart *part, guint point, BfVec2 to) G_GNUC_WARN_UNUSED_RESULT;

/* Moves a base edge that far outward, its ends along its neighbours, so that all angles stay. */
BfPart *
bf_edit_move_edge (const BfPart *part, guint edge, double outward_mm) G_GNUC_WARN_UNUSED_RESULT;

/* How far the base reaches inward from the line of that edge, in mm. */
double bf_part_edge_depth_mm (const BfPart *part, guint edge);

/* A new point on a base edge. A flange there stays on the longer piece; what counts edges and
 * points counts on. */
BfPart *bf_edit_add_point (const BfPart *part, guint edge, BfVec2 at) G_GNUC_WARN_UNUSED_RESULT;

/* The base without that point: its two edges become one. Where both have a flange, the one before
 * the point stays. Returns NULL where only three points are left. */
BfPart *bf_edit_remove_point (const BfPart *part, guint point) G_GNUC_WARN_UNUSED_RESULT;

/* --- corners (core/edit-corner.c) --- */

/* The relief at a corner. size: a diameter, or a side; NAN to have it worked out. */
BfPart *bf_edit_corner_relief (const BfPart *part,
                               const char *on,
                               guint at,
                               BfReliefShape shape,
                               double size_mm) G_GNUC_WARN_UNUSED_RESULT;

/* What is left between the flanges that meet there, not negative; NAN for the usual gap. */
BfPart *bf_edit_corner_gap (const BfPart *part, const char *on, guint at, double gap_mm)
    G_GNUC_WARN_UNUSED_RESULT;

BfPart *bf_edit_corner_join (const BfPart *part, const char *on, guint at, BfJoin join)
    G_GNUC_WARN_UNUSED_RESULT;

/* How a free corner is finished. size_mm: a round's radius, what a chamfer takes of either edge;
 * NAN for the usual size. */
BfPart *bf_edit_corner_finish (const BfPart *part,
                               const char *on,
                               guint at,
                               BfFinish finish,
                               double size_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Takes back what was asked there: how it is finished, or how it closes with its gap and relief. */
BfPart *bf_edit_corner_forget_finish (const BfPart *part,
                                      const char *on,
                                      guint at) G_GNUC_WARN_UNUSED_RESULT;
BfPart *
bf_edit_corner_forget_join (const BfPart *part, const char *on, guint at) G_GNUC_WARN_UNUSED_RESULT;

/* --- openings (core/edit-opening.c), by their place in the part's list --- */

/* Its place as people measure it: the centre of its round or of its length, the middle of an
 * outline's box. */
BfVec2 bf_opening_place_mm (const BfOpening *opening);

/* Moves an opening, of a part that is not shared, as it is. */
void bf_opening_move (BfOpening *opening, BfVec2 by_mm);

/* Where an opening stands: it goes there as it is. */
BfPart *
bf_edit_place_opening (const BfPart *part, guint index, BfVec2 place_mm) G_GNUC_WARN_UNUSED_RESULT;

/* A new opening, last in the list; it is copied. */
BfPart *bf_edit_add_opening (const BfPart *part,
                             const BfOpening *opening) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_remove_opening (const BfPart *part, guint index) G_GNUC_WARN_UNUSED_RESULT;

/* The points of an outline (BF_OPENING_OUTLINE), as it has them: one moved; a new one in the middle
 * between one and the next; one left out, NULL where only three are left. */
BfPart *bf_edit_opening_move_point (const BfPart *part, guint index, guint point, BfVec2 to_mm)
    G_GNUC_WARN_UNUSED_RESULT;
BfPart *
bf_edit_opening_add_point (const BfPart *part, guint index, guint after) G_GNUC_WARN_UNUSED_RESULT;
BfPart *bf_edit_opening_remove_point (const BfPart *part,
                                      guint index,
                                      guint point) G_GNUC_WARN_UNUSED_RESULT;

/* How many points an opening is given by: 0 for any but an outline. */
guint bf_opening_n_points (const BfOpening *opening);

/* What a shape has of sizes: a round its diameter, an outline none. */
typedef enum
{
  BF_OPENING_DIAMETER,
  BF_OPENING_LENGTH,
  BF_OPENING_WIDTH,
  BF_OPENING_ANGLE, /* in degrees, any; the others in mm, positive */
} BfOpeningSize;
#define BF_N_OPENING_SIZES 4

/* NAN for a size that its shape does not have. */
double bf_opening_size (const BfOpening *opening, BfOpeningSize size);

/* Gives the opening that size, which its shape has to have. */
BfPart *bf_edit_opening_give (const BfPart *part, guint index, BfOpeningSize size, double value)
    G_GNUC_WARN_UNUSED_RESULT;

/* Its diameter, or where it has none its width; an outline stays as it is. */
BfPart *
bf_edit_opening_size (const BfPart *part, guint index, double size_mm) G_GNUC_WARN_UNUSED_RESULT;

/* --- the set-up (core/edit-setup.c) --- */

BfPart *bf_edit_name (const BfPart *part, const char *name) G_GNUC_WARN_UNUSED_RESULT;

/* How many alike are made: 1 to BF_QUANTITY_MAX. */
BfPart *bf_edit_quantity (const BfPart *part, guint quantity) G_GNUC_WARN_UNUSED_RESULT;
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

/* --- the set-up's details (core/edit-details.c); NAN: the way's own again --- */

BfPart *bf_edit_kerf (const BfPart *part, double kerf_mm) G_GNUC_WARN_UNUSED_RESULT;

/* How far off a drilled hole may be. */
BfPart *bf_edit_slack (const BfPart *part, double slack_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The drills owned. sizes_mm: for BF_DRILLS_LIST, ascending (core/drills.h); else NULL. */
BfPart *bf_edit_drills (const BfPart *part,
                        BfDrillSet drills,
                        const GArray *sizes_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The part's inside radius. */
BfPart *bf_edit_bend_radius (const BfPart *part, double inside_radius_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The part's allowance, as the person chose it; BF_ALLOWANCE_UNSET: the way's own again. The id of
 * a trial bend is copied. */
BfPart *bf_edit_allowance (const BfPart *part,
                           const BfAllowance *allowance) G_GNUC_WARN_UNUSED_RESULT;

/* What the person can push, and the board that they push on. */
BfPart *
bf_edit_hand (const BfPart *part, double limit_n, double lever_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Slots and bridges of a given length instead of planned ones. */
BfPart *
bf_edit_slots (const BfPart *part, double slot_mm, double bridge_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The direction in which the metal was rolled, from the blank's x; NAN where it is not known. */
BfPart *bf_edit_grain (const BfPart *part, double grain_deg) G_GNUC_WARN_UNUSED_RESULT;

/* The skin that a score leaves, of every bend that says nothing of its own; NAN for the usual. */
BfPart *bf_edit_score_left (const BfPart *part, double left_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Counts every size outside or inside (core/edit-measure.c): the numbers change, and the metal does
 * not wherever numbers can say so. What no number can say moves by some thickness at most, and
 * bf_fold_metal_moved_mm() finds how much: bare metal beside a flange that ends within its edge or
 * at an obtuse corner is drawn to the flange's own line; a flange on a side hangs on its parent's
 * bare side, which has no other line; several flanges on one edge have one line; and an inset that
 * would have to be less than nothing is next to nothing. */
BfPart *bf_edit_measure (const BfPart *part, BfMeasure measure) G_GNUC_WARN_UNUSED_RESULT;

/* --- the making (core/edit-made.c) --- */

/* Ticks a step of the work, or takes its tick away. blank: which blank it is done to; ticks of
 * another one are dropped. */
BfPart *bf_edit_tick (const BfPart *part, const char *blank, const char *step, gboolean done)
    G_GNUC_WARN_UNUSED_RESULT;

/* In what lengths are shown; nothing else changes. */
BfPart *bf_edit_units (const BfPart *part, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
