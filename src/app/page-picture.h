/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "paint/template.h"

/* One page of a template as a small picture on white paper, drawn once, sharp at that width in
 * pixels, and named for a screen reader. Returns: (transfer floating). */
GtkWidget *bf_page_picture_new (const BfTemplate *template, guint page, int width_px);
