/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "core/thing.h"

G_BEGIN_DECLS

/* A thing to start from, sized on its own picture.
 *
 * Signal changed: another part comes out. */

#define BF_TYPE_SIZE_PAGE (bf_size_page_get_type ())
G_DECLARE_FINAL_TYPE (BfSizePage, bf_size_page, BF, SIZE_PAGE, GtkWidget)

/* Called once. setup: the document whose part has the set-up (metal, units…). */
void bf_size_page_set_setup (BfSizePage *self, BfDocument *setup);

/* Begins with the first sizes of that thing. */
void bf_size_page_begin (BfSizePage *self, BfThing thing);

/* What comes out, or NULL where the sizes leave nothing inside. Owned by the page. */
BfPart *bf_size_page_get_part (BfSizePage *self);

G_END_DECLS
