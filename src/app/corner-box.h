/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/surface-view.h"

G_BEGIN_DECLS

/* What is asked at a corner of the base or of a flange: how the two flanges that meet there close
 * it, with what gap and relief, or how a free corner is finished, and how large. Each choice is a
 * step of the document. */

#define BF_TYPE_CORNER_BOX (bf_corner_box_get_type ())
G_DECLARE_FINAL_TYPE (BfCornerBox, bf_corner_box, BF, CORNER_BOX, GtkBox)

/* Shows what is asked there. FALSE, and nothing is to be seen, where nothing can be asked, as at
 * one wall alone, or where no corner is selected. */
gboolean bf_corner_box_show (BfCornerBox *self, BfDocument *document, BfSelection selection);

G_END_DECLS
