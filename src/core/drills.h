/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The drills a person owns, as far as a part tells. */

/* The smallest drill owned that is at least that wide (to 1e-6 mm).
 * name: (out) (transfer full) (optional): "6.5 mm", "1/4 in", "no. 7 (5.105 mm)".
 * Returns its diameter in mm, or NAN (name NULL) where no drill is that wide. */
double bf_drill_next_up (const BfPart *part, double diameter_mm, char **name);

/* Diameter of a number drill, 1 to 80, in inches (ASME B94.11M); NAN outside. */
double bf_drill_number_in (int number);
