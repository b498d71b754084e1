/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "app/outline-draft.h"
#include "core/ring.h"

/* The picture of an outline that is being drawn. */

typedef struct
{
  double scale;     /* pixels a millimetre */
  BfVec2 origin_px; /* where (0, 0) is; y of the drawing is up */
  BfVec2 size_px;   /* of the picture */
  double grid_mm;   /* of the dots */
  BfUnits units;
  const char *typed; /* the length that is being typed; "" for none */
  gboolean dark;
} BfDrawLook;

BfVec2 bf_draw_to_px (const BfDrawLook *look, BfVec2 mm);
BfVec2 bf_draw_to_mm (const BfDrawLook *look, BfVec2 px);

void bf_draw_picture_paint (const BfOutlineDraft *draft, const BfDrawLook *look, cairo_t *cr);
