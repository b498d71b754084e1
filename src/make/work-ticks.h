/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/work.h"

/* How steps of the work, and the blank that they are done to, are called in a part's file
 * (core/made.h). */

/* A short word that tells one blank from another: where it is cut, bent and drilled, to 0.01 mm,
 * and what of. Returns: (transfer full). */
char *bf_work_blank_word (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* "mark:3": the stage, and which of its steps, from 0. Returns: (transfer full). */
char *bf_work_step_word (const BfWork *work, guint step) G_GNUC_WARN_UNUSED_RESULT;

/* How many steps of a stage the part has ticked. blank: bf_work_blank_word(). */
guint bf_work_n_ticked (const BfWork *work, BfStage stage, const char *blank);
