/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/paper.h"

/* Angle gauges to be cut from card: for every bend that is neither square nor a hem, a wedge that
 * fits into the opening. Bends of one angle share a gauge. Its tip is cut off, so that the bend's
 * inside radius does not lift it. An angle holds at whatever scale a page is printed. */

typedef struct
{
  double turned_rad;
  double tip_mm; /* how far the legs are cut off from where they would meet */
  char *names;   /* "front, back" */
} BfGauge;

typedef struct
{
  BfFold *fold;
  const BfPaper *paper;
  GArray *gauges; /* BfGauge, the smallest angle first */
} BfGauges;

/* The fold is kept by reference, paper by pointer. Returns: (transfer full). */
BfGauges *bf_gauges_new (BfFold *fold, const BfPaper *paper) G_GNUC_WARN_UNUSED_RESULT;
void bf_gauges_free (BfGauges *gauges);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfGauges, bf_gauges_free)

/* At least one: a page that says that no gauge is needed. */
guint bf_gauges_n_pages (const BfGauges *gauges);

/* Draws page i in millimetres from its upper left corner. */
void bf_gauges_draw (const BfGauges *gauges, guint i, cairo_t *cr);

/* The outline of a gauge: the two legs' ends and the cut tip, in order, with the apex at (0, 0),
 * one leg along +x and y up. corners: (out), four. */
void bf_gauge_outline (const BfGauge *gauge, BfVec2 corners[4]);
