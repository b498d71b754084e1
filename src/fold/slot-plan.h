/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* Slots along one bend line, so that hands can bend what is left: the fewest that do it, of one
 * length, as the person's tool can cut them.
 *
 * A disc of diameter D that plunges d deep leaves a slot longer on the near face (the side it
 * comes from) than on the far one, by the chords of its circle: 2√(d (D − d)) near, and
 * 2√((d − t)(D − d + t)) far. The mean of both counts as the slot's length. */

/* What cuts the slots. */
typedef struct
{
  gboolean cuts;       /* FALSE where it cannot cut a slot at all: snips */
  double disc_mm;      /* the disc's diameter; NAN = a machine, whose slots have two like faces */
  double thickness_mm; /* of the metal */
  double least_bridge_mm; /* on the near face */
  double shortest_mm;     /* near face */
  double longest_mm;      /* near face */
} BfSlotTool;

/* The part's cutting tool on its metal. Least bridges: 10 mm by hand, max (2 t, 3 mm) by machine
 * (common practice). */
BfSlotTool bf_slot_tool (const BfPart *part);

/* Length on the far face, and the mean, of a slot that long on the near face; and the length on the
 * near face of a slot of that mean length. */
double bf_slot_far_mm (const BfSlotTool *tool, double near_mm);
double bf_slot_mean_mm (const BfSlotTool *tool, double near_mm);
double bf_slot_near_mm (const BfSlotTool *tool, double mean_mm);

/* A run along a line, such as one of the bend line that is whole metal and may be slotted. */
typedef struct
{
  double from_mm, to_mm;
} BfRun;

/* How long the runs are together. */
double bf_runs_mm (const BfRun *runs, guint n_runs);

typedef struct
{
  const BfRun *stretches; /* in order along the line, apart */
  guint n_stretches;
  double keep_mm;   /* how much metal may be left along the line for the push aimed at */
  double slot_mm;   /* mean length asked for; NAN = to be planned */
  double bridge_mm; /* bridge asked for, near face; NAN = to be planned */
} BfSlotTask;

typedef struct
{
  double at_mm; /* its middle, along the line */
  double near_mm, far_mm, length_mm;
} BfSlot;

/* Lays the slots out. Bridges between slots are equal, and what is left over stands in the two at
 * the ends. Both lengths given: as many slots as fit. Else the fewest that leave no more than
 * keep_mm; where none do, those that leave least.
 * Returns: (transfer full) (element-type BfSlot): in order along the line; empty where no slot is
 * needed, or none can be cut. */
GArray *bf_slot_plan (const BfSlotTool *tool, const BfSlotTask *task) G_GNUC_WARN_UNUSED_RESULT;

/* The metal left along the stretches between those slots, counting their mean lengths. */
double bf_slot_plan_kept_mm (const BfSlotTask *task, const GArray *slots);
