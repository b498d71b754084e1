/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Where the blank is too thin between two of its own edges ("strip-too-thin"): at a waist, beside a
 * notch, along a tongue. A sharp corner thins out too and is no neck, nor is a nib that would not
 * be missed. Openings and slots are another's: see fold/checks-openings.h. */
void bf_checks_find_necks (BfFold *fold);

/* What a strip of metal has to be wide, by common practice: twice its thickness, and 3 mm. */
double bf_checks_least_strip_mm (const BfFold *fold);

/* Less than this is no difference: what is just as far away as it has to be is no fault. */
#define BF_CHECKS_NO_DIFFERENCE_MM 1e-4
