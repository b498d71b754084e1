/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/blank-field.h"

#include "make/drill-list.h"
#include "paint/bend-marks.h"

#define CROSS_PAST_CIRCLE_MM 1.5
#define CENTRE_ARM_MM 3.0

BfPurpose
bf_blank_ring_purpose (const BfFold *fold, guint ring)
{
  if (ring < fold->blank.n_outer)
    return BF_PURPOSE_CUT_OUTSIDE;
  return bf_fold_ring_is_slot (fold, ring) ? BF_PURPOSE_SLOT : BF_PURPOSE_CUT_INSIDE;
}

double
bf_blank_cross_arm (double radius_mm, double unit)
{
  if (radius_mm * 2.0 > BF_LARGEST_DRILL_MM)
    return CENTRE_ARM_MM * unit;
  return radius_mm + CROSS_PAST_CIRCLE_MM * unit;
}

static void
add_cross (BfLabelField *field, BfVec2 at, double arm)
{
  bf_label_field_add_line (field, bf_vec2 (at.x - arm, at.y), bf_vec2 (at.x + arm, at.y));
  bf_label_field_add_line (field, bf_vec2 (at.x, at.y - arm), bf_vec2 (at.x, at.y + arm));
}

static void
add_rings (BfLabelField *field, const BfBlank *blank, double unit)
{
  for (guint i = 0; i < blank->rings->len; i++)
    {
      const BfRing *ring = bf_blank_ring (blank, i);
      double radius_mm;
      BfVec2 centre;
      bf_label_field_add_ring (field, ring);
      if (i >= blank->n_outer && bf_ring_is_circle (ring, &centre, &radius_mm))
        add_cross (field, centre, bf_blank_cross_arm (radius_mm, unit));
    }
}

static void
add_bend (BfLabelField *field, const BfFold *fold, guint i, double unit)
{
  const BfBendResult *bend = bf_fold_bend (fold, i);
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (BfBendMark));

  bf_label_field_add_line (field, bend->line[0], bend->line[1]);
  bf_bend_marks (fold, bend, unit, lines);
  for (guint k = 0; k < lines->len; k++)
    bf_label_field_add_line (field, g_array_index (lines, BfBendMark, k).a,
                             g_array_index (lines, BfBendMark, k).b);
}

BfLabelField *
bf_blank_label_field_scaled (const BfFold *fold,
                             const BfBox *view,
                             double clearance_mm,
                             double unit)
{
  BfLabelField *field = bf_label_field_new (view, clearance_mm * unit);

  add_rings (field, &fold->blank, unit);
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      const BfRelief *relief = bf_fold_relief (fold, i);
      if (relief->drill == NULL)
        continue;
      bf_label_field_add_ring (field, relief->ring);
      add_cross (field, relief->at, bf_blank_cross_arm (relief->drill_mm / 2.0, unit));
    }
  for (guint i = 0; i < fold->bends->len; i++)
    add_bend (field, fold, i, unit);
  for (guint i = 0; i < bf_fold_n_creases (fold); i++)
    bf_label_field_add_line (field, bf_fold_crease (fold, i)->line[0],
                             bf_fold_crease (fold, i)->line[1]);
  return field;
}

BfLabelField *
bf_blank_label_field (const BfFold *fold, const BfBox *view, double clearance_mm)
{
  return bf_blank_label_field_scaled (fold, view, clearance_mm, 1.0);
}
