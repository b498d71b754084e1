/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/defaults.h"
#include "core/drills.h"
#include "core/edit.h"
#include "core/first-part.h"
#include "core/part-file.h"

/* Each edit changes its one thing, leaves the part it was given as it was, comes out of a file as
 * it went in, and goes back to what the way brings. */
static BfPart *
reread (BfPart *part)
{
  g_autoptr (BfPart) owned = part;
  g_autofree char *text = bf_part_to_text (owned);
  g_autoptr (GError) error = NULL;
  BfPart *read = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return read;
}

static void
test_cutting (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  g_autofree char *before = bf_part_to_text (part), *after = NULL;
  g_autoptr (BfPart) kerf = reread (bf_edit_kerf (part, 2.25));
  g_autoptr (BfPart) slack = reread (bf_edit_slack (part, 0.0));
  g_autoptr (BfPart) back = bf_edit_kerf (kerf, NAN);

  g_assert_cmpfloat_with_epsilon (bf_part_kerf_mm (kerf), 2.25, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_part_slack_mm (slack), 0.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_part_kerf_mm (back), bf_default_kerf_mm (BF_CUTTING_DISC),
                                  1e-12);
  after = bf_part_to_text (part);
  g_assert_cmpstr (after, ==, before);
}

static void
test_drills (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  g_autoptr (GArray) sizes = bf_drills_parse ("4..20+2", BF_UNITS_MM, NULL);
  g_autoptr (BfPart) list = reread (bf_edit_drills (part, BF_DRILLS_LIST, sizes));
  g_autoptr (BfPart) plain = reread (bf_edit_drills (list, BF_DRILLS_NUMBER, NULL));

  g_assert_cmpfloat_with_epsilon (bf_drill_next_up (list, 6.5, NULL), 8.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (bf_drill_next_up (plain, 6.5, NULL), 6.5278, 1e-12);
  g_assert_null (plain->cutting.drill_list_mm);
}

static void
test_bending (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  BfAllowance soft = { .rule = BF_ALLOWANCE_HANDBOOK, .k = NAN, .group = BF_HANDBOOK_SOFT };
  BfAllowance none = { .rule = BF_ALLOWANCE_UNSET, .k = NAN };
  g_autoptr (BfPart) radius = reread (bf_edit_bend_radius (part, 3.0));
  g_autoptr (BfPart) book = reread (bf_edit_allowance (part, &soft));
  g_autoptr (BfPart) back = bf_edit_allowance (book, &none);
  g_autoptr (BfPart) hand = reread (bf_edit_hand (part, 120.0, NAN));
  g_autoptr (BfPart) slots = reread (bf_edit_slots (part, 50.0, 12.0));
  g_autoptr (BfPart) grain = reread (bf_edit_grain (part, 90.0));
  g_autoptr (BfPart) unknown = reread (bf_edit_grain (grain, NAN));
  g_autoptr (BfPart) score = reread (bf_edit_score_left (part, 0.7));

  g_assert_cmpfloat_with_epsilon (bf_part_resolve_bend (radius, NULL).inside_radius_mm, 3.0, 1e-12);
  g_assert_cmpint (bf_part_resolve_bend (book, NULL).allowance.rule, ==, BF_ALLOWANCE_HANDBOOK);
  g_assert_cmpint (book->bend.allowance.group, ==, BF_HANDBOOK_SOFT);
  g_assert_cmpfloat_with_epsilon (bf_part_resolve_bend (back, NULL).allowance.k, 0.42, 1e-12);
  g_assert_cmpfloat_with_epsilon (hand->bend.hand_limit_n, 120.0, 1e-12);
  g_assert_true (isnan (hand->bend.hand_lever_mm));
  g_assert_cmpfloat_with_epsilon (slots->bend.slot_mm, 50.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (score->bend.score_left_mm, 0.7, 1e-12);
  g_assert_cmpfloat_with_epsilon (grain->metal.grain_deg, 90.0, 1e-12);
  g_assert_true (isnan (unknown->metal.grain_deg));
  g_assert_cmpfloat_with_epsilon (slots->bend.bridge_mm, 12.0, 1e-12);
}

/* What sizes of a finished part corrected holds for as long as the bends are those. */
static void
test_corrected_goes (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  BfAllowance own = { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.4 };
  BfPart *others[] = { NULL, NULL, NULL, NULL, NULL };
  g_autoptr (BfPart) pushed = NULL;

  part->bend.corrected = "2026-01-31";
  others[0] = bf_edit_bend_radius (part, 2.0);
  others[1] = bf_edit_allowance (part, &own);
  others[2] = bf_edit_bend_way (part, BF_BEND_WAY_SLOTS);
  others[3] = bf_edit_thickness (part, 2.0);
  others[4] = bf_edit_material (part, "zinc");
  pushed = bf_edit_hand (part, 120.0, NAN);
  g_assert_cmpstr (pushed->bend.corrected, ==, "2026-01-31");
  for (guint i = 0; i < G_N_ELEMENTS (others); i++)
    {
      g_assert_null (others[i]->bend.corrected);
      bf_part_unref (others[i]);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-details/cutting", test_cutting);
  g_test_add_func ("/edit-details/drills", test_drills);
  g_test_add_func ("/edit-details/corrected-goes", test_corrected_goes);
  g_test_add_func ("/edit-details/bending", test_bending);
  return g_test_run ();
}
