/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/tolerance.h"
#include "fold/outline.h"

/* The way between two vertices is as long as nothing. */
static gboolean
is_double (BfVec2 a, BfVec2 b)
{
  return bf_vec2_distance (a, b) < BF_TOLERANCE_ZERO;
}

/* A point at which a straight line runs straight on. */
static gboolean
is_midway (const BfVertex *before, const BfVertex *v, const BfVertex *after)
{
  BfVec2 in = bf_vec2_sub (v->p, before->p), out = bf_vec2_sub (after->p, v->p);
  double in_length = bf_vec2_length (in), out_length = bf_vec2_length (out);

  return fabs (before->bulge) + fabs (v->bulge) < BF_TOLERANCE_ZERO &&
         out_length > BF_TOLERANCE_ZERO &&
         fabs (bf_vec2_cross (in, out)) < BF_TOLERANCE_ZERO * MAX (in_length, out_length) &&
         bf_vec2_dot (in, out) > 0.0;
}

/* Of points in one place the last is kept: what leaves it is what counts. */
static void
drop_doubles (GArray *vertices)
{
  for (guint i = vertices->len; i-- > 0 && vertices->len > 1;)
    {
      const BfVertex *v = &g_array_index (vertices, BfVertex, i);
      const BfVertex *after = &g_array_index (vertices, BfVertex, (i + 1) % vertices->len);

      if (is_double (v->p, after->p))
        g_array_remove_index (vertices, i);
    }
}

void
bf_outline_tidy (BfRing *ring)
{
  GArray *old = ring->vertices;
  GArray *kept = g_array_sized_new (FALSE, FALSE, sizeof (BfVertex), old->len);

  drop_doubles (old);
  for (guint i = 0; i < old->len; i++)
    {
      const BfVertex *v = &g_array_index (old, BfVertex, i);
      const BfVertex *before = kept->len > 0 ? &g_array_index (kept, BfVertex, kept->len - 1)
                                             : &g_array_index (old, BfVertex, old->len - 1);
      const BfVertex *after = &g_array_index (old, BfVertex, (i + 1) % old->len);

      if (!is_midway (before, v, after))
        g_array_append_vals (kept, v, 1);
    }
  g_array_unref (old);
  ring->vertices = kept;
}
