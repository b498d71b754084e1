/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* The notch that shows where a bend line ends: so deep, and twice as wide as this at its mouth. */
#define BF_NOTCH_DEPTH_MM 1.0
#define BF_NOTCH_HALF_MM 0.5

/* Cuts a pointed notch where the line from end to other runs into the metal nearest to end, its
 * point on the line toward other. rings: BfRing, the metal on their
 * left, one of which is changed. FALSE, and nothing is changed,
 * where no contour is near, or the edge there is too short for a notch. */
gboolean bf_pattern_notch (GPtrArray *rings, BfVec2 end, BfVec2 other);
