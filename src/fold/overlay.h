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

/* What two areas have in common, and what is left of one without the other; each is a list of rings
 * as above, outer ones and holes. Points stay where they are, to the last digits: edges that lie
 * along each other leave crumbs, which are dropped. n_outer: (out) (optional) how many of the
 * result's rings are outer ones. Returns: (transfer full). */
GPtrArray *bf_overlay_common (const GPtrArray *a,
                              const GPtrArray *b,
                              guint *n_outer) G_GNUC_WARN_UNUSED_RESULT;
GPtrArray *
bf_overlay_less (const GPtrArray *a, const GPtrArray *b, guint *n_outer) G_GNUC_WARN_UNUSED_RESULT;

/* An area grown by so much all round, or shrunk where that is negative. Corners stay sharp, but for
 * the very sharp ones. n_outer as above. Returns: (transfer full). */
GPtrArray *
bf_overlay_grown (const GPtrArray *area, double by_mm, guint *n_outer) G_GNUC_WARN_UNUSED_RESULT;
