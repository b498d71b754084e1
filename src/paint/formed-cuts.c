/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-cuts.h"

#include "fold/overlay.h"

/* A scrap that a relief parts from the metal is no larger than this. */
#define SCRAP_MM2 1.0

/* A fold that is made by hand may lack any of these. */
static guint
length_of (const GArray *array)
{
  return array != NULL ? array->len : 0;
}

static void
add_slots (const BfBendResult *bend, GPtrArray *cuts)
{
  for (guint i = 0; i < length_of (bend->slots); i++)
    g_ptr_array_add (cuts, bf_bend_slot (bend, i)->ring);
}

GPtrArray *
bf_formed_cuts (const BfFold *fold)
{
  GPtrArray *cuts = g_ptr_array_new ();

  for (guint i = 0; i < length_of (fold->reliefs); i++)
    g_ptr_array_add (cuts, bf_fold_relief (fold, i)->ring);
  for (guint i = 0; i < length_of (fold->openings); i++)
    g_ptr_array_add (cuts, bf_fold_opening (fold, i)->ring);
  for (guint i = 0; i < length_of (fold->bends); i++)
    add_slots (bf_fold_bend (fold, i), cuts);
  return cuts;
}

static BfBox
box_of (const BfRing *ring)
{
  BfBox box = bf_box_empty ();

  bf_ring_extend_box (ring, &box);
  return box;
}

/* The cuts that come into the piece's box. Returns: (transfer container). */
static GPtrArray *
cuts_near (const BfRing *piece, const GPtrArray *cuts)
{
  GPtrArray *near = g_ptr_array_new ();
  BfBox own = box_of (piece);

  for (guint i = 0; i < cuts->len; i++)
    {
      BfBox box = box_of (g_ptr_array_index (cuts, i));

      if (box.min.x < own.max.x && own.min.x < box.max.x && box.min.y < own.max.y &&
          own.min.y < box.max.y)
        g_ptr_array_add (near, g_ptr_array_index (cuts, i));
    }
  return near;
}

gboolean
bf_formed_is_cut (const BfRing *piece, const GPtrArray *cuts)
{
  g_autoptr (GPtrArray) near = cuts_near (piece, cuts);

  return near->len > 0;
}

static GPtrArray *
new_rest (GPtrArray *rests)
{
  GPtrArray *rest = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);

  g_ptr_array_add (rests, rest);
  return rest;
}

/* A hole belongs to the outline that it lies in. */
static void
add_hole (GPtrArray *rests, const BfRing *hole)
{
  for (guint i = 0; i < rests->len; i++)
    {
      GPtrArray *rest = g_ptr_array_index (rests, i);

      if (!bf_ring_contains (g_ptr_array_index (rest, 0), bf_ring_vertex (hole, 0)->p))
        continue;
      g_ptr_array_add (rest, bf_ring_copy (hole));
      return;
    }
}

GPtrArray *
bf_formed_cut (const BfRing *piece, const GPtrArray *cuts)
{
  GPtrArray *rests = g_ptr_array_new_with_free_func ((GDestroyNotify)g_ptr_array_unref);
  g_autoptr (GPtrArray) near = cuts_near (piece, cuts), pieces = g_ptr_array_new ();
  g_autoptr (GPtrArray) rings = NULL;
  guint n_outer;

  if (near->len == 0)
    {
      g_ptr_array_add (new_rest (rests), bf_ring_copy (piece));
      return rests;
    }
  g_ptr_array_add (pieces, (BfRing *)piece);
  rings = bf_overlay_cut (pieces, near, &n_outer);
  for (guint i = 0; i < n_outer; i++)
    if (i == 0 || bf_ring_area (g_ptr_array_index (rings, i)) > SCRAP_MM2)
      g_ptr_array_add (new_rest (rests), bf_ring_copy (g_ptr_array_index (rings, i)));
  for (guint i = n_outer; i < rings->len; i++)
    add_hole (rests, g_ptr_array_index (rings, i));
  return rests;
}
