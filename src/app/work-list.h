/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "make/work.h"

G_BEGIN_DECLS

/* The work on a part as a column, stage below stage, a box to tick at each step.
 *
 * Signal step-chosen (guint step): the person looks at another step.
 * Signal step-ticked (guint step, gboolean done). */

#define BF_TYPE_WORK_LIST (bf_work_list_get_type ())
G_DECLARE_FINAL_TYPE (BfWorkList, bf_work_list, BF, WORK_LIST, GtkWidget)

/* Shows that work, with what its part has ticked; no step is chosen then. work is not kept. */
void bf_work_list_show (BfWorkList *self, const BfWork *work);

/* Marks a step as the one that is looked at, and scrolls to it; −1 for none. Emits nothing. */
void bf_work_list_choose (BfWorkList *self, int step);

G_END_DECLS
