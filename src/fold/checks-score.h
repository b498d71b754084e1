/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Checks of scored bends: those that cannot be, and who can cut the groove. */
void bf_checks_find_scores (BfFold *fold);
