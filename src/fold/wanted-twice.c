/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/wanted-twice.h"

#include "core/tolerance.h"
#include "fold/outline.h"
#include "fold/overlay.h"
#include "fold/parting-cuts.h"

/* Pieces that no more than touch are one in the blank too, where they should not be: they are
 * looked at so much larger. */
#define TOUCH_MM 1e-3

/* A face or a bend zone of the blank. */
typedef struct
{
  int flap; /* −1: the base */
  gboolean is_zone;
  GPtrArray *area;
  BfBox box;
} Piece;

static void
clear_piece (gpointer data)
{
  g_clear_pointer (&((Piece *)data)->area, g_ptr_array_unref);
}

static void
add_piece (GArray *pieces, int flap, gboolean is_zone, BfRing *ring)
{
  Piece piece = { flap, is_zone, bf_area_of_ring (ring), bf_box_empty () };

  bf_ring_extend_box (ring, &piece.box);
  g_array_append_val (pieces, piece);
}

static GArray *
pieces_of (const BfFold *fold)
{
  GArray *pieces = g_array_new (FALSE, FALSE, sizeof (Piece));

  g_array_set_clear_func (pieces, clear_piece);
  for (guint i = 0; i < fold->faces->len; i++)
    if (bf_ring_size (bf_fold_face (fold, i)->outline) >= 3)
      add_piece (pieces, (int)i - 1, FALSE, bf_ring_copy (bf_fold_face (fold, i)->outline));
  for (guint i = 0; i < fold->bends->len; i++)
    if (fold->layout->flaps[i].placed)
      add_piece (pieces, (int)i, TRUE, bf_outline_zone_ring (bf_fold_bend (fold, i)));
  return pieces;
}

/* TRUE where two pieces are of one flap, or of one that hangs on the other: a slit that an end
 * relief takes is all that parts them beside the bend. */
static gboolean
hang_together (const BfLayout *layout, const Piece *a, const Piece *b)
{
  return a->flap == b->flap || (a->flap >= 0 && layout->flaps[a->flap].parent == b->flap) ||
         (b->flap >= 0 && layout->flaps[b->flap].parent == a->flap);
}

static gboolean
boxes_apart (const BfBox *a, const BfBox *b)
{
  return a->min.x > b->max.x + TOUCH_MM || b->min.x > a->max.x + TOUCH_MM ||
         a->min.y > b->max.y + TOUCH_MM || b->min.y > a->max.y + TOUCH_MM;
}

static BfBox
box_of (const GPtrArray *area)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < area->len; i++)
    bf_ring_extend_box (g_ptr_array_index (area, i), &box);
  return box;
}

/* What reliefs leave of some metal. metal: (transfer full). */
static GPtrArray *
less_reliefs (const BfFold *fold, GPtrArray *metal)
{
  for (guint i = 0; i < fold->reliefs->len && metal->len > 0; i++)
    {
      g_autoptr (GPtrArray) relief = g_ptr_array_new ();
      BfBox box = box_of (metal), cut;
      GPtrArray *left;

      g_ptr_array_add (relief, bf_fold_relief (fold, i)->ring);
      cut = box_of (relief);
      if (boxes_apart (&box, &cut))
        continue;
      left = bf_overlay_less (metal, relief, NULL);
      g_ptr_array_unref (metal);
      metal = left;
    }
  return metal;
}

/* What two pieces both want, less what reliefs take. */
static GPtrArray *
both_want (const BfFold *fold, const Piece *a, const Piece *b)
{
  g_autoptr (GPtrArray) larger =
      hang_together (fold->layout, a, b) ? NULL : bf_overlay_grown (a->area, TOUCH_MM, NULL);

  return less_reliefs (fold, bf_overlay_common (larger != NULL ? larger : a->area, b->area, NULL));
}

static BfWanted *
entry_for (GArray *wanted, const Piece *a, const Piece *b)
{
  BfWanted entry = {
    { MIN (a->flap, b->flap), MAX (a->flap, b->flap) }, 0.0, { NAN, NAN }, { 0.0, 0.0 }
  };

  for (guint i = 0; i < wanted->len; i++)
    {
      BfWanted *old = &g_array_index (wanted, BfWanted, i);

      if (old->flaps[0] == entry.flaps[0] && old->flaps[1] == entry.flaps[1])
        return old;
    }
  g_array_append_val (wanted, entry);
  return &g_array_index (wanted, BfWanted, wanted->len - 1);
}

/* A flap is too long by as much as lies beyond the nearest point that the other wants. */
static void
take_down (const BfLayout *layout, const GPtrArray *metal, BfWanted *entry)
{
  BfBox box = box_of (metal);

  entry->at = bf_box_middle (&box);
  for (guint i = 0; i < metal->len; i++)
    {
      const BfRing *ring = g_ptr_array_index (metal, i);

      entry->mm2 += bf_ring_area (ring);
      for (guint v = 0; v < bf_ring_size (ring); v++)
        for (guint k = 0; k < 2; k++)
          {
            const BfFlap *flap = entry->flaps[k] < 0 ? NULL : &layout->flaps[entry->flaps[k]];
            BfVec2 root = flap == NULL ? entry->at : bf_flap_to_blank (flap, 0.0, 0.0);
            BfVec2 p = bf_vec2_sub (bf_ring_vertex (ring, v)->p, root);

            if (flap != NULL)
              entry->over_mm[k] =
                  fmax (entry->over_mm[k], flap->tip_w_mm - bf_vec2_dot (p, flap->flat_n));
          }
    }
}

static int
compare_mm2 (gconstpointer a, gconstpointer b)
{
  double x = ((const BfWanted *)a)->mm2, y = ((const BfWanted *)b)->mm2;
  return (x < y) - (x > y);
}

/* TRUE where every piece is a polygon by itself. */
static gboolean
all_sound (const GArray *pieces)
{
  for (guint i = 0; i < pieces->len; i++)
    {
      const BfRing *ring = g_ptr_array_index (g_array_index (pieces, Piece, i).area, 0);

      if (bf_ring_area (ring) < 0.0 || !bf_overlay_is_simple (ring, NULL))
        return FALSE;
    }
  return TRUE;
}

void
bf_wanted_twice_find (BfFold *fold)
{
  BfLayout *layout = fold->layout;
  g_autoptr (GArray) pieces = pieces_of (fold);

  for (guint i = 0; i < pieces->len; i++)
    for (guint k = i + 1; k < pieces->len; k++)
      {
        const Piece *a = &g_array_index (pieces, Piece, i), *b = &g_array_index (pieces, Piece, k);
        g_autoptr (GPtrArray) metal =
            boxes_apart (&a->box, &b->box) ? NULL : both_want (fold, a, b);

        if (metal != NULL && metal->len > 0)
          take_down (layout, metal, entry_for (layout->wanted, a, b));
      }
  g_array_sort (layout->wanted, compare_mm2);
  if (layout->wanted->len > 0)
    layout->wanted_twice_at = g_array_index (layout->wanted, BfWanted, 0).at;
  layout->wanted_twice = layout->wanted->len > 0 || !all_sound (pieces);
}

gboolean
bf_wanted_twice_by (const BfFold *fold, const int flaps[2])
{
  g_autoptr (GArray) pieces = pieces_of (fold);

  for (guint i = 0; i < pieces->len; i++)
    for (guint k = 0; k < pieces->len; k++)
      {
        const Piece *a = &g_array_index (pieces, Piece, i), *b = &g_array_index (pieces, Piece, k);
        g_autoptr (GPtrArray) metal = NULL;

        if (a->flap != flaps[0] || b->flap != flaps[1] || boxes_apart (&a->box, &b->box))
          continue;
        metal = both_want (fold, a, b);
        if (metal->len > 0)
          return TRUE;
      }
  return FALSE;
}
