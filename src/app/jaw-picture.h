/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/thing.h"

G_BEGIN_DECLS

/* A small sketch of how a size is measured: jaws round the metal, jaws within it, or what it has
 * to hold. */

#define BF_TYPE_JAW_PICTURE (bf_jaw_picture_get_type ())
G_DECLARE_FINAL_TYPE (BfJawPicture, bf_jaw_picture, BF, JAW_PICTURE, GtkWidget)

GtkWidget *bf_jaw_picture_new (BfSizeKind kind);

/* What the kind is called, translated: "outside". */
const char *bf_size_kind_name (BfSizeKind kind);

G_END_DECLS
