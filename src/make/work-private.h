/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/work.h"

/* What the files that write the work's steps share; of no use outside them. */

/* Adds a step; words are taken over. Returns it, good until the next is added. */
BfWorkStep *bf_work_add (BfWork *work, BfStage stage, char *words);

/* Adds a number to a step: a length, and one whose words are taken over. More than there is room
 * for is left out. */
void bf_work_add_length (const BfWork *work, BfWorkStep *step, const char *label, double length_mm);
void bf_work_add_number (BfWorkStep *step, const char *label, char *value);

/* The metal of the table that a part's metal is, or, of one of the person's own, is like:
 * "galvanized-steel". Borrowed; "" where it is none. */
const char *bf_work_metal_kind (const BfPart *part);

/* The steps of each stage. */
void bf_work_add_metal (BfWork *work);
void bf_work_add_mark (BfWork *work);
void bf_work_add_drill (BfWork *work);
void bf_work_add_cut (BfWork *work);
void bf_work_add_bend (BfWork *work);
void bf_work_add_join (BfWork *work);
void bf_work_add_finish (BfWork *work);
