/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* The part's openings as rings in the blank; appends BfOpeningResult to openings, each with its
 * face (0: the base; flap i is face i + 1). An opening on a flange that has no place is left out.
 */
void bf_openings_find (const BfLayout *layout, GArray *openings);
