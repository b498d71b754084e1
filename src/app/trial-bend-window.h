/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "core/own-trials.h"

/* Opens the window where the strips of a trial bend are typed in, with K and its error at once
 * below. id NULL: a new one, of the part's metal and bending; keeping it gives it to the document's
 * part. Else that one, which is replaced; a part that goes by it gets the new K. anchor: a widget
 * of the window that it stands over.
 * Returns: the new one, owned by the toolkit. */
GtkWindow *bf_trial_bend_window_open (GtkWidget *anchor, BfDocument *document, const char *id);

/* "Mild steel 1.5 mm, bent over a bar, inside radius 1.5 mm": what a trial bend is of. Returns:
 * (transfer full). */
char *bf_trial_bend_words (const BfTrialRecord *trial, BfUnits units) G_GNUC_WARN_UNUSED_RESULT;
