/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* What one bend takes of the metal. All lengths mm, angles radians. */

typedef struct
{
  double k;            /* neutral line's distance from the inside face, as a share of thickness */
  double allowance_mm; /* width of the bend zone in the flat */
  double setback_mm;   /* from the drawn line to the bend's tangent, by the part's measure */
  double outside_setback_mm;
  double deduction_mm; /* 2 × the outside setback − allowance, whatever the measure */
  double skin_mm;      /* thickness of what bends: the metal's, or what a score leaves of it */

  /* The inside radius as the two faces have it. A score turns about its bottom, below the face that
   * it is cut into, so that this is −(t − skin) there: the inside faces meet where those of a bend
   * with such a radius would. */
  double face_radius_mm;
} BfBendSums;

/* Allowance θ(R + K t): the length of the neutral line round the bend.
 * Source: Kalpakjian & Schmid, Manufacturing Engineering and Technology, eq. 16.2. */
double bf_bend_allowance_mm (double angle_rad, double radius_mm, double thickness_mm, double k);

/* τ(θ): tan(θ/2) up to a square bend, 1 above it, where legs are measured to the outermost tangent
 * as DIN 6935 does. */
double bf_setback_factor (double angle_rad);

/* K by a rule. K-factor and trial bend give their own k; DIN 6935 (2011-10) gives half of
 * k = 0.65 + 0.5·log10(R/t), held between 0 and 1; the handbook constants (Machinery's Handbook,
 * 31st ed., p. 1421: allowance (c t + 1.57 R)·angle/90°) give what their allowance amounts to. */
double bf_allowance_k (const BfAllowance *allowance, double radius_mm, double thickness_mm);

/* The thickness constant of a group there, and the rounded quarter turn that goes with it. */
double bf_handbook_constant (BfHandbookGroup group);
#define BF_HANDBOOK_QUARTER_TURN 1.57

/* How far off K may be either way: as the part says, else what its rule leaves open. Handbooks
 * differ by 0.06 for one metal and radius, a strip of one's own leaves about 0.02 (common
 * practice).
 */
double bf_allowance_k_error (const BfAllowance *allowance);

/* Allowance, setback and deduction of a bend whose every member is filled in
 * (bf_part_resolve_bend). A scored bend is one of the skin alone, without a radius, whatever radius
 * is given. sums: (out). */
void bf_bend_sums (
    const BfBend *bend, double angle_rad, double thickness_mm, BfMeasure measure, BfBendSums *sums);
