/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What a fold holds, by name. All return NULL where there is none; nothing is to be freed. */

/* The first check of that code, at `where` if that is not NULL. */
const BfCheck *find_check (const BfFold *fold, const char *code, const char *where);

/* How many checks are more than good to know. */
guint count_to_heed (const BfFold *fold);

const BfBendResult *find_bend (const BfFold *fold, const char *flange);
const BfFace *find_face (const BfFold *fold, const char *id);

/* The nth relief of a place, counted from 0. */
const BfRelief *find_relief (const BfFold *fold, const char *where, guint nth);

/* Fails the test unless the two points are one within epsilon_mm. */
void assert_at (BfVec2 found, BfVec2 wanted, double epsilon_mm);
void assert_in_space (BfVec3 found, BfVec3 wanted, double epsilon_mm);
