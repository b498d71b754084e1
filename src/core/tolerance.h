/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

/* Every tolerance that the geometry uses, in one place, largest first. */

/* Two numbers that a person typed and that the program takes for one size. */
#define BF_TOLERANCE_SIZE_MM 1e-6

/* The grid that overlays snap to; two points nearer than twice this are one point. */
#define BF_TOLERANCE_SNAP_MM 1e-7

/* Below this a length or an angle's sine is rounding, not geometry. */
#define BF_TOLERANCE_ZERO 1e-9

/* The largest length, either way, that a part may hold. */
#define BF_LENGTH_MAX_MM 1e5
