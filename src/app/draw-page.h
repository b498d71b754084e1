/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/part.h"

G_BEGIN_DECLS

/* Where an outline of one's own is drawn: a click for each corner, or a direction and a typed
 * length.
 *
 * Signal changed: what is drawn, or what is said of it.
 * Signal closed: the outline is; bf_draw_page_make() has the part. */

#define BF_TYPE_DRAW_PAGE (bf_draw_page_get_type ())
G_DECLARE_FINAL_TYPE (BfDrawPage, bf_draw_page, BF, DRAW_PAGE, GtkWidget)

/* Begins an empty drawing. units: what a typed number means. Takes the keyboard. */
void bf_draw_page_begin (BfDrawPage *self, BfUnits units);

/* One sentence on how it stands or what was refused. Owned by the page. */
const char *bf_draw_page_get_words (BfDrawPage *self);

/* TRUE where it could be closed now. */
gboolean bf_draw_page_can_close (BfDrawPage *self);

/* The part drawn; see bf_outline_draft_make(). */
BfPart *bf_draw_page_make (BfDrawPage *self, const BfPart *setup) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
