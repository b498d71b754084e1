/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "core/part.h"

/* The drills owned, as choices of a menu. A choice is a word: a set of the part file ("metric"), a
 * list as it is typed ("list:4..20 + 2"), or one of the person's own boxes ("box:red-box"). */

/* The choices, each the action setup.drills with its word. Returns: (transfer full). */
GMenu *bf_setup_drills_menu (void) G_GNUC_WARN_UNUSED_RESULT;

/* The part with those drills; NULL for a word that means nothing (a box that is gone). */
BfPart *bf_setup_drills_edit (const BfPart *part, const char *word) G_GNUC_WARN_UNUSED_RESULT;

/* "12 drills, from 1 to 13 mm". sizes_mm: (element-type double), at least one, ascending. Returns:
 * (transfer full). */
char *bf_setup_drills_words (const GArray *sizes_mm) G_GNUC_WARN_UNUSED_RESULT;

/* The word of the part's drills; "" for a list that is none of the choices. Returns: (transfer
 * full). */
char *bf_setup_drills_word (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
