/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-scene.h"

/* A scene as it is seen from one direction: the polygons that face the eye, turned so that x runs
 * to the right, y up and z toward the eye, and the order to paint them in. Lengths are mm. */

/* Points within this of a plane lie in it; what is nearer to edge-on than this is not seen. */
#define BF_FORMED_PLANE_MM 1e-4
#define BF_FORMED_EDGE_ON 1e-4

/* What is drawn along an edge. */
typedef enum
{
  BF_FORMED_LINE_NONE,    /* within one surface */
  BF_FORMED_LINE_SEAM,    /* in the tone of the metal: two surfaces run into each other */
  BF_FORMED_LINE_SOFT,    /* where a flat runs into a bend */
  BF_FORMED_LINE_CRISP,   /* between two faces that are both seen */
  BF_FORMED_LINE_CONTOUR, /* where the metal ends: what lies beyond faces away */
} BfFormedLine;

typedef struct
{
  BfVec3 p;
  BfFormedLine line; /* along the edge that leaves p */
  int neighbour;     /* the polygon on that edge's other side, −1 where there is none */
} BfFormedPoint;

typedef struct
{
  guint polygon; /* index in the scene */
  gboolean convex;
  BfVec3 normal;
  double offset;       /* normal · p for every p of its plane */
  BfFormedSpan rings;  /* of the stack's rings */
  BfFormedSpan points; /* of the stack's points: all that its rings hold */
  BfVec3 min, max;
} BfFormedPiece;

typedef struct
{
  const BfFormedScene *scene; /* not owned */
  GArray *pieces;             /* BfFormedPiece; those that were split are kept, but not in order */
  GArray *rings;              /* BfFormedSpan of points */
  GArray *points;             /* BfFormedPoint */
  GArray *order;              /* guint: indices of pieces, farthest first */
} BfFormedStack;

/* The directions of the picture in space, for an eye that looks from azimuth_rad (from +x toward
 * +y) and elevation_rad (above the base's plane): ex to the right, ey up, ez toward the eye. */
BfFrame bf_formed_eye (double azimuth_rad, double elevation_rad);

/* The scene seen in that frame, not in order yet. The scene has to outlive it.
 * Returns: (transfer full). */
BfFormedStack *bf_formed_stack_new (const BfFormedScene *scene,
                                    const BfFrame *eye) G_GNUC_WARN_UNUSED_RESULT;
void bf_formed_stack_free (BfFormedStack *stack);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfFormedStack, bf_formed_stack_free)

/* Adding a piece: begin, then each ring's points, then end, which works out the box and drops a
 * piece with no rings. Rings of fewer than three points are dropped. `like` is copied.
 * end returns the piece's index, or −1 where it was dropped. */
void bf_formed_stack_begin (BfFormedStack *stack, const BfFormedPiece *like);
void bf_formed_stack_add_ring (BfFormedStack *stack, const BfFormedPoint *points, guint n_points);
int bf_formed_stack_end (BfFormedStack *stack);

/* TRUE where (x, y) of the picture lies inside the piece. */
gboolean bf_formed_piece_contains (const BfFormedStack *stack,
                                   const BfFormedPiece *piece,
                                   double x,
                                   double y);

/* How near the eye the piece's plane is at (x, y). */
static inline double
bf_formed_piece_depth (const BfFormedPiece *piece, double x, double y)
{
  return (piece->offset - piece->normal.x * x - piece->normal.y * y) / piece->normal.z;
}

static inline const BfFormedPiece *
bf_formed_piece (const BfFormedStack *stack, guint i)
{
  return &g_array_index (stack->pieces, BfFormedPiece, i);
}

static inline const BfFormedSpan *
bf_formed_piece_ring (const BfFormedStack *stack, const BfFormedPiece *piece, guint i)
{
  return &g_array_index (stack->rings, BfFormedSpan, piece->rings.first + i);
}

static inline const BfFormedPoint *
bf_formed_point (const BfFormedStack *stack, guint i)
{
  return &g_array_index (stack->points, BfFormedPoint, i);
}

/* Point k of a ring, counted round. */
static inline const BfFormedPoint *
bf_formed_ring_point (const BfFormedStack *stack, const BfFormedSpan *ring, guint k)
{
  return bf_formed_point (stack, ring->first + k % ring->size);
}
