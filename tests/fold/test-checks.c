/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Every check, called up by a part that has just that fault, with what was found and what is
 * needed. */

#include "look-up.h"
#include "make-part.h"

#define HAND_MM 1e-6

/* One fault: a part that has it, and what the check should say. NAN: no number. */
typedef struct
{
  const char *path;
  BfPart *(*make) (void);
  const char *code, *where;
  BfSeverity severity;
  double found, needed;
} Fault;

static BfFlange *
flange (BfPart *part, guint i)
{
  return g_ptr_array_index (part->flanges, i);
}

static BfPart *
one_wall (double length_mm, double angle_deg)
{
  BfPart *part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, length_mm, angle_deg);
  return part;
}

/* ---- flanges ------------------------------------------------------------------------------- */

/* 200 − 99.5 − 100 leaves 0.5 of bend; the metal is 1.5 thick. */
static BfPart *
insets_eat_edge (void)
{
  BfPart *part = one_wall (40.0, 90.0);

  flange (part, 0)->start_mm = 99.5;
  flange (part, 0)->end_mm = 100.0;
  return part;
}

static BfPart *
on_no_edge (void)
{
  BfPart *part = one_wall (40.0, 90.0);

  flange (part, 0)->edge_index = 4;
  return part;
}

/* A setback of 3 off a length of 2.5. */
static BfPart *
shorter_than_bend (void)
{
  return one_wall (2.5, 90.0);
}

/* Both bends take 3 of 5.5. */
static BfPart *
no_strip_between_bends (void)
{
  BfPart *part = one_wall (5.5, 90.0);

  add_lip (part, "lip", "front", 20.0, 90.0);
  return part;
}

/* 1 of flat where twice the thickness is sound. */
static BfPart *
short_flat (void)
{
  return one_wall (4.0, 90.0);
}

/* An edge of 20 less 20 on each side at 45°, over 27 of flat: −34. */
static BfPart *
sides_cross (void)
{
  const BfVec2 outline[] = { { 0, 0 }, { 20, 0 }, { 20, 120 }, { 0, 120 } };
  BfPart *part = make_part (outline, G_N_ELEMENTS (outline));
  BfFlange *front = add_flange (part, "front", 0, 30.0, 90.0);

  front->start_taper_deg = 45.0;
  front->end_taper_deg = 45.0;
  return part;
}

/* Mild steel takes half its thickness. */
static BfPart *
tight_radius (void)
{
  BfPart *part = one_wall (40.0, 90.0);

  part->bend.inside_radius_mm = 0.5;
  return part;
}

/* ---- the blank ----------------------------------------------------------------------------- */

static BfPart *
crossing_base (void)
{
  const BfVec2 outline[] = { { 0, 0 }, { 200, 0 }, { 200, 100 }, { 100, -20 }, { 0, 100 } };
  return make_part (outline, G_N_ELEMENTS (outline));
}

static BfPart *
cut_in_two (void)
{
  BfPart *part = make_rectangle (200.0, 120.0);
  BfOpening *slot = bf_opening_new ("base", BF_OPENING_RECTANGLE);

  slot->at_mm = bf_vec2 (100.0, 60.0);
  slot->length_mm = 10.0;
  slot->width_mm = 140.0;
  g_ptr_array_add (part->openings, slot);
  return part;
}

/* Two walls with lips at a corner of 28° in metal 3 mm thick: the relief, 54 mm wide, parts 37 mm²
 * at the end of one wall from the rest of it. */
static BfPart *
relief_parts_wall (void)
{
  return make_random (2424);
}

static BfPart *
all_cut_away (void)
{
  BfPart *part = make_rectangle (20.0, 12.0);
  BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

  hole->at_mm = bf_vec2 (10.0, 6.0);
  hole->diameter_mm = 50.0;
  g_ptr_array_add (part->openings, hole);
  return part;
}

/* ---- reliefs ------------------------------------------------------------------------------- */

static BfCorner *
add_corner (BfPart *part, const char *on, guint at)
{
  BfCorner *corner = bf_corner_new (on, at);

  g_ptr_array_add (part->corners, corner);
  return corner;
}

/* √2 BA = 4.7317, with twice the slack 6.2317. */
static BfPart *
small_relief (void)
{
  BfPart *part = make_tray (200.0, 120.0, 40.0, 90.0);
  BfCorner *corner = add_corner (part, "base", 2);

  corner->relief = BF_RELIEF_ROUND;
  corner->relief_size_mm = 5.0;
  return part;
}

static BfPart *
no_relief (void)
{
  BfPart *part = make_tray (200.0, 120.0, 40.0, 90.0);

  add_corner (part, "base", 2)->relief = BF_RELIEF_NONE;
  return part;
}

/* ---- the grain ----------------------------------------------------------------------------- */

/* The bend runs along x; rolled 30° off that, either way, is the last that counts. */
static BfPart *
along_grain (void)
{
  BfPart *part = one_wall (40.0, 90.0);

  part->metal.grain_deg = 30.0;
  return part;
}

static BfPart *
along_grain_from_below (void)
{
  BfPart *part = one_wall (40.0, 90.0);

  part->metal.grain_deg = 165.0;
  return part;
}

/* ---- joins that cannot be made -------------------------------------------------------------- */

static BfPart *
tabbed (void)
{
  BfPart *part = make_tray (200.0, 120.0, 12.0, 90.0);

  add_corner (part, "base", 1)->join = BF_JOIN_TAB;
  return part;
}

static BfPart *
folded_corner (void)
{
  BfPart *part = make_tray (200.0, 120.0, 40.0, 90.0);

  add_corner (part, "base", 1)->join = BF_JOIN_FOLDED;
  ((BfFlange *)g_ptr_array_index (part->flanges, 1))->length_mm = 35.0;
  return part;
}

/* Walls of a six-sided base meet at 120°: 0.5 + 1.5 · cos 60° is left open inside. */
static BfPart *
covered_at_120 (void)
{
  BfPart *part = make_ring (6, 100.0, 40.0, 90.0);

  add_corner (part, "base", 1)->join = BF_JOIN_COVERS_AFTER;
  return part;
}

static const Fault faults[] = {
  { "/checks/flange-off-edge/insets", insets_eat_edge, "flange-off-edge", "front",
    BF_SEVERITY_MUST_FIX, 0.5, 1.5 },
  { "/checks/flange-off-edge/no-edge", on_no_edge, "flange-off-edge", "front", BF_SEVERITY_MUST_FIX,
    NAN, 1.5 },
  { "/checks/flange-too-short/bend", shorter_than_bend, "flange-too-short", "front",
    BF_SEVERITY_MUST_FIX, -0.5, 0.0 },
  { "/checks/flange-too-short/two-bends", no_strip_between_bends, "flange-too-short", "front",
    BF_SEVERITY_MUST_FIX, -0.5, 0.0 },
  { "/checks/flange-too-short/flat", short_flat, "flange-too-short", "front", BF_SEVERITY_LOOK_AT,
    1.0, 3.0 },
  { "/checks/flange-too-narrow", sides_cross, "flange-too-narrow", "front", BF_SEVERITY_MUST_FIX,
    -34.0, 0.0 },
  { "/checks/radius-too-tight", tight_radius, "radius-too-tight", "front", BF_SEVERITY_LOOK_AT, 0.5,
    0.75 },
  { "/checks/outline-crosses-itself", crossing_base, "outline-crosses-itself", "base",
    BF_SEVERITY_MUST_FIX, NAN, NAN },
  { "/checks/blank-overlaps-itself", make_bay, "blank-overlaps-itself", "right",
    BF_SEVERITY_MUST_FIX, 2.0 * (54.0 + 3.3457961 - 50.0), 0.0 },
  { "/checks/blank-in-pieces/two", cut_in_two, "blank-in-pieces", "base", BF_SEVERITY_MUST_FIX, 2.0,
    1.0 },
  { "/checks/blank-in-pieces/relief", relief_parts_wall, "blank-in-pieces", "base",
    BF_SEVERITY_MUST_FIX, 2.0, 1.0 },
  { "/checks/blank-in-pieces/none", all_cut_away, "blank-in-pieces", "base", BF_SEVERITY_MUST_FIX,
    0.0, 1.0 },
  { "/checks/relief-too-small", small_relief, "relief-too-small", "base:2", BF_SEVERITY_LOOK_AT,
    5.0, 3.3457961 * G_SQRT2 + 1.5 },
  { "/checks/relief-missing", no_relief, "relief-missing", "base:2", BF_SEVERITY_LOOK_AT, NAN,
    NAN },
  { "/checks/bend-along-grain", along_grain, "bend-along-grain", "front", BF_SEVERITY_LOOK_AT, 30.0,
    30.0 },
  { "/checks/bend-along-grain/below", along_grain_from_below, "bend-along-grain", "front",
    BF_SEVERITY_LOOK_AT, 15.0, 30.0 },
  { "/checks/tab-not-made", tabbed, "tab-not-made", "base:1", BF_SEVERITY_LOOK_AT, NAN, NAN },
  { "/checks/cover-left-open", covered_at_120, "cover-left-open", "base:1", BF_SEVERITY_LOOK_AT,
    1.25, 0.5 },
  { "/checks/fold-not-made", folded_corner, "fold-not-made", "base:1", BF_SEVERITY_LOOK_AT, 35.0,
    40.0 },
};

static void
assert_number (double found, double wanted)
{
  if (isnan (wanted))
    g_assert_true (isnan (found));
  else
    g_assert_cmpfloat_with_epsilon (found, wanted, HAND_MM);
}

static void
test_fault (gconstpointer data)
{
  const Fault *f = data;
  g_autoptr (BfPart) part = f->make ();
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfCheck *check = find_check (fold, f->code, f->where);

  for (guint i = 0; i < fold->checks->len; i++)
    g_test_message ("%s %s", bf_fold_check (fold, i)->code, bf_fold_check (fold, i)->where);
  g_assert_nonnull (check);
  g_assert_cmpint (check->severity, ==, f->severity);
  assert_number (check->found, f->found);
  assert_number (check->needed, f->needed);
  g_assert_true (isfinite (check->place.x) && isfinite (check->place.y));
  g_assert_cmpuint (strlen (check->message), >, 20);
}

/* From just over 105° an opening is told; where the walls lean, the angle between them counts, not
 * the base's. What is offered leaves the corner open, and then there is nothing to tell. */
static void
test_cover_angles (void)
{
  for (guint i = 0; i < 2; i++)
    {
      double interior = bf_deg_to_rad (i == 0 ? 104.9 : 105.1);
      const BfVec2 outline[] = {
        { 0, 0 }, { 160, 0 }, { 160 - 90 / tan (interior), 90 }, { 0, 90 }
      };
      g_autoptr (BfPart) part = make_part (outline, G_N_ELEMENTS (outline)), opened = NULL;
      g_autoptr (BfFold) fold = NULL, again = NULL;
      const BfCheck *check;

      add_flange (part, "a", 0, 30.0, 90.0);
      add_flange (part, "b", 1, 30.0, 90.0);
      add_corner (part, "base", 1)->join = BF_JOIN_COVERS_BEFORE;
      fold = bf_fold (part);
      check = find_check (fold, "cover-left-open", "base:1");
      g_assert_true ((check != NULL) == (i == 1));
      if (check == NULL)
        continue;
      opened = bf_fix_apply (part, &check->fix, NULL);
      again = bf_fold (opened);
      g_assert_null (find_check (again, "cover-left-open", NULL));
    }
}

/* ---- where nothing is wrong ------------------------------------------------------------------ */

/* By DIN 6935 a bend of no radius takes no metal: K is 0 there. Closed hems made so on the walls of
 * an inside corner, whose sides lean, have bends narrower than the walls are there, and no line
 * runs out to their ends and back. */
static void
test_no_allowance (void)
{
  for (double angle = 20.0; angle <= 90.0; angle += 2.5)
    {
      const BfVec2 ell[] = { { 0.0, 0.0 },     { 255.8, 0.0 },   { 255.8, 140.5 },
                             { 127.9, 140.5 }, { 127.9, 309.0 }, { 0.0, 309.0 } };
      g_autoptr (BfPart) part = make_part (ell, G_N_ELEMENTS (ell));
      g_autoptr (BfPart) mirrored = NULL;
      g_autoptr (BfFold) fold = NULL, other = NULL;
      BfFlange *hem;

      add_flange (part, "front", 2, 45.0, angle);
      add_flange (part, "side", 3, 40.0, 76.8);
      hem = add_lip (part, "hem", "front", 12.0, 180.0);
      hem->bend.inside_radius_mm = 0.0;
      hem->bend.allowance.rule = BF_ALLOWANCE_DIN_6935;
      mirrored = bf_part_mirror (part);
      fold = bf_fold (part);
      other = bf_fold (mirrored);
      g_assert_cmpfloat (find_bend (fold, "hem")->allowance_mm, <=, 0.0);
      g_assert_null (find_check (fold, "blank-overlaps-itself", NULL));
      g_assert_null (find_check (other, "blank-overlaps-itself", NULL));
    }
}

/* What is just enough is not spoken of. */
static void
test_just_enough (void)
{
  g_autoptr (BfPart) part = one_wall (6.0, 90.0); /* 3 of flat is twice the thickness */
  g_autoptr (BfFold) fold = NULL;

  part->bend.inside_radius_mm = 1.5;
  flange (part, 0)->start_mm = 98.5;
  flange (part, 0)->end_mm = 100.0; /* 1.5 of edge is the thickness */
  fold = bf_fold (part);
  g_assert_cmpuint (count_to_heed (fold), ==, 0);
}

static void
test_sound (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);

  g_assert_cmpuint (count_to_heed (fold), ==, 0);
}

/* A message names the size that would do: 4 has 1 of flat, so 6 has 3. */
static void
test_message (void)
{
  g_autoptr (BfPart) part = short_flat ();
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfCheck *check = find_check (fold, "flange-too-short", "front");

  g_assert_nonnull (strstr (check->message, "front"));
  g_assert_nonnull (strstr (check->message, "6 mm"));
}

/* Across the grain, or where nobody knows it, nothing is said. */
static void
test_across_grain (void)
{
  static const double grains_deg[] = { 30.1, 90.0, 149.9, 210.1, NAN };

  for (guint i = 0; i < G_N_ELEMENTS (grains_deg); i++)
    {
      g_autoptr (BfPart) part = one_wall (40.0, 90.0);
      g_autoptr (BfFold) fold = NULL;

      part->metal.grain_deg = grains_deg[i];
      fold = bf_fold (part);
      g_assert_null (find_check (fold, "bend-along-grain", NULL));
    }
}

/* An unknown metal has no least radius to hold it to. */
static void
test_unknown_metal (void)
{
  g_autoptr (BfPart) part = tight_radius ();
  g_autoptr (BfFold) fold = NULL;

  g_free (part->metal.material);
  part->metal.material = g_strdup ("unobtainium");
  fold = bf_fold (part);
  g_assert_null (find_check (fold, "radius-too-tight", NULL));
  g_assert_true (isnan (fold->blank.mass_kg));
}

/* Flat on itself: soft metals take it, and what cracks above its own thickness does not. */
static void
test_closed_hem (void)
{
  static const struct
  {
    const char *metal;
    double radius_mm, needed_mm; /* NAN: nothing said */
  } table[] = {
    { "mild-steel", 0.0, NAN },         { "galvanized-steel", 0.0, NAN },
    { "aluminium-6061-t6", 0.0, 2.25 }, { "aluminium-6061-t6", 2.2, 2.25 },
    { "aluminium-6061-t6", 2.25, NAN },
  };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autoptr (BfPart) part = one_wall (40.0, 180.0);
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;

      g_free (part->metal.material);
      part->metal.material = g_strdup (table[i].metal);
      part->bend.inside_radius_mm = table[i].radius_mm;
      fold = bf_fold (part);
      check = find_check (fold, "radius-too-tight", "front");
      g_assert_true ((check == NULL) == isnan (table[i].needed_mm));
      if (check != NULL)
        assert_number (check->needed, table[i].needed_mm);
    }
}

/* What hangs on a flange that has no place has nothing more to say. */
static void
test_child_of_none (void)
{
  g_autoptr (BfPart) part = on_no_edge ();
  g_autoptr (BfFold) fold = NULL;

  add_lip (part, "lip", "front", 20.0, 90.0);
  fold = bf_fold (part);
  g_assert_nonnull (find_check (fold, "flange-off-edge", "front"));
  g_assert_null (find_check (fold, "flange-off-edge", "lip"));
}

/* Where the metal wanted twice lies: the two walls in the bay meet between x = 100 and 200. */
static void
test_place (void)
{
  g_autoptr (BfPart) part = make_bay ();
  g_autoptr (BfFold) fold = bf_fold (part);
  BfVec2 place = find_check (fold, "blank-overlaps-itself", NULL)->place;

  g_assert_cmpfloat (place.x, >, 100.0);
  g_assert_cmpfloat (place.x, <, 200.0);
  g_assert_cmpfloat (place.y, >=, 40.0);
}

/* The base's own fault hides what follows from it. */
static void
test_crossing_alone (void)
{
  g_autoptr (BfPart) part = crossing_base ();
  g_autoptr (BfFold) fold = bf_fold (part);

  g_assert_null (find_check (fold, "blank-overlaps-itself", NULL));
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 1);
}

/* Must fix first, whatever was found first. */
static void
test_order (void)
{
  g_autoptr (BfPart) part = cut_in_two ();
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "a", 0, 4.0, 90.0);
  add_flange (part, "b", 2, 4.0, 90.0);
  part->bend.inside_radius_mm = 0.5;
  fold = bf_fold (part);
  g_assert_cmpuint (fold->checks->len, >=, 3);
  g_assert_cmpstr (bf_fold_check (fold, 0)->code, ==, "blank-in-pieces");
  for (guint i = 1; i < fold->checks->len; i++)
    g_assert_cmpint (bf_fold_check (fold, i - 1)->severity, <=, bf_fold_check (fold, i)->severity);
  g_assert_cmpstr (bf_fold_check (fold, 1)->code, ==, "opening-off-face");
  g_assert_cmpstr (bf_fold_check (fold, 2)->where, ==, "a");
  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 2);
  g_assert_cmpstr (bf_fold_check (fold, fold->checks->len - 1)->code, ==, "sharp-edge");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (faults); i++)
    g_test_add_data_func (faults[i].path, &faults[i], test_fault);
  g_test_add_func ("/checks/across-grain", test_across_grain);
  g_test_add_func ("/checks/no-allowance", test_no_allowance);
  g_test_add_func ("/checks/just-enough", test_just_enough);
  g_test_add_func ("/checks/sound", test_sound);
  g_test_add_func ("/checks/message", test_message);
  g_test_add_func ("/checks/unknown-metal", test_unknown_metal);
  g_test_add_func ("/checks/closed-hem", test_closed_hem);
  g_test_add_func ("/checks/child-of-none", test_child_of_none);
  g_test_add_func ("/checks/place", test_place);
  g_test_add_func ("/checks/crossing-alone", test_crossing_alone);
  g_test_add_func ("/checks/order", test_order);
  g_test_add_func ("/checks/cover-left-open/angles", test_cover_angles);
  return g_test_run ();
}
