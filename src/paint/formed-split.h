/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-stack.h"

/* The slow way that never fails: pieces that hide one another in a ring, or that pass through one
 * another, are cut along their own planes until there is an order (a tree of half-spaces, after
 * Fuchs, Kedem and Naylor, "On visible surface generation by a priori tree structures", 1980). */

/* Appends to stack->order the indices of these pieces (guint), or of what they are cut into,
 * farthest first. New pieces are added to the stack; lines along cuts are BF_FORMED_LINE_NONE.
 * members is used up. */
void bf_formed_split_in_order (BfFormedStack *stack, GArray *members);
