/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Corners joined by a tab: one wall covers the end of the other, the end wall (fold/end-wall.h),
 * which has a strip turned inward behind the covering wall, with holes through both for rivets or
 * screws. The strip is a flange like any other, on a side of the end wall; the part that is folded
 * has it though nobody drew it, called after its wall ("right-start-tab") and known by its is_tab.
 * Its sizes count outside, whatever the part's measure: the end wall's side runs to its drawn line,
 * and is to end at the covering wall. */

/* The part with the tabs and holes that its corners ask for and can have.
 * Returns: (transfer full); a new reference to the part itself where there are none. */
BfPart *bf_tabs_add (BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

/* The tab of the meeting, or NULL where it has none. */
const BfFlap *bf_tab_of (const BfLayout *layout, const BfMeeting *meeting);
