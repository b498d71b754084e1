/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Every pair of flanges that meet at a corner, walls first and then the lips above them as far as
 * they do meet, measured in space between their inside edges. Appends BfSeam to seams. */
void bf_seams_find (const BfLayout *layout, GArray *seams);
