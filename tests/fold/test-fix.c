/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Fixes: what they say, what they do, and that every one that is offered cures its check. */

#include "fold/fix.h"

#include <string.h>

#include "core/part-file.h"
#include "core/tolerance.h"
#include "core/units.h"
#include "fold/fix-find.h"
#include "look-up.h"
#include "make-part.h"

/* With -m thorough many more. */
#define N_PARTS 50
#define N_THOROUGH 500

static BfFlange *
flange (BfPart *part, guint i)
{
  return g_ptr_array_index (part->flanges, i);
}

/* ---- steps -------------------------------------------------------------------------------- */

typedef struct
{
  double length_mm;
  BfUnits units;
  double up_mm, down_mm;
} Step;

static const Step steps[] = {
  { 10.14, BF_UNITS_MM, 10.2, 10.1 },
  { 10.2, BF_UNITS_MM, 10.2, 10.2 },
  { 0.1 + 0.2, BF_UNITS_MM, 0.3, 0.3 },
  { 0.0, BF_UNITS_MM, 0.0, 0.0 },
  { 12.0, BF_UNITS_IN, 31 * 25.4 / 64, 30 * 25.4 / 64 },
  { 25.4 * 3 / 8, BF_UNITS_IN, 25.4 * 3 / 8, 25.4 * 3 / 8 },
};

static void
test_steps (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      const Step *s = &steps[i];
      g_assert_cmpfloat_with_epsilon (bf_fix_round_up_mm (s->length_mm, s->units), s->up_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (bf_fix_round_down_mm (s->length_mm, s->units), s->down_mm,
                                      1e-9);
    }
}

/* ---- words -------------------------------------------------------------------------------- */

typedef struct
{
  BfFix fix;
  BfUnits units;
  const char *words;
} Words;

static const Words sayings[] = {
  { { BF_FIX_FLANGE_LENGTH, "front", 0, { 10.2, 0 } }, BF_UNITS_MM, "Make front 10.2 mm long" },
  { { BF_FIX_FLANGE_LENGTH, "lip 2", 0, { 9.525, 0 } }, BF_UNITS_IN, "Make lip 2 3/8 in long" },
  { { BF_FIX_INSETS, "front", 0, { 2, 3.5 } }, BF_UNITS_MM, "Inset front by 2 mm and 3.5 mm" },
  { { BF_FIX_INSETS, "front", 0, { 0, 0 } }, BF_UNITS_MM, "Run front along its whole edge" },
  { { BF_FIX_RADIUS, "front", 0, { 1.5, 0 } }, BF_UNITS_MM, "Make the radius of front 1.5 mm" },
  { { BF_FIX_RELIEF_SIZE, "base", 2, { 6.5, 0 } }, BF_UNITS_MM, "Make the relief 6.5 mm wide" },
  { { BF_FIX_RELIEF_ROUND, "base", 2, { 0, 0 } }, BF_UNITS_MM, "Add a round relief" },
  { { BF_FIX_JOIN_OPEN, "base", 2, { 0, 0 } }, BF_UNITS_MM, "Leave the corner open" },
  { { BF_FIX_FORGET_FINISH, "base", 2, { 0, 0 } }, BF_UNITS_MM, "Ask it no more" },
  { { BF_FIX_FORGET_JOIN, "base", 2, { 0, 0 } }, BF_UNITS_MM, "Ask it no more" },
  { { BF_FIX_OPENING_AT, NULL, 0, { 20, 30 } }, BF_UNITS_MM, "Move the opening" },
  { { BF_FIX_OPENING_SIZE, NULL, 0, { 5, 0 } }, BF_UNITS_MM, "Make the opening 5 mm wide" },
  { { BF_FIX_PLAN_SLOTS, "front", 0, { 0, 0 } }, BF_UNITS_MM, "Plan the slots of front" },
  { { BF_FIX_SCORE_LEFT, "front", 0, { 0.6, 0 } },
    BF_UNITS_MM,
    "Leave 0.6 mm at the score of front" },
  { { BF_FIX_LEVER, "front", 0, { 710, 0 } }, BF_UNITS_MM, "Bend front with a board of 710 mm" },
  { { BF_FIX_SHARE_METAL, "front", 1, { 0, 0 } }, BF_UNITS_MM, "Give each half of the metal" },
  { { BF_FIX_NONE, NULL, 0, { 0, 0 } }, BF_UNITS_MM, NULL },
};

static void
test_words (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (sayings); i++)
    {
      g_autofree char *words = bf_fix_words (&sayings[i].fix, sayings[i].units);
      g_assert_cmpstr (words, ==, sayings[i].words);
    }
}

/* ---- applying ----------------------------------------------------------------------------- */

/* A tray with a hole in its base. */
static BfPart *
tray_with_hole (void)
{
  BfPart *part = make_tray (200.0, 120.0, 40.0, 90.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

  hole->at_mm = bf_vec2 (50.0, 60.0);
  hole->diameter_mm = 8.0;
  g_ptr_array_add (part->openings, hole);
  return part;
}

static BfPart *
applied (const BfPart *part, BfFix fix)
{
  g_autoptr (GError) error = NULL;
  BfPart *fixed = bf_fix_apply (part, &fix, &error);

  g_assert_no_error (error);
  return fixed;
}

static void
test_apply_flange (void)
{
  g_autoptr (BfPart) part = tray_with_hole ();
  g_autoptr (BfPart) longer =
      applied (part, (BfFix){ BF_FIX_FLANGE_LENGTH, "f1", 0, { 44.0, 0.0 } });
  g_autoptr (BfPart) inset = applied (part, (BfFix){ BF_FIX_INSETS, "f1", 0, { 2.0, 3.0 } });
  g_autoptr (BfPart) wider = applied (part, (BfFix){ BF_FIX_RADIUS, "f1", 0, { 4.0, 0.0 } });

  g_autoptr (BfPart) shared = applied (part, (BfFix){ BF_FIX_SHARE_METAL, "f1", 3, { 0.0, 0.0 } });

  g_assert_true (bf_part_has_parted (shared, "f3", "f1"));
  g_assert_cmpfloat_with_epsilon (flange (longer, 1)->length_mm, 44.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (flange (longer, 0)->length_mm, 40.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (flange (inset, 1)->start_mm, 2.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (flange (inset, 1)->end_mm, 3.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (flange (wider, 1)->bend.inside_radius_mm, 4.0,
                                  BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (flange (part, 1)->length_mm, 40.0,
                                  BF_TOLERANCE_SIZE_MM); /* the old one is as it was */
}

static void
test_apply_corner (void)
{
  g_autoptr (BfPart) part = tray_with_hole ();
  g_autoptr (BfPart) round =
      applied (part, (BfFix){ BF_FIX_RELIEF_ROUND, "base", 2, { 0.0, 0.0 } });
  g_autoptr (BfPart) sized =
      applied (round, (BfFix){ BF_FIX_RELIEF_SIZE, "base", 2, { 7.0, 0.0 } });
  g_autoptr (BfPart) open = applied (sized, (BfFix){ BF_FIX_JOIN_OPEN, "base", 2, { 0.0, 0.0 } });
  const BfCorner *corner = bf_part_find_corner (open, "base", 2);

  g_assert_cmpuint (part->corners->len, ==, 0);
  g_assert_true (isnan (bf_part_find_corner (round, "base", 2)->relief_size_mm));
  g_assert_cmpuint (open->corners->len, ==, 1);
  g_assert_cmpint (corner->relief, ==, BF_RELIEF_ROUND);
  g_assert_cmpfloat_with_epsilon (corner->relief_size_mm, 7.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpint (corner->join, ==, BF_JOIN_OPEN);
}

static void
test_apply_opening (void)
{
  g_autoptr (BfPart) part = tray_with_hole ();
  g_autoptr (BfPart) moved = applied (part, (BfFix){ BF_FIX_OPENING_AT, NULL, 0, { 55.0, 66.0 } });
  g_autoptr (BfPart) smaller =
      applied (moved, (BfFix){ BF_FIX_OPENING_SIZE, NULL, 0, { 5.0, 0.0 } });
  const BfOpening *hole = g_ptr_array_index (smaller->openings, 0);

  g_assert_cmpfloat_with_epsilon (hole->at_mm.x, 55.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (hole->at_mm.y, 66.0, BF_TOLERANCE_SIZE_MM);
  g_assert_cmpfloat_with_epsilon (hole->diameter_mm, 5.0, BF_TOLERANCE_SIZE_MM);
}

/* What is refused, and why. */
static void
test_refused (void)
{
  static const struct
  {
    BfFix fix;
    BfFixError code;
  } cases[] = {
    { { BF_FIX_NONE, "f0", 0, { 1, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_FLANGE_LENGTH, "f9", 0, { 40, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_FORGET_JOIN, "base", 4, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_RELIEF_ROUND, "base", 4, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_SHARE_METAL, "f0", 4, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_SHARE_METAL, "f0", 0, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_SHARE_METAL, "f9", 0, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_RELIEF_ROUND, NULL, 0, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_OPENING_AT, NULL, 1, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
    { { BF_FIX_FLANGE_LENGTH, "f0", 0, { 0, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_FLANGE_LENGTH, "f0", 0, { NAN, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_FLANGE_LENGTH, "f0", 0, { 2e5, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_RADIUS, "f0", 0, { -1, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_INSETS, "f0", 0, { 0, INFINITY } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_RELIEF_SIZE, "base", 0, { 0, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_LEVER, "f0", 0, { 0, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_SCORE_LEFT, "f0", 0, { NAN, 0 } }, BF_FIX_ERROR_VALUE },
    { { BF_FIX_PLAN_SLOTS, "f9", 0, { 0, 0 } }, BF_FIX_ERROR_NOT_THERE },
  };
  g_autoptr (BfPart) part = tray_with_hole ();

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;
      g_assert_null (bf_fix_apply (part, &cases[i].fix, &error));
      g_assert_error (error, BF_FIX_ERROR, (int)cases[i].code);
    }
}

/* ---- every fix cures ------------------------------------------------------------------------ */

static double
between (GRand *rand, double from, double to)
{
  return g_rand_double_range (rand, from, to);
}

static void
spoil_flange (GRand *rand, BfFlange *flange)
{
  switch (g_rand_int_range (rand, 0, 5))
    {
    case 0:
      flange->length_mm = between (rand, 0.5, 8.0);
      break;
    case 1:
      flange->start_mm = between (rand, 0.0, 200.0);
      flange->end_mm = between (rand, 0.0, 200.0);
      break;
    case 2:
      flange->start_taper_deg = between (rand, 30.0, 75.0);
      flange->end_taper_deg = between (rand, 30.0, 75.0);
      break;
    case 3:
      flange->bend.inside_radius_mm = between (rand, 0.0, 0.4);
      break;
    default:
      break;
    }
}

/* A round hole or a slot close to the edges of some face. */
static void
add_opening (GRand *rand, BfPart *part, const char *on)
{
  gboolean round = g_rand_boolean (rand);
  BfOpening *opening = bf_opening_new (on, round ? BF_OPENING_ROUND : BF_OPENING_SLOT);
  gboolean base = g_str_equal (on, "base");

  opening->at_mm = base ? bf_vec2 (between (rand, -60.0, 60.0), between (rand, -60.0, 60.0))
                        : bf_vec2 (between (rand, 10.0, 90.0), between (rand, 4.0, 30.0));
  opening->diameter_mm = round ? between (rand, 3.0, 10.0) : NAN;
  opening->width_mm = round ? NAN : between (rand, 3.0, 6.0);
  opening->length_mm = round ? NAN : between (rand, 8.0, 20.0);
  opening->angle_deg = round ? NAN : between (rand, 0.0, 180.0);
  g_ptr_array_add (part->openings, opening);
}

/* A random part with faults put in, such as a slip of the finger makes. */
static BfPart *
make_spoilt (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 7000);
  BfPart *part = make_random (seed);

  part->units = g_rand_boolean (rand) ? BF_UNITS_MM : BF_UNITS_IN;
  part->cutting.drills = (BfDrillSet)g_rand_int_range (rand, 0, 3);
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    spoil_flange (rand, flange (part, i));
  for (guint at = 0; at < bf_part_n_points (part); at++)
    {
      BfCorner *corner = bf_corner_new ("base", at);
      corner->relief = (BfReliefShape)g_rand_int_range (rand, 0, 4);
      if (corner->relief != BF_RELIEF_NONE && g_rand_boolean (rand))
        corner->relief_size_mm = between (rand, 1.0, 6.0);
      g_ptr_array_add (part->corners, corner);
    }
  return part;
}

static guint
times_said (const BfFold *fold, const BfCheck *check)
{
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    n += g_str_equal (bf_fold_check (fold, i)->code, check->code) &&
                 g_str_equal (bf_fold_check (fold, i)->where, check->where)
             ? 1
             : 0;
  return n;
}

static void
assert_readable (const BfPart *part)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *text = bf_part_to_text (part);
  g_autoptr (BfPart) again = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  g_assert_nonnull (again);
}

/* The sentence asks for the length that the button gives. */
static void
assert_agree (const BfCheck *check, BfUnits units)
{
  g_autofree char *length = bf_format_length (check->fix.value[0], units);

  if (g_str_equal (check->code, "flange-too-short"))
    g_assert_nonnull (strstr (check->message, length));
}

static void
assert_cures (guint seed, const BfFold *fold, const BfCheck *check)
{
  BfFix fix = bf_fix_find (fold, check);
  g_autoptr (BfPart) fixed = applied (fold->asked, fix);
  g_autoptr (BfFold) after = bf_fold (fixed);
  g_autofree char *words = bf_fix_words (&fix, fixed->units);

  g_test_message ("seed %u: %s %s (%s): %s", seed, check->code, check->where, check->message,
                  words);
  g_assert_cmpuint (strlen (words), >, 8);
  g_assert_cmpuint (times_said (after, check), <, times_said (fold, check));
  assert_agree (check, fixed->units);
  assert_readable (fixed);
}

/* Counts checks of a code, and how many of them carry a fix. */
static void
count (GHashTable *seen, const BfCheck *check, gboolean has_fix)
{
  guint n = GPOINTER_TO_UINT (g_hash_table_lookup (seen, check->code));

  n += has_fix ? 0x10001 : 1;
  g_hash_table_insert (seen, (gpointer)check->code, GUINT_TO_POINTER (n));
}

static void
assert_seen (GHashTable *seen, const char *code, guint at_least)
{
  guint n = GPOINTER_TO_UINT (g_hash_table_lookup (seen, code));

  g_test_message ("%s: %u, %u with a fix", code, n & 0xffff, n >> 16);
  g_assert_cmpuint (n >> 16, >=, at_least);
}

/* A random part that is sound but for its openings. */
static BfPart *
make_holed (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 9000);
  BfPart *part = make_random (seed);

  part->units = g_rand_boolean (rand) ? BF_UNITS_MM : BF_UNITS_IN;
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    add_opening (rand, part, g_rand_boolean (rand) ? "base" : flange (part, i)->id);
  return part;
}

static gboolean
is_made (const BfFold *fold, const BfCheck *check)
{
  return bf_part_find_flange (fold->asked, check->where) == NULL &&
         bf_part_find_flange (fold->part, check->where) != NULL;
}

/* Tries every fix of the parts. Returns how many checks are of flanges that nobody drew. */
static guint
try_fixes (BfPart *(*make) (guint), GHashTable *seen)
{
  guint n_parts = g_test_thorough () ? N_THOROUGH : N_PARTS, n_made = 0;

  for (guint seed = 0; seed < n_parts; seed++)
    {
      g_autoptr (BfPart) part = make (seed);
      g_autoptr (BfFold) fold = bf_fold (part);

      for (guint i = 0; i < fold->checks->len; i++)
        {
          const BfCheck *check = bf_fold_check (fold, i);
          gboolean has_fix = bf_fix_find (fold, check).kind != BF_FIX_NONE;

          count (seen, check, has_fix);
          if (has_fix)
            assert_cures (seed, fold, check);
          if (!is_made (fold, check))
            continue;
          g_assert_false (has_fix);
          n_made++;
        }
    }
  return n_made;
}

static void
test_flange_fixes_cure (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  try_fixes (make_spoilt, seen);
  assert_seen (seen, "flange-too-short", 20);
  assert_seen (seen, "flange-off-edge", 20);
  assert_seen (seen, "flange-too-narrow", 8);
  assert_seen (seen, "radius-too-tight", 20);
  assert_seen (seen, "relief-too-small", 20);
  assert_seen (seen, "relief-missing", 20);
}

static void
test_opening_fixes_cure (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  try_fixes (make_holed, seen);
  assert_seen (seen, "opening-near-bend", 15);
  assert_seen (seen, "opening-near-edge", 2);
}

/* Walls all round that tabs are riveted to, too tight and too thick here and there. */
static BfPart *
make_tabbed (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed + 11000);
  BfPart *part = make_ring ((guint)g_rand_int_range (rand, 4, 9), between (rand, 60.0, 120.0),
                            between (rand, 25.0, 60.0), 90.0);

  part->joining = BF_JOINING_RIVETED;
  part->metal.thickness_mm = between (rand, 0.8, 3.0);
  part->bend.inside_radius_mm = between (rand, 0.0, 3.0);
  spoil_flange (rand, flange (part, 2));
  add_opening (rand, part, flange (part, 0)->id);
  ((BfOpening *)g_ptr_array_index (part->openings, 0))->at_mm.y = between (rand, 6.0, 14.0);
  return part;
}

/* A tab and its holes are nobody's to change: what is wrong with them has no fix of its own. */
static void
test_tabs_have_none (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  g_assert_cmpuint (try_fixes (make_tabbed, seen), >=, 20);
  assert_seen (seen, "opening-near-bend", 5);
}

/* A corner of lips is asked for on the wall that they hang on, not on the base. */
static void
test_corner_of_flange (void)
{
  static const struct
  {
    BfReliefShape relief;
    double size_mm;
    const char *code;
  } cases[] = { { BF_RELIEF_NONE, NAN, "relief-missing" },
                { BF_RELIEF_ROUND, 1.0, "relief-too-small" },
                { BF_RELIEF_SQUARE, 1.0, "relief-too-small" } };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;
      BfCorner *corner = bf_corner_new ("front", 1);

      add_flange (part, "front", 0, 40.0, 90.0);
      add_lip (part, "lip", "front", 15.0, 90.0);
      add_ear (part, "ear", "front", BF_EDGE_END, 15.0);
      corner->relief = cases[i].relief;
      corner->relief_size_mm = cases[i].size_mm;
      g_ptr_array_add (part->corners, corner);
      fold = bf_fold (part);
      check = find_check (fold, cases[i].code, "front:1");
      g_assert_nonnull (check);
      g_assert_cmpstr (check->fix.id, ==, "front");
      g_assert_cmpuint (check->fix.at, ==, 1);
      assert_cures (i, fold, check);
    }
}

/* ---- what is offered ------------------------------------------------------------------------ */

/* 1 of flat where 3 are sound: 2 more; and said so. */
static void
test_short_flat (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  const BfCheck *check;

  add_flange (part, "front", 0, 4.0, 90.0);
  fold = bf_fold (part);
  check = find_check (fold, "flange-too-short", "front");
  g_assert_cmpint (check->fix.kind, ==, BF_FIX_FLANGE_LENGTH);
  g_assert_cmpfloat_with_epsilon (check->fix.value[0], 6.0, 1e-9);
}

/* √2 · 3.3458 + 1.5 is 6.23: the next drill is 6.5 mm, or 1/4 in (6.35). A table cuts what is
 * asked, to a tenth: its relief needs no slack, 4.73. */
static void
test_next_drill (void)
{
  static const struct
  {
    BfCuttingWay by;
    BfDrillSet drills;
    double size_mm;
  } cases[] = {
    { BF_CUTTING_DISC, BF_DRILLS_METRIC, 6.5 },
    { BF_CUTTING_DISC, BF_DRILLS_FRACTION, 6.35 },
    { BF_CUTTING_TABLE, BF_DRILLS_METRIC, 4.8 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;
      BfCorner *corner = bf_corner_new ("base", 2);

      corner->relief = BF_RELIEF_ROUND;
      corner->relief_size_mm = 3.0;
      g_ptr_array_add (part->corners, corner);
      part->cutting.by = cases[i].by;
      part->cutting.drills = cases[i].drills;
      fold = bf_fold (part);
      g_assert_cmpfloat_with_epsilon (find_check (fold, "relief-too-small", "base:2")->fix.value[0],
                                      cases[i].size_mm, 1e-9);
    }
}

/* Two flanges on one edge: which of them should give way is for the person to say. */
static void
test_shared_edge (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "a", 0, 40.0, 90.0)->end_mm = 120.0;
  add_flange (part, "b", 0, 40.0, 90.0)->start_mm = 199.5;
  fold = bf_fold (part);
  g_assert_cmpint (find_check (fold, "flange-off-edge", "b")->fix.kind, ==, BF_FIX_NONE);
}

/* A hole of 6 whose edge is 1 from the bend's tangent (3 in from the edge) goes 2 further in, so
 * that its edge is twice the thickness away. */
static void
test_opening_moves (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);
  BfFix fix;

  add_flange (part, "front", 0, 40.0, 90.0);
  hole->at_mm = bf_vec2 (50.0, 7.0);
  hole->diameter_mm = 6.0;
  g_ptr_array_add (part->openings, hole);
  fold = bf_fold (part);
  fix = bf_fix_find (fold, find_check (fold, "opening-near-bend", "base"));
  g_assert_cmpint (fix.kind, ==, BF_FIX_OPENING_AT);
  g_assert_cmpfloat_with_epsilon (fix.value[0], 50.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (fix.value[1], 9.0, 1e-9);
}

/* ---- bends --------------------------------------------------------------------------------- */

/* A fault of one bend, the fix that is offered, and a way of making the part so that there is none.
 */
static const struct
{
  BfBendWay way;
  double slot_mm, bridge_mm, score_mm, limit_n;
  const char *code;
  BfFixKind fix;
} bend_faults[] = {
  { BF_BEND_WAY_SLOTS, 50.0, 9.0, NAN, 2000.0, "bridge-too-small", BF_FIX_PLAN_SLOTS },
  { BF_BEND_WAY_SLOTS, 50.0, 10.0, NAN, 2000.0, NULL, BF_FIX_NONE },
  { BF_BEND_WAY_SLOTS, 150.0, 12.0, NAN, 2000.0, "slot-not-cuttable", BF_FIX_PLAN_SLOTS },
  { BF_BEND_WAY_SLOTS, 10.0, 12.0, NAN, 2000.0, "slot-not-cuttable", BF_FIX_PLAN_SLOTS },
  { BF_BEND_WAY_SLOTS, NAN, NAN, NAN, 40.0, "force-too-high", BF_FIX_LEVER },
  { BF_BEND_WAY_SLOTS, NAN, NAN, NAN, 1.0, "force-too-high", BF_FIX_NONE }, /* too long a board */
  { BF_BEND_WAY_BAR, NAN, NAN, NAN, 100.0, "force-too-high", BF_FIX_LEVER },
  { BF_BEND_WAY_BRAKE, NAN, NAN, NAN, 1.0, NULL, BF_FIX_NONE },
  { BF_BEND_WAY_SCORE, NAN, NAN, 1.5, NAN, "score-too-shallow", BF_FIX_SCORE_LEFT },
  { BF_BEND_WAY_SCORE, NAN, NAN, 1.4, 2000.0, NULL, BF_FIX_NONE },
};

static BfPart *
make_bend_fault (guint i)
{
  BfPart *part = make_rectangle (250.0, 80.0);

  add_flange (part, "front", 0, 55.0, 90.0);
  add_flange (part, "back", 2, 55.0, 90.0)->bend.way = BF_BEND_WAY_BRAKE;
  part->bend.way = bend_faults[i].way;
  part->bend.slot_mm = bend_faults[i].slot_mm;
  part->bend.bridge_mm = bend_faults[i].bridge_mm;
  part->bend.score_left_mm = bend_faults[i].score_mm;
  part->bend.hand_limit_n = bend_faults[i].limit_n;
  return part;
}

static gboolean
is_of_bend (const BfCheck *check)
{
  static const char *const codes[] = { "bridge-too-small", "slot-not-cuttable", "force-too-high",
                                       "score-too-shallow" };

  for (guint i = 0; i < G_N_ELEMENTS (codes); i++)
    if (g_str_equal (codes[i], check->code))
      return TRUE;
  return FALSE;
}

static void
test_bend_fixes (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (bend_faults); i++)
    {
      g_autoptr (BfPart) part = make_bend_fault (i);
      g_autoptr (BfFold) fold = bf_fold (part);
      const char *code = bend_faults[i].code;
      const BfCheck *check = code == NULL ? NULL : find_check (fold, code, "front");

      for (guint k = 0; code == NULL && k < fold->checks->len; k++)
        g_assert_false (is_of_bend (bf_fold_check (fold, k)));
      if (code == NULL)
        continue;
      g_assert_nonnull (check);
      g_assert_cmpint (check->fix.kind, ==, bend_faults[i].fix);
      if (check->fix.kind != BF_FIX_NONE)
        assert_cures (i, fold, check);
    }
}

/* Slots that the part gives stay with the flanges that were not asked about. */
static void
test_plan_slots (void)
{
  g_autoptr (BfPart) part = make_bend_fault (0);
  g_autoptr (BfPart) planned = NULL;

  flange (part, 1)->bend.bridge_mm = 20.0;
  planned = applied (part, (BfFix){ BF_FIX_PLAN_SLOTS, "front", 0, { 0, 0 } });
  g_assert_true (isnan (planned->bend.slot_mm) && isnan (planned->bend.bridge_mm));
  g_assert_true (isnan (flange (planned, 0)->bend.slot_mm));
  g_assert_true (isnan (flange (planned, 0)->bend.bridge_mm));
  g_assert_cmpfloat_with_epsilon (flange (planned, 1)->bend.slot_mm, 50.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (flange (planned, 1)->bend.bridge_mm, 20.0, 1e-12);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/fix/steps", test_steps);
  g_test_add_func ("/fix/words", test_words);
  g_test_add_func ("/fix/apply/flange", test_apply_flange);
  g_test_add_func ("/fix/apply/corner", test_apply_corner);
  g_test_add_func ("/fix/apply/opening", test_apply_opening);
  g_test_add_func ("/fix/refused", test_refused);
  g_test_add_func ("/fix/flange-fixes-cure", test_flange_fixes_cure);
  g_test_add_func ("/fix/opening-fixes-cure", test_opening_fixes_cure);
  g_test_add_func ("/fix/tabs-have-none", test_tabs_have_none);
  g_test_add_func ("/fix/corner-of-flange", test_corner_of_flange);
  g_test_add_func ("/fix/short-flat", test_short_flat);
  g_test_add_func ("/fix/next-drill", test_next_drill);
  g_test_add_func ("/fix/opening-moves", test_opening_moves);
  g_test_add_func ("/fix/bend-fixes", test_bend_fixes);
  g_test_add_func ("/fix/plan-slots", test_plan_slots);
  g_test_add_func ("/fix/shared-edge", test_shared_edge);
  return g_test_run ();
}
