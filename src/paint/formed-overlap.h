/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-stack.h"

/* Which of two pieces has to be painted first so that neither shows through the other. */
typedef enum
{
  BF_FORMED_FREE = 0,    /* either may come first */
  BF_FORMED_A_FIRST = 1, /* b hides some of a */
  BF_FORMED_B_FIRST = 2,
  BF_FORMED_CROSSED = 3, /* each hides some of the other: one has to be split */
} BfFormedPrecedence;

/* Compares the pieces of these two indices. It may err toward an order where none is needed,
 * never the other way. */
BfFormedPrecedence bf_formed_compare (const BfFormedStack *stack, guint a, guint b);

/* The least and the greatest distance of a piece's points from the plane of another, positive on
 * the eye's side. */
void bf_formed_piece_range (const BfFormedStack *stack,
                            const BfFormedPiece *piece,
                            const BfFormedPiece *plane,
                            double *least,
                            double *greatest);
