/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/kept-work.h"

G_BEGIN_DECLS

/* One line that offers what earlier runs left behind, a piece of work at a time. What is thrown
 * away is gone only when the line is closed, so that it can be brought back.
 *
 * Signal taken (BfKeptWork, by pointer; valid during the emission): the person wants to go on with
 * that work. */

#define BF_TYPE_KEPT_BAR (bf_kept_bar_get_type ())
G_DECLARE_FINAL_TYPE (BfKeptBar, bf_kept_bar, BF, KEPT_BAR, GtkBox)

/* Looks for work that nobody has taken up, and offers it. */
void bf_kept_bar_look (BfKeptBar *self);

G_END_DECLS
