/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/other-face.h"

BfFold *
bf_fold_other_face (const BfFold *fold)
{
  g_autoptr (BfPart) part = NULL;

  g_return_val_if_fail (fold != NULL, NULL);
  part = bf_part_mirror (fold->asked);
  part->other_face = !part->other_face;
  for (guint i = 0; i < part->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (part->flanges, i);
      flange->turn = flange->turn == BF_TURN_UP ? BF_TURN_DOWN : BF_TURN_UP;
    }
  return bf_fold (part);
}
