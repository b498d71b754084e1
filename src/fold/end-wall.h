/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Where two walls meet at a corner and one of them has to give way to the other, it is the end
 * wall: the one on the shorter edge of the base, taken between the bends so that the part's measure
 * does not matter; of equal edges the lower wall; of equal walls the one whose id comes first. So a
 * rectangular tray has its tabs on its two end walls, its mirror image has them there too, and the
 * order in the file does not matter.
 *
 * Returns: the side of the meeting that the end wall stands on. */
BfSideName bf_end_wall (const BfLayout *layout, const BfMeeting *meeting);
