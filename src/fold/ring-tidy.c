/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/ring-tidy.h"

#include "core/tolerance.h"

#define MOST_SWEEP (1.9 * G_PI) /* of one arc: a bulge of a whole turn has no end */

/* TRUE where vertex i lies within one line, or within one arc, of its neighbours. */
static gboolean
is_needless (const BfRing *ring, guint i)
{
  guint before = i + bf_ring_size (ring) - 1;
  BfVec2 p = bf_ring_vertex (ring, i)->p, a = bf_ring_vertex (ring, before)->p,
         b = bf_ring_vertex (ring, i + 1)->p;
  BfArc first, second;
  gboolean is_first = bf_ring_arc (ring, before, &first),
           is_second = bf_ring_arc (ring, i, &second);

  if (is_first != is_second)
    return FALSE;
  if (is_first)
    return bf_vec2_distance (first.centre, second.centre) < BF_TOLERANCE_SIZE_MM &&
           fabs (first.radius - second.radius) < BF_TOLERANCE_SIZE_MM &&
           first.sweep * second.sweep > 0.0 && fabs (first.sweep + second.sweep) < MOST_SWEEP;
  return fabs (bf_vec2_cross (bf_vec2_sub (p, a), bf_vec2_unit (bf_vec2_sub (b, p)))) <
             BF_TOLERANCE_SIZE_MM &&
         bf_vec2_dot (bf_vec2_sub (p, a), bf_vec2_sub (b, p)) > 0.0;
}

/* The vertex before i takes over what left i. */
static void
drop_vertex (BfRing *ring, guint i)
{
  guint before = (i + bf_ring_size (ring) - 1) % bf_ring_size (ring);
  BfVertex *keeps = &g_array_index (ring->vertices, BfVertex, before);
  double sweeps = atan (keeps->bulge) + atan (bf_ring_vertex (ring, i)->bulge);

  keeps->bulge = tan (sweeps);
  g_array_remove_index (ring->vertices, i);
}

void
bf_ring_tidy (BfRing *ring)
{
  g_return_if_fail (ring != NULL);

  for (guint i = bf_ring_size (ring); i-- > 0;)
    if (bf_ring_size (ring) > 3 && is_needless (ring, i))
      drop_vertex (ring, i);
}
