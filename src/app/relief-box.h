/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "fold/corner-here.h"

G_BEGIN_DECLS

/* The gap and the relief of a corner where flanges meet. An empty size is the usual one, which is
 * told in its place; what the relief needs stands beside. Each change is a step of the document. */

#define BF_TYPE_RELIEF_BOX (bf_relief_box_get_type ())
G_DECLARE_FINAL_TYPE (BfReliefBox, bf_relief_box, BF, RELIEF_BOX, GtkGrid)

/* here: of that corner, at which flanges meet. */
void bf_relief_box_show (
    BfReliefBox *self, BfDocument *document, const char *on, guint at, const BfCornerHere *here);

G_END_DECLS
