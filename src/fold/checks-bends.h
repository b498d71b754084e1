/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What a person should know of making the bends: slots that the tool cannot cut, bridges too short
 * to hold, more push than they have. Appends to fold->checks. */
void bf_checks_find_bends (BfFold *fold);

/* The lever at which the bend takes half of what the person can push, up to the next 10 mm; NAN
 * where nobody pushes. */
double bf_bend_board_mm (const BfBendResult *bend);
