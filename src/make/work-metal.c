/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/setup-sentence.h"
#include "core/units.h"
#include "fold/stock.h"
#include "make/work-private.h"

#define KG_PER_LB 0.45359237 /* exact: international yard and pound, 1959 */

/* ---- metal -------------------------------------------------------------------------------- */

static char *
mass_text (const BfFold *fold)
{
  g_autofree char *number = NULL;

  if (fold->part->units == BF_UNITS_IN)
    {
      number = bf_format_decimal (fold->blank.mass_kg / KG_PER_LB, 2);
      /* Translators: a mass in pounds */
      return g_strdup_printf (_ ("%s lb"), number);
    }
  number = bf_format_decimal (fold->blank.mass_kg, 2);
  /* Translators: a mass in kilograms */
  return g_strdup_printf (_ ("%s kg"), number);
}

static void
add_sizes (BfWork *work, BfWorkStep *step)
{
  const BfMarking *marking = work->marking;

  bf_work_add_length (work, step, _ ("width"), marking->width.exact_mm);
  bf_work_add_length (work, step, _ ("height"), marking->height.exact_mm);
  if (!isnan (work->fold->blank.mass_kg))
    bf_work_add_number (step, _ ("mass"), mass_text (work->fold));
}

void
bf_work_add_metal (BfWork *work)
{
  const BfPart *part = work->fold->part;
  g_autofree char *metal = bf_setup_phrase (part, BF_SETUP_METAL);
  g_autofree char *grain =
      isnan (part->metal.grain_deg) ? NULL : bf_format_angle (part->metal.grain_deg);
  char *stock =
      bf_stock_name (work->marking->width.exact_mm, work->marking->height.exact_mm, part->units);
  BfWorkStep *step;

  step = bf_work_add (
      work, BF_STAGE_METAL,
      /* Translators: a metal and its thickness, "Mild steel 1.5 mm" */
      g_strdup_printf (_ ("Take a flat piece: %s. Measure the thickness: all sizes hang on it."),
                       metal));
  add_sizes (work, step);
  if (stock != NULL)
    bf_work_add_number (step, _ ("fits on"), stock);
  step->caution = _ ("Raw edges cut: wear gloves to carry the metal, none at a turning drill.");
  if (grain != NULL)
    bf_work_add (
        work, BF_STAGE_METAL,
        /* Translators: an angle */
        g_strdup_printf (_ ("Lay the blank so that the grain runs at %s to its lower edge, "
                            "counter-clockwise."),
                         grain));
}

/* ---- mark --------------------------------------------------------------------------------- */

void
bf_work_add_mark (BfWork *work)
{
  BfWorkStep *step;

  if (!bf_work_is_by_hand (work))
    {
      bf_work_add (work, BF_STAGE_MARK,
                   g_strdup (_ ("Nothing to mark: the pattern file tells the machine all.")));
      return;
    }
  bf_work_add (work, BF_STAGE_MARK,
               g_strdup (_ ("Glue the full-size template on, or mark out with a rule and a square, "
                            "step by step.")));
  for (guint i = 0; i < work->marking_steps->len; i++)
    {
      const BfMarkingStep *mark = &g_array_index (work->marking_steps, BfMarkingStep, i);

      if (mark->kind == BF_STEP_DRILL)
        continue;
      step = bf_work_add (work, BF_STAGE_MARK,
                          bf_marking_step_words (work->marking, mark, work->fold->part->units));
      step->caution = bf_marking_step_caution (mark);
      step->shows = BF_SHOWS_MARKING;
      step->at = (int)i;
      step->detail = TRUE;
      if (mark->kind == BF_STEP_STRIKE)
        bf_work_add_length (work, step, _ ("square"), mark->size_mm);
    }
}

/* ---- drill -------------------------------------------------------------------------------- */

void
bf_work_add_drill (BfWork *work)
{
  for (guint i = 0; i < work->marking_steps->len; i++)
    {
      const BfMarkingStep *mark = &g_array_index (work->marking_steps, BfMarkingStep, i);
      BfWorkStep *step;

      if (mark->kind != BF_STEP_DRILL)
        continue;
      step = bf_work_add (work, BF_STAGE_DRILL,
                          bf_marking_step_words (work->marking, mark, work->fold->part->units));
      step->caution = bf_marking_step_caution (mark);
      step->shows = BF_SHOWS_MARKING;
      step->at = (int)i;
    }
}
