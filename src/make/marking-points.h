/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/marking-steps.h"

/* The points that a step of marking out tells by both their distances. */

typedef struct
{
  BfMarkedPoint at;
  double radius_mm; /* what the compass is set to there; NAN for no arc */
} BfStepPoint;

/* The ends of what is joined and of slots, centres of arcs and of what is punched; each place once,
 * in order. Returns: (transfer full) (element-type BfStepPoint), empty for other steps. */
GArray *bf_marking_step_points (const BfMarking *marking,
                                const BfMarkingStep *step) G_GNUC_WARN_UNUSED_RESULT;

/* By its two distances, as labels and lists have it: "→ 43  ↑ 1 11/16", from the left edge and from
 * the bottom edge; the arrows part the numbers, also where they are fractions. Returns: (transfer
 * full). */
char *bf_marked_point_words (const BfMarkedPoint *p, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
