/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/surface-view.h"

G_BEGIN_DECLS

/* The page Shape: the set-up sentence, the bench top, the thumb from flat to folded, and the line
 * "Before you cut". */

#define BF_TYPE_SHAPE_PAGE (bf_shape_page_get_type ())
G_DECLARE_FINAL_TYPE (BfShapePage, bf_shape_page, BF, SHAPE_PAGE, GtkWidget)

/* Called once: what the page shows, and how. */
void bf_shape_page_set_document (BfShapePage *self, BfDocument *document, BfSurfaceView *view);

/* Gives the keyboard to the bench top. */
void bf_shape_page_take_focus (BfShapePage *self);

/* Opens "Before you cut". */
void bf_shape_page_open_checks (BfShapePage *self);

G_END_DECLS
