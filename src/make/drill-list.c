/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/drill-list.h"

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
      BfDrilled hole = { relief->at, relief->drill_mm, relief->drill };

      if (relief->drill != NULL)
        g_array_append_val (list, hole);
    }
}

static void
add_holes (const BfFold *fold, GArray *list)
{
  for (guint i = fold->blank.n_outer; i < fold->blank.rings->len; i++)
    {
      double radius;
      BfDrilled hole = { .drill = NULL };

      if (!bf_ring_is_circle (bf_blank_ring (&fold->blank, i), &hole.at, &radius) ||
          !bf_is_drilled (fold, radius))
        continue;
      hole.diameter_mm = 2.0 * radius;
      /* A relief that stands clear of the outline is a ring of its own, and listed already. */
      for (guint k = 0; k < list->len; k++)
        if (bf_vec2_distance (g_array_index (list, BfDrilled, k).at, hole.at) <
            BF_TOLERANCE_SIZE_MM)
          hole.diameter_mm = NAN;
      if (!isnan (hole.diameter_mm))
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
bf_drill_list (const BfFold *fold)
{
  GArray *list = g_array_new (FALSE, FALSE, sizeof (BfDrilled));

  add_reliefs (fold, list);
  add_holes (fold, list);
  g_array_sort (list, compare_drilled);
  return list;
}
