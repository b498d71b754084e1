/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-cuts.h"
#include "paint/formed-scene.h"

/* What the makers of a scene share: slabs (formed-slab.c), sectors (formed-sector.c), and the
 * mouths where the two meet (formed-mouth.c). Nothing else includes this. */

/* The line, on the marking side, where a bend meets the flat before it or after it. */
typedef struct
{
  guint sector; /* index of the solid */
  guint face;   /* the flat that it meets */
  BfVec3 from;  /* where x = 0 */
  BfVec3 along; /* unit vector, toward x = width */
  double width_mm;
  BfVec3 outward;        /* in the flat's plane, toward the bend */
  gboolean scored;       /* the flat is thicker than the bend: it has an end of its own, */
  double bevel_mm;       /* drawn slanting back so far */
  BfFormedSide bevelled; /* on the side that the score is cut into */
  GArray *covered;       /* BfFormedReach, in mm from `from`: where the flat goes on */
} BfFormedMouth;

typedef struct
{
  double from, to;
} BfFormedReach;

typedef struct
{
  BfFormedScene *scene;
  const BfFold *fold;
  const GArray *holes;      /* BfFormedHole; or NULL, */
  BfFormedCutting *cutting; /* and then this cuts flats and bends */
  GArray *mouths;           /* BfFormedMouth: two a sector, its root and its tip */
  double thickness_mm;
} BfFormedBuild;

/* Adding to a scene: a polygon, then its rings, each with its points; end drops what has no area.
 * like: everything but the rings, the normal a unit vector. Points that repeat the one before
 * are left out; `shade` holds for the edge that leaves the point. */
void bf_formed_begin_polygon (BfFormedScene *scene, const BfFormedPolygon *like);
void bf_formed_begin_ring (BfFormedScene *scene);
void bf_formed_add_point (BfFormedScene *scene, BfVec3 p, BfVec3 shade);
void bf_formed_end_ring (BfFormedScene *scene);
void bf_formed_end_polygon (BfFormedScene *scene);

/* A polygon of four points whose edges are shaded like the polygon itself. */
void bf_formed_add_quad (BfFormedScene *scene, const BfFormedPolygon *like, const BfVec3 p[4]);

/* Starts a band; its stops follow. Returns its index. */
int bf_formed_begin_band (BfFormedScene *scene, BfVec3 axis);
void bf_formed_add_stop (BfFormedScene *scene, BfVec3 at, BfVec3 normal, double way);

/* Where a sector has got to at `way`, 0 at its root to 1 at its tip: the point on its marking side
 * or its other side, x mm along the bend; and the normal there, out of the marking side. */
BfVec3 bf_formed_sector_point (
    const BfFormedBuild *build, const BfSolid *sector, double way, BfFormedSide side, double x);
BfVec3 bf_formed_sector_normal (const BfSolid *sector, double way);

/* Where the sector's root or tip meets the marking side of the flat there, at x = 0. */
BfVec3 bf_formed_sector_mouth (const BfFormedBuild *build, const BfSolid *sector, gboolean at_tip);

void bf_formed_build_mouths (BfFormedBuild *build, const BfFormed *formed);
void bf_formed_mouth_clear (gpointer mouth);

/* What of the edge a to b (marking side) of that face goes on in bends, in mm from a, in order.
 * Appends to reaches (BfFormedReach), and to what the mouths know of themselves. */
void bf_formed_mouths_meet_edge (BfFormedBuild *build,
                                 guint face,
                                 const BfVec3 edge[2],
                                 GArray *reaches);

/* A bend as it is built: strips between lines 0 and n_strips. */
typedef struct
{
  BfFormedBuild *build;
  const BfSolid *sector;
  const BfFormedMouth *root, *tip;
  guint n_strips;
} BfFormedBend;

/* A point x mm along a line of the bend, on that side; and the direction out of that side there
 * (for line + 0.5, in the middle of a strip). */
BfVec3 bf_formed_bend_point (const BfFormedBend *bend, guint line, BfFormedSide side, double x);
BfVec3 bf_formed_bend_outward (const BfFormedBend *bend, double line, BfFormedSide side);

/* Closes the bend from `from` to `to` along one of its two mouths, where no flat has met it. */
void
bf_formed_bend_close (const BfFormedBend *bend, const BfFormedMouth *mouth, BfFormedReach reach);

/* The bend's strips where something is cut of them, with the rims of the cuts and its ends. bands:
 * those of the marking side and of the other side. FALSE, and nothing done, where nothing is. */
gboolean bf_formed_build_cut_bend (const BfFormedBend *bend, const int bands[2]);

void bf_formed_build_slab (BfFormedBuild *build, const BfSolid *slab);

/* After every slab: what of its mouths no flat has met is closed with a wall. */
void bf_formed_build_sector (BfFormedBuild *build, const BfSolid *sector, guint solid);
