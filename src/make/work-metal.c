/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/setup-sentence.h"
#include "core/units.h"
#include "fold/stock.h"
#include "make/work-private.h"

#define KG_PER_LB 0.45359237 /* exact: international yard and pound, 1959 */

/* ---- metal -------------------------------------------------------------------------------- */

/* Of all blanks. */
static char *
mass_text (const BfFold *fold)
{
  double mass_kg = fold->blank.mass_kg * fold->part->quantity;
  g_autofree char *number = NULL;

  if (fold->part->units == BF_UNITS_IN)
    {
      number = bf_format_decimal (mass_kg / KG_PER_LB, 2);
      /* Translators: a mass in pounds */
      return g_strdup_printf (_ ("%s lb"), number);
    }
  number = bf_format_decimal (mass_kg, 2);
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
    bf_work_add_number (step, work->fold->part->quantity > 1 ? _ ("mass of all") : _ ("mass"),
                        mass_text (work->fold));
}

static char *
take_words (const BfPart *part)
{
  g_autofree char *metal = bf_setup_phrase (part, BF_SETUP_METAL);

  if (part->quantity == 1)
    /* Translators: a metal and its thickness, "Mild steel 1.5 mm" */
    return g_strdup_printf (
        _ ("Take a flat piece: %s. Measure the thickness: all sizes hang on it."), metal);
  return g_strdup_printf (
      /* Translators: a metal and its thickness, "Mild steel 1.5 mm", and how many blanks */
      ngettext ("Take flat metal: %s, for %u blank. Measure the thickness: all sizes hang on it.",
                "Take flat metal: %s, for %u blanks. Measure the thickness: all sizes hang on it.",
                part->quantity),
      metal, part->quantity);
}

/* The pieces to buy, and how so many blanks lie on each with a kerf between them. */
static void
add_stock (BfWork *work, BfWorkStep *step)
{
  const BfPart *part = work->fold->part;
  double between_mm = bf_part_kerf_mm (part);
  g_autofree char *between = bf_format_length (between_mm, part->units);
  g_auto (BfStockPlan) plan = { .name = NULL };

  bf_stock_plan (bf_vec2 (work->marking->width.exact_mm, work->marking->height.exact_mm),
                 part->quantity, between_mm, part->units, &plan);
  if (plan.name == NULL)
    return;
  bf_work_add_number (step, plan.n_pieces > 1 ? _ ("fit on") : _ ("fits on"),
                      plan.n_pieces > 1
                          /* Translators: how many pieces, and the size of each: "2 of 500 × 500 mm"
                           */
                          ? g_strdup_printf (_ ("%u of %s"), plan.n_pieces, plan.name)
                          : g_strdup (plan.name));
  if (part->quantity < 2 || !bf_work_is_by_hand (work))
    return;
  bf_work_add (work, BF_STAGE_METAL,
               /* Translators: how many blanks lie along a piece of metal and across it, and a
                  length with its unit */
               g_strdup_printf (_ ("A piece holds %u along its longer side by %u along its shorter "
                                   "one. Leave %s from blank to blank: so much goes in the cut."),
                                plan.along_longer, plan.along_shorter, between));
}

static const char *
metal_caution (const BfPart *part)
{
  const char *metal = bf_work_metal_kind (part);

  if (g_str_has_prefix (metal, "galvanized") || g_str_equal (metal, "zinc"))
    return _ ("Raw edges cut: gloves to carry the metal, none at a turning drill. Ground zinc "
              "fumes: moving air.");
  if (g_str_has_prefix (metal, "stainless"))
    return _ ("Raw edges cut: gloves to carry the metal, none at a turning drill. Ground stainless "
              "gives chromium dust: a mask.");
  return _ ("Raw edges cut: wear gloves to carry the metal, none at a turning drill.");
}

void
bf_work_add_metal (BfWork *work)
{
  const BfPart *part = work->fold->part;
  g_autofree char *grain =
      isnan (part->metal.grain_deg) ? NULL : bf_format_angle (part->metal.grain_deg);
  BfWorkStep *step = bf_work_add (work, BF_STAGE_METAL, take_words (part));

  step->caution = metal_caution (part);
  add_sizes (work, step);
  add_stock (work, step);
  if (grain != NULL)
    bf_work_add (
        work, BF_STAGE_METAL,
        /* Translators: an angle */
        g_strdup_printf (_ ("Lay the blank so that the grain runs at %s to its lower edge, "
                            "counter-clockwise."),
                         grain));
}

/* ---- mark --------------------------------------------------------------------------------- */

static char *
how_to_mark (const BfPart *part)
{
  if (part->quantity == 1)
    return g_strdup (_ ("Glue the full-size template on, or mark out with a rule and a square, "
                        "step by step."));
  return g_strdup_printf (
      /* Translators: how many blanks, 2 or more */
      ngettext ("Glue a full-size template on each of %u blank, or mark out with a rule and a "
                "square: each setting of the square on all of them before the next.",
                "Glue a full-size template on each of %u blanks, or mark out with a rule and a "
                "square: each setting of the square on all of them before the next.",
                part->quantity),
      part->quantity);
}

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
  step = bf_work_add (work, BF_STAGE_MARK, how_to_mark (work->fold->part));
  bf_work_add_length (work, step, _ ("marks of the rule"), work->marking->step_mm);
  bf_work_add_number (step, _ ("off by at most"),
                      bf_marking_worst_words (work->marking, work->fold->part->units));
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
