/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* A flange on a flange's side stands beside the face that its parent leaves, and a parent that
 * leans in, or a bend that leans the flange, brings it down into that face. */

/* Keeps a flap on a flap's side, or one that stands on such a flap's tip, off the face that the
 * parent of the former leaves, on the side of it on which that parent stands. What stands there
 * stays as far off it as the edge that it hangs on, the gap at most. Does nothing to any other
 * flap, and nothing where no metal of that face lies under it. The flap is placed; the face's own
 * flaps are settled. */
void bf_side_keep_off_face_below (BfLayout *layout, BfFlap *flap);
