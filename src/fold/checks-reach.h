/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Appends a cannot-reach for every bend that can't be made after the others, in whatever order.
 * Needs the fold's order, and the checks of its shape: metal that is wanted twice or that collides
 * once it is bent is told by those. */
void bf_checks_find_reach (BfFold *fold);
