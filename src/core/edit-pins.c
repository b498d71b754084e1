/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

static gboolean
find_edge (const BfPart *part, guint edge, guint *at)
{
  for (guint i = 0; i < part->pinned_edges->len; i++)
    if (g_array_index (part->pinned_edges, guint, i) == edge)
      {
        *at = i;
        return TRUE;
      }
  return FALSE;
}

static gboolean
is_there (const BfPart *part, BfPinKind kind, guint at)
{
  const guint n[] = { [BF_PIN_FLANGE] = bf_part_n_flanges (part),
                      [BF_PIN_EDGE] = bf_part_n_points (part),
                      [BF_PIN_OPENING] = part->openings->len };

  return at < n[kind];
}

gboolean
bf_part_is_pinned (const BfPart *part, BfPinKind kind, guint at)
{
  guint place;

  g_return_val_if_fail (part != NULL && is_there (part, kind, at), FALSE);

  if (kind == BF_PIN_FLANGE)
    return bf_part_flange (part, at)->pinned;
  if (kind == BF_PIN_OPENING)
    return ((const BfOpening *)g_ptr_array_index (part->openings, at))->pinned;
  return find_edge (part, at, &place);
}

static void
pin_edge (BfPart *part, guint edge, gboolean pinned)
{
  guint place;
  gboolean there = find_edge (part, edge, &place);

  if (pinned && !there)
    g_array_append_val (part->pinned_edges, edge);
  else if (!pinned && there)
    g_array_remove_index (part->pinned_edges, place);
}

BfPart *
bf_edit_pin (const BfPart *part, BfPinKind kind, guint at, gboolean pinned)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL && is_there (part, kind, at), NULL);

  copy = bf_part_copy (part);
  if (kind == BF_PIN_FLANGE)
    ((BfFlange *)g_ptr_array_index (copy->flanges, at))->pinned = pinned;
  else if (kind == BF_PIN_OPENING)
    ((BfOpening *)g_ptr_array_index (copy->openings, at))->pinned = pinned;
  else
    pin_edge (copy, at, pinned);
  return copy;
}
