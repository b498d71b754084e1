/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/end-relief.h"

#include "core/defaults.h"
#include "core/drills.h"

static BfEndRelief
kind_of (const BfPart *part, const BfFlap *flap, BfSideName name)
{
  BfEndRelief asked = name == BF_SIDE_START ? flap->flange->start_relief : flap->flange->end_relief;
  return bf_part_resolve_end_relief (part, asked);
}

static double
notch_width_mm (const BfPart *part)
{
  return MAX (part->metal.thickness_mm, bf_part_kerf_mm (part));
}

static double
hole_need_mm (const BfPart *part, const BfFlap *flap)
{
  double half_zone = flap->sums.allowance_mm / 2.0;

  return 2.0 * MAX (half_zone + part->metal.thickness_mm / 2.0, flap->sums.setback_mm - half_zone);
}

void
bf_end_relief_size (const BfLayout *layout,
                    const BfFlap *flap,
                    BfSideName name,
                    BfEndReliefSize *size)
{
  const BfPart *part = layout->part;

  *size = (BfEndReliefSize){ .kind = kind_of (part, flap, name), .drill_mm = NAN };
  if (size->kind == BF_END_RELIEF_NOTCH)
    {
      size->need_mm = part->metal.thickness_mm;
      size->size_mm = notch_width_mm (part);
      return;
    }

  size->need_mm = hole_need_mm (part, flap);
  size->size_mm = size->need_mm + 2.0 * bf_part_slack_mm (part);
  if (bf_part_drills_reliefs (part))
    size->drill_mm = bf_drill_next_up (part, size->size_mm, &size->drill);
  if (!isnan (size->drill_mm))
    size->size_mm = size->drill_mm;
}

double
bf_end_relief_reach_mm (const BfPart *part, const BfFlap *flap, BfSideName name)
{
  if (kind_of (part, flap, name) == BF_END_RELIEF_NOTCH)
    return notch_width_mm (part);
  return hole_need_mm (part, flap) / 2.0 + 2.0 * bf_part_slack_mm (part);
}

double
bf_end_relief_notch_v (const BfLayout *layout, const BfFlap *flap)
{
  return -flap->sums.setback_mm - layout->thickness_mm / 2.0;
}
