/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/edge-distance.h"

/* The edges of a ring, found by where they lie: of a blank with thousands, few are near a place. */
typedef struct BfEdgeFinder BfEdgeFinder;

/* edges: (element-type BfEdge), kept by pointer: let it live as long. Returns: (transfer full). */
BfEdgeFinder *bf_edge_finder_new (const GArray *edges) G_GNUC_WARN_UNUSED_RESULT;
void bf_edge_finder_free (BfEdgeFinder *finder);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfEdgeFinder, bf_edge_finder_free)

/* Those whose boxes are no more than within_mm from a box (see bf_box_gap()), by their places in
 * the ring, ascending. Returns: (transfer full) (element-type guint). */
GArray *bf_edge_finder_within (const BfEdgeFinder *finder,
                               const BfBox *box,
                               double within_mm) G_GNUC_WARN_UNUSED_RESULT;
