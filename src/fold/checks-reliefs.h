/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Corner reliefs that are too small ("relief-too-small"), that were declined ("relief-missing"), or
 * that no drill owned makes ("no-such-drill"). */
void bf_checks_find_reliefs (BfFold *fold);
