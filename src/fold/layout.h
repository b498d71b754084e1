/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/allowance.h"
#include "fold/fold.h"

/* The part while it is being unfolded: each flange as a flap with its place in the flat and in
 * space, and with its two sides. Private to src/fold.
 *
 * A flap's own coordinates are u along the bend from the edge's start, and w outward from the
 * flap's tangent (where its flat begins). A side is measured by q, inward from its end of the
 * edge, so that start and end read alike: q = u at the start, edge length − u at the end. */

typedef enum
{
  BF_SIDE_START,
  BF_SIDE_END,
} BfSideName;

/* A straight limit of a side: q >= at + lean · w. */
typedef struct
{
  double at_mm;
  double lean;
  gboolean to_mould_line; /* it bounds the zone at the inside mould line too, not just the flat */
} BfTrim;

#define BF_TRIMS_MAX 8

typedef struct
{
  BfTrim trims[BF_TRIMS_MAX];
  guint n_trims;
  double zone_limit_mm; /* the bend zone must stay at or inside this q */
  double zone_mm;       /* q at which the bend zone ends; known when the sides are settled */
  gboolean own;         /* the side has an inset or a taper of its own */
  gboolean bare_beside; /* the parent's metal goes on beside the zone: an end relief */
  gboolean at_root;     /* and that metal is the parent's own bend */
  int meeting;          /* index of the corner where it meets a flap of the next edge, or −1 */
} BfSide;

typedef struct
{
  BfVec3 origin;  /* u = 0, w = 0, on the marking side */
  BfVec3 e, d, m; /* along u, along w, out of the marking side */
} BfPose;

typedef struct
{
  const BfFlange *flange;
  int parent; /* flap index; −1 for the base */
  guint depth;
  BfBend bend;
  BfBendSums sums;
  double angle_rad;
  double radius_mm; /* as the faces have it: sums.face_radius_mm, below 0 at a score */

  /* The drawn edge it hangs on, in the parent's own coordinates and in the blank. */
  BfVec2 edge_start, edge_e, edge_n;
  BfVec2 flat_origin, flat_e, flat_n; /* u = 0 and v = 0 */
  double edge_length_mm;
  BfVec2
      beside[2]; /* on a flap's side: the lines that leave the edge's two ends, in the parent's */

  double tip_w_mm;       /* w of the drawn tip: length − setback */
  double tip_setback_mm; /* the largest setback among what its tip carries */
  double tip_shift_mm;   /* how much further out the tip is drawn where sizes count outside */
  GPtrArray *on_tip;     /* BfFlap that its tip carries, by start inset (not owned); or NULL */
  GPtrArray *on_side[2]; /* the same of its start side and its end side */
  BfSide sides[2];
  BfPose pose;
  gboolean placed; /* its edge exists, so that it can be drawn */
} BfFlap;

/* A corner of a face at which flanges of both edges meet. Its points and directions are in the
 * face's own coordinates: the blank's for the base, a flap's u and w for a flap. */
typedef struct
{
  int face; /* the flap whose corner it is; −1 for the base */
  guint at; /* the base's point; on a flap 0 where its start meets its tip, 1 where that ends */
  int before, after;     /* flap indices */
  const BfCorner *asked; /* or NULL */
  BfJoin join;
  double gap_mm;
  BfSideName end_wall; /* which gives way to the other: see fold/end-wall.h */
  gboolean tabbed;     /* joined by a tab, which is there: see fold/tabs.h */
  gboolean folded;     /* not cut, but folded double: see fold/folded-corner.h */
  double interior_rad;
  BfVec2 vertex, before_in, after_in; /* unit vectors along the edges, from it */
  BfVec2 outer_vertex;                /* the vertex counted outside, whatever the part's measure */
  gboolean has_crossing;
  BfVec2 tangent_crossing; /* P */
  BfVec2 bend_crossing;
} BfMeeting;

typedef struct _BfLayout
{
  BfPart *part; /* not owned: the fold's */
  double thickness_mm;
  BfFlap *flaps; /* in order of id */
  guint n_flaps;
  guint *order;           /* flap indices, parents first */
  GPtrArray **base_edges; /* for each base edge its flaps by start inset (BfFlap, not owned) */
  GArray *meetings;       /* BfMeeting */
  GArray *free_corners;   /* BfFreeCorner: what is to be rounded or chamfered */
  GArray *folded;         /* BfFoldedCorner, in order of the meetings that are folded */
  GArray *partings;       /* BfParting: see fold/parting.h */
  GArray *wanted;         /* BfWanted: see fold/wanted-twice.h */
  gboolean base_crosses;  /* the base's own outline crosses itself */
  gboolean wanted_twice;  /* some metal of the blank is wanted by two pieces, */
  BfVec2 wanted_twice_at; /* here */
} BfLayout;

/* The base's pose, lying flat. */
extern const BfPose bf_base_pose;

/* A direction of the pose's face, and a point of it, in space. */
static inline BfVec3
bf_pose_vector (const BfPose *pose, BfVec2 v)
{
  return bf_vec3_along (bf_vec3_scale (pose->e, v.x), pose->d, v.y);
}

static inline BfVec3
bf_pose_point (const BfPose *pose, BfVec2 p)
{
  return bf_vec3_add (pose->origin, bf_pose_vector (pose, p));
}

BfLayout *bf_layout_new (BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
void bf_layout_free (BfLayout *layout);

static inline BfMeeting *
bf_layout_meeting (const BfLayout *layout, guint i)
{
  return &g_array_index (layout->meetings, BfMeeting, i);
}

/* A point of a meeting's face in the blank, and a direction of it. */
BfVec2 bf_meeting_point (const BfLayout *layout, const BfMeeting *meeting, BfVec2 p);
BfVec2 bf_meeting_vector (const BfLayout *layout, const BfMeeting *meeting, BfVec2 v);

/* Whose corner it is: "base" or the flange's id; and how a check names it: "base:2", "front:1".
 * Returns: (transfer full) the latter. */
const char *bf_meeting_on (const BfLayout *layout, const BfMeeting *meeting);
char *bf_meeting_where (const BfLayout *layout, const BfMeeting *meeting) G_GNUC_WARN_UNUSED_RESULT;

/* The index of the flap of that id, or −1. */
int bf_layout_find_flap (const BfLayout *layout, const char *id);

/* Unfolds: places every flap, finds what meets where, and settles every side. */
void bf_layout_unfold (BfLayout *layout);

/* The flaps that an edge of a flap carries; NULL for none. */
static inline GPtrArray *
bf_flap_carried (const BfFlap *flap, BfEdgeKind edge)
{
  return edge == BF_EDGE_TIP     ? flap->on_tip
         : edge == BF_EDGE_START ? flap->on_side[BF_SIDE_START]
         : edge == BF_EDGE_END   ? flap->on_side[BF_SIDE_END]
                                 : NULL;
}

/* TRUE where that end of a flap on a side lies at the root of the flap it hangs on: a start edge
 * begins there, an end edge ends there. */
static inline gboolean
bf_flap_end_is_root (const BfFlap *flap, BfSideName name)
{
  return (flap->flange->edge == BF_EDGE_START && name == BF_SIDE_START) ||
         (flap->flange->edge == BF_EDGE_END && name == BF_SIDE_END);
}

/* Places one flap on its parent in the flat and in space at its full angle; the parent's sides are
 * settled. */
void bf_layout_place (BfLayout *layout, BfFlap *flap);

/* How far a bend is turned, and at what inside radius. */
typedef struct
{
  double angle_rad, radius_mm;
} BfTurned;

/* The pose a flap has when its bend is turned so, its parent standing at parent (NULL: the base,
 * lying flat). */
void bf_flap_pose (const BfLayout *layout,
                   const BfFlap *flap,
                   const BfPose *parent,
                   BfTurned turned,
                   BfPose *pose);

/* A point of the flap's own coordinates in the blank. */
BfVec2 bf_flap_to_blank (const BfFlap *flap, double u_mm, double w_mm);

/* A direction of the flap's own coordinates in the blank. */
static inline BfVec2
bf_flap_vector_to_blank (const BfFlap *flap, BfVec2 v)
{
  return bf_vec2_along (bf_vec2_scale (flap->flat_e, v.x), flap->flat_n, v.y);
}

/* A point at u and v (outward from the drawn edge, in the flat) in the blank. */
static inline BfVec2
bf_flap_at_v (const BfFlap *flap, double u_mm, double v_mm)
{
  return bf_vec2_along (bf_vec2_along (flap->flat_origin, flap->flat_e, u_mm), flap->flat_n, v_mm);
}

/* v of the bend line: the middle of the zone. */
static inline double
bf_flap_bend_v (const BfFlap *flap)
{
  return flap->sums.allowance_mm / 2.0 - flap->sums.setback_mm;
}

/* u of a side from its q, and back (the same sum both ways). */
static inline double
bf_flap_u (const BfFlap *flap, BfSideName side, double q_mm)
{
  return side == BF_SIDE_START ? q_mm : flap->edge_length_mm - q_mm;
}

/* Where the flap's zone ends, as u. */
static inline double
bf_flap_zone_u (const BfFlap *flap, BfSideName side)
{
  return bf_flap_u (flap, side, flap->sides[side].zone_mm);
}

/* The flat left between the flap's tangent and that of what its tip carries. */
static inline double
bf_flap_flat_mm (const BfFlap *flap)
{
  return flap->tip_w_mm - flap->tip_setback_mm;
}
