/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* blank-overlaps-itself: each two pieces of the blank that want the same metal, and what would part
 * them; metal-shared: how long flanges are that share what both want. The blank is made. */
void bf_checks_find_wanted (BfFold *fold);
