/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/marking-steps.h"

/* A step of marking out as a picture of the metal as it looks then: what the step adds stands out,
 * what was there before is pale, and what was wiped is gone. */

typedef struct
{
  const BfMarking *marking;
  const GArray *steps; /* bf_marking_steps() */
  guint at;            /* which of them */
  BfUnits units;       /* of the distances shown */
  gboolean numbers;    /* points are numbered (make/marking-points.h), their distances not shown */
} BfMarkingPicture;

/* Draws into a box of that size in mm, its upper left corner at (0, 0). */
void bf_marking_picture_draw (const BfMarkingPicture *picture,
                              double width_mm,
                              double height_mm,
                              cairo_t *cr);
