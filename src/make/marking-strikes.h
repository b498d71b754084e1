/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/marking.h"

/* A straight line of the blank. */
typedef struct
{
  BfVec2 a, b;
  BfMarkKind kind;
  const char *name; /* of a bend or its bar: the flange; else NULL */
} BfMarkLine;

/* Sorts the lines (BfMarkLine) into the marking's strikes and joins. */
void bf_marking_strike_lines (BfMarking *marking, const GArray *lines);

void bf_strike_clear (BfStrike *strike);
