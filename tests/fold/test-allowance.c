/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What a bend takes of the metal, against values in print. A source is named beside every value;
 * where the printed value was worked out again from the source's own formula, or is remembered
 * and was not read, that is said. */

#include "core/units.h"
#include "fold/allowance.h"

/* Nothing but rounding. */
#define EXACT 1e-12

/* ---- lengths by a K-factor ----------------------------------------------------------------- */

/* Allowance = θ(R + K t), setback = (R + t)·tan(θ/2), deduction = 2 × setback − allowance, as in
 * Kalpakjian & Schmid, Manufacturing Engineering and Technology, eq. 16.2. NAN: not in print. */
typedef struct
{
  const char *source;
  double angle_deg, radius, thickness, k;
  double allowance, setback, deduction;
  double tolerance;
} Bend;

static const Bend bends[] = {
  /* R = T = 2 mm: by the formula. */
  { "R = T = 2 mm, K 0.33", 90.0, 2.0, 2.0, 0.33, 4.1783, 4.0, 3.8217, 5e-5 },
  { "R = T = 2 mm, K 0.40", 90.0, 2.0, 2.0, 0.40, 4.3982, 4.0, 3.6018, 5e-5 },
  { "R = T = 2 mm, K 0.44", 90.0, 2.0, 2.0, 0.44, 4.5239, 4.0, 3.4761, 5e-5 },
  { "T 1.5, R 3 mm, 45°, K 0.38", 45.0, 3.0, 1.5, 0.38, 2.8039, 1.8640, 0.9241, 5e-5 },
  /* Sheet-metal workbook for aircraft mechanics, 6th ed.: its empirical formula is K = 0.447; it
   * prints 0.085, 0.164 (two setbacks) and 0.079 in. */
  { "workbook, T 0.050, R 0.032 in", 90.0, 0.032, 0.050, 0.447, 0.085, 0.082, 0.079, 6e-4 },
  /* FAA-H-8083-31, the U-channel: setback 0.2 in; its formula rounds π/180 to 0.01743. */
  { "FAA U-channel", 90.0, 0.16, 0.040, 0.447, 0.2791, 0.2, 0.1209, 4e-4 },
  /* Groover, Fundamentals of Modern Manufacturing, ch. 20, from memory. */
  { "Groover, 60°", 60.0, 4.75, 3.2, 0.33, 6.08, NAN, NAN, 5e-3 },
};

static BfBend
k_bend (double radius_mm, double k)
{
  return (BfBend){ .way = BF_BEND_WAY_BAR,
                   .inside_radius_mm = radius_mm,
                   .allowance = { .rule = BF_ALLOWANCE_K_FACTOR, .k = k } };
}

static void
assert_printed (double found, double printed, double tolerance)
{
  if (!isnan (printed))
    g_assert_cmpfloat_with_epsilon (found, printed, tolerance);
}

static void
test_bends (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bends); i++)
    {
      const Bend *b = &bends[i];
      BfBend bend = k_bend (b->radius, b->k);
      BfBendSums sums;

      g_test_message ("%s", b->source);
      bf_bend_sums (&bend, bf_deg_to_rad (b->angle_deg), b->thickness, BF_MEASURE_OUTSIDE, &sums);
      assert_printed (sums.allowance_mm, b->allowance, b->tolerance);
      assert_printed (sums.outside_setback_mm, b->setback, b->tolerance);
      assert_printed (sums.setback_mm, b->setback, b->tolerance);
      assert_printed (sums.deduction_mm, b->deduction, b->tolerance);
    }
}

/* Flats of the FAA-H-8083-31 channel, 1.00, 2.00 and 1.00 in outside: 0.8, 1.6 and 0.8 in. The
 * total 3.758 in is by its formula, π/180 rounded; the handbook rounds its allowance and, from
 * memory, says 3.74. */
static void
test_channel (void)
{
  BfBend bend = k_bend (0.16, 0.447);
  BfBendSums sums;
  double legs[] = { 1.0, 2.0, 1.0 }, flats[] = { 0.8, 1.6, 0.8 }, total = 0.0;

  bf_bend_sums (&bend, G_PI_2, 0.040, BF_MEASURE_OUTSIDE, &sums);
  for (guint i = 0; i < G_N_ELEMENTS (legs); i++)
    {
      double flat = legs[i] - (i == 1 ? 2.0 : 1.0) * sums.setback_mm;

      g_assert_cmpfloat_with_epsilon (flat, flats[i], EXACT);
      total += flat;
    }
  total += 2.0 * sums.allowance_mm;
  g_assert_cmpfloat_with_epsilon (total, 3.758, 1e-3);
  g_assert_cmpfloat_with_epsilon (total, 4.0 - 2.0 * sums.deduction_mm, EXACT);
}

/* Groover's worked example, from memory: straight legs of 38 and 25 mm make a blank of 69.08. */
static void
test_straight_legs (void)
{
  double allowance = bf_bend_allowance_mm (bf_deg_to_rad (60.0), 4.75, 3.2, 0.33);

  g_assert_cmpfloat_with_epsilon (38.0 + 25.0 + allowance, 69.08, 5e-3);
}

/* ---- setback ------------------------------------------------------------------------------- */

/* tan(A/2), FAA AC 43.13-1B, table 4-7. */
static void
test_faa_setback (void)
{
  static const double table[][2] = { { 30.0, 0.2679 }, { 45.0, 0.4142 }, { 60.0, 0.5773 },
                                     { 90.0, 1.0 },    { 120.0, 1.732 }, { 135.0, 2.414 },
                                     { 150.0, 3.732 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      double angle = bf_deg_to_rad (table[i][0]), factor = bf_setback_factor (angle);

      /* Above a square bend legs are measured to the outermost tangent, not to that apex. */
      if (table[i][0] > 90.0)
        g_assert_cmpfloat_with_epsilon (factor, 1.0, EXACT);
      else
        g_assert_cmpfloat_with_epsilon (factor, table[i][1], 1.01e-4);
    }
}

/* Sizes inside are measured to the inside face: that setback goes with R alone. */
static void
test_measure (void)
{
  BfBend bend = k_bend (2.0, 0.4);
  BfBendSums outside, inside;

  for (int deg = 1; deg <= 180; deg++)
    {
      double angle = bf_deg_to_rad (deg);

      bf_bend_sums (&bend, angle, 1.5, BF_MEASURE_OUTSIDE, &outside);
      bf_bend_sums (&bend, angle, 1.5, BF_MEASURE_INSIDE, &inside);
      g_assert_cmpfloat_with_epsilon (outside.setback_mm - inside.setback_mm,
                                      1.5 * (deg <= 90 ? tan (angle / 2.0) : 1.0), EXACT);
      g_assert_cmpfloat_with_epsilon (inside.outside_setback_mm, outside.outside_setback_mm, EXACT);
      g_assert_cmpfloat_with_epsilon (inside.deduction_mm, outside.deduction_mm, EXACT);
      g_assert_cmpfloat_with_epsilon (inside.allowance_mm, outside.allowance_mm, EXACT);
    }
}

/* ---- DIN 6935 ------------------------------------------------------------------------------ */

static double
din_k (double radius_mm, double thickness_mm)
{
  BfAllowance din = { .rule = BF_ALLOWANCE_DIN_6935 };
  return 2.0 * bf_allowance_k (&din, radius_mm, thickness_mm);
}

/* The standard's v, to be taken off the sum of both legs; β is its opening angle. */
static double
din_v (double opening_deg, double radius_mm, double thickness_mm)
{
  BfBend bend = { .inside_radius_mm = radius_mm, .allowance.rule = BF_ALLOWANCE_DIN_6935 };
  BfBendSums sums;

  bf_bend_sums (&bend, bf_deg_to_rad (180.0 - opening_deg), thickness_mm, BF_MEASURE_OUTSIDE,
                &sums);
  return sums.deduction_mm;
}

/* k = 0.65 + 0.5·log10(r/s): values by the formula of DIN 6935 (2011-10), as a German trade table
 * book prints it; 1 above r/s = 5. */
static void
test_din_k (void)
{
  static const double table[][2] = { { 0.5, 0.4995 }, { 0.65, 0.5565 }, { 0.8, 0.6015 },
                                     { 1.0, 0.65 },   { 1.2, 0.6896 },  { 1.5, 0.7380 },
                                     { 2.0, 0.8005 }, { 2.5, 0.8490 },  { 3.0, 0.8886 },
                                     { 4.0, 0.9510 }, { 5.0, 0.9995 },  { 5.1, 1.0 },
                                     { 8.0, 1.0 },    { 100.0, 1.0 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_assert_cmpfloat_with_epsilon (din_k (table[i][0], 1.0), table[i][1], 5.1e-5);
      g_assert_cmpfloat_with_epsilon (din_k (table[i][0] * 2.5, 2.5), din_k (table[i][0], 1.0),
                                      1e-12);
    }
  /* Below r/s = 0.05 the formula would put the neutral line outside the metal. */
  g_assert_cmpfloat_with_epsilon (din_k (0.05, 1.0), 0.0, EXACT);
  g_assert_cmpfloat_with_epsilon (din_k (0.0, 1.0), 0.0, EXACT);
}

/* v of square bends in mm, by the formula; agrees to 0.1 mm with what table books print, as far as
 * remembered. */
static void
test_din_square (void)
{
  static const double s[] = { 0.4, 0.6, 0.8, 1.0, 1.5, 2.0, 2.5, 3.0 };
  static const double r[] = { 1.0, 1.6, 2.5, 4.0, 6.0, 10.0 };
  static const double v[6][8] = {
    { 0.96, 1.27, 1.59, 1.92, 2.77, 3.64, 4.54, 5.46 },
    { 1.19, 1.48, 1.78, 2.10, 2.90, 3.74, 4.60, 5.48 },
    { 1.56, 1.82, 2.11, 2.41, 3.18, 3.98, 4.80, 5.63 },
    { 2.20, 2.45, 2.69, 2.97, 3.70, 4.46, 5.24, 6.04 },
    { 3.06, 3.30, 3.55, 3.79, 4.45, 5.18, 5.93, 6.69 },
    { 4.78, 5.02, 5.26, 5.51, 6.11, 6.72, 7.42, 8.14 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (r); i++)
    for (guint j = 0; j < G_N_ELEMENTS (s); j++)
      {
        g_test_message ("r %g s %g", r[i], s[j]);
        g_assert_cmpfloat_with_epsilon (din_v (90.0, r[i], s[j]), v[i][j], 5.1e-3);
      }
  /* A German vocational school's note prints 9.9 for r 6, s 5. */
  g_assert_cmpfloat_with_epsilon (din_v (90.0, 6.0, 5.0), 9.9, 0.05);
  g_assert_cmpfloat_with_epsilon (din_v (90.0, 1.0, 1.0), 1.9187, 5e-5);
}

/* v over the opening angle for r = s = 2, by the standard's formulas: below an opening of 90° legs
 * are measured to the outermost tangent, above it to the outer apex, as the code does. At an
 * opening over 165° the standard neglects v; the code goes on. */
static void
test_din_angles (void)
{
  static const double table[][2] = { { 0.0, -0.325 },  { 30.0, 1.062 },  { 45.0, 1.756 },
                                     { 60.0, 2.450 },  { 90.0, 3.837 },  { 120.0, 1.844 },
                                     { 135.0, 1.232 }, { 150.0, 0.756 }, { 165.0, 0.359 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    g_assert_cmpfloat_with_epsilon (din_v (table[i][0], 2.0, 2.0), table[i][1], 5.1e-4);
}

/* Table book, worked: β 60°, a 16, b 21, r 6, s 5. It reads k = 0.7 off a chart: v 5.77, L about
 * 32; with k by the formula v is 5.823 and L 31.18. */
static void
test_din_worked (void)
{
  double v = din_v (60.0, 6.0, 5.0);

  g_assert_cmpfloat_with_epsilon (v, 5.77, 0.06);
  g_assert_cmpfloat_with_epsilon (v, 5.823, 5e-4);
  g_assert_cmpfloat_with_epsilon (16.0 + 21.0 - v, 31.18, 5e-3);
}

/* In the standard v can be of the other sign only for openings below 65°24′30″ (its English
 * summary sheet), however large the radius. */
static void
test_din_sign (void)
{
  const double limit_deg = 65.0 + 24.0 / 60.0 + 30.0 / 3600.0;

  for (double ratio = 6.0; ratio < 1e6; ratio *= 10.0)
    g_assert_cmpfloat (din_v (limit_deg + 1e-3, ratio, 1.0), >, 0.0);
  g_assert_cmpfloat (din_v (limit_deg - 1e-3, 1e6, 1.0), <, 0.0);
}

/* ---- Machinery's Handbook ------------------------------------------------------------------ */

static double
handbook_allowance (BfHandbookGroup group, double angle_deg, double radius, double thickness)
{
  BfAllowance handbook = { .rule = BF_ALLOWANCE_HANDBOOK, .group = group };
  double k = bf_allowance_k (&handbook, radius, thickness);

  return bf_bend_allowance_mm (bf_deg_to_rad (angle_deg), radius, thickness, k);
}

/* 31st ed., p. 1421: soft steel 0.125 in; a 180° bend of R 0.375 takes 1.338, a 60° bend of R
 * 0.625 takes 0.707, and with 3.5 of straight the part takes 5.545 in. */
static void
test_handbook_worked (void)
{
  double half_turn = handbook_allowance (BF_HANDBOOK_MEDIUM, 180.0, 0.375, 0.125);
  double third = handbook_allowance (BF_HANDBOOK_MEDIUM, 60.0, 0.625, 0.125);

  g_assert_cmpfloat_with_epsilon (half_turn, 1.338, 1e-3);
  g_assert_cmpfloat_with_epsilon (third, 0.707, 1e-3);
  g_assert_cmpfloat_with_epsilon (half_turn + third + 3.5, 5.545, 5e-4);
}

/* Its constants 0.55, 0.64 and 0.71 (p. 1421); samples of its soft steel table by the formula; K
 * that the constants amount to as R goes to 0, from the formula. */
static void
test_handbook_table (void)
{
  static const struct
  {
    BfHandbookGroup group;
    double radius_in, thickness_in, allowance_in, tolerance;
  } table[] = {
    { BF_HANDBOOK_MEDIUM, 1.0 / 32, 1.0 / 32, 0.069, 5e-4 },
    { BF_HANDBOOK_MEDIUM, 1.0 / 16, 1.0 / 16, 0.138, 5e-4 },
    { BF_HANDBOOK_MEDIUM, 1.0 / 8, 1.0 / 8, 0.276, 5e-4 },
    { BF_HANDBOOK_MEDIUM, 1.0 / 4, 1.0 / 16, 0.432, 6e-4 },
    { BF_HANDBOOK_SOFT, 1.0, 1.0, 0.55 + 1.57, EXACT },
    { BF_HANDBOOK_MEDIUM, 1.0, 1.0, 0.64 + 1.57, EXACT },
    { BF_HANDBOOK_HARD, 1.0, 1.0, 0.71 + 1.57, EXACT },
  };
  static const double k[] = { 0.350, 0.407, 0.452 };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      double r = table[i].radius_in * BF_MM_PER_INCH, t = table[i].thickness_in * BF_MM_PER_INCH;
      double found = handbook_allowance (table[i].group, 90.0, r, t) / BF_MM_PER_INCH;

      g_assert_cmpfloat_with_epsilon (found, table[i].allowance_in, table[i].tolerance);
    }
  for (int group = BF_HANDBOOK_SOFT; group <= BF_HANDBOOK_HARD; group++)
    {
      BfAllowance handbook = { .rule = BF_ALLOWANCE_HANDBOOK, .group = (BfHandbookGroup)group };
      g_assert_cmpfloat_with_epsilon (bf_allowance_k (&handbook, 0.0, 1.0), k[group], 5e-4);
    }
}

/* ---- which rule ---------------------------------------------------------------------------- */

static void
test_given_k (void)
{
  BfAllowance factor = { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.37 };
  BfAllowance trial = { .rule = BF_ALLOWANCE_TRIAL_BEND, .k = 0.44 };

  g_assert_cmpfloat_with_epsilon (bf_allowance_k (&factor, 3.0, 1.0), 0.37, EXACT);
  g_assert_cmpfloat_with_epsilon (bf_allowance_k (&trial, 3.0, 1.0), 0.44, EXACT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/allowance/bends", test_bends);
  g_test_add_func ("/allowance/channel", test_channel);
  g_test_add_func ("/allowance/straight-legs", test_straight_legs);
  g_test_add_func ("/allowance/setback/faa", test_faa_setback);
  g_test_add_func ("/allowance/setback/measure", test_measure);
  g_test_add_func ("/allowance/din-6935/k", test_din_k);
  g_test_add_func ("/allowance/din-6935/square", test_din_square);
  g_test_add_func ("/allowance/din-6935/angles", test_din_angles);
  g_test_add_func ("/allowance/din-6935/worked", test_din_worked);
  g_test_add_func ("/allowance/din-6935/sign", test_din_sign);
  g_test_add_func ("/allowance/handbook/worked", test_handbook_worked);
  g_test_add_func ("/allowance/handbook/table", test_handbook_table);
  g_test_add_func ("/allowance/given-k", test_given_k);
  return g_test_run ();
}
