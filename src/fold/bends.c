/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bends.h"

#include "core/defaults.h"
#include "fold/bend-force.h"
#include "fold/line-stretches.h"
#include "fold/outline.h"
#include "fold/score.h"
#include "fold/slot-plan.h"

/* A slot is as wide as its cut; a machine that asks for no kerf cuts at least this (common
 * practice). */
#define LEAST_SLOT_WIDTH_MM 1.0

static void
clear_slot (gpointer data)
{
  g_clear_pointer (&((BfBendSlot *)data)->ring, bf_ring_free);
}

void
bf_bend_result_clear (BfBendResult *bend)
{
  g_clear_pointer (&bend->slots, g_array_unref);
}

void
bf_bends_find (BfFold *fold)
{
  for (guint i = 0; i < fold->layout->n_flaps; i++)
    {
      const BfFlap *flap = &fold->layout->flaps[i];
      double start = bf_flap_zone_u (flap, BF_SIDE_START);
      double end = bf_flap_zone_u (flap, BF_SIDE_END), v = bf_flap_bend_v (flap);
      gboolean scored = flap->bend.way == BF_BEND_WAY_SCORE;
      BfBendResult bend = {
        .flange = flap->flange->id,
        .face = i + 1,
        .angle_rad = flap->angle_rad,
        .turn = flap->flange->turn,
        .way = flap->bend.way,
        .inside_radius_mm = scored ? 0.0 : flap->radius_mm,
        .score_left_mm = scored ? flap->sums.skin_mm : NAN,
        .groove_mm = scored ? bf_score_groove_mm (fold->layout, flap) : NAN,
        .k = flap->sums.k,
        .k_error = bf_allowance_k_error (&flap->bend.allowance),
        .allowance_mm = flap->sums.allowance_mm,
        .setback_mm = flap->sums.setback_mm,
        .deduction_mm = flap->sums.deduction_mm,
        .line = { bf_flap_at_v (flap, start, v), bf_flap_at_v (flap, end, v) },
        .moment_nm = NAN,
        .lever_mm = NAN,
        .force_n = NAN,
        .limit_n = NAN,
        .overbend_rad = NAN,
        .kept = 1.0,
        .slots = g_array_new (FALSE, FALSE, sizeof (BfBendSlot)),
      };

      g_array_set_clear_func (bend.slots, clear_slot);
      bf_outline_zone (flap, bend.zone);
      g_array_append_val (fold->bends, bend);
    }
}

/* ---- slots -------------------------------------------------------------------------------- */

static GPtrArray *
cut_rings (const BfFold *fold, gboolean with_reliefs)
{
  GPtrArray *rings = g_ptr_array_new ();

  for (guint i = 0; with_reliefs && i < fold->reliefs->len; i++)
    g_ptr_array_add (rings, bf_fold_relief (fold, i)->ring);
  for (guint i = 0; i < fold->openings->len; i++)
    g_ptr_array_add (rings, bf_fold_opening (fold, i)->ring);
  return rings;
}

static double
sum_of (const GArray *runs)
{
  return bf_runs_mm ((const BfRun *)(gpointer)runs->data, runs->len);
}

static BfRing *
slot_ring (const BfBendSlot *slot)
{
  BfVec2 along = bf_vec2 (cos (slot->angle_rad), sin (slot->angle_rad));
  BfVec2 across = bf_vec2 (-along.y, along.x);
  BfRing *ring = bf_ring_new ();
  static const double corners[4][2] = {
    { -0.5, -0.5 }, { 0.5, -0.5 }, { 0.5, 0.5 }, { -0.5, 0.5 }
  };

  for (int i = 0; i < 4; i++)
    bf_ring_add (ring,
                 bf_vec2_along (bf_vec2_along (slot->at, along, corners[i][0] * slot->length_mm),
                                across, corners[i][1] * slot->width_mm),
                 0.0);
  return ring;
}

static void
add_slots (BfBendResult *bend, const GArray *planned, double width_mm)
{
  BfVec2 run = bf_vec2_sub (bend->line[1], bend->line[0]), along = bf_vec2_unit (run);

  for (guint i = 0; i < planned->len; i++)
    {
      const BfSlot *plan = &g_array_index (planned, BfSlot, i);
      BfBendSlot slot = { .at = bf_vec2_along (bend->line[0], along, plan->at_mm),
                          .length_mm = plan->length_mm,
                          .near_mm = plan->near_mm,
                          .far_mm = plan->far_mm,
                          .width_mm = width_mm,
                          .angle_rad = atan2 (run.y, run.x) };

      slot.ring = slot_ring (&slot);
      g_array_append_val (bend->slots, slot);
    }
}

/* Slots the bend, of whose line metal_mm is metal. Returns the metal left. */
static double
slot_bend (const BfFold *fold, BfBendResult *bend, double metal_mm)
{
  const BfFlap *flap = &fold->layout->flaps[bend->face - 1];
  const BfMaterial *material = bf_material_find (fold->part->metal.material);
  BfLine line = { bend->line[0], bend->line[1] };
  double width = MAX (bf_part_kerf_mm (fold->part), LEAST_SLOT_WIDTH_MM);
  double t = fold->layout->thickness_mm;
  g_autoptr (GPtrArray) rings = cut_rings (fold, TRUE);
  g_autoptr (GArray) free = bf_line_stretches (&line, rings, width / 2.0);
  BfSlotTool tool = bf_slot_tool (fold->part);
  BfSlotTask task = { (const BfRun *)(gpointer)free->data, free->len, 0.0, flap->bend.slot_mm,
                      flap->bend.bridge_mm };
  g_autoptr (GArray) planned = NULL;

  if (material != NULL) /* of an unknown metal as little is left as can be */
    task.keep_mm = bf_bend_width_mm (bf_flow_stress_mpa (material), t, BF_FORCE_AIM * bend->limit_n,
                                     bend->lever_mm) -
                   (metal_mm - sum_of (free));
  planned = bf_slot_plan (&tool, &task);
  add_slots (bend, planned, width);
  return metal_mm - sum_of (free) + bf_slot_plan_kept_mm (&task, planned);
}

/* ---- what it takes ------------------------------------------------------------------------ */

static void
work_out_force (const BfFold *fold, BfBendResult *bend, double metal_mm)
{
  const BfMaterial *material = bf_material_find (fold->part->metal.material);
  double t = fold->layout->flaps[bend->face - 1].sums.skin_mm;

  if (material == NULL)
    return;
  bend->moment_nm = bf_bend_moment_nm (bf_flow_stress_mpa (material), metal_mm, t);
  bend->force_n = bend->moment_nm / (bend->lever_mm * 1e-3);
  bend->overbend_rad = bf_overbend_rad (material, bend->angle_rad, bend->inside_radius_mm, t);
}

static void
finish_bend (const BfFold *fold, BfBendResult *bend, const GPtrArray *openings)
{
  const BfFlap *flap = &fold->layout->flaps[bend->face - 1];
  BfLine line = { bend->line[0], bend->line[1] };
  double length = bf_vec2_distance (line.from, line.to), metal;
  g_autoptr (GArray) whole = NULL;

  bend->lever_mm = bf_bend_lever_mm (&flap->bend, flap->flange->length_mm);
  bend->limit_n = bf_bend_limit_n (&flap->bend);
  if (!flap->placed || length <= 0.0)
    return;
  whole = bf_line_stretches (&line, openings, 0.0);
  metal = sum_of (whole);
  if (bend->way == BF_BEND_WAY_SLOTS)
    metal = slot_bend (fold, bend, metal);
  bend->kept = metal / length;
  work_out_force (fold, bend, metal);
}

void
bf_bends_slot (BfFold *fold)
{
  g_autoptr (GPtrArray) openings = cut_rings (fold, FALSE);

  for (guint i = 0; i < fold->bends->len; i++)
    finish_bend (fold, &g_array_index (fold->bends, BfBendResult, i), openings);
}

/* A slot stands clear of all else that is cut, so its ring is still its own. */
static gboolean
is_slot (const BfBendSlot *slot, const BfRing *ring)
{
  BfBox box = bf_box_empty ();

  if (bf_ring_size (ring) != bf_ring_size (slot->ring))
    return FALSE;
  bf_ring_extend_box (ring, &box);
  return bf_vec2_distance (bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5), slot->at) <
         slot->width_mm / 2.0;
}

gboolean
bf_fold_ring_is_slot (const BfFold *fold, guint ring)
{
  if (ring < fold->blank.n_outer)
    return FALSE;
  for (guint i = 0; i < fold->bends->len; i++)
    for (guint k = 0; k < bf_fold_bend (fold, i)->slots->len; k++)
      if (is_slot (bf_bend_slot (bf_fold_bend (fold, i), k), bf_blank_ring (&fold->blank, ring)))
        return TRUE;
  return FALSE;
}
