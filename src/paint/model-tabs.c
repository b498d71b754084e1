/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/model-tabs.h"

/* A tab's ends lean in by this share of its depth, at most this share of the edge. */
#define LEAN 0.8
#define LEAN_SHARE_MAX 0.35

/* A tab reaches at least this share of what is asked for, or it is left out. */
#define LEAST_SHARE 0.4
#define N_DEPTHS 7

/* A tab keeps off the blank, and off other tabs, by this share of its depth. */
#define KEEP_OFF 0.12

/* A straight edge of a face: in the blank, and where its middle is once it is formed. */
typedef struct
{
  BfVec2 a, b;
  BfVec3 middle;
} Edge;

static int
find_face (const BfFold *fold, const char *id)
{
  for (guint i = 0; i < fold->faces->len; i++)
    if (g_str_equal (bf_fold_face (fold, i)->id, id))
      return (int)i;
  return -1;
}

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

/* The edge of one wall that comes nearest to an edge of the other once both are formed. */
static gboolean
find_edge (const BfFold *fold, const BfSeam *seam, Edge *found)
{
  int before = find_face (fold, seam->before), after = find_face (fold, seam->after);
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
        *found = *a;
      }
  return least < G_MAXDOUBLE;
}

static BfGlueTab
make_tab (const Edge *edge, double deep_mm)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (edge->b, edge->a));
  BfVec2 out = bf_vec2 (along.y, -along.x);
  double lean = MIN (LEAN * deep_mm, LEAN_SHARE_MAX * bf_vec2_distance (edge->a, edge->b));
  BfGlueTab tab = { { edge->a, edge->b } };

  tab.corners[2] = bf_vec2_along (bf_vec2_along (edge->b, along, -lean), out, deep_mm);
  tab.corners[3] = bf_vec2_along (bf_vec2_along (edge->a, along, lean), out, deep_mm);
  return tab;
}

static gboolean
is_inside (const BfGlueTab *tab, BfVec2 p)
{
  for (guint i = 0; i < 4; i++)
    {
      BfVec2 side = bf_vec2_sub (tab->corners[(i + 1) % 4], tab->corners[i]);

      if (bf_vec2_cross (side, bf_vec2_sub (p, tab->corners[i])) > 0.0)
        return FALSE;
    }
  return TRUE;
}

/* TRUE where a point near the tab's outer side, or on it, is metal or another tab. */
static gboolean
is_taken (const BfFold *fold, const GArray *tabs, BfVec2 p)
{
  for (guint i = 0; i < fold->blank.n_outer; i++)
    if (bf_ring_contains (bf_blank_ring (&fold->blank, i), p))
      return TRUE;
  for (guint i = 0; i < tabs->len; i++)
    if (is_inside (&g_array_index (tabs, BfGlueTab, i), p))
      return TRUE;
  return FALSE;
}

static gboolean
has_room (const BfFold *fold, const GArray *tabs, const Edge *edge, double deep_mm)
{
  BfGlueTab wide = make_tab (edge, deep_mm * (1.0 + KEEP_OFF));
  BfVec2 side = bf_vec2_sub (wide.corners[3], wide.corners[2]);
  BfVec2 in = bf_vec2_scale (bf_vec2_sub (wide.corners[1], wide.corners[2]), 0.5);
  BfVec2 back = bf_vec2_scale (bf_vec2_sub (wide.corners[0], wide.corners[3]), 0.5);

  for (guint i = 0; i <= 8; i++)
    if (is_taken (fold, tabs, bf_vec2_along (wide.corners[2], side, i / 8.0)))
      return FALSE;
  return !is_taken (fold, tabs, bf_vec2_add (wide.corners[2], in)) &&
         !is_taken (fold, tabs, bf_vec2_add (wide.corners[3], back));
}

void
bf_model_find_tabs (const BfFold *fold, double deep_mm, GArray *tabs)
{
  for (guint i = 0; i < fold->seams->len; i++)
    {
      Edge edge;

      if (!find_edge (fold, bf_fold_seam (fold, i), &edge))
        continue;
      for (guint k = 0; k < N_DEPTHS; k++)
        {
          double deep = deep_mm * (1.0 - (1.0 - LEAST_SHARE) * k / (N_DEPTHS - 1));

          if (!has_room (fold, tabs, &edge, deep))
            continue;
          BfGlueTab tab = make_tab (&edge, deep);
          g_array_append_val (tabs, tab);
          break;
        }
    }
}
