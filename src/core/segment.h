/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/vec.h"

/* Straight edges of the plane, from a to b. */

/* How far p lies from the nearest point of the edge. */
static inline double
bf_segment_distance (BfVec2 p, BfVec2 a, BfVec2 b)
{
  BfVec2 edge = bf_vec2_sub (b, a);
  double length2 = bf_vec2_dot (edge, edge);
  double along = length2 > 0.0 ? bf_vec2_dot (bf_vec2_sub (p, a), edge) / length2 : 0.0;

  return bf_vec2_distance (p, bf_vec2_along (a, edge, CLAMP (along, 0.0, 1.0)));
}

/* Positive where p lies to the left of the edge, seen along it. */
static inline double
bf_segment_side (BfVec2 p, BfVec2 a, BfVec2 b)
{
  return bf_vec2_cross (bf_vec2_sub (b, a), bf_vec2_sub (p, a));
}

/* TRUE where each of the edges a–b and c–d has an end on either side of the other. */
static inline gboolean
bf_segments_cross (BfVec2 a, BfVec2 b, BfVec2 c, BfVec2 d)
{
  return (bf_segment_side (a, c, d) > 0.0) != (bf_segment_side (b, c, d) > 0.0) &&
         (bf_segment_side (c, a, b) > 0.0) != (bf_segment_side (d, a, b) > 0.0);
}
