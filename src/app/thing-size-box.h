/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/size-field.h"
#include "core/thing.h"

G_BEGIN_DECLS

/* One size of a thing to start from: its name, a field, and three sketches of how it may be
 * counted.
 *
 * Signals: size-set (double mm), kind-set (int, a BfSizeKind). */

#define BF_TYPE_THING_SIZE_BOX (bf_thing_size_box_get_type ())
G_DECLARE_FINAL_TYPE (BfThingSizeBox, bf_thing_size_box, BF, THING_SIZE_BOX, GtkWidget)

GtkWidget *bf_thing_size_box_new (void);

/* Shows a size. counts: whether outside and inside differ at all. */
void bf_thing_size_box_show (BfThingSizeBox *self, double size_mm, BfSizeKind kind, BfUnits units);
void bf_thing_size_box_set_name (BfThingSizeBox *self, const char *name, gboolean counts);

/* The field, and the row of sketches. */
BfSizeField *bf_thing_size_box_get_field (BfThingSizeBox *self);
GtkWidget *bf_thing_size_box_get_kinds (BfThingSizeBox *self);

G_END_DECLS
