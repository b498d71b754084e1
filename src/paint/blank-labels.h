/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/blank-field.h"
#include "paint/blank-label.h"
#include "paint/blank-view.h"

/* Which words stand on the blank, and where. */

/* The words that style asks for, each where it hides no line and no other words. Words that fit
 * nowhere are left out. Returns: (transfer full): an array of BfBlankLabel that frees them. */
GPtrArray *bf_blank_labels (const BfFold *fold,
                            const BfBlankStyle *style) G_GNUC_WARN_UNUSED_RESULT;

/* The direction or its opposite, whichever is read from below or from the right when the blank
 * is turned by turn_rad. */
BfVec2 bf_blank_upright (BfVec2 along, double turn_rad);
