/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/sizes.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"

static double
coordinate (BfVec2 p, gboolean across)
{
  return across ? p.y : p.x;
}

/* The bend on a base edge that lies all along that coordinate; −1 where there is none. */
static int
bend_at (const BfFold *fold, gboolean across, double at)
{
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfFlange *flange = bf_part_find_flange (fold->part, bf_fold_bend (fold, i)->flange);
      BfVec2 a, b;

      if (flange == NULL || flange->edge != BF_EDGE_INDEX)
        continue;
      a = bf_part_point (fold->part, flange->edge_index);
      b = bf_part_point (fold->part, flange->edge_index + 1);
      if (fabs (coordinate (a, across) - at) < BF_TOLERANCE_SIZE_MM &&
          fabs (coordinate (b, across) - at) < BF_TOLERANCE_SIZE_MM)
        return (int)i;
    }
  return -1;
}

static void
add_base (const BfFold *fold, gboolean across, GArray *sizes)
{
  double ends[2] = { G_MAXDOUBLE, -G_MAXDOUBLE };
  BfMainSize size = { .across = across };
  guint n_bends = 0;

  size.made = (BfMadeSize){ .measured_mm = NAN, .bends = { -1, -1 }, .grows = { 1, 1 } };

  for (guint i = 0; i < bf_part_n_points (fold->part); i++)
    {
      double at = coordinate (bf_part_point (fold->part, i), across);

      ends[0] = MIN (ends[0], at);
      ends[1] = MAX (ends[1], at);
    }
  for (guint i = 0; i < 2; i++)
    if (bend_at (fold, across, ends[i]) >= 0)
      size.made.bends[n_bends++] = bend_at (fold, across, ends[i]);
  size.made.n_cut_edges = 2 - n_bends;
  size.made.asked_mm = size.size_mm = ends[1] - ends[0];
  bf_made_expected (fold, &size.made, &size.error);
  g_array_append_val (sizes, size);
}

static void
add_flange (const BfFold *fold, guint bend, GArray *sizes)
{
  BfMainSize size = { .name = bf_fold_bend (fold, bend)->flange };

  if (bf_part_find_flange (fold->asked, size.name) == NULL ||
      !bf_made_flange (fold, size.name, NAN, &size.made))
    return; /* a tab */
  size.size_mm = size.made.asked_mm;
  bf_made_expected (fold, &size.made, &size.error);
  g_array_append_val (sizes, size);
}

const char *
bf_main_size_name (const BfMainSize *size)
{
  g_return_val_if_fail (size != NULL, NULL);

  if (size->name != NULL)
    return size->name;
  return size->across ? _ ("base depth") : _ ("base width");
}

GArray *
bf_main_sizes (const BfFold *fold)
{
  GArray *sizes = g_array_new (FALSE, FALSE, sizeof (BfMainSize));

  add_base (fold, FALSE, sizes);
  add_base (fold, TRUE, sizes);
  for (guint i = 0; i < fold->bends->len; i++)
    add_flange (fold, i, sizes);
  return sizes;
}
