/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "make/work.h"

G_BEGIN_DECLS

/* Where a person is in the work on a document's part. What is ticked stands in the part.
 *
 * Signal changed: the work, what is ticked, or the step that is looked at is another one. */

#define BF_TYPE_WORK_GUIDE (bf_work_guide_get_type ())
G_DECLARE_FINAL_TYPE (BfWorkGuide, bf_work_guide, BF, WORK_GUIDE, GObject)

/* settings: where the person's own ways of working are noted; may be NULL. */
BfWorkGuide *bf_work_guide_new (BfDocument *document,
                                GSettings *settings) G_GNUC_WARN_UNUSED_RESULT;

/* The work on the part as it is now, or NULL where there is none. It lives until the part is
 * another one and this is called again. */
const BfWork *bf_work_guide_get_work (BfWorkGuide *self);

/* The step that is looked at: the first that is not ticked, to begin with. */
guint bf_work_guide_get_step (BfWorkGuide *self);
void bf_work_guide_choose (BfWorkGuide *self, guint step);

/* An edit of the part, which can be undone. */
void bf_work_guide_tick (BfWorkGuide *self, guint step, gboolean done);

/* Ticks the step that is looked at and goes to the next; at the last stays there. */
void bf_work_guide_go_on (BfWorkGuide *self);
void bf_work_guide_go_back (BfWorkGuide *self);

G_END_DECLS
