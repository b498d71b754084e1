/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Outlines in the flat, traced edge by edge: exact, and of straight lines. */

/* How far a slit beside a bend is opened in the blank's outline, so that it does not touch itself;
 * the end relief that is cut there takes it all. */
#define BF_OUTLINE_SLIT_MM 0.05

/* One face in the blank before reliefs: the base for −1, else that flap's flat. */
BfRing *bf_outline_face (const BfLayout *layout, int flap) G_GNUC_WARN_UNUSED_RESULT;

/* A flap's flat with what it gives up to flaps that want the same metal. */
BfRing *bf_outline_flat (const BfLayout *layout, int flap) G_GNUC_WARN_UNUSED_RESULT;

/* The four corners of a flap's bend zone: parent's tangent start, end; flap's tangent end, start.
 */
void bf_outline_zone (const BfFlap *flap, BfVec2 zone[4]);

/* A bend's zone as a ring, counter-clockwise. */
BfRing *bf_outline_zone_ring (const BfBendResult *bend) G_GNUC_WARN_UNUSED_RESULT;

/* The whole blank before reliefs, base and flaps in one walk round the outside. */
BfRing *bf_outline_blank (const BfLayout *layout) G_GNUC_WARN_UNUSED_RESULT;

/* Drops points that are double or lie on a straight line between their neighbours. */
void bf_outline_tidy (BfRing *ring);
