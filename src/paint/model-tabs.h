/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/model.h"

/* Appends a tab (BfGlueTab) for each seam where there is room for one beside the blank. deep_mm:
 * how far tabs reach, in the sizes of the fold; where there is less room they reach less. */
void bf_model_find_tabs (const BfFold *fold, double deep_mm, GArray *tabs);
