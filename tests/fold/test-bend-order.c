/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-file.h"
#include "fold/bend-order.h"
#include "look-up.h"
#include "make-part.h"

/* The order as "f0 f2 …", or with what is at fault: "lip:bar". */
static char *
order_words (const BfFold *fold)
{
  static const char *const faults[] = { "", ":hold", ":bar", ":swing" };
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < fold->order->len; i++)
    {
      const BfBendStep *step = bf_fold_bend_step (fold, i);

      g_string_append_printf (words, "%s%s%s", i > 0 ? " " : "",
                              bf_fold_bend (fold, step->bend)->flange, faults[step->reach.fault]);
    }
  return g_string_free (words, FALSE);
}

static void
assert_order (BfPart *part, const char *wanted)
{
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autofree char *words = order_words (fold);

  g_assert_cmpstr (words, ==, wanted);
}

/* Long walls before the short ones that end between them, and opposite ones together. */
static void
test_pairs (void)
{
  g_autoptr (BfPart) tray = make_tray (200.0, 120.0, 40.0, 90.0);
  g_autoptr (BfPart) deep = make_tray (120.0, 200.0, 40.0, 90.0);

  assert_order (tray, "f0 f2 f1 f3");
  assert_order (deep, "f1 f3 f0 f2");
}

/* What hangs on a wall comes before it, hems before everything. */
static void
test_lips_first (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);

  add_flange (part, "front", 0, 60.0, 90.0);
  add_flange (part, "back", 2, 60.0, 90.0);
  add_lip (part, "a-lip", "front", 15.0, 90.0);
  add_lip (part, "hem", "back", 10.0, 180.0);
  assert_order (part, "hem a-lip back front");
}

/* The bar is 10 mm high: a lip that comes in over it passes, a lower one does not, and once the
 * wall stands there is no room for a bar beside it either. */
static void
test_lip_over_bar (void)
{
  static const struct
  {
    double wall_mm;
    const char *order;
  } rows[] = { { 15.0, "lip front" }, { 12.0, "lip front:bar" } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (100.0, 60.0);

      add_flange (part, "front", 0, rows[i].wall_mm, 90.0);
      add_lip (part, "lip", "front", 16.0, 90.0);
      assert_order (part, rows[i].order);
    }
}

/* A channel: the second wall needs a bar between the walls, or one on that wall. */
static void
make_channel (double inside_mm, BfBendWay way, BfPart **part)
{
  *part = make_rectangle (100.0, inside_mm + 3.0);
  add_flange (*part, "front", 0, 60.0, 90.0);
  add_flange (*part, "back", 2, 60.0, 90.0);
  (*part)->bend.way = way;
}

static void
test_channel (void)
{
  static const struct
  {
    double inside_mm;
    BfBendWay way;
    gboolean reached;
  } rows[] = {
    { 30.0, BF_BEND_WAY_BAR, TRUE },
    { 12.5, BF_BEND_WAY_BAR, TRUE }, /* the wall lies on a bar 10 high, under the other wall */
    { 9.0, BF_BEND_WAY_BAR, FALSE },
    { 9.0, BF_BEND_WAY_BRAKE, FALSE },
    { 9.0, BF_BEND_WAY_SLOTS, TRUE }, /* nothing is clamped */
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      BfPart *part;
      g_autoptr (BfFold) fold = NULL;
      const BfCheck *check;

      make_channel (rows[i].inside_mm, rows[i].way, &part);
      fold = bf_fold (part);
      bf_part_unref (part);
      check = find_check (fold, "cannot-reach", NULL);
      g_assert_true ((check == NULL) == rows[i].reached);
      if (check == NULL)
        continue;
      g_assert_cmpint (check->severity, ==, BF_SEVERITY_LOOK_AT);
      g_assert_cmpfloat_with_epsilon (check->needed, BF_BAR_WIDTH_MM, 1e-9);
      g_assert_cmpfloat (check->found, <, check->needed);
    }
}

/* A strip between two bends in opposite directions: too narrow a middle cannot be held, but then
 * the wide sides can. */
static void
test_hold (void)
{
  g_autoptr (BfPart) part = make_rectangle (5.0, 60.0);
  g_autoptr (BfFold) fold = NULL;
  const BfCheck *check;

  add_flange (part, "left", 3, 8.0, 90.0);
  fold = bf_fold (part);
  check = find_check (fold, "cannot-reach", "left");
  g_assert_nonnull (check);
  g_assert_cmpfloat_with_epsilon (check->needed, BF_BAR_HOLD_MM, 1e-9);
  /* 8 less R + t = 3 is 5, and 5 less 3 is 2: the better of the two is named. */
  g_assert_cmpfloat_with_epsilon (check->found, 5.0, 1e-6);
}

static void
test_hold_is_enough (void)
{
  g_autoptr (BfPart) part = make_rectangle (5.0, 60.0);

  add_flange (part, "left", 3, 9.01, 90.0);
  assert_order (part, "left");
}

/* Whatever the part, and even where something cannot be reached, no bend is left out. */
static void
test_every_bend_once (void)
{
  for (guint seed = 0; seed < 60; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autofree gboolean *seen = g_new0 (gboolean, fold->bends->len + 1);

      g_assert_cmpuint (fold->order->len, ==, fold->bends->len);
      for (guint i = 0; i < fold->order->len; i++)
        {
          guint bend = bf_fold_bend_step (fold, i)->bend;

          g_assert_false (seen[bend]);
          seen[bend] = TRUE;
        }
    }
}

/* The order says of each step that it can be made with those before it made: tried again here, and
 * found the same; with nothing made every bend of a part with room round it can be. */
static void
test_steps_hold (void)
{
  for (guint seed = 100; seed < 130; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autoptr (BfReachTest) test = bf_reach_test_new (fold);
      g_autofree gboolean *made = g_new0 (gboolean, fold->bends->len + 1);

      for (guint i = 0; i < fold->order->len; i++)
        {
          const BfBendStep *step = bf_fold_bend_step (fold, i);
          BfReach again = bf_reach_try (test, step->bend, made);

          g_assert_cmpint (again.fault, ==, step->reach.fault);
          g_assert_cmpint (again.held, ==, step->reach.held);
          made[step->bend] = TRUE;
        }
    }
}

/* Mirrored, what could not be reached still cannot. */
static void
test_mirror (void)
{
  for (guint seed = 200; seed < 230; seed++)
    {
      g_autoptr (BfPart) part = make_random (seed);
      g_autoptr (BfPart) other = bf_part_mirror (part);
      g_autoptr (BfFold) fold = bf_fold (part), mirrored = bf_fold (other);

      g_assert_true ((find_check (fold, "cannot-reach", NULL) == NULL) ==
                     (find_check (mirrored, "cannot-reach", NULL) == NULL));
    }
}

/* ---- walls that share a folded corner ------------------------------------------------------- */

/* A tray of 0.5 mm, its corners folded for which the bit is set; the others are open. */
static BfPart *
make_folded (double width_mm, double depth_mm, guint corners)
{
  BfPart *part = make_tray (width_mm, depth_mm, 12.0, 90.0);

  part->metal.thickness_mm = part->bend.inside_radius_mm = 0.5;
  for (guint i = 0; i < 4; i++)
    {
      BfCorner *corner = bf_corner_new ("base", i);

      corner->join = corners & (1u << i) ? BF_JOIN_FOLDED : BF_JOIN_OPEN;
      g_ptr_array_add (part->corners, corner);
    }
  return part;
}

/* The order, what rises in step in brackets. */
static char *
groups_words (const BfFold *fold)
{
  GString *words = g_string_new (NULL);
  guint last = 0;

  for (guint i = 0; i < fold->order->len; i++)
    {
      const BfBendStep *step = bf_fold_bend_step (fold, i);

      if (last > 0 && step->in_step != last)
        g_string_append (words, ")");
      g_string_append_printf (words, "%s%s%s", i > 0 ? " " : "",
                              step->in_step > 0 && step->in_step != last ? "(" : "",
                              bf_fold_bend (fold, step->bend)->flange);
      last = step->in_step;
    }
  if (last > 0)
    g_string_append (words, ")");
  return g_string_free (words, FALSE);
}

/* Corner i lies between wall i − 1 and wall i. The long walls of a tray are f0 and f2. */
static const struct
{
  guint corners;
  const char *words;
} in_step[] = {
  { 0, "f0 f2 f1 f3" },
  { 1u << 1, "f3 f2 (f0 f1)" },
  { 15, "(f0 f2 f1 f3)" },
  { 5, "(f1 f2) (f0 f3)" },
  { (1u << 1) | (1u << 2), "f3 (f0 f2 f1)" },
};

static void
test_in_step (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (in_step); i++)
    {
      g_autoptr (BfPart) part = make_folded (200.0, 120.0, in_step[i].corners);
      g_autoptr (BfFold) fold = bf_fold (part);
      g_autofree char *words = groups_words (fold);

      g_assert_cmpstr (words, ==, in_step[i].words);
      g_assert_null (find_check (fold, "cannot-reach", NULL));
    }
}

/* Of four walls that rise in step each stands a quarter up when the first has had its turn. */
static void
test_stand_in_step (void)
{
  g_autoptr (BfPart) part = make_folded (200.0, 120.0, 15);
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint made = 0; made <= 4; made++)
    {
      g_auto (BfFormed) formed = { 0 };
      guint n = 0;

      bf_fold_formed_after (fold, made, &formed);
      for (guint i = 0; i < formed.solids->len; i++)
        {
          const BfSolid *solid = bf_formed_solid (&formed, i);

          if (solid->kind != BF_SOLID_SECTOR || solid->on != 0)
            continue;
          g_assert_cmpfloat_with_epsilon (solid->angle_rad, G_PI_2 * made / 4.0, 1e-5);
          n++;
        }
      g_assert_cmpuint (n, ==, 4);
    }
}

static guint
count_out_of_reach (BfPart *part)
{
  g_autoptr (BfFold) fold = bf_fold (part);
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    n += g_str_equal (bf_fold_check (fold, i)->code, "cannot-reach") ? 1 : 0;
  return n;
}

/* Walls that rise in step all stand in each other's way. In a tray that is narrower than the bar,
 * with walls too low to lie between bars themselves, one long wall can be made before the other
 * stands, but not two in step. */
static void
test_in_step_blocks (void)
{
  for (guint i = 0; i < 2; i++)
    {
      g_autoptr (BfPart) part = make_folded (120.0, 19.0, i == 0 ? 0 : 15);

      for (guint k = 0; k < 4; k++)
        ((BfFlange *)part->flanges->pdata[k])->length_mm = 6.5;
      g_assert_cmpuint (count_out_of_reach (part), ==, i == 0 ? 1 : 2);
    }
}

/* Every part that we show people can be made. */
static void
test_examples (void)
{
  static const char *const names[] = { "drip-pan", "hex-bit-caddy", "lever-rail", "pump-bracket",
                                       "rag-bin",  "spoke-tray",    "tool-shelf" };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autofree char *name = g_strconcat (names[i], BF_PART_FILE_SUFFIX, NULL);
      g_autofree char *path =
          g_build_filename (g_getenv ("BENCHFOLD_DATA"), "examples", name, NULL);
      g_autoptr (GFile) file = g_file_new_for_path (path);
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = bf_part_load (file, &error);
      g_autoptr (BfFold) fold = NULL;
      g_autofree char *words = NULL;

      g_assert_no_error (error);
      fold = bf_fold (part);
      words = order_words (fold);
      g_test_message ("%s: %s", names[i], words);
      g_assert_null (find_check (fold, "cannot-reach", NULL));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bend-order/pairs", test_pairs);
  g_test_add_func ("/bend-order/lips-first", test_lips_first);
  g_test_add_func ("/bend-order/lip-over-bar", test_lip_over_bar);
  g_test_add_func ("/bend-order/channel", test_channel);
  g_test_add_func ("/bend-order/hold", test_hold);
  g_test_add_func ("/bend-order/hold-is-enough", test_hold_is_enough);
  g_test_add_func ("/bend-order/every-bend-once", test_every_bend_once);
  g_test_add_func ("/bend-order/steps-hold", test_steps_hold);
  g_test_add_func ("/bend-order/mirror", test_mirror);
  g_test_add_func ("/bend-order/in-step", test_in_step);
  g_test_add_func ("/bend-order/stand-in-step", test_stand_in_step);
  g_test_add_func ("/bend-order/in-step-blocks", test_in_step_blocks);
  g_test_add_func ("/bend-order/examples", test_examples);
  return g_test_run ();
}
