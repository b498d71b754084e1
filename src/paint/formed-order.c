/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-order.h"

#include "paint/formed-knots.h"
#include "paint/formed-overlap.h"
#include "paint/formed-split.h"

guint
bf_formed_piece_surface (const BfFormedStack *stack, guint piece)
{
  guint polygon = bf_formed_piece (stack, piece)->polygon;
  int band = bf_formed_polygon (stack->scene, polygon)->band;

  return band >= 0 ? (guint)band : stack->scene->bands->len + polygon;
}

guint
bf_formed_n_surfaces (const BfFormedStack *stack)
{
  return stack->scene->bands->len + stack->scene->polygons->len;
}

static int
compare_left (gconstpointer a, gconstpointer b, gpointer stack)
{
  double xa = bf_formed_piece (stack, *(const guint *)a)->min.x;
  double xb = bf_formed_piece (stack, *(const guint *)b)->min.x;

  return xa < xb ? -1 : xa > xb;
}

static GArray *
from_left_to_right (BfFormedStack *stack)
{
  GArray *sorted = g_array_sized_new (FALSE, FALSE, sizeof (guint), stack->pieces->len);

  for (guint i = 0; i < stack->pieces->len; i++)
    g_array_append_val (sorted, i);
  g_array_sort_with_data (sorted, compare_left, stack);
  return sorted;
}

static void
note_order (BfFormedGraph *graph, const BfFormedStack *stack, guint a, guint b)
{
  BfFormedPrecedence found = bf_formed_compare (stack, a, b);

  if (found & BF_FORMED_A_FIRST)
    bf_formed_graph_add (graph, a, b);
  if (found & BF_FORMED_B_FIRST)
    bf_formed_graph_add (graph, b, a);
}

/* Every pair of pieces whose boxes meet, by a sweep from left to right. */
static BfFormedGraph *
build_graph (BfFormedStack *stack)
{
  g_autoptr (GArray) sorted = from_left_to_right (stack);
  BfFormedGraph *graph = bf_formed_graph_new (stack->pieces->len);

  for (guint i = 0; i < sorted->len; i++)
    {
      guint a = g_array_index (sorted, guint, i);
      double right = bf_formed_piece (stack, a)->max.x;

      for (guint k = i + 1; k < sorted->len; k++)
        {
          guint b = g_array_index (sorted, guint, k);

          if (bf_formed_piece (stack, b)->min.x >= right)
            break;
          note_order (graph, stack, a, b);
        }
    }
  bf_formed_graph_tie (graph);
  return graph;
}

static guint
knot_surface (const BfFormedStack *stack, const BfFormedGraph *graph, guint knot)
{
  return bf_formed_piece_surface (stack, bf_formed_knot_member (graph, knot, 0));
}

/* Takes out of ready a knot of that surface; where there is none, the one that waits longest. */
static guint
take_ready (const BfFormedStack *stack, const BfFormedGraph *graph, GArray *ready, guint surface)
{
  guint chosen = 0;
  guint knot;

  for (guint i = 0; i < ready->len; i++)
    if (knot_surface (stack, graph, g_array_index (ready, guint, i)) == surface)
      {
        chosen = i;
        break;
      }
  knot = g_array_index (ready, guint, chosen);
  g_array_remove_index (ready, chosen);
  return knot;
}

static void
place_knot (BfFormedStack *stack, const BfFormedGraph *graph, guint knot)
{
  g_autoptr (GArray) members = NULL;

  if (bf_formed_knot_size (graph, knot) == 1)
    {
      guint piece = bf_formed_knot_member (graph, knot, 0);

      g_array_append_val (stack->order, piece);
      return;
    }
  members = g_array_new (FALSE, FALSE, sizeof (guint));
  for (guint i = 0; i < bf_formed_knot_size (graph, knot); i++)
    {
      guint piece = bf_formed_knot_member (graph, knot, i);

      g_array_append_val (members, piece);
    }
  bf_formed_split_in_order (stack, members);
}

void
bf_formed_stack_put_in_order (BfFormedStack *stack)
{
  g_autoptr (BfFormedGraph) graph = NULL;
  g_autoptr (GArray) ready = g_array_new (FALSE, FALSE, sizeof (guint));
  guint surface = G_MAXUINT;

  g_return_if_fail (stack != NULL && stack->order->len == 0);

  graph = build_graph (stack);
  bf_formed_graph_start (graph, ready);
  while (ready->len > 0)
    {
      guint knot = take_ready (stack, graph, ready, surface);

      surface = knot_surface (stack, graph, knot);
      place_knot (stack, graph, knot);
      bf_formed_graph_done (graph, knot, ready);
    }
}
