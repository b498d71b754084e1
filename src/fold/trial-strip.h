/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"
#include "core/own-trials.h"
#include "fold/trial-bend.h"

/* The strip of metal that is bent to learn what a bend takes. */

/* How well a caliper is read on such a strip, either way, in mm (common practice). */
#define BF_TRIAL_MEASURED_TO_MM 0.1

/* How long a strip is before it is bent: 100 mm, or 4 in. */
double bf_trial_strip_length_mm (BfUnits units);

/* The part whose blank is that strip: of the same metal, cut and bent as that part is, with its one
 * square bend across the middle. 20 mm or 3/4 in wide; where bends are slotted, as wide as one slot
 * like the part's, but no longer than 70 mm, and a bridge at each end. units: whose round sizes the
 * strip has. Returns: (transfer full). */
BfPart *bf_trial_strip_part (const BfPart *part, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;

/* The mean K of a trial's strips as they were measured, and its error. k: (out), untouched on
 * failure. FALSE with an error of BF_TRIAL_ERROR for the first strip that is wrong. */
gboolean bf_trial_record_k (const BfTrialRecord *trial, BfTrialK *k, GError **error);
