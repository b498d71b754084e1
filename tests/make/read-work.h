/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/work.h"

/* What tests read out of the steps of a part's work. Nothing is to be freed but a work. */

/* The work on a part, by the defaults. Returns: (transfer full). */
BfWork *work_of (BfPart *part);

/* The work on the random part of that seed (make-any.h), cut in that way.
 * Returns: (transfer full). */
BfWork *work_of_any (guint seed, BfCuttingWay by);

/* A part of data/examples. Returns: (transfer full). */
BfPart *load_example (const char *name);

/* The number of that label, or NULL. */
const BfWorkNumber *number_of (const BfWorkStep *step, const char *label);

/* Fails the test unless the step has a number of that label, and it says that. */
void assert_number (const BfWorkStep *step, const char *label, const char *value);

/* The first step of a stage in whose words that stands, or NULL. */
const BfWorkStep *find_step (const BfWork *work, BfStage stage, const char *words);

/* How many steps of a stage have that in their words. */
guint count_steps (const BfWork *work, BfStage stage, const char *words);

/* The nth number written in a text, counted from 0, a point or comma in it or not; NAN where there
 * are not so many. */
double nth_number (const char *text, guint nth);

/* TRUE where a point of the blank is metal: in an outer ring and in no hole. */
gboolean is_metal (const BfFold *fold, BfVec2 p);
