/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/size-text.h"

G_BEGIN_DECLS

/* An entry for one size. It shows the size as people write it, says below itself what it takes
 * words for while they are typed, and keeps the old size where it can't take them for one.
 *
 * Return or leaving it takes the size over; Escape brings the old one back; the arrow keys step by
 * 1 mm, 1/16 in or 1°, by ten of these with Shift.
 *
 * Signal size-set (double size, gboolean stepped): the person gave another size, in mm or
 * degrees. */

#define BF_TYPE_SIZE_FIELD (bf_size_field_get_type ())
G_DECLARE_FINAL_TYPE (BfSizeField, bf_size_field, BF, SIZE_FIELD, GtkEntry)

/* name: what a screen reader calls it, translated ("Length of front"). */
GtkWidget *bf_size_field_new (BfSizeFieldKind kind, const char *name);

void bf_size_field_set_name (BfSizeField *self, const char *name);

/* From now on the field may be empty, which stands for the usual size: NAN is shown and given then.
 * usual: what that amounts to, told where the field is empty; NAN: it may not be empty. */
void bf_size_field_set_usual (BfSizeField *self, double usual, BfUnits units);

/* Shows a size, unless one is being typed. material counts for a thickness alone and may be
 * NULL. */
void bf_size_field_show (BfSizeField *self, double size, BfUnits units, const char *material);

double bf_size_field_get_size (BfSizeField *self);

/* Takes over what was typed, as Return does. FALSE where it is no size. */
gboolean bf_size_field_commit (BfSizeField *self);

G_END_DECLS
