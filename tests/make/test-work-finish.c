/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The last steps: what to measure, and what bare metal needs. */

#include <string.h>

#include "core/units.h"
#include "make-any.h"
#include "make-part.h"
#include "make/sizes.h"
#include "read-work.h"

#define N_PARTS 60

static const BfWorkStep *
measuring (const BfWork *work)
{
  return bf_work_stage_step (work, BF_STAGE_FINISH, 0);
}

/* ---- what to measure ---------------------------------------------------------------------- */

/* The sizes said are the part's main ones, in their order, each with what it may be off by. */
static void
test_sizes_said (void)
{
  for (guint seed = 0; seed < N_PARTS; seed++)
    {
      g_autoptr (BfWork) work = work_of_any (seed, BF_CUTTING_DISC);
      g_autoptr (GArray) sizes = bf_main_sizes (work->fold);
      const BfWorkStep *step = measuring (work);

      g_assert_cmpuint (step->n_numbers, ==, MIN (sizes->len, BF_WORK_MAX_NUMBERS));
      for (guint i = 0; i < step->n_numbers; i++)
        {
          const BfMainSize *size = bf_main_size (sizes, i);
          const char *label = size->name != NULL ? size->name
                              : size->across     ? "base depth"
                                                 : "base width";

          g_assert_cmpstr (step->numbers[i].label, ==, label);
          g_assert_cmpfloat_with_epsilon (nth_number (step->numbers[i].value, 0), size->size_mm,
                                          0.051);
          g_assert_cmpfloat_with_epsilon (nth_number (step->numbers[i].value, 1),
                                          size->error.total_mm, 0.051);
        }
    }
}

/* The culprit named is that of the size that may be off most. A disc by hand is off by its cut; a
 * service's cut is near enough, so that a bend on thin metal is off by where it is made, and on
 * thick metal by its allowance. */
static void
test_culprit (void)
{
  static const struct
  {
    BfCuttingWay by;
    double thickness_mm;
    const char *culprit;
  } rows[] = {
    { BF_CUTTING_DISC, 1.5, "comes from the cutting." },
    { BF_CUTTING_SERVICE, 1.0, "comes from where the bend is made." },
    { BF_CUTTING_SERVICE, 12.0, "comes from the allowance for the bend." },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_tray (200.0, 120.0, 60.0, 90.0);
      g_autoptr (BfWork) work = NULL;

      part->cutting.by = rows[i].by;
      part->metal.thickness_mm = rows[i].thickness_mm;
      part->bend.inside_radius_mm = rows[i].thickness_mm;
      work = work_of (part);
      g_assert_nonnull (strstr (measuring (work)->words, rows[i].culprit));
    }
}

/* In inches, with decimals that mean something there: 1.08 mm is 0.04 in. */
static void
test_inches (void)
{
  g_autoptr (BfPart) part = make_rectangle (8.0 * BF_MM_PER_INCH, 4.75 * BF_MM_PER_INCH);
  g_autoptr (BfWork) work = NULL;

  part->units = BF_UNITS_IN;
  part->cutting.by = BF_CUTTING_DISC;
  work = work_of (part);
  assert_number (measuring (work), "base width", "8 ± 0.04");
  assert_number (measuring (work), "base depth", "4 3/4 ± 0.04");
}

/* ---- what comes after --------------------------------------------------------------------- */

/* Bare steel is painted; a part never leaves without the word on loads. */
static void
test_paint_and_loads (void)
{
  static const struct
  {
    const char *material;
    gboolean paint;
  } rows[] = {
    { "mild-steel", TRUE },        { NULL, TRUE },    { "stainless-304", FALSE },
    { "brass-half-hard", FALSE },  { "zinc", FALSE }, { "aluminium-6061-t6", FALSE },
    { "galvanized-steel", FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_rectangle (200.0, 120.0);
      g_autoptr (BfWork) work = NULL;
      const BfWorkStep *last;

      g_free (part->metal.material);
      part->metal.material = g_strdup (rows[i].material);
      work = work_of (part);
      last =
          bf_work_stage_step (work, BF_STAGE_FINISH, bf_work_n_steps (work, BF_STAGE_FINISH) - 1);
      g_assert_true ((find_step (work, BF_STAGE_FINISH, "paint it the same day") != NULL) ==
                     rows[i].paint);
      g_assert_nonnull (strstr (last->caution, "Nothing here is a load rating"));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/work-finish/sizes-said", test_sizes_said);
  g_test_add_func ("/make/work-finish/culprit", test_culprit);
  g_test_add_func ("/make/work-finish/inches", test_inches);
  g_test_add_func ("/make/work-finish/paint-and-loads", test_paint_and_loads);
  return g_test_run ();
}
