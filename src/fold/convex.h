/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Convex polygons of the flat and convex solids of space, and how deep two solids go into each
 * other. */

/* A polygon of more corners is cut into several. */
#define BF_CONVEX_CORNERS_MAX 8

typedef struct
{
  BfVec2 corners[BF_CONVEX_CORNERS_MAX]; /* counter-clockwise */
  guint n;
} BfConvexPart;

/* Cuts a simple polygon (BfVec2, counter-clockwise) into convex parts that together are it; appends
 * BfConvexPart. Of a polygon that crosses itself some may be left out. */
void bf_convex_parts (const GArray *polygon, GArray *parts);

/* What is left of a part outside of a convex tool, as convex parts; appends BfConvexPart. */
void bf_convex_part_less (const BfConvexPart *part, const BfConvexPart *tool, GArray *left);

/* What of a part lies within a convex tool; appends BfConvexPart. */
void bf_convex_part_within (const BfConvexPart *part, const BfConvexPart *tool, GArray *within);

/* TRUE where the two may overlap: their boxes do. */
gboolean bf_convex_parts_near (const BfConvexPart *a, const BfConvexPart *b);

/* A convex solid by its corners, and the directions of its faces and edges, each once. */
typedef struct
{
  BfVec3 points[2 * BF_CONVEX_CORNERS_MAX];
  BfVec3 normals[BF_CONVEX_CORNERS_MAX + 1], edges[BF_CONVEX_CORNERS_MAX + 1];
  guint n_points, n_normals, n_edges;
  BfVec3 min, max; /* its box */
} BfConvex;

/* A slab over the part, in the frame's x and y, that reaches depth_mm below the frame's plane. */
void bf_convex_from_slab (const BfFrame *frame,
                          const BfConvexPart *part,
                          double depth_mm,
                          BfConvex *out);

/* Works out the box of the points. */
void bf_convex_close (BfConvex *convex);

/* How deep two convex solids go into each other: the shortest way to move one so that they part,
 * negative where they stand apart. Exact (separating axes: every face of either, every edge of one
 * with every edge of the other), but once it is known to be enough_mm or less, that bound is
 * returned. */
double bf_convex_depth (const BfConvex *a, const BfConvex *b, double enough_mm);
