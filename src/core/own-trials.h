/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The person's own trial bends: a file each in $XDG_DATA_HOME/benchfold/trial-bends. Strips that
 * were bent for it, or the first finished part, which is a trial bend too. What was measured is
 * kept beside what came of it, so that it can be looked at again. K itself is worked out in
 * fold/trial-bend.h. */

/* One strip as it was measured. */
typedef struct
{
  double length_mm, legs_mm[2], angle_deg;
} BfTrialStrip;

/* One size of a finished part that a trial bend comes from. */
typedef struct
{
  double asked_mm, measured_mm;
} BfTrialSize;

typedef struct
{
  const char *id;       /* the file's name without its end; NULL for one not kept yet */
  const char *material; /* as in core/materials.h */
  const char *date;     /* "2026-01-31" */
  double thickness_mm, radius_mm;
  BfBendWay way;
  double measured_to_mm; /* each length may be off by so much either way */
  GArray *strips;        /* BfTrialStrip, at least one; none where a finished part was measured */
  const char *part;      /* the finished part's name; NULL where strips were bent */
  GArray *sizes;         /* BfTrialSize, of the finished part; NULL where strips were bent */
  double k, k_error;     /* the mean of what was measured, and how far off it may be either way */
} BfTrialRecord;

/* All of them by id; n_trials: (out). Read from the disk when first asked for. Owned by the
 * library; valid until they are read again or one is kept or removed. */
const BfTrialRecord *bf_own_trials (guint *n_trials);
const BfTrialRecord *bf_own_trial_find (const char *id);

/* What is wrong with files of trial bends, a line each; ends with NULL. Owned and valid as above.
 */
const char *const *bf_own_trial_faults (void);
void bf_own_trials_read_again (void);

/* Keeps a trial bend: one without an id is new, and gets one after its metal, thickness, way and
 * radius; else the one of that id is replaced. Returns: it as kept, or NULL with error
 * (BF_PART_ERROR_WRITE). */
const BfTrialRecord *bf_own_trial_keep (const BfTrialRecord *trial, GError **error);

/* How far a bend may differ from the one that was tried, and still take its K: thickness by 3 in
 * 100 (two makings of one gauge), inside radius by a quarter of the thickness (by DIN 6935 K then
 * differs by 0.03 at R = t). Common practice. */
#define BF_TRIAL_THICKNESS_SHARE 0.03
#define BF_TRIAL_RADIUS_SHARE 0.25

/* TRUE where the bend of a flange (NULL: of the part, at 90°) is such as was tried; never for a
 * scored one, which folds as the skin that its groove leaves. */
gboolean bf_trial_fits (const BfTrialRecord *trial, const BfPart *part, const BfFlange *flange);

/* The trial bend that fits the part's bends best: the nearest in thickness and radius, of such the
 * newest; NULL where none does. */
const BfTrialRecord *bf_own_trial_for (const BfPart *part);

/* The part with the allowance of that trial bend, its id and its K; NULL: with the way's own again.
 * Flanges whose bend is another one (a hem, another radius) get in writing what they had, so that a
 * K that was not tried for them is not theirs. Returns: (transfer full). */
BfPart *bf_edit_trial_bend (const BfPart *part,
                            const BfTrialRecord *trial) G_GNUC_WARN_UNUSED_RESULT;

/* The same with the trial bend that fits, for a part whose set-up was changed just now: an
 * allowance that the person chose themselves stays, one of a trial bend that fits no more goes.
 * Returns: (transfer full), or NULL where nothing changes. */
BfPart *bf_edit_fit_trial_bend (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
