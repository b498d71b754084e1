/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-cuts.h"

#include "fold/overlay.h"

/* A scrap that a relief parts from the metal is no larger than this. */
#define SCRAP_MM2 1.0

typedef struct
{
  const BfRing *ring; /* the fold's */
  BfBox box;
} Cut;

/* A fold that is made by hand may lack any of these. */
static guint
length_of (const GArray *array)
{
  return array != NULL ? array->len : 0;
}

static BfBox
box_of (const BfRing *ring)
{
  BfBox box = bf_box_empty ();

  bf_ring_extend_box (ring, &box);
  return box;
}

static void
add_cut (GArray *cuts, const BfRing *ring)
{
  Cut cut = { ring, box_of (ring) };

  g_array_append_val (cuts, cut);
}

static void
add_slots (GArray *cuts, const BfBendResult *bend)
{
  for (guint i = 0; i < length_of (bend->slots); i++)
    add_cut (cuts, bf_bend_slot (bend, i)->ring);
}

static GHashTable *
new_rests (void)
{
  return g_hash_table_new_full (g_bytes_hash, g_bytes_equal, (GDestroyNotify)g_bytes_unref,
                                (GDestroyNotify)g_ptr_array_unref);
}

void
bf_formed_cutting_init (BfFormedCutting *cutting, const BfFold *fold, GHashTable *known)
{
  cutting->cuts = g_array_new (FALSE, FALSE, sizeof (Cut));
  cutting->known = known;
  cutting->rests = new_rests ();
  for (guint i = 0; i < length_of (fold->reliefs); i++)
    add_cut (cutting->cuts, bf_fold_relief (fold, i)->ring);
  for (guint i = 0; i < length_of (fold->openings); i++)
    add_cut (cutting->cuts, bf_fold_opening (fold, i)->ring);
  for (guint i = 0; i < length_of (fold->bends); i++)
    add_slots (cutting->cuts, bf_fold_bend (fold, i));
}

void
bf_formed_cutting_clear (BfFormedCutting *cutting)
{
  g_clear_pointer (&cutting->cuts, g_array_unref);
  g_clear_pointer (&cutting->rests, g_hash_table_unref);
}

/* The cuts that come into the piece's box. Returns: (transfer container). */
static GPtrArray *
cuts_near (const GArray *cuts, const BfRing *piece)
{
  GPtrArray *near = g_ptr_array_new ();
  BfBox own = box_of (piece);

  for (guint i = 0; i < cuts->len; i++)
    {
      const Cut *cut = &g_array_index (cuts, Cut, i);

      if (cut->box.min.x < own.max.x && own.min.x < cut->box.max.x && cut->box.min.y < own.max.y &&
          own.min.y < cut->box.max.y)
        g_ptr_array_add (near, (BfRing *)cut->ring);
    }
  return near;
}

gboolean
bf_formed_is_cut (const BfFormedCutting *cutting, const BfRing *piece)
{
  g_autoptr (GPtrArray) near = cuts_near (cutting->cuts, piece);

  return near->len > 0;
}

static void
note_ring (GByteArray *note, const BfRing *ring)
{
  guint size = bf_ring_size (ring);

  g_byte_array_append (note, (const guint8 *)&size, sizeof size);
  g_byte_array_append (note, (const guint8 *)ring->vertices->data, size * (guint)sizeof (BfVertex));
}

/* All that the rest of a piece depends on. */
static GBytes *
key_of (const BfRing *piece, const GPtrArray *near)
{
  GByteArray *note = g_byte_array_new ();

  note_ring (note, piece);
  for (guint i = 0; i < near->len; i++)
    note_ring (note, g_ptr_array_index (near, i));
  return g_byte_array_free_to_bytes (note);
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

static GPtrArray *
cut_away (const BfRing *piece, const GPtrArray *near)
{
  GPtrArray *rests = g_ptr_array_new_with_free_func ((GDestroyNotify)g_ptr_array_unref);
  g_autoptr (GPtrArray) pieces = g_ptr_array_new (), rings = NULL;
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

const GPtrArray *
bf_formed_cut (BfFormedCutting *cutting, const BfRing *piece)
{
  g_autoptr (GPtrArray) near = cuts_near (cutting->cuts, piece);
  GBytes *key = key_of (piece, near);
  GPtrArray *rests = cutting->known != NULL ? g_hash_table_lookup (cutting->known, key) : NULL;

  rests = rests != NULL ? g_ptr_array_ref (rests) : cut_away (piece, near);
  g_hash_table_replace (cutting->rests, key, rests);
  return rests;
}
