/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

G_BEGIN_DECLS

/* The quiet line "Before you cut" along the bottom. It opens upward, a row a check.
 *
 * Signal place: a row was chosen; a BfVec2*, the point of the blank that it speaks of. */

#define BF_TYPE_CHECKS_LINE (bf_checks_line_get_type ())
G_DECLARE_FINAL_TYPE (BfChecksLine, bf_checks_line, BF, CHECKS_LINE, GtkWidget)

/* Called once. */
void bf_checks_line_set_document (BfChecksLine *self, BfDocument *document);

/* Opens the list, on the row that was left last. */
void bf_checks_line_open (BfChecksLine *self);

/* What the line says of a fold's checks: "Before you cut: 1 to fix, 2 to look at".
 * Returns: (transfer full). */
char *bf_checks_line_sentence (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
