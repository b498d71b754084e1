/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Where the middle of the tool has to run so that the metal comes out as drawn: every cut edge
 * moved by half the kerf to the side of the waste. Lines stay lines and arcs true arcs of the same
 * centre. At a corner that points into the waste the moved edges are carried on to where they meet
 * (so that the corner is cut sharp), as long as that is no further than twice the distance from the
 * drawn corner; a sharper corner, or one that an arc takes part in, is gone round in an arc about
 * the drawn corner. A gap that is narrower than the kerf closes. */

/* The outer rings of a blank (the first n_outer of rings), grown. n_grown: (out) how many of the
 * result are outer rings; those that follow are waste shut in by a gap that has closed, to be cut
 * out like holes. half_mm: half the kerf, over 0. Returns: (transfer full): BfRing. */
GPtrArray *bf_kerf_outside (const GPtrArray *rings, guint n_outer, double half_mm, guint *n_grown)
    G_GNUC_WARN_UNUSED_RESULT;

/* What is left of a hole, shrunk: no ring where the tool is as wide as the hole, several where it
 * can't pass through the hole's narrow places; clockwise. Returns: (transfer full): BfRing. */
GPtrArray *bf_kerf_inside (const BfRing *hole, double half_mm) G_GNUC_WARN_UNUSED_RESULT;
