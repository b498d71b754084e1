/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What there is to know of the finished part as a whole, once: raw edges that hands take hold of
 * ("sharp-edge"), corners that let water through ("will-leak"), a hollow that is closed all round
 * ("sealed-volume"). */
void bf_checks_find_part (BfFold *fold);
