/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

G_BEGIN_DECLS

/* The template's pages as they will come out, the paper, how far off the printer is, and the button
 * that prints them. How they are made is the window's (bf_window_get_how()). */

#define BF_TYPE_PAGES_PANE (bf_pages_pane_get_type ())
G_DECLARE_FINAL_TYPE (BfPagesPane, bf_pages_pane, BF, PAGES_PANE, GtkWidget)

/* Called once. settings: where the paper and the printers are noted; may be NULL. */
void bf_pages_pane_set_document (BfPagesPane *self, BfDocument *document, GSettings *settings);

/* How many pages the part takes that way, on the paper that is chosen. What is laid out for it is
 * kept for the pictures, and what was laid out for those is counted. */
guint bf_pages_pane_count (BfPagesPane *self, gboolean corners_only);

/* Corners and holes alone, or all of the blank. */
void bf_pages_pane_set_corners_only (BfPagesPane *self, gboolean corners_only);

G_END_DECLS
