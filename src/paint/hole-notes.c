/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/hole-notes.h"

#include "core/compare.h"

/* TRUE where an opening has the same drill's note already: both ends of a slot are alike. */
static gboolean
is_told_before (const GArray *centres, guint i)
{
  const BfDrilled *hole = bf_drilled (centres, i);

  for (guint k = 0; k < i && hole->opening >= 0; k++)
    if (bf_drilled (centres, k)->opening == hole->opening &&
        bf_is_same_size (bf_drilled (centres, k)->diameter_mm, hole->diameter_mm))
      return TRUE;
  return FALSE;
}

static gboolean
are_alike (const GArray *centres, guint i, guint k)
{
  return bf_is_same_size (bf_drilled (centres, i)->diameter_mm,
                          bf_drilled (centres, k)->diameter_mm);
}

static guint
count_alike (const GArray *centres, const BfHoleNote *notes, guint i)
{
  guint n = 0;

  for (guint k = 0; k < centres->len; k++)
    n += notes[k] != BF_HOLE_UNTOLD && are_alike (centres, i, k) ? 1 : 0;
  return n;
}

/* The first of those of one size that are the most. */
static guint
find_crowd (const GArray *centres, const BfHoleNote *notes, guint *n_alike)
{
  guint found = 0;

  *n_alike = 0;
  for (guint i = 0; i < centres->len; i++)
    {
      guint n = notes[i] != BF_HOLE_UNTOLD ? count_alike (centres, notes, i) : 0;

      if (n <= *n_alike)
        continue;
      *n_alike = n;
      found = i;
    }
  return found;
}

BfHoleNote *
bf_hole_notes (const GArray *centres, const BfBox *view)
{
  BfHoleNote *notes = g_new (BfHoleNote, centres->len + 1);
  guint n_told = 0, n_alike, first;

  for (guint i = 0; i < centres->len; i++)
    {
      gboolean seen = view == NULL || bf_box_contains (view, bf_drilled (centres, i)->at);

      notes[i] = seen && !is_told_before (centres, i) ? BF_HOLE_ITSELF : BF_HOLE_UNTOLD;
      n_told += notes[i] == BF_HOLE_ITSELF ? 1 : 0;
    }
  first = find_crowd (centres, notes, &n_alike);
  for (guint i = 0; i < centres->len && n_alike > BF_HOLE_CROWD; i++)
    if (are_alike (centres, first, i))
      notes[i] = BF_HOLE_UNTOLD;
  if (n_alike > BF_HOLE_CROWD)
    notes[first] = n_alike == n_told ? BF_HOLE_ALL : BF_HOLE_OTHERS;
  return notes;
}
