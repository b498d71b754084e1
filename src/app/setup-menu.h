/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "core/setup-sentence.h"

/* Where the menu of the metal leaves room for a field of one's own: the id of that place. */
#define BF_SETUP_MENU_THICKNESS "thickness"

/* The menu behind a phrase of the set-up sentence: its choices in the sentence's own words, each an
 * action of bf_setup_actions_new(), under the name "setup". Returns: (transfer full). */
GMenuModel *bf_setup_menu_new (const BfPart *part, BfSetupPhrase phrase) G_GNUC_WARN_UNUSED_RESULT;
