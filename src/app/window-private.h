/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/keeper.h"
#include "app/kept-bar.h"
#include "app/make-page.h"
#include "app/shape-page.h"
#include "app/start-page.h"
#include "app/window.h"

/* Shared by the window's own files. */

struct _BfWindow
{
  GtkApplicationWindow parent_instance;
  BfDocument *document;
  BfKeeper *keeper;
  BfSurfaceView *view;
  GSettings *settings; /* NULL where there are none */
  BfOutputHow how;

  GtkStack *title_stack;
  GtkStack *outer_stack;
  GtkStack *page_stack;
  BfStartPage *start_page; /* NULL where there was a part from the first */
  GtkBox *start_room;
  GtkBox *shape_room;
  GtkBox *make_room;
  BfShapePage *shape_page; /* NULL until there is a part */
  BfMakePage *make_page;   /* NULL until it is looked at */
  GtkWidget *undo_button;
  GtkWidget *redo_button;
  GtkMenuButton *menu_button;
  GMenuModel *main_menu;
  GtkRevealer *notice_revealer;
  GtkLabel *notice_label;
  GtkWidget *notice_button;
  GFile *notice_file; /* what the notice's button shows, or NULL */
  BfKeptBar *kept_bar;
};

/* The quiet line's two buttons. */
void bf_window_close_notice (BfWindow *self);
void bf_window_show_noticed_file (BfWindow *self);

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

/* The action win.save-output: asks where to put the template ("template"), a pattern ("svg", "dxf",
 * "pdf"), the marking out ("marking", "distances"), a "pack", "card", "model", "gauges" or
 * "strip", and
 * writes what the command line would write. In window-outputs.c. */
void bf_window_save_output_action (GtkWidget *widget, const char *name, GVariant *target);

/* Opens "Before you cut", on the page where it is. */
void bf_window_open_checks (BfWindow *self);
