/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pattern-cuts.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/tolerance.h"
#include "core/units.h"
#include "fold/kerf.h"
#include "fold/ring-tidy.h"
#include "make/drill-list.h"
#include "paint/blank-field.h"
#include "write/pattern-notch.h"

#define TICK_MM 2.0 /* a bend line's end where no notch can be */

static void
clear_cut (gpointer data)
{
  g_clear_pointer (&((BfPatternCut *)data)->ring, bf_ring_free);
}

static void
add_ring (BfPatternCuts *cuts, BfPurpose purpose, const BfRing *ring)
{
  BfPatternCut cut = { .purpose = purpose, .ring = bf_ring_copy (ring) };

  g_array_append_val (cuts->cuts, cut);
}

static void
add_as_drawn (BfPatternCuts *cuts)
{
  for (guint i = 0; i < cuts->fold->blank.rings->len; i++)
    add_ring (cuts, bf_blank_ring_purpose (cuts->fold, i), bf_blank_ring (&cuts->fold->blank, i));
}

static const BfBendSlot *
slot_of_ring (const BfFold *fold, const BfRing *ring)
{
  for (guint i = 0; i < fold->bends->len; i++)
    for (guint k = 0; k < bf_fold_bend (fold, i)->slots->len; k++)
      if (bf_ring_contains (ring, bf_bend_slot (bf_fold_bend (fold, i), k)->at))
        return bf_bend_slot (bf_fold_bend (fold, i), k);
  return NULL;
}

/* One pass of the tool is as wide as the slot: its middle runs from end to end, less its width. */
static void
add_slot_line (BfPatternCuts *cuts, const BfBendSlot *slot)
{
  BfVec2 along = bf_vec2 (cos (slot->angle_rad), sin (slot->angle_rad));
  double half_mm = MAX (0.0, slot->length_mm - cuts->kerf_mm) / 2.0;
  BfPatternCut cut = { .purpose = BF_PURPOSE_SLOT,
                       .line = { bf_vec2_along (slot->at, along, -half_mm),
                                 bf_vec2_along (slot->at, along, half_mm) } };

  g_array_append_val (cuts->cuts, cut);
}

/* A hole that is drilled by hand has its mark already. */
static void
add_too_small (BfPatternCuts *cuts, const BfRing *hole)
{
  BfBox box = bf_box_empty ();
  double radius_mm;
  BfVec2 middle;

  if (bf_ring_is_circle (hole, NULL, &radius_mm) && bf_is_drilled (cuts->fold, radius_mm))
    return;
  bf_ring_extend_box (hole, &box);
  middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  g_array_append_val (cuts->too_small, middle);
}

static void
add_hole (BfPatternCuts *cuts, guint i)
{
  const BfRing *hole = bf_blank_ring (&cuts->fold->blank, i);
  g_autoptr (GPtrArray) left = bf_kerf_inside (hole, cuts->kerf_mm / 2.0);
  BfPurpose purpose = bf_blank_ring_purpose (cuts->fold, i);
  const BfBendSlot *slot = purpose == BF_PURPOSE_SLOT ? slot_of_ring (cuts->fold, hole) : NULL;

  for (guint k = 0; k < left->len; k++)
    add_ring (cuts, purpose, g_ptr_array_index (left, k));
  if (left->len == 0 && slot != NULL)
    add_slot_line (cuts, slot);
  else if (left->len == 0)
    add_too_small (cuts, hole);
}

static void
add_moved (BfPatternCuts *cuts)
{
  const BfBlank *blank = &cuts->fold->blank;
  guint n_grown;
  g_autoptr (GPtrArray) grown =
      bf_kerf_outside (blank->rings, blank->n_outer, cuts->kerf_mm / 2.0, &n_grown);

  for (guint i = 0; i < grown->len; i++)
    add_ring (cuts, i < n_grown ? BF_PURPOSE_CUT_OUTSIDE : BF_PURPOSE_CUT_INSIDE,
              g_ptr_array_index (grown, i));
  for (guint i = blank->n_outer; i < blank->rings->len; i++)
    add_hole (cuts, i);
}

/* Where no notch can be cut, a short line on the bend's own layer stands in its place. */
static void
add_notch (BfPatternCuts *cuts, GPtrArray *rings, const BfBendResult *bend, int end)
{
  BfVec2 from = bend->line[end], to = bend->line[1 - end];
  BfPatternCut tick = { .purpose =
                            bend->turn == BF_TURN_UP ? BF_PURPOSE_BEND_UP : BF_PURPOSE_BEND_DOWN };

  if (bf_pattern_notch (rings, from, to))
    return;
  tick.line[0] = from;
  tick.line[1] = bf_vec2_along (from, bf_vec2_unit (bf_vec2_sub (to, from)), TICK_MM);
  g_array_append_val (cuts->cuts, tick);
}

static void
add_notches (BfPatternCuts *cuts)
{
  g_autoptr (GPtrArray) rings = g_ptr_array_new ();

  for (guint i = 0; i < cuts->cuts->len; i++)
    if (g_array_index (cuts->cuts, BfPatternCut, i).ring != NULL)
      {
        bf_ring_tidy (g_array_index (cuts->cuts, BfPatternCut, i).ring);
        g_ptr_array_add (rings, g_array_index (cuts->cuts, BfPatternCut, i).ring);
      }
  for (guint i = 0; i < cuts->fold->bends->len; i++)
    for (int end = 0; end < 2; end++)
      add_notch (cuts, rings, bf_fold_bend (cuts->fold, i), end);
  for (guint i = 0; i < bf_fold_n_creases (cuts->fold); i++)
    for (int end = 0; end < 2; end++)
      {
        BfBendResult crease = bf_fold_crease_as_bend (cuts->fold, i);

        add_notch (cuts, rings, &crease, end);
      }
}

BfPatternCuts *
bf_pattern_cuts_new (const BfFold *fold, const BfPatternOptions *options)
{
  BfPatternCuts *cuts;

  g_return_val_if_fail (fold != NULL && options != NULL, NULL);

  cuts = g_new0 (BfPatternCuts, 1);
  cuts->fold = fold;
  cuts->cuts = g_array_new (FALSE, FALSE, sizeof (BfPatternCut));
  g_array_set_clear_func (cuts->cuts, clear_cut);
  cuts->too_small = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  cuts->kerf_mm = options->kerf ? bf_part_kerf_mm (fold->part) : 0.0;
  if (cuts->kerf_mm > BF_TOLERANCE_SIZE_MM && fold->blank.n_outer > 0)
    add_moved (cuts);
  else
    add_as_drawn (cuts);
  if (options->bend_lines == BF_BEND_LINES_NOTCHES)
    add_notches (cuts);
  return cuts;
}

void
bf_pattern_cuts_free (BfPatternCuts *cuts)
{
  g_array_unref (cuts->cuts);
  g_array_unref (cuts->too_small);
  g_free (cuts);
}

char *
bf_pattern_cuts_describe (const BfPatternCuts *cuts)
{
  guint n = cuts->too_small->len;
  g_autofree char *size = bf_format_length (cuts->kerf_mm, cuts->fold->part->units);
  g_autofree char *moved = NULL;

  if (cuts->kerf_mm <= BF_TOLERANCE_SIZE_MM)
    return g_strdup (_ ("The kerf is 0: no cut edge was moved."));
  /* Translators: how wide the cut is, "1.3 mm". */
  moved =
      g_strdup_printf (_ ("Every cut edge is moved by half the kerf of %s into the waste."), size);
  if (n == 0)
    return g_steal_pointer (&moved);
  /* Translators: a sentence about the kerf, then how many holes are too small for it. */
  return g_strdup_printf (
      ngettext ("%s %u hole is no wider than the cut: drill it at its mark.",
                "%s %u holes are no wider than the cut: drill them at their marks.", n),
      moved, n);
}
