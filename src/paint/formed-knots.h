/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* What has to come before what, and where that runs in a ring.
 *
 * Nodes are numbers. Those that run in a ring, each before the next, are tied into one knot; every
 * other node is a knot of its own. The knots can always be put in order. */

typedef struct
{
  guint n_nodes;
  GArray *arrows;   /* two guint each: the earlier node, the later one */
  guint *first;     /* by node: where its arrows begin in later; one more at the end */
  guint *later;     /* the later nodes, by the earlier one */
  guint *knot;      /* by node */
  GArray *members;  /* guint: nodes, by knot */
  GArray *begins;   /* guint: by knot, where its members begin; one more at the end */
  guint *waits_for; /* by knot: how many arrows from other knots are left */
} BfFormedGraph;

BfFormedGraph *bf_formed_graph_new (guint n_nodes) G_GNUC_WARN_UNUSED_RESULT;
void bf_formed_graph_free (BfFormedGraph *graph);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfFormedGraph, bf_formed_graph_free)

/* earlier has to come before later. */
void bf_formed_graph_add (BfFormedGraph *graph, guint earlier, guint later);

/* After the last arrow: finds the knots. */
void bf_formed_graph_tie (BfFormedGraph *graph);

/* Appends to ready (guint) the knots that wait for nothing; and, once a knot is done, those that
 * waited only for it. */
void bf_formed_graph_start (BfFormedGraph *graph, GArray *ready);
void bf_formed_graph_done (BfFormedGraph *graph, guint knot, GArray *ready);

static inline guint
bf_formed_knot_size (const BfFormedGraph *graph, guint knot)
{
  return g_array_index (graph->begins, guint, knot + 1) -
         g_array_index (graph->begins, guint, knot);
}

static inline guint
bf_formed_knot_member (const BfFormedGraph *graph, guint knot, guint i)
{
  return g_array_index (graph->members, guint, g_array_index (graph->begins, guint, knot) + i);
}
