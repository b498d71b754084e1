/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/slot-plan.h"

#include "core/defaults.h"
#include "core/tolerance.h"

/* Common practice, all five: a disc has to break through by so much to leave a slot at all, and
 * its guard and nut stop it at a third of its diameter; a machine's slot is long enough to be one
 * and short enough for the fold to stay on its line; lengths are such as can be marked. */
#define BREAKS_THROUGH_MM 1.0
#define DEEPEST_SHARE (1.0 / 3.0)
#define MACHINE_SHORTEST_MM 5.0
#define MACHINE_LONGEST_MM 100.0
#define STEP_MM 0.5

#define HAND_BRIDGE_MM 10.0
#define MACHINE_BRIDGE_MM 3.0

/* ---- the tool ----------------------------------------------------------------------------- */

static double
chord_mm (double diameter_mm, double depth_mm)
{
  return depth_mm <= 0.0 ? 0.0 : 2.0 * sqrt (depth_mm * (diameter_mm - depth_mm));
}

/* How deep a disc stands whose chord is that long: the inverse of chord_mm up to its middle. */
static double
depth_mm (double diameter_mm, double chord_mm)
{
  double radius = diameter_mm / 2.0, half = MIN (chord_mm / 2.0, radius);

  return radius - sqrt (radius * radius - half * half);
}

BfSlotTool
bf_slot_tool (const BfPart *part)
{
  double t = part->metal.thickness_mm;
  BfSlotTool tool = { .cuts = part->cutting.by != BF_CUTTING_SNIPS,
                      .disc_mm = NAN,
                      .thickness_mm = t,
                      .least_bridge_mm = HAND_BRIDGE_MM,
                      .shortest_mm = MACHINE_SHORTEST_MM,
                      .longest_mm = MACHINE_LONGEST_MM };

  if (part->cutting.by == BF_CUTTING_DISC)
    {
      tool.disc_mm = bf_part_disc_diameter_mm (part);
      tool.shortest_mm = chord_mm (tool.disc_mm, t + BREAKS_THROUGH_MM);
      tool.longest_mm = chord_mm (tool.disc_mm, tool.disc_mm * DEEPEST_SHARE);
    }
  else if (tool.cuts)
    tool.least_bridge_mm = MAX (2.0 * t, MACHINE_BRIDGE_MM);
  return tool;
}

double
bf_slot_far_mm (const BfSlotTool *tool, double near_mm)
{
  double chord = MIN (near_mm, tool->disc_mm);

  if (isnan (tool->disc_mm))
    return near_mm;
  /* One longer than the disc is wide was cut by moving along: its ends are the widest chord's. */
  return near_mm - chord +
         chord_mm (tool->disc_mm, depth_mm (tool->disc_mm, chord) - tool->thickness_mm);
}

double
bf_slot_mean_mm (const BfSlotTool *tool, double near_mm)
{
  return (near_mm + bf_slot_far_mm (tool, near_mm)) / 2.0;
}

double
bf_slot_near_mm (const BfSlotTool *tool, double mean_mm)
{
  double low = mean_mm, high = 2.0 * mean_mm + tool->thickness_mm;

  if (isnan (tool->disc_mm))
    return mean_mm;
  while (high - low > BF_TOLERANCE_ZERO)
    {
      double middle = (low + high) / 2.0;

      *(bf_slot_mean_mm (tool, middle) < mean_mm ? &low : &high) = middle;
    }
  return high;
}

/* ---- how many where ----------------------------------------------------------------------- */

/* A plan in the making: how many slots each stretch holds, and the bridge between them. */
typedef struct
{
  const BfSlotTool *tool;
  const BfSlotTask *task;
  double bridge_mm;
  guint *counts;
  guint total;
} Plan;

static double
stretch_mm (const BfSlotTask *task, guint i)
{
  return task->stretches[i].to_mm - task->stretches[i].from_mm;
}

/* The longest slot, on the near face, of which that many fit in the stretch. A length asked for is
 * laid out even where the tool cannot cut it: checks say so. */
static double
room_mm (const Plan *plan, guint i, guint count)
{
  double longest = isnan (plan->task->slot_mm) ? plan->tool->longest_mm : INFINITY;
  double bridges = (count + 1) * plan->bridge_mm;

  return MIN (longest, (stretch_mm (plan->task, i) - bridges) / count);
}

/* The longest slot that all stretches in use have room for. */
static double
common_room_mm (const Plan *plan)
{
  double room = plan->tool->longest_mm;

  for (guint i = 0; i < plan->task->n_stretches; i++)
    if (plan->counts[i] > 0)
      room = MIN (room, room_mm (plan, i, plan->counts[i]));
  return room;
}

/* One slot more, where it costs the others least. FALSE where none has room for it. */
static gboolean
add_slot (Plan *plan, double least_mm)
{
  guint best = 0;
  double best_room = -INFINITY;

  for (guint i = 0; i < plan->task->n_stretches; i++)
    {
      double room = room_mm (plan, i, plan->counts[i] + 1);

      if (room > best_room)
        {
          best = i;
          best_room = room;
        }
    }
  if (best_room < least_mm - BF_TOLERANCE_ZERO)
    return FALSE;
  plan->counts[best]++;
  plan->total++;
  return TRUE;
}

double
bf_runs_mm (const BfRun *runs, guint n_runs)
{
  double sum = 0.0;

  for (guint i = 0; i < n_runs; i++)
    sum += runs[i].to_mm - runs[i].from_mm;
  return sum;
}

static double
metal_mm (const BfSlotTask *task)
{
  return bf_runs_mm (task->stretches, task->n_stretches);
}

/* ---- laying out --------------------------------------------------------------------------- */

/* The slots of one stretch: bridges between them as asked, or equal and rounded down, and the rest
 * in the two at its ends. */
static void
lay_stretch (const Plan *plan, guint i, double near_mm, GArray *slots)
{
  guint count = plan->counts[i];
  double free = stretch_mm (plan->task, i) - count * near_mm;
  double between = isnan (plan->task->bridge_mm)
                       ? floor (free / (count + 1) / STEP_MM + BF_TOLERANCE_ZERO) * STEP_MM
                       : plan->task->bridge_mm;
  double end;

  if (count == 0)
    return;
  between = MAX (between, plan->bridge_mm);
  end = (free - (count - 1) * between) / 2.0;
  for (guint k = 0; k < count; k++)
    {
      BfSlot slot = { .near_mm = near_mm,
                      .far_mm = bf_slot_far_mm (plan->tool, near_mm),
                      .length_mm = isnan (plan->task->slot_mm)
                                       ? bf_slot_mean_mm (plan->tool, near_mm)
                                       : plan->task->slot_mm };

      slot.at_mm = plan->task->stretches[i].from_mm + end + k * (near_mm + between) + near_mm / 2.0;
      g_array_append_val (slots, slot);
    }
}

static GArray *
lay_out (const Plan *plan, double near_mm)
{
  GArray *slots = g_array_new (FALSE, FALSE, sizeof (BfSlot));

  for (guint i = 0; i < plan->task->n_stretches; i++)
    lay_stretch (plan, i, near_mm, slots);
  return slots;
}

/* The near length that leaves keep_mm with so many slots, as it can be marked, or the longest. */
static double
fitting_near_mm (const Plan *plan, double room)
{
  double mean = (metal_mm (plan->task) - plan->task->keep_mm) / plan->total;
  double wanted = bf_slot_near_mm (plan->tool, mean);
  double marked = ceil (wanted / STEP_MM - BF_TOLERANCE_ZERO) * STEP_MM;

  return CLAMP (marked, plan->tool->shortest_mm, room);
}

/* Slots of the length asked for (or as long as need be), one more at a time until enough. */
static GArray *
fewest (Plan *plan)
{
  gboolean given = !isnan (plan->task->slot_mm);
  double asked = given ? bf_slot_near_mm (plan->tool, plan->task->slot_mm) : NAN;
  double metal = metal_mm (plan->task), least_kept = metal;
  GArray *best = g_array_new (FALSE, FALSE, sizeof (BfSlot));
  gboolean fill = given && !isnan (plan->task->bridge_mm);

  while ((fill || least_kept > plan->task->keep_mm + BF_TOLERANCE_SIZE_MM) &&
         add_slot (plan, given ? asked : plan->tool->shortest_mm))
    {
      double room = common_room_mm (plan);
      double near = given ? asked : fitting_near_mm (plan, room);
      double kept = metal - plan->total * bf_slot_mean_mm (plan->tool, near);

      if (kept >= least_kept)
        continue;
      least_kept = kept;
      g_array_unref (best);
      best = lay_out (plan, near);
    }
  return best;
}

GArray *
bf_slot_plan (const BfSlotTool *tool, const BfSlotTask *task)
{
  g_autofree guint *counts = g_new0 (guint, task->n_stretches + 1);
  Plan plan = { .tool = tool,
                .task = task,
                .bridge_mm = isnan (task->bridge_mm) ? tool->least_bridge_mm : task->bridge_mm,
                .counts = counts };

  if (!tool->cuts || task->n_stretches == 0)
    return g_array_new (FALSE, FALSE, sizeof (BfSlot));
  return fewest (&plan);
}

double
bf_slot_plan_kept_mm (const BfSlotTask *task, const GArray *slots)
{
  double kept = metal_mm (task);

  for (guint i = 0; i < slots->len; i++)
    kept -= g_array_index (slots, BfSlot, i).length_mm;
  return kept;
}
