/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/part.h"

G_BEGIN_DECLS

/* A bend in two lines: the metal it hangs on, lying, and the flange as it stands. So nobody takes
 * the angle turned for the opening. */

#define BF_TYPE_BEND_SKETCH (bf_bend_sketch_get_type ())
G_DECLARE_FINAL_TYPE (BfBendSketch, bf_bend_sketch, BF, BEND_SKETCH, GtkWidget)

void bf_bend_sketch_show (BfBendSketch *self, double angle_deg, BfTurn turn);

G_END_DECLS
