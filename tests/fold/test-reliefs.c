/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Corner and end reliefs, against numbers worked out by hand for one bend: t = R = 1.5, K 0.42,
 * 90°: BA = π/2·(1.5 + 0.63) = 3.3458, S = 3; the bend line lies 1.3271 inside the drawn edge. */

#include "look-up.h"
#include "make-part.h"

#define BA_MM 3.345796
#define BEND_LINE_MM 1.327102
#define HAND_MM 5e-4

/* The square corner: P lies BA/2 from both bend lines. */
#define CORNER_NEED_MM (BA_MM * G_SQRT2)

static BfCorner *
ask (BfPart *part, guint at, BfReliefShape shape, double size_mm)
{
  BfCorner *corner = bf_corner_new ("base", at);

  corner->relief = shape;
  corner->relief_size_mm = size_mm;
  g_ptr_array_add (part->corners, corner);
  return corner;
}

/* A tray whose corner 1, at (200, 0), is as asked. */
static BfFold *
fold_asked (BfCuttingWay by, BfReliefShape shape, double size_mm)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);

  part->cutting.by = by;
  ask (part, 1, shape, size_mm);
  return bf_fold (part);
}

static void
assert_no_drill (const BfRelief *relief)
{
  g_assert_true (isnan (relief->drill_mm));
  g_assert_null (relief->drill);
}

static void
assert_drill (const BfRelief *relief, double drill_mm, const char *name)
{
  g_assert_cmpfloat_with_epsilon (relief->drill_mm, drill_mm, 1e-9);
  g_assert_cmpstr (relief->drill, ==, name);
}

/* ---- round --------------------------------------------------------------------------------- */

/* 4.7317 and twice the slack of 0.75 make 6.2317: the next drill is 6.5. */
static void
test_drilled (void)
{
  g_autoptr (BfFold) fold = fold_asked (BF_CUTTING_DISC, BF_RELIEF_UNSET, NAN);
  const BfRelief *relief = find_relief (fold, "base:1", 0);
  BfVec2 centre;
  double radius;

  g_assert_cmpint (relief->kind, ==, BF_RELIEF_KIND_CORNER);
  g_assert_cmpint (relief->shape, ==, BF_RELIEF_ROUND);
  g_assert_cmpfloat_with_epsilon (relief->need_mm, CORNER_NEED_MM, HAND_MM);
  g_assert_cmpfloat_with_epsilon (relief->diameter_mm, 6.5, 1e-9);
  assert_drill (relief, 6.5, "6.5 mm");
  assert_at (relief->at, bf_vec2 (200.0 - BEND_LINE_MM, BEND_LINE_MM), HAND_MM);
  g_assert_true (bf_ring_is_circle (relief->ring, &centre, &radius));
  assert_at (centre, relief->at, 1e-9);
  g_assert_cmpfloat_with_epsilon (radius, 3.25, 1e-9);
}

/* A machine does not slip and needs no drill: up to the next tenth. */
static void
test_machine (void)
{
  for (BfCuttingWay by = BF_CUTTING_TABLE; by <= BF_CUTTING_SERVICE; by++)
    {
      g_autoptr (BfFold) fold = fold_asked (by, BF_RELIEF_ROUND, NAN);
      const BfRelief *relief = find_relief (fold, "base:1", 0);

      g_assert_cmpfloat_with_epsilon (relief->need_mm, CORNER_NEED_MM, HAND_MM);
      g_assert_cmpfloat_with_epsilon (relief->diameter_mm, 4.8, 1e-9);
      assert_no_drill (relief);
    }
}

/* No drill of the person's is wide enough: it is cut, up to the next tenth. */
static void
test_no_drill (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  const double owned[] = { 3.0, 5.0 };
  g_autoptr (BfFold) fold = NULL;

  part->cutting.drills = BF_DRILLS_LIST;
  part->cutting.drill_list_mm = g_array_new (FALSE, FALSE, sizeof (double));
  g_array_append_vals (part->cutting.drill_list_mm, owned, G_N_ELEMENTS (owned));
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (find_relief (fold, "base:1", 0)->diameter_mm, 6.3, 1e-9);
  assert_no_drill (find_relief (fold, "base:1", 0));
}

/* The farther of the slack's two ends counts: more slack, a wider drill. */
static void
test_slack (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;

  part->cutting.slack_mm = 0.1; /* 4.9317 */
  fold = bf_fold (part);
  assert_drill (find_relief (fold, "base:1", 0), 5.0, "5 mm");
}

/* A given size is drawn as given; too small, it is looked at. */
static void
test_given (void)
{
  static const struct
  {
    BfCuttingWay by;
    double size_mm, needed_mm; /* NAN: large enough */
  } table[] = {
    { BF_CUTTING_DISC, 6.35, NAN },
    { BF_CUTTING_DISC, 8.0, NAN },
    { BF_CUTTING_DISC, 6.0, CORNER_NEED_MM + 1.5 },
    { BF_CUTTING_DISC, 3.0, CORNER_NEED_MM + 1.5 },
    { BF_CUTTING_TABLE, 4.75, NAN },
    { BF_CUTTING_TABLE, 4.5, CORNER_NEED_MM },
  };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autoptr (BfFold) fold = fold_asked (table[i].by, BF_RELIEF_ROUND, table[i].size_mm);
      const BfCheck *check = find_check (fold, "relief-too-small", NULL);

      g_assert_cmpfloat_with_epsilon (find_relief (fold, "base:1", 0)->diameter_mm,
                                      table[i].size_mm, 1e-9);
      g_assert_true ((check == NULL) == isnan (table[i].needed_mm));
      if (check == NULL)
        continue;
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_LOOK_AT);
      g_assert_cmpstr (check->where, ==, "base:1");
      g_assert_cmpfloat_with_epsilon (check->found, table[i].size_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (check->needed, table[i].needed_mm, HAND_MM);
    }
}

/* A size asked for is drawn, and a drill named only where one owned has it. */
static void
test_given_drill (void)
{
  static const struct
  {
    double size_mm;
    const char *drill; /* NULL: none has that size, */
    double next_mm;    /* and this is the next up */
  } table[] = { { 4.5, "4.5 mm", 0.0 },
                { 4.2, NULL, 4.5 },
                { 6.5, "6.5 mm", 0.0 },
                { 6.51, NULL, 7.0 },
                { 500.0, NULL, NAN } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autoptr (BfFold) fold = fold_asked (BF_CUTTING_DISC, BF_RELIEF_ROUND, table[i].size_mm);
      g_autoptr (BfFold) table_cut =
          fold_asked (BF_CUTTING_TABLE, BF_RELIEF_ROUND, table[i].size_mm);
      const BfRelief *relief = find_relief (fold, "base:1", 0);
      const BfCheck *check = find_check (fold, "no-such-drill", "base:1");

      g_assert_cmpfloat_with_epsilon (relief->diameter_mm, table[i].size_mm, 1e-9);
      g_assert_cmpstr (relief->drill, ==, table[i].drill);
      g_assert_true (isnan (relief->drill_mm) == (table[i].drill == NULL));
      g_assert_true ((check == NULL) == (table[i].drill != NULL));
      g_assert_null (find_check (table_cut, "no-such-drill", NULL));
      if (check == NULL)
        continue;
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_LOOK_AT);
      g_assert_cmpfloat_with_epsilon (check->found, table[i].size_mm, 1e-9);
      g_assert_true (isnan (check->needed) == isnan (table[i].next_mm));
      if (!isnan (check->needed))
        g_assert_cmpfloat_with_epsilon (check->needed, table[i].next_mm, 1e-9);
    }
}

/* ---- square and none ------------------------------------------------------------------------ */

/* Its sides lie along the bend lines BA/2 off: BA and the kerf. */
static void
test_square (void)
{
  g_autoptr (BfFold) disc = fold_asked (BF_CUTTING_DISC, BF_RELIEF_SQUARE, NAN);
  g_autoptr (BfFold) snips = fold_asked (BF_CUTTING_SNIPS, BF_RELIEF_SQUARE, NAN);
  const BfRelief *relief = find_relief (disc, "base:1", 0);
  double side = BA_MM + 1.3;

  g_assert_cmpint (relief->shape, ==, BF_RELIEF_SQUARE);
  g_assert_cmpfloat_with_epsilon (relief->need_mm, BA_MM, HAND_MM);
  g_assert_cmpfloat_with_epsilon (relief->diameter_mm, side, HAND_MM);
  assert_no_drill (relief);
  g_assert_cmpuint (bf_ring_size (relief->ring), ==, 4);
  assert_at (bf_ring_vertex (relief->ring, 0)->p,
             bf_vec2 (200.0 - BEND_LINE_MM - side / 2.0, BEND_LINE_MM - side / 2.0), HAND_MM);
  g_assert_cmpfloat_with_epsilon (bf_ring_area (relief->ring), side * side, 1e-2);
  g_assert_cmpfloat_with_epsilon (find_relief (snips, "base:1", 0)->diameter_mm, BA_MM, HAND_MM);
}

static void
test_square_given (void)
{
  g_autoptr (BfFold) fold = fold_asked (BF_CUTTING_DISC, BF_RELIEF_SQUARE, 3.0);
  const BfCheck *check = find_check (fold, "relief-too-small", "base:1");

  g_assert_cmpfloat_with_epsilon (find_relief (fold, "base:1", 0)->diameter_mm, 3.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (check->needed, BA_MM, HAND_MM);
}

static void
test_none (void)
{
  g_autoptr (BfFold) fold = fold_asked (BF_CUTTING_DISC, BF_RELIEF_NONE, NAN);

  g_assert_null (find_relief (fold, "base:1", 0));
  g_assert_nonnull (find_relief (fold, "base:2", 0));
  g_assert_cmpuint (fold->reliefs->len, ==, 3);
  g_assert_cmpint (find_check (fold, "relief-missing", "base:1")->severity, ==,
                   BF_SEVERITY_LOOK_AT);
}

/* ---- off the bend lines' crossing ----------------------------------------------------------- */

static double
reach (const BfRelief *relief, const BfVec2 *points, guint n)
{
  double far = 0.0;

  for (guint i = 0; i < n; i++)
    far = MAX (far, bf_vec2_distance (relief->at, points[i]));
  return far;
}

/* A base of three equal sides: the zones end far from the bend lines' crossing. Whatever circle is
 * chosen, the need is what reaches the ends of both zones, and no more than is needed for all. */
static void
test_sharp_corner (void)
{
  g_autoptr (BfPart) part = make_ring (3, 150.0, 30.0, 60.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const BfBendResult *before = find_bend (fold, "f0"), *after = find_bend (fold, "f1");
  const BfVec2 ends[] = { before->zone[1], before->zone[2], after->zone[0], after->zone[3] };
  const BfRelief *relief = find_relief (fold, "base:1", 0);

  g_assert_cmpuint (bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX), ==, 0);
  g_assert_cmpfloat (relief->need_mm / 2.0, >=, reach (relief, ends, 4) - 1e-9);
  for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
    g_assert_true (bf_ring_contains (relief->ring, ends[i]));
  g_assert_cmpfloat (relief->diameter_mm, >=, relief->need_mm + 1.5 - 1e-9);
}

/* ---- ends within an edge -------------------------------------------------------------------- */

/* One wall on the first edge, 20 from its start and 30 from its end. */
static BfPart *
make_inset (BfCuttingWay by, double angle_deg)
{
  BfPart *part = make_rectangle (200.0, 120.0);
  BfFlange *flange = add_flange (part, "front", 0, 40.0, angle_deg);

  part->cutting.by = by;
  flange->start_mm = 20.0;
  flange->end_mm = 30.0;
  return part;
}

/* A hole at the bend line's end: 2·(BA/2 + t/2) = 4.8458, with slack 6.3458. */
static void
test_end_holes (void)
{
  g_autoptr (BfPart) part = make_inset (BF_CUTTING_DISC, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const double x[] = { 20.0, 170.0 };

  g_assert_cmpuint (fold->reliefs->len, ==, 2);
  for (guint i = 0; i < 2; i++)
    {
      const BfRelief *relief = find_relief (fold, "front", i);

      g_assert_cmpint (relief->kind, ==, BF_RELIEF_KIND_END);
      g_assert_cmpint (relief->shape, ==, BF_RELIEF_ROUND);
      g_assert_cmpfloat_with_epsilon (relief->need_mm, BA_MM + 1.5, HAND_MM);
      assert_drill (relief, 6.5, "6.5 mm");
      assert_at (relief->at, bf_vec2 (x[i], BEND_LINE_MM), HAND_MM);
    }
}

/* A sharp bend that is drawn out, R 0 and K 0.3: the drawn line, S − BA/2 from the bend line, is
 * farther than the zone's edge: 2·(1.5 − 0.3534) = 2.2931. */
static void
test_end_hole_to_drawn_line (void)
{
  g_autoptr (BfPart) part = make_inset (BF_CUTTING_SNIPS, 90.0);
  g_autoptr (BfFold) fold = NULL;

  part->bend.inside_radius_mm = 0.0;
  part->bend.allowance.k = 0.3;
  fold = bf_fold (part);
  g_assert_cmpfloat_with_epsilon (find_relief (fold, "front", 0)->need_mm, 2.2931, HAND_MM);
}

/* A notch: 1.5 wide, as the metal is thick and as the kerf, from beyond the drawn edge to t/2 past
 * the tangent, which lies 3 in. */
static void
test_end_notches (void)
{
  g_autoptr (BfPart) part = make_inset (BF_CUTTING_TABLE, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  const double from[] = { 18.5, 170.0 };

  for (guint i = 0; i < 2; i++)
    {
      const BfRelief *relief = find_relief (fold, "front", i);
      BfBox box = bf_box_empty ();

      g_assert_cmpint (relief->shape, ==, BF_RELIEF_SQUARE);
      g_assert_cmpfloat_with_epsilon (relief->need_mm, 1.5, 1e-9);
      g_assert_cmpfloat_with_epsilon (relief->diameter_mm, 1.5, 1e-9);
      assert_no_drill (relief);
      bf_ring_extend_box (relief->ring, &box);
      g_assert_cmpfloat_with_epsilon (box.min.x, from[i], 1e-9);
      g_assert_cmpfloat_with_epsilon (box.max.x, from[i] + 1.5, 1e-9);
      g_assert_cmpfloat_with_epsilon (box.max.y, 3.75, 1e-9);
      g_assert_cmpfloat (box.min.y, <, 0.0);
    }
}

/* Thinner metal than the kerf: the kerf's width. Thicker: its own. */
static void
test_notch_width (void)
{
  static const double table[][3] = { { 1.0, 0.2, 1.0 }, { 1.0, 2.5, 2.5 } };

  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autoptr (BfPart) part = make_inset (BF_CUTTING_SERVICE, 90.0);
      g_autoptr (BfFold) fold = NULL;

      part->metal.thickness_mm = table[i][0];
      part->cutting.kerf_mm = table[i][1];
      fold = bf_fold (part);
      g_assert_cmpfloat_with_epsilon (find_relief (fold, "front", 0)->diameter_mm, table[i][2],
                                      1e-9);
    }
}

/* What the flange asks for goes before what its way of cutting gives. */
static void
test_end_asked (void)
{
  g_autoptr (BfPart) part = make_inset (BF_CUTTING_DISC, 90.0);
  g_autoptr (BfFold) fold = NULL;
  BfFlange *flange = g_ptr_array_index (part->flanges, 0);

  flange->start_relief = BF_END_RELIEF_NOTCH;
  flange->end_relief = BF_END_RELIEF_HOLE;
  fold = bf_fold (part);
  g_assert_cmpint (find_relief (fold, "front", 0)->shape, ==, BF_RELIEF_SQUARE);
  g_assert_cmpint (find_relief (fold, "front", 1)->shape, ==, BF_RELIEF_ROUND);
}

/* A flange as long as its edge, the edges beside it square to it and bare, needs none. */
static void
test_whole_edge (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfFold) fold = NULL;

  add_flange (part, "front", 0, 40.0, 90.0);
  fold = bf_fold (part);
  g_assert_cmpuint (fold->reliefs->len, ==, 0);
  g_assert_cmpuint (count_to_heed (fold), ==, 0);
}

/* What is cut is gone: each notch takes its width from the drawn edge to 3.75 in. */
static void
test_blank (void)
{
  g_autoptr (BfPart) part = make_inset (BF_CUTTING_TABLE, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  double before = 200.0 * 120.0 + 150.0 * (40.0 + BA_MM - 2.0 * 3.0);
  double notches = 2.0 * 1.5 * 3.75;

  g_assert_cmpfloat_with_epsilon (fold->blank.area_before_cuts_mm2, before, 0.01);
  g_assert_cmpfloat_with_epsilon (fold->blank.area_mm2, before - notches, 0.02);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/reliefs/corner/drilled", test_drilled);
  g_test_add_func ("/reliefs/corner/machine", test_machine);
  g_test_add_func ("/reliefs/corner/no-drill", test_no_drill);
  g_test_add_func ("/reliefs/corner/slack", test_slack);
  g_test_add_func ("/reliefs/corner/given", test_given);
  g_test_add_func ("/reliefs/corner/given-drill", test_given_drill);
  g_test_add_func ("/reliefs/corner/square", test_square);
  g_test_add_func ("/reliefs/corner/square-given", test_square_given);
  g_test_add_func ("/reliefs/corner/none", test_none);
  g_test_add_func ("/reliefs/corner/sharp", test_sharp_corner);
  g_test_add_func ("/reliefs/end/holes", test_end_holes);
  g_test_add_func ("/reliefs/end/hole-to-drawn-line", test_end_hole_to_drawn_line);
  g_test_add_func ("/reliefs/end/notches", test_end_notches);
  g_test_add_func ("/reliefs/end/notch-width", test_notch_width);
  g_test_add_func ("/reliefs/end/asked", test_end_asked);
  g_test_add_func ("/reliefs/end/whole-edge", test_whole_edge);
  g_test_add_func ("/reliefs/blank", test_blank);
  return g_test_run ();
}
