/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/bend-force.h"
#include "fold/fold.h"

/* "Show the sum": the textbook sums behind a bend's numbers, with the numbers filled in, and where
 * each comes from. Millimetres, newtons, MPa and degrees throughout, whatever the part's units. */

typedef enum
{
  BF_SUM_K,
  BF_SUM_ALLOWANCE,
  BF_SUM_SETBACK,
  BF_SUM_SPRINGBACK,
  BF_SUM_MOMENT,
  BF_SUM_PUSH,
  BF_SUM_BRAKE_FORCE,
  BF_SUM_HAND_BRAKE,
  BF_N_SUMS,
} BfSumKind;

typedef struct
{
  BfSumKind kind;
  char *words;   /* the sum, a line a step, its numbers in the locale's decimal sign */
  double result; /* K, allowance mm, setback mm, radius sprung back mm, N·m, N, N, share of the
                  * plate's rating */
  const char *source; /* translated, static */
} BfShownSum;

/* What a sum is worked out from. */
typedef struct
{
  double angle_rad, radius_mm, thickness_mm; /* of what bends: at a score its skin, no radius */
  double k, k_error;
  BfAllowanceRule rule;
  BfHandbookGroup group; /* handbook */
  BfMeasure measure;
  double face_radius_mm; /* as the two faces have it: below the radius at a score */
  double width_mm;       /* of metal along the bend, slots and openings taken off */
  double lever_mm;       /* NAN where nobody pushes */
  double yield_mpa, tensile_mpa, elastic_gpa; /* NAN for a metal that is not known */
} BfSumNumbers;

BfSumNumbers bf_sum_numbers (const BfFold *fold, const BfBendResult *bend);

/* A hand brake's plate: the widest and thickest mild steel that it bends. How much of that a bend
 * uses goes by width × t² × flow stress (common practice); 1 is all of it. */
typedef struct
{
  double width_mm, thickness_mm;
} BfBrakePlate;

typedef struct
{
  double die_mm;             /* the opening of a V die, for BF_SUM_BRAKE_FORCE; or NAN */
  const BfBrakePlate *plate; /* for BF_SUM_HAND_BRAKE; or NULL */
} BfBrakeAsked;

/* One sum. brake: NULL for none. FALSE, shown untouched, where a number that it takes is not known.
 * shown: (out), clear with bf_shown_sum_clear(). */
gboolean bf_sum_show (BfSumKind kind,
                      const BfSumNumbers *numbers,
                      const BfBrakeAsked *brake,
                      BfShownSum *shown);
void bf_shown_sum_clear (BfShownSum *shown);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (BfShownSum, bf_shown_sum_clear)

/* What a sum is called, for a heading: "Spring back". Static, translated. */
const char *bf_sum_name (BfSumKind kind);

/* How wide a V die is taken to be where nobody says: eight times the metal (common practice). */
double bf_sum_die_mm (double thickness_mm);
