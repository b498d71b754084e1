/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/parting.h"

#include "core/tolerance.h"
#include "fold/outline.h"
#include "fold/overlay.h"
#include "fold/parting-cuts.h"

/* A cut keeps this far off a bend. */
#define OFF_BEND_MM 0.05

void
bf_parting_clear (BfParting *parting)
{
  for (guint k = 0; k < 2; k++)
    g_clear_pointer (&parting->cuts[k], g_ptr_array_unref);
}

/* ---- whether it is clean ------------------------------------------------------------------ */

static double
area_mm2 (const GPtrArray *area)
{
  double sum = 0.0;

  for (guint i = 0; i < area->len; i++)
    sum += bf_ring_area (g_ptr_array_index (area, i));
  return sum;
}

/* TRUE where a cut reaches the flap's own bend or one that it carries. */
static gboolean
reaches_bend (const BfLayout *layout, int flap, const GPtrArray *cuts)
{
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      const BfFlap *bent = &layout->flaps[i];
      g_autoptr (GPtrArray) zone = NULL, around = NULL;

      if (!bent->placed || ((int)i != flap && bent->parent != flap))
        continue;
      zone = bf_area_of_zone (bent);
      around = bf_overlay_grown (zone, OFF_BEND_MM, NULL);
      for (guint k = 0; k < cuts->len; k++)
        {
          g_autoptr (GPtrArray) cut = bf_area_of_ring (bf_ring_copy (g_ptr_array_index (cuts, k)));

          if (bf_areas_meet (around, cut))
            return TRUE;
        }
    }
  return FALSE;
}

/* What of an area is thinner than the metal: what is lost when it shrinks and grows again. */
static double
thin_mm2 (const GPtrArray *area, double thickness_mm, guint *n_thick)
{
  g_autoptr (GPtrArray) shrunk = bf_overlay_grown (area, -thickness_mm / 2.0, n_thick);
  g_autoptr (GPtrArray) again = bf_overlay_grown (shrunk, thickness_mm / 2.0, NULL);

  return area_mm2 (area) - area_mm2 (again);
}

/* What is left of an area, cut by one ring after the other: so points stay where they are. area:
 * (transfer full) */
static GPtrArray *
less_cuts (GPtrArray *area, const GPtrArray *cuts)
{
  for (guint k = 0; k < cuts->len; k++)
    {
      g_autoptr (GPtrArray) cut = bf_area_of_ring (bf_ring_copy (g_ptr_array_index (cuts, k)));
      GPtrArray *less = bf_overlay_less (area, cut, NULL);

      g_ptr_array_unref (area);
      area = less;
    }
  return area;
}

/* What all partings that are made cut that flap by. */
static GPtrArray *
cuts_of (const BfLayout *layout, int flap)
{
  GPtrArray *cuts = bf_area_new ();

  for (guint i = 0; i < layout->partings->len; i++)
    {
      const BfParting *parting = &g_array_index (layout->partings, BfParting, i);

      for (guint k = 0; k < 2 && parting->made; k++)
        for (guint j = 0; parting->flaps[k] == flap && j < parting->cuts[k]->len; j++)
          g_ptr_array_add (cuts, bf_ring_copy (g_ptr_array_index (parting->cuts[k], j)));
    }
  return cuts;
}

/* All cuts that go into a flap: they leave it in one piece, none of it thin that was not before. */
static gboolean
leaves_whole (const BfLayout *layout, int flap)
{
  double t = layout->thickness_mm, thin_before;
  g_autoptr (GPtrArray) cuts = cuts_of (layout, flap);
  g_autoptr (GPtrArray) before = bf_area_of_ring (bf_outline_flat (layout, flap)), left = NULL;
  guint n_thick;

  if (cuts->len == 0)
    return TRUE;
  if (reaches_bend (layout, flap, cuts))
    return FALSE;
  thin_before = thin_mm2 (before, t, NULL);
  left = less_cuts (g_steal_pointer (&before), cuts);
  return left->len == 1 && thin_mm2 (left, t, &n_thick) - thin_before <= t * t && n_thick == 1;
}

static gboolean
is_clean (const BfLayout *layout, const BfParting *parting)
{
  return leaves_whole (layout, parting->flaps[0]) && leaves_whole (layout, parting->flaps[1]);
}

/* ---- all of them -------------------------------------------------------------------------- */

static int
compare_flaps (gconstpointer a, gconstpointer b)
{
  const BfParting *x = a, *y = b;

  return x->flaps[0] != y->flaps[0] ? x->flaps[0] - y->flaps[0] : x->flaps[1] - y->flaps[1];
}

/* Every pair of the part, in order of its flaps, however it is written. */
static void
take_pairs (BfLayout *layout)
{
  for (guint i = 0; i < layout->part->parted->len; i++)
    {
      const BfParted *asked = g_ptr_array_index (layout->part->parted, i);
      int a = bf_layout_find_flap (layout, asked->ids[0]);
      int b = bf_layout_find_flap (layout, asked->ids[1]);
      BfParting parting = { { MIN (a, b), MAX (a, b) }, { NULL, NULL }, FALSE };

      if (parting.flaps[0] >= 0)
        g_array_append_val (layout->partings, parting);
    }
  g_array_sort (layout->partings, compare_flaps);
}

static BfParting *
parting_at (const BfLayout *layout, guint i)
{
  return &g_array_index (layout->partings, BfParting, i);
}

static void
make_all (BfLayout *layout, const gboolean *made)
{
  for (guint i = 0; i < layout->partings->len; i++)
    parting_at (layout, i)->made = made[i];
}

/* Pairs that are not clean are not made: each by itself first, then those that are not together,
 * whatever their order. */
void
bf_partings_find (BfLayout *layout)
{
  g_autofree gboolean *clean = NULL;

  take_pairs (layout);
  for (guint i = 0; i < layout->partings->len; i++)
    bf_parting_find_cuts (layout, parting_at (layout, i));
  clean = g_new0 (gboolean, layout->partings->len + 1);
  for (guint i = 0; i < layout->partings->len; i++)
    {
      parting_at (layout, i)->made = TRUE;
      clean[i] = is_clean (layout, parting_at (layout, i));
      parting_at (layout, i)->made = FALSE;
    }
  make_all (layout, clean);
  for (guint i = 0; i < layout->partings->len; i++)
    clean[i] = clean[i] && is_clean (layout, parting_at (layout, i));
  make_all (layout, clean);
}

gboolean
bf_partings_cut_flap (const BfLayout *layout, int flap)
{
  g_autoptr (GPtrArray) cuts = cuts_of (layout, flap);

  return cuts->len > 0;
}

/* Where a way crosses an edge, as a share of the way; 1 where it does not. */
static double
crossed_at (BfVec2 from, BfVec2 to, BfVec2 a, BfVec2 b)
{
  BfVec2 way = bf_vec2_sub (to, from), edge = bf_vec2_sub (b, a);
  double det = bf_vec2_cross (way, edge);
  double at, on;

  if (fabs (det) < BF_TOLERANCE_ZERO)
    return 1.0;
  at = bf_vec2_cross (bf_vec2_sub (a, from), edge) / det;
  on = bf_vec2_cross (bf_vec2_sub (a, from), way) / det;
  return at >= 0.0 && on >= 0.0 && on <= 1.0 ? MIN (at, 1.0) : 1.0;
}

double
bf_partings_leave (const BfLayout *layout, int flap, BfVec2 from, BfVec2 to)
{
  g_autoptr (GPtrArray) cuts = cuts_of (layout, flap);
  double least = 1.0;

  for (guint k = 0; k < cuts->len; k++)
    {
      const BfRing *cut = g_ptr_array_index (cuts, k);

      for (guint i = 0; i < bf_ring_size (cut); i++)
        least = MIN (least, crossed_at (from, to, bf_ring_vertex (cut, i)->p,
                                        bf_ring_vertex (cut, i + 1)->p));
    }
  return least;
}

BfRing *
bf_partings_cut (const BfLayout *layout, int flap, BfRing *ring)
{
  g_autoptr (GPtrArray) cuts = cuts_of (layout, flap), left = NULL;

  if (cuts->len == 0)
    return ring;
  left = less_cuts (bf_area_of_ring (ring), cuts);
  g_return_val_if_fail (left->len > 0, bf_ring_new ());
  return g_ptr_array_steal_index (left, 0);
}
