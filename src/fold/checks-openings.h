/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Openings that cross themselves ("outline-crosses-itself"), reach off their metal
 * ("opening-off-face") or come too near a bend or an edge ("opening-near-bend",
 * "opening-near-edge"); and what metal is left too thin between cuts ("strip-too-thin"). Least
 * distances are common practice: twice the thickness, and for a strip 3 mm too. */
void bf_checks_find_openings (BfFold *fold);
