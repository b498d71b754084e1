/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/layout.h"

/* Corners joined by a tab: the wall before the corner covers the end of the wall after it, which
 * has a strip turned inward behind the covering wall, with holes through both for rivets or screws.
 * The strip is a flange like any other, on the start side of the wall after the corner; the part
 * that is folded has it though nobody drew it. */

/* The id of the tab on that wall. Returns: (transfer full). */
char *bf_tab_id (const char *wall) G_GNUC_WARN_UNUSED_RESULT;

/* The part with the tabs and holes that its corners ask for and can have.
 * Returns: (transfer full); a new reference to the part itself where there are none. */
BfPart *bf_tabs_add (BfPart *part) G_GNUC_WARN_UNUSED_RESULT;

/* The tab of the meeting, or NULL where it has none. */
const BfFlap *bf_tab_of (const BfLayout *layout, const BfMeeting *meeting);
