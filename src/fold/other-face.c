/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/other-face.h"

#include "fold/layout.h"

/* In a mirror an edge runs the other way: what lay so far from its start lies so far from its end.
 */
static void
turn_along_edge (const BfOpening *asked, double edge_length_mm, BfOpening *opening)
{
  guint n = asked->points == NULL ? 0 : asked->points->len;

  if (asked->points == NULL)
    opening->at_mm.x = edge_length_mm - asked->at_mm.x;
  for (guint i = 0; i < n; i++)
    {
      BfVec2 p = g_array_index (asked->points, BfVec2, (n - i) % n); /* the first stays the first */

      g_array_index (opening->points, BfVec2, i) = bf_vec2 (edge_length_mm - p.x, p.y);
    }
}

BfPart *
bf_fold_mirrored_part (const BfFold *fold)
{
  BfPart *part;

  g_return_val_if_fail (fold != NULL, NULL);

  part = bf_part_mirror (fold->asked);
  for (guint i = 0; i < part->openings->len; i++)
    {
      const BfOpening *asked = g_ptr_array_index (fold->asked->openings, i);
      int flap = bf_layout_find_flap (fold->layout, asked->on);

      if (flap >= 0)
        turn_along_edge (asked, fold->layout->flaps[flap].edge_length_mm,
                         g_ptr_array_index (part->openings, i));
    }
  return part;
}

BfFold *
bf_fold_other_face (const BfFold *fold)
{
  g_autoptr (BfPart) part = bf_fold_mirrored_part (fold);

  for (guint i = 0; i < part->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (part->flanges, i);
      flange->turn = flange->turn == BF_TURN_UP ? BF_TURN_DOWN : BF_TURN_UP;
    }
  return bf_fold (part);
}
