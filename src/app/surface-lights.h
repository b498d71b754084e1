/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/surface-scene.h"

/* What lights up on the bench top: the edge that is selected, the one that the pointer is over, and
 * the one that has the keyboard. */

typedef struct
{
  BfSelection selected, pointed, focused; /* BF_SELECTION_NONE for none */
  gboolean dark;
} BfSurfaceLights;

/* Those of one picture. */
void bf_surface_lights_paint (BfSurfaceScene *scene,
                              const BfSurfaceLights *lights,
                              BfPicture picture,
                              cairo_t *cr);
