/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "fold/fold.h"

/* A row of "Before you cut": how bad it is, what it is, and a button for its fix. */

/* fix_words: what its button says, or NULL for none. fix_cb is called with the button, whose
 * ancestor the row is, and user_data. */
GtkWidget *bf_check_row_new (const BfCheck *check,
                             const char *fix_words,
                             GCallback fix_cb,
                             gpointer user_data) G_GNUC_WARN_UNUSED_RESULT;
