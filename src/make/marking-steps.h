/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/marking.h"

/* Marking-out as steps, in the order in which hands do them. */

typedef enum
{
  BF_STEP_CORNER, /* find a square corner to measure from */
  BF_STEP_STRIKE, /* one setting of the square: strikes at one distance from one or both edges */
  BF_STEP_JOIN,   /* mark points and join them */
  BF_STEP_ARC,    /* compass */
  BF_STEP_WIPE,   /* wipe what is struck too far */
  BF_STEP_SLOT,   /* where the slots end */
  BF_STEP_PUNCH,  /* centres */
  BF_STEP_DRILL,  /* one size of drill */
  BF_STEP_CHECK,  /* over all, and both diagonals */
} BfStepKind;

typedef struct
{
  BfStepKind kind;
  double size_mm; /* a strike's distance, a drill's diameter */
  GArray *items;  /* guint: indices into the marking's array that the kind speaks of: strikes for
                     strikes and wipes, joins, arcs, slots, holes; empty for the others */
} BfMarkingStep;

/* Returns: (transfer full) (element-type BfMarkingStep): keep the marking as long. */
GArray *bf_marking_steps (const BfMarking *marking) G_GNUC_WARN_UNUSED_RESULT;

/* What the step tells to do, in one or two short sentences. units: of the lengths in it.
 * Returns: (transfer full). */
char *bf_marking_step_words (const BfMarking *marking,
                             const BfMarkingStep *step,
                             BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The biggest rounding error, up to the next hundredth of a mm or 1/64 in, so that what is said
 * holds: "0.25 mm". Returns: (transfer full). */
char *bf_marking_worst_words (const BfMarking *marking, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The caution that belongs to the step, or NULL. Static, translated. */
const char *bf_marking_step_caution (const BfMarkingStep *step);

static inline guint
bf_step_item (const BfMarkingStep *step, guint i)
{
  return g_array_index (step->items, guint, i);
}
