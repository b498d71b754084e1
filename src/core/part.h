/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <json-glib/json-glib.h>

#include "core/made.h"
#include "core/vec.h"

/* The part: what a person asked for, as a value.
 *
 * A BfPart is reference-counted and is not changed once it is shared: an edit copies it
 * (bf_part_copy), changes the copy and hands that out. What the person left out stays marked as
 * left out (NAN for a number, the _UNSET member for a choice); core/defaults.h tells what then
 * holds. Lengths are millimetres and angles degrees, as in the file. */

typedef enum
{
  BF_UNITS_MM,
  BF_UNITS_IN,
} BfUnits;

typedef enum
{
  BF_MEASURE_OUTSIDE,
  BF_MEASURE_INSIDE,
} BfMeasure;

typedef enum
{
  BF_TURN_UP,
  BF_TURN_DOWN,
} BfTurn;

typedef enum
{
  BF_CUTTING_DISC,
  BF_CUTTING_SNIPS,
  BF_CUTTING_TABLE,
  BF_CUTTING_SERVICE,
} BfCuttingWay;

typedef enum
{
  BF_DRILLS_METRIC,
  BF_DRILLS_FRACTION,
  BF_DRILLS_NUMBER,
  BF_DRILLS_LIST,
} BfDrillSet;

typedef enum
{
  BF_JOINING_WELDED,
  BF_JOINING_RIVETED,
  BF_JOINING_SCREWED,
  BF_JOINING_FOLDED,
  BF_JOINING_NONE,
} BfJoining;

typedef enum
{
  BF_BEND_WAY_UNSET,
  BF_BEND_WAY_BRAKE,
  BF_BEND_WAY_BAR,
  BF_BEND_WAY_SLOTS,
  BF_BEND_WAY_SCORE,
} BfBendWay;

typedef enum
{
  BF_ALLOWANCE_UNSET,
  BF_ALLOWANCE_K_FACTOR,
  BF_ALLOWANCE_DIN_6935,
  BF_ALLOWANCE_HANDBOOK,
  BF_ALLOWANCE_TRIAL_BEND,
} BfAllowanceRule;

typedef enum
{
  BF_HANDBOOK_SOFT,
  BF_HANDBOOK_MEDIUM,
  BF_HANDBOOK_HARD,
} BfHandbookGroup;

typedef enum
{
  BF_EDGE_INDEX, /* an edge of the base, by number */
  BF_EDGE_TIP,
  BF_EDGE_START,
  BF_EDGE_END,
} BfEdgeKind;

typedef enum
{
  BF_JOIN_UNSET,
  BF_JOIN_OPEN,
  BF_JOIN_COVERS_BEFORE,
  BF_JOIN_COVERS_AFTER,
  BF_JOIN_UNTRIMMED,
  BF_JOIN_TAB,
  BF_JOIN_FOLDED,
} BfJoin;

typedef enum
{
  BF_RELIEF_UNSET,
  BF_RELIEF_ROUND,
  BF_RELIEF_SQUARE,
  BF_RELIEF_NONE,
} BfReliefShape;

typedef enum
{
  BF_END_RELIEF_UNSET,
  BF_END_RELIEF_HOLE,
  BF_END_RELIEF_NOTCH,
} BfEndRelief;

typedef enum
{
  BF_FINISH_UNSET,
  BF_FINISH_SHARP,
  BF_FINISH_ROUND,
  BF_FINISH_CHAMFER,
} BfFinish;

typedef enum
{
  BF_OPENING_ROUND,
  BF_OPENING_SLOT,
  BF_OPENING_RECTANGLE,
  BF_OPENING_KEYHOLE,
  BF_OPENING_OUTLINE,
} BfOpeningShape;

typedef struct
{
  BfAllowanceRule rule;
  double k;              /* k-factor and trial-bend; NAN = not given */
  double k_error;        /* how far off that k may be either way; NAN or 0 = not given */
  BfHandbookGroup group; /* handbook */
  char *trial_id;        /* trial-bend; NULL = not given */
} BfAllowance;

/* How a bend is made. On a flange each member that is given overrides the part's. */
typedef struct
{
  BfBendWay way;
  double inside_radius_mm; /* NAN = not given */
  BfAllowance allowance;
  double slot_mm, bridge_mm; /* NAN = to be planned */
  double score_left_mm;      /* NAN = not given */
  double hand_limit_n;       /* NAN = not given */
  double hand_lever_mm;      /* NAN = not given */
  const char *corrected;     /* the day, "2026-01-31", on which sizes of a finished part corrected
                              * the radius or K; interned; NULL = they were not */
} BfBend;

typedef struct
{
  char *id;
  char *on; /* "base" or another flange's id */
  BfEdgeKind edge;
  guint edge_index; /* for BF_EDGE_INDEX */
  double length_mm;
  double angle_deg; /* the angle turned, 1 to 180 */
  BfTurn turn;
  double start_mm, end_mm; /* insets from the edge's two ends */
  double start_taper_deg, end_taper_deg;
  BfEndRelief start_relief, end_relief;
  BfBend bend;
  gboolean pinned;    /* its length matters: nothing but the person changes it */
  gboolean is_tab;    /* put there by a fold, to join a corner (fold/tabs.h); in no file */
  JsonObject *source; /* the object as read, for members we do not know; may be NULL */
} BfFlange;

/* A side that leans further is none. */
#define BF_TAPER_MAX_DEG 89.0

/* What is asked at a corner: of the base (`on` "base", `at` its point) or of a flange (`at` 0
 * where start meets tip, 1 where tip meets end). */
typedef struct
{
  char *on;
  guint at;
  BfJoin join;
  double gap_mm; /* NAN = not given */
  BfReliefShape relief;
  double relief_size_mm; /* diameter or side; NAN = to be worked out */
  gboolean along_after;  /* a square relief lies along the edge after, not the one before, which it
                          * was until the outline was turned round */
  BfFinish finish;
  double finish_size_mm; /* NAN = not given */
  JsonObject *source;
} BfCorner;

typedef struct
{
  char *on;
  BfOpeningShape shape;
  BfVec2 at_mm;
  double diameter_mm, length_mm, width_mm, angle_deg; /* those that the shape has; else NAN */
  GArray *points;                                     /* BfVec2, outline only; else NULL */
  gboolean pinned;   /* where it stands matters, as a flange's length may */
  gboolean from_end; /* on a flange, x counts from the end of its edge and back: see below */
  JsonObject *source;
} BfOpening;

/* Two flanges that want the same metal of the blank, and share it: each has what lies nearer to its
 * own bend. In which order they are named does not matter. */
typedef struct
{
  char *ids[2];
} BfParted;

typedef struct
{
  char *material;
  double thickness_mm;
  double grain_deg; /* direction of rolling from +x; NAN = unknown */
} BfMetal;

typedef struct
{
  BfCuttingWay by;
  double disc_diameter_mm; /* NAN = not given */
  double kerf_mm;          /* NAN = the way's default */
  double slack_mm;         /* NAN = the way's default */
  BfDrillSet drills;
  GArray *drill_list_mm; /* double, ascending; BF_DRILLS_LIST only, else NULL */
} BfCutting;

/* More alike are not made at a bench. */
#define BF_QUANTITY_MAX 9999

typedef struct
{
  gatomicrefcount ref_count;
  char *name;
  guint quantity; /* how many alike are made: 1 to BF_QUANTITY_MAX */
  BfUnits units;
  BfMeasure measure;
  BfMetal metal;
  BfCutting cutting;
  BfJoining joining;
  BfBend bend;
  GArray *outline;         /* BfVec2, counter-clockwise seen from the marking side */
  GArray *pinned_edges;    /* guint: base edges whose length matters, each once */
  GPtrArray *base_corners; /* BfCorner, only at and finish are used */
  GPtrArray *flanges;      /* BfFlange, in the file's order */
  GPtrArray *corners;      /* BfCorner */
  GPtrArray *openings;     /* BfOpening */
  GPtrArray *parted;       /* BfParted: each two flanges once */
  BfMade *made;            /* NULL: nothing is ticked yet */
  char *notes;
  gboolean other_face; /* seen on the other face of its metal, starts are ends; in no file */
  JsonObject *source;  /* the whole file as read; NULL for a part made here */
} BfPart;

/* A part of no flanges and an empty outline, with every choice left to the defaults.
 * Returns: (transfer full). */
BfPart *bf_part_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* A deep copy with one reference, free to be changed until it is shared. */
BfPart *bf_part_copy (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

BfPart *bf_part_ref (BfPart *part);
void bf_part_unref (BfPart *part);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfPart, bf_part_unref)

/* A flange of length 20 mm, turned up square on the base's edge 0, all else left to defaults.
 * The id is copied. */
BfFlange *bf_flange_new (const char *id) G_GNUC_WARN_UNUSED_RESULT;
BfFlange *bf_flange_copy (const BfFlange *flange) G_GNUC_WARN_UNUSED_RESULT;
void bf_flange_free (BfFlange *flange);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfFlange, bf_flange_free)

BfCorner *bf_corner_new (const char *on, guint at) G_GNUC_WARN_UNUSED_RESULT;
BfCorner *bf_corner_copy (const BfCorner *corner) G_GNUC_WARN_UNUSED_RESULT;
void bf_corner_free (BfCorner *corner);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfCorner, bf_corner_free)

BfOpening *bf_opening_new (const char *on, BfOpeningShape shape) G_GNUC_WARN_UNUSED_RESULT;
BfOpening *bf_opening_copy (const BfOpening *opening) G_GNUC_WARN_UNUSED_RESULT;
void bf_opening_free (BfOpening *opening);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfOpening, bf_opening_free)

BfParted *bf_parted_new (const char *a, const char *b) G_GNUC_WARN_UNUSED_RESULT;
void bf_parted_free (BfParted *parted);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfParted, bf_parted_free)

/* Whether two flanges share the metal that both want. */
gboolean bf_part_has_parted (const BfPart *part, const char *a, const char *b);

/* The flange of that id, or NULL. */
const BfFlange *bf_part_find_flange (const BfPart *part, const char *id);

/* What was asked at a corner, or NULL where nothing was. */
const BfCorner *bf_part_find_corner (const BfPart *part, const char *on, guint at);

/* What says how that corner is finished: an entry of the part's corners before one of its base's.
 * NULL where nothing does. */
const BfCorner *bf_part_find_finish (const BfPart *part, const char *on, guint at);

/* The base's points, and how many. */
static inline guint
bf_part_n_points (const BfPart *part)
{
  return part->outline->len;
}

static inline BfVec2
bf_part_point (const BfPart *part, guint i)
{
  return g_array_index (part->outline, BfVec2, i % part->outline->len);
}

static inline guint
bf_part_n_flanges (const BfPart *part)
{
  return part->flanges->len;
}

static inline const BfFlange *
bf_part_flange (const BfPart *part, guint i)
{
  return g_ptr_array_index (part->flanges, i);
}

/* The same shape written another way round: a base drawn clockwise is turned so that it runs
 * counter-clockwise, keeping point 0, and edges, points, start and end, tapers, before and after
 * go with it. Does nothing to a base that already runs counter-clockwise. */
void bf_part_make_counter_clockwise (BfPart *part);

/* The part seen in a mirror (x becomes −x): same words, other hand. Returns: (transfer full).
 *
 * Of both: a flange that hangs on another flange has an edge that corners may trim, whose length
 * only folding knows. What was measured from its start is measured from its end then (from_end). */
BfPart *bf_part_mirror (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
