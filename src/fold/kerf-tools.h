/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Adds to tools (BfRing, (transfer full)) the shapes that together cover all within half_mm to the
 * right of the ring, corners as fold/kerf.h says: a strip along every run of edges without a
 * corner, and a tip or a disc at every corner that points to the right. They reach a little across
 * the ring to its left, so that nothing is left along it. */
void bf_kerf_add_tools (const BfRing *ring, double half_mm, GPtrArray *tools);
