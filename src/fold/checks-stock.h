/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Appends a blank-over-stock where the blank is larger than any common stock. Needs the fold's
 * blank.
 */
void bf_checks_find_stock (BfFold *fold);
