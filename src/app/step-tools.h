/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "make/work.h"

G_BEGIN_DECLS

/* What a person sets at a stage of the work: how many alike at the metal, whole marks at
 * marking out, where the guide sits at the cuts. Nothing at other stages. */

#define BF_TYPE_STEP_TOOLS (bf_step_tools_get_type ())
G_DECLARE_FINAL_TYPE (BfStepTools, bf_step_tools, BF, STEP_TOOLS, GtkWidget)

/* Called once. settings: where the rule's marks and the guide's
 * offset are kept; may be NULL. */
void bf_step_tools_set_document (BfStepTools *self, BfDocument *document, GSettings *settings);

/* Shows what belongs to that step. work is not kept. */
void bf_step_tools_show (BfStepTools *self, const BfWork *work, guint step);

G_END_DECLS
