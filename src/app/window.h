/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/surface-view.h"
#include "paint/paper.h"
#include "write/outputs.h"

G_BEGIN_DECLS

/* A window on one part. */

#define BF_TYPE_WINDOW (bf_window_get_type ())
G_DECLARE_FINAL_TYPE (BfWindow, bf_window, BF, WINDOW, GtkApplicationWindow)

/* Owned by the toolkit, as every window. */
BfWindow *bf_window_new (GtkApplication *app);

/* What the window shows. Owned by the window. */
BfDocument *bf_window_get_document (BfWindow *self);
BfSurfaceView *bf_window_get_view (BfWindow *self);

/* Reads a part file into the window; a fault is told in the window, and nothing else changes. */
void bf_window_open (BfWindow *self, GFile *file);

/* One quiet line under the header bar; it goes when it is closed or another comes. */
void bf_window_notify (BfWindow *self, const char *sentence);

/* The same about a file that was written, with a button that shows it in its folder. */
void bf_window_notify_file (BfWindow *self, const char *sentence, GFile *file);

/* The paper of templates, as chosen or by locale. */
const BfPaper *bf_window_get_paper (BfWindow *self);

/* NULL where there are none. */
GSettings *bf_window_get_settings (BfWindow *self);

/* How templates and patterns are made, as the page Make has it. Owned by the window; how is copied.
 */
const BfOutputHow *bf_window_get_how (BfWindow *self);
void bf_window_set_how (BfWindow *self, const BfOutputHow *how);

/* Puts what is not saved on the disk now, beside its file, for the next run to offer. */
void bf_window_keep (BfWindow *self);

G_END_DECLS
