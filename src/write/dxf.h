/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/pattern.h"

/* A pattern as DXF of release 12 in ASCII (AC1009), which every cutter's program reads. Drawn
 * coordinates, y up. One layer for each purpose, all of colour 7 (black or white, whatever the
 * ground). A contour is one closed POLYLINE whose bulges are true arcs, a whole circle a CIRCLE, a
 * bend a LINE, what is drilled a POINT at its centre, and words are TEXT.
 *
 * The release knows no unit: units is the one that the coordinates are in, told in the words and
 * in a comment. Returns: (transfer full). */
char *bf_dxf_text (const BfPattern *pattern, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
