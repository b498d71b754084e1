/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/parting.h"

/* One pair of flanges that want the same metal, and the areas that it is worked out by: lists of
 * rings as fold/overlay.h has them. */

GPtrArray *bf_area_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* ring: (transfer full) */
GPtrArray *bf_area_of_ring (BfRing *ring) G_GNUC_WARN_UNUSED_RESULT;
GPtrArray *bf_area_of_zone (const BfFlap *flap) G_GNUC_WARN_UNUSED_RESULT;

/* TRUE where two areas have metal in common. */
gboolean bf_areas_meet (const GPtrArray *a, const GPtrArray *b);

/* Fills what both flaps give up, clean or not: nothing where they share nothing. */
void bf_parting_find_cuts (const BfLayout *layout, BfParting *parting);
