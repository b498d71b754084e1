/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* How finely a rule is marked that people mark out with: common practice on steel rules. Every
 * distance of marking out is rounded to these marks. */

typedef struct
{
  const char *name; /* "0.5", "1/32": as settings and the command line have it */
  BfUnits units;
  double step_mm;
} BfRuleMarks;

/* All there are, coarse before fine: 1 and 0.5 mm, 1/16 and 1/32 in. NULL past the last. */
const BfRuleMarks *bf_rule_marks_at (guint i);

/* Those of that name. NULL where there are none. name may be NULL. */
const BfRuleMarks *bf_rule_marks_find (const char *name);

/* The finest in those units: 0.5 mm, 1/32 in. */
const BfRuleMarks *bf_rule_marks_finest (BfUnits units);
