/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/vec.h"

#include <glib.h>

/* Lays rectangles on as few pages as it finds: no overlap, none turned. */

typedef struct
{
  BfVec2 size;  /* in: with the room that it keeps round itself */
  BfVec2 place; /* out: its upper left corner, y down from the page's upper left corner */
  guint page;   /* out */
} BfPackedBox;

/* boxes: BfPackedBox, none larger than room. Returns: how many pages there are. */
guint bf_box_pack (GArray *boxes, BfVec2 room);
