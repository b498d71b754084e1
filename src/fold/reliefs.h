/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Every relief of an unfolded part, corner reliefs first. Appends BfRelief to reliefs; their
 * strings and rings are owned by it. */
void bf_reliefs_find (const BfLayout *layout, GArray *reliefs);

/* How wide a corner relief of that shape is made where nobody says: as wide as needed, and what the
 * tool adds to that. */
double bf_relief_usual_mm (const BfPart *part, BfReliefShape shape, double need_mm);

/* Frees what a relief owns. */
void bf_relief_clear (BfRelief *relief);
