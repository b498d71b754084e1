/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Where a flap's two sides run, but for what flanges that meet do to each other. */

/* The insets and tapers that the flange asks for itself. */
void bf_sides_add_own (BfFlap *flap);

/* Where a side that has a taper of its own but no inset begins: as far out as it would without one,
 * at this q. Does nothing to any other side. */
void bf_side_begin_own (BfFlap *flap, BfSideName name, double q_mm);

/* Settles both sides, once all their limits are in: what holds at an end that meets no other
 * flange, and where the bend zone ends. */
void bf_sides_settle (const BfLayout *layout, BfFlap *flap);
