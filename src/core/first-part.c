/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/first-part.h"

#include "core/units.h"

#define SIDE_MM 100.0

static void
set_up_in_inches (BfPart *part)
{
  part->metal.thickness_mm = 0.0598 * BF_MM_PER_INCH;
  part->cutting.disc_diameter_mm = 4.5 * BF_MM_PER_INCH;
  part->cutting.kerf_mm = 0.055 * BF_MM_PER_INCH;
  part->cutting.slack_mm = BF_MM_PER_INCH / 32.0;
  part->cutting.drills = BF_DRILLS_FRACTION;
}

BfPart *
bf_first_part (BfUnits units)
{
  static const BfVec2 square[] = {
    { 0.0, 0.0 }, { SIDE_MM, 0.0 }, { SIDE_MM, SIDE_MM }, { 0.0, SIDE_MM }
  };
  BfPart *part = bf_part_new ();

  part->units = units;
  part->metal.thickness_mm = 1.5;
  part->cutting.disc_diameter_mm = 125.0;
  if (units == BF_UNITS_IN)
    set_up_in_inches (part);
  g_array_append_vals (part->outline, square, G_N_ELEMENTS (square));
  return part;
}
