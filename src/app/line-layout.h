/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Lays widgets out as words of a line: side by side in their natural size on one baseline, and on
 * further lines where there is no room. Follows the direction of writing. */

#define BF_TYPE_LINE_LAYOUT (bf_line_layout_get_type ())
G_DECLARE_FINAL_TYPE (BfLineLayout, bf_line_layout, BF, LINE_LAYOUT, GtkLayoutManager)

G_END_DECLS
