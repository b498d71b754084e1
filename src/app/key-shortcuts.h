/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* Binds the keys that hold everywhere (app/keys.h) on a popover. The program's own bindings stand
 * on the window, and a key pressed in a popover that does not hide by itself never comes by there.
 */
void bf_bind_keys (GtkWidget *popover);
