/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-stack.h"

/* Fills stack->order, farthest first, so that no piece that is hidden is painted over what hides
 * it. Pieces are compared two by two; only those that hide one another in a ring are cut
 * (formed-split.h). Pieces of one surface come one after the other where that can be. */
void bf_formed_stack_put_in_order (BfFormedStack *stack);

/* Which surface a piece is of: alike for the strips of a band and for what was cut of one
 * polygon. A number less than bf_formed_n_surfaces(). */
guint bf_formed_piece_surface (const BfFormedStack *stack, guint piece);
guint bf_formed_n_surfaces (const BfFormedStack *stack);
