/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/drill-list.h"

#include "core/compare.h"
#include "core/drills.h"
#include "core/tolerance.h"

gboolean
bf_is_drilled (const BfFold *fold, double radius_mm)
{
  BfCuttingWay by = fold->part->cutting.by;

  return (by == BF_CUTTING_DISC || by == BF_CUTTING_SNIPS) &&
         radius_mm * 2.0 <= BF_LARGEST_DRILL_MM;
}

static void
add_reliefs (const BfFold *fold, GArray *list)
{
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      const BfRelief *relief = bf_fold_relief (fold, i);
      BfDrilled hole = { relief->at, relief->drill_mm, TRUE, g_intern_string (relief->drill), -1 };

      if (relief->drill != NULL)
        g_array_append_val (list, hole);
    }
}

/* The drill owned that is just so wide, or NULL. */
static const char *
drill_of (const BfFold *fold, double diameter_mm)
{
  g_autofree char *name = NULL;
  double drill_mm = bf_drill_next_up (fold->part, diameter_mm, &name);

  return name != NULL && bf_is_same_size (drill_mm, diameter_mm) ? g_intern_string (name) : NULL;
}

static gboolean
is_listed (const GArray *list, BfVec2 at)
{
  for (guint i = 0; i < list->len; i++)
    if (bf_vec2_distance (g_array_index (list, BfDrilled, i).at, at) < BF_TOLERANCE_SIZE_MM)
      return TRUE;
  return FALSE;
}

/* How far the arcs of one circle turn from vertex i on. */
static double
swept_rad (const BfRing *ring, guint i, const BfArc *first)
{
  double sum = 0.0;
  BfArc arc;

  for (guint k = 0; k < bf_ring_size (ring); k++)
    {
      if (!bf_ring_arc (ring, i + k, &arc) || !bf_arcs_share_circle (&arc, first))
        break;
      sum += arc.sweep;
    }
  return sum;
}

/* A drill makes what bounds an opening by half a circle or more: a round hole, the ends of a slot,
 * both ends of a keyhole. Openings run clockwise, and such an arc with them. A relief that stands
 * clear of the outline is a ring of its own, and listed already. */
static void
add_round_ends (const BfFold *fold, guint opening, GArray *list)
{
  const BfRing *ring = bf_blank_ring (&fold->blank, opening);
  gboolean is_round = bf_ring_is_circle (ring, NULL, NULL);

  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      BfDrilled hole = { .drill = NULL, .opening = (int)opening };
      BfArc arc;

      if (!bf_ring_arc (ring, i, &arc) ||
          swept_rad (ring, i, &arc) > -G_PI + BF_TOLERANCE_SIZE_MM || is_listed (list, arc.centre))
        continue;
      hole.at = arc.centre;
      hole.diameter_mm = 2.0 * arc.radius;
      hole.by_drill = bf_is_drilled (fold, arc.radius);
      if (hole.by_drill)
        hole.drill = drill_of (fold, hole.diameter_mm);
      if (hole.by_drill || is_round)
        g_array_append_val (list, hole);
    }
}

static int
compare_drilled (gconstpointer a, gconstpointer b)
{
  const BfDrilled *x = a, *y = b;
  const double differences[] = { x->diameter_mm - y->diameter_mm, x->at.x - y->at.x,
                                 x->at.y - y->at.y };

  for (guint i = 0; i < G_N_ELEMENTS (differences); i++)
    if (fabs (differences[i]) > BF_TOLERANCE_SIZE_MM)
      return differences[i] > 0.0 ? 1 : -1;
  return 0;
}

GArray *
bf_centre_list (const BfFold *fold)
{
  GArray *list = g_array_new (FALSE, FALSE, sizeof (BfDrilled));

  g_return_val_if_fail (fold != NULL, list);
  add_reliefs (fold, list);
  for (guint i = fold->blank.n_outer; i < fold->blank.rings->len; i++)
    if (!bf_fold_ring_is_slot (fold, i))
      add_round_ends (fold, i, list);
  return list;
}

GArray *
bf_drill_list (const BfFold *fold)
{
  GArray *list = bf_centre_list (fold);

  for (guint i = list->len; i > 0; i--)
    if (!bf_drilled (list, i - 1)->by_drill)
      g_array_remove_index (list, i - 1);
  g_array_sort (list, compare_drilled);
  return list;
}
