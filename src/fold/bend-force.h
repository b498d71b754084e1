/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/materials.h"
#include "core/part.h"

/* What it takes to make a bend, and how far the metal springs back from it. Newtons, N·m, MPa,
 * millimetres, radians. */

/* Flow stress: midway between yield and tensile strength, since the metal hardens as it bends
 * (common practice). */
double bf_flow_stress_mpa (const BfMaterial *material);

/* The moment that bends a strip of that width for good: σ b t²/4, the fully plastic moment of a
 * rectangle (standard plastic analysis), in N·m. */
double bf_bend_moment_nm (double stress_mpa, double width_mm, double thickness_mm);

/* The width whose bending takes that force on that lever: the inverse of the above. */
double bf_bend_width_mm (double stress_mpa, double thickness_mm, double force_n, double lever_mm);

/* How far from the bend line a person pushes. The bend is filled in (bf_part_resolve_bend), and
 * `length` is the flange's: given, else a board of 300 mm over a bar, else palms near the tip,
 * max (25, length − 15) (common practice). NAN at a brake, which has levers of its own. */
double bf_bend_lever_mm (const BfBend *bend, double flange_length_mm);

/* What a person may be asked to push: given, else 200 N (EN 1005-3, whole-body push, professional
 * use; about 120 N for everybody at home). */
double bf_bend_limit_n (const BfBend *bend);

/* Share of the limit to aim at when slots are planned, and the share above which a bend is looked
 * at (EN 1005-3 asks to stay at half of what a person can do, and warns from 0.7 on). */
#define BF_FORCE_AIM 0.5
#define BF_FORCE_LOOK_AT 0.6

/* The inside radius after the metal has sprung back, of one bent round radius_mm:
 * Ri/Rf = 4x³ − 3x + 1, x = Ri·Y/(E·t). NAN where the metal would spring back whole.
 * Source: Kalpakjian & Schmid, Manufacturing Engineering and Technology (from memory; Machinery's
 * Handbook, 31st ed., p. 1421 lists the same variables). */
double
bf_sprung_radius_mm (double radius_mm, double thickness_mm, double yield_mpa, double elastic_gpa);

/* How far past the angle to bend so that it springs back to it: θ (1/Ks − 1),
 * Ks = (2Ri/t + 1)/(2Rf/t + 1). NAN as above. Source: as above. */
double bf_overbend_rad (const BfMaterial *material,
                        double angle_rad,
                        double radius_mm,
                        double thickness_mm);

/* The force of a press brake with a V die: k·UTS·L·t²/W, k = 1.33. Source: Groover, Fundamentals
 * of Modern Manufacturing; Kalpakjian & Schmid (both from memory). */
double bf_brake_force_n (double tensile_mpa, double length_mm, double thickness_mm, double die_mm);
