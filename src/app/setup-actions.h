/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"

/* What the menus of the set-up sentence do, as actions whose state is the part's set-up: material
 * (s), thickness (d, mm), cutting (sd: the way, and a disc's diameter in mm or 0), drills (s),
 * bending (s), joining (s), measure (s), units (s). Words are those of the part file. */

/* Follows the document for as long as the group lives. Returns: (transfer full). */
GSimpleActionGroup *bf_setup_actions_new (BfDocument *document) G_GNUC_WARN_UNUSED_RESULT;
