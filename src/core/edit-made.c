/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"

BfPart *
bf_edit_tick (const BfPart *part, const char *blank, const char *step, gboolean done)
{
  BfPart *copy;

  g_return_val_if_fail (part != NULL && blank != NULL && step != NULL, NULL);

  copy = bf_part_copy (part);
  if (copy->made == NULL || !g_str_equal (copy->made->blank, blank))
    {
      bf_made_free (copy->made);
      copy->made = bf_made_new (blank);
    }
  bf_made_set (copy->made, step, done);
  return copy;
}
