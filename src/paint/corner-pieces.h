/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"

/* The places of a blank that paper shows better than a tape: corners, ends of bend lines, holes.
 * What lies near together makes one piece of paper. */

typedef struct
{
  BfBox box;    /* what the piece shows, of the blank */
  BfVec2 cross; /* the point of it that the tape goes to: a drill's middle, else a corner */
  guint page;
  BfVec2 place; /* the piece's upper left corner on the page: from that of the room, y down */
} BfCornerPiece;

typedef struct
{
  GArray *pieces; /* BfCornerPiece, page by page */
  guint n_pages;
} BfCornerPieces;

/* The pieces on as few pages as were found, and then as few pieces. room: what a page has.
 * caption: what each piece needs below it: at least so wide, and so high. At least one piece.
 * Returns: (transfer full). */
BfCornerPieces *
bf_corner_pieces_new (const BfFold *fold, BfVec2 room, BfVec2 caption) G_GNUC_WARN_UNUSED_RESULT;
void bf_corner_pieces_free (BfCornerPieces *pieces);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfCornerPieces, bf_corner_pieces_free)

static inline const BfCornerPiece *
bf_corner_piece (const BfCornerPieces *pieces, guint i)
{
  return &g_array_index (pieces->pieces, BfCornerPiece, i);
}
