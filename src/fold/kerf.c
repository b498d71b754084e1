/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/kerf.h"

#include "core/tolerance.h"
#include "fold/kerf-tools.h"
#include "fold/overlay.h"
#include "fold/ring-tidy.h"

/* The waste is what an overlay cuts from: strips along the metal's edges are taken off it, and what
 * is left of it ends where the tool's middle has to run. */

#define ROOM_MM 10.0 /* of waste round the blank, more than any corner's tip reaches */

static BfRing *
box_ring (const BfBox *box, double room_mm)
{
  BfRing *ring = bf_ring_new ();

  bf_ring_add (ring, bf_vec2 (box->min.x - room_mm, box->min.y - room_mm), 0.0);
  bf_ring_add (ring, bf_vec2 (box->max.x + room_mm, box->min.y - room_mm), 0.0);
  bf_ring_add (ring, bf_vec2 (box->max.x + room_mm, box->max.y + room_mm), 0.0);
  bf_ring_add (ring, bf_vec2 (box->min.x - room_mm, box->max.y + room_mm), 0.0);
  return ring;
}

/* rings: (transfer full), tidied and handed back. */
static GPtrArray *
tidied (GPtrArray *rings)
{
  for (guint i = 0; i < rings->len; i++)
    bf_ring_tidy (g_ptr_array_index (rings, i));
  return rings;
}

/* The outer rings of what is left of the waste are the box and pockets; its holes are the metal. */
static GPtrArray *
sort_out (GPtrArray *waste, guint n_outer, guint *n_grown)
{
  GPtrArray *grown = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);

  for (guint i = n_outer; i < waste->len; i++)
    g_ptr_array_add (grown, bf_ring_copy (g_ptr_array_index (waste, i)));
  *n_grown = grown->len;
  for (guint i = 1; i < n_outer; i++)
    g_ptr_array_add (grown, bf_ring_copy (g_ptr_array_index (waste, i)));
  for (guint i = 0; i < grown->len; i++)
    bf_ring_reverse (g_ptr_array_index (grown, i));
  g_ptr_array_unref (waste);
  return tidied (grown);
}

GPtrArray *
bf_kerf_outside (const GPtrArray *rings, guint n_outer, double half_mm, guint *n_grown)
{
  g_autoptr (GPtrArray) waste = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  g_autoptr (GPtrArray) strips = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  BfBox box = bf_box_empty ();
  guint n_left;
  GPtrArray *left;

  g_return_val_if_fail (rings != NULL && n_outer <= rings->len && half_mm > 0.0, NULL);

  g_ptr_array_add (waste, NULL);
  for (guint i = 0; i < n_outer; i++)
    {
      BfRing *hollow = bf_ring_copy (g_ptr_array_index (rings, i));
      bf_kerf_add_tools (hollow, half_mm, strips);
      bf_ring_extend_box (hollow, &box);
      bf_ring_reverse (hollow);
      g_ptr_array_add (waste, hollow);
    }
  waste->pdata[0] = box_ring (&box, 4.0 * half_mm + ROOM_MM);
  left = bf_overlay_cut (waste, strips, &n_left);
  return sort_out (left, n_left, n_grown);
}

/* A round hole needs no overlay, and keeps its two vertices. */
static GPtrArray *
shrunk_circle (BfVec2 centre, double radius_mm)
{
  GPtrArray *left = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  BfRing *ring;

  if (radius_mm <= BF_TOLERANCE_SIZE_MM)
    return left;
  ring = bf_ring_new ();
  bf_ring_add (ring, bf_vec2 (centre.x + radius_mm, centre.y), -1.0);
  bf_ring_add (ring, bf_vec2 (centre.x - radius_mm, centre.y), -1.0);
  g_ptr_array_add (left, ring);
  return left;
}

GPtrArray *
bf_kerf_inside (const BfRing *hole, double half_mm)
{
  g_autoptr (GPtrArray) waste = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  g_autoptr (GPtrArray) strips = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  BfRing *clockwise, *solid;
  GPtrArray *left;
  guint n_outer;
  double radius_mm;
  BfVec2 centre;

  g_return_val_if_fail (hole != NULL && half_mm > 0.0, NULL);

  if (bf_ring_is_circle (hole, &centre, &radius_mm))
    return shrunk_circle (centre, radius_mm - half_mm);
  solid = bf_ring_copy (hole);
  bf_ring_make_counter_clockwise (solid);
  g_ptr_array_add (waste, solid);
  clockwise = bf_ring_copy (solid);
  bf_ring_reverse (clockwise);
  bf_kerf_add_tools (clockwise, half_mm, strips);
  bf_ring_free (clockwise);
  left = bf_overlay_cut (waste, strips, &n_outer);
  g_ptr_array_set_size (left, (int)n_outer);
  for (guint i = 0; i < left->len; i++)
    bf_ring_reverse (g_ptr_array_index (left, i));
  return tidied (left);
}
