/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"
#include "core/ring.h"
#include "fold/fix.h"

/* The one result that everything is drawn from: a part's blank, its formed shape, its bends,
 * reliefs, seams and checks. bf_fold() is a pure function of the part; a BfFold is
 * reference-counted and never changes.
 *
 * In the flat, x and y are the base's drawn coordinates. For an edge, u runs along it from its
 * start and v outward from the drawn line. */

typedef enum
{
  BF_SEVERITY_MUST_FIX,
  BF_SEVERITY_LOOK_AT,
  BF_SEVERITY_GOOD_TO_KNOW,
} BfSeverity;

typedef struct
{
  const char *code; /* "flange-too-short": static */
  BfSeverity severity;
  char *where;          /* "front", "base:2", "front:1" */
  double found, needed; /* NAN where there is no number */
  char *message;        /* a translated sentence */
  BfVec2 place;         /* a point of the blank near it */
  BfFix fix;            /* what one click would change; left out where nothing would do */
} BfCheck;

/* A slot along a bend line, that hands may bend what is left. A disc leaves a longer one on the
 * face that it comes from (near) than on the other. */
typedef struct
{
  BfVec2 at;        /* its middle */
  double length_mm; /* the mean of near and far: what counts, and what the blank shows */
  double near_mm, far_mm;
  double width_mm;
  double angle_rad; /* of its length, from the blank's x */
  BfRing *ring;     /* in the blank, counter-clockwise */
} BfBendSlot;

/* One bend line of the blank, and what making it takes. */
typedef struct
{
  const char *flange; /* the id; the part's string */
  guint face;         /* index of the flange's face */
  double angle_rad;
  BfTurn turn;
  BfBendWay way;
  double inside_radius_mm; /* 0 at a score */
  double score_left_mm;    /* what the score leaves of the metal; NAN where there is none */
  double groove_mm;        /* how wide the score is at least; NAN likewise */
  double k;                /* what the rule amounts to */
  double k_error;          /* how far off that may be either way */
  double allowance_mm;
  double setback_mm; /* by the part's measure */
  double deduction_mm;
  BfVec2 line[2];      /* the bend line in the flat, from its start to its end */
  BfVec2 zone[4];      /* the bend zone: parent's tangent start, end; flange's tangent end, start */
  double moment_nm;    /* with the metal that is left; NAN for a metal that is not known */
  double lever_mm;     /* from the bend line to where it is pushed; NAN at a brake */
  double force_n;      /* moment / lever; NAN where either is */
  double limit_n;      /* what the person can push */
  double overbend_rad; /* how far past the angle to go so that it springs back to it */
  double kept;         /* share of the bend line that is metal, slots and openings taken off */
  GArray *slots;       /* BfBendSlot, from the line's start to its end */
} BfBendResult;

typedef enum
{
  BF_RELIEF_KIND_CORNER,
  BF_RELIEF_KIND_END,
} BfReliefKind;

/* Metal taken away where bends end, so that they can be made. */
typedef struct
{
  BfReliefKind kind;
  BfReliefShape shape; /* round; square for a notch or a square relief */
  char *where;         /* "base:2", "front:1" for a corner; the flange's id for an end */
  BfVec2 at;           /* the centre */
  double need_mm;      /* by geometry alone */
  double diameter_mm;  /* as drawn; the side for a square, the width for a notch */
  double drill_mm;     /* NAN where it is not drilled, or no drill owned has the size asked */
  char *drill;         /* "6.5 mm"; NULL where drill_mm is NAN */
  BfRing *ring;        /* the outline of the cut */
} BfRelief;

/* A hole or cut-out in the blank. */
typedef struct
{
  guint face;             /* index of the face it is drawn on */
  const BfOpening *asked; /* the part's */
  BfRing *ring;           /* in the blank, counter-clockwise */
} BfOpeningResult;

/* A line that a corner is folded on, which belongs to no flange. */
typedef struct
{
  BfVec2 line[2]; /* from the corner's foot outward */
  BfVec2 zone[4]; /* as a bend's */
  double angle_rad;
  BfTurn turn;
} BfCrease;

/* A corner that is not cut but folded double: two triangles of metal on the inside of the long
 * wall, which the end wall's metal goes round to. */
typedef struct
{
  char *where;         /* "base:2" */
  char *name;          /* its folds, as people call them: "front/right fold" */
  guint along, end;    /* faces of the long wall and of the end wall */
  BfVec2 foot, tip;    /* all its metal lies between the bends' ends there and the blank's corner */
  BfCrease creases[3]; /* where the long wall ends, the bisector, where the end wall ends */
  BfRing *ears[2];     /* the triangles at the long wall and at the end wall, in the blank */
  double rest_mm2;     /* what is crushed at its foot and at the rim: no face's and no fold's */
} BfFoldedCorner;

/* Two flanges that meet at a corner. */
typedef struct
{
  const char *before, *after; /* ids, counter-clockwise; the part's strings */
  double length_mm;           /* along the inside edges; 0 where walls only meet at a point */
  double gap_mm;              /* between the inside edges; NAN where they are not parallel */
} BfSeam;

/* A flat face: the base (index 0) or a flange. */
typedef struct
{
  const char *id;  /* "base" or the flange's id */
  int parent;      /* index of the face it hangs on; −1 for the base */
  int bend;        /* index in bends; −1 for the base */
  BfRing *outline; /* in the blank, before reliefs and openings */
} BfFace;

typedef enum
{
  BF_SOLID_SLAB,
  BF_SOLID_SECTOR,
} BfSolidKind;

/* A piece of the formed metal. It knows the piece of the blank that it is made of. */
typedef struct
{
  BfSolidKind kind;
  guint face; /* the face it is, or, for a sector, the flange that it bends up */
  guint on;   /* a sector only: the face that the bend leaves */

  const BfRing *outline; /* a slab only: in the blank, before reliefs and openings; the fold's */
  BfVec2 zone[4];        /* a sector only: in the blank, as a bend's */

  /* A slab: a flat of thickness t below the marking side. flat_to_local turns a point (x, y) of
   * the blank into (x, y) of the frame: local = rotate (p − flat_origin) into flat_ex, flat_ey.
   * A sector: the frame stands at the zone's end on the parent's tangent, on the marking side:
   * ex along the bend from end to start (against u), ey outward (v), ez out of the marking side. */
  BfFrame frame;
  BfVec2 flat_origin, flat_ex, flat_ey;

  /* A sector only: it runs from x = 0 to width, and turns by angle about the line
   * y = 0, z = radius (turned up) or z = −t − radius (turned down). radius is the inside
   * radius as the two faces have it, below 0 at a score, which turns about its bottom. skin is the
   * thickness of what bends, t but for a score; the metal lies between radius + t − skin and
   * radius + t from that line. */
  double width_mm, radius_mm, angle_rad, skin_mm;
  BfTurn turn;
} BfSolid;

typedef struct
{
  GArray *solids;    /* BfSolid */
  BfVec3 min, max;   /* box in the base's frame, metal included */
  double volume_mm3; /* before reliefs, slots and openings */
} BfFormed;

typedef struct
{
  GPtrArray *rings; /* BfRing: outer rings first, then holes */
  guint n_outer;    /* 1, but for a blank in pieces */
  BfBox box;        /* arcs exact */
  double area_mm2;
  double area_before_cuts_mm2;
  double mass_kg; /* less what grooves of scores take */
  double cut_length_mm;
} BfBlank;

typedef struct
{
  gatomicrefcount ref_count;
  BfPart *asked;    /* the part as asked, counter-clockwise */
  BfPart *part;     /* the part folded: as asked, with the tabs that its corners are joined by */
  GArray *faces;    /* BfFace: the base, then the flanges by id */
  GArray *bends;    /* BfBendResult, by id */
  GArray *reliefs;  /* BfRelief */
  GArray *openings; /* BfOpeningResult */
  GArray *folded;   /* BfFoldedCorner */
  GArray *seams;    /* BfSeam: not of folded corners, where nothing is to be joined */
  GArray *order;    /* BfBendStep: the bends in the order to make them (fold/bend-order.h) */
  GArray *checks;   /* BfCheck: must fix first, then look at, then good to know */
  BfBlank blank;
  BfFormed formed;
  struct _BfLayout *layout; /* private to src/fold */
} BfFold;

/* Folds a part. The part is copied. Never fails: what is wrong stands in checks, and
 * what can be drawn is drawn. Needs at least three base points (programmer's care; the reader
 * refuses fewer). Returns: (transfer full). */
BfFold *bf_fold (BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

/* The part with every opening measured from its edge's start, as a fold's own part has them: what a
 * window shows. Returns: (transfer full), the same part where it is so already. */
BfPart *bf_fold_settled (BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

BfFold *bf_fold_ref (BfFold *fold);
void bf_fold_unref (BfFold *fold);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfFold, bf_fold_unref)

static inline const BfFace *
bf_fold_face (const BfFold *fold, guint i)
{
  return &g_array_index (fold->faces, BfFace, i);
}

static inline const BfBendResult *
bf_fold_bend (const BfFold *fold, guint i)
{
  return &g_array_index (fold->bends, BfBendResult, i);
}

static inline const BfBendSlot *
bf_bend_slot (const BfBendResult *bend, guint i)
{
  return &g_array_index (bend->slots, BfBendSlot, i);
}

static inline const BfRelief *
bf_fold_relief (const BfFold *fold, guint i)
{
  return &g_array_index (fold->reliefs, BfRelief, i);
}

static inline const BfOpeningResult *
bf_fold_opening (const BfFold *fold, guint i)
{
  return &g_array_index (fold->openings, BfOpeningResult, i);
}

static inline const BfFoldedCorner *
bf_fold_folded_corner (const BfFold *fold, guint i)
{
  return &g_array_index (fold->folded, BfFoldedCorner, i);
}

/* The lines of all folded corners, three each. */
static inline guint
bf_fold_n_creases (const BfFold *fold)
{
  return fold->folded == NULL ? 0 : 3 * fold->folded->len;
}

static inline const BfCrease *
bf_fold_crease (const BfFold *fold, guint i)
{
  return &bf_fold_folded_corner (fold, i / 3)->creases[i % 3];
}

/* The same line for what draws and names bends: flange is the fold's name, and nothing is
 * known of its force; slots is NULL. There is nothing to be freed. */
BfBendResult bf_fold_crease_as_bend (const BfFold *fold, guint i);

static inline const BfSeam *
bf_fold_seam (const BfFold *fold, guint i)
{
  return &g_array_index (fold->seams, BfSeam, i);
}

static inline const BfCheck *
bf_fold_check (const BfFold *fold, guint i)
{
  return &g_array_index (fold->checks, BfCheck, i);
}

static inline const BfRing *
bf_blank_ring (const BfBlank *blank, guint i)
{
  return g_ptr_array_index (blank->rings, i);
}

static inline const BfSolid *
bf_formed_solid (const BfFormed *formed, guint i)
{
  return &g_array_index (formed->solids, BfSolid, i);
}

/* A point of the blank in the frame of a slab: x and y there, on the marking side. */
static inline BfVec2
bf_solid_local (const BfSolid *slab, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (p, slab->flat_origin);

  return bf_vec2 (bf_vec2_dot (d, slab->flat_ex), bf_vec2_dot (d, slab->flat_ey));
}

/* The index of the face of that id, or −1. */
int bf_fold_find_face (const BfFold *fold, const char *id);

/* Where a point of a face, counted as its openings are, lies in the blank; (0, 0) for a face that
 * has no place. */
BfVec2 bf_fold_face_point (const BfFold *fold, guint face, BfVec2 at_mm);

/* The face of that id, or NULL. */
static inline const BfFace *
bf_fold_face_called (const BfFold *fold, const char *id)
{
  int face = bf_fold_find_face (fold, id);

  return face >= 0 ? bf_fold_face (fold, (guint)face) : NULL;
}

/* The thickness of what bends: the metal's, or what a score leaves of it. */
static inline double
bf_bend_skin_mm (const BfFold *fold, const BfBendResult *bend)
{
  return isnan (bend->score_left_mm) ? fold->part->metal.thickness_mm : bend->score_left_mm;
}

/* TRUE where that ring of the blank is a slot of a bend. */
gboolean bf_fold_ring_is_slot (const BfFold *fold, guint ring);

/* How many checks have that severity. */
guint bf_fold_count_checks (const BfFold *fold, BfSeverity severity);

/* The formed shape with every bend turned by that fraction of its angle: 0 lies flat, 1 is
 * fold->formed. The zone keeps its width, so its radius grows as it opens. Box and volume are not
 * worked out (all 0). formed: (out), clear with bf_formed_clear(). */
void bf_fold_formed_at (const BfFold *fold, double fraction, BfFormed *formed);
void bf_formed_clear (BfFormed *formed);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfFormed, bf_formed_clear)

/* For a test: the point of space where a point of the blank ends up, on the marking side. face is
 * an index; p lies in that face's flat. */
BfVec3 bf_fold_place (const BfFold *fold, guint face, BfVec2 p);
