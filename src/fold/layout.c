/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/layout.h"

#include "fold/corner.h"
#include "fold/face-below.h"
#include "fold/folded-corner.h"
#include "fold/free-corners.h"
#include "fold/layout-sides.h"
#include "fold/parting.h"
#include "fold/score.h"
#include "fold/wanted-twice.h"

/* ---- building ---------------------------------------------------------------------------- */

static int
compare_flaps (const void *a, const void *b)
{
  return strcmp (((const BfFlap *)a)->flange->id, ((const BfFlap *)b)->flange->id);
}

int
bf_layout_find_flap (const BfLayout *layout, const char *id)
{
  const BfFlange key_flange = { .id = (char *)id };
  const BfFlap key = { .flange = &key_flange };
  const BfFlap *found =
      bsearch (&key, layout->flaps, layout->n_flaps, sizeof *layout->flaps, compare_flaps);

  return found == NULL ? -1 : (int)(found - layout->flaps);
}

static void
init_flap (const BfLayout *layout, BfFlap *flap, const BfFlange *flange)
{
  const BfPart *part = layout->part;

  flap->flange = flange;
  flap->parent = -1;
  flap->bend = bf_bend_as_folded (part, flange);
  flap->angle_rad = bf_deg_to_rad (flange->angle_deg);
  bf_bend_sums (&flap->bend, flap->angle_rad, layout->thickness_mm,
                flange->is_tab ? BF_MEASURE_OUTSIDE : part->measure, &flap->sums);
  flap->radius_mm = flap->sums.face_radius_mm;
  flap->tip_w_mm = flange->length_mm - flap->sums.setback_mm;
  for (int i = 0; i < 2; i++)
    {
      flap->sides[i].zone_limit_mm = -G_MAXDOUBLE;
      flap->sides[i].meeting = -1;
    }
}

static guint
depth_of (const BfLayout *layout, const BfFlap *flap)
{
  guint depth = 0;

  while (flap->parent >= 0 && depth <= layout->n_flaps)
    {
      flap = &layout->flaps[flap->parent];
      depth++;
    }
  return depth;
}

static int
compare_order (gconstpointer a, gconstpointer b, gpointer data)
{
  const BfLayout *layout = data;
  guint x = *(const guint *)a, y = *(const guint *)b;
  guint depth_x = layout->flaps[x].depth, depth_y = layout->flaps[y].depth;

  return depth_x != depth_y ? (int)depth_x - (int)depth_y : (int)x - (int)y;
}

static int
compare_starts (gconstpointer a, gconstpointer b)
{
  const BfFlap *x = *(BfFlap *const *)a, *y = *(BfFlap *const *)b;
  double dx = x->flange->start_mm, dy = y->flange->start_mm;

  return dx > dy ? 1 : dx < dy ? -1 : strcmp (x->flange->id, y->flange->id);
}

static void
link_to (GPtrArray **carried, BfFlap *flap)
{
  if (*carried == NULL)
    *carried = g_ptr_array_new ();
  g_ptr_array_add (*carried, flap);
  g_ptr_array_sort (*carried, compare_starts);
}

static void
link_to_parent (BfFlap *parent, BfFlap *flap)
{
  const BfBendSums *sums = &flap->sums;

  if (flap->flange->edge != BF_EDGE_TIP)
    {
      link_to (&parent->on_side[flap->flange->edge == BF_EDGE_START ? BF_SIDE_START : BF_SIDE_END],
               flap);
      return;
    }
  link_to (&parent->on_tip, flap);
  parent->tip_setback_mm = MAX (parent->tip_setback_mm, sums->setback_mm);
  parent->tip_shift_mm = MAX (parent->tip_shift_mm, sums->outside_setback_mm - sums->setback_mm);
}

static void
link_parents (BfLayout *layout)
{
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      BfFlap *flap = &layout->flaps[i];

      layout->order[i] = i;
      if (flap->flange->edge != BF_EDGE_INDEX)
        flap->parent = bf_layout_find_flap (layout, flap->flange->on);
      if (flap->parent >= 0)
        link_to_parent (&layout->flaps[flap->parent], flap);
    }
  for (guint i = 0; i < layout->n_flaps; i++)
    layout->flaps[i].depth = depth_of (layout, &layout->flaps[i]);
  g_qsort_with_data (layout->order, (int)layout->n_flaps, sizeof *layout->order, compare_order,
                     layout);
}

BfLayout *
bf_layout_new (BfPart *part)
{
  BfLayout *layout = g_new0 (BfLayout, 1);
  guint n_points = bf_part_n_points (part);

  layout->part = part;
  layout->thickness_mm = part->metal.thickness_mm;
  layout->n_flaps = bf_part_n_flanges (part);
  /* One more than is used: sorting and searching take no NULL, and a part may have no flange. */
  layout->flaps = g_new0 (BfFlap, layout->n_flaps + 1);
  layout->order = g_new0 (guint, layout->n_flaps + 1);
  layout->meetings = g_array_new (FALSE, TRUE, sizeof (BfMeeting));
  layout->free_corners = g_array_new (FALSE, TRUE, sizeof (BfFreeCorner));
  layout->folded = g_array_new (FALSE, TRUE, sizeof (BfFoldedCorner));
  g_array_set_clear_func (layout->folded, (GDestroyNotify)bf_folded_corner_clear);
  layout->partings = g_array_new (FALSE, TRUE, sizeof (BfParting));
  g_array_set_clear_func (layout->partings, (GDestroyNotify)bf_parting_clear);
  layout->wanted = g_array_new (FALSE, TRUE, sizeof (BfWanted));
  layout->base_edges = g_new0 (GPtrArray *, n_points + 1);
  for (guint i = 0; i < n_points; i++)
    layout->base_edges[i] = g_ptr_array_new ();
  for (guint i = 0; i < layout->n_flaps; i++)
    init_flap (layout, &layout->flaps[i], bf_part_flange (part, i));
  qsort (layout->flaps, layout->n_flaps, sizeof *layout->flaps, compare_flaps);
  link_parents (layout);
  return layout;
}

void
bf_layout_free (BfLayout *layout)
{
  if (layout == NULL)
    return;
  for (guint i = 0; layout->base_edges[i] != NULL; i++)
    g_ptr_array_unref (layout->base_edges[i]);
  g_free (layout->base_edges);
  g_array_unref (layout->meetings);
  g_array_unref (layout->free_corners);
  g_array_unref (layout->folded);
  g_array_unref (layout->partings);
  g_array_unref (layout->wanted);
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      BfFlap *flap = &layout->flaps[i];

      g_clear_pointer (&flap->on_tip, g_ptr_array_unref);
      g_clear_pointer (&flap->on_side[BF_SIDE_START], g_ptr_array_unref);
      g_clear_pointer (&flap->on_side[BF_SIDE_END], g_ptr_array_unref);
    }
  g_free (layout->order);
  g_free (layout->flaps);
  g_free (layout);
}

/* ---- unfolding --------------------------------------------------------------------------- */

/* A flange on a tip meets what the flanges that it stands on meet, down to one that stands on a
 * base edge or on a side. */
static void
mitre_lip (BfLayout *layout, BfFlap *flap)
{
  for (const BfFlap *on = flap; on->parent >= 0 && on->flange->edge == BF_EDGE_TIP;)
    {
      on = &layout->flaps[on->parent];
      for (BfSideName name = BF_SIDE_START; name <= BF_SIDE_END; name++)
        if (on->sides[name].meeting >= 0)
          bf_corner_mitre (layout, bf_layout_meeting (layout, (guint)on->sides[name].meeting), flap,
                           name);
    }
}

static void
unfold_base_level (BfLayout *layout)
{
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      BfFlap *flap = &layout->flaps[i];

      if (flap->flange->edge != BF_EDGE_INDEX)
        continue;
      bf_layout_place (layout, flap);
      bf_sides_add_own (flap);
      if (flap->placed)
        g_ptr_array_add (layout->base_edges[flap->flange->edge_index], flap);
    }
  for (guint i = 0; i < bf_part_n_points (layout->part); i++)
    g_ptr_array_sort (layout->base_edges[i], compare_starts);

  bf_corners_find (layout);
  for (guint i = 0; i < layout->meetings->len; i++)
    bf_corner_trim (layout, bf_layout_meeting (layout, i));
  for (guint i = 0; i < layout->n_flaps; i++)
    if (layout->flaps[i].flange->edge == BF_EDGE_INDEX && layout->flaps[i].placed)
      bf_sides_settle (layout, &layout->flaps[i]);
}

typedef void (*FlapFunc) (BfLayout *layout, BfFlap *flap);

static void
place_child (BfLayout *layout, BfFlap *flap)
{
  bf_layout_place (layout, flap);
  bf_sides_add_own (flap);
}

static void
settle_child (BfLayout *layout, BfFlap *flap)
{
  if (!flap->placed)
    return;
  mitre_lip (layout, flap);
  bf_side_keep_off_face_below (layout, flap);
  bf_sides_settle (layout, flap);
}

static void
for_each_child (BfLayout *layout, const BfFlap *flap, FlapFunc func)
{
  for (BfEdgeKind edge = BF_EDGE_TIP; edge <= BF_EDGE_END; edge++)
    {
      GPtrArray *carried = bf_flap_carried (flap, edge);

      for (guint i = 0; carried != NULL && i < carried->len; i++)
        func (layout, g_ptr_array_index (carried, i));
    }
}

/* What a settled flap carries. */
static void
unfold_children (BfLayout *layout, const BfFlap *flap)
{
  guint first = layout->meetings->len;

  for_each_child (layout, flap, place_child);
  bf_corners_find_on (layout, flap);
  for (guint i = first; i < layout->meetings->len; i++)
    bf_corner_trim (layout, bf_layout_meeting (layout, i));
  for_each_child (layout, flap, settle_child);
}

void
bf_layout_unfold (BfLayout *layout)
{
  unfold_base_level (layout);
  for (guint i = 0; i < layout->n_flaps; i++)
    unfold_children (layout, &layout->flaps[layout->order[i]]);
  bf_folded_corners_find (layout, layout->folded);
  bf_free_corners_find (layout);
  bf_partings_find (layout);
}
