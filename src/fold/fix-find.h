/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Gives a fix to each check that one number cures and that has none yet. A fix that would leave
 * the flange with another fault is not offered. For the fold's own making. */
void bf_fixes_find (BfFold *fold);

/* The check's fix: the one it carries, else one that takes so long to try that it is looked for
 * only when a person wants to see it. check: one of the fold's. BF_FIX_NONE where there is none. */
BfFix bf_fix_find (const BfFold *fold, const BfCheck *check);
