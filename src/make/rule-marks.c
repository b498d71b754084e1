/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/rule-marks.h"

#include "core/units.h"

static const BfRuleMarks all[] = {
  { "1", BF_UNITS_MM, 1.0 },
  { "0.5", BF_UNITS_MM, 0.5 },
  { "1/16", BF_UNITS_IN, BF_MM_PER_INCH / 16.0 },
  { "1/32", BF_UNITS_IN, BF_MM_PER_INCH / 32.0 },
};

const BfRuleMarks *
bf_rule_marks_at (guint i)
{
  return i < G_N_ELEMENTS (all) ? &all[i] : NULL;
}

const BfRuleMarks *
bf_rule_marks_find (const char *name)
{
  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (g_strcmp0 (all[i].name, name) == 0)
      return &all[i];
  return NULL;
}

const BfRuleMarks *
bf_rule_marks_finest (BfUnits units)
{
  const BfRuleMarks *finest = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (all[i].units == units)
      finest = &all[i];
  return finest;
}
