/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-knots.h"

#define NOT_SEEN G_MAXUINT

/* The state of the search for knots (Tarjan, "Depth-first search and linear graph algorithms",
 * 1972), without recursion: a chain of a thousand pieces must not need a thousand calls. */
typedef struct
{
  BfFormedGraph *graph;
  guint *number; /* by node: when it was seen */
  guint *low;    /* by node: the earliest node still open that it leads back to */
  guint *at;     /* by node: its next arrow to follow */
  GArray *path;  /* guint: nodes from the start of the search to where it is */
  GArray *open;  /* guint: nodes seen that are in no knot yet */
  guint n_seen;
} Search;

BfFormedGraph *
bf_formed_graph_new (guint n_nodes)
{
  BfFormedGraph *graph = g_new0 (BfFormedGraph, 1);

  graph->n_nodes = n_nodes;
  graph->arrows = g_array_new (FALSE, FALSE, 2 * sizeof (guint));
  graph->members = g_array_new (FALSE, FALSE, sizeof (guint));
  graph->begins = g_array_new (FALSE, FALSE, sizeof (guint));
  return graph;
}

void
bf_formed_graph_free (BfFormedGraph *graph)
{
  if (graph == NULL)
    return;
  g_array_unref (graph->arrows);
  g_array_unref (graph->members);
  g_array_unref (graph->begins);
  g_free (graph->first);
  g_free (graph->later);
  g_free (graph->knot);
  g_free (graph->waits_for);
  g_free (graph);
}

void
bf_formed_graph_add (BfFormedGraph *graph, guint earlier, guint later)
{
  const guint arrow[2] = { earlier, later };

  g_return_if_fail (earlier < graph->n_nodes && later < graph->n_nodes);

  g_array_append_vals (graph->arrows, arrow, 1);
}

static const guint *
arrow_at (const BfFormedGraph *graph, guint i)
{
  return (const guint *)(gpointer)graph->arrows->data + 2 * (gsize)i;
}

/* Sorts the arrows by the node that they leave. */
static void
sort_arrows (BfFormedGraph *graph)
{
  g_autofree guint *fill = g_new0 (guint, graph->n_nodes + 1);

  graph->first = g_new0 (guint, graph->n_nodes + 1);
  graph->later = g_new (guint, graph->arrows->len + 1);
  for (guint i = 0; i < graph->arrows->len; i++)
    graph->first[arrow_at (graph, i)[0] + 1]++;
  for (guint node = 0; node < graph->n_nodes; node++)
    graph->first[node + 1] += graph->first[node];
  for (guint i = 0; i < graph->arrows->len; i++)
    {
      const guint *arrow = arrow_at (graph, i);

      graph->later[graph->first[arrow[0]] + fill[arrow[0]]++] = arrow[1];
    }
}

static guint
last_of (const GArray *array)
{
  return g_array_index (array, guint, array->len - 1);
}

static void
enter (Search *search, guint node)
{
  search->number[node] = search->low[node] = search->n_seen++;
  search->at[node] = search->graph->first[node];
  g_array_append_val (search->path, node);
  g_array_append_val (search->open, node);
}

/* All that was opened since node was, and node: a knot. */
static void
close_knot (Search *search, guint node)
{
  BfFormedGraph *graph = search->graph;
  guint knot = graph->begins->len;
  guint member;

  g_array_append_val (graph->begins, graph->members->len);
  do
    {
      member = last_of (search->open);
      g_array_set_size (search->open, search->open->len - 1);
      g_array_append_val (graph->members, member);
      graph->knot[member] = knot;
    }
  while (member != node);
}

static void
leave (Search *search, guint node)
{
  g_array_set_size (search->path, search->path->len - 1);
  if (search->low[node] == search->number[node])
    close_knot (search, node);
  if (search->path->len > 0)
    {
      guint parent = last_of (search->path);

      search->low[parent] = MIN (search->low[parent], search->low[node]);
    }
}

static void
search_from (Search *search, guint start)
{
  const BfFormedGraph *graph = search->graph;

  enter (search, start);
  while (search->path->len > 0)
    {
      guint node = last_of (search->path);
      guint next;

      if (search->at[node] == graph->first[node + 1])
        {
          leave (search, node);
          continue;
        }
      next = graph->later[search->at[node]++];
      if (search->number[next] == NOT_SEEN)
        enter (search, next);
      else if (graph->knot[next] == NOT_SEEN)
        search->low[node] = MIN (search->low[node], search->number[next]);
    }
}

static void
find_knots (BfFormedGraph *graph)
{
  guint n = graph->n_nodes;
  g_autofree guint *numbers = g_new (guint, 3 * (gsize)n + 1);
  g_autoptr (GArray) path = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (GArray) open = g_array_new (FALSE, FALSE, sizeof (guint));
  Search search = { graph, numbers, numbers + n, numbers + 2 * (gsize)n, path, open, 0 };

  for (guint node = 0; node < n; node++)
    search.number[node] = graph->knot[node] = NOT_SEEN;
  for (guint node = 0; node < n; node++)
    if (search.number[node] == NOT_SEEN)
      search_from (&search, node);
  g_array_append_val (graph->begins, graph->members->len);
}

void
bf_formed_graph_tie (BfFormedGraph *graph)
{
  g_return_if_fail (graph->first == NULL);

  sort_arrows (graph);
  graph->knot = g_new (guint, graph->n_nodes + 1);
  find_knots (graph);

  graph->waits_for = g_new0 (guint, graph->begins->len);
  for (guint i = 0; i < graph->arrows->len; i++)
    {
      const guint *arrow = arrow_at (graph, i);

      if (graph->knot[arrow[0]] != graph->knot[arrow[1]])
        graph->waits_for[graph->knot[arrow[1]]]++;
    }
}

void
bf_formed_graph_start (BfFormedGraph *graph, GArray *ready)
{
  for (guint knot = 0; knot + 1 < graph->begins->len; knot++)
    if (graph->waits_for[knot] == 0)
      g_array_append_val (ready, knot);
}

static void
release (BfFormedGraph *graph, guint knot, guint node, GArray *ready)
{
  for (guint i = graph->first[node]; i < graph->first[node + 1]; i++)
    {
      guint other = graph->knot[graph->later[i]];

      if (other != knot && --graph->waits_for[other] == 0)
        g_array_append_val (ready, other);
    }
}

void
bf_formed_graph_done (BfFormedGraph *graph, guint knot, GArray *ready)
{
  for (guint i = 0; i < bf_formed_knot_size (graph, knot); i++)
    release (graph, knot, bf_formed_knot_member (graph, knot, i), ready);
}
