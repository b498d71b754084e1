/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* Opens the help: in the desktop's help viewer, else as plain pages in the browser; where there is
 * neither, a window over parent says where the pages are. */
void bf_help_show (GtkWindow *parent);
