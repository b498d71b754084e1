/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/opening-edits.h"
#include "app/surface-scene.h"

/* A hole or cut-out, or a point of its outline, that is being dragged in either picture. For
 * surface-drag.c. */

typedef struct
{
  guint index;
  int point;                 /* of its outline; −1: the whole */
  BfVec2 place_mm, datum_mm; /* as they were */
  BfVec2 axes_px[2];         /* by how many pixels it moves for a millimetre of each */
  double lines_mm[2][16];    /* where it lines up, along each */
  guint n_lines[2];
} BfOpeningDrag;

/* FALSE where its face is seen so much from its side that it can't be dragged. */
gboolean bf_opening_drag_begin (BfOpeningDrag *drag,
                                BfSurfaceScene *scene,
                                BfSelection selection,
                                BfVec2 px);

/* The part with the opening moved by so many pixels, to whole steps from its datum edges or to
 * where it lines up with the face's middle or with other openings. */
BfPart *bf_opening_drag_to (const BfOpeningDrag *drag,
                            const BfPart *part,
                            BfVec2 by_px,
                            double step_mm) G_GNUC_WARN_UNUSED_RESULT;
