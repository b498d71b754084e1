/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/convex.h"

/* The formed metal as convex solids. */

/* How a bend's arc is made of straight pieces. */
typedef enum
{
  BF_ARC_AROUND, /* each piece holds the metal, and a little more */
  BF_ARC_WITHIN, /* the metal holds each piece */
} BfArcBound;

/* Appends the solid's pieces (BfConvex): for a face by its outline, for a bend in slices whose
 * bound strays sagitta_mm at most. tools: what is cut out of the flat, as convex parts in the blank
 * (BfConvexPart); NULL for nothing. A slice loses its whole width between where a tool enters and
 * leaves it. Returns TRUE where a tool took anything. */
gboolean bf_collide_slab_pieces (const BfFold *fold,
                                 const BfSolid *slab,
                                 const GArray *tools,
                                 GArray *pieces);

typedef struct
{
  BfArcBound bound;
  double sagitta_mm;
} BfArcSlices;

gboolean bf_collide_sector_pieces (const BfFold *fold,
                                   const BfSolid *sector,
                                   const GArray *tools,
                                   BfArcSlices how,
                                   GArray *pieces);

/* The reliefs and openings of the blank as convex parts. Returns: (transfer full). */
GArray *bf_collide_tools (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
