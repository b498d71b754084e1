/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* What is drilled by hand: reliefs, and round holes that a drill can make. */

typedef struct
{
  BfVec2 at; /* the centre, in the blank */
  double diameter_mm;
  const char *drill; /* the relief's drill, "6.5 mm": the fold's string; NULL for a hole */
} BfDrilled;

/* What a common drill's chuck holds (common practice). */
#define BF_LARGEST_DRILL_MM 13.0

/* TRUE where a hole of that radius is drilled by hand: the metal is not cut by a machine, and a
 * chuck holds the drill. */
gboolean bf_is_drilled (const BfFold *fold, double radius_mm);

/* Everything drilled, smallest drill first; of one size from left to right.
 * Returns: (transfer full) (element-type BfDrilled): keep the fold as long. */
GArray *bf_drill_list (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;
