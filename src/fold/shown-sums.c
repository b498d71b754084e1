/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/shown-sums.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/units.h"
#include "fold/allowance.h"

#define DIE_OF_THICKNESS 8.0

static const struct
{
  const char *name, *source;
} sums[] = {
  [BF_SUM_K] = { N_ ("K-factor"),
                 N_ ("K is where the neutral line lies, from the inside, as a share of the "
                     "thickness: a rule of thumb (common practice)") },
  [BF_SUM_ALLOWANCE] = { N_ ("Bend allowance"),
                         N_ ("Kalpakjian & Schmid, Manufacturing Engineering and Technology") },
  [BF_SUM_SETBACK] = { N_ ("Setback and deduction"),
                       N_ ("Geometry; past 90° a bend is measured to its outermost tangent, as "
                           "DIN 6935 does") },
  [BF_SUM_SPRINGBACK] = { N_ ("Spring back"),
                          N_ ("Kalpakjian & Schmid, Manufacturing Engineering and Technology") },
  [BF_SUM_MOMENT] = { N_ ("Bending moment"),
                      N_ ("Fully plastic moment of a rectangle (plastic analysis); the flow stress "
                          "lies midway between yield and tensile strength (common practice)") },
  [BF_SUM_PUSH] = { N_ ("Push"), N_ ("Moment by lever; what a person can push: EN 1005-3") },
  [BF_SUM_BRAKE_FORCE] = { N_ ("Force of a press brake"),
                           N_ ("Groover, Fundamentals of Modern Manufacturing; k = 1.33 for a V "
                               "die") },
  [BF_SUM_HAND_BRAKE] = { N_ ("Hand brake, of its plate"),
                          N_ ("Width × thickness² × flow stress, against the mild steel on the "
                              "plate (common practice)") },
};

const char *
bf_sum_name (BfSumKind kind)
{
  g_return_val_if_fail (kind < BF_N_SUMS, NULL);
  return _ (sums[kind].name);
}

/* K comes from where its rule does. */
static const char *
source_of (BfSumKind kind, const BfSumNumbers *n)
{
  if (kind == BF_SUM_K && n->rule == BF_ALLOWANCE_DIN_6935)
    return "DIN 6935 (2011-10)";
  if (kind == BF_SUM_K && n->rule == BF_ALLOWANCE_HANDBOOK)
    return _ ("Machinery’s Handbook, 31st edition");
  if (kind == BF_SUM_K && n->rule == BF_ALLOWANCE_TRIAL_BEND)
    return _ ("A trial bend of one’s own");
  return _ (sums[kind].source);
}

double
bf_sum_die_mm (double thickness_mm)
{
  return DIE_OF_THICKNESS * thickness_mm;
}

BfSumNumbers
bf_sum_numbers (const BfFold *fold, const BfBendResult *bend)
{
  const BfMaterial *material = bf_material_find (fold->part->metal.material);
  const BfFlange *flange = bf_part_find_flange (fold->part, bend->flange);
  BfAllowance allowance = bf_part_resolve_bend (fold->part, flange).allowance;
  gboolean scored = !isnan (bend->score_left_mm);

  return (BfSumNumbers){
    .angle_rad = bend->angle_rad,
    .radius_mm = bend->inside_radius_mm,
    .thickness_mm = bf_bend_skin_mm (fold, bend),
    .k = bend->k,
    .k_error = bend->k_error,
    .rule = allowance.rule,
    .group = allowance.group,
    .measure = fold->part->measure,
    .face_radius_mm =
        scored ? bend->score_left_mm - fold->part->metal.thickness_mm : bend->inside_radius_mm,
    .width_mm = bend->kept * bf_vec2_distance (bend->line[0], bend->line[1]),
    .lever_mm = bend->lever_mm,
    .yield_mpa = material == NULL ? NAN : material->yield_mpa,
    .tensile_mpa = material == NULL ? NAN : material->tensile_mpa,
    .elastic_gpa = material == NULL ? NAN : material->elastic_gpa,
  };
}

/* ---- writing a sum down ------------------------------------------------------------------- */

/* A template in which each # stands for the next number, to four decimals at most and of no more
 * than six figures. */
static char *
fill_in (const char *template, const double *numbers)
{
  GString *text = g_string_new (NULL);

  for (const char *c = template; *c != '\0'; c++)
    if (*c == '#')
      {
        double value = *numbers++;
        g_autofree char *number = bf_format_decimal (value, fabs (value) < 100.0 ? 4 : 1);

        g_string_append (text, number);
      }
    else
      g_string_append_c (text, *c);
  return g_string_free (text, FALSE);
}

static double
flow_mpa (const BfSumNumbers *n)
{
  return (n->yield_mpa + n->tensile_mpa) / 2.0;
}

static double
moment_nm (const BfSumNumbers *n)
{
  return bf_bend_moment_nm (flow_mpa (n), n->width_mm, n->thickness_mm);
}

/* ---- the sums ----------------------------------------------------------------------------- */

static char *
show_allowance (const BfSumNumbers *n, double *result)
{
  *result = bf_bend_allowance_mm (n->angle_rad, n->radius_mm, n->thickness_mm, n->k);
  return fill_in ("BA = θ (R + K t) = # · (# + # · #) = # mm",
                  (const double[]){ n->angle_rad, n->radius_mm, n->k, n->thickness_mm, *result });
}

/* By DIN 6935 its k is held between 0 and 1, which the last line says. */
static char *
show_k (const BfSumNumbers *n, double *result)
{
  double r = n->radius_mm, t = n->thickness_mm, c = bf_handbook_constant (n->group);
  double square = c * t + BF_HANDBOOK_QUARTER_TURN * r;

  *result = n->k;
  if (n->rule == BF_ALLOWANCE_DIN_6935)
    return fill_in ("k = 0.65 + 0.5 log10 (R / t) = 0.65 + 0.5 log10 (# / #), 0 ≤ k ≤ 1: #\n"
                    "K = k / 2 = #",
                    (const double[]){ r, t, 2.0 * n->k, n->k });
  if (n->rule == BF_ALLOWANCE_HANDBOOK)
    return fill_in ("BA at 90° = c t + 1.57 R = # · # + 1.57 · # = # mm\n"
                    "K = (BA / (π/2) − R) / t = (# / 1.5708 − #) / # = #",
                    (const double[]){ c, t, r, square, square, r, t, n->k });
  return fill_in ("K = # ± #", (const double[]){ n->k, n->k_error });
}

/* The outside setback also makes the deduction, whatever the sizes are measured by. */
static char *
show_setback (const BfSumNumbers *n, double *result)
{
  double r = n->radius_mm, t = n->thickness_mm, factor = bf_setback_factor (n->angle_rad);
  double ba = bf_bend_allowance_mm (n->angle_rad, r, t, n->k), outside = (r + t) * factor;
  gboolean inside = n->measure == BF_MEASURE_INSIDE;
  g_autofree char *turn = NULL, *setback = NULL, *deduction = NULL;

  *result = inside ? n->face_radius_mm * factor : outside;
  turn = n->angle_rad <= G_PI_2 ? fill_in ("τ = tan (θ / 2) = tan (#° / 2) = #\n",
                                           (const double[]){ bf_rad_to_deg (n->angle_rad), factor })
                                : g_strdup ("θ > 90°: τ = 1\n");
  setback = inside ? fill_in ("S = R τ = # · # = # mm\n",
                              (const double[]){ n->face_radius_mm, factor, *result })
                   : fill_in ("S = (R + t) τ = (# + #) · # = # mm\n",
                              (const double[]){ r, t, factor, outside });
  deduction = fill_in ("2 (R + t) τ − BA = # − # = # mm",
                       (const double[]){ 2.0 * outside, ba, 2.0 * outside - ba });
  return g_strconcat (turn, setback, deduction, NULL);
}

static char *
show_springback (const BfSumNumbers *n, double *result)
{
  double r = n->radius_mm, t = n->thickness_mm, e = n->elastic_gpa * 1e3;
  double x = r * n->yield_mpa / (e * t), deg = bf_rad_to_deg (n->angle_rad);
  double sprung = bf_sprung_radius_mm (r, t, n->yield_mpa, n->elastic_gpa);
  double ratio = 4.0 * x * x * x - 3.0 * x + 1.0;
  double angles = (2.0 * r / t + 1.0) / (2.0 * sprung / t + 1.0);

  *result = sprung;
  return fill_in ("x = Ri Y / (E t) = # · # / (# · #) = #\n"
                  "Ri / Rf = 4 x³ − 3 x + 1 = #\n"
                  "Rf = # / # = # mm\n"
                  "Ks = (2 Ri / t + 1) / (2 Rf / t + 1) = #\n"
                  "#° / Ks = #°",
                  (const double[]){ r, n->yield_mpa, e, t, x, ratio, r, ratio, sprung, angles, deg,
                                    deg / angles });
}

static char *
show_moment (const BfSumNumbers *n, double *result)
{
  double t = n->thickness_mm;

  *result = moment_nm (n);
  return fill_in ("σ = (# + #) / 2 = # MPa\n"
                  "M = σ b t² / 4 = # · # · #² / 4 = # N·mm = # N·m",
                  (const double[]){ n->yield_mpa, n->tensile_mpa, flow_mpa (n), flow_mpa (n),
                                    n->width_mm, t, *result * 1e3, *result });
}

static char *
show_push (const BfSumNumbers *n, double *result)
{
  *result = moment_nm (n) * 1e3 / n->lever_mm;
  return fill_in ("F = M / lever = # N·mm / # mm = # N",
                  (const double[]){ moment_nm (n) * 1e3, n->lever_mm, *result });
}

static char *
show_brake_force (const BfSumNumbers *n, double die_mm, double *result)
{
  double t = n->thickness_mm;

  *result = bf_brake_force_n (n->tensile_mpa, n->width_mm, t, die_mm);
  return fill_in ("F = k UTS L t² / W = 1.33 · # · # · #² / # = # N",
                  (const double[]){ n->tensile_mpa, n->width_mm, t, die_mm, *result });
}

static char *
show_hand_brake (const BfSumNumbers *n, const BfBrakePlate *plate, double *result)
{
  const BfMaterial *mild = bf_material_find ("mild-steel");
  double t = n->thickness_mm, rated = bf_flow_stress_mpa (mild);

  *result = moment_nm (n) / bf_bend_moment_nm (rated, plate->width_mm, plate->thickness_mm);
  return fill_in ("(# · #² · #) / (# · #² · #) = #",
                  (const double[]){ n->width_mm, t, flow_mpa (n), plate->width_mm,
                                    plate->thickness_mm, rated, *result });
}

gboolean
bf_sum_show (BfSumKind kind,
             const BfSumNumbers *numbers,
             const BfBrakeAsked *brake,
             BfShownSum *shown)
{
  double result = NAN;
  g_autofree char *words = NULL;

  g_return_val_if_fail (numbers != NULL && shown != NULL, FALSE);
  switch (kind)
    {
    case BF_SUM_K:
      words = show_k (numbers, &result);
      break;
    case BF_SUM_SETBACK:
      words = show_setback (numbers, &result);
      break;
    case BF_SUM_ALLOWANCE:
      words = show_allowance (numbers, &result);
      break;
    case BF_SUM_SPRINGBACK:
      words = show_springback (numbers, &result);
      break;
    case BF_SUM_MOMENT:
      words = show_moment (numbers, &result);
      break;
    case BF_SUM_PUSH:
      words = show_push (numbers, &result);
      break;
    case BF_SUM_BRAKE_FORCE:
      words = show_brake_force (numbers, brake == NULL ? NAN : brake->die_mm, &result);
      break;
    case BF_SUM_HAND_BRAKE:
      if (brake != NULL && brake->plate != NULL)
        words = show_hand_brake (numbers, brake->plate, &result);
      break;
    case BF_N_SUMS:
    default:
      g_return_val_if_reached (FALSE);
    }
  if (!isfinite (result))
    return FALSE;
  *shown = (BfShownSum){ kind, g_steal_pointer (&words), result, source_of (kind, numbers) };
  return TRUE;
}

void
bf_shown_sum_clear (BfShownSum *shown)
{
  g_clear_pointer (&shown->words, g_free);
}
