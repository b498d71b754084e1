/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

#include "fold/bend-force.h"

#define INCH_MM 25.4
#define KSI_MPA 6.894757293168361

static BfMaterial
metal (double yield_mpa, double tensile_mpa, double elastic_gpa)
{
  return (BfMaterial){
    .id = "x", .yield_mpa = yield_mpa, .tensile_mpa = tensile_mpa, .elastic_gpa = elastic_gpa
  };
}

/* Standard plastic analysis, Mp = Y b t²/4, by hand. */
static void
test_moment (void)
{
  g_assert_cmpfloat_with_epsilon (bf_bend_moment_nm (280.0, 100.0, 1.0), 7.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_bend_moment_nm (235.0, 150.0, 1.5), 19.83, 5e-3);
  g_assert_cmpfloat_with_epsilon (bf_bend_moment_nm (280.0, 200.0, 1.5), 31.5, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_bend_width_mm (280.0, 1.5, 315.0, 100.0), 200.0, 1e-9);
}

/* The problem set's 20 gauge strip after Kalpakjian & Schmid: T 0.0359 in, Ri 0.5 in, Y 40 ksi,
 * E 29e6 psi gives Rf 0.5306 in, and 95.31° to end at 90°. The rest: the same formula worked by
 * hand with a calculator. */
static void
test_springback (void)
{
  static const struct
  {
    double radius, thickness, yield, elastic, sprung, bent_deg;
  } rows[] = {
    { 0.5 * INCH_MM, 0.0359 * INCH_MM, 40 * KSI_MPA, 29e3 * KSI_MPA * 1e-3, 0.5306 * INCH_MM,
      95.31 },
    { 3.0, 1.5, 200.0, 210.0, 3.0172, 90.41 },
    { 3.0, 1.5, 285.0, 200.0, 3.0259, 90.62 },
    { 3.0, 1.5, 193.0, 70.3, 3.0502, 91.21 },
    { 6.0, 2.0, 276.0, 68.9, 6.2244, 92.88 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfMaterial material = metal (rows[i].yield, 400.0, rows[i].elastic);
      double sprung =
          bf_sprung_radius_mm (rows[i].radius, rows[i].thickness, rows[i].yield, rows[i].elastic);
      double over = bf_overbend_rad (&material, G_PI_2, rows[i].radius, rows[i].thickness);

      g_test_message ("row %u", i);
      g_assert_cmpfloat_with_epsilon (sprung, rows[i].sprung, rows[i].sprung * 1e-4);
      g_assert_cmpfloat_with_epsilon (90.0 + bf_rad_to_deg (over), rows[i].bent_deg, 5.1e-3);
    }
}

/* Where x is large the cube counts: by hand, R 50, t 1, Y 350, E 70 GPa: x = 1/4, and Ri/Rf = 4/64
 * − 3/4 + 1 = 0.3125. */
static void
test_springs_back_far (void)
{
  g_assert_cmpfloat_with_epsilon (bf_sprung_radius_mm (50.0, 1.0, 350.0, 70.0), 160.0, 1e-9);
}

static void
test_springs_back_whole (void)
{
  BfMaterial spring = metal (1000.0, 1200.0, 70.0);

  g_assert_true (isnan (bf_sprung_radius_mm (60.0, 1.0, 1000.0, 70.0)));
  g_assert_true (isnan (bf_overbend_rad (&spring, G_PI_2, 60.0, 1.0)));
  g_assert_cmpfloat_with_epsilon (bf_overbend_rad (&spring, G_PI, 0.0, 1.0), 0.0, 1e-12);
}

/* Groover, Fundamentals of Modern Manufacturing, worked example (from memory): TS 450 MPa, width
 * 44.5, t 3.2, die opening 25 mm gives 10 909 N. The forming handbook's case in its simple form
 * (Rm 310, s 1, w 10, l 100): 4123 N. */
static void
test_brake_force (void)
{
  g_assert_cmpfloat_with_epsilon (bf_brake_force_n (450.0, 44.5, 3.2, 25.0), 10909.0, 0.5);
  g_assert_cmpfloat_with_epsilon (bf_brake_force_n (310.0, 100.0, 1.0, 10.0), 4123.0, 0.5);
}

static void
test_lever_and_limit (void)
{
  BfBend bend = { .way = BF_BEND_WAY_SLOTS, .hand_limit_n = NAN, .hand_lever_mm = NAN };

  g_assert_cmpfloat_with_epsilon (bf_bend_lever_mm (&bend, 80.0), 65.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_bend_lever_mm (&bend, 30.0), 25.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_bend_limit_n (&bend), 200.0, 1e-12);
  bend.way = BF_BEND_WAY_BAR;
  g_assert_cmpfloat_with_epsilon (bf_bend_lever_mm (&bend, 80.0), 300.0, 1e-12);
  bend.hand_lever_mm = 450.0;
  bend.hand_limit_n = 120.0;
  g_assert_cmpfloat_with_epsilon (bf_bend_lever_mm (&bend, 80.0), 450.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_bend_limit_n (&bend), 120.0, 1e-12);
  bend.way = BF_BEND_WAY_BRAKE;
  g_assert_true (isnan (bf_bend_lever_mm (&bend, 80.0)));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fold/bend-force/moment", test_moment);
  g_test_add_func ("/fold/bend-force/springback", test_springback);
  g_test_add_func ("/fold/bend-force/springs-back-whole", test_springs_back_whole);
  g_test_add_func ("/fold/bend-force/springs-back-far", test_springs_back_far);
  g_test_add_func ("/fold/bend-force/brake-force", test_brake_force);
  g_test_add_func ("/fold/bend-force/lever-and-limit", test_lever_and_limit);
  return g_test_run ();
}
