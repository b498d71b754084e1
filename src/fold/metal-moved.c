/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/metal-moved.h"

#include "fold/ring-distance.h"

/* The greatest distance of a point of a blank to the other's lines, and the point. */
typedef struct
{
  double mm;
  BfVec2 at;
} Furthest;

static double
distance_to (const BfFold *fold, BfVec2 p)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    {
      g_auto (BfNearRing) near = { NULL };

      bf_near_ring_init (&near, bf_blank_ring (&fold->blank, i));
      least = MIN (least, bf_near_ring_distance_to (&near, p));
    }
  return least;
}

static void
look_from (const BfFold *from, const BfFold *to, Furthest *furthest)
{
  for (guint i = 0; i < from->blank.rings->len; i++)
    for (guint k = 0; k < bf_ring_size (bf_blank_ring (&from->blank, i)); k++)
      {
        BfVec2 p = bf_ring_vertex (bf_blank_ring (&from->blank, i), k)->p;
        double mm = distance_to (to, p);

        if (mm > furthest->mm)
          *furthest = (Furthest){ mm, p };
      }
}

static guint
nearest_face (const BfFold *fold, BfVec2 p)
{
  double least = G_MAXDOUBLE;
  guint found = 0;

  for (guint i = 0; i < fold->faces->len; i++)
    {
      g_auto (BfNearRing) near = { NULL };
      double mm;

      bf_near_ring_init (&near, bf_fold_face (fold, i)->outline);
      mm = bf_near_ring_distance_to (&near, p);
      if (mm >= least)
        continue;
      least = mm;
      found = i;
    }
  return found;
}

double
bf_fold_metal_moved_mm (const BfFold *before, const BfFold *after, guint *face)
{
  Furthest furthest = { 0.0, { 0.0, 0.0 } };

  g_return_val_if_fail (before != NULL && after != NULL, 0.0);

  if (before->blank.rings->len > 0 && after->blank.rings->len > 0)
    {
      look_from (before, after, &furthest);
      look_from (after, before, &furthest);
    }
  if (face != NULL)
    *face = nearest_face (after, furthest.at);
  return furthest.mm;
}
