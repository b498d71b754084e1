/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Files for someone else who cuts, and for the bench: what each is for, and a button to save it.
 * How they are made is the window's (bf_window_get_how()). */

#define BF_TYPE_FILES_PANE (bf_files_pane_get_type ())
G_DECLARE_FINAL_TYPE (BfFilesPane, bf_files_pane, BF, FILES_PANE, GtkWidget)

G_END_DECLS
