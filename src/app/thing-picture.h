/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/thing.h"

G_BEGIN_DECLS

/* A thing to start from as a pencil line drawing, of the real thing in its first sizes. */

#define BF_TYPE_THING_PICTURE (bf_thing_picture_get_type ())
G_DECLARE_FINAL_TYPE (BfThingPicture, bf_thing_picture, BF, THING_PICTURE, GtkWidget)

/* thing: a BfThing, or BF_N_THINGS for an outline of one's own. */
GtkWidget *bf_thing_picture_new (BfThing thing);

/* What a thing is called, translated: "Tray". */
const char *bf_thing_name (BfThing thing);

G_END_DECLS
