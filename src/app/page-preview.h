/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "paint/template.h"

/* Shows every page of a template in a window over parent. Returns: the window, owned by the
 * toolkit. */
GtkWindow *bf_page_preview_show (GtkWindow *parent, const BfTemplate *template);
