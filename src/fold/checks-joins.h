/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Joins that a corner asks for and cannot have (tab-not-made, fold-not-made): it is left open, and
 * what it would take is said. And covers that leave the covered wall's end standing open
 * (cover-left-open). */
void bf_checks_find_joins (BfFold *fold);
