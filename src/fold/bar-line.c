/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bar-line.h"

#include "core/tolerance.h"
#include "fold/bend-order.h"
#include "fold/line-stretches.h"

/* What the order of bending holds when this bend's turn comes: the person clamps it once. */
static BfHeldSide
held_side (const BfFold *fold, const BfBendResult *bend)
{
  for (guint i = 0; i < fold->order->len; i++)
    if (bf_fold_bend (fold, bf_fold_bend_step (fold, i)->bend) == bend)
      return bf_fold_bend_step (fold, i)->reach.held;
  return BF_HELD_PARENT;
}

/* Draws the line's ends in to where the reliefs leave metal. */
static void
trim_to_metal (const BfFold *fold, BfVec2 line[2])
{
  g_autoptr (GPtrArray) rings = g_ptr_array_new ();
  g_autoptr (GArray) metal = NULL;
  const BfLine whole = { line[0], line[1] };
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line[1], line[0]));

  for (guint i = 0; i < fold->reliefs->len; i++)
    g_ptr_array_add (rings, bf_fold_relief (fold, i)->ring);
  metal = bf_line_stretches (&whole, rings, 0.0);
  if (metal->len == 0)
    return;
  line[1] = bf_vec2_along (line[0], along, g_array_index (metal, BfRun, metal->len - 1).to_mm);
  line[0] = bf_vec2_along (line[0], along, g_array_index (metal, BfRun, 0).from_mm);
}

gboolean
bf_bend_bar_line (const BfFold *fold, const BfBendResult *bend, BfBarLine *bar)
{
  const BfFace *face = bf_fold_face (fold, bend->face);
  gboolean clamps = bend->way == BF_BEND_WAY_BAR || bend->way == BF_BEND_WAY_BRAKE;
  BfVec2 across = bf_vec2_sub (bend->zone[3], bend->zone[0]);
  BfVec2 out = bf_vec2_unit (across), from, to;
  gboolean flange;

  if (!clamps || bf_vec2_distance (bend->line[0], bend->line[1]) < BF_TOLERANCE_SIZE_MM ||
      bf_vec2_length (across) < BF_TOLERANCE_ZERO)
    return FALSE;
  flange = held_side (fold, bend) == BF_HELD_FLANGE;
  from = flange ? bend->zone[3] : bend->zone[0];
  to = flange ? bend->zone[2] : bend->zone[1];
  bar->clamped = flange ? out : bf_vec2_scale (out, -1.0);
  bar->past_tangent_mm = bend->inside_radius_mm;
  bar->line[0] = bf_vec2_along (from, bar->clamped, -bar->past_tangent_mm);
  bar->line[1] = bf_vec2_along (to, bar->clamped, -bar->past_tangent_mm);
  trim_to_metal (fold, bar->line);
  bar->from_bend_line_mm =
      fabs (bf_vec2_dot (bf_vec2_sub (bar->line[0], bend->line[0]), bar->clamped));
  bar->face = flange ? bend->face : (guint)MAX (face->parent, 0);
  bar->on_other_side = bend->turn == BF_TURN_DOWN;
  return TRUE;
}
