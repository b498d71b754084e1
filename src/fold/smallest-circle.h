/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/vec.h"

/* The smallest circle round a handful of points (tried over every pair and triple, so that it is
 * meant for ten or so). centre: (out). Returns the radius; 0 for no points. */
double bf_smallest_circle (const BfVec2 *points, guint n_points, BfVec2 *centre);
