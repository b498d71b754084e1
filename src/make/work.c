/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/materials.h"
#include "core/units.h"
#include "make/work-private.h"

static void
clear_step (gpointer data)
{
  BfWorkStep *step = data;

  g_clear_pointer (&step->words, g_free);
  for (guint i = 0; i < step->n_numbers; i++)
    g_free (step->numbers[i].value);
}

const char *
bf_stage_name (BfStage stage)
{
  static const char *const names[] = {
    [BF_STAGE_METAL] = N_ ("Metal"),   [BF_STAGE_MARK] = N_ ("Mark"),
    [BF_STAGE_DRILL] = N_ ("Drill"),   [BF_STAGE_CUT] = N_ ("Cut"),
    [BF_STAGE_BEND] = N_ ("Bend"),     [BF_STAGE_JOIN] = N_ ("Join"),
    [BF_STAGE_FINISH] = N_ ("Finish"),
  };

  g_return_val_if_fail (stage < BF_N_STAGES, "");
  return _ (names[stage]);
}

BfWorkStep *
bf_work_add (BfWork *work, BfStage stage, char *words)
{
  BfWorkStep step = { .stage = stage, .words = words, .at = -1 };

  g_array_append_val (work->steps, step);
  return &g_array_index (work->steps, BfWorkStep, work->steps->len - 1);
}

void
bf_work_add_number (BfWorkStep *step, const char *label, char *value)
{
  if (step->n_numbers < BF_WORK_MAX_NUMBERS)
    step->numbers[step->n_numbers++] = (BfWorkNumber){ label, value };
  else
    g_free (value);
}

void
bf_work_add_length (const BfWork *work, BfWorkStep *step, const char *label, double length_mm)
{
  bf_work_add_number (step, label, bf_format_length (length_mm, work->fold->part->units));
}

const char *
bf_work_metal_kind (const BfPart *part)
{
  const BfMaterial *metal = bf_material_find (part->metal.material);
  const char *kind = metal != NULL && metal->like != NULL ? metal->like : part->metal.material;

  return kind != NULL ? kind : "";
}

gboolean
bf_work_is_by_hand (const BfWork *work)
{
  BfCuttingWay by = work->fold->part->cutting.by;

  return by == BF_CUTTING_DISC || by == BF_CUTTING_SNIPS;
}

static double
mark_step_mm (const BfFold *fold, const BfWorkOptions *options)
{
  BfUnits units = fold->part->units;

  if (options != NULL && options->marks != NULL && options->marks->units == units)
    return options->marks->step_mm;
  return bf_rule_marks_finest (units)->step_mm;
}

static void
add_stage (BfWork *work, BfStage stage)
{
  switch (stage)
    {
    case BF_STAGE_METAL:
      bf_work_add_metal (work);
      break;
    case BF_STAGE_MARK:
      bf_work_add_mark (work);
      break;
    case BF_STAGE_DRILL:
      bf_work_add_drill (work);
      break;
    case BF_STAGE_CUT:
      bf_work_add_cut (work);
      break;
    case BF_STAGE_BEND:
      bf_work_add_bend (work);
      break;
    case BF_STAGE_JOIN:
      bf_work_add_join (work);
      break;
    case BF_STAGE_FINISH:
      bf_work_add_finish (work);
      break;
    case BF_N_STAGES:
    default:
      g_return_if_reached ();
    }
}

BfWork *
bf_work_new (BfFold *fold, const BfWorkOptions *options)
{
  BfWork *work;

  g_return_val_if_fail (fold != NULL, NULL);
  work = g_new0 (BfWork, 1);
  work->fold = bf_fold_ref (fold);
  work->marking = bf_marking_new (fold, mark_step_mm (fold, options));
  work->marking_steps = bf_marking_steps (work->marking);
  work->guide_offset_mm = options != NULL ? options->guide_offset_mm : 0.0;
  work->cuts = bf_cuts (fold, !bf_work_is_by_hand (work));
  work->seams = g_array_new (FALSE, FALSE, sizeof (guint));
  work->steps = g_array_new (FALSE, FALSE, sizeof (BfWorkStep));
  g_array_set_clear_func (work->steps, clear_step);
  for (BfStage stage = 0; stage < BF_N_STAGES; stage++)
    {
      work->first[stage] = work->steps->len;
      add_stage (work, stage);
    }
  work->first[BF_N_STAGES] = work->steps->len;
  return work;
}

void
bf_work_free (BfWork *work)
{
  if (work == NULL)
    return;
  g_array_unref (work->steps);
  g_array_unref (work->seams);
  g_array_unref (work->cuts);
  g_array_unref (work->marking_steps);
  bf_marking_free (work->marking);
  bf_fold_unref (work->fold);
  g_free (work);
}
