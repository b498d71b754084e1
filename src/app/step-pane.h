/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "make/work.h"

G_BEGIN_DECLS

/* One step of the work: its picture, what to do, its numbers, its caution.
 *
 * Signal done: the person has done it and goes on to the next.
 * Signal back: the person wants to see the one before.
 * Signal enlarge: the person wants to read it from afar. */

#define BF_TYPE_STEP_PANE (bf_step_pane_get_type ())
G_DECLARE_FINAL_TYPE (BfStepPane, bf_step_pane, BF, STEP_PANE, GtkWidget)

/* work is kept by pointer: let it live until another one is shown. */
void bf_step_pane_show (BfStepPane *self, const BfWork *work, guint step);

/* Called once, where the person may set things too (app/step-tools.h). */
void bf_step_pane_set_document (BfStepPane *self, BfDocument *document, GSettings *settings);

/* For reading from afar: no button that asks for it, and none that opens a window. */
void bf_step_pane_set_for_reading (BfStepPane *self);

G_END_DECLS
