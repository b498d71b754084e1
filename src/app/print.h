/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/window.h"

#include "fold/fold.h"
#include "paint/template.h"

/* Prints the full-size template of a fold through the system's print dialogue, on whatever paper is
 * chosen there; the window's paper to begin with. Corners alone or all of it, and whether mirrored,
 * is as the window has it; how far off the printer is, as its settings have it. What came of it is
 * told in the window. */
void bf_print_template (BfWindow *window, BfFold *fold);

/* The operation alone, for whoever runs it without asking (a test). It draws in millimetres from
 * the paper's corner, one to one but for what the printer is off. how: its paper, units and printer
 * are not looked at; NULL for all of it, not mirrored. settings: of app/printers.h, or NULL.
 * Returns: (transfer full). */
GtkPrintOperation *bf_print_operation_new (BfFold *fold,
                                           const BfTemplateOptions *how,
                                           GSettings *settings) G_GNUC_WARN_UNUSED_RESULT;
