/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "core/ring.h"

/* Appends the ring to cr's path as one closed subpath, its arcs as true arcs, in the ring's own
 * coordinates: the caller has set the matrix, and turned y round. */
void bf_ring_path (const BfRing *ring, cairo_t *cr);
