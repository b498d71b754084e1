/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/bend-groups.h"

/* Gives both bends the lower of their numbers; TRUE where that changed one. */
static gboolean
join (guint *groups, guint a, guint b)
{
  guint lower = MIN (groups[a], groups[b]);
  gboolean changed = groups[a] != groups[b];

  groups[a] = groups[b] = lower;
  return changed;
}

void
bf_bend_groups (const BfFold *fold, guint *groups)
{
  gboolean changed = TRUE;

  for (guint i = 0; i < fold->bends->len; i++)
    groups[i] = 0;
  for (guint i = 0; i < fold->folded->len; i++)
    {
      const BfFoldedCorner *corner = bf_fold_folded_corner (fold, i);
      guint a = (guint)bf_fold_face (fold, corner->along)->bend;
      guint b = (guint)bf_fold_face (fold, corner->end)->bend;

      groups[a] = a + 1;
      groups[b] = b + 1;
    }
  while (changed)
    {
      changed = FALSE;
      for (guint i = 0; i < fold->folded->len; i++)
        {
          const BfFoldedCorner *corner = bf_fold_folded_corner (fold, i);

          changed |= join (groups, (guint)bf_fold_face (fold, corner->along)->bend,
                           (guint)bf_fold_face (fold, corner->end)->bend);
        }
    }
}
