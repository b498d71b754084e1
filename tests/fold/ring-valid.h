/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* NULL where the rings, n_outer outer ones and then holes, make polygons that are valid as GEOS has
 * it (no ring crosses itself or another, holes lie inside), arcs taken as chords that stray no
 * further than 1e-5 mm; else GEOS's reason and the place. To be freed. */
char *why_not_valid (const GPtrArray *rings, guint n_outer);
