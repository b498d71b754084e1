/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "paint/label-field.h"
#include "paint/palette.h"

/* The blank's lines as something that words keep off. */

/* What that ring of the blank is cut for: outside, inside or a bend's slot. */
BfPurpose bf_blank_ring_purpose (const BfFold *fold, guint ring);

/* A field with every line of the blank in it at full size, for placing words clearance_mm away from
 * them. view as for bf_label_field_new(). Returns: (transfer full). */
BfLabelField *bf_blank_label_field (const BfFold *fold,
                                    const BfBox *view,
                                    double clearance_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The same where one millimetre of paper shows unit millimetres of the blank; clearance_mm is on
 * paper. */
BfLabelField *bf_blank_label_field_scaled (const BfFold *fold,
                                           const BfBox *view,
                                           double clearance_mm,
                                           double unit) G_GNUC_WARN_UNUSED_RESULT;

/* Half the length of the cross drawn at the centre of a circle of that radius: past the circle
 * where that could be drilled, small at the centre of a large hole. */
double bf_blank_cross_arm (double radius_mm, double unit);
