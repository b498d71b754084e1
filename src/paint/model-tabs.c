/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/model-tabs.h"

#include "paint/seam-edge.h"

/* A tab's ends lean in by so many times its depth, the less the better; at most by this share of
 * the edge. In a narrow notch between two walls there is room for a slanting tab alone. */
static const double leans[] = { 0.8, 1.6, 2.6 };
#define LEAN_SHARE_MAX 0.42

/* A tab reaches at least this share of what is asked for, or it is left out. */
#define LEAST_SHARE 0.4
#define N_DEPTHS 7

/* A tab keeps off the blank, and off other tabs, by this share of its depth. */
#define KEEP_OFF 0.12

static BfGlueTab
make_tab (const BfSeamEdge *edge, double deep_mm, double lean_times)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (edge->b, edge->a));
  BfVec2 out = bf_vec2 (along.y, -along.x);
  double lean = MIN (lean_times * deep_mm, LEAN_SHARE_MAX * bf_vec2_distance (edge->a, edge->b));
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
has_room (const BfFold *fold, const GArray *tabs, const BfGlueTab *wide)
{
  BfVec2 side = bf_vec2_sub (wide->corners[3], wide->corners[2]);
  BfVec2 in = bf_vec2_scale (bf_vec2_sub (wide->corners[1], wide->corners[2]), 0.5);
  BfVec2 back = bf_vec2_scale (bf_vec2_sub (wide->corners[0], wide->corners[3]), 0.5);

  for (guint i = 0; i <= 8; i++)
    if (is_taken (fold, tabs, bf_vec2_along (wide->corners[2], side, i / 8.0)))
      return FALSE;
  return !is_taken (fold, tabs, bf_vec2_add (wide->corners[2], in)) &&
         !is_taken (fold, tabs, bf_vec2_add (wide->corners[3], back));
}

/* The deepest tab that there is room for, as straight as it can be. */
static void
add_tab (const BfFold *fold, const BfSeamEdge *edge, double deep_mm, GArray *tabs)
{
  for (guint i = 0; i < N_DEPTHS * G_N_ELEMENTS (leans); i++)
    {
      double share = 1.0 - (1.0 - LEAST_SHARE) * (i / G_N_ELEMENTS (leans)) / (N_DEPTHS - 1);
      double lean = leans[i % G_N_ELEMENTS (leans)];
      BfGlueTab wide = make_tab (edge, deep_mm * share * (1.0 + KEEP_OFF), lean);
      BfGlueTab tab = make_tab (edge, deep_mm * share, lean);

      if (!has_room (fold, tabs, &wide))
        continue;
      g_array_append_val (tabs, tab);
      return;
    }
}

void
bf_model_find_tabs (const BfFold *fold, double deep_mm, GArray *tabs)
{
  for (guint i = 0; i < fold->seams->len; i++)
    {
      BfSeamEdge edge;

      if (bf_seam_edge_find (fold, bf_fold_seam (fold, i), &edge))
        add_tab (fold, &edge, deep_mm, tabs);
    }
}
