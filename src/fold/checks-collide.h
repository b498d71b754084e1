/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Appends a must-fix for every pair of faces that pass through each other, the deepest with the
 * length that would cure it where there is one. Needs the fold's formed shape and cuts. */
void bf_checks_find_collisions (BfFold *fold);
