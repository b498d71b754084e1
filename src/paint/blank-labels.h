/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/blank-label.h"
#include "paint/blank-view.h"

/* Which words stand on the blank, and where. */

/* The words that style asks for, each where it hides no line and no other words. Words that fit
 * nowhere are left out. Returns: (transfer full): an array of BfBlankLabel that frees them. */
GPtrArray *bf_blank_labels (const BfFold *fold,
                            const BfBlankStyle *style) G_GNUC_WARN_UNUSED_RESULT;

/* A field with every line of the blank in it, for placing other words. view as for
 * bf_label_field_new(). Returns: (transfer full). */
BfLabelField *bf_blank_label_field (const BfFold *fold,
                                    const BfBox *view,
                                    double clearance_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The direction or its opposite, whichever is read from below or from the right when the blank
 * is turned by turn_rad. */
BfVec2 bf_blank_upright (BfVec2 along, double turn_rad);
