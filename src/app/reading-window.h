/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/work-guide.h"

/* The steps of the work over the whole screen, to be read from the bench at arm's length. Any key
 * ticks the step and goes on; Backspace, Left and Page Up go back; Escape closes. guide is kept by
 * reference. Returns: the window, owned by the toolkit. */
GtkWindow *bf_reading_window_show (GtkWindow *parent, BfWorkGuide *guide);
