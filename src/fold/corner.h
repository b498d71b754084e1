/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* What flanges that meet at a corner of the base, or of another flange, do to each other. */

/* Finds the corners of the base at which flanges of both edges meet, and fills
 * layout->meetings. The flaps on the base are placed. */
void bf_corners_find (BfLayout *layout);

/* The same of a flap's two corners, at its tip; what it carries is placed. */
void bf_corners_find_on (BfLayout *layout, const BfFlap *flap);

/* FALSE at an inside corner, and where the two edges run on in one line. */
gboolean bf_corner_is_convex (const BfMeeting *meeting);

/* Trims both flanges of a meeting. */
void bf_corner_trim (BfLayout *layout, const BfMeeting *meeting);

/* Trims what hangs on the tips of flanges that meet, at every depth: `flap` belongs to the side
 * `name` of the meeting (end: it stands on the flange before the corner). */
void bf_corner_mitre (BfLayout *layout, const BfMeeting *meeting, BfFlap *flap, BfSideName name);
