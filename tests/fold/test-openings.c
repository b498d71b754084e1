/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Holes and cut-outs: their shapes by closed formulas, and where they end up on the folded metal.
 */

#include "look-up.h"
#include "make-part.h"

#define EXACT_MM 1e-9
#define AREA_MM2 1e-6

static BfOpening *
add_opening (BfPart *part, const char *on, BfOpeningShape shape, double x, double y)
{
  BfOpening *opening = bf_opening_new (on, shape);

  opening->at_mm = bf_vec2 (x, y);
  g_ptr_array_add (part->openings, opening);
  return opening;
}

/* One opening of that shape and those sizes at (60, 50) on a plain base of 200 × 120. */
static BfFold *
fold_one (BfOpeningShape shape, double diameter, double length, double width, double angle_deg)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  BfOpening *opening = add_opening (part, "base", shape, 60.0, 50.0);

  opening->diameter_mm = diameter;
  opening->length_mm = length;
  opening->width_mm = width;
  opening->angle_deg = angle_deg;
  return bf_fold (part);
}

static BfBox
box_of (const BfRing *ring)
{
  BfBox box = bf_box_empty ();

  bf_ring_extend_box (ring, &box);
  return box;
}

/* The opening's own area and box, and that the blank lacks just that. */
static void
assert_opening (const BfFold *fold, double area, BfVec2 min, BfVec2 max)
{
  const BfRing *ring = bf_fold_opening (fold, 0)->ring;
  BfBox box = box_of (ring);

  g_assert_cmpuint (fold->openings->len, ==, 1);
  g_assert_cmpuint (bf_fold_opening (fold, 0)->face, ==, 0);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (ring), area, AREA_MM2);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, 200.0 * 120.0 - area, AREA_MM2);
  g_assert_cmpuint (fold->blank.rings->len, ==, 2);
  assert_at (box.min, min, EXACT_MM);
  assert_at (box.max, max, EXACT_MM);
}

/* ---- shapes -------------------------------------------------------------------------------- */

static void
test_round (void)
{
  g_autoptr (BfFold) fold = fold_one (BF_OPENING_ROUND, 6.0, NAN, NAN, NAN);

  assert_opening (fold, G_PI * 9.0, bf_vec2 (57.0, 47.0), bf_vec2 (63.0, 53.0));
}

/* As long over all as asked, its ends half round. */
static void
test_slot (void)
{
  g_autoptr (BfFold) along = fold_one (BF_OPENING_SLOT, NAN, 40.0, 8.0, NAN);
  g_autoptr (BfFold) across = fold_one (BF_OPENING_SLOT, NAN, 40.0, 8.0, 90.0);
  double area = 32.0 * 8.0 + G_PI * 16.0;

  assert_opening (along, area, bf_vec2 (40.0, 46.0), bf_vec2 (80.0, 54.0));
  assert_opening (across, area, bf_vec2 (56.0, 30.0), bf_vec2 (64.0, 70.0));
}

static void
test_rectangle (void)
{
  g_autoptr (BfFold) along = fold_one (BF_OPENING_RECTANGLE, NAN, 40.0, 20.0, 0.0);
  g_autoptr (BfFold) aslant = fold_one (BF_OPENING_RECTANGLE, NAN, 40.0, 20.0, 45.0);
  double reach = (20.0 + 10.0) / G_SQRT2;

  assert_opening (along, 800.0, bf_vec2 (40.0, 40.0), bf_vec2 (80.0, 60.0));
  assert_opening (aslant, 800.0, bf_vec2 (60.0 - reach, 50.0 - reach),
                  bf_vec2 (60.0 + reach, 50.0 + reach));
}

/* A disc of 10 and a way of 5 that leads out to 12 from its centre, its end half round: it leaves
 * the disc √(25 − 6.25) out. */
static void
test_keyhole (void)
{
  g_autoptr (BfFold) along = fold_one (BF_OPENING_KEYHOLE, 10.0, 12.0, 5.0, 0.0);
  g_autoptr (BfFold) up = fold_one (BF_OPENING_KEYHOLE, 10.0, 12.0, 5.0, 90.0);
  double leaves = sqrt (25.0 - 6.25);
  double beyond = 25.0 * acos (leaves / 5.0) - leaves * 2.5;
  double area = G_PI * 25.0 - beyond + (9.5 - leaves) * 5.0 + G_PI * 6.25 / 2.0;

  assert_opening (along, area, bf_vec2 (55.0, 45.0), bf_vec2 (72.0, 55.0));
  assert_opening (up, area, bf_vec2 (55.0, 45.0), bf_vec2 (65.0, 62.0));
}

/* Drawn clockwise or not, it is one hole. */
static void
test_outline (void)
{
  const BfVec2 points[] = { { 150.0, 40.0 }, { 170.0, 40.0 }, { 160.0, 60.0 } };

  for (int way = 0; way < 2; way++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfOpening *opening = add_opening (part, "base", BF_OPENING_OUTLINE, NAN, NAN);
      g_autoptr (BfFold) fold = NULL;

      opening->at_mm = bf_vec2 (0.0, 0.0);
      if (opening->points == NULL)
        opening->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
      for (int i = 0; i < 3; i++)
        g_array_append_val (opening->points, points[way == 0 ? i : 2 - i]);
      fold = bf_fold (part);
      assert_opening (fold, 200.0, bf_vec2 (150.0, 40.0), bf_vec2 (170.0, 60.0));
    }
}

/* ---- on flanges ---------------------------------------------------------------------------- */

/* Where the middle of a round hole stands in space, on the marking side. */
static BfVec3
place_of (const BfFold *fold, guint i)
{
  const BfOpeningResult *opening = bf_fold_opening (fold, i);
  BfVec2 centre;

  g_assert_true (bf_ring_is_circle (opening->ring, &centre, NULL));
  return bf_fold_place (fold, opening->face, centre);
}

typedef struct
{
  const char *what;
  guint edge;
  BfTurn turn;
  BfMeasure measure;
  BfVec3 wanted;
} Wall;

/* A hole 30 along the bend and 20 out from the drawn line of a square wall: 20 up from where that
 * wall's sizes are counted from. Edge 2 runs back from (200, 120). */
static const Wall walls[] = {
  { "up, outside", 0, BF_TURN_UP, BF_MEASURE_OUTSIDE, { 30.0, 1.5, 18.5 } },
  { "up, inside", 0, BF_TURN_UP, BF_MEASURE_INSIDE, { 30.0, 0.0, 20.0 } },
  { "down, outside", 0, BF_TURN_DOWN, BF_MEASURE_OUTSIDE, { 30.0, 0.0, -20.0 } },
  { "down, inside", 0, BF_TURN_DOWN, BF_MEASURE_INSIDE, { 30.0, -1.5, -21.5 } },
  { "the far wall", 2, BF_TURN_UP, BF_MEASURE_OUTSIDE, { 170.0, 118.5, 18.5 } },
};

static void
test_walls (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    {
      const Wall *w = &walls[i];
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfFold) fold = NULL;

      add_flange (part, "wall", w->edge, 40.0, 90.0)->turn = w->turn;
      part->measure = w->measure;
      add_opening (part, "wall", BF_OPENING_ROUND, 30.0, 20.0)->diameter_mm = 6.0;
      fold = bf_fold (part);
      g_test_message ("%s", w->what);
      g_assert_cmpuint (bf_fold_opening (fold, 0)->face, ==, 1);
      assert_in_space (place_of (fold, 0), w->wanted, EXACT_MM);
    }
}

/* On a lip, counted from the lip's own drawn line: the wall's outer face, at y = 0. */
static void
test_lip (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "wall", 0, 40.0, 90.0);
  add_lip (part, "lip", "wall", 20.0, 90.0);
  add_opening (part, "lip", BF_OPENING_ROUND, 30.0, 12.0)->diameter_mm = 6.0;
  fold = bf_fold (part);
  assert_in_space (place_of (fold, 0), bf_vec3 (30.0, 12.0, 37.0), EXACT_MM);
}

/* An inset moves the wall, not what is counted from the edge's start. */
static void
test_inset (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "wall", 0, 40.0, 90.0)->start_mm = 10.0;
  add_opening (part, "wall", BF_OPENING_ROUND, 30.0, 20.0)->diameter_mm = 6.0;
  fold = bf_fold (part);
  assert_in_space (place_of (fold, 0), bf_vec3 (30.0, 1.5, 18.5), EXACT_MM);
}

/* A slot across the first wall at 90° stands along v; points of a drawn cut-out are (u, v). */
static void
test_directions (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  const BfVec2 points[] = { { 100.0, 10.0 }, { 120.0, 10.0 }, { 120.0, 25.0 } };
  g_autoptr (BfFold) fold = NULL;
  BfOpening *slot, *drawn;
  BfBox box;
  double shift;

  add_flange (part, "wall", 0, 40.0, 90.0);
  slot = add_opening (part, "wall", BF_OPENING_SLOT, 30.0, 20.0);
  slot->length_mm = 16.0;
  slot->width_mm = 4.0;
  slot->angle_deg = 90.0;
  drawn = add_opening (part, "wall", BF_OPENING_OUTLINE, 0.0, 0.0);
  if (drawn->points == NULL)
    drawn->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  g_array_append_vals (drawn->points, points, G_N_ELEMENTS (points));
  fold = bf_fold (part);
  shift = find_bend (fold, "wall")->deduction_mm;

  box = box_of (bf_fold_opening (fold, 0)->ring);
  assert_at (box.min, bf_vec2 (28.0, -28.0 + shift), EXACT_MM);
  assert_at (box.max, bf_vec2 (32.0, -12.0 + shift), EXACT_MM);
  box = box_of (bf_fold_opening (fold, 1)->ring);
  assert_at (box.min, bf_vec2 (100.0, -25.0 + shift), EXACT_MM);
  assert_at (box.max, bf_vec2 (120.0, -10.0 + shift), EXACT_MM);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (bf_fold_opening (fold, 1)->ring), 150.0, AREA_MM2);
}

/* The narrow part of a keyhole leads along its angle, counter-clockwise seen from the marking side:
 * at 90° towards the base, at 270° towards the tip. */
static void
test_keyhole_way (void)
{
  for (int toward_tip = 0; toward_tip < 2; toward_tip++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      BfOpening *keyhole = add_opening (part, "wall", BF_OPENING_KEYHOLE, 60.0, 20.0);
      g_autoptr (BfFold) fold = NULL;
      double middle;
      BfBox box;

      add_flange (part, "wall", 0, 40.0, 90.0);
      keyhole->diameter_mm = 10.0;
      keyhole->length_mm = 12.0;
      keyhole->width_mm = 5.0;
      keyhole->angle_deg = toward_tip ? 270.0 : 90.0;
      fold = bf_fold (part);
      middle = -20.0 + find_bend (fold, "wall")->deduction_mm;
      box = box_of (bf_fold_opening (fold, 0)->ring);
      g_assert_cmpfloat_with_epsilon (box.max.y - middle, toward_tip ? 5.0 : 12.0, EXACT_MM);
      g_assert_cmpfloat_with_epsilon (middle - box.min.y, toward_tip ? 12.0 : 5.0, EXACT_MM);
    }
}

/* ---- nowhere ------------------------------------------------------------------------------- */

/* A flange that is not there, or that has no place, has no openings. */
static void
test_nowhere (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "wall", 9, 40.0, 90.0);
  add_opening (part, "wall", BF_OPENING_ROUND, 30.0, 20.0)->diameter_mm = 6.0;
  add_opening (part, "gone", BF_OPENING_ROUND, 30.0, 20.0)->diameter_mm = 6.0;
  add_opening (part, "base", BF_OPENING_ROUND, 30.0, 20.0)->diameter_mm = 6.0;
  fold = bf_fold (part);
  g_assert_cmpuint (fold->openings->len, ==, 1);
  g_assert_true (bf_fold_opening (fold, 0)->asked == g_ptr_array_index (fold->part->openings, 2));
}

/* A hole over an edge is a bay in it; it is no ring of its own. */
static void
test_over_edge (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_opening (part, "base", BF_OPENING_ROUND, 200.0, 60.0)->diameter_mm = 20.0;
  fold = bf_fold (part);
  g_assert_cmpuint (fold->blank.rings->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, 200.0 * 120.0 - G_PI * 50.0, AREA_MM2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/openings/round", test_round);
  g_test_add_func ("/openings/slot", test_slot);
  g_test_add_func ("/openings/rectangle", test_rectangle);
  g_test_add_func ("/openings/keyhole", test_keyhole);
  g_test_add_func ("/openings/outline", test_outline);
  g_test_add_func ("/openings/walls", test_walls);
  g_test_add_func ("/openings/lip", test_lip);
  g_test_add_func ("/openings/inset", test_inset);
  g_test_add_func ("/openings/directions", test_directions);
  g_test_add_func ("/openings/keyhole-way", test_keyhole_way);
  g_test_add_func ("/openings/nowhere", test_nowhere);
  g_test_add_func ("/openings/over-edge", test_over_edge);
  return g_test_run ();
}
