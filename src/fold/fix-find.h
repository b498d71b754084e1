/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Gives a fix to each check that one number cures and that has none yet. A fix that would leave
 * the flange with another fault is not offered. */
void bf_fixes_find (BfFold *fold);
