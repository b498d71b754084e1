/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-view.h"

/* The tones of the metal: how light falls on it. The light stands over the viewer's left
 * shoulder and moves with the eye, so that a thing that is turned stays well lit. */

typedef struct
{
  double red, green, blue;
} BfFormedColour;

/* The colour of metal with that normal (of length 1, in the picture's directions: x to the right,
 * y up, z toward the eye). tinted: how much of the tint it takes, 0 to 1. */
BfFormedColour
bf_formed_tone (const BfFormedStyle *style, BfFormedSide side, BfVec3 normal, double tinted);

/* A colour between that of the metal and that of its lines, for lines to be seen less. */
BfFormedColour bf_formed_line_colour (const BfFormedStyle *style, double strength);

/* The source to fill a surface with: one tone for a flat, a gradient across a band; where the band
 * is seen no wider than finest (in cr's units), its mean tone. Returns: (transfer full). */
cairo_pattern_t *bf_formed_surface_pattern (const BfFormedStack *stack,
                                            guint piece,
                                            const BfFormedStyle *style,
                                            const BfFrame *eye,
                                            double finest) G_GNUC_WARN_UNUSED_RESULT;
