/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

/* What a trial of a scored bend tells is not K: it is how well the depth is held. Opens the window
 * where the skin that was left on a piece of scrap is typed in, with what the part's bends then
 * take below it. anchor: a widget of the window that it stands over. Returns: it, owned by the
 * toolkit.
 */
GtkWindow *bf_score_trial_window_open (GtkWidget *anchor, BfDocument *document);
