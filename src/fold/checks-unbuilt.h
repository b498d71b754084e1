/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What a part may ask for that this version keeps but does not fold: said plainly, a check
 * ("not-folded-yet") each, never passed over in silence. */
void bf_checks_find_unbuilt (BfFold *fold);
