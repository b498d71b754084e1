/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/part.h"

/* A field for the thickness of a part's metal, typed as people say it ("16 ga", "1.5", "0.060 in",
 * "1/16"), for a menu: it activates setup.thickness and closes the menu. Below it stand the gauges
 * of that metal about that thickness, each with what it measures. */
GtkWidget *bf_thickness_box_new (const BfPart *part);

/* A line each, "16 ga = 1.519 mm": the gauge nearest to the part's thickness, and its neighbours;
 * then the gauge's name.
 * NULL where the metal has no gauge. Returns: (transfer full). */
char *bf_thickness_gauges (const BfPart *part) G_GNUC_WARN_UNUSED_RESULT;
