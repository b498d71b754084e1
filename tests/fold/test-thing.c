/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/first-part.h"
#include "core/thing.h"
#include "core/units.h"
#include "fold/fold.h"

/* Things to start from: what comes out has the sizes asked for, and can be made. */

static BfPart *
make (BfThing thing, const BfThingSizes *sizes, BfUnits units)
{
  g_autoptr (BfPart) setup = bf_first_part (units);
  return bf_thing_make (thing, sizes, setup, "Thing");
}

/* The formed box has the outside sizes; a shelf's lip hangs below its floor. */
static void
test_outside_sizes (void)
{
  for (BfThing thing = BF_THING_TRAY; thing < BF_N_THINGS; thing++)
    {
      BfThingSizes sizes;
      bf_thing_sizes_init (&sizes, thing, BF_UNITS_MM);
      g_autoptr (BfPart) part = make (thing, &sizes, BF_UNITS_MM);
      g_autoptr (BfFold) fold = bf_fold (part);
      BfVec3 size = bf_vec3_sub (fold->formed.max, fold->formed.min);

      g_assert_cmpfloat_with_epsilon (size.x, sizes.size_mm[BF_THING_LENGTH], 1e-6);
      g_assert_cmpfloat_with_epsilon (size.y, sizes.size_mm[BF_THING_WIDTH], 1e-6);
      if (thing != BF_THING_SHELF)
        g_assert_cmpfloat_with_epsilon (size.z, sizes.size_mm[BF_THING_HEIGHT], 1e-6);
    }
}

static void
test_nothing_must_be_fixed (void)
{
  for (BfThing thing = BF_THING_TRAY; thing < BF_N_THINGS; thing++)
    for (BfUnits units = BF_UNITS_MM; units <= BF_UNITS_IN; units++)
      {
        BfThingSizes sizes;
        bf_thing_sizes_init (&sizes, thing, units);
        g_autoptr (BfPart) part = make (thing, &sizes, units);
        g_autoptr (BfFold) fold = bf_fold (part);
        g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
      }
}

static void
test_first_sizes_read_round (void)
{
  for (BfThing thing = BF_THING_TRAY; thing < BF_N_THINGS; thing++)
    {
      BfThingSizes sizes;
      bf_thing_sizes_init (&sizes, thing, BF_UNITS_IN);
      for (guint i = 0; i < BF_N_THING_SIZES; i++)
        {
          double quarters = sizes.size_mm[i] / BF_MM_PER_INCH * 4.0;
          g_assert_cmpfloat_with_epsilon (quarters, round (quarters), 1e-9);
          g_assert_cmpfloat (quarters, >=, 1.0);
        }
    }
}

typedef struct
{
  BfThing thing;
  BfThingSize which;
  BfSizeKind kind;
  double shown_mm; /* of the first size, at 1.5 mm of metal */
} KindCase;

/* By hand: two walls of 1.5 mm across, one floor of 1.5 mm below, 1 mm of play. */
static const KindCase kind_cases[] = {
  { BF_THING_TRAY, BF_THING_LENGTH, BF_SIZE_INSIDE, 197.0 },
  { BF_THING_TRAY, BF_THING_WIDTH, BF_SIZE_MUST_HOLD, 116.0 },
  { BF_THING_TRAY, BF_THING_HEIGHT, BF_SIZE_INSIDE, 38.5 },
  { BF_THING_BRACKET, BF_THING_WIDTH, BF_SIZE_INSIDE, 78.5 },
  { BF_THING_CHANNEL, BF_THING_WIDTH, BF_SIZE_INSIDE, 37.0 },
  { BF_THING_CHANNEL, BF_THING_LENGTH, BF_SIZE_INSIDE, 240.0 },
  { BF_THING_BOX, BF_THING_HEIGHT, BF_SIZE_INSIDE, 57.0 },
};

static void
test_kinds_change_the_number (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (kind_cases); i++)
    {
      const KindCase *c = &kind_cases[i];
      BfThingSizes sizes;
      bf_thing_sizes_init (&sizes, c->thing, BF_UNITS_MM);
      bf_thing_set_kind (c->thing, &sizes, c->which, c->kind, 1.5);
      g_assert_cmpfloat_with_epsilon (sizes.size_mm[c->which], c->shown_mm, 1e-9);
    }
}

static void
test_kinds_leave_the_metal (void)
{
  BfThingSizes sizes;
  bf_thing_sizes_init (&sizes, BF_THING_TRAY, BF_UNITS_MM);
  for (guint i = 0; i < BF_N_THING_SIZES; i++)
    bf_thing_set_kind (BF_THING_TRAY, &sizes, (BfThingSize)i, (BfSizeKind)i, 1.5);
  g_autoptr (BfPart) part = make (BF_THING_TRAY, &sizes, BF_UNITS_MM);
  BfVec2 far = bf_part_point (part, 2);

  g_assert_cmpfloat_with_epsilon (far.x, 200.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (far.y, 120.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (bf_part_flange (part, 0)->length_mm, 40.0, 1e-9);
}

static void
test_too_small_is_nothing (void)
{
  BfThingSizes sizes;
  bf_thing_sizes_init (&sizes, BF_THING_TRAY, BF_UNITS_MM);
  sizes.size_mm[BF_THING_WIDTH] = 4.0;
  g_assert_null (make (BF_THING_TRAY, &sizes, BF_UNITS_MM));
}

static void
test_set_up_is_kept (void)
{
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_IN);
  BfThingSizes sizes;
  setup->joining = BF_JOINING_RIVETED;
  bf_thing_sizes_init (&sizes, BF_THING_CHANNEL, BF_UNITS_IN);
  g_autoptr (BfPart) part = bf_thing_make (BF_THING_CHANNEL, &sizes, setup, "Rail");

  g_assert_cmpint (part->joining, ==, BF_JOINING_RIVETED);
  g_assert_cmpint (part->units, ==, BF_UNITS_IN);
  g_assert_cmpfloat_with_epsilon (part->metal.thickness_mm, 0.0598 * 25.4, 1e-12);
  g_assert_cmpstr (part->name, ==, "Rail");
  g_assert_cmpuint (bf_part_n_flanges (part), ==, 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/thing/outside-sizes", test_outside_sizes);
  g_test_add_func ("/thing/nothing-must-be-fixed", test_nothing_must_be_fixed);
  g_test_add_func ("/thing/first-sizes-read-round", test_first_sizes_read_round);
  g_test_add_func ("/thing/kinds-change-the-number", test_kinds_change_the_number);
  g_test_add_func ("/thing/kinds-leave-the-metal", test_kinds_leave_the_metal);
  g_test_add_func ("/thing/too-small-is-nothing", test_too_small_is_nothing);
  g_test_add_func ("/thing/set-up-is-kept", test_set_up_is_kept);
  return g_test_run ();
}
