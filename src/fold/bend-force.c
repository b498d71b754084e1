/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-force.h"

#define PALMS_LEAST_MM 25.0
#define PALMS_FROM_TIP_MM 15.0
#define BOARD_MM 300.0
#define LIMIT_N 200.0
#define V_DIE_FACTOR 1.33

double
bf_flow_stress_mpa (const BfMaterial *material)
{
  return (material->yield_mpa + material->tensile_mpa) / 2.0;
}

double
bf_bend_moment_nm (double stress_mpa, double width_mm, double thickness_mm)
{
  return stress_mpa * width_mm * thickness_mm * thickness_mm / 4.0 * 1e-3;
}

double
bf_bend_width_mm (double stress_mpa, double thickness_mm, double force_n, double lever_mm)
{
  return 4.0 * force_n * lever_mm / (stress_mpa * thickness_mm * thickness_mm);
}

double
bf_bend_lever_mm (const BfBend *bend, double flange_length_mm)
{
  if (bend->way == BF_BEND_WAY_BRAKE)
    return NAN;
  if (!isnan (bend->hand_lever_mm))
    return bend->hand_lever_mm;
  if (bend->way == BF_BEND_WAY_BAR)
    return BOARD_MM;
  return MAX (PALMS_LEAST_MM, flange_length_mm - PALMS_FROM_TIP_MM);
}

double
bf_bend_limit_n (const BfBend *bend)
{
  return isnan (bend->hand_limit_n) ? LIMIT_N : bend->hand_limit_n;
}

double
bf_sprung_radius_mm (double radius_mm, double thickness_mm, double yield_mpa, double elastic_gpa)
{
  double x = radius_mm * yield_mpa / (elastic_gpa * 1e3 * thickness_mm);
  double ratio = 4.0 * x * x * x - 3.0 * x + 1.0;

  /* Past x = 1/2 the curve turns up again, and means nothing. */
  return x < 0.5 ? radius_mm / ratio : NAN;
}

double
bf_overbend_rad (const BfMaterial *material,
                 double angle_rad,
                 double radius_mm,
                 double thickness_mm)
{
  double sprung =
      bf_sprung_radius_mm (radius_mm, thickness_mm, material->yield_mpa, material->elastic_gpa);
  double ratio = (2.0 * radius_mm / thickness_mm + 1.0) / (2.0 * sprung / thickness_mm + 1.0);

  return angle_rad * (1.0 / ratio - 1.0);
}

double
bf_brake_force_n (double tensile_mpa, double length_mm, double thickness_mm, double die_mm)
{
  return V_DIE_FACTOR * tensile_mpa * length_mm * thickness_mm * thickness_mm / die_mm;
}
