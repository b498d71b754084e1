/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Measures every opening of the part from its edge's start: edges are as long as the layout, of the
 * same flanges, has them. */
void bf_openings_settle (const BfLayout *layout, BfPart *part);

/* The part's openings as rings in the blank; appends BfOpeningResult to openings, each with its
 * face (0: the base; flap i is face i + 1). An opening on a flange that has no place is left out.
 */
void bf_openings_find (const BfLayout *layout, GArray *openings);
