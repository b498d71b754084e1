/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* Shows the list of keys over parent. */
void bf_keys_window_show (GtkWindow *parent);
