/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What is drilled by hand: reliefs, round holes, and the round ends of slots and keyholes, where a
 * drill can make them. */

typedef struct
{
  BfVec2 at; /* the centre, in the blank */
  double diameter_mm;
  gboolean by_drill; /* FALSE: a round hole that no drill makes, only in bf_centre_list() */
  const char *drill; /* "6.5 mm", interned; NULL where no drill owned has an opening's size */
  int opening;       /* the ring of the blank that it is a hole or an end of; −1 for a relief */
} BfDrilled;

/* What a common drill's chuck holds (common practice). */
#define BF_LARGEST_DRILL_MM 13.0

/* TRUE where a hole of that radius is drilled by hand: the metal is not cut by a machine, and a
 * chuck holds the drill. */
gboolean bf_is_drilled (const BfFold *fold, double radius_mm);

static inline const BfDrilled *
bf_drilled (const GArray *list, guint i)
{
  return &g_array_index (list, BfDrilled, i);
}

/* Everything drilled, smallest drill first; of one size from left to right.
 * Returns: (transfer full) (element-type BfDrilled): keep the fold as long. */
GArray *bf_drill_list (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* Every middle that is worth a cross: of all that is drilled, and of round holes that are not. In
 * no particular order. Returns: (transfer full) (element-type BfDrilled): keep the fold as long. */
GArray *bf_centre_list (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
