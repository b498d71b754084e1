/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The steps of metal, marking and drilling. */

#include <string.h>

#include "make-any.h"
#include "make-part.h"
#include "make/drill-list.h"
#include "read-work.h"

#define N_PARTS 60

/* ---- metal -------------------------------------------------------------------------------- */

/* Stock holds the blank one way or the other way round, and width and height are the blank's. */
static void
test_stock_holds_blank (void)
{
  guint held = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed, BF_CUTTING_DISC);
      const BfWorkStep *step = bf_work_stage_step (work, BF_STAGE_METAL, 0);
      const BfBox *box = &work->fold->blank.box;
      const BfWorkNumber *stock = number_of (step, "fits on");
      double width = box->max.x - box->min.x, height = box->max.y - box->min.y;
      double sides[2];

      g_assert_cmpfloat_with_epsilon (nth_number (number_of (step, "width")->value, 0), width,
                                      0.051);
      g_assert_cmpfloat_with_epsilon (nth_number (number_of (step, "height")->value, 0), height,
                                      0.051);
      if (stock == NULL)
        continue;
      held++;
      sides[0] = nth_number (stock->value, 0);
      sides[1] = nth_number (stock->value, 1);
      g_assert_true ((width <= sides[0] + 1e-6 && height <= sides[1] + 1e-6) ||
                     (width <= sides[1] + 1e-6 && height <= sides[0] + 1e-6));
    }
  g_assert_cmpuint (held, >, N_PARTS / 2);
}

/* 200 × 120 × 1.5 mm of each metal: densities as their standards have them (EN 10088-1 for 1.4301,
 * the Aluminum Association's for 5052, CEN's usual 7850 for steel, 8530 of C26000's data); a pound
 * is 0.45359237 kg. Reckoned by hand. */
static void
test_mass (void)
{
  static const struct
  {
    const char *material;
    BfUnits units;
    const char *mass;
  } rows[] = {
    { "mild-steel", BF_UNITS_MM, "0.28 kg" },         /* 36 cm³ of 7.85 */
    { "stainless-304", BF_UNITS_MM, "0.28 kg" },      /* 7.9 */
    { "aluminium-5052-h32", BF_UNITS_MM, "0.1 kg" },  /* 2.68: 0.0965 */
    { "brass-half-hard", BF_UNITS_MM, "0.31 kg" },    /* 8.53 */
    { "mild-steel", BF_UNITS_IN, "0.62 lb" },         /* 0.2826 kg */
    { "aluminium-5052-h32", BF_UNITS_IN, "0.21 lb" }, /* 0.0965 kg */
    { "unobtainium", BF_UNITS_MM, NULL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfWork) work = NULL;
      const BfWorkNumber *mass;

      g_free (part->metal.material);
      part->metal.material = g_strdup (rows[i].material);
      part->units = rows[i].units;
      work = work_of (part);
      mass = number_of (bf_work_stage_step (work, BF_STAGE_METAL, 0), "mass");
      g_assert_cmpstr (mass != NULL ? mass->value : NULL, ==, rows[i].mass);
    }
}

/* The metal's name and thickness are said; a known grain is a step of its own. */
static void
test_words (void)
{
  g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
  g_autoptr (BfWork) plain = work_of (part), grained = NULL;
  g_autoptr (BfPart) with_grain = bf_part_copy (part);

  g_assert_nonnull (find_step (plain, BF_STAGE_METAL, "Mild steel 1.5 mm"));
  g_assert_cmpuint (bf_work_n_steps (plain, BF_STAGE_METAL), ==, 1);
  with_grain->metal.grain_deg = 30.0;
  grained = work_of (with_grain);
  g_assert_cmpuint (bf_work_n_steps (grained, BF_STAGE_METAL), ==, 2);
  g_assert_nonnull (find_step (grained, BF_STAGE_METAL, "runs at 30° to its lower edge"));
}

/* ---- mark and drill ----------------------------------------------------------------------- */

/* Every step of marking-out is a step of the work, drills in their own stage, in the same order. */
static void
test_marking_is_all_there (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed, BF_CUTTING_SNIPS);
      guint mark = 1, drill = 0;

      for (guint i = 0; i < work->marking_steps->len; i++)
        {
          const BfMarkingStep *step = &g_array_index (work->marking_steps, BfMarkingStep, i);
          gboolean drills = step->kind == BF_STEP_DRILL;
          const BfWorkStep *told = drills ? bf_work_stage_step (work, BF_STAGE_DRILL, drill++)
                                          : bf_work_stage_step (work, BF_STAGE_MARK, mark++);

          g_assert_cmpint (told->shows, ==, BF_SHOWS_MARKING);
          g_assert_cmpint (told->at, ==, (int)i);
          if (step->kind == BF_STEP_STRIKE)
            g_assert_cmpfloat_with_epsilon (nth_number (number_of (told, "square")->value, 0),
                                            step->size_mm, 0.051);
        }
      g_assert_cmpuint (mark, ==, bf_work_n_steps (work, BF_STAGE_MARK));
      g_assert_cmpuint (drill, ==, bf_work_n_steps (work, BF_STAGE_DRILL));
    }
}

/* One step a drill, as many as there are sizes in the list of what is drilled. */
static void
test_one_step_a_drill (void)
{
  guint drills = 0;

  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed, BF_CUTTING_DISC);
      g_autoptr (GArray) list = bf_drill_list (work->fold);
      guint sizes = 0;
      double last = -1.0;

      for (guint i = 0; i < list->len; i++)
        {
          const BfDrilled *hole = &g_array_index (list, BfDrilled, i);

          sizes += hole->diameter_mm > last + 1e-6 ? 1 : 0;
          last = hole->diameter_mm;
        }
      g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_DRILL), ==, sizes);
      drills += sizes;
    }
  g_assert_cmpuint (drills, >, N_PARTS / 2);
}

/* A machine marks and drills by itself. */
static void
test_machine (void)
{
  static const BfCuttingWay ways[] = { BF_CUTTING_TABLE, BF_CUTTING_SERVICE };

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      g_autoptr (BfWork) work = NULL;

      part->cutting.by = ways[i];
      work = work_of (part);
      g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_MARK), ==, 1);
      g_assert_nonnull (find_step (work, BF_STAGE_MARK, "Nothing to mark"));
      g_assert_cmpuint (bf_work_n_steps (work, BF_STAGE_DRILL), ==, 0);
    }
}

/* Marks and the biggest error are said with the first step of marking: by the rule asked for, by
 * the finest where none is, or one of other units; the error is never more than half a mark. */
static void
test_rule (void)
{
  static const struct
  {
    const char *asked;
    BfUnits units;
    const char *marks;
    double most_mm;
  } rows[] = {
    { NULL, BF_UNITS_MM, "0.5 mm", 0.25 },
    { "1", BF_UNITS_MM, "1 mm", 0.5 },
    { "1/16", BF_UNITS_MM, "0.5 mm", 0.25 },
    { NULL, BF_UNITS_IN, "1/32 in", 25.4 / 64.0 },
    { "1/16", BF_UNITS_IN, "1/16 in", 25.4 / 32.0 },
    { "1/32", BF_UNITS_IN, "1/32 in", 25.4 / 64.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 40.0, 90.0);
      BfWorkOptions options = { .marks = bf_rule_marks_find (rows[i].asked) };
      g_autoptr (BfFold) fold = NULL;
      g_autoptr (BfWork) work = NULL;
      const BfWorkStep *step;

      part->units = rows[i].units;
      fold = bf_fold (part);
      work = bf_work_new (fold, &options);
      step = bf_work_stage_step (work, BF_STAGE_MARK, 0);
      assert_number (step, "marks of the rule", rows[i].marks);
      g_assert_cmpfloat (work->marking->worst_mm, <=, rows[i].most_mm + 1e-9);
      g_assert_cmpfloat (work->marking->worst_mm, >, rows[i].most_mm / 2.0);
      if (rows[i].units == BF_UNITS_IN)
        assert_number (step, "off by at most", i == 4 ? "1/32 in" : "1/64 in");
      else
        g_assert_cmpfloat_with_epsilon (nth_number (number_of (step, "off by at most")->value, 0),
                                        work->marking->worst_mm + 0.005, 0.005 + 1e-9);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/work-metal/stock-holds-blank", test_stock_holds_blank);
  g_test_add_func ("/make/work-metal/mass", test_mass);
  g_test_add_func ("/make/work-metal/words", test_words);
  g_test_add_func ("/make/work-metal/marking-is-all-there", test_marking_is_all_there);
  g_test_add_func ("/make/work-metal/one-step-a-drill", test_one_step_a_drill);
  g_test_add_func ("/make/work-metal/rule", test_rule);
  g_test_add_func ("/make/work-metal/machine", test_machine);
  return g_test_run ();
}
