/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"

/* The pictures of a trial bend's page. cr's units are millimetres, y down. */

/* A strip at full size with the places for the caliper; cr's origin is where the blank's point (0,
 * 0) shall be. units: of the numbers in words. */
void bf_strip_draw_flat (const BfFold *strip, BfUnits units, cairo_t *cr);

/* The bent strip seen from its side, with its two legs as they are measured, fitted into a square
 * of that side with its upper left corner at cr's origin. */
void bf_strip_draw_bent (const BfFold *strip, double side_mm, cairo_t *cr);
