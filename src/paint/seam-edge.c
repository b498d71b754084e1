/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/seam-edge.h"

/* A straight edge of a face: in the blank, and where its middle is once it is formed. */
typedef struct
{
  BfVec2 a, b;
  BfVec3 middle;
} Edge;

static void
collect_edges (const BfFold *fold, guint face, GArray *edges)
{
  const BfRing *ring = bf_fold_face (fold, face)->outline;

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      Edge edge = { bf_ring_vertex (ring, i)->p, bf_ring_vertex (ring, i + 1)->p, { 0, 0, 0 } };
      BfVec2 middle = bf_vec2_scale (bf_vec2_add (edge.a, edge.b), 0.5);
      BfArc arc;

      if (bf_ring_arc (ring, i, &arc))
        continue;
      edge.middle = bf_fold_place (fold, face, middle);
      g_array_append_val (edges, edge);
    }
}

gboolean
bf_seam_edge_find (const BfFold *fold, const BfSeam *seam, BfSeamEdge *edge)
{
  int before = bf_fold_find_face (fold, seam->before),
      after = bf_fold_find_face (fold, seam->after);
  g_autoptr (GArray) ones = g_array_new (FALSE, FALSE, sizeof (Edge));
  g_autoptr (GArray) others = g_array_new (FALSE, FALSE, sizeof (Edge));
  double least = G_MAXDOUBLE;

  if (before < 0 || after < 0)
    return FALSE;
  collect_edges (fold, (guint)before, ones);
  collect_edges (fold, (guint)after, others);
  for (guint i = 0; i < ones->len; i++)
    for (guint k = 0; k < others->len; k++)
      {
        const Edge *a = &g_array_index (ones, Edge, i), *b = &g_array_index (others, Edge, k);
        double apart = bf_vec3_length (bf_vec3_sub (a->middle, b->middle));

        if (apart >= least)
          continue;
        least = apart;
        *edge = (BfSeamEdge){ (guint)before, a->a, a->b };
      }
  return least < G_MAXDOUBLE;
}
