/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Every relief of an unfolded part, corner reliefs first. Appends BfRelief to reliefs; their
 * strings and rings are owned by it. */
void bf_reliefs_find (const BfLayout *layout, GArray *reliefs);

/* Frees what a relief owns. */
void bf_relief_clear (BfRelief *relief);
