/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "comma-locale.h"
#include "make-part.h"
#include "paint/blank-labels.h"

#define STEPS 24 /* points looked at along each side of a label */

/* Every word where it hides nothing: looked at by points on the labels' own ground. */

static double
distance_to_line (BfVec2 p, BfVec2 a, BfVec2 b)
{
  BfVec2 step = bf_vec2_sub (b, a);
  double length = bf_vec2_dot (step, step);
  double share = length > 0.0 ? bf_vec2_dot (bf_vec2_sub (p, a), step) / length : 0.0;

  return bf_vec2_distance (p, bf_vec2_along (a, step, CLAMP (share, 0.0, 1.0)));
}

static double
distance_to_ring (BfVec2 p, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  double nearest = HUGE_VAL;

  bf_ring_flatten (ring, 0.05, points);
  for (guint i = 0; i < points->len; i++)
    nearest =
        MIN (nearest, distance_to_line (p, g_array_index (points, BfVec2, i),
                                        g_array_index (points, BfVec2, (i + 1) % points->len)));
  return nearest;
}

static double
distance_to_lines (BfVec2 p, const BfFold *fold)
{
  double nearest = HUGE_VAL;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    nearest = MIN (nearest, distance_to_ring (p, bf_blank_ring (&fold->blank, i)));
  for (guint i = 0; i < fold->bends->len; i++)
    nearest = MIN (nearest, distance_to_line (p, bf_fold_bend (fold, i)->line[0],
                                              bf_fold_bend (fold, i)->line[1]));
  return nearest;
}

static BfVec2
ground_point (const BfPlate *plate, int i, int j)
{
  BfVec2 up = { -plate->along.y, plate->along.x };
  double u = ((double)i / STEPS - 0.5) * plate->width, v = ((double)j / 4 - 0.5) * plate->height;

  return bf_vec2_along (bf_vec2_along (plate->centre, plate->along, u), up, v);
}

static gboolean
plate_holds (const BfPlate *plate, BfVec2 p)
{
  BfVec2 away = bf_vec2_sub (p, plate->centre);

  return fabs (bf_vec2_dot (away, plate->along)) < plate->width / 2.0 - 1e-6 &&
         fabs (bf_vec2_cross (away, plate->along)) < plate->height / 2.0 - 1e-6;
}

static void
assert_hides_nothing (const BfFold *fold, const GPtrArray *labels)
{
  for (guint k = 0; k < labels->len; k++)
    {
      const BfBlankLabel *label = g_ptr_array_index (labels, k);
      for (int i = 0; i <= STEPS; i++)
        for (int j = 0; j <= 4; j++)
          {
            BfVec2 p = ground_point (&label->plate, i, j);
            g_assert_cmpfloat (distance_to_lines (p, fold), >, 0.5);
            for (guint other = 0; other < k; other++)
              {
                const BfBlankLabel *earlier = g_ptr_array_index (labels, other);
                g_assert_false (plate_holds (&earlier->plate, p));
              }
          }
    }
}

static guint
count_words (const GPtrArray *labels, const char *words)
{
  guint n = 0;

  for (guint i = 0; i < labels->len; i++)
    n += strcmp (((const BfBlankLabel *)g_ptr_array_index (labels, i))->words, words) == 0;
  return n;
}

static GPtrArray *
labels_of (const BfFold *fold, const BfBox *view, double turn_rad)
{
  BfBlankStyle style;

  bf_blank_style_init (&style, fold);
  style.view = view;
  style.turn_rad = turn_rad;
  return bf_blank_labels (fold, &style);
}

static void
test_tray (void)
{
  g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = NULL;
  g_autoptr (GPtrArray) labels = NULL;

  g_free (part->name);
  part->name = g_strdup ("Tray");
  fold = bf_fold (part);
  labels = labels_of (fold, NULL, 0.0);
  g_assert_cmpuint (count_words (labels, "fold up 90°"), ==, 4);
  g_assert_cmpuint (count_words (labels, "f0, 40"), ==, 1);
  g_assert_cmpuint (count_words (labels, "f3, 40"), ==, 1);
  g_assert_cmpuint (count_words (labels, "Tray"), ==, 1);
  g_assert_cmpuint (labels->len, ==, 13);
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      g_autofree char *words = g_strdup_printf ("drill %s", bf_fold_relief (fold, i)->drill);
      g_assert_cmpuint (count_words (labels, words), ==, 4);
    }
  assert_hides_nothing (fold, labels);
}

/* The words of a bend by its angle and turn. */
static void
test_bend_words (void)
{
  static const struct
  {
    double angle_deg;
    BfTurn turn;
    const char *words, *full;
  } bends[] = {
    { 90, BF_TURN_UP, "fold up 90°", "fold up 90°" },
    { 90, BF_TURN_DOWN, "fold down 90°", "fold down 90°" },
    { 30, BF_TURN_DOWN, "fold down 30°", "fold down 30° (opening 150°, leans out)" },
    { 75, BF_TURN_UP, "fold up 75°", "fold up 75° (opening 105°, leans out)" },
    { 105, BF_TURN_UP, "fold up 105°", "fold up 105° (opening 75°, leans in)" },
    { 180, BF_TURN_UP, "fold up 180°", "fold up 180° (hem)" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (bends); i++)
    {
      BfBendResult bend = { .angle_rad = bf_deg_to_rad (bends[i].angle_deg),
                            .turn = bends[i].turn };
      g_autofree char *words = bf_blank_bend_words (&bend);
      g_autofree char *full = bf_blank_bend_full_words (&bend);
      g_assert_cmpstr (words, ==, bends[i].words);
      g_assert_cmpstr (full, ==, bends[i].full);
    }
}

/* Whatever part it is, words hide no line and no other words, and every bend that has room for
 * its words has them. */
static void
test_random (void)
{
  for (guint seed = 1; seed <= 25; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GPtrArray) labels = labels_of (fold, NULL, seed % 2 == 0 ? 0.0 : G_PI / 2.0);
      g_test_message ("seed %u: %u labels", seed, labels->len);
      assert_hides_nothing (fold, labels);
    }
}

/* What is half seen has its words where it is seen. */
static void
test_view (void)
{
  g_autoptr (BfPart) part = make_tray (400.0, 120.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  BfBox view = { { -60.0, -60.0 }, { 100.0, 180.0 } };
  g_autoptr (GPtrArray) labels = labels_of (fold, &view, 0.0);

  g_assert_cmpuint (count_words (labels, "fold up 90°"), ==, 3);
  g_assert_cmpuint (count_words (labels, "f1, 40"), ==, 0);
  g_assert_cmpuint (count_words (labels, "f2, 40"), ==, 1);
  for (guint i = 0; i < labels->len; i++)
    {
      const BfBlankLabel *label = g_ptr_array_index (labels, i);
      BfVec2 corners[4];
      bf_plate_corners (&label->plate, corners);
      for (int c = 0; c < 4; c++)
        {
          g_assert_cmpfloat (corners[c].x, <=, view.max.x);
          g_assert_cmpfloat (corners[c].x, >=, view.min.x);
        }
    }
}

/* Words are read from below or from the right, also on a page where the blank is turned. */
static void
test_upright (void)
{
  for (int i = 0; i < 36; i++)
    for (int quarter = 0; quarter < 4; quarter++)
      {
        double angle = bf_deg_to_rad (10.0 * i), turn = quarter * G_PI / 2.0;
        BfVec2 along = bf_blank_upright (bf_vec2 (cos (angle), sin (angle)), turn);
        double shown = atan2 (along.y, along.x) + turn;
        g_assert_cmpfloat (cos (shown), >, -1e-5);
        g_assert_true (cos (shown) > 1e-5 || sin (shown) > 0.0);
      }
}

/* Holes are drilled by hand, but not by a machine and not past what a chuck holds. */
static void
test_holes (void)
{
  static const struct
  {
    BfCuttingWay by;
    double diameter_mm;
    const char *words;
  } holes[] = { { BF_CUTTING_DISC, 6.0, "drill 6 mm" },
                { BF_CUTTING_SNIPS, 13.0, "drill 13 mm" },
                { BF_CUTTING_DISC, 14.0, "hole 14 mm" },
                { BF_CUTTING_TABLE, 6.0, "hole 6 mm" },
                { BF_CUTTING_SERVICE, 6.0, "hole 6 mm" } };

  for (guint i = 0; i < G_N_ELEMENTS (holes); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (100.0, 80.0);
      BfOpening *opening = bf_opening_new ("base", BF_OPENING_ROUND);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GPtrArray) labels = NULL;
      opening->at_mm = bf_vec2 (40.0, 40.0);
      opening->diameter_mm = holes[i].diameter_mm;
      g_ptr_array_add (part->openings, opening);
      part->cutting.by = holes[i].by;
      fold = bf_fold (part);
      labels = labels_of (fold, NULL, 0.0);
      g_assert_cmpuint (count_words (labels, holes[i].words), ==, 1);
    }
}

/* At 1:5 words and what they keep off are five times as large on the blank. */
static void
test_unit (void)
{
  g_autoptr (BfPart) part = make_tray (900.0, 700.0, 200.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (GPtrArray) labels = NULL;
  BfBlankStyle style;

  bf_blank_style_init (&style, fold);
  style.unit = 5.0;
  style.layers = BF_BLANK_BEND_NOTES;
  labels = bf_blank_labels (fold, &style);
  g_assert_cmpuint (labels->len, ==, 4);
  for (guint i = 0; i < labels->len; i++)
    {
      const BfBlankLabel *label = g_ptr_array_index (labels, i);
      g_assert_cmpfloat_with_epsilon (label->cap_height_mm, 5.0 * style.cap_height_mm, 1e-9);
    }
}

/* A German reads no number with a point: not a size, an angle, or a drill's. */
static void
test_decimal_comma (void)
{
  static const BfDrillSet drills[] = { BF_DRILLS_METRIC, BF_DRILLS_NUMBER, BF_DRILLS_FRACTION };
  guint n_commas = 0;

  if (!comma_locale_begin ())
    return;
  for (guint i = 0; i < G_N_ELEMENTS (drills); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.5, 120.5, 40.5, 72.5);
      part->cutting.drills = drills[i];
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (GPtrArray) labels = labels_of (fold, NULL, 0.0);
      g_assert_cmpuint (labels->len, >, 8);
      for (guint k = 0; k < labels->len; k++)
        {
          const char *words = ((const BfBlankLabel *)g_ptr_array_index (labels, k))->words;
          g_assert_false (g_regex_match_simple ("[0-9][.][0-9]", words, 0, 0));
          n_commas += strchr (words, ',') != NULL && strstr (words, "drill") != NULL;
        }
    }
  g_assert_cmpuint (n_commas, >, 0);
  comma_locale_end ();
}

/* ---- many holes ---------------------------------------------------------------------------- */

static void
add_holes (BfPart *part, guint n, double y_mm, double diameter_mm)
{
  for (guint i = 0; i < n; i++)
    {
      BfOpening *hole = bf_opening_new ("base", BF_OPENING_ROUND);

      hole->at_mm = bf_vec2 (20.0 + 15.0 * i, y_mm);
      hole->diameter_mm = diameter_mm;
      g_ptr_array_add (part->openings, hole);
    }
}

/* Up to a dozen holes of one size are told each; of more, one tells it for all, or for all that are
 * not told by themselves. */
static void
test_many_holes (void)
{
  static const struct
  {
    guint n, n_others;
    guint told, told_others;
    const char *words;
  } rows[] = {
    { 12, 0, 12, 0, NULL },
    { 13, 0, 0, 0, "all holes: drill 6 mm" },
    { 13, 2, 0, 2, "all other holes: drill 6 mm" },
    { 12, 12, 12, 12, NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (260.0, 120.0);
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (GPtrArray) labels = NULL;

      add_holes (part, rows[i].n, 40.0, 6.0);
      add_holes (part, rows[i].n_others, 80.0, 8.0);
      fold = bf_fold (part);
      labels = labels_of (fold, NULL, 0.0);
      g_assert_cmpuint (count_words (labels, "drill 6 mm"), ==, rows[i].told);
      g_assert_cmpuint (count_words (labels, "drill 8 mm"), ==, rows[i].told_others);
      if (rows[i].words != NULL)
        g_assert_cmpuint (count_words (labels, rows[i].words), ==, 1);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/blank-labels/tray", test_tray);
  g_test_add_func ("/blank-labels/bend-words", test_bend_words);
  g_test_add_func ("/blank-labels/random", test_random);
  g_test_add_func ("/blank-labels/view", test_view);
  g_test_add_func ("/blank-labels/upright", test_upright);
  g_test_add_func ("/blank-labels/holes", test_holes);
  g_test_add_func ("/blank-labels/decimal-comma", test_decimal_comma);
  g_test_add_func ("/blank-labels/unit", test_unit);
  g_test_add_func ("/blank-labels/many-holes", test_many_holes);
  return g_test_run ();
}
