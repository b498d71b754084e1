/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Polygon overlays, done by GEOS on outlines whose arcs are flattened, with the arcs found again
 * afterwards. This is the one file that knows GEOS. */

/* TRUE where the ring neither crosses nor touches itself. Straight lines only; arcs are taken as
 * their chords. where: (out) (optional) a place at which it does. */
gboolean bf_overlay_is_simple (const BfRing *ring, BfVec2 *where);

/* All of the pieces together: rings of straight lines (BfRing), which may overlap or share edges.
 * Returns: (transfer full): rings, outer ones first, in order of falling area. */
GPtrArray *bf_overlay_unite (const GPtrArray *pieces) G_GNUC_WARN_UNUSED_RESULT;

/* What is left of outlines (rings as bf_overlay_unite gives them) when every tool, a ring of its
 * own, is taken away; arcs of tools and outlines stay arcs. n_outer: (out) how many of the result's
 * rings are outer ones.
 * Returns: (transfer full): rings, outer ones first, in order of falling area. */
GPtrArray *bf_overlay_cut (const GPtrArray *outlines,
                           const GPtrArray *tools,
                           guint *n_outer) G_GNUC_WARN_UNUSED_RESULT;
