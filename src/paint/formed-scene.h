/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* The formed metal as flat polygons in space, closed all round, ready to be looked at from any
 * direction. Lengths are mm in the base's frame.
 *
 * Bends and rounded rims are cut into strips; the strips of one round surface make a band, which
 * knows the true normals between them, so that its tone runs smoothly. */

typedef enum
{
  BF_FORMED_MARKING_SIDE,
  BF_FORMED_OTHER_SIDE,
  BF_FORMED_RIM, /* the metal's thickness, seen at an edge */
} BfFormedSide;

/* How much of an edge there is to see. */
typedef enum
{
  BF_FORMED_EDGE_SMOOTH,  /* nothing: between strips, or where rims run into each other */
  BF_FORMED_EDGE_TANGENT, /* a flat runs into a bend */
  BF_FORMED_EDGE_CRISP,
} BfFormedEdge;

/* A corner of a polygon and the edge that leaves it. */
typedef struct
{
  BfVec3 p;
  BfVec3 shade;  /* true normal of the surface along that edge */
  BfVec3 beyond; /* normal of the polygon on the edge's other side; zero where there is none */
  int neighbour; /* that polygon's index, or −1 */
  BfFormedEdge edge;
} BfFormedVertex;

/* A run of items of an array. */
typedef struct
{
  guint first, size;
} BfFormedSpan;

typedef struct
{
  BfFormedSide side;
  gboolean bent; /* a part of a bend, its ends included */
  gboolean convex;
  guint face; /* index of the face; for a bend, of the flange that it bends up */
  int band;   /* index of the band it is a strip of, or −1 */
  BfVec3 normal;
  BfFormedSpan rings; /* counter-clockwise seen from outside, then its holes, clockwise */
} BfFormedPolygon;

/* A line between two strips of a band, or one of the two at its ends. */
typedef struct
{
  BfVec3 at, normal;
  double way; /* 0 at the band's start to 1 at its end */
} BfFormedStop;

typedef struct
{
  BfVec3 axis; /* unit vector along the strips */
  BfFormedSpan stops;
} BfFormedBand;

typedef struct
{
  GArray *polygons;  /* BfFormedPolygon */
  GArray *rings;     /* BfFormedSpan of vertices */
  GArray *vertices;  /* BfFormedVertex */
  GArray *bands;     /* BfFormedBand */
  GArray *stops;     /* BfFormedStop */
  GHashTable *rests; /* what cuts left of pieces: the next scene may want the same; or NULL */
} BfFormedScene;

/* A hole through a face. */
typedef struct
{
  guint face;
  const BfRing *ring; /* in the blank, clockwise */
} BfFormedHole;

/* The polygons of formed, which is fold->formed or one bent less far. holes: BfFormedHole, or NULL
 * for all that reliefs, openings and slots take, of bends too. Where a bend meets a flat there is
 * no wall between them. Returns: (transfer full). */
BfFormedScene *bf_formed_scene_new (const BfFold *fold,
                                    const BfFormed *formed,
                                    const GArray *holes) G_GNUC_WARN_UNUSED_RESULT;

/* The same with no holes given, made the faster the more of the metal is as it was in an earlier
 * scene. before: of any fold, or NULL. Returns: (transfer full). */
BfFormedScene *bf_formed_scene_new_after (const BfFormedScene *before,
                                          const BfFold *fold,
                                          const BfFormed *formed) G_GNUC_WARN_UNUSED_RESULT;
void bf_formed_scene_free (BfFormedScene *scene);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfFormedScene, bf_formed_scene_free)

static inline BfFormedPolygon *
bf_formed_polygon (const BfFormedScene *scene, guint i)
{
  return &g_array_index (scene->polygons, BfFormedPolygon, i);
}

static inline const BfFormedSpan *
bf_formed_ring (const BfFormedScene *scene, guint i)
{
  return &g_array_index (scene->rings, BfFormedSpan, i);
}

static inline BfFormedVertex *
bf_formed_vertex (const BfFormedScene *scene, guint i)
{
  return &g_array_index (scene->vertices, BfFormedVertex, i);
}

static inline const BfFormedBand *
bf_formed_band (const BfFormedScene *scene, guint i)
{
  return &g_array_index (scene->bands, BfFormedBand, i);
}

static inline const BfFormedStop *
bf_formed_stop (const BfFormedScene *scene, guint i)
{
  return &g_array_index (scene->stops, BfFormedStop, i);
}
