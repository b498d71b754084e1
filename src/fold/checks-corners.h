/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What is asked of corners that can't be had: a finish with no room for it ("corner-too-large"), or
 * something that a corner of its kind knows nothing of ("corner-not-heeded"). */
void bf_checks_find_corners (BfFold *fold);
