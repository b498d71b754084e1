/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/defaults.h"
#include "core/own-trials.h"
#include "core/tolerance.h"

static const char *
material_of (const BfPart *part)
{
  return part->metal.material != NULL ? part->metal.material : "mild-steel";
}

gboolean
bf_trial_fits (const BfTrialRecord *trial, const BfPart *part, const BfFlange *flange)
{
  double t = part->metal.thickness_mm;
  BfBend bend = bf_part_resolve_bend (part, flange);

  if (bend.way == BF_BEND_WAY_SCORE)
    return FALSE; /* its skin is another at every groove: no K of one strip is another's */
  return g_str_equal (trial->material, material_of (part)) && trial->way == bend.way &&
         fabs (trial->thickness_mm - t) <= BF_TRIAL_THICKNESS_SHARE * t + BF_TOLERANCE_SIZE_MM &&
         fabs (trial->radius_mm - bend.inside_radius_mm) <=
             BF_TRIAL_RADIUS_SHARE * t + BF_TOLERANCE_SIZE_MM;
}

/* How far from what was tried, in shares of what is let pass. */
static double
distance (const BfTrialRecord *trial, const BfPart *part)
{
  double t = part->metal.thickness_mm;
  BfBend bend = bf_part_resolve_bend (part, NULL);

  return hypot ((trial->thickness_mm - t) / (BF_TRIAL_THICKNESS_SHARE * t),
                (trial->radius_mm - bend.inside_radius_mm) / (BF_TRIAL_RADIUS_SHARE * t));
}

static gboolean
is_better (const BfTrialRecord *trial, const BfTrialRecord *than, const BfPart *part)
{
  double nearer = than != NULL ? distance (than, part) - distance (trial, part) : 1.0;

  if (fabs (nearer) > BF_TOLERANCE_SIZE_MM)
    return nearer > 0.0;
  return strcmp (trial->date, than->date) >= 0;
}

const BfTrialRecord *
bf_own_trial_for (const BfPart *part)
{
  guint n;
  const BfTrialRecord *all = bf_own_trials (&n), *best = NULL;

  g_return_val_if_fail (part != NULL, NULL);

  for (guint i = 0; i < n; i++)
    if (bf_trial_fits (&all[i], part, NULL) && is_better (&all[i], best, part))
      best = &all[i];
  return best;
}

static void
set_allowance (BfAllowance *allowance, BfAllowanceRule rule, double k, const char *id)
{
  g_free (allowance->trial_id);
  allowance->rule = rule;
  allowance->k = k;
  allowance->k_error = NAN;
  allowance->trial_id = g_strdup (id);
}

/* A flange with a bend of its own kind keeps what it had. */
static void
keep_others (BfPart *copy, const BfPart *part, const BfTrialRecord *trial)
{
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      BfFlange *flange = g_ptr_array_index (copy->flanges, i);
      BfAllowance had = bf_part_resolve_bend (part, flange).allowance;

      if (bf_trial_fits (trial, part, flange) ||
          flange->bend.allowance.rule != BF_ALLOWANCE_UNSET || !isnan (flange->bend.allowance.k) ||
          had.rule == BF_ALLOWANCE_TRIAL_BEND)
        continue;
      flange->bend.allowance.group = had.group;
      set_allowance (&flange->bend.allowance, had.rule,
                     had.rule == BF_ALLOWANCE_K_FACTOR ? had.k : NAN, NULL);
    }
}

BfPart *
bf_edit_trial_bend (const BfPart *part, const BfTrialRecord *trial)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL && (trial == NULL || trial->id != NULL), NULL);

  copy = bf_part_copy (part);
  copy->bend.corrected = NULL;
  if (trial == NULL)
    {
      set_allowance (&copy->bend.allowance, BF_ALLOWANCE_UNSET, NAN, NULL);
      return copy;
    }
  keep_others (copy, part, trial);
  set_allowance (&copy->bend.allowance, BF_ALLOWANCE_TRIAL_BEND, trial->k, trial->id);
  copy->bend.allowance.k_error = trial->k_error;
  return copy;
}

/* A K that is just the way's own was chosen by nobody. */
static gboolean
is_chosen (const BfPart *part)
{
  const BfAllowance *allowance = &part->bend.allowance;
  double own_k = bf_default_k (bf_part_resolve_bend (part, NULL).way, 90.0);

  switch (allowance->rule)
    {
    case BF_ALLOWANCE_UNSET:
    case BF_ALLOWANCE_K_FACTOR:
      return !isnan (allowance->k) && fabs (allowance->k - own_k) > BF_TOLERANCE_SIZE_MM;
    case BF_ALLOWANCE_TRIAL_BEND:
      return FALSE;
    case BF_ALLOWANCE_DIN_6935:
    case BF_ALLOWANCE_HANDBOOK:
    default:
      return TRUE;
    }
}

static gboolean
has_trial (const BfPart *part, const BfTrialRecord *trial)
{
  const BfAllowance *allowance = &part->bend.allowance;

  if (trial == NULL)
    return allowance->rule != BF_ALLOWANCE_TRIAL_BEND;
  return allowance->rule == BF_ALLOWANCE_TRIAL_BEND &&
         g_strcmp0 (allowance->trial_id, trial->id) == 0 &&
         fabs (allowance->k - trial->k) < BF_TOLERANCE_ZERO;
}

BfPart *
bf_edit_fit_trial_bend (const BfPart *part)
{
  const BfTrialRecord *trial;

  g_return_val_if_fail (part != NULL, NULL);

  if (is_chosen (part))
    return NULL;
  trial = bf_own_trial_for (part);
  return has_trial (part, trial) ? NULL : bf_edit_trial_bend (part, trial);
}
