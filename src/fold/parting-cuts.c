/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/parting-cuts.h"

#include "core/defaults.h"
#include "core/tolerance.h"
#include "fold/outline.h"
#include "fold/overlay.h"

/* Bend lines that face the same way as nearly as this have no line between them. */
#define LEAST_TURNED 0.05

/* Metal beside the other flange is cut as far as this short of a whole gap, so that no cut lies
 * along an edge that stands off by just a gap already. */
#define SHORT_OF_GAP_MM 1e-3

/* ---- areas -------------------------------------------------------------------------------- */

GPtrArray *
bf_area_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
}

GPtrArray *
bf_area_of_ring (BfRing *ring)
{
  GPtrArray *area = bf_area_new ();

  g_ptr_array_add (area, ring);
  return area;
}

GPtrArray *
bf_area_of_zone (const BfFlap *flap)
{
  BfVec2 zone[4];
  BfRing *ring = bf_ring_new ();

  bf_outline_zone (flap, zone);
  for (guint i = 0; i < 4; i++)
    bf_ring_add (ring, zone[i], 0.0);
  bf_ring_make_counter_clockwise (ring);
  return bf_area_of_ring (ring);
}

gboolean
bf_areas_meet (const GPtrArray *a, const GPtrArray *b)
{
  g_autoptr (GPtrArray) common = bf_overlay_common (a, b, NULL);

  return common->len > 0;
}

/* Moves what `more` holds to the end of `area`. more: (transfer full) */
static void
take_all (GPtrArray *area, GPtrArray *more)
{
  g_ptr_array_extend_and_steal (area, more);
}

/* ---- one pair ----------------------------------------------------------------------------- */

/* How two flaps share: k · x < c lies nearer to the bend line of the first. */
typedef struct
{
  const BfLayout *layout;
  const BfFlap *flaps[2];
  GPtrArray *flats[2], *zones[2];
  GPtrArray *shared; /* what both want */
  BfVec2 k;
  double c_mm, gap_mm;
} Share;

static void
share_clear (Share *share)
{
  for (guint i = 0; i < 2; i++)
    {
      g_clear_pointer (&share->flats[i], g_ptr_array_unref);
      g_clear_pointer (&share->zones[i], g_ptr_array_unref);
    }
  g_clear_pointer (&share->shared, g_ptr_array_unref);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Share, share_clear)

/* The line between the two bend lines on which a point is as far out from one as from the other.
 * FALSE where they face the same way. */
static gboolean
find_line (Share *share)
{
  BfVec2 on[2];
  double turned;

  for (guint i = 0; i < 2; i++)
    on[i] = bf_flap_at_v (share->flaps[i], 0.0, bf_flap_bend_v (share->flaps[i]));
  share->k = bf_vec2_sub (share->flaps[0]->flat_n, share->flaps[1]->flat_n);
  turned = bf_vec2_length (share->k);
  if (turned < LEAST_TURNED)
    return FALSE;
  share->k = bf_vec2_scale (share->k, 1.0 / turned);
  share->c_mm = (bf_vec2_dot (share->flaps[0]->flat_n, on[0]) -
                 bf_vec2_dot (share->flaps[1]->flat_n, on[1])) /
                turned;
  return TRUE;
}

/* Whether cuts may go into the flap's flat at all: its metal has to begin and to go on at bends
 * that take some, and not to go on into a corner folded double. */
static gboolean
may_be_cut (const BfLayout *layout, const BfFlap *flap)
{
  for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
    {
      int meeting = flap->sides[name].meeting;

      if (meeting >= 0 && bf_layout_meeting (layout, (guint)meeting)->folded)
        return FALSE;
    }
  for (guint i = 0; i < layout->n_flaps; i++)
    if ((&layout->flaps[i] == flap || layout->flaps[i].parent == (int)(flap - layout->flaps)) &&
        layout->flaps[i].placed && layout->flaps[i].sums.allowance_mm <= BF_TOLERANCE_ZERO)
      return FALSE;
  return flap->placed;
}

static gboolean
share_init (Share *share, const BfLayout *layout, const int flaps[2])
{
  *share = (Share){ .layout = layout, .shared = bf_area_new () };
  share->gap_mm = MAX (bf_part_resolve_gap_mm (layout->part, NULL), 2.0 * BF_OUTLINE_SLIT_MM);
  for (guint i = 0; i < 2; i++)
    {
      share->flaps[i] = &layout->flaps[flaps[i]];
      if (!may_be_cut (layout, share->flaps[i]))
        return FALSE;
      share->flats[i] = bf_area_of_ring (bf_outline_flat (layout, flaps[i]));
      share->zones[i] = bf_area_of_zone (share->flaps[i]);
    }
  if (bf_areas_meet (share->zones[0], share->zones[1]))
    return FALSE;
  take_all (share->shared, bf_overlay_common (share->flats[0], share->flats[1], NULL));
  take_all (share->shared, bf_overlay_common (share->flats[0], share->zones[1], NULL));
  take_all (share->shared, bf_overlay_common (share->zones[0], share->flats[1], NULL));
  return share->shared->len > 0 && find_line (share);
}

/* The side of the line that flap i gives up, with half the gap, as far as anything reaches. */
static GPtrArray *
given_side (const Share *share, guint i)
{
  double sign = i == 0 ? 1.0 : -1.0;
  BfVec2 out = bf_vec2_scale (share->k, sign), along = bf_vec2 (-out.y, out.x), foot, centre;
  BfBox box = bf_box_empty ();
  BfRing *ring = bf_ring_new ();
  double reach;

  for (guint k = 0; k < 2; k++)
    bf_ring_extend_box (g_ptr_array_index (share->flats[k], 0), &box);
  reach = 2.0 * bf_vec2_distance (box.min, box.max);
  centre = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  foot = bf_vec2_along (centre, share->k,
                        share->c_mm - sign * share->gap_mm / 2.0 - bf_vec2_dot (share->k, centre));
  bf_ring_add (ring, bf_vec2_along (foot, along, -reach), 0.0);
  bf_ring_add (ring, bf_vec2_along (foot, along, reach), 0.0);
  bf_ring_add (ring, bf_vec2_along (bf_vec2_along (foot, along, reach), out, reach), 0.0);
  bf_ring_add (ring, bf_vec2_along (bf_vec2_along (foot, along, -reach), out, reach), 0.0);
  bf_ring_make_counter_clockwise (ring);
  return bf_area_of_ring (ring);
}

/* Where the other one's metal comes near the flap without being wanted by it nothing is cut. */
static GPtrArray *
only_where_shared (const Share *share, guint i, GPtrArray *tool)
{
  g_autoptr (GPtrArray) met = bf_overlay_common (share->flats[i], tool, NULL);

  for (guint k = 0; k < met->len; k++)
    {
      g_autoptr (GPtrArray) piece = bf_area_of_ring (bf_ring_copy (g_ptr_array_index (met, k)));
      g_autoptr (GPtrArray) around = NULL;
      GPtrArray *less;

      if (bf_areas_meet (piece, share->shared))
        continue;
      around = bf_overlay_grown (piece, SHORT_OF_GAP_MM, NULL);
      less = bf_overlay_less (tool, around, NULL);
      g_ptr_array_unref (tool);
      tool = less;
    }
  return tool;
}

/* What cuts flap i: the other one's metal, and a gap round it, on the other one's side. */
static GPtrArray *
find_cuts (const Share *share, guint i)
{
  g_autoptr (GPtrArray) side = given_side (share, i);
  GPtrArray *cuts = bf_area_new (), *others[] = { share->flats[1 - i], share->zones[1 - i] };

  for (guint k = 0; k < G_N_ELEMENTS (others); k++)
    {
      g_autoptr (GPtrArray) grown =
          bf_overlay_grown (others[k], share->gap_mm - SHORT_OF_GAP_MM, NULL);

      take_all (cuts, only_where_shared (share, i, bf_overlay_common (grown, side, NULL)));
    }
  for (guint k = cuts->len; k-- > 0;)
    {
      g_autoptr (GPtrArray) cut = bf_area_of_ring (bf_ring_copy (g_ptr_array_index (cuts, k)));

      if (!bf_areas_meet (cut, share->flats[i]))
        g_ptr_array_remove_index (cuts, k);
    }
  return cuts;
}

void
bf_parting_find_cuts (const BfLayout *layout, BfParting *parting)
{
  g_auto (Share) share = { .layout = NULL };
  gboolean shares = share_init (&share, layout, parting->flaps);

  for (guint k = 0; k < 2; k++)
    parting->cuts[k] = shares ? find_cuts (&share, k) : bf_area_new ();
}
