/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* Gives every button and box to tick below widget, and widget itself, the name that its label
 * reads. By itself GTK 4.8 tells screen readers the label twice over, once with the mark of its
 * mnemonic. */
void bf_name_buttons (GtkWidget *widget);
