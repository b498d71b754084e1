/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/part.h"

G_BEGIN_DECLS

/* The page of a window with no part yet: what are you making?
 *
 * Signals: made (BfPart, boxed by pointer; valid during the emission), opened (GFile). */

#define BF_TYPE_START_PAGE (bf_start_page_get_type ())
G_DECLARE_FINAL_TYPE (BfStartPage, bf_start_page, BF, START_PAGE, GtkWidget)

/* Called once: a part with the units and the set-up that a new part begins with. */
void bf_start_page_set_setup (BfStartPage *self, BfPart *part);

G_END_DECLS
