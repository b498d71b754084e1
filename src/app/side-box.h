/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"

G_BEGIN_DECLS

/* Where a flange's two sides run: how far each is set in from the end of its edge, by how much it
 * leans from square, and what is cut where its bend ends. Each change is a step of the document. */

#define BF_TYPE_SIDE_BOX (bf_side_box_get_type ())
G_DECLARE_FINAL_TYPE (BfSideBox, bf_side_box, BF, SIDE_BOX, GtkGrid)

typedef enum
{
  BF_SIDE_OF_START = 1 << 0,
  BF_SIDE_OF_END = 1 << 1,
} BfSidesShown;

/* flange: a flange of the document's part. sides: BfSidesShown, which of the two. */
void bf_side_box_show (BfSideBox *self, BfDocument *document, const char *flange, guint sides);

/* TRUE where one of its sides is set in or leans. */
gboolean bf_flange_has_own_sides (const BfFlange *flange);

G_END_DECLS
