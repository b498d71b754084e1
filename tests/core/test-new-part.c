/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* What a new part begins with, and the day that papers tell. */

#include "core/defaults.h"
#include "core/first-part.h"
#include "core/gauges.h"
#include "core/part-file.h"
#include "core/today.h"

/* Mild steel 1.5 mm and a 125 mm disc; by inches 16 gauge and a 4 1/2 in disc, and what people
 * there allow for cut and drill (common practice). */
static void
test_set_up (void)
{
  static const struct
  {
    BfUnits units;
    double thickness_mm, disc_mm, kerf_mm, slack_mm;
    BfDrillSet drills;
  } rows[] = {
    { BF_UNITS_MM, 1.5, 125.0, 1.3, 0.75, BF_DRILLS_METRIC },
    { BF_UNITS_IN, 1.51892, 114.3, 1.397, 0.79375, BF_DRILLS_FRACTION },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = bf_first_part (rows[i].units);

      g_assert_cmpint (part->units, ==, rows[i].units);
      g_assert_cmpint (part->measure, ==, BF_MEASURE_OUTSIDE);
      g_assert_cmpint (part->joining, ==, BF_JOINING_WELDED);
      g_assert_cmpint (part->cutting.by, ==, BF_CUTTING_DISC);
      g_assert_cmpint (part->cutting.drills, ==, rows[i].drills);
      g_assert_cmpfloat_with_epsilon (part->metal.thickness_mm, rows[i].thickness_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_part_disc_diameter_mm (part), rows[i].disc_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_part_kerf_mm (part), rows[i].kerf_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_part_slack_mm (part), rows[i].slack_mm, 1e-9);
      g_assert_true (isnan (part->metal.grain_deg));
    }
}

/* The thickness in inches is the 16 gauge of mild steel, as GNU units and printed tables have it.
 */
static void
test_gauge (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_IN);

  g_assert_cmpfloat_with_epsilon (part->metal.thickness_mm, bf_gauge_mm ("mild-steel", 16), 1e-9);
}

/* It is a part: its base is sound, and what is written of it reads back the same. */
static void
test_sound (void)
{
  static const BfUnits units[] = { BF_UNITS_MM, BF_UNITS_IN };

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      g_autoptr (BfPart) part = bf_first_part (units[i]), again = NULL;
      g_autoptr (GError) error = NULL;
      g_autofree char *text = bf_part_to_text (part), *second = NULL;

      g_assert_true (bf_part_check_outline (part, NULL));
      again = bf_part_from_text (text, -1, &error);
      g_assert_no_error (error);
      second = bf_part_to_text (again);
      g_assert_cmpstr (text, ==, second);
    }
}

/* What the program date calls the day, whatever the locale; tried again if midnight was between. */
static void
test_today (void)
{
  for (guint i = 0; i < 2; i++)
    {
      const char *argv[] = { "date", "+%Y-%m-%d", NULL };
      g_autofree char *told = NULL, *day = bf_today (), *after = NULL;
      g_autoptr (GError) error = NULL;

      g_spawn_sync (NULL, (char **)argv, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, &told, NULL, NULL,
                    &error);
      g_assert_no_error (error);
      after = bf_today ();
      if (!g_str_equal (day, after))
        continue;
      g_assert_cmpstr (day, ==, g_strchomp (told));
      return;
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/new-part/set-up", test_set_up);
  g_test_add_func ("/new-part/gauge", test_gauge);
  g_test_add_func ("/new-part/sound", test_sound);
  g_test_add_func ("/new-part/today", test_today);
  return g_test_run ();
}
