/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Appends the solids of every folded corner (BfSolid), as they stand when the flaps have those
 * poses and their bends are turned by those fractions, both by flap.
 *
 * On the way its three folds follow the two walls as if metal had no thickness: the bisector keeps
 * half a square from both walls' ends, which leaves one way for the metal to go, inward, until the
 * walls stand and their ends meet; there it is free to be laid against the long wall. So that
 * nothing jumps it begins to lean that way before, by a quarter turn's half times the fraction's
 * eighth power. What the folds' widths and that lean then leave between the two triangles, a few
 * thicknesses at most, is nothing at either end. */
void bf_folded_corners_form (const BfLayout *layout,
                             const BfPose *poses,
                             const double *fractions,
                             GArray *solids);
