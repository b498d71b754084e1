/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/marking-steps.h"

#include "core/tolerance.h"

static void
clear_step (gpointer data)
{
  g_clear_pointer (&((BfMarkingStep *)data)->items, g_array_unref);
}

static BfMarkingStep *
add_step (GArray *steps, BfStepKind kind, double size_mm)
{
  BfMarkingStep step = { kind, size_mm, g_array_new (FALSE, FALSE, sizeof (guint)) };

  g_array_append_val (steps, step);
  return &g_array_index (steps, BfMarkingStep, steps->len - 1);
}

static void
add_all (GArray *steps, BfStepKind kind, guint n)
{
  BfMarkingStep *step;

  if (n == 0)
    return;
  step = add_step (steps, kind, NAN);
  for (guint i = 0; i < n; i++)
    g_array_append_val (step->items, i);
}

/* The step of that kind and size, made if there is none yet: one setting of the square serves both
 * edges, and one drill all its holes. */
static BfMarkingStep *
step_of_size (GArray *steps, BfStepKind kind, double size_mm)
{
  for (guint i = 0; i < steps->len; i++)
    {
      BfMarkingStep *step = &g_array_index (steps, BfMarkingStep, i);

      if (step->kind == kind && fabs (step->size_mm - size_mm) < BF_TOLERANCE_SIZE_MM)
        return step;
    }
  return add_step (steps, kind, size_mm);
}

static int
compare_sizes (gconstpointer a, gconstpointer b)
{
  double x = ((const BfMarkingStep *)a)->size_mm, y = ((const BfMarkingStep *)b)->size_mm;

  return (x > y) - (x < y);
}

/* The metal's own edges need no strike. */
static void
add_strikes (const BfMarking *marking, GArray *steps)
{
  g_autoptr (GArray) struck = g_array_new (FALSE, FALSE, sizeof (BfMarkingStep));

  for (guint i = 0; i < marking->strikes->len; i++)
    {
      double at = bf_marking_strike (marking, i)->marked_mm;

      if (at > BF_TOLERANCE_SIZE_MM)
        g_array_append_val (step_of_size (struck, BF_STEP_STRIKE, at)->items, i);
    }
  g_array_sort (struck, compare_sizes);
  if (struck->len > 0)
    g_array_append_vals (steps, struck->data, struck->len);
}

static void
add_wipes (const BfMarking *marking, GArray *steps)
{
  BfMarkingStep *step = NULL;

  for (guint i = 0; i < marking->strikes->len; i++)
    {
      const BfStrike *strike = bf_marking_strike (marking, i);

      if (strike->wipes->len == 0 || strike->marked_mm <= BF_TOLERANCE_SIZE_MM)
        continue;
      if (step == NULL)
        step = add_step (steps, BF_STEP_WIPE, NAN);
      g_array_append_val (step->items, i);
    }
}

static void
add_drills (const BfMarking *marking, GArray *steps)
{
  for (guint i = 0; i < marking->holes->len; i++)
    {
      double size = g_array_index (marking->holes, BfMarkHole, i).diameter_mm;

      g_array_append_val (step_of_size (steps, BF_STEP_DRILL, size)->items, i);
    }
}

GArray *
bf_marking_steps (const BfMarking *marking)
{
  GArray *steps = g_array_new (FALSE, FALSE, sizeof (BfMarkingStep));

  g_array_set_clear_func (steps, clear_step);
  add_step (steps, BF_STEP_CORNER, NAN);
  add_strikes (marking, steps);
  add_all (steps, BF_STEP_JOIN, marking->joins->len);
  add_all (steps, BF_STEP_ARC, marking->arcs->len);
  add_wipes (marking, steps);
  add_all (steps, BF_STEP_SLOT, marking->slots->len);
  add_all (steps, BF_STEP_PUNCH, marking->holes->len);
  add_drills (marking, steps);
  add_step (steps, BF_STEP_CHECK, NAN);
  return steps;
}
