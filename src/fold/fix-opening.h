/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* Tries several places, which takes longer than a fold. Where an opening that is too near a bend or
 * an edge would be far enough from both, and from other cuts: the nearest such place straight off
 * the bend or the edge, tried before it is offered. check->fix.at: the opening, as an index in
 * fold->openings. */
BfFix bf_fix_opening (const BfFold *fold, const BfCheck *check);
