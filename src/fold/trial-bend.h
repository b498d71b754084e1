/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* The person's own trial bend: a strip of known length, bent, its two legs measured. What is left
 * over is what the bend took, and gives K for this metal, this tool and these hands. */

typedef struct
{
  double length_mm;  /* of the strip before it is bent */
  double legs_mm[2]; /* after, outside: to the mould line, or past 90° to the outer tangent */
  double angle_rad;  /* the angle turned */
  double radius_mm;  /* the inside radius */
  double thickness_mm;
  double measured_to_mm; /* each of the three lengths may be off by so much either way */
} BfTrialBend;

/* K, and how far off it may be either way: no further in 95 of 100 trials. */
typedef struct
{
  double k, k_error;
} BfTrialK;

typedef enum
{
  BF_TRIAL_ERROR_NO_SIZE, /* a length, angle or thickness that is none */
  BF_TRIAL_ERROR_NO_FIT,  /* no bend could leave such legs: something was measured wrong */
} BfTrialError;

#define BF_TRIAL_ERROR (bf_trial_error_quark ())
GQuark bf_trial_error_quark (void);

/* K of one strip: BA = L − a − b + 2 (R + t) τ, K = (BA/θ − R)/t, the allowance turned round.
 * k: (out), untouched on failure. FALSE with an error of BF_TRIAL_ERROR. */
gboolean bf_trial_bend_k (const BfTrialBend *strip, BfTrialK *k, GError **error);

/* The mean of several strips, and its error: from the measuring, or from how far the strips lie
 * apart where that is more. n of at least 1. */
BfTrialK bf_trial_bends_mean (const BfTrialK *strips, guint n);
