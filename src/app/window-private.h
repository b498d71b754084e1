/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/window.h"

/* Shared by the window's own files. */

/* Installs the actions win.… on the class; called once from class_init. */
void bf_window_class_install_actions (GtkWidgetClass *widget_class);

/* Enables what can be done now, and names what undo and redo would do. */
void bf_window_update_actions (BfWindow *self);

/* Gives the two buttons their sentences. undo, redo: what each would do, or NULL. */
void bf_window_name_steps (BfWindow *self, const char *undo, const char *redo);

/* "shape" or "make". */
const char *bf_window_get_page (BfWindow *self);

/* Shows that page and gives it the keyboard. */
void bf_window_set_page (BfWindow *self, const char *page);

void bf_window_open_menu (BfWindow *self);

/* The action win.save-output: asks where to put the template ("pdf") or a pattern ("svg", "dxf"),
 * and writes what the command line would write. In window-outputs.c. */
void bf_window_save_output_action (GtkWidget *widget, const char *name, GVariant *kind);

/* Opens "Before you cut", on the page where it is. */
void bf_window_open_checks (BfWindow *self);
