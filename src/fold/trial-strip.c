/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/trial-strip.h"

#include "core/defaults.h"
#include "core/units.h"
#include "fold/allowance.h"
#include "fold/fold.h"
#include "fold/slot-plan.h"

#define LENGTH_MM 100.0
#define LENGTH_IN 4.0
#define WIDTH_MM 20.0
#define WIDTH_IN 0.75

/* A slot in a strip is no longer than this on the near face: the bridges are what bends, and strips
 * have to go on a page. */
#define MOST_NEAR_MM 70.0

double
bf_trial_strip_length_mm (BfUnits units)
{
  return units == BF_UNITS_IN ? LENGTH_IN * BF_MM_PER_INCH : LENGTH_MM;
}

/* The mean length of a slot of the part: as given, as planned in it, or the shortest that the tool
 * can cut. */
static double
slot_like (const BfPart *part, const BfSlotTool *tool)
{
  g_autoptr (BfPart) copy = bf_part_copy (part);
  g_autoptr (BfFold) fold = NULL;

  if (!isnan (part->bend.slot_mm))
    return part->bend.slot_mm;
  fold = bf_fold (copy);
  for (guint i = 0; i < fold->bends->len; i++)
    if (bf_fold_bend (fold, i)->slots->len > 0)
      return bf_bend_slot (bf_fold_bend (fold, i), 0)->length_mm;
  return bf_slot_mean_mm (tool, tool->shortest_mm);
}

/* One slot and a bridge at each end, up to whole millimetres. */
static double
slotted_width_mm (BfPart *strip, const BfPart *part)
{
  BfSlotTool tool = bf_slot_tool (part);
  double most = bf_slot_mean_mm (&tool, MAX (MOST_NEAR_MM, tool.shortest_mm));

  if (!tool.cuts)
    return WIDTH_MM;
  strip->bend.slot_mm = MIN (slot_like (part, &tool), most);
  if (isnan (strip->bend.bridge_mm))
    strip->bend.bridge_mm = tool.least_bridge_mm;
  return ceil (bf_slot_near_mm (&tool, strip->bend.slot_mm) + 2.0 * strip->bend.bridge_mm);
}

static void
empty (GPtrArray *array)
{
  g_ptr_array_set_size (array, 0);
}

/* The part's set-up and name, and nothing of its shape. */
static BfPart *
without_shape (const BfPart *part)
{
  BfPart *strip = bf_part_copy (part);

  g_array_set_size (strip->outline, 0);
  empty (strip->base_corners);
  empty (strip->flanges);
  empty (strip->corners);
  empty (strip->openings);
  strip->measure = BF_MEASURE_OUTSIDE;
  strip->joining = BF_JOINING_NONE;
  return strip;
}

/* Two legs alike, so that the bend line lies across the middle. */
static void
set_legs (BfPart *strip, double leg_mm, double width_mm)
{
  BfFlange *flange = g_ptr_array_index (strip->flanges, 0);
  const BfVec2 corners[] = {
    { 0.0, 0.0 }, { leg_mm, 0.0 }, { leg_mm, width_mm }, { 0.0, width_mm }
  };

  flange->length_mm = leg_mm;
  g_array_set_size (strip->outline, 0);
  g_array_append_vals (strip->outline, corners, G_N_ELEMENTS (corners));
}

BfPart *
bf_trial_strip_part (const BfPart *part, BfUnits units)
{
  BfPart *strip;
  BfFlange *flange = bf_flange_new ("leg");
  g_autoptr (BfFold) fold = NULL;
  double length_mm = bf_trial_strip_length_mm (units), width_mm = WIDTH_MM;

  g_return_val_if_fail (part != NULL, NULL);

  strip = without_shape (part);
  if (units == BF_UNITS_IN)
    width_mm = WIDTH_IN * BF_MM_PER_INCH;
  if (bf_part_resolve_bend (strip, NULL).way == BF_BEND_WAY_SLOTS)
    width_mm = MAX (width_mm, slotted_width_mm (strip, part));
  flange->edge_index = 1;
  g_ptr_array_add (strip->flanges, flange);
  /* Whatever the rule, what the bend takes is the same for any legs that are long enough. */
  set_legs (strip, length_mm, width_mm);
  fold = bf_fold (strip);
  set_legs (strip, length_mm - (fold->blank.box.max.x - length_mm) / 2.0, width_mm);
  return strip;
}

gboolean
bf_trial_record_k (const BfTrialRecord *trial, BfTrialK *k, GError **error)
{
  g_autofree BfTrialK *each = NULL;

  g_return_val_if_fail (trial != NULL && trial->strips != NULL && trial->strips->len > 0, FALSE);

  each = g_new0 (BfTrialK, trial->strips->len);
  for (guint i = 0; i < trial->strips->len; i++)
    {
      const BfTrialStrip *strip = &g_array_index (trial->strips, BfTrialStrip, i);
      BfTrialBend measured = { .length_mm = strip->length_mm,
                               .legs_mm = { strip->legs_mm[0], strip->legs_mm[1] },
                               .angle_rad = bf_deg_to_rad (strip->angle_deg),
                               .radius_mm = trial->radius_mm,
                               .thickness_mm = trial->thickness_mm,
                               .measured_to_mm = trial->measured_to_mm };

      if (!bf_trial_bend_k (&measured, &each[i], error))
        return FALSE;
    }
  *k = bf_trial_bends_mean (each, trial->strips->len);
  return TRUE;
}
