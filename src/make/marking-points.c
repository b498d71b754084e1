/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/marking-points.h"

#include "core/tolerance.h"
#include "core/units.h"

static gboolean
is_same (const BfStepPoint *a, const BfStepPoint *b)
{
  return fabs (a->at.x.marked_mm - b->at.x.marked_mm) < BF_TOLERANCE_SIZE_MM &&
         fabs (a->at.y.marked_mm - b->at.y.marked_mm) < BF_TOLERANCE_SIZE_MM &&
         (isnan (a->radius_mm) || fabs (a->radius_mm - b->radius_mm) < BF_TOLERANCE_SIZE_MM);
}

static void
add (GArray *points, BfMarkedPoint at, double radius_mm)
{
  BfStepPoint point = { at, radius_mm };

  for (guint i = 0; i < points->len; i++)
    if (is_same (&point, &g_array_index (points, BfStepPoint, i)))
      return;
  g_array_append_val (points, point);
}

static void
add_item (const BfMarking *marking, BfStepKind kind, guint i, GArray *points)
{
  if (kind == BF_STEP_JOIN)
    {
      add (points, g_array_index (marking->joins, BfMarkJoin, i).from, NAN);
      add (points, g_array_index (marking->joins, BfMarkJoin, i).to, NAN);
    }
  else if (kind == BF_STEP_ARC)
    add (points, g_array_index (marking->arcs, BfMarkArc, i).centre,
         g_array_index (marking->arcs, BfMarkArc, i).radius_mm);
  else if (kind == BF_STEP_SLOT)
    {
      add (points, g_array_index (marking->slots, BfMarkSlot, i).from, NAN);
      add (points, g_array_index (marking->slots, BfMarkSlot, i).to, NAN);
    }
  else if (kind == BF_STEP_PUNCH)
    add (points, g_array_index (marking->holes, BfMarkHole, i).centre, NAN);
}

GArray *
bf_marking_step_points (const BfMarking *marking, const BfMarkingStep *step)
{
  GArray *points = g_array_new (FALSE, FALSE, sizeof (BfStepPoint));

  for (guint i = 0; i < step->items->len; i++)
    add_item (marking, step->kind, bf_step_item (step, i), points);
  return points;
}

/* A number and its arrow are never parted. */
char *
bf_marked_point_words (const BfMarkedPoint *p, BfUnits units)
{
  g_autofree char *x = bf_format_number (p->x.marked_mm, units);
  g_autofree char *y = bf_format_number (p->y.marked_mm, units);
  g_autofree char *both = g_strdup_printf ("→ %s  ↑ %s", x, y);
  g_auto (GStrv) pieces = g_strsplit (both, " ", -1);

  return g_strjoinv ("\302\240", pieces); /* no-break spaces */
}
