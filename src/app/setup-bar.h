/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

G_BEGIN_DECLS

/* The set-up of a part as one sentence, the top line of the bench. */

#define BF_TYPE_SETUP_BAR (bf_setup_bar_get_type ())
G_DECLARE_FINAL_TYPE (BfSetupBar, bf_setup_bar, BF, SETUP_BAR, GtkWidget)

/* Called once. */
void bf_setup_bar_set_document (BfSetupBar *self, BfDocument *document);

G_END_DECLS
