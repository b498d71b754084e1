/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* The parts that were open lately, the latest first, each a row that opens it. Not seen while there
 * are none.
 *
 * Signal chosen (GFile). */

#define BF_TYPE_RECENT_LIST (bf_recent_list_get_type ())
G_DECLARE_FINAL_TYPE (BfRecentList, bf_recent_list, BF, RECENT_LIST, GtkWidget)

/* Notes that a part was opened or saved. */
void bf_recent_note (GFile *file);

G_END_DECLS
