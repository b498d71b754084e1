/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

G_BEGIN_DECLS

/* The page Make: from here on it is work at the bench. */

#define BF_TYPE_MAKE_PAGE (bf_make_page_get_type ())
G_DECLARE_FINAL_TYPE (BfMakePage, bf_make_page, BF, MAKE_PAGE, GtkWidget)

/* Called once. settings: where the paper is chosen; may be NULL. */
void bf_make_page_set_document (BfMakePage *self, BfDocument *document, GSettings *settings);

G_END_DECLS
