/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* How far a flap of the base and all that its tip carries reach when bent, seen from above: in mm
 * from its drawn line, outward positive, as if sizes were counted outside. Each flap is followed
 * from there by what it has of flat, and where a bend's arc lies is not looked into: outward that
 * falls short by up to each bend's setback, which the room for an end relief makes up for; inward
 * the flap's own setback is added, so that it is rather too far. */
typedef struct
{
  double outward_mm; /* 0 or more */
  double inward_mm;  /* 0 or less */
} BfPlanReach;

BfPlanReach bf_plan_reach (const BfFlap *flap);
